package bellcrank.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class GrowthTest {

  @Test
  void exponentOfAPowerIsThatPower() {
    double[] times = {3 * Math.pow(10, 1.15), 3 * Math.pow(70, 1.15), 3 * Math.pow(1000, 1.15)};

    assertThat(Growth.exponent(List.of(10, 70, 1000), times)).isCloseTo(1.15, within(1e-12));
  }

  @Test
  void exponentOfEqualTimesIsZero() {
    assertThat(Growth.exponent(List.of(1, 10, 100), new double[] {4, 4, 4}))
        .isCloseTo(0, within(1e-12));
  }
}
