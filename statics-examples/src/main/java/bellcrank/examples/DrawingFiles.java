package bellcrank.examples;

import bellcrank.examples.report.CaseAnswer;
import bellcrank.examples.report.FileAnswer;
import bellcrank.examples.report.Refusal;
import bellcrank.examples.report.SampleHistograms;
import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.CapacityDrawing;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.drawing.DrawingOptions;
import bellcrank.statics.drawing.ForcePolygon;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The pictures that the command line wants drawn of a device.
 *
 * @param folder where they go
 */
record DrawingFiles(String folder) {

  /** Of a device with more bodies than this, only the whole is drawn. */
  private static final int MOST_BODIES = 60;

  /**
   * Draws the device of a file, with its travel if the file states one, and, for each of its cases,
   * the free bodies and their polygons, what is used of each part if the file has sizes, and the
   * spread of samples. Nothing is written if a file that is no such drawing is in the way.
   *
   * @return a line for each file that was written
   */
  List<String> write(FileAnswer answer, UnitSystem units, List<Refusal> refusals) {
    if (answer.file().device().members().isEmpty() && answer.file().device().joints().isEmpty()) {
      refusals.add(Refusal.of(answer.name(), "nothing to draw: the device has no bodies"));
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    try {
      Path target = Path.of(folder);
      Map<String, String> pictures = pictures(answer, units);
      int before = refusals.size();
      for (String name : pictures.keySet()) {
        refuseForeign(target.resolve(name), refusals);
      }
      if (refusals.size() > before) {
        return List.of();
      }
      Files.createDirectories(target);
      for (Map.Entry<String, String> picture : pictures.entrySet()) {
        Path file = target.resolve(picture.getKey());
        Files.write(file, picture.getValue().getBytes(StandardCharsets.UTF_8));
        lines.add("drawn: " + file);
      }
    } catch (IOException | InvalidPathException e) {
      refusals.add(Refusal.of(folder, "cannot be written; wanted: a folder for drawings"));
    }
    return lines;
  }

  private static void refuseForeign(Path file, List<Refusal> refusals) throws IOException {
    if (!OwnDrawing.mayTake(file)) {
      refusals.add(
          Refusal.of(
              file.toString(),
              "this is no drawing of this program and is left as it is;"
                  + " wanted: a place that is free"));
    }
  }

  private static Map<String, String> pictures(FileAnswer answer, UnitSystem units) {
    PictureNames names = new PictureNames(answer.name());
    DrawingOptions options = DrawingOptions.USUAL.withUnits(units);
    Device device = answer.file().device();
    Map<String, String> pictures = new LinkedHashMap<>();
    pictures.put(names.of("device"), device(answer, options).svg());
    for (CaseAnswer one : answer.cases()) {
      Balance balance = one.balance();
      String start = answer.cases().size() > 1 ? balance.loadCase().name() + " " : "";
      pictures.put(names.of(start + "whole"), free(answer, FreeBodyDrawing.of(balance), options));
      pictures.put(names.of(start + "whole polygon"), ForcePolygon.of(balance).with(options).svg());
      capacity(answer, one).ifPresent(svg -> pictures.put(names.of(start + "capacity"), svg));
      List<String> bodies = bodies(device);
      if (bodies.size() == 1 || bodies.size() > MOST_BODIES) {
        continue;
      }
      for (String body : bodies) {
        List<String> alone = List.of(body);
        String name = start + "body " + body;
        pictures.put(names.of(name), free(answer, FreeBodyDrawing.of(balance, alone), options));
        pictures.put(
            names.of(name + " polygon"), ForcePolygon.of(balance, alone).with(options).svg());
      }
    }
    SampleHistograms.of(answer, units)
        .forEach((figure, svg) -> pictures.put(names.of("samples " + figure), svg));
    return pictures;
  }

  private static DeviceDrawing device(FileAnswer answer, DrawingOptions options) {
    DeviceDrawing drawing = DeviceDrawing.of(answer.file().device()).with(options);
    return TravelPicture.onto(drawing, answer.file(), answer.cases().get(0).balance().loadCase());
  }

  private static String free(FileAnswer answer, FreeBodyDrawing drawing, DrawingOptions options) {
    return drawing.withGround(answer.file().foundations()).with(options).svg();
  }

  private static Optional<String> capacity(FileAnswer answer, CaseAnswer one) {
    String heading = answer.file().device().name() + ": what is used under the stated loads";
    return one.solution()
        .strength()
        .filter(strength -> !strength.bars().isEmpty())
        .map(
            strength ->
                CapacityDrawing.of(heading, strength.bars())
                    .withNotChecked(strength.notChecked())
                    .svg());
  }

  private static List<String> bodies(Device device) {
    List<String> bodies = new ArrayList<>();
    device.members().forEach(member -> bodies.add(member.name()));
    device.joints().forEach(joint -> bodies.add(joint.name()));
    return bodies;
  }
}
