package bellcrank.examples;

import bellcrank.examples.report.FileAnswer;
import bellcrank.examples.report.Making;
import bellcrank.examples.report.Refusal;
import bellcrank.examples.report.ReportSheet;
import bellcrank.examples.sheet.Sheet;
import bellcrank.statics.device.Ask;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The document that the command line wants written.
 *
 * @param name where it goes
 * @param loadCase the case that was asked for
 * @param asks further asks
 * @param units the units that were asked for
 */
record ReportFile(
    String name, Optional<String> loadCase, List<String> asks, Optional<UnitSystem> units) {

  private static final OwnFile OWN = new OwnFile(Sheet.MARK);

  /** Copies the list. */
  ReportFile {
    asks = List.copyOf(asks);
  }

  /** The command line's options, their asks as read. */
  static ReportFile of(
      String name, Optional<String> loadCase, List<Ask> asks, Optional<UnitSystem> units) {
    return new ReportFile(name, loadCase, asks.stream().map(Ask::text).toList(), units);
  }

  /**
   * Writes it, unless a file that is no such document is in the way.
   *
   * @return whether it was written; what was in the way is told among the refusals
   */
  boolean write(FileAnswer answer, List<Refusal> refusals) {
    try {
      Path file = Path.of(name);
      if (OWN.isForeign(file)) {
        refusals.add(
            Refusal.of(
                name,
                "this is no report of this program and is left as it is;"
                    + " wanted: a place that is free"));
        return false;
      }
      String html =
          ReportSheet.html(
              answer,
              units.orElse(answer.file().units()),
              Making.of(Version.NUMBER, typed(answer)));
      Files.write(file, html.getBytes(StandardCharsets.UTF_8));
      return true;
    } catch (IOException | InvalidPathException e) {
      refusals.add(Refusal.of(name, "cannot be written; wanted: a file in a folder that is there"));
      return false;
    }
  }

  private List<String> typed(FileAnswer answer) {
    List<String> words = new ArrayList<>(List.of("--report", last(name)));
    loadCase.ifPresent(one -> words.addAll(List.of("--case", one)));
    asks.forEach(one -> words.addAll(List.of("--ask", one)));
    units.ifPresent(
        one -> words.addAll(List.of("--units", one.equals(UnitSystem.US) ? "us" : "si")));
    words.add(last(answer.name()));
    return words;
  }

  /** The name of a file without its folders. */
  private static String last(String path) {
    Path name = Path.of(path).getFileName();
    return name == null ? path : name.toString();
  }
}
