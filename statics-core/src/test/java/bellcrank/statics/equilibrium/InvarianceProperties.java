package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Sought;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Where the axes lie, how large the units are and which way one looks does not matter. */
class InvarianceProperties {

  @Provide
  Arbitrary<Device> any() {
    return RandomDevices.medium();
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void shifted(
      @ForAll("any") Device device,
      @ForAll @DoubleRange(min = -50, max = 50) double x,
      @ForAll @DoubleRange(min = -50, max = 50) double y) {
    same(device, new Similarity(false, 0, 1, Vector.of(x, y), 1));
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void turned(
      @ForAll("any") Device device, @ForAll @DoubleRange(min = -3.2, max = 3.2) double angle) {
    same(device, new Similarity(false, angle, 1, Vector.ZERO, 1));
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void inTheMirror(@ForAll("any") Device device) {
    same(device, new Similarity(true, 0, 1, Vector.ZERO, 1));
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void enlarged(
      @ForAll("any") Device device, @ForAll @DoubleRange(min = -3, max = 4) double tenTo) {
    same(device, new Similarity(false, 0, Math.pow(10, tenTo), Vector.ZERO, 1));
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void inFeetAndPounds(@ForAll("any") Device device) {
    same(device, new Similarity(false, 0, 1 / 0.3048, Vector.ZERO, 1 / 4.4482216152605));
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void allAtOnce(
      @ForAll("any") Device device,
      @ForAll boolean mirror,
      @ForAll @DoubleRange(min = -3.2, max = 3.2) double angle,
      @ForAll @DoubleRange(min = -2, max = 2) double lengthTenTo,
      @ForAll @DoubleRange(min = -6, max = 6) double forceTenTo) {
    double scale = Math.pow(10, lengthTenTo);
    same(
        device,
        new Similarity(
            mirror, angle, scale, Vector.of(3 * scale, -7 * scale), Math.pow(10, forceTenTo)));
  }

  static void same(Device device, Similarity similarity) {
    PlainStatics plain = PlainStatics.of(device);
    Assume.that(plain.isClear());
    Balance before = Balance.of(device);
    Balance after = Balance.of(similarity.of(device));
    assertThat(Si.verdict(after)).isEqualTo(Si.verdict(before));
    assertThat(after.redundancy()).as("redundancy").isEqualTo(before.redundancy());
    assertThat(after.freedoms()).as("freedoms").hasSameSizeAs(before.freedoms());
    assertThat(after.mobility().freedoms())
        .as("mobility")
        .hasSameSizeAs(before.mobility().freedoms());
    if (!plain.isBalanced()) {
      return;
    }
    double close = 1e-8 * plain.forceScale() * similarity.force();
    reactions(before, after, similarity, close, device.size());
    scalars(plain, before, after, similarity, close);
    violations(before, after, similarity, close);
  }

  private static void reactions(
      Balance before, Balance after, Similarity similarity, double close, double size) {
    List<Reaction> old = before.reactions();
    List<Reaction> now = after.reactions();
    for (int i = 0; i < old.size(); i++) {
      Reaction was = old.get(i);
      Reaction is = now.get(i);
      String as = was.connection() + " on " + was.body();
      if (was.x() instanceof Answer.Value x
          && was.y() instanceof Answer.Value y
          && is.x() instanceof Answer.Value nx
          && is.y() instanceof Answer.Value ny) {
        Vector expected = similarity.ofForce(Vector.of(x.si(), y.si()));
        assertThat(nx.si()).as(as).isCloseTo(expected.x(), within(close));
        assertThat(ny.si()).as(as).isCloseTo(expected.y(), within(close));
      }
      if (was.couple() instanceof Answer.Value c && is.couple() instanceof Answer.Value nc) {
        assertThat(nc.si())
            .as(as)
            .isCloseTo(c.si() * similarity.couple(), within(close * size * similarity.scale()));
      }
    }
  }

  /** Answers that do not depend on the axes. */
  private static void scalars(
      PlainStatics plain, Balance before, Balance after, Similarity similarity, double close) {
    List<String> intensities =
        before.device().sought().stream()
            .filter(one -> one.want() == Sought.Want.INTENSITY)
            .map(Sought::name)
            .toList();
    List<PlainUnknown> unknowns = plain.unknowns();
    for (int i = 0; i < unknowns.size(); i++) {
      String ask = unknowns.get(i).ask();
      if (ask.contains(".x") || ask.contains(".y") || plain.isAllButDetermined(i)) {
        continue;
      }
      Answer was = before.answer(ask);
      Answer is = after.answer(ask);
      assertThat(is.getClass()).as(ask).isEqualTo(was.getClass());
      if (was instanceof Answer.Value value && is instanceof Answer.Value now) {
        double factor = similarity.force();
        double unit = unknowns.get(i).unit();
        double slack = close * unit;
        if (ask.endsWith(".friction")) {
          factor *= similarity.sense();
        } else if (unknowns.get(i).isCouple()) {
          factor = similarity.couple();
          slack *= similarity.scale();
        } else if (intensities.contains(ask)) {
          factor /= similarity.scale();
          slack /= similarity.scale();
        } else if (ask.endsWith(".mass")) {
          factor = 1;
          slack /= similarity.force();
        }
        assertThat(now.si()).as(ask).isCloseTo(value.si() * factor, within(slack));
      }
    }
  }

  private static void violations(
      Balance before, Balance after, Similarity similarity, double close) {
    List<Violation> clearlyBefore = clear(before.violations(), close / similarity.force());
    List<Violation> clearlyAfter = clear(after.violations(), close);
    assertThat(clearlyAfter)
        .extracting(one -> one.part() + " " + one.words())
        .containsExactlyElementsOf(
            clearlyBefore.stream().map(one -> one.part() + " " + one.words()).toList());
  }

  /** Violations beyond what rounding may make or hide. */
  private static List<Violation> clear(List<Violation> violations, double close) {
    return violations.stream()
        .filter(
            one ->
                one.dimension() == bellcrank.statics.units.Dimension.FORCE
                    && Math.abs(one.needed() - one.limit()) > 10 * close)
        .toList();
  }
}
