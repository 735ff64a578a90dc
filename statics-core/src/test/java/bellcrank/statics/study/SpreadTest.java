package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SpreadTest {

  /** From M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, table 26.5. */
  @Test
  void quantilesOfTheNormalDistribution() {
    assertThat(Quantiles.normal(0.5)).isCloseTo(0, within(1e-15));
    assertThat(Quantiles.normal(0.975)).isCloseTo(1.95996, within(1e-5));
    assertThat(Quantiles.normal(0.95)).isCloseTo(1.64485, within(1e-5));
    assertThat(Quantiles.normal(0.9)).isCloseTo(1.28155, within(1e-5));
    assertThat(Quantiles.normal(0.999)).isCloseTo(3.09023, within(1e-5));
    assertThat(Quantiles.normal(0.841344746068543)).isCloseTo(1, within(1e-12));
    // 4 standard deviations: the tail is 3.167124183311992e-5
    assertThat(Quantiles.normal(3.167124183311992e-5)).isCloseTo(-4, within(1e-12));
    assertThat(Quantiles.normal(1e-300)).isCloseTo(-37.0471, within(1e-4));
  }

  @Test
  void bothTailsAreAlike() {
    for (int k = 1; k < 512; k++) {
      assertThat(Quantiles.normal(k / 1024.0))
          .isCloseTo(-Quantiles.normal(1 - k / 1024.0), within(1e-13));
      assertThat(Quantiles.normal(k / 1024.0)).isLessThan(Quantiles.normal((k + 1) / 1024.0));
    }
  }

  @Test
  void quantilesOfTheOthers() {
    assertThat(Spread.within(0.1).quantile(0.5, 3)).isEqualTo(3);
    assertThat(new Spread.Within(1, 2).least(5)).isEqualTo(4);
    assertThat(new Spread.Within(1, 2).greatest(5)).isEqualTo(7);
    assertThat(new Spread.Uniform(1, 3).quantile(0.25, 9)).isEqualTo(1.5);
    Spread triangle = new Spread.Triangular(0, 1, 3);
    assertThat(triangle.quantile(1 / 3.0, 0)).isCloseTo(1, within(1e-15));
    assertThat(triangle.quantile(1 - 1.0 / 6, 0)).isCloseTo(2, within(1e-14));
    assertThat(triangle.least(0)).isZero();
    assertThat(triangle.greatest(0)).isEqualTo(3);
    assertThat(new Spread.Normal(2, 0.1).quantile(0.841344746068543, 0))
        .isCloseTo(2.1, within(1e-12));
    assertThat(new Spread.Normal(2, 0.1).least(0)).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void whatIsNoSpreadIsRefusedByTheNameOfTheInput() {
    Input input = Input.x("ram");
    assertThatThrownBy(() -> Uncertain.uniform(input, 2, 1))
        .hasMessage("x of ram: bounds is 2.0 to 1.0; wanted: the least one first");
    assertThatThrownBy(() -> Uncertain.uniform(input, 1, 1)).hasMessageContaining("width above 0");
    assertThatThrownBy(() -> Uncertain.within(input, 0)).hasMessageContaining("x of ram");
    assertThatThrownBy(() -> Uncertain.within(input, -1)).hasMessageContaining("0 or more");
    assertThatThrownBy(() -> Uncertain.normal(input, 0, 0)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> Uncertain.normal(input, Double.NaN, 1)).hasMessageContaining("finite");
    assertThatThrownBy(() -> Uncertain.triangular(input, 0, 4, 3)).hasMessageContaining("peak");
    assertThatThrownBy(() -> Spread.within(1).quantile(1.5, 0)).hasMessageContaining("share");
  }
}
