package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Another assembly solved with another library says the same, and the dual proves the numbers. */
class SecondOpinionProperties {

  private static final Set<String> PUSH = Set.of("push");

  @Provide
  Arbitrary<Device> any() {
    return RandomContacts.any();
  }

  @Provide
  Arbitrary<Device> loose() {
    return RandomContacts.loose();
  }

  @Property(tries = 120, edgeCases = EdgeCasesMode.NONE)
  void sameMultiples(@ForAll("any") Device device) {
    multiples(device);
  }

  @Property(tries = 80, edgeCases = EdgeCasesMode.NONE)
  void sameMultiplesOfLoosePieces(@ForAll("loose") Device device) {
    multiples(device);
  }

  private static void multiples(Device device) {
    PlainStates plain = PlainStates.of(device, 1, PUSH);
    PlainStates.Best high = plain.greatestNumber(1);
    PlainStates.Best low = plain.greatestNumber(-1);
    Assume.that(high.kind != PlainStates.Kind.UNSURE && low.kind != PlainStates.Kind.UNSURE);
    Limit limit = Limits.of(device).limit(Variation.of("push"));
    if (high.kind == PlainStates.Kind.NONE) {
      assertThat(limit).isInstanceOf(Limit.Never.class);
      return;
    }
    assertThat(limit).isInstanceOf(Limit.Between.class);
    Limit.Between between = (Limit.Between) limit;
    end(device, plain, between.greatest(), high, 1);
    end(device, plain, between.least(), low, -1);
  }

  private static void end(
      Device device, PlainStates plain, Limit.End end, PlainStates.Best best, int sign) {
    if (best.kind == PlainStates.Kind.UNBOUNDED) {
      PlainStates smooth = PlainStates.of(device, 0, PUSH);
      PlainStates.Kind without = smooth.greatestNumber(sign).kind;
      Assume.that(without != PlainStates.Kind.UNSURE);
      assertThat(end)
          .isInstanceOf(
              without == PlainStates.Kind.UNBOUNDED
                  ? Limit.End.Unlimited.class
                  : Limit.End.SelfLocking.class);
      return;
    }
    assertThat(end).isInstanceOf(Limit.End.At.class);
    double value = ((Limit.End.At) end).value();
    double close = 1e-7 * Math.max(1, Math.abs(value));
    assertThat(value).isCloseTo(sign * best.value, within(close));
    PlainStates.Best dual = plain.boundOfNumber(sign);
    assertThat(dual.kind).as("proof").isEqualTo(PlainStates.Kind.FOUND);
    assertThat(plain.missOfProof(plain.nothing(), sign, dual.x)).isLessThan(1e-9);
    assertThat(value).as("proof").isCloseTo(sign * plain.proved(dual.x), within(close));
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void sameRanges(@ForAll("any") Device device) {
    PlainStates plain = PlainStates.of(device);
    PlainStates.Best any = plain.greatest(plain.nothing());
    Assume.that(any.kind != PlainStates.Kind.UNSURE);
    Limits limits = Limits.of(device);
    Verdict verdict = limits.verdict();
    boolean holds = any.kind == PlainStates.Kind.FOUND;
    assertThat(verdict instanceof Verdict.DoesNotHold).as(verdict.words()).isEqualTo(!holds);
    for (List<String> ask : asks(device)) {
      Optional<Range> range = limits.range(ask.get(0));
      assertThat(range.isPresent()).as(ask.get(0)).isEqualTo(holds);
      if (range.isPresent()) {
        range(plain, range.get().greatest(), ask, 1);
        range(plain, range.get().least(), ask, -1);
      }
    }
  }

  private static void range(PlainStates plain, OptionalDouble end, List<String> ask, int sign) {
    double[] goal = plain.reading(ask.get(1), ask.get(2), sign);
    PlainStates.Best best = plain.greatest(goal);
    Assume.that(best.kind != PlainStates.Kind.UNSURE);
    assertThat(end.isPresent())
        .as(ask.get(0) + " has an end")
        .isEqualTo(best.kind == PlainStates.Kind.FOUND);
    if (end.isPresent()) {
      double value = end.getAsDouble();
      double close = 1e-7 * Math.max(plain.scale(), Math.abs(value));
      assertThat(value).as(ask.get(0)).isCloseTo(sign * best.value, within(close));
      PlainStates.Best dual = plain.bound(goal);
      assertThat(plain.missOfProof(goal, 0, dual.x)).isLessThan(1e-9);
      assertThat(value)
          .as("proof of " + ask.get(0))
          .isCloseTo(sign * plain.scale() * plain.proved(dual.x), within(close));
    }
  }

  /** Text of an ask, the part it is about, and what is read there. */
  static List<List<String>> asks(Device device) {
    List<List<String>> asks = new ArrayList<>();
    device
        .connections()
        .forEach(
            one -> {
              String name = one.name();
              List<String> whats =
                  switch (one.kind()) {
                    case "contact", "contact base" ->
                        PlainParts.of(device, 1).stream()
                                .anyMatch(f -> f.part().equals(name) && f.reads("friction") != 0)
                            ? List.of("normal", "friction")
                            : List.of("normal");
                    case "roller" -> List.of("normal");
                    case "wrap" -> List.of("tension", "end tension");
                    case "pin" -> List.of("x on " + one.bodies().get(0));
                    default -> List.of("tension");
                  };
              whats.forEach(what -> asks.add(List.of(name + "." + what, name, what)));
            });
    return asks;
  }

  /** The one load that is no weight. */
  static Force push(Device device) {
    Load push = device.load("push").orElseThrow();
    return (Force) push;
  }
}
