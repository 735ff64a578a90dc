package bellcrank.examples;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import java.util.List;

/** Words what is wrong with an ask or a case of the command line. */
final class AskProblems {

  private AskProblems() {}

  /** A sentence for each problem; one of an ask begins with the option and the ask. */
  static List<String> sentences(ModelException refused) {
    return refused.problems().stream().map(AskProblems::sentence).toList();
  }

  private static String sentence(Problem problem) {
    if (problem.field().equals("case") && !problem.part().equals("ask")) {
      return "--case: found " + problem.value() + "; wanted: " + problem.wanted();
    }
    if (!problem.part().equals("ask")) {
      return problem.sentence();
    }
    // in an ask the field is the piece of its text that is wrong
    String found = problem.field().isEmpty() ? "nothing" : '"' + problem.field() + '"';
    return "--ask \"" + problem.value() + "\": found " + found + "; wanted: " + problem.wanted();
  }
}
