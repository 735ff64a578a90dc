package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.limits.internal.HoldingSpan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;

/** How far a device holds, told from two states that are read, is what its limits decide. */
class HoldingSpanProperties {

  private static final String PUSH = "push";

  @Provide
  Arbitrary<List<Double>> numbers() {
    return Arbitraries.doubles().between(0, 1).ofScale(3).list().ofSize(4);
  }

  /** A force between 200 N to the left and down, and 200 N to the right and up. */
  private static Vector push(List<Double> numbers) {
    return Vector.of(400 * numbers.get(0) - 200, 400 * numbers.get(1) - 200);
  }

  private static double mass(List<Double> numbers) {
    return numbers.get(2) < 0.2 ? 0 : 60 * numbers.get(2);
  }

  private static Device chest(List<Double> numbers) {
    double friction = 0.05 + 0.6 * numbers.get(3);
    return Device.named("chest")
        .point("base", 0, 0)
        .point("middle", 0.05, 0.9)
        .point("hand", -0.3, 1.2)
        .member("chest", "base", "middle", "hand")
        .connect(
            new ContactBase(
                "floor", "base", "chest", "ground", Direction.UP, 0.6, friction, friction))
        .load(new Weight("own", "chest", Optional.of("middle"), mass(numbers)))
        .force(PUSH, "chest", "hand", push(numbers))
        .build();
  }

  private static Device ladder(List<Double> numbers) {
    double friction = 0.05 + 0.8 * numbers.get(3);
    return Device.named("ladder")
        .point("foot", 0, 0)
        .point("rung", 0.6, 0.8)
        .point("top", 3, 4)
        .member("ladder", "foot", "rung", "top")
        .connect(new Contact("foot", "foot", "ladder", "ground", Direction.UP, friction, friction))
        .connect(new Contact("wall", "top", "ladder", "ground", Direction.LEFT, 0, 0))
        .load(new Weight("picker", "ladder", Optional.of("rung"), mass(numbers)))
        .force(PUSH, "ladder", "top", push(numbers))
        .build();
  }

  private static Device boom(List<Double> numbers) {
    return Device.named("boom")
        .point("heel", 0, 0)
        .point("middle", 1, 0.4)
        .point("tip", 2, 0.8)
        .point("hook", -0.5, 2 + numbers.get(3))
        .member("boom", "heel", "middle", "tip")
        .pin("heel", "heel", "boom", "ground")
        .line("chain", End.of("boom", "tip"), End.of("ground", "hook"))
        .load(new Weight("bucket", "boom", Optional.of("middle"), mass(numbers)))
        .force(PUSH, "boom", "tip", push(numbers))
        .build();
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void twoStatesSayHowFarItHolds(
      @ForAll("numbers") List<Double> numbers,
      @ForAll @DoubleRange(min = -0.2, max = 0.2) double turn) {
    for (Device device : List.of(chest(numbers), ladder(numbers), boom(numbers))) {
      String body = device.members().get(0).name();
      same(device, Pose.DRAWN);
      same(device, Pose.of(Map.of(body, Frame.turnAbout(Point.ORIGIN, turn))));
    }
  }

  private static void same(Device device, Pose pose) {
    LoadCase all = device.cases().get(0);
    Needs needs = new Needs();
    Reading reading = new Reading(device, needs);
    CarriedForces room = reading.room(needs);
    double[] none = reading.unknowns();
    double[] one = reading.unknowns();
    assertThat(reading.isComplete()).isTrue();
    assertThat(reading.read(pose, Grown.by(all, Set.of(PUSH), 0), room)).isTrue();
    reading.unknowns(none);
    assertThat(reading.readAgain(pose, all, room)).isTrue();
    reading.unknowns(one);
    HoldingSpan span = HoldingSpan.of(device, all).orElseThrow();
    boolean holds = span.find(none, one, Math.max(1, reading.loads()));

    Limit limit = Limits.of(device, all, pose, List.of()).limit(Variation.of(PUSH));
    Statistics.label("limit").collect(limit.getClass().getSimpleName());
    assertThat(holds).as("%s", limit).isEqualTo(limit instanceof Limit.Between);
    if (limit instanceof Limit.Between between) {
      same(span.greatest(), between.greatest(), Double.POSITIVE_INFINITY);
      same(span.least(), between.least(), Double.NEGATIVE_INFINITY);
    }
  }

  private static void same(double found, Limit.End end, double endless) {
    Statistics.label("end").collect(end.getClass().getSimpleName());
    if (end instanceof Limit.End.At at) {
      assertThat(found).isCloseTo(at.value(), within(1e-9 * Math.max(1, Math.abs(at.value()))));
    } else {
      assertThat(found).isEqualTo(endless);
    }
  }
}
