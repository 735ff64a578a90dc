package bellcrank.statics.motion.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Zeros at the ends, beside gaps, and none at all. */
class RootSearchTest {

  @Test
  void zerosAtTheEndsOfTheRangeCount() {
    RootSearch found = RootSearch.over(x -> OptionalDouble.of(x * (x - 1)), 0, 1, 1e-14);
    assertThat(found.roots()).containsExactly(0.0, 1.0);
  }

  @Test
  void allZeroIsOneStretch() {
    RootSearch found = RootSearch.over(x -> OptionalDouble.of(0), -2, 3, 0);
    assertThat(found.stretches()).containsExactly(-2.0, 3.0);
    assertThat(found.roots()).isEmpty();
  }

  @Test
  void withoutAnyValueThereIsNoNearest() {
    RootSearch found = RootSearch.over(x -> OptionalDouble.empty(), 0, 1, 0);
    assertThat(found.nearest()).isEmpty();
    assertThat(found.roots()).isEmpty();
  }

  @Test
  void aZeroWhereValuesEndCounts() {
    RootSearch found =
        RootSearch.over(
            x -> x < 0.3 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(x - 0.3)),
            0,
            1,
            1e-6);
    assertThat(found.roots()).hasSize(1);
    assertThat(found.roots().get(0)).isCloseTo(0.3, within(1e-11));
  }

  @Test
  void valuesThatEndBothWaysHideNoZero() {
    RootSearch found =
        RootSearch.over(
            x -> x < 0.2507 ? OptionalDouble.empty() : OptionalDouble.of(x - 0.2511), 0, 1, 1e-13);
    assertThat(found.roots()).hasSize(1);
    assertThat(found.roots().get(0)).isCloseTo(0.2511, within(1e-12));
  }

  @Test
  void aSmallGapBetweenSamplesHidesNoZeroBesideIt() {
    RootSearch found =
        RootSearch.over(
            x ->
                Math.abs(x - 0.50208) < 1e-4
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(x - 0.5012),
            0,
            1,
            1e-13);
    assertThat(found.roots()).hasSize(1);
    assertThat(found.roots().get(0)).isCloseTo(0.5012, within(1e-12));
  }

  @Test
  void aSampleThatIsNearlyZeroIsSharpened() {
    double root = 0.5 + 1e-12;
    RootSearch found = RootSearch.over(x -> OptionalDouble.of(x - root), 0, 1, 1e-11);
    assertThat(found.roots()).hasSize(1);
    assertThat(found.roots().get(0)).isCloseTo(root, within(2e-13));
  }

  @Test
  void numbersWithoutValueCountAsNone() {
    RootSearch found = RootSearch.over(x -> OptionalDouble.of(Double.NaN), 0, 1, 0);
    assertThat(found.nearest()).isEmpty();
  }

  /** It touches zero at 0.3003, which is found last, and passes it at 0.8007 and at a sample. */
  @Test
  void zerosAreToldInOrderAndOnce() {
    RootSearch found =
        RootSearch.over(
            x -> OptionalDouble.of((x - 0.3003) * (x - 0.3003) * (x - 0.8007) * (x - 0.5)),
            0,
            1,
            1e-12);
    assertThat(found.roots()).hasSize(3);
    assertThat(found.roots().get(0)).isCloseTo(0.3003, within(1e-5));
    assertThat(found.roots().get(1)).isCloseTo(0.5, within(1e-10));
    assertThat(found.roots().get(2)).isCloseTo(0.8007, within(1e-10));
  }
}
