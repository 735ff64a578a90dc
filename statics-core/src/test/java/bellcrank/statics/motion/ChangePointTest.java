package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.geometry.Direction;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Places where a second motion opens, in linkages too large for singular values. */
class ChangePointTest {

  private static final Offset<Double> NEAR = within(1e-6);

  /** A scissor lift on a slide; its lowest link has further arms at stated turns. */
  private static DeviceBuilder lift(int links, double... arms) {
    int stages = links / 2;
    double side = Math.sqrt(2);
    DeviceBuilder lift = Device.named("picking lift");
    for (int level = 0; level <= stages; level++) {
      lift.point("L" + level, 0, level * side).point("R" + level, side, level * side);
    }
    String[] lowest = new String[3 + arms.length];
    lowest[0] = "L0";
    lowest[1] = "M0";
    lowest[2] = "R1";
    for (int k = 0; k < arms.length; k++) {
      double arm = 0.5 + 0.1 * k;
      double x = arm * Math.cos(arms[k]);
      double y = arm * Math.sin(arms[k]);
      lowest[3 + k] = "K" + k;
      lift.point("K" + k, x, y).point("N" + k, x + 3, y).point("E" + k, 3, 0);
    }
    for (int stage = 0; stage < stages; stage++) {
      String up = "up" + stage;
      String down = "down" + stage;
      int above = stage + 1;
      lift.point("M" + stage, side / 2, (stage + 0.5) * side);
      if (stage == 0) {
        lift.member(up, lowest);
      } else {
        lift.member(up, "L" + stage, "M" + stage, "R" + above);
      }
      lift.member(down, "R" + stage, "M" + stage, "L" + above)
          .pin("middle" + stage, "M" + stage, up, down);
      if (stage > 0) {
        lift.pin("left" + stage, "L" + stage, up, "down" + (stage - 1))
            .pin("right" + stage, "R" + stage, down, "up" + (stage - 1));
      }
    }
    for (int k = 0; k < arms.length; k++) {
      // arm, rod and rocker are a parallelogram, flat where the arm is level
      lift.member("rod" + k, "K" + k, "N" + k)
          .member("rocker" + k, "E" + k, "N" + k)
          .pin("K" + k, "K" + k, "up0", "rod" + k)
          .pin("N" + k, "N" + k, "rod" + k, "rocker" + k)
          .pin("E" + k, "E" + k, "rocker" + k, "ground");
    }
    return lift.pin("left0", "L0", "up0", "ground")
        .connect(new Roller("right0", "R0", "down0", "ground", Direction.UP, Sides.TWO));
  }

  private static Course course(DeviceBuilder device) {
    return (Course) Travel.of(device.build(), Drive.turn("up0"), -0.2, 0.2);
  }

  @Test
  void liftWithoutAParallelogramHasNone() {
    assertThat(course(lift(60)).changePoints()).isEmpty();
    assertThat(course(lift(240)).changePoints()).isEmpty();
  }

  @Test
  void liftOf220LinksTellsWhereItsParallelogramLiesFlat() {
    Course course = course(lift(220, -0.13));

    assertThat(course.changePoints()).hasSize(1);
    assertThat(course.changePoints().get(0)).isCloseTo(0.13, NEAR);
    // it keeps on as a parallelogram
    for (double at : new double[] {-0.2, 0, 0.1, 0.16, 0.2}) {
      assertThat(course.pose(at).frame("rod0").turn()).as("%s", at).isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void severalAreToldInTurn() {
    Course course = course(lift(220, 0.077, -0.113));

    assertThat(course.changePoints()).hasSize(2);
    assertThat(course.changePoints().get(0)).isCloseTo(-0.077, NEAR);
    assertThat(course.changePoints().get(1)).isCloseTo(0.113, NEAR);
  }

  /** Two that lie flat together open two motions at once. */
  @Test
  void twoAtOnceAreToldToo() {
    Course course = course(lift(220, 0.113, 0.113));

    assertThat(course.changePoints()).hasSize(1);
    assertThat(course.changePoints().get(0)).isCloseTo(-0.113, NEAR);
  }

  @Test
  void theLastStepBeforeTheEndIsLookedAtAsWell() {
    assertThat(course(lift(220, -0.199)).changePoints()).hasSize(1);
  }

  /** Driven from its top, the links below must be solved together: all turn by the same angle. */
  @Test
  void aLiftDrivenFromItsTopTellsIt() {
    Device lift = lift(220, -0.13).build();
    Course course = (Course) Travel.of(lift, Drive.turn("up109"), -0.2, 0.2);

    assertThat(course.changePoints()).hasSize(1);
    assertThat(course.changePoints().get(0)).isCloseTo(0.13, NEAR);
  }
}
