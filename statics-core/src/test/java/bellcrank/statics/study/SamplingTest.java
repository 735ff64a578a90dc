package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.limits.Event;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Samples held against what follows from the distributions by formula. */
@Timeout(120)
final class SamplingTest {

  private static final double GRAVITY = 9.80665;
  private static final int MANY = 100_000;
  private static final Figure RAM = Figure.parse("ram");

  private static Model press() {
    return Model.of(StudyYard.press());
  }

  private static Quantity newtons(double force) {
    return new Quantity(force, Dimension.FORCE);
  }

  private static Samples friction(double from, double to, long samples) {
    return Sampling.of(
            Model.of(StudyYard.ladder()),
            List.of(Uncertain.uniform(Input.friction("floor"), from, to)),
            List.of(Figure.parse("floor.friction")))
        .with(Happening.slips("floor"))
        .with(Happening.slips())
        .with(Happening.tips())
        .with(Happening.givesWay())
        .run(samples, 11);
  }

  @Test
  void aLinearDeviceHasTheExactMeanAndVariance() {
    // ram = (1.6 · hand + 0.8 · g · mass) / 0.25
    Samples samples =
        Sampling.of(
                press(),
                List.of(
                    Uncertain.normal(Input.size("hand"), 220, 15),
                    Uncertain.triangular(Input.mass("own weight"), 4, 6, 11)),
                List.of(RAM))
            .run(MANY, 7);
    Sampled ram = samples.figure(RAM);
    double perHand = 1.6 / 0.25;
    double perMass = 0.8 * GRAVITY / 0.25;
    double mean = perHand * 220 + perMass * (4 + 6 + 11) / 3.0;
    // variance of a triangle: (a² + b² + c² − ab − ac − bc) / 18
    double triangle = (16 + 36 + 121 - 24 - 44 - 66) / 18.0;
    double variance = perHand * perHand * 225 + perMass * perMass * triangle;
    assertThat(ram.count()).isEqualTo(MANY);
    double error = Math.sqrt(variance / MANY);
    assertThat(ram.mean().orElseThrow()).isCloseTo(mean, within(4 * error));
    assertThat(ram.errorOfMean().orElseThrow()).isCloseTo(error, within(0.02 * error));
    // the variance of a variance is at most about 2/n of its square here
    assertThat(Math.pow(ram.deviation().orElseThrow(), 2))
        .isCloseTo(variance, within(4 * variance * Math.sqrt(2.0 / MANY)));
    assertThat(ram.dimension()).isEqualTo(Dimension.FORCE);
    assertThat(samples.outcomes()).extracting(Counted::what).containsExactly("holds");
    assertThat(samples.partsGivingWay()).isEmpty();
  }

  @Test
  void percentilesFollowADistributionThatIsKnown() {
    // the ram's arm is uniform from 0.2 to 0.3, the ram force is moment over arm
    double moment = 220 * 1.6 + 6 * GRAVITY * 0.8;
    Samples samples =
        Sampling.of(press(), List.of(Uncertain.within(Input.x("ram"), 0.05)), List.of(RAM))
            .with(Happening.above(RAM, newtons(moment / 0.225)))
            .with(Happening.below(RAM, newtons(moment / 0.27)))
            .run(MANY, 3);
    Sampled ram = samples.figure(RAM);
    assertThat(ram.mean().orElseThrow())
        .isCloseTo(moment * Math.log(1.5) / 0.1, within(4 * ram.errorOfMean().orElseThrow()));
    int kept = 0;
    for (int k = 1; k < 20; k++) {
      Percentile found = ram.percentile(k / 20.0).orElseThrow();
      double exact = moment / (0.3 - 0.1 * k / 20.0);
      double least = found.least().orElseThrow();
      double greatest = found.greatest().orElseThrow();
      kept += exact >= least && exact <= greatest ? 1 : 0;
      assertThat(found.si()).isCloseTo(exact, within(0.005 * exact));
      assertThat(ram.shareBelow(exact).orElseThrow()).isCloseTo(k / 20.0, within(0.006));
    }
    assertThat(kept).isGreaterThanOrEqualTo(17);
    assertThat(samples.chances().get(0).share()).isCloseTo(0.25, within(0.006));
    assertThat(samples.chances().get(1).share()).isCloseTo(0.3, within(0.006));
    for (Chance chance : samples.chances()) {
      assertThat(chance.least()).isLessThan(chance.share());
      assertThat(chance.greatest()).isGreaterThan(chance.share());
      assertThat(chance.open()).isZero();
    }
    assertThat(ram.least().orElseThrow().si()).isGreaterThanOrEqualTo(moment / 0.3);
    FigureAt greatest = ram.greatest().orElseThrow();
    assertThat(greatest.si()).isCloseTo(moment / greatest.inputs().get(0), within(1e-9));
  }

  /** The greatest of ten samples is below what 95 % of all are below in six of ten runs. */
  @Test
  void tooFewSamplesGiveNoBoundOfAPercentile() {
    List<Uncertain> hand = List.of(Uncertain.uniform(Input.size("hand"), 200, 240));
    Sampling sampling = Sampling.of(press(), hand, List.of(RAM));
    Percentile high = sampling.run(10, 1).figure(RAM).percentile(0.95).orElseThrow();
    assertThat(high.greatest()).isEmpty();
    assertThat(high.least().orElseThrow()).isLessThan(high.si());
    assertThat(sampling.run(10, 1).figure(RAM).percentile(0.05).orElseThrow().least()).isEmpty();
    assertThat(sampling.run(1, 1).figure(RAM).percentile(0.5).orElseThrow())
        .matches(one -> one.least().isEmpty() && one.greatest().isEmpty());
    // of 100 samples all are below it in 0.95^100 = 0.6 % of the runs
    Sampled hundred = sampling.run(100, 1).figure(RAM);
    assertThat(hundred.percentile(0.95).orElseThrow().greatest())
        .hasValue(hundred.greatest().orElseThrow().si());
  }

  @Test
  void boundsOfPercentilesHoldInNineteenOfTwentyRuns() {
    List<Uncertain> hand = List.of(Uncertain.uniform(Input.size("hand"), 200, 240));
    Sampling sampling = Sampling.of(press(), hand, List.of(RAM));
    int runs = 1500;
    for (double share : new double[] {0.05, 0.1, 0.3, 0.5, 0.8, 0.95}) {
      double exact = ((200 + 40 * share) * 1.6 + 6 * GRAVITY * 0.8) / 0.25;
      int outside = 0;
      for (int seed = 0; seed < runs; seed++) {
        Percentile found = sampling.run(40, seed).figure(RAM).percentile(share).orElseThrow();
        boolean below = found.least().isPresent() && exact < found.least().getAsDouble();
        boolean above = found.greatest().isPresent() && exact > found.greatest().getAsDouble();
        outside += below || above ? 1 : 0;
      }
      assertThat(outside).as("outside at %s", share).isLessThan((int) (0.05 * runs));
    }
  }

  @Test
  void theChanceToSlipIsThatOfTooLittleFriction() {
    // moments about the top: the floor's friction is 720 · 1.5 / 4 = 270, which needs μ = 0.375
    Samples samples = friction(0.3, 0.5, 4000);
    List<Chance> chances = samples.chances();
    assertThat(chances.get(0).share()).isCloseTo(0.375, within(0.03));
    assertThat(chances.get(0).least()).isLessThan(0.375);
    assertThat(chances.get(0).greatest()).isGreaterThan(0.375);
    assertThat(chances.get(1).count()).isEqualTo(chances.get(0).count());
    assertThat(chances.get(2).count()).isZero();
    assertThat(chances.get(2).least()).isZero();
    assertThat(chances.get(2).greatest()).isGreaterThan(0).isLessThan(0.001);
    assertThat(chances.get(3).count()).isEqualTo(chances.get(0).count());
    assertThat(samples.outcomes())
        .extracting(Counted::what)
        .containsExactlyInAnyOrder("holds", "does not hold");
    assertThat(samples.outcomes().stream().mapToLong(Counted::count).sum()).isEqualTo(4000);
    assertThat(samples.partsGivingWay())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.what()).isEqualTo("floor slides left");
              assertThat(one.count()).isEqualTo(chances.get(0).count());
              assertThat(one.example().get(0)).isLessThan(0.375);
            });
  }

  @Test
  void anyNumberOfThreadsGivesTheSameBits() {
    Sampling sampling =
        Sampling.of(
                Model.of(StudyYard.derrick()),
                List.of(
                    Uncertain.normal(Input.mass("barrel"), 240, 20),
                    Uncertain.within(Input.x("tip"), 0.1),
                    Uncertain.triangular(Input.y("head"), 4.6, 4.8, 4.9)),
                List.of(Figure.parse("hand"), Figure.parse("stay.tension")))
            .with(Happening.above(Figure.parse("hand"), newtons(300)));
    List<Long> one = bits(sampling.run(3000, 42, 1, Progress.UNWATCHED));
    assertThat(bits(sampling.run(3000, 42, 2, Progress.UNWATCHED))).isEqualTo(one);
    assertThat(bits(sampling.run(3000, 42, 7, Progress.UNWATCHED))).isEqualTo(one);
    assertThat(bits(sampling.run(3000, 43, 1, Progress.UNWATCHED))).isNotEqualTo(one);
  }

  private static List<Long> bits(Samples samples) {
    List<Long> bits = new ArrayList<>();
    for (Sampled figure : samples.figures()) {
      bits.add(figure.count());
      bits.add(Double.doubleToLongBits(figure.mean().orElseThrow()));
      bits.add(Double.doubleToLongBits(figure.deviation().orElseThrow()));
      figure
          .least()
          .orElseThrow()
          .inputs()
          .forEach(value -> bits.add(Double.doubleToLongBits(value)));
      for (int k = 1; k < 1000; k++) {
        bits.add(Double.doubleToLongBits(figure.percentile(k / 1000.0).orElseThrow().si()));
      }
      figure.histogram(50).orElseThrow().bins().forEach(bin -> bits.add(bin.count()));
    }
    samples.chances().forEach(chance -> bits.add(chance.count()));
    samples.outcomes().forEach(one -> bits.add(one.count()));
    return bits;
  }

  @Test
  void aRunThatIsEndedIsAShorterRunAndSaysSo() {
    Sampling sampling =
        Sampling.of(press(), List.of(Uncertain.within(Input.x("ram"), 0.05)), List.of(RAM));
    List<Long> heard = new ArrayList<>();
    Samples ended =
        sampling.run(
            100_000,
            5,
            2,
            (done, all) -> {
              assertThat(all).isEqualTo(100_000);
              heard.add(done);
              return done < 5000;
            });
    assertThat(heard).isSorted();
    assertThat(ended.isComplete()).isFalse();
    assertThat(ended.wanted()).isEqualTo(100_000);
    assertThat(ended.done()).isBetween(5000L, 8000L);
    assertThat(ended.words(UnitSystem.SI).get(0)).contains("ended before all 100,000");
    Samples shorter = sampling.run(ended.done(), 5);
    assertThat(shorter.isComplete()).isTrue();
    assertThat(bits(shorter)).isEqualTo(bits(ended));
  }

  @Test
  void samplesCanBeLookedAtOneByOne() {
    Sampling sampling =
        Sampling.of(
            press(),
            List.of(
                Uncertain.within(Input.x("ram"), 0.05),
                Uncertain.normal(Input.size("hand"), 220, 9)),
            List.of(RAM));
    Samples samples = sampling.run(1000, 5);
    FigureAt greatest = samples.figure(RAM).greatest().orElseThrow();
    assertThat(greatest.inputs()).hasSize(2);
    double found = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < 1000; k++) {
      List<Double> inputs = samples.inputs(k);
      Model one = Input.put(press(), List.of(Input.x("ram"), Input.size("hand")), inputs);
      found = Math.max(found, RAM.of(one).number().orElseThrow());
    }
    assertThat(found).isEqualTo(greatest.si());
    assertThatThrownBy(() -> samples.inputs(1000))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("0 to 999");
  }

  @Test
  void whatCannotBeBuiltIsCounted() {
    Samples samples =
        Sampling.of(
                press(), List.of(Uncertain.normal(Input.mass("own weight"), 6, 6)), List.of(RAM))
            .with(Happening.above(RAM, newtons(1600)))
            .run(4000, 1);
    // a mass below zero: 1 deviation off, 15.87 % of a normal distribution
    Counted not =
        samples.outcomes().stream()
            .filter(one -> one.what().startsWith("cannot be built"))
            .findFirst()
            .orElseThrow();
    assertThat(not.what()).isEqualTo("cannot be built: weight of own weight");
    assertThat(not.count()).isBetween(540L, 730L);
    assertThat(not.example().get(0)).isNegative();
    Sampled ram = samples.figure(RAM);
    assertThat(ram.count() + not.count()).isEqualTo(4000);
    assertThat(ram.missing()).containsExactly(not);
    assertThat(samples.chances().get(0).open()).isEqualTo(not.count());
    assertThat(samples.chances().get(0).greatest())
        .isGreaterThan(samples.chances().get(0).share() + 0.13);
    assertThat(samples.words(UnitSystem.SI))
        .anyMatch(text -> text.contains("leave that open"))
        .anyMatch(text -> text.contains("ram has no number: cannot be built"));
  }

  @Test
  void samplesWithoutBalanceAreReportedAndNeverDropped() {
    Device held = StudyYard.jib();
    Pin heel = Pin.smooth("heel", "heel", List.of("jib", "ground"));
    Device loose = StudyYard.jib(heel, false);
    Input stays =
        Input.of(
            "stays", Dimension.NUMBER, model -> 1, (model, v) -> model.with(v > 1 ? held : loose));
    Samples samples =
        Sampling.of(
                Model.of(held),
                List.of(Uncertain.uniform(stays, 0, 4)),
                List.of(Figure.parse("heel.x")))
            .with(Happening.givesWay())
            .run(1000, 1);
    long without = samples.chances().get(0).count();
    assertThat(without).isBetween(190L, 310L);
    assertThat(samples.outcomes())
        .extracting(Counted::what)
        .containsExactlyInAnyOrder("holds", "no balance");
    Sampled heelForce = samples.figures().get(0);
    assertThat(heelForce.count()).isEqualTo(1000 - without);
    assertThat(heelForce.missing())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.count()).isEqualTo(without);
              assertThat(one.what()).startsWith("no balance: ");
            });
    // all alike: one bar holds them all
    Histogram histogram = heelForce.histogram(5).orElseThrow();
    assertThat(histogram.bins().stream().mapToLong(Histogram.Bin::count).sum())
        .isEqualTo(1000 - without);
  }

  @Test
  void whatWouldPushGoesSlack() {
    Samples samples =
        Sampling.of(
                Model.of(StudyYard.jib()),
                List.of(Uncertain.uniform(Input.size("barrel"), -200, 600)),
                List.of(Figure.parse("stay.tension")))
            .with(Happening.of(Event.Kind.GOES_SLACK, "stay"))
            .with(Happening.below(Figure.parse("stay.tension"), newtons(0)))
            .run(2000, 9);
    assertThat(samples.chances().get(0).share()).isCloseTo(0.25, within(0.04));
    assertThat(samples.chances().get(1).count()).isEqualTo(samples.chances().get(0).count());
    assertThat(samples.partsGivingWay())
        .extracting(Counted::what)
        .singleElement()
        .asString()
        .contains("stay")
        .contains("slack");
  }

  @Test
  void statesThatStaticsLeavesOpenAreDecidedByLimits() {
    Figure floor = Figure.parse("greatest floor.normal");
    Samples samples =
        Sampling.of(
                Model.of(StudyYard.roughLadder()),
                List.of(Uncertain.uniform(Input.friction("floor"), 0.3, 0.8)),
                List.of(floor, Figure.parse("floor.normal")))
            .with(Happening.slips("floor"))
            .run(300, 2);
    Sampled open = samples.figures().get(1);
    assertThat(open.count()).isLessThan(300);
    assertThat(open.missing())
        .extracting(Counted::what)
        .anyMatch(w -> w.startsWith("undetermined"));
    assertThat(samples.figure(floor).count()).isPositive();
    assertThat(samples.chances().get(0).count()).isPositive();
  }

  @Test
  void histogramsCountEverySample() {
    Samples samples =
        Sampling.of(press(), List.of(Uncertain.within(Input.x("ram"), 0.05)), List.of(RAM))
            .run(5000, 3);
    for (int bins : new int[] {1, 7, 100}) {
      Histogram histogram = samples.figure(RAM).histogram(bins).orElseThrow();
      assertThat(histogram.bins()).hasSize(bins);
      long inside = histogram.bins().stream().mapToLong(Histogram.Bin::count).sum();
      assertThat(inside + histogram.below() + histogram.above()).isEqualTo(5000);
      assertThat(histogram.below()).isZero();
      for (int k = 1; k < bins; k++) {
        assertThat(histogram.bins().get(k).from()).isEqualTo(histogram.bins().get(k - 1).to());
      }
    }
    assertThatThrownBy(() -> samples.figure(RAM).histogram(0)).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> samples.figure(RAM).percentile(1)).isInstanceOf(ModelException.class);
  }

  @Test
  void aLongTailIsCountedBesideTheHistogram() {
    // the arm comes close to nothing, so a few forces are very large
    Samples samples =
        Sampling.of(press(), List.of(Uncertain.uniform(Input.x("ram"), 1e-6, 0.5)), List.of(RAM))
            .run(5000, 3);
    Histogram histogram = samples.figure(RAM).histogram(20).orElseThrow();
    assertThat(histogram.above()).isEqualTo(5);
    assertThat(histogram.below()).isZero();
  }

  @Test
  void theSummaryIsInPlainSentences() {
    Samples samples =
        Sampling.of(
                Model.of(StudyYard.ladder()),
                List.of(Uncertain.uniform(Input.friction("floor"), 0.37, 0.47)),
                List.of(Figure.parse("floor.friction")))
            .with(Happening.slips("floor"))
            .with(Happening.of(Event.Kind.LIFTS, "wall"))
            .run(2000, 1);
    assertThat(samples.words(UnitSystem.SI))
        .contains("2,000 samples with seed 1.")
        .anyMatch(text -> text.matches("In 4\\.\\d % ± 0\\.\\d % of the samples floor slips\\."))
        .anyMatch(
            text ->
                text.matches(
                    "In 0 of 2,000 samples wall lifts, so its chance lies between 0\\.00 % and"
                        + " 0\\.19 % \\(95 % sure\\)\\."))
        .anyMatch(text -> text.startsWith("floor slides left: "))
        .anyMatch(text -> text.startsWith("Holds: 1,9"))
        .contains("floor.friction is 270.0 N in all samples.");
  }

  @Test
  void aShareOfSamplesIsNotRoundedToAll() {
    assertThat(SampleWords.times(8_823, 10_000)).isEqualTo("8,823 of 10,000 (88.2 %)");
    assertThat(SampleWords.times(10_000, 10_000)).isEqualTo("all 10,000");
    assertThat(SampleWords.times(9_999, 10_000)).isEqualTo("9,999 of 10,000 (99.99 %)");
    assertThat(SampleWords.times(999_999, 1_000_000)).isEqualTo("999,999 of 1,000,000 (99.9999 %)");
    assertThat(SampleWords.times(1, 1_000_000)).isEqualTo("1 of 1,000,000 (0.000100 %)");
  }

  @Test
  void wilsonsBoundsByHand() {
    // n = 20, 4 hits: (0.2 + 0.09604) / 1.19207 ± 1.96 √(0.008 + 0.0024009) / 1.19207
    Chance chance = new Chance(Happening.givesWay(), 4, 0, 20);
    assertThat(chance.least()).isCloseTo(0.0807, within(5e-5));
    assertThat(chance.greatest()).isCloseTo(0.4160, within(5e-5));
    Chance always = new Chance(Happening.givesWay(), 20, 0, 20);
    assertThat(always.greatest()).isEqualTo(1);
    assertThat(always.least()).isCloseTo(0.8389, within(5e-5));
  }

  @Test
  void mistakesNameTheirKey() {
    Uncertain arm = Uncertain.within(Input.x("ram"), 0.05);
    refused(() -> Sampling.of(press(), List.of(), List.of(RAM)), "at least one uncertain number");
    refused(() -> Sampling.of(press(), List.of(arm, arm), List.of(RAM)), "x of ram");
    refused(
        () -> Sampling.of(press(), List.of(Uncertain.within(Input.x("rum"), 0.05)), List.of(RAM)),
        "rum");
    refused(() -> Sampling.of(press(), List.of(arm), List.of(Figure.parse("rams"))), "rams");
    Uncertain reach = Uncertain.within(Input.distance("ram", "hinge"), 0.05);
    refused(
        () -> Sampling.of(press(), List.of(reach, arm), List.of(RAM)),
        "distance of ram from hinge: value");
    refused(() -> Sampling.of(press(), List.of(arm), List.of(Figure.parse("verdict"))), "verdict");
    Sampling sampling = Sampling.of(press(), List.of(arm), List.of(RAM));
    refused(
        () -> sampling.with(Happening.above(RAM, new Quantity(1, Dimension.LENGTH))), "a length");
    refused(() -> sampling.with(Happening.slips("hinges")), "the nearest is \"hinge\"");
    refused(() -> sampling.judgedIn("storm"), "storm");
    refused(() -> sampling.run(0, 1), "samples");
    refused(() -> sampling.run(Sampling.MOST_NUMBERS + 1, 1), "samples");
    refused(() -> sampling.run(10, 1, 0, Progress.UNWATCHED), "threads");
    refused(() -> sampling.run(10, 1).figure(Figure.parse("hinge.x")), "hinge.x");
    refused(() -> new Happening.AtPart(Set.of(), java.util.Optional.empty()), "kinds");
  }

  private static void refused(Runnable mistake, String word) {
    assertThatThrownBy(mistake::run).isInstanceOf(ModelException.class).hasMessageContaining(word);
  }
}
