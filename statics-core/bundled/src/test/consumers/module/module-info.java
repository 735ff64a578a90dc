/** A program of a user that is a module; the other files are copied beside it. */
module yard {
  requires bellcrank.statics;
}
