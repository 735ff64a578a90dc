package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.internal.Closure;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A watch judges as a balance does, however it comes by the forces. */
class WatchTest {

  private static DeviceBuilder derrick() {
    return Device.named("leaning derrick")
        .point("heel", 0, 0)
        .point("tip", 0.5, 2)
        .point("head", -3, 3)
        .member("jib", "heel", "tip")
        .pin("heel", "heel", "jib", "ground")
        .line("rope", End.of("jib", "tip"), End.of("ground", "head"))
        .weight("barrel", "jib", "tip", 60);
  }

  /**
   * Turns the jib to the left by small steps, past the upright, and tells how often it was fine.
   */
  private static int fineSteps(Device device) {
    int rope = device.connections().size() - 1;
    Closure closure = Closure.of(device, List.of(2 * rope));
    Watch watch = new Watch(device, LoadCase.ALL_LOADS, List.of()).from(Pose.DRAWN);
    int fine = 0;
    for (int step = 0; step < 60; step++) {
      double[] free = closure.free().get(0);
      closure.move(free, 0.01 * Math.signum(free[2]));
      closure.move(closure.correction(new double[0], 0), 1);
      double tension =
          Balance.of(device, LoadCase.ALL_LOADS, closure.pose())
              .number("rope.tension")
              .orElseThrow();
      assertThat(watch.isFine(closure)).as("step %s", step).isEqualTo(tension >= 0);
      fine += tension >= 0 ? 1 : 0;
    }
    assertThat(watch.why()).isEqualTo(CourseEnd.Why.SLACK);
    assertThat(watch.part()).isEqualTo("rope");
    return fine;
  }

  @Test
  void aRopeIsTautWhereItsTensionIsNotBelowZero() {
    assertThat(fineSteps(derrick().build())).isBetween(10, 50);
  }

  /** A bench that is held once too often has no single solution; its rope is still watched. */
  @Test
  void aRopeOfADeviceThatIsNotDeterminateIsWatchedAsWell() {
    Device held =
        Device.named("leaning derrick by a bench")
            .point("heel", 0, 0)
            .point("tip", 0.5, 2)
            .point("head", -3, 3)
            .point("left", 4, 0)
            .point("right", 5, 0)
            .member("jib", "heel", "tip")
            .member("bench", "left", "right")
            .pin("heel", "heel", "jib", "ground")
            .pin("left", "left", "bench", "ground")
            .pin("right", "right", "bench", "ground")
            .line("rope", End.of("jib", "tip"), End.of("ground", "head"))
            .weight("barrel", "jib", "tip", 60)
            .build();

    assertThat(fineSteps(held)).isBetween(10, 50);
  }
}
