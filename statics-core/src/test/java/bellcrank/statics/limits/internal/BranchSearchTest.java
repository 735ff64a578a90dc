package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.internal.ForceSpace;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * A bell crank on a dry pin: 1000 N down at the end of an arm of 1 m, a level effort P at the end
 * of another of 2 m. With the radius f of the friction circle 2·P − 1000 = ±f·√(P² + 1000²) at its
 * limits.
 */
class BranchSearchTest {

  private static final double SIN = 0.6;
  private static final double RADIUS = 0.05;

  private static final Device CRANK =
      Device.named("bell crank")
          .point("pin", 0, 0)
          .point("arm", -1, 0)
          .point("hand", 0, 2)
          .member("crank", "arm", "pin", "hand")
          .connect(new Pin("pin", "pin", List.of("crank", "ground"), RADIUS, 0.75))
          .force("load", "crank", "arm", Vector.of(0, -1000))
          .sought("effort", "crank", "hand", Direction.RIGHT)
          .build();

  private final ForceSpace space = ForceSpace.of(CRANK, Pose.DRAWN);

  /** Root of (4 − f²)·P² − 4000·P + 10⁶·(1 − f²) = 0, the larger or the smaller. */
  private static double effort(int side) {
    double f = RADIUS * SIN;
    double a = 4 - f * f;
    double b = 1e6 * (1 - f * f);
    return (4000 + side * Math.sqrt(16e6 - 4 * a * b)) / (2 * a);
  }

  private Extreme run(int side, int programs) {
    PartBounds parts =
        PartBounds.of(CRANK, space.assembly(), LoadCase.ALL_LOADS, FrictionLevel.STATED, Map.of());
    Travel loads = Travel.fixed(space.loads(LoadCase.ALL_LOADS, name -> true));
    States states = States.of(space, parts, loads, space.scale(LoadCase.ALL_LOADS));
    Goal goal =
        Goal.force(space.assembly().soughtColumn("effort"), side, space.assembly().columns());
    return new BranchSearch(states, goal, 0, programs, 1e-9).run();
  }

  @Test
  void theLimitsOfACrankAreThoseOfItsFrictionCircle() {
    for (int side = -1; side <= 1; side += 2) {
      Extreme extreme = run(side, 3000);

      assertThat(extreme.isFound()).isTrue();
      assertThat(extreme.value()).isCloseTo(side * effort(side), within(1e-5));
      assertThat(extreme.gap()).isZero();
    }
  }

  /** However early the search ends, what it tells encloses the true value, ever more closely. */
  @Test
  void aSearchThatEndsEarlyTellsByHowMuchItMayMiss() {
    for (int side = -1; side <= 1; side += 2) {
      double before = Double.POSITIVE_INFINITY;
      assertThat(run(side, 1).kind()).isEqualTo(Extreme.Kind.OPEN);
      for (int programs = 3; programs < 30; programs++) {
        Extreme extreme = run(side, programs);

        assertThat(extreme.isFound()).isTrue();
        assertThat(extreme.value()).isLessThan(side * effort(side) + 1e-9);
        assertThat(extreme.value() + extreme.gap()).isGreaterThan(side * effort(side) - 1e-9);
        assertThat(extreme.gap()).isNotNegative().isLessThanOrEqualTo(before).isLessThan(5);
        before = extreme.gap();
      }
      assertThat(before).isZero();
    }
  }
}
