package bellcrank.statics.units;

/** Powers of the base quantities; two units measure the same kind of thing when these agree. */
record Powers(int length, int mass, int time, int angle) {
  static final Powers NONE = new Powers(0, 0, 0, 0);

  /** The powers of a product of this with the given power of the other. */
  Powers times(Powers other, int exponent) {
    return new Powers(
        length + exponent * other.length,
        mass + exponent * other.mass,
        time + exponent * other.time,
        angle + exponent * other.angle);
  }
}
