package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.limits.internal.Branch.Choice;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Threads by the inclined plane wound round a cylinder: P·r·tan(α + φ) drives the load, P·r·tan(α −
 * φ) keeps it from running back (Engineering Statics: Open and Interactive, section on screws).
 */
class ScrewThreadTest {

  private static final Choice PULLED = new Choice(-1, 0);
  private static final Choice PRESSED = new Choice(0, 1);

  /** A thread whose axial force, tension positive, and sought couple are the two unknowns. */
  private static ScrewThread thread(double slope, double friction) {
    return new ScrewThread(0, 0, List.of(1), 0, slope, 0.02, friction);
  }

  private static boolean allowed(List<Bound> bounds, double tension, double couple) {
    return bounds.stream().allMatch(b -> b.sum(new double[] {tension, couple}) <= b.limit + 1e-9);
  }

  /** tan(α + φ) = 0.1/(1 − 0.0016) for 0.02 and 0.08; with 1000 N at 20 mm some 2.003 N·m. */
  @Test
  void aCoupleLiesBetweenDrivingTheLoadAndBeingDriven() {
    ScrewThread thread = thread(0.02, 0.08);
    double driving = 20 * 0.1 / (1 - 0.0016);
    double driven = 20 * -0.06 / (1 + 0.0016);

    for (int sense = -1; sense <= 1; sense += 2) {
      double tension = -1000.0 * sense;
      List<Bound> bounds = thread.outer(sense > 0 ? PRESSED : PULLED);
      assertThat(allowed(bounds, tension, sense * driving)).isTrue();
      assertThat(allowed(bounds, tension, sense * (driving + 1e-6))).isFalse();
      assertThat(allowed(bounds, tension, sense * driven)).isTrue();
      assertThat(allowed(bounds, tension, sense * (driven - 1e-6))).isFalse();
      assertThat(allowed(bounds, -tension, 0)).isFalse();
      assertThat(thread.miss(new double[] {tension, sense * driving})).isCloseTo(0, within(1e-12));
      assertThat(thread.miss(new double[] {tension, sense * (driving + 1)}))
          .isCloseTo(1, within(1e-12));
      assertThat(thread.miss(new double[] {tension, sense * (driven - 1)}))
          .isCloseTo(1, within(1e-12));
    }
  }

  /**
   * α + φ is a right angle at tan α · tan φ = 1: no couple, however large, drives such a thread.
   */
  @Test
  void aThreadBindsFromARightAngleOn() {
    ScrewThread thread = thread(2, 0.5);

    assertThat(allowed(thread.outer(PRESSED), -1000, 1e12)).isTrue();
    assertThat(thread.miss(new double[] {-1000, 1e12})).isNegative();
    assertThat(allowed(thread(2, 0.499).outer(PRESSED), -1000, 1e12)).isFalse();
    // what keeps the load from running back is P·r·tan(α − φ) = 1000·0.02·1.5/2
    assertThat(allowed(thread.outer(PRESSED), -1000, 15)).isTrue();
    assertThat(allowed(thread.outer(PRESSED), -1000, 14.999)).isFalse();
  }

  @Test
  void aChosenSenseStaysWhateverForceItIsCloseTo() {
    ScrewThread thread = thread(0.02, 0.08);

    assertThat(allowed(thread.inner(PRESSED, new double[] {1000, 0}), -1000, 0)).isTrue();
    assertThat(allowed(thread.inner(PRESSED, new double[] {1000, 0}), 1000, 0)).isFalse();
    assertThat(allowed(thread.inner(PULLED, new double[] {-1000, 0}), 1000, 0)).isTrue();
    assertThat(allowed(thread.inner(thread.whole(), new double[] {1000, 0}), 1000, 0)).isTrue();
    assertThat(allowed(thread.inner(thread.whole(), new double[] {1000, 0}), -1000, 0)).isFalse();
    assertThat(allowed(thread.inner(thread.whole(), new double[] {-1000, 0}), -1000, 0)).isTrue();
  }
}
