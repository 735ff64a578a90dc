package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.study.ToleranceBox.How;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for every tolerance box and every run of samples of the derrick. */
final class StudyProperties {

  private static final Model DERRICK = Model.of(StudyYard.derrick());

  private static final List<String> INPUTS =
      List.of(
          "x of tip",
          "y of tip",
          "x of head",
          "y of head",
          "x of peg",
          "mass of barrel",
          "gravity",
          "slope",
          "x of grip",
          "distance of tip from heel");

  private static final List<String> ASKS =
      List.of(
          "hand",
          "stay.tension",
          "luffing rope.tension",
          "heel pin.x on jib",
          "heel pin.size",
          "axle pin.y on pole",
          "foot pin.direction");

  @Provide
  static Arbitrary<List<Uncertain>> uncertain() {
    Arbitrary<Uncertain> one =
        Combinators.combine(Arbitraries.of(INPUTS), Arbitraries.integers().between(1, 80))
            .as((text, mille) -> Uncertain.within(Input.parse(text), mille * 1e-3 * scale(text)));
    return one.list()
        .ofMinSize(1)
        .ofMaxSize(4)
        .uniqueElements(uncertain -> uncertain.input().text())
        .filter(all -> !movesTwice(all));
  }

  /** A distance and a coordinate of the same point depend on one another, and are refused. */
  private static boolean movesTwice(List<Uncertain> all) {
    List<String> texts = all.stream().map(one -> one.input().text()).toList();
    return texts.contains("distance of tip from heel")
        && (texts.contains("x of tip") || texts.contains("y of tip"));
  }

  private static double scale(String text) {
    return text.startsWith("mass") ? 240 : text.equals("gravity") ? 9.8 : 1;
  }

  @Provide
  static Arbitrary<String> asks() {
    return Arbitraries.of(ASKS);
  }

  @Property(tries = 40)
  void noSampleIsWorseThanTheWorstCase(
      @ForAll("uncertain") List<Uncertain> uncertain,
      @ForAll("asks") String ask,
      @ForAll long seed) {
    Figure figure = Figure.parse(ask);
    ToleranceBox box = ToleranceBox.of(DERRICK, uncertain, figure);
    Sampled sampled =
        Sampling.of(DERRICK, uncertain, List.of(figure)).run(300, seed).figure(figure);
    double least = box.least().orElseThrow().si();
    double greatest = box.greatest().orElseThrow().si();
    double slack = 1e-7 * Math.max(Math.abs(least), Math.abs(greatest));
    assertThat(sampled.least().orElseThrow().si()).isGreaterThanOrEqualTo(least - slack);
    assertThat(sampled.greatest().orElseThrow().si()).isLessThanOrEqualTo(greatest + slack);
    assertThat(box.how()).isNotEqualTo(How.NOTHING_FOUND);
  }

  @Property(tries = 15)
  void threadsAndShorterRunsChangeNothing(
      @ForAll("uncertain") List<Uncertain> uncertain,
      @ForAll("asks") String ask,
      @ForAll long seed) {
    Figure figure = Figure.parse(ask);
    Sampling sampling = Sampling.of(DERRICK, uncertain, List.of(figure));
    Samples one = sampling.run(700, seed);
    Samples four = sampling.run(700, seed, 4, Progress.UNWATCHED);
    Samples ended = sampling.run(5000, seed, 3, (done, all) -> done < 700);
    for (double share = 0.01; share < 1; share += 0.07) {
      assertThat(four.figure(figure).percentile(share))
          .isEqualTo(one.figure(figure).percentile(share));
    }
    assertThat(four.figure(figure).mean()).isEqualTo(one.figure(figure).mean());
    assertThat(four.outcomes()).isEqualTo(one.outcomes());
    for (long k = 0; k < 700; k += 13) {
      assertThat(ended.inputs(k)).isEqualTo(one.inputs(k));
    }
    long told = one.outcomes().stream().mapToLong(Counted::count).sum();
    assertThat(told).isEqualTo(700);
    Sampled sampled = one.figure(figure);
    long missing = sampled.missing().stream().mapToLong(Counted::count).sum();
    assertThat(sampled.count() + missing).isEqualTo(700);
  }
}
