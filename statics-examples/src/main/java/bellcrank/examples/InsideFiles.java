package bellcrank.examples;

import bellcrank.examples.report.CaseAnswer;
import bellcrank.examples.report.FileAnswer;
import bellcrank.examples.report.InsideChart;
import bellcrank.examples.report.Refusal;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.equilibrium.InternalForces;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Pictures of the forces inside the members, one file for each, in a folder. */
final class InsideFiles {

  private InsideFiles() {}

  /**
   * Writes the pictures, into a folder that is made if need be; what cannot be written is told
   * among the refusals.
   */
  static void write(
      String folder, FileAnswer answer, Optional<UnitSystem> chosen, List<Refusal> refusals) {
    if (answer.cases().size() > 1) {
      refusals.add(
          Refusal.of(answer.name(), "it has several cases; --inside wants one, named by --case"));
      return;
    }
    CaseAnswer one = answer.cases().get(0);
    UnitSystem units = chosen.orElse(answer.file().units());
    boolean some = false;
    for (Member member : answer.file().device().members()) {
      InternalForces forces = one.balance().internalForces(member.name());
      if (InsideChart.isDrawable(forces)) {
        some = true;
        String svg = InsideChart.svg(forces, title(answer, one, member), units);
        TravelFiles.write(path(folder, member), svg, refusals);
      }
    }
    if (!some) {
      refusals.add(
          Refusal.of(answer.name(), "nothing to draw: no forces inside its members are told"));
    }
  }

  private static String title(FileAnswer answer, CaseAnswer one, Member member) {
    LoadCase loadCase = one.balance().loadCase();
    String words = answer.file().device().name() + ": " + member.name();
    return loadCase.equals(LoadCase.ALL_LOADS) ? words : words + ", " + loadCase.name();
  }

  /** Letters and digits make a name that every file system takes. */
  private static String path(String folder, Member member) {
    String name = member.name().replaceAll("[^\\p{L}\\p{N}]+", "-") + ".svg";
    try {
      Path place = Path.of(folder);
      Files.createDirectories(place);
      return place.resolve(name).toString();
    } catch (IOException | InvalidPathException e) {
      // the writer refuses it by this name
      return folder;
    }
  }
}
