package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.explain.Detail;
import bellcrank.statics.explain.SolutionWriter;
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
    SolutionWriter writer = SolutionWriter.of(detail, units);
    for (CaseAnswer one : answer.cases()) {
      LoadCase loadCase = one.balance().loadCase();
      String which = loadCase.equals(LoadCase.ALL_LOADS) ? "" : ", case " + loadCase.name();
      WorkedCase worked = WorkedCase.of(one, asks);
      worked.solution().ifPresent(solution -> write(which, writer.text(solution), text));
      worked
          .ends()
          .forEach(
              (ask, solution) -> write(which + ", " + ask.text(), writer.text(solution), text));
    }
    return text.toString();
  }

  private static void write(String which, String written, StringBuilder text) {
    text.append("Worked by hand").append(which).append("\n\n");
    written.lines().forEach(line -> wrap(line, text));
    text.append('\n');
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
