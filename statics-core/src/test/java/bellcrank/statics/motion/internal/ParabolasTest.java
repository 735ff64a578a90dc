package bellcrank.statics.motion.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Peaks between two ends with a place of a greater value known between them. */
class ParabolasTest {

  private int looks;

  private double near(DoubleUnaryOperator function, double from, double middle, double to) {
    looks = 0;
    return Parabolas.top(
        at -> {
          looks++;
          return function.applyAsDouble(at);
        },
        from,
        middle,
        to);
  }

  /** sin x + cos x is greatest at 45°. */
  @Test
  void aSmoothPeakTakesAFewLooks() {
    double found = near(at -> Math.sin(at) + Math.cos(at), 0.7, 0.78, 0.9);
    assertThat(found).isCloseTo(Math.PI / 4, within(1e-7));
    assertThat(looks).isLessThan(9);
  }

  /** The last of the three places may be as high as the one between. */
  @Test
  void betweenTwoEqualPlaces() {
    double found = near(at -> -(at - 0.3) * (at - 0.3), 0, 0.2, 0.4);
    assertThat(found).isCloseTo(0.3, within(1e-9));
  }

  @Test
  void aBendIsFoundAsWell() {
    double found = near(at -> at < 0.71 ? at : 5 * 0.71 - 4 * at, 0.5, 0.7, 0.9);
    assertThat(found).isCloseTo(0.71, within(1e-8));
  }

  /** Where nothing changes any place will do. */
  @Test
  void aLevelLineHasNoBetterPlace() {
    assertThat(near(at -> 2, 0.1, 0.2, 0.3)).isBetween(0.1, 0.3);
  }
}
