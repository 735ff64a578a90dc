package bellcrank.statics.study.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Means and deviations taken up piece by piece. */
final class MomentsTest {

  private static Moments of(long first, double... values) {
    Moments moments = new Moments();
    for (int k = 0; k < values.length; k++) {
      moments.add(values[k], first + k);
    }
    return moments;
  }

  @Test
  void aFewNumbersByHand() {
    Moments moments = of(10, 2, 4, 4, 4, 5, 5, 7, 9);
    assertThat(moments.count()).isEqualTo(8);
    assertThat(moments.mean()).isEqualTo(5);
    // squares off the mean add up to 32
    assertThat(moments.deviation()).isCloseTo(Math.sqrt(32.0 / 7), within(1e-15));
    assertThat(moments.least()).isEqualTo(2);
    assertThat(moments.leastAt()).isEqualTo(10);
    assertThat(moments.greatest()).isEqualTo(9);
    assertThat(moments.greatestAt()).isEqualTo(17);
    assertThat(of(0, 3).deviation()).isZero();
    assertThat(of(0).mean()).isZero();
  }

  @Test
  void piecesTogetherAreTheWhole() {
    Moments pieces = of(0);
    pieces.addAll(of(0, 2, 4));
    pieces.addAll(of(2));
    pieces.addAll(of(2, 4, 4, 5));
    pieces.addAll(of(5, 5, 7, 9));
    assertThat(pieces.count()).isEqualTo(8);
    assertThat(pieces.mean()).isCloseTo(5, within(1e-15));
    assertThat(pieces.deviation()).isCloseTo(Math.sqrt(32.0 / 7), within(1e-14));
    assertThat(pieces.leastAt()).isZero();
    assertThat(pieces.greatestAt()).isEqualTo(7);
  }

  @Test
  void aSmallSpreadRoundALargeMeanIsKept() {
    Moments moments = new Moments();
    for (int k = 0; k < 1000; k++) {
      moments.add(1e9 + (k % 2 == 0 ? 0.25 : -0.25), k);
    }
    assertThat(moments.deviation()).isCloseTo(0.25 * Math.sqrt(1000.0 / 999), within(1e-6));
  }

  @Test
  void theFirstOfEqualEndsIsKept() {
    Moments moments = of(3, 1, 1, 1);
    assertThat(moments.leastAt()).isEqualTo(3);
    assertThat(moments.greatestAt()).isEqualTo(3);
    moments.addAll(of(6, 1));
    assertThat(moments.leastAt()).isEqualTo(3);
  }
}
