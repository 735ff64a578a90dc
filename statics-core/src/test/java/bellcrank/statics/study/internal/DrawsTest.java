package bellcrank.statics.study.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Numbers drawn at random. */
final class DrawsTest {

  @Test
  void bitsAreThoseOfTheGeneratorOfTheJdk() {
    for (long seed : new long[] {0, 1, -7, 1234567, Long.MIN_VALUE}) {
      SplittableRandom other = new SplittableRandom(seed);
      Draws draws = Draws.of(seed);
      for (int k = 0; k < 100; k++) {
        assertThat(draws.bits()).isEqualTo(other.nextLong());
      }
    }
  }

  @Test
  void sharesAreEvenlySpreadWithinTheirEnds() {
    int[] bins = new int[20];
    double sum = 0;
    int count = 200_000;
    Draws draws = Draws.of(5, 3);
    for (int k = 0; k < count; k++) {
      double share = draws.share();
      assertThat(share).isGreaterThan(0).isLessThan(1);
      bins[(int) (share * bins.length)]++;
      sum += share;
    }
    // five deviations of a mean and of a count
    assertThat(sum / count).isCloseTo(0.5, within(5 * Math.sqrt(1.0 / 12 / count)));
    for (int bin : bins) {
      assertThat((double) bin).isCloseTo(count / 20.0, within(5 * Math.sqrt(count / 20.0)));
    }
  }

  @Test
  void neighbouringSeedsAndBlocksHaveNothingInCommon() {
    Set<Double> seen = new HashSet<>();
    for (long seed = 0; seed < 30; seed++) {
      for (long block = 0; block < 30; block++) {
        Draws draws = Draws.of(seed, block);
        for (int k = 0; k < 30; k++) {
          assertThat(seen.add(draws.share())).isTrue();
        }
      }
    }
  }
}
