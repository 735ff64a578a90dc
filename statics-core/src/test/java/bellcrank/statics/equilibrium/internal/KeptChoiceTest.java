package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A choice of free forces serves other poses, but not those in which the rest would not do. */
class KeptChoiceTest {

  /** Columns: normal and tangential at the floor, then at the wall. */
  private static Device ladder() {
    return Device.named("ladder")
        .point("foot", 0, 0)
        .point("top", 3, 4)
        .member("ladder", "foot", "top")
        .connect(new Contact("floor", "foot", "ladder", "ground", Direction.UP, 0.4, 0.3))
        .connect(new Contact("wall", "top", "ladder", "ground", Direction.LEFT, 0.4, 0.3))
        .weight("own", "ladder", "top", 20)
        .build();
  }

  /** Smooth contacts whose lines meet in one point, but for how far the third is beside it. */
  private static Device wedged(double beside) {
    return Device.named("wedged block")
        .point("left", 0, 0)
        .point("right", 1, 0)
        .point("top", 0.5 + beside, 1)
        .member("block", "left", "right", "top")
        .connect(smooth("one", "left", 45))
        .connect(smooth("two", "right", 135))
        .connect(smooth("three", "top", -90))
        .build();
  }

  private static Contact smooth(String name, String at, double degrees) {
    Direction push = Direction.ofAngle(Math.toRadians(degrees));
    return new Contact(name, at, "block", "ground", push, 0, 0);
  }

  private static Pose turned(double turn) {
    return Pose.DRAWN.with("ladder", Frame.turnAbout(Point.ORIGIN, turn));
  }

  private static Actions actions(Assembly assembly, Pose pose) {
    Placements placements = assembly.placements();
    assembly.place(placements, pose);
    Actions actions = assembly.actions();
    assembly.evaluate(placements, actions);
    return actions;
  }

  /** The top at the height of the foot: the push of the wall then has no arm about it. */
  @Test
  void aChoiceServesUntilItsMultiplesGrow() {
    Assembly assembly = Assembly.withDryPins(ladder());
    KeptChoice choice = KeptChoice.of(assembly, new int[] {3}, 1).orElseThrow();
    double lying = -Math.atan2(4, 3);
    double[][] free = new double[1][4];

    assertThat(choice.take(actions(assembly, turned(0.1)), free)).isTrue();
    double slope = Math.tan(Math.atan2(4, 3) + 0.1);
    // one unit of the wall's friction, up, about the foot: x + H·y = 0
    assertThat(free[0][2]).isCloseTo(-1 / slope, within(1e-12));
    assertThat(free[0][3]).isEqualTo(1);
    assertThat(choice.take(actions(assembly, turned(lying + 0.02)), free)).isFalse();
    assertThat(choice.take(actions(assembly, turned(lying)), free)).isFalse();
  }

  @Test
  void forcesThatDoNotFitTheEquationsAreNoChoice() {
    Assembly assembly = Assembly.withDryPins(ladder());

    assertThat(KeptChoice.of(assembly, new int[] {0, 1}, 1)).isEmpty();
  }

  @Test
  void aMovedSpaceBalancesLikeANewOne() {
    ForceSpace moved = ForceSpace.of(ladder(), Pose.DRAWN);
    double lying = -Math.atan2(4, 3);
    for (double turn : new double[] {0.2, -0.4, lying + 1e-3, lying, -0.4}) {
      moved.moveTo(turned(turn));
      ForceSpace anew = ForceSpace.of(ladder(), turned(turn));
      assertThat(moved.freedom()).isEqualTo(anew.freedom());
      assertThat(moved.conditions()).isEqualTo(anew.conditions());
      double[] load = moved.loads(LoadCase.ALL_LOADS, name -> true);
      double[] forces = moved.responseTo(moved.turned(load));
      Actions actions = actions(moved.assembly(), turned(turn));
      Wrenches sum = new Wrenches(1);
      sum.add(actions, forces);
      assertThat(sum.fx(0)).isCloseTo(load[0], within(1e-10));
      assertThat(sum.fy(0)).isCloseTo(load[1], within(1e-10));
      for (int z = 0; z < moved.freedom(); z++) {
        Wrenches none = new Wrenches(1);
        none.add(actions, moved.free(z));
        assertThat(none.largest(1)).isCloseTo(0, within(1e-11));
      }
    }
  }

  private static Optional<int[]> chosen(Device device) {
    Assembly assembly = Assembly.withDryPins(device);
    Actions actions = actions(assembly, Pose.DRAWN);
    double[] centre = new double[2 * assembly.memberCount()];
    KeptChoice.firstPlaces(actions, centre);
    Equations equations = new Equations(assembly, actions);
    equations.fillForces(actions, centre);
    return FreeChoice.of(assembly, equations, assembly.scale().zero());
  }

  /** Where its forces nearly meet in a point they hold a body, but not firmly against turning. */
  @Test
  void aBodyIsPutAsideOnlyIfItsForcesHoldItFirmly() {
    assertThat(chosen(ladder()).orElseThrow()).hasSize(1);
    assertThat(chosen(wedged(0.3)).orElseThrow()).isEmpty();
    assertThat(chosen(wedged(1e-3))).isEmpty();
  }
}
