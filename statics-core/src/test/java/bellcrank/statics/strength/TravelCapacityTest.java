package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.MPA;
import static bellcrank.statics.strength.Tried.STEEL;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.strength.TravelCapacity.Worst;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What gives first over a course: a lever that is turned by a couple at its hinge. */
class TravelCapacityTest {

  private static DeviceBuilder lever(double mass) {
    DeviceBuilder builder =
        Device.named("lever")
            .point("hinge", 0, 0)
            .point("middle", 0.5, 0)
            .point("tip", 1, 0)
            .point("post", -0.3, 1.4)
            .member("lever", "hinge", "middle", "tip")
            .pin("hinge", "hinge", "lever", "ground")
            .force("cask", "lever", "tip", Vector.of(0, -100));
    if (mass > 0) {
      builder.load(new Weight("bucket", "lever", Optional.of("middle"), mass));
    }
    return builder;
  }

  private static Device turned(double mass) {
    return lever(mass)
        .load(
            new Sought("turn", Sought.Want.COUPLE, "lever", Optional.of("hinge"), Optional.empty()))
        .build();
  }

  private static Course course(Device device, double least, double greatest) {
    return (Course) Travel.of(device, Drive.turn("lever"), least, greatest);
  }

  private static Worst of(TravelCapacity capacity, String what) {
    return capacity.ranked().stream()
        .filter(
            worst ->
                worst.crossing() instanceof Crossing.Used used && used.stated().what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Turned up by θ the hinge carries N = −100·sin θ N and M = −100·cos θ N·m. The bottom is pressed
   * by 100·(sin θ/A + cos θ·L/S), most at tan θ = S/(A·L) = 40/6 mm/m: θ = 0.0066666 rad, by
   * 100·√(1/A² + L²/S²) = 18.7504 MPa against 235: 12.533 times. The top gives at −θ.
   */
  @Test
  void theWorstPoseLiesBetweenTheSteps() {
    Sizing sizing = Sizing.of(Method.RESISTANCE).with("lever", BAR, STEEL);
    TravelCapacity capacity =
        TravelCapacity.of(course(turned(0), -0.5, 0.6), sizing, Variation.of("cask"));
    double stress = 100 * Math.hypot(1 / BAR.area(), 1 / BAR.bottomModulus());

    Worst bottom = of(capacity, "stress at the bottom face of hinge–middle");
    assertThat(bottom.crossing().multiple()).isCloseTo(235 * MPA / stress, within(1e-9));
    assertThat(bottom.drive()).isCloseTo(Math.atan(1 / 150.0), within(1e-6));
    assertThat(bottom.share()).isCloseTo((0.5 + 1 / 150.0) / 1.1, within(1e-5));
    Worst top = of(capacity, "stress at the top face of hinge–middle");
    assertThat(top.drive()).isCloseTo(-Math.atan(1 / 150.0), within(1e-6));
    assertThat(capacity.first().orElseThrow().crossing().multiple())
        .isCloseTo(235 * MPA / stress, within(1e-9));
    assertThat(capacity.notChecked()).isEmpty();
    assertThat(capacity.remarks()).isEmpty();
    assertThat(capacity.loads().get(0)).isEqualTo("loads as they are stated, no load factors");
  }

  /** The couple at that place is the moment at the hinge: 12.533 · 100 · cos θ. */
  @Test
  void answersWhereItGives() {
    Sizing sizing = Sizing.of(Method.RESISTANCE).with("lever", BAR, STEEL);
    TravelCapacity capacity =
        TravelCapacity.of(course(turned(0), -0.5, 0.6), sizing, Variation.of("cask"));
    Worst first = capacity.first().orElseThrow();
    Ask turn = Ask.of("turn", Measure.COUPLE);

    assertThat(capacity.at(turn, first)).isInstanceOf(Answer.Value.class);
    assertThat(((Answer.Value) capacity.at(turn, first)).si())
        .isCloseTo(first.crossing().multiple() * 100 * Math.cos(first.drive()), within(1e-6));
    assertThat(capacity.capacity(first.drive()).first().orElseThrow().multiple())
        .isCloseTo(first.crossing().multiple(), within(1e-9));
  }

  /** What is already too much for the other loads is found in whatever pose it is. */
  @Test
  void usedUpWithoutTheDrivingLoads() {
    Sizing sizing = Sizing.of(Method.RESISTANCE).with("lever", BAR, STEEL);
    // 300 kg at 0.5 m: 1471·cos θ N·m against 1253: too much only within 0.55 rad of level
    TravelCapacity capacity =
        TravelCapacity.of(course(turned(300), -1.2, 0.2), sizing, Variation.of("cask"));

    Worst first = capacity.first().orElseThrow();
    assertThat(first.crossing().multiple()).isZero();
    assertThat(first.crossing())
        .isInstanceOfSatisfying(
            Crossing.Used.class,
            used -> assertThat(used.certainty()).isEqualTo(Crossing.Certainty.ALREADY));
  }

  @Test
  void whatCannotBeCheckedIsToldOnce() {
    Sizing sizing =
        Sizing.of(Method.RESISTANCE).with("lever", BAR, Tried.steel("scrap", java.util.Map.of()));
    TravelCapacity capacity =
        TravelCapacity.of(course(turned(0), -0.5, 0.5), sizing, Variation.of("cask"));

    assertThat(capacity.ranked()).isEmpty();
    assertThat(capacity.first()).isEmpty();
    assertThat(capacity.notChecked()).hasSize(6);
  }

  @Provide
  Arbitrary<List<Double>> numbers() {
    return Arbitraries.doubles().between(0, 1).ofScale(3).list().ofSize(4);
  }

  /** Hung on a chain: no pose of 400 gives at a lesser multiple than the worst. */
  @Property(tries = 3, edgeCases = EdgeCasesMode.NONE)
  void noPoseIsWorseThanTheWorst(@ForAll("numbers") List<Double> numbers) {
    Device device =
        lever(numbers.get(0) < 0.3 ? 0 : 40 * numbers.get(0))
            .line("chain", new End("lever", "tip"), new End("ground", "post"))
            .force("gust", "lever", "middle", Vector.of(80 * numbers.get(1), 20))
            .build();
    Travel travel =
        Travel.of(
            device, Drive.length("chain"), -0.2 - 0.4 * numbers.get(2), 0.1 + 0.3 * numbers.get(3));
    Course course = (Course) travel;
    Sizing sizing =
        Sizing.of(Method.ALLOWABLE)
            .with("lever", BAR, STEEL)
            .with(ColumnEnds.pinned("lever", "hinge", "tip"))
            .with(Rating.of("chain", 900, "tag"))
            .with(Rating.of("hinge", 1200, "tag"));
    TravelCapacity capacity = TravelCapacity.of(course, sizing, Variation.of("cask"));
    double from = course.least().drive();
    double to = course.greatest().drive();
    double least = capacity.first().orElseThrow().crossing().multiple();
    for (int k = 0; k <= 400; k++) {
      Capacity here = capacity.capacity(from + (to - from) * k / 400);
      double first = here.first().map(Crossing::multiple).orElse(Double.POSITIVE_INFINITY);
      assertThat(first).isGreaterThanOrEqualTo(least * (1 - 1e-9));
      for (Crossing crossing : here.ranked()) {
        if (crossing instanceof Crossing.Used used) {
          assertThat(used.multiple())
              .as(used.stated().what())
              .isGreaterThanOrEqualTo(
                  of(capacity, used.stated().what()).crossing().multiple() * (1 - 1e-9));
        }
      }
    }
  }
}
