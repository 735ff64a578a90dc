package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.explain.SolutionWriter;
import bellcrank.statics.explain.WorkedSolution;
import bellcrank.statics.units.UnitSystem;
import java.util.List;

/** How the answers to a file are worked out by hand, as lines of text. */
public final class WorkedText {

  private static final String INDENT = "   ";

  private WorkedText() {}

  /**
   * Writes the worked solution of each case. Sentences are wrapped; an equation stays on one line.
   *
   * @param answer the answers to the file
   * @param asks what is to be worked out; all forces if there are none
   * @param detail how much is written
   * @param units units of the values
   * @return lines with line ends
   */
  public static String of(FileAnswer answer, List<Ask> asks, Detail detail, UnitSystem units) {
    StringBuilder text = new StringBuilder();
    for (CaseAnswer one : answer.cases()) {
      LoadCase loadCase = one.balance().loadCase();
      String which = loadCase.equals(LoadCase.ALL_LOADS) ? "" : ", case " + loadCase.name();
      text.append("Worked by hand").append(which).append("\n\n");
      String written = SolutionWriter.of(detail, units).text(of(one, asks));
      written.lines().forEach(line -> wrap(line, text));
      text.append('\n');
    }
    return text.toString();
  }

  /** The solution for those asks that belong to the case; for all forces if none was asked. */
  static WorkedSolution of(CaseAnswer one, List<Ask> asks) {
    List<Ask> own =
        asks.stream()
            .filter(ask -> ask.loadCase().map(one.balance().loadCase().name()::equals).orElse(true))
            .toList();
    return asks.isEmpty()
        ? WorkedSolution.of(one.balance())
        : WorkedSolution.of(one.balance(), own);
  }

  private static void wrap(String line, StringBuilder text) {
    if (line.startsWith(INDENT) || line.isEmpty()) {
      text.append(line).append('\n');
      return;
    }
    String indent = line.startsWith(" ") ? "  " : "";
    for (String part : Wrapping.lines(line.strip(), Page.WIDTH - INDENT.length())) {
      text.append(indent).append(part).append('\n');
      indent = INDENT;
    }
  }
}
