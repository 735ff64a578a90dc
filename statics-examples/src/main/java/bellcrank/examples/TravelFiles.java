package bellcrank.examples;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.report.FileAnswer;
import bellcrank.examples.report.Refusal;
import bellcrank.examples.report.StudyCsv;
import bellcrank.examples.report.TravelAnswer;
import bellcrank.examples.report.TravelChart;
import bellcrank.examples.report.TravelCsv;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The files that the command line wants written about a travel.
 *
 * @param csv name of the file for the table
 * @param svg name of the file for the picture
 */
record TravelFiles(Optional<String> csv, Optional<String> svg) {

  /**
   * Writes what is wanted; of a file without a travel the table of its samples or influence lines.
   * What cannot be written is told among the refusals.
   */
  void write(FileAnswer answer, Optional<UnitSystem> chosen, List<Refusal> refusals) {
    if (csv.isEmpty() && svg.isEmpty()) {
      return;
    }
    DeviceFile file = answer.file();
    UnitSystem units = chosen.orElse(file.units());
    if (file.travel().isEmpty()) {
      Optional<String> study = csv.flatMap(name -> StudyCsv.of(answer, units));
      if (study.isPresent() && svg.isEmpty()) {
        csv.ifPresent(name -> write(name, study.get(), refusals));
        return;
      }
      refuse(answer, "no drive is stated; " + wants(), refusals);
      return;
    }
    if (answer.cases().size() > 1) {
      refuse(answer, "it has several cases; --csv and --svg want one, named by --case", refusals);
      return;
    }
    TravelAnswer travel =
        TravelAnswer.of(file, answer.cases().get(0).balance().loadCase()).orElseThrow();
    if (travel.travel() instanceof Travel.Standstill standstill) {
      refuse(answer, "it cannot be driven so: " + standstill.reason().words(), refusals);
      return;
    }
    csv.ifPresent(name -> write(name, TravelCsv.of(travel, units), refusals));
    if (svg.isPresent() && !TravelChart.isDrawable(travel)) {
      refuse(answer, "nothing to draw: nothing that is asked has a value on the way", refusals);
    } else {
      svg.ifPresent(
          name -> write(name, TravelChart.svg(travel, file.device().name(), units), refusals));
    }
  }

  private String wants() {
    return svg.isPresent()
        ? "--csv and --svg want the keys drive and travel"
        : "--csv wants the keys drive and travel, a study with samples, or moving loads";
  }

  private static void refuse(FileAnswer answer, String why, List<Refusal> refusals) {
    refusals.add(Refusal.of(answer.name(), why));
  }

  static void write(String name, String text, List<Refusal> refusals) {
    try {
      Files.write(Path.of(name), text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException | InvalidPathException e) {
      refusals.add(Refusal.of(name, "cannot be written; wanted: a file in a folder that is there"));
    }
  }
}
