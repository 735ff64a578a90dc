package bellcrank.examples.programs;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Pose;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Ninth lesson: forces over a travel. A toggle presses pulp, the harder the straighter it is. */
public final class ToggleTravel {

  private static final UnitSystem SI = UnitSystem.SI;

  private ToggleTravel() {}

  /**
   * Tells the hand's force and the advantage while the plate goes down.
   *
   * @param args a folder for the pictures, or nothing
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    // Two links of 0.26 m, drawn 5 to 12, hang under a beam. The hand pushes the knee sideways, the
    // lower link drives the plate down its guide, and the pulp pushes back with 600 N.
    Device toggle =
        Device.named("pulp toggle")
            .point("top", 0, 0.48)
            .point("knee", 0.1, 0.24)
            .point("plate", 0, 0)
            .member("upper link", "top", "knee")
            .member("lower link", "knee", "plate")
            .member("plate", "plate")
            .pin("top", "top", "upper link", "ground")
            .pin("knee", "knee", "upper link", "lower link")
            .pin("plate pin", "plate", "lower link", "plate")
            .connect(new Guide("guide", "plate", "plate", "ground", Direction.DOWN))
            .force("pulp", "plate", "plate", Vector.of(0, 600))
            .sought("hand", "upper link", "knee", Direction.LEFT)
            .advantage("hand", "pulp")
            .build();
    Notebook notebook = Notebook.of("toggle-travel", args);

    // One freedom is left when the hand lets go. We drive it by the way of the plate, from the
    // drawn
    // pose both ways, and ask how far it goes.
    Drive down = Drive.slide("plate", "plate", Direction.DOWN);
    if (!(Travel.of(toggle, down, -0.1, 0.1) instanceof Course course)) {
      notebook.write("The toggle cannot be driven so.");
      return;
    }
    notebook.write("up: %s".formatted(course.least().words()));
    // With both links in line the plate is as low as it gets: a dead centre.
    notebook.write("down: %s".formatted(course.greatest().words()));
    notebook.value("  after", course.greatest().drive(), Dimension.LENGTH);

    // In each pose it is the same balance again. With the links at the angle a off the upright, the
    // hand has to give 2 × 600 N × tan a: less and less, and nothing in line.
    List<Pose> poses = new ArrayList<>();
    for (double way : new double[] {-0.08, -0.04, 0, 0.02, 0.03, 0.035}) {
      Pose pose = course.pose(way);
      Balance balance = Balance.of(toggle, course.loadCase(), pose);
      notebook.write(
          "plate %s down: hand %s, advantage %s"
              .formatted(
                  SI.format(way, Dimension.LENGTH, 3),
                  SI.format(balance.number("hand").orElseThrow(), Dimension.FORCE, 4),
                  SI.format(balance.number("advantage").orElseThrow(), Dimension.NUMBER, 4)));
      poses.add(pose);
    }
    // A curve looks between such poses too, and finds the extremes.
    course
        .curve("hand")
        .greatest()
        .ifPresent(
            most -> {
              notebook.value("the hand pushes most", most.value(), Dimension.FORCE);
              notebook.value("  with the plate down by", most.drive(), Dimension.LENGTH);
            });
    notebook.write("Near the dead centre a small push crushes: no fingers near the links.");

    // One picture shows the poses as light outlines, and the way of the knee.
    notebook.draw(
        "poses", DeviceDrawing.of(toggle).withPoses(poses).withPathOf("upper link", "knee").svg());
  }
}
