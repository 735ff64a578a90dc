package bellcrank.examples.programs;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.drawing.FreeBodyDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Range;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Eighth lesson: friction, ranges and limits. How high may the picker climb? */
public final class OrchardLadder {

  private OrchardLadder() {}

  /**
   * Tells the range of the wall's push, the limit of the climb, and what happens beyond.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    // Floor and wall can only push, and rub up to a share of their push. That is four forces for
    // three equations: statics leaves one open, and honest answers are ranges.
    Device ladder =
        Device.named("orchard ladder")
            .point("foot", 0, 0)
            .point("middle", 0.5, 1.2)
            .point("top", 1, 2.4) // 5 to 12: the ladder is 2.6 m long
            .member("ladder", "foot", "top")
            .connect(new Contact("floor", "foot", "ladder", "ground", Direction.UP, 0.35, 0.35))
            .connect(new Contact("wall", "top", "ladder", "ground", Direction.LEFT, 0.25, 0.25))
            .force("own weight", "ladder", "middle", Vector.of(0, -100))
            .force("picker", "ladder", "middle", Vector.of(0, -700))
            .build();
    Notebook notebook = Notebook.of("orchard-ladder", args);
    Balance balance = Balance.of(ladder);
    notebook.value(
        "push of the wall, from balance alone", balance.number("wall.normal"), Dimension.FORCE);

    // Limits looks at all states that friction allows, and asks whether there is any.
    Limits limits = Limits.of(ladder);
    notebook.write("With all friction, the ladder " + limits.verdict().words() + ".");
    Optional<Range> push = limits.range("wall.normal");
    push.ifPresent(
        range -> {
          notebook.value("  the wall pushes at least", range.least(), Dimension.FORCE);
          notebook.value("  and at most", range.greatest(), Dimension.FORCE);
        });
    if (limits.frictionFactor() instanceof FrictionFactor.Least least) {
      notebook.value("  share of the friction that is needed", least.factor(), Dimension.NUMBER);
    }

    // Now let the picker walk along the ladder. At the limit both ends are about to slide.
    if (limits.limit(Variation.place("picker", "foot", "top")) instanceof Limit.Between climb
        && climb.greatest() instanceof Limit.End.At end) {
      notebook.value("the picker may climb", end.value(), Dimension.LENGTH);
      notebook.write("beyond that: " + end.how().words(ladder, UnitSystem.SI));
    }
    notebook.write(
        "Friction changes with rain, leaves and shoes, and a person moves: have the foot held.");

    notebook.draw("device", DeviceDrawing.of(ladder).svg());
    // Of all states, the one with the least forces; it is an assumption, and only good for a
    // picture.
    Optional<Balance> one = limits.withLeastForces();
    if (one.isPresent()) {
      notebook.draw("one-state", FreeBodyDrawing.of(one.get(), List.of("ladder")).svg());
    }
  }
}
