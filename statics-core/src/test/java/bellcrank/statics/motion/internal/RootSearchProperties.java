package bellcrank.statics.motion.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

/** All zeros are found, and nothing that is none. */
class RootSearchProperties {

  private static RootSearch search(DoubleUnaryOperator function, double from, double to) {
    return RootSearch.over(
        x -> OptionalDouble.of(function.applyAsDouble(x)), from, to, 1e-13 * (to - from));
  }

  @Property
  void allSimpleRootsOfAPolynomial(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 97) Integer> places,
      @ForAll @DoubleRange(min = -50, max = 50) @Scale(9) double from,
      @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(9) double range) {
    TreeSet<Integer> different = new TreeSet<>(places);
    RootSearch found =
        search(
            x -> {
              double product = range;
              for (int place : different) {
                product *= ((x - from) / range - place / 98.3) * 4;
              }
              return product;
            },
            from,
            from + range);
    assertThat(found.roots()).hasSameSizeAs(different);
    int k = 0;
    for (int place : different) {
      double at = from + range * place / 98.3;
      double accuracy = 1e-12 * (range + Math.abs(from));
      assertThat(found.roots().get(k++)).isCloseTo(at, within(accuracy));
    }
  }

  @Property
  void twoRootsNearerThanAStepAreFoundWhereTheValueBendsBack(
      @ForAll @DoubleRange(min = 0.02, max = 0.98) @Scale(9) double middle,
      @ForAll @DoubleRange(min = 1e-5, max = 1e-3) @Scale(9) double half) {
    // a sampled value that is zero to rounding is taken as a root itself, and hides the one beside
    // it
    for (double root : new double[] {middle - half, middle + half}) {
      double steps = root * 240;
      Assume.that(Math.abs(steps - Math.rint(steps)) > 1e-3);
    }
    RootSearch found = search(x -> (x - middle) * (x - middle) - half * half, 0, 1);
    assertThat(found.roots()).hasSize(2);
    assertThat(found.roots().get(0)).isCloseTo(middle - half, within(1e-10));
    assertThat(found.roots().get(1)).isCloseTo(middle + half, within(1e-10));
  }

  @Property
  void aTouchedZeroIsFoundOnce(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(9) double place, @ForAll boolean sharp) {
    RootSearch found = search(x -> sharp ? Math.abs(x - place) : (x - place) * (x - place), 0, 1);
    assertThat(found.roots()).hasSize(1);
    assertThat(found.roots().get(0)).isCloseTo(place, within(sharp ? 1e-12 : 1e-6));
  }

  @Property
  void jumpsAndPolesAreNoZeros(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(9) double place,
      @ForAll @DoubleRange(min = 0.01, max = 3) @Scale(9) double size) {
    assertThat(search(x -> x < place ? -size : 1, 0, 1).roots()).isEmpty();
    Assume.that(Math.abs(place * RootSearch.STEPS - Math.rint(place * RootSearch.STEPS)) > 1e-9);
    assertThat(search(x -> size / (x - place), 0, 1).roots()).isEmpty();
  }

  @Property
  void whatTouchesWithoutReachingIsNoZeroButTheNearest(
      @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(9) double place,
      @ForAll @DoubleRange(min = 1e-6, max = 1) @Scale(9) double miss) {
    RootSearch found = search(x -> miss + (x - place) * (x - place), 0, 1);
    assertThat(found.roots()).isEmpty();
    assertThat(found.stretches()).isEmpty();
    assertThat(found.nearest().orElseThrow()).isCloseTo(place, within(1e-6));
  }

  @Property
  void valuesMayEndBeforeTheRangeDoes(
      @ForAll @DoubleRange(min = 0.1, max = 0.5) @Scale(9) double root,
      @ForAll @DoubleRange(min = 1e-4, max = 0.4) @Scale(9) double further) {
    RootSearch found =
        RootSearch.over(
            x -> x <= root + further ? OptionalDouble.of(x - root) : OptionalDouble.empty(),
            0,
            1,
            1e-13);
    assertThat(found.roots()).hasSize(1);
    assertThat(found.roots().get(0)).isCloseTo(root, within(1e-12));
  }

  @Property
  void aStretchOfZerosIsFoundWithItsEnds(
      @ForAll @DoubleRange(min = 0.05, max = 0.4) @Scale(9) double first,
      @ForAll @DoubleRange(min = 0.45, max = 0.95) @Scale(9) double last) {
    RootSearch found = search(x -> Math.min(0, x - first) + Math.max(0, x - last), 0, 1);
    assertThat(found.roots()).isEmpty();
    assertThat(found.stretches()).hasSize(2);
    assertThat(found.stretches().get(0)).isCloseTo(first, within(1e-11));
    assertThat(found.stretches().get(1)).isCloseTo(last, within(1e-11));
  }
}
