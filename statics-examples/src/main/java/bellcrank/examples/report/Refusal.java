package bellcrank.examples.report;

import bellcrank.examples.file.FileProblem;
import java.util.Optional;

/**
 * Why a file, or an ask of it, has no answer.
 *
 * @param file name of the file, as it was given
 * @param line line of the file from 1, if one is to blame
 * @param column column of that line in characters, from 1
 * @param sentence what was found and what is wanted, with the place in front
 */
public record Refusal(
    String file, Optional<Integer> line, Optional<Integer> column, String sentence) {

  /**
   * A refusal of the file as a whole.
   *
   * @param file name of the file
   * @param what what is wrong, and what is wanted
   * @return the refusal
   */
  public static Refusal of(String file, String what) {
    return new Refusal(file, Optional.empty(), Optional.empty(), file + ": " + what);
  }

  /**
   * A refusal for a problem in the text of a file.
   *
   * @param problem the problem
   * @return the refusal
   */
  public static Refusal from(FileProblem problem) {
    return new Refusal(
        problem.file(),
        Optional.of(problem.line()),
        Optional.of(problem.column()),
        problem.sentence());
  }
}
