package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Strut;
import bellcrank.statics.geometry.Direction;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What a change of loads, order or restraints does to the answers. */
class ChangeProperties {

  @Provide
  Arbitrary<Device> any() {
    return RandomDevices.medium();
  }

  @Provide
  Arbitrary<Device> mostlyHeld() {
    return RandomDevices.mostlyHeld();
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  void theOrderOfPartsDoesNotMatter(@ForAll("any") Device device, @ForAll Random random) {
    PlainStatics plain = PlainStatics.of(device);
    Assume.that(plain.isClear());
    Balance before = Balance.of(device);
    Balance after = Balance.of(Rebuilt.shuffled(device, random), before.loadCase(), Pose.DRAWN);
    assertThat(Si.verdict(after)).isEqualTo(Si.verdict(before));
    assertThat(after.redundancy()).isEqualTo(before.redundancy());
    assertThat(after.freedoms()).hasSameSizeAs(before.freedoms());
    sameWhere(plain, before, after, 1);
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  void loadsTogetherDoWhatTheyDoOneByOne(
      @ForAll("any") Device device,
      @ForAll Random random,
      @ForAll @DoubleRange(min = -3, max = 3) double factor) {
    PlainStatics plain = PlainStatics.of(device);
    Assume.that(plain.isClear());
    Map<String, Double> one = new HashMap<>();
    Map<String, Double> other = new HashMap<>();
    Map<String, Double> both = new HashMap<>();
    Map<String, Double> none = new HashMap<>();
    for (Load load : device.loads()) {
      if (!(load instanceof Sought)) {
        boolean first = random.nextBoolean();
        one.put(load.name(), first ? 1.0 : 0.0);
        other.put(load.name(), first ? 0.0 : 1.0);
        both.put(load.name(), first ? 1.0 : factor);
        none.put(load.name(), 0.0);
      }
    }
    Balance a = of(device, one, 1);
    Balance b = of(device, other, 1);
    Balance sum = of(device, both, 1);
    Balance ownWeights = of(device, none, 1);
    Assume.that(isBalanced(a) && isBalanced(b) && isBalanced(ownWeights));
    assertThat(isBalanced(sum)).isTrue();
    double close = 1e-9 * 4 * plain.forceScale() + 1e-6;
    for (PlainUnknown unknown : plain.unknowns()) {
      String ask = unknown.ask();
      if (sum.answer(ask) instanceof Answer.Value value) {
        // weights of struts are no loads of a case: they act in each
        double weights = si(ownWeights, ask);
        double expected = weights + (si(a, ask) - weights) + factor * (si(b, ask) - weights);
        assertThat(value.si()).as(ask).isCloseTo(expected, within(close * unknown.unit()));
      }
    }
  }

  @Property(tries = 80, edgeCases = EdgeCasesMode.NONE)
  void aDynamicFactorMultipliesEveryForce(
      @ForAll("any") Device device, @ForAll @DoubleRange(min = 0.1, max = 10) double factor) {
    PlainStatics plain = PlainStatics.of(device, LoadCase.ALL_LOADS, Pose.DRAWN);
    Assume.that(plain.isClear() && plain.isBalanced());
    sameWhere(plain, of(device, Map.of(), 1), of(device, Map.of(), factor), factor);
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  void oneMoreRollerTakesAFreedomOrIsTooMuch(
      @ForAll("any") Device device,
      @ForAll @DoubleRange(min = 0, max = 6.2) double angle,
      @ForAll Random random) {
    String body = device.members().get(random.nextInt(device.members().size())).name();
    List<String> points = List.copyOf(device.points().keySet());
    String at = points.get(random.nextInt(points.size()));
    Device more = Rebuilt.withRoller(device, body, at, Direction.ofAngle(angle));
    Assume.that(PlainStatics.of(device).isClear() && PlainStatics.of(more).isClear());
    Assume.that(!hasLosses(device));
    Balance before = Balance.of(device, LoadCase.ALL_LOADS, Pose.DRAWN);
    Balance after = Balance.of(more);
    int held = before.freedoms().size() - after.freedoms().size();
    int tooMuch = after.redundancy() - before.redundancy();
    assertThat(held + tooMuch).isEqualTo(1);
    assertThat(held).isBetween(0, 1);
    if (held == 0 && !(after.outcome() instanceof Outcome.NoBalance)) {
      assertThat(after.undetermined()).isNotEmpty();
      assertThat(after.answer("one more")).isInstanceOf(Answer.Unanswered.class);
    }
  }

  @Property(tries = 80, edgeCases = EdgeCasesMode.NONE)
  void withoutOneRestraintAJustHeldDeviceMoves(
      @ForAll("mostlyHeld") Device device, @ForAll Random random) {
    PlainStatics plain = PlainStatics.of(device);
    Assume.that(plain.isClear() && plain.isHeld() && plain.redundancy() == 0);
    List<Connection> single = single(device);
    Assume.that(!single.isEmpty());
    Device less = Rebuilt.without(device, single.get(random.nextInt(single.size())));
    Assume.that(PlainStatics.of(less).isClear());
    Balance balance = Balance.of(less);
    assertThat(balance.freedoms()).hasSize(1);
    assertThat(balance.redundancy()).isZero();
    assertThat(balance.outcome()).isNotInstanceOf(Outcome.InBalance.class);
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void withoutARedundantRestraintDeterminedAnswersStay(
      @ForAll("any") Device device, @ForAll Random random) {
    PlainStatics plain = PlainStatics.of(device);
    Assume.that(plain.isClear() && plain.isBalanced() && plain.redundancy() > 0);
    Balance before = Balance.of(device);
    List<Connection> undetermined =
        single(device).stream()
            .filter(one -> before.answer(one.name()) instanceof Answer.Unanswered)
            .toList();
    Assume.that(!undetermined.isEmpty());
    Connection left = undetermined.get(random.nextInt(undetermined.size()));
    Device less = Rebuilt.without(device, left);
    Assume.that(PlainStatics.of(less, before.loadCase(), Pose.DRAWN).isClear());
    Balance after = Balance.of(less, before.loadCase(), Pose.DRAWN);
    assertThat(after.redundancy()).isEqualTo(before.redundancy() - 1);
    assertThat(Si.verdict(after)).isEqualTo(Si.verdict(before));
    for (PlainUnknown unknown : plain.unknowns()) {
      if (!unknown.part().equals(left.name())
          && before.answer(unknown.ask()) instanceof Answer.Value value) {
        assertThat(si(after, unknown.ask()))
            .as(unknown.ask())
            .isCloseTo(value.si(), within(1e-8 * plain.forceScale() * unknown.unit()));
      }
    }
  }

  /** Connections of one scalar restraint and no load. */
  private static List<Connection> single(Device device) {
    return device.connections().stream()
        .filter(
            one ->
                List.of("roller", "slot", "line", "screw", "reeving").contains(one.kind())
                    || (one instanceof Strut strut && strut.mass() == 0))
        .toList();
  }

  private static boolean hasLosses(Device device) {
    return PlainConnections.of(device, Pose.DRAWN).stream()
        .anyMatch(one -> one.forces() != one.motions());
  }

  private static Balance of(Device device, Map<String, Double> factors, double dynamic) {
    return Balance.of(device, new LoadCase("given", factors, dynamic), Pose.DRAWN);
  }

  private static boolean isBalanced(Balance balance) {
    return !(balance.outcome() instanceof Outcome.NoBalance);
  }

  private static double si(Balance balance, String ask) {
    return balance.number(ask).orElseThrow(() -> new AssertionError(ask + " is not answered"));
  }

  private static void sameWhere(PlainStatics plain, Balance before, Balance after, double factor) {
    List<PlainUnknown> unknowns = plain.unknowns();
    for (int i = 0; i < unknowns.size(); i++) {
      String ask = unknowns.get(i).ask();
      if (plain.isAllButDetermined(i)) {
        continue;
      }
      Answer was = before.answer(ask);
      Answer is = after.answer(ask);
      assertThat(is.getClass()).as(ask).isEqualTo(was.getClass());
      if (was instanceof Answer.Value value && is instanceof Answer.Value now) {
        double close = 1e-9 * plain.forceScale() * unknowns.get(i).unit() * factor;
        assertThat(now.si()).as(ask).isCloseTo(value.si() * factor, within(close));
      }
    }
  }
}
