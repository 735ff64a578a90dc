package bellcrank.examples.file;

/**
 * One thing that keeps a file from being read: where it stands, what was found and what would do.
 *
 * @param file name of the file as it was given to the reader
 * @param line line, from 1
 * @param column column in characters, from 1
 * @param where way to the place by keys, such as {@code connections → hinge → joins}; {@code file}
 *     for the text as a whole
 * @param found what stands there, as a phrase: a piece of the file in double quotes, or words such
 *     as {@code nothing}
 * @param wanted what would be accepted, as a clause, with the nearest known name where there is one
 */
public record FileProblem(
    String file, int line, int column, String where, String found, String wanted) {

  /**
   * The problem as one sentence.
   *
   * @return such as {@code press.yaml:7:12: connections → hinge → joins: found "lver"; wanted: the
   *     name of a body; the nearest is "lever"}
   */
  public String sentence() {
    return file
        + ":"
        + line
        + ":"
        + column
        + ": "
        + where
        + ": found "
        + found
        + "; wanted: "
        + wanted;
  }
}
