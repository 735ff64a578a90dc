package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlingTest {

  /** Source: public chart of a sling maker: factors on the pull at angles from the horizontal. */
  @ParameterizedTest
  @CsvSource({"80, 1.015", "60, 1.155", "45, 1.414", "30, 2.000"})
  void tensionFactors(double degrees, double factor) {
    assertThat(Sling.tensionFactor(Math.toRadians(degrees))).isCloseTo(factor, within(5e-4));
  }

  /** Same chart: what is left of the load. */
  @ParameterizedTest
  @CsvSource({"60, 0.866", "45, 0.707", "30, 0.500"})
  void reductions(double degrees, double share) {
    assertThat(Sling.load(1, 1, Math.toRadians(degrees))).isCloseTo(share, within(5e-4));
  }

  /**
   * Source: instruction of a sling maker: a leg of 96 in under a hook 84 in up keeps 7000 of 8000
   * lb; a share of 1200 lb on 120 in with 96 in of height pulls 1500 lb. The page prints 120 with a
   * foot mark, which cannot be.
   */
  @Test
  void byLengthAndHeight() {
    assertThat(Sling.load(8000, 1, Math.asin(84.0 / 96))).isCloseTo(7000, within(1e-9));
    assertThat(Sling.legTension(1200, 1, Math.asin(96.0 / 120))).isCloseTo(1500, within(1e-9));
  }

  /**
   * Source: university rigging page: 2000 lb on two legs, 30 and 60 degrees from the vertical;
   * 1154.7 is cut to 1154 there.
   */
  @Test
  void angleFromTheVertical() {
    assertThat(Sling.legTension(2000, 2, Math.toRadians(90 - 30))).isCloseTo(1154, within(1.0));
    assertThat(Sling.legTension(2000, 2, Math.toRadians(90 - 60))).isCloseTo(2000, within(1e-6));
  }

  @Test
  void moreThanThreeLegsCountAsThree() {
    double upright = Math.PI / 2;
    assertThat(Sling.legTension(3000, 4, upright)).isCloseTo(1000, within(1e-9));
    assertThat(Sling.load(1000, 4, upright)).isCloseTo(3000, within(1e-9));
  }

  @Test
  void mistakes() {
    assertThatThrownBy(() -> Sling.tensionFactor(0.5))
        .hasMessage("sling: angle is 0.5; wanted: an angle from the horizontal in rad, π/6 to π/2");
    assertThatThrownBy(() -> Sling.tensionFactor(60)).hasMessageContaining("angle is 60.0");
    assertThatThrownBy(() -> Sling.load(1, 0, 1)).hasMessage("sling: legs is 0; wanted: 1 or more");
    assertThatThrownBy(() -> Sling.load(-1, 2, 1))
        .hasMessage("sling: working load of a leg is -1.0; wanted: above 0");
    assertThatThrownBy(() -> Sling.legTension(-1, 2, 1))
        .hasMessage("sling: load is -1.0; wanted: 0 or more");
  }
}
