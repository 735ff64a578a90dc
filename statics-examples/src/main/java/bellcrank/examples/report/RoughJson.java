package bellcrank.examples.report;

import bellcrank.statics.study.Chance;
import bellcrank.statics.study.Counted;
import bellcrank.statics.study.Effect;
import bellcrank.statics.study.FigureAnswer;
import bellcrank.statics.study.FigureAt;
import bellcrank.statics.study.Histogram;
import bellcrank.statics.study.Percentile;
import bellcrank.statics.study.Sampled;
import bellcrank.statics.study.Samples;
import bellcrank.statics.study.Sensitivities;
import bellcrank.statics.study.Spread;
import bellcrank.statics.study.ToleranceBox;
import bellcrank.statics.study.Uncertain;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Rough numbers and what they do, as JSON. */
final class RoughJson {

  /** Ranges of a histogram. */
  static final int BINS = 30;

  private final JsonPage page;
  private final StudyAnswer answer;

  RoughJson(JsonPage page, StudyAnswer answer) {
    this.page = page;
    this.answer = answer;
  }

  void write() {
    page.list("rough", answer.studies().rough(), one -> page.object(() -> rough(one)));
    page.list("figures", answer.rough(), one -> page.object(() -> figure(one)));
    if (answer.samples().isPresent()) {
      page.object("samples", () -> samples(answer.samples().get()));
    } else {
      page.nothing("samples");
    }
  }

  private void rough(Uncertain one) {
    double stated = one.input().value(answer.model());
    page.text("number", one.input().text());
    page.text("quantity", ReportJson.name(one.input().dimension()));
    page.number("stated", stated);
    Spread spread = one.spread();
    page.text("spread", spread.getClass().getSimpleName().toLowerCase(Locale.ROOT));
    boolean normal = spread instanceof Spread.Normal;
    bound("least", normal, spread.least(stated));
    bound("greatest", normal, spread.greatest(stated));
    optional(
        "likeliest",
        spread instanceof Spread.Triangular three
            ? OptionalDouble.of(three.peak())
            : OptionalDouble.empty());
    Optional<Spread.Normal> bell =
        spread instanceof Spread.Normal two ? Optional.of(two) : Optional.empty();
    optional("mean", bell.map(two -> OptionalDouble.of(two.mean())).orElse(OptionalDouble.empty()));
    optional(
        "deviation",
        bell.map(two -> OptionalDouble.of(two.deviation())).orElse(OptionalDouble.empty()));
  }

  private void bound(String name, boolean none, double si) {
    optional(name, none ? OptionalDouble.empty() : OptionalDouble.of(si));
  }

  private void figure(StudyAnswer.Rough one) {
    page.text("figure", one.figure().text());
    stated(one.effects().answer());
    page.list(
        "effects",
        one.effects().ranked(),
        effect -> page.object(() -> effect(one.effects(), effect)));
    page.texts("words", one.effects().words());
    if (one.box().isPresent()) {
      page.object("worstCase", () -> box(one.box().get()));
    } else {
      page.nothing("worstCase");
    }
  }

  /** What a figure comes to as stated. */
  void stated(FigureAnswer stated) {
    if (stated instanceof FigureAnswer.Is is) {
      page.text("quantity", ReportJson.name(is.dimension()));
      page.number("stated", is.si());
      page.nothing("why");
    } else {
      page.nothing("quantity");
      page.nothing("stated");
      page.text("why", ((FigureAnswer.None) stated).why());
    }
  }

  private void effect(Sensitivities all, Effect effect) {
    page.text("number", effect.input().text());
    page.number("value", effect.value());
    OptionalDouble unknown = OptionalDouble.empty();
    OptionalDouble below = unknown;
    OptionalDouble above = unknown;
    if (effect.change() instanceof Effect.Change.Kinked two) {
      below = OptionalDouble.of(two.below());
      above = OptionalDouble.of(two.above());
    } else if (effect.change() instanceof Effect.Change.OneSided one) {
      below = one.above() ? unknown : effect.rate();
      above = one.above() ? effect.rate() : unknown;
    }
    boolean sides = below.isPresent() || above.isPresent();
    optional("rate", sides ? unknown : effect.rate());
    optional("below", below);
    optional("above", above);
    page.text("how", effect.how().words());
    page.text(
        "why",
        effect.change() instanceof Effect.Change.None none
            ? Optional.of(none.why())
            : Optional.<String>empty());
    optional("elasticity", all.elasticity(effect));
    optional("bySpread", all.bySpread(effect));
  }

  private void box(ToleranceBox box) {
    page.text("how", words(box.how()));
    page.whole("looks", box.looks());
    page.whole("exactPlaces", box.exactPlaces());
    page.whole("otherPlaces", box.otherPlaces());
    List<String> numbers = box.uncertain().stream().map(one -> one.input().text()).toList();
    page.texts("numbers", numbers);
    page.texts("senses", box.senses().stream().map(RoughJson::words).toList());
    at("least", box.least());
    at("greatest", box.greatest());
    counted("missing", box.missing());
    counted("outcomes", box.outcomes());
    page.texts("words", box.words(UnitSystem.SI));
  }

  private static String words(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void at(String name, Optional<FigureAt> found) {
    if (found.isEmpty()) {
      page.nothing(name);
      return;
    }
    page.object(
        name,
        () -> {
          page.number("value", found.get().si());
          page.numbers("numbers", found.get().inputs());
        });
  }

  private void counted(String name, List<Counted> all) {
    page.list(
        name,
        all,
        one ->
            page.object(
                () -> {
                  page.text("what", one.what());
                  page.whole("count", (int) one.count());
                  page.numbers("example", one.example());
                }));
  }

  private void samples(Samples samples) {
    page.whole("count", (int) samples.done());
    page.whole("seed", (int) samples.seed());
    page.texts("numbers", samples.uncertain().stream().map(one -> one.input().text()).toList());
    page.list("figures", samples.figures(), one -> page.object(() -> sampled(one)));
    page.list("chances", samples.chances(), one -> page.object(() -> chance(one)));
    counted("outcomes", samples.outcomes());
    counted("partsGivingWay", samples.partsGivingWay());
    page.texts("words", samples.words(UnitSystem.SI));
  }

  private void sampled(Sampled one) {
    page.text("figure", one.figure().text());
    page.text("quantity", ReportJson.name(one.dimension()));
    page.whole("count", (int) one.count());
    optional("mean", one.mean());
    optional("deviation", one.deviation());
    optional("errorOfMean", one.errorOfMean());
    at("least", one.least());
    at("greatest", one.greatest());
    List<Percentile> percentiles =
        RoughSection.SHARES.stream().flatMap(share -> one.percentile(share).stream()).toList();
    page.list(
        "percentiles",
        percentiles,
        two ->
            page.object(
                () -> {
                  page.number("share", two.share());
                  page.number("value", two.si());
                  optional("least", two.least());
                  optional("greatest", two.greatest());
                }));
    counted("missing", one.missing());
    histogram(one.histogram(BINS));
  }

  private void histogram(Optional<Histogram> histogram) {
    if (histogram.isEmpty()) {
      page.nothing("histogram");
      return;
    }
    Histogram bars = histogram.get();
    page.object(
        "histogram",
        () -> {
          page.whole("below", (int) bars.below());
          page.whole("above", (int) bars.above());
          List<Double> edges =
              Stream.concat(
                      bars.bins().stream().map(Histogram.Bin::from),
                      bars.bins().stream().skip(bars.bins().size() - 1L).map(Histogram.Bin::to))
                  .toList();
          page.numbers("edges", edges);
          page.numbers("counts", bars.bins().stream().map(one -> (double) one.count()).toList());
        });
  }

  private void chance(Chance one) {
    page.text("what", one.what().words(UnitSystem.SI));
    page.whole("count", (int) one.count());
    page.whole("open", (int) one.open());
    page.number("share", one.share());
    page.number("least", one.least());
    page.number("greatest", one.greatest());
  }

  private void optional(String name, Optional<Double> value) {
    optional(name, value.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
  }

  private void optional(String name, OptionalDouble value) {
    if (value.isPresent()) {
      page.number(name, value.getAsDouble());
    } else {
      page.nothing(name);
    }
  }
}
