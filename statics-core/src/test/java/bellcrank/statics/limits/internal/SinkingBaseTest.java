package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A base 0.8 m wide on ground that gives 32 kN on its whole width: with 10 kN on it a quarter of a
 * metre of it, 10/32, has to bear, so the force may be (0.8 − 0.25)/2 = 0.275 m off its middle
 * (effective width, EN 1997-1:2004 D.1).
 */
class SinkingBaseTest {

  private static final double LIMIT = 2750;

  private final SinkingBase base = new SinkingBase(0, 0, 1, 0.4, 32_000);

  private static double[] forces(double couple) {
    return new double[] {10_000, couple};
  }

  private static double miss(Bound bound, double couple) {
    return bound.sum(forces(couple)) - bound.limit;
  }

  @Test
  void nothingIsCutOffThatTheGroundBears() {
    for (double couple : new double[] {0, LIMIT - 1, 1 - LIMIT, LIMIT, -LIMIT}) {
      assertThat(base.cuts(forces(couple), 1e-3)).isEmpty();
    }
  }

  @Test
  void whatTheGroundDoesNotBearIsCutOffAndNothingElse() {
    for (int side = -1; side <= 1; side += 2) {
      Bound[] cuts = base.cuts(forces(side * (LIMIT + 10)), 1e-3);

      assertThat(cuts).hasSize(2);
      assertThat(Math.max(miss(cuts[0], side * (LIMIT + 10)), miss(cuts[1], side * (LIMIT + 10))))
          .isPositive();
      for (Bound cut : cuts) {
        assertThat(miss(cut, LIMIT)).isLessThan(1e-9);
        assertThat(miss(cut, -LIMIT)).isLessThan(1e-9);
      }
    }
  }

  @Test
  void aBaseSinksOnTheSideThatIsPressed() {
    for (int side = -1; side <= 1; side += 2) {
      List<Bound> atLimit = base.atLimit(forces(side * LIMIT), 1e-3);

      assertThat(atLimit).hasSize(1);
      assertThat(miss(atLimit.get(0), side * LIMIT)).isCloseTo(0, within(1e-9));
      assertThat(miss(atLimit.get(0), -side * LIMIT)).isNegative();
      assertThat(base.atLimit(forces(side * (LIMIT - 1)), 1e-3)).isEmpty();
    }
  }

  @Test
  void aBaseWithoutForceIsAtNoLimit() {
    assertThat(base.atLimit(new double[] {0, 0}, 1e-3)).isEmpty();
  }
}
