package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.DrawingOptions;
import bellcrank.statics.drawing.ForcePolygon;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import java.util.ArrayList;
import java.util.List;

/** The whole device and each of its bodies, cut free, with all that acts on them. */
final class FreeBodyChapter implements CaseChapter {

  /** Of a device with more bodies than this, only the whole is drawn. */
  private static final int MOST_BODIES = 24;

  @Override
  public String id() {
    return "free-bodies";
  }

  @Override
  public String title() {
    return "Free bodies";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    Balance balance = facts.balance();
    List<String> bodies = bodies(balance.device());
    if (bodies.isEmpty()) {
      return List.of();
    }
    DrawingOptions options = DrawingOptions.USUAL.withUnits(facts.units());
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part.Paragraph(
            "Each body is cut free and drawn with everything that acts on it from outside."
                + " Filled heads are given loads, hollow heads forces at cuts and supports, double"
                + " heads what is sought. A dashed arrow with a question mark is a force that"
                + " statics does not fix."));
    List<Part.Picture> pictures = new ArrayList<>();
    pictures.add(
        new Part.Picture(
            "The whole device, free from the ground.",
            FreeBodyDrawing.of(balance)
                .withGround(facts.file().foundations())
                .with(options)
                .svg()));
    pictures.add(
        new Part.Picture(
            "The forces on the whole device, tip to tail.",
            ForcePolygon.of(balance).with(options).svg()));
    if (bodies.size() > MOST_BODIES) {
      parts.add(
          new Part.Paragraph(
              "Only the whole device is drawn: with "
                  + bodies.size()
                  + " bodies, a picture of each would fill this document."));
    } else if (bodies.size() > 1) {
      for (String body : bodies) {
        pictures.add(
            new Part.Picture(
                "Free body of " + body + ".",
                FreeBodyDrawing.of(balance, List.of(body))
                    .withGround(facts.file().foundations())
                    .with(options)
                    .svg()));
      }
    }
    parts.add(new Part.Pictures(pictures));
    return parts;
  }

  private static List<String> bodies(Device device) {
    List<String> bodies = new ArrayList<>();
    device.members().forEach(member -> bodies.add(member.name()));
    device.joints().forEach(joint -> bodies.add(joint.name()));
    return bodies;
  }
}
