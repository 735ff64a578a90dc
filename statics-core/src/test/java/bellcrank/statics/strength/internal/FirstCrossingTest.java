package bellcrank.statics.strength.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Crossings of functions that can be turned round by hand. */
class FirstCrossingTest {

  private static double halfSquare(double x) {
    return x * x / 2;
  }

  private static void is(OptionalDouble found, double expected) {
    assertThat(found.orElseThrow()).isCloseTo(expected, within(1e-12 * expected));
  }

  @Test
  void upwardsFromZero() {
    is(FirstCrossing.of(FirstCrossingTest::halfSquare, 10), Math.sqrt(2));
    is(FirstCrossing.of(x -> x / 5, 10), 5);
    is(FirstCrossing.of(x -> x / 5, 5), 5);
    is(FirstCrossing.of(x -> 40 * x, 10), 0.025);
    is(FirstCrossing.of(x -> Math.expm1(x) / 1e5, 1e3), Math.log1p(1e5));
    assertThat(FirstCrossing.of(x -> x / 5, 4.999)).isEmpty();
    assertThat(FirstCrossing.of(x -> x / 1e12, 1e15)).as("too far to look").isEmpty();
  }

  /** A hump between 0.25 and 0.75 is seen although the end is below one again. */
  @Test
  void aHumpInTheFirstStretchIsSeen() {
    is(FirstCrossing.of(x -> 1 + 0.0625 - (x - 0.5) * (x - 0.5), 1), 0.25);
    assertThat(FirstCrossing.of(x -> 0.9 - (x - 0.5) * (x - 0.5), 1)).isEmpty();
  }

  @Test
  void upwardsWhereTheFunctionIsConvex() {
    is(FirstCrossing.ofConvex(FirstCrossingTest::halfSquare, 10), Math.sqrt(2));
    is(FirstCrossing.ofConvex(x -> x * x / 1e8, 1e9), 1e4);
    is(FirstCrossing.ofConvex(x -> Math.abs(x - 3) / 4, 10), 7);
    is(FirstCrossing.ofConvex(x -> x, 10), 1);
    is(FirstCrossing.ofConvex(x -> x / 7, 7), 7);
    is(FirstCrossing.ofConvex(x -> Math.max(0.5, x - 1), 100), 2);
    assertThat(FirstCrossing.ofConvex(x -> x / 7, 6.99)).isEmpty();
  }

  @Test
  void belowAKnownEnd() {
    for (double at : new double[] {0.1, 1, 2.4, 4.3, 4.9, 5}) {
      assertThat(FirstCrossing.below(x -> x / at, 5)).isCloseTo(at, within(1e-12));
      assertThat(FirstCrossing.below(x -> x * x / at / at, 5)).isCloseTo(at, within(1e-12));
    }
  }

  @Test
  void betweenTwoNumbers() {
    assertThat(FirstCrossing.root(FirstCrossingTest::halfSquare, 1, 2))
        .isCloseTo(Math.sqrt(2), within(1e-12));
    assertThat(FirstCrossing.root(x -> x / 2, 0, 2)).isEqualTo(2);
    assertThat(FirstCrossing.root(Math::expm1, 0, 3)).isCloseTo(Math.log(2), within(1e-12));
    assertThat(FirstCrossing.root(x -> x < 0.7 ? 0 : 2, 0, 1))
        .as("a jump")
        .isCloseTo(0.7, within(1e-9));
  }
}
