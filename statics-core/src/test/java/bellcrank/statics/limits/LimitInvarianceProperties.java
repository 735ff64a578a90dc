package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Vector;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Axes, units, the way one looks and the order of parts do not matter to limits. */
class LimitInvarianceProperties {

  @Provide
  Arbitrary<Device> any() {
    return RandomContacts.any();
  }

  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void shifted(
      @ForAll("any") Device device,
      @ForAll @DoubleRange(min = -50, max = 50) double x,
      @ForAll @DoubleRange(min = -50, max = 50) double y) {
    same(device, new Seen(false, 0, 1, Vector.of(x, y), 1).of(device), words -> words);
  }

  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void turned(
      @ForAll("any") Device device, @ForAll @DoubleRange(min = -3.2, max = 3.2) double angle) {
    same(device, new Seen(false, angle, 1, Vector.ZERO, 1).of(device), words -> "");
  }

  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void inTheMirror(@ForAll("any") Device device) {
    same(
        device,
        new Seen(true, 0, 1, Vector.ZERO, 1).of(device),
        words -> words.replace("left", "_").replace("right", "left").replace("_", "right"));
  }

  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void inOtherUnits(
      @ForAll("any") Device device,
      @ForAll @DoubleRange(min = -3, max = 3) double lengthTenTo,
      @ForAll @DoubleRange(min = -5, max = 5) double forceTenTo) {
    double length = Math.pow(10, lengthTenTo);
    double force = Math.pow(10, forceTenTo);
    same(device, new Seen(false, 0, length, Vector.ZERO, force).of(device), words -> words);
  }

  @Property(tries = 50, edgeCases = EdgeCasesMode.NONE)
  void inAnotherOrder(@ForAll("any") Device device, @ForAll long seed) {
    same(device, Seen.shuffled(device, seed), words -> words);
  }

  /** Compares what is told; words of events as a change makes of the first ones. */
  private static void same(Device one, Device other, UnaryOperator<String> words) {
    Map<String, Double> before = numbers(one);
    Map<String, Double> after = numbers(other);
    assertThat(after.keySet()).isEqualTo(before.keySet());
    before.forEach(
        (what, value) ->
            assertThat(after.getOrDefault(what, 0.0))
                .as(what)
                .isCloseTo(value, within(1e-6 * Math.max(1, Math.abs(value)))));
    boolean told = !words.apply("slides").isEmpty();
    assertThat(events(other, told ? same -> same : words)).isEqualTo(events(one, words));
  }

  private static Map<String, Double> numbers(Device device) {
    Map<String, Double> numbers = new TreeMap<>();
    Limits limits = Limits.of(device);
    Verdict verdict = limits.verdict();
    String after = verdict instanceof Verdict.DoesNotHold not ? " after " + not.after() : "";
    numbers.put("verdict " + verdict.words() + after, 0.0);
    if (verdict instanceof Verdict.HoldsOnceSeated once) {
      numbers.put("squeezed " + new TreeSet<>(once.parts()), 0.0);
    }
    Limit limit = limits.limit(Variation.of("push"));
    if (limit instanceof Limit.Between between) {
      end(numbers, "greatest", between.greatest());
      end(numbers, "least", between.least());
    } else {
      numbers.put(limit.getClass().getSimpleName(), 0.0);
    }
    FrictionFactor factor = limits.frictionFactor();
    numbers.put(
        "friction " + factor.getClass().getSimpleName(),
        factor instanceof FrictionFactor.Least least ? least.factor() : 0.0);
    return numbers;
  }

  private static void end(Map<String, Double> numbers, String which, Limit.End end) {
    String kind = which + " " + end.getClass().getSimpleName();
    if (end instanceof Limit.End.At at) {
      numbers.put(kind, at.value());
      numbers.put(which + " ways " + at.how().ways() + at.how().motion().isPresent(), 0.0);
    } else {
      numbers.put(kind, 0.0);
    }
  }

  /** Which end, what kind, which part, and the changed words. */
  private static Set<String> events(Device device, UnaryOperator<String> words) {
    Set<String> events = new TreeSet<>();
    if (Limits.of(device).limit(Variation.of("push")) instanceof Limit.Between between) {
      for (Limit.End end : new Limit.End[] {between.least(), between.greatest()}) {
        if (end instanceof Limit.End.At at) {
          String which = end == between.least() ? "least " : "greatest ";
          for (Event event : at.how().events()) {
            events.add(
                which + event.kind() + " " + event.part() + " " + words.apply(event.words()));
          }
        }
      }
    }
    return events;
  }
}
