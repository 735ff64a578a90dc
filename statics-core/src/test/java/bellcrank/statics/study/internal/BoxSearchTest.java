package bellcrank.statics.study.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Least and greatest values over a box, for functions whose extremes are known. */
final class BoxSearchTest {

  private static BoxSearch search(
      double[] low, double[] high, ToDoubleFunction<double[]> function) {
    return search(low, high, BoxSearch.LOOKS, function);
  }

  private static BoxSearch search(
      double[] low, double[] high, int most, ToDoubleFunction<double[]> function) {
    double[] stated = new double[low.length];
    for (int i = 0; i < low.length; i++) {
      stated[i] = (low[i] + high[i]) / 2;
    }
    return BoxSearch.of(
        low, high, stated, most, at -> OptionalDouble.of(function.applyAsDouble(at)));
  }

  private static double[] all(int inputs, double value) {
    double[] all = new double[inputs];
    java.util.Arrays.fill(all, value);
    return all;
  }

  @Test
  void whatRisesOrFallsWithEachNumberIsExactAtItsCorners() {
    double[] low = {1, 2, -3};
    double[] high = {2, 5, 3};
    BoxSearch found = search(low, high, at -> at[0] * at[0] / at[1] + 0 * at[2]);
    assertThat(found.isMonotoneThroughout()).isTrue();
    assertThat(found.sawAllCorners()).isTrue();
    // the third number does nothing and stays as stated
    assertThat(found.end(true)).containsExactly(2, 2, 0, 2);
    assertThat(found.end(false)).containsExactly(1, 5, 0, 0.2);
    assertThat(found.sense(0)).isEqualTo(1);
    assertThat(found.sense(1)).isEqualTo(-1);
    assertThat(found.sense(2)).isZero();
    assertThat(found.matters(2)).isFalse();
  }

  @Test
  void exactRatesSpareTheSteps() {
    BoxSearch found =
        BoxSearch.of(
            all(2, 1),
            new double[] {3, 2},
            all(2, 1.5),
            BoxSearch.LOOKS,
            new BoxSearch.Function() {
              @Override
              public OptionalDouble at(double[] place) {
                return OptionalDouble.of(place[0] * place[0] / place[1]);
              }

              @Override
              public double[] rates(double[] place) {
                return new double[] {
                  2 * place[0] / place[1], -place[0] * place[0] / (place[1] * place[1])
                };
              }
            });
    assertThat(found.isMonotoneThroughout()).isTrue();
    assertThat(found.exactPlaces()).isEqualTo(4 + BoxSearch.INNER);
    assertThat(found.otherPlaces()).isZero();
    assertThat(found.looks()).isEqualTo(1 + 4 + BoxSearch.INNER + 2);
    assertThat(found.end(true)).containsExactly(3, 1, 9);
    assertThat(found.end(false)).containsExactly(1, 2, 0.5);
  }

  @Test
  void tenNumbersAreLookedAtInAllCorners() {
    BoxSearch found = search(all(10, 1), all(10, 2), at -> at[0] * at[9] - at[4]);
    assertThat(found.sawAllCorners()).isTrue();
    assertThat(found.isMonotoneThroughout()).isTrue();
    assertThat(found.end(true)[10]).isEqualTo(3);
  }

  @Test
  void manyNumbersAreLookedAtInSomeCornersOnly() {
    int inputs = 15;
    BoxSearch found =
        search(
            all(inputs, 1),
            all(inputs, 2),
            at -> {
              double sum = 0;
              for (int i = 0; i < inputs; i++) {
                sum += (i % 2 == 0 ? 1 : -1) * at[i] * at[(i + 2) % 14];
              }
              return sum;
            });
    assertThat(found.looks()).isLessThanOrEqualTo(BoxSearch.LOOKS);
    assertThat(found.sawAllCorners()).isFalse();
    assertThat(found.isMonotoneThroughout()).isTrue();
  }

  @Test
  void aBumpWithinTheBoxIsFound() {
    BoxSearch found =
        search(
            all(2, 0), all(2, 1), at -> -Math.pow(at[0] - 0.3, 2) - 2 * Math.pow(at[1] - 0.6, 2));
    assertThat(found.isMonotoneThroughout()).isFalse();
    assertThat(found.end(true)[0]).isCloseTo(0.3, within(1e-6));
    assertThat(found.end(true)[1]).isCloseTo(0.6, within(1e-6));
    assertThat(found.end(true)[2]).isCloseTo(0, within(1e-12));
    assertThat(found.end(false)).containsExactly(1, 0, -0.49 - 0.72);
    assertThat(found.sense(0)).isZero();
    assertThat(found.matters(0)).isTrue();
  }

  @Test
  void oneNumberIsScanned() {
    BoxSearch found = search(all(1, 0), all(1, 10), at -> Math.sin(at[0]) + 0.01 * at[0]);
    // the slope cos x + 0.01 vanishes at the second crest
    double crest = Math.acos(-0.01) + 2 * Math.PI;
    assertThat(found.end(true)[0]).isCloseTo(crest, within(1e-5));
    assertThat(found.end(true)[1]).isCloseTo(Math.sin(crest) + 0.01 * crest, within(1e-11));
  }

  @Test
  void aRidgeOfTwoPlanesDoesNotStopTheSearch() {
    // greatest where all three planes meet
    BoxSearch found =
        search(
            all(2, 0),
            all(2, 1),
            at -> Math.min(Math.min(2 * at[0] - at[1], 2 * at[1] - at[0]), 1 - at[0] - at[1]));
    assertThat(found.isMonotoneThroughout()).isFalse();
    assertThat(found.end(true)[2]).isCloseTo(1.0 / 3, within(1e-6));
  }

  @Test
  void severalHillsAreTriedAndTheHighestIsKept() {
    BoxSearch found =
        search(
            all(2, -1),
            all(2, 1),
            at ->
                Math.exp(-8 * (Math.pow(at[0] - 0.6, 2) + Math.pow(at[1] - 0.6, 2)))
                    + 0.8 * Math.exp(-8 * (Math.pow(at[0] + 0.6, 2) + Math.pow(at[1] + 0.6, 2))));
    assertThat(found.end(true)[0]).isCloseTo(0.6, within(1e-3));
  }

  @Test
  void placesWithoutAValueMakeNothingMonotone() {
    BoxSearch found =
        BoxSearch.of(
            all(2, 0),
            all(2, 1),
            all(2, 0.5),
            BoxSearch.LOOKS,
            at -> at[0] + at[1] > 1.5 ? OptionalDouble.empty() : OptionalDouble.of(at[0] + at[1]));
    assertThat(found.isMonotoneThroughout()).isFalse();
    assertThat(found.end(true)[2]).isCloseTo(1.5, within(1e-4));
    assertThat(found.end(false)).containsExactly(0, 0, 0);
  }

  @Test
  void nowhereAValueIsToldByNoEnds() {
    BoxSearch found =
        BoxSearch.of(
            all(2, 0), all(2, 1), all(2, 0.5), BoxSearch.LOOKS, at -> OptionalDouble.empty());
    assertThat(found.end(true)).isEmpty();
    assertThat(found.isMonotoneThroughout()).isFalse();
    assertThat(found.looks()).isLessThan(BoxSearch.LOOKS);
  }

  @Test
  void looksStayWithinTheirBound() {
    int[] looks = {0};
    BoxSearch found =
        search(
            all(3, 0),
            all(3, 1),
            300,
            at -> {
              looks[0]++;
              return Math.sin(9 * at[0]) * at[1] - at[2];
            });
    assertThat(looks[0]).isEqualTo(found.looks()).isLessThanOrEqualTo(300);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.5, 0.62})
  void aHiddenBumpBetweenTheCornersIsNoMonotoneFunction(double middle) {
    // rises at both corners, but not in between
    BoxSearch found =
        search(
            all(1, 0), all(1, 1), at -> at[0] + 0.8 * Math.exp(-200 * Math.pow(at[0] - middle, 2)));
    assertThat(found.isMonotoneThroughout()).isFalse();
    assertThat(found.end(true)[1]).isCloseTo(Math.max(1, middle + 0.8), within(0.01));
  }

  @Test
  void constantsStayAsStated() {
    BoxSearch found = search(all(2, 0), all(2, 1), at -> 7);
    assertThat(found.isMonotoneThroughout()).isTrue();
    assertThat(found.end(true)).containsExactly(0.5, 0.5, 7);
  }
}
