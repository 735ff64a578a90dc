package bellcrank.examples.report;

import bellcrank.statics.study.Effect;
import bellcrank.statics.study.FigureAnswer;
import bellcrank.statics.study.Percentile;
import bellcrank.statics.study.Sampled;
import bellcrank.statics.study.Samples;
import bellcrank.statics.study.Sensitivities;
import bellcrank.statics.study.Spread;
import bellcrank.statics.study.Uncertain;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What rough numbers do: what matters most, the worst case, samples. */
final class RoughSection {

  /** Shares of the samples that are told in the table. */
  static final List<Double> SHARES = List.of(0.01, 0.05, 0.5, 0.95, 0.99);

  private final StudyAnswer answer;
  private final StudyValues values;
  private final UnitSystem units;

  private RoughSection(StudyAnswer answer, UnitSystem units) {
    this.answer = answer;
    this.units = units;
    values = new StudyValues(units);
  }

  static void write(Page page, StudyAnswer answer, UnitSystem units) {
    if (answer.studies().rough().isEmpty()) {
      return;
    }
    RoughSection section = new RoughSection(answer, units);
    section.numbers(page);
    for (StudyAnswer.Rough one : answer.rough()) {
      section.effects(page, one);
    }
    for (StudyAnswer.Rough one : answer.rough()) {
      section.box(page, one);
    }
    answer.samples().ifPresent(one -> section.samples(page, one));
  }

  private void numbers(Page page) {
    page.heading("Numbers that are not known well");
    for (Uncertain one : answer.studies().rough()) {
      page.item(one.input().text() + ": " + spread(one));
    }
  }

  private String spread(Uncertain one) {
    double stated = one.input().value(answer.model());
    String text = values.text(stated, one.input());
    Spread spread = one.spread();
    if (spread instanceof Spread.Normal normal) {
      return values.text(normal.mean(), one.input())
          + " as the mean of a normal distribution with a standard deviation of "
          + values.text(normal.deviation(), one.input());
    }
    String bounds =
        "between "
            + values.text(spread.least(stated), one.input())
            + " and "
            + values.text(spread.greatest(stated), one.input());
    if (spread instanceof Spread.Triangular triangular) {
      return bounds + ", likeliest " + values.text(triangular.peak(), one.input());
    }
    return bounds + ", stated as " + text;
  }

  private void effects(Page page, StudyAnswer.Rough one) {
    String name = one.figure().text();
    page.heading("What matters most for " + name);
    if (one.effects().answer() instanceof FigureAnswer.None none) {
      page.item(name + " has no number as stated: " + none.why());
      return;
    }
    one.effects().words(units).forEach(page::item);
    bySpread(page, one);
  }

  /** What the whole spread of each number does. */
  private void bySpread(Page page, StudyAnswer.Rough one) {
    Sensitivities effects = one.effects();
    FigureAnswer.Is stated = (FigureAnswer.Is) effects.answer();
    List<String> parts = new ArrayList<>();
    for (Effect effect : effects.rankedBySpread()) {
      OptionalDouble size = effects.bySpread(effect);
      if (size.isPresent() && size.getAsDouble() > 0) {
        parts.add(
            effect.input().text() + " ±" + values.text(size.getAsDouble(), stated.dimension(), 3));
      }
    }
    if (!parts.isEmpty()) {
      page.item(
          "As rough as they are (half the width, or one standard deviation), they move it by: "
              + String.join(", ", parts)
              + ".");
    }
  }

  private void box(Page page, StudyAnswer.Rough one) {
    if (one.box().isEmpty()) {
      return;
    }
    page.heading("Worst case of " + one.figure().text());
    one.box().get().words(units).forEach(page::item);
    List<Uncertain> unbounded = answer.unbounded();
    if (!unbounded.isEmpty()) {
      page.item(
          "A normal distribution has no bounds, so "
              + Listing.of(unbounded.stream().map(two -> two.input().text()).toList())
              + (unbounded.size() == 1 ? " stays" : " stay")
              + " as stated here.");
    }
  }

  private void samples(Page page, Samples samples) {
    page.heading("Samples");
    samples.words(units).forEach(page::item);
    Table table = new Table().column("samples up to", Table.Kind.WORDS);
    SHARES.forEach(share -> table.column(percent(share), Table.Kind.NUMBERS));
    List<Sampled> told = samples.figures().stream().filter(one -> one.count() > 1).toList();
    told.forEach(one -> table.row(row(one)));
    if (!told.isEmpty()) {
      page.heading("Percentiles");
      page.table(table);
      told.forEach(one -> page.item(mean(one)));
    }
  }

  private List<String> row(Sampled one) {
    List<String> cells = new ArrayList<>(List.of(one.figure().text()));
    for (double share : SHARES) {
      Percentile percentile = one.percentile(share).orElseThrow();
      cells.add(values.text(percentile.si(), one.dimension()));
    }
    return cells;
  }

  private String mean(Sampled one) {
    return one.figure().text()
        + ": mean "
        + values.text(one.mean().orElseThrow(), one.dimension())
        + ", standard deviation "
        + values.text(one.deviation().orElseThrow(), one.dimension(), 3);
  }

  static String percent(double share) {
    return Math.round(100 * share) + StudyValues.kept(" %");
  }
}
