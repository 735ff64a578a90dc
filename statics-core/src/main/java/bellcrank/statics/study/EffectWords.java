package bellcrank.statics.study;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Tells effects in sentences. */
final class EffectWords {

  private static final int DIGITS = 3;

  /** Share of a figure, or of the largest effect, below which a step has no effect on it. */
  static final double NOTHING = 1e-11;

  /** Relative difference of two effects below which they matter alike. */
  private static final double ALIKE = 1e-6;

  private final Sensitivities of;
  private final UnitSystem units;
  private final String figure;

  EffectWords(Sensitivities of, UnitSystem units) {
    this.of = of;
    this.units = units;
    figure = of.figure().text();
  }

  List<String> all() {
    List<String> words = new ArrayList<>();
    List<Effect> ranked = of.ranked();
    for (int k = 0; k < ranked.size(); k++) {
      words.add(sentence(ranked.get(k)) + (k == 0 ? most(ranked) : "") + ".");
    }
    return List.copyOf(words);
  }

  private String most(List<Effect> ranked) {
    double first = size(ranked.get(0));
    // without a rate the size is below zero
    if (ranked.size() < 2 || first < 0 || isNothing(ranked.get(0))) {
      return "";
    }
    long alike = ranked.stream().filter(one -> size(one) >= first * (1 - ALIKE)).count();
    return alike == 1
        ? "; this input matters most"
        : "; " + alike + " inputs matter most and alike";
  }

  private static double size(Effect effect) {
    return Sensitivities.size(effect, Sensitivities.step(effect));
  }

  private boolean isNothing(Effect effect) {
    double stated = of.answer().number().orElse(0);
    double largest = of.ranked().stream().mapToDouble(EffectWords::size).max().orElse(0);
    return size(effect) >= 0
        && size(effect) <= NOTHING * Math.max(Math.abs(stated), Math.max(0, largest));
  }

  private String sentence(Effect effect) {
    String input = effect.input().text();
    if (effect.change() instanceof Effect.Change.None none) {
      return "What " + input + " does to " + figure + " cannot be told: " + none.why();
    }
    String found = effect.how() == Effect.How.DIFFERENCES ? " (found by differences)" : "";
    if (isNothing(effect)) {
      return "A change of " + input + " has no effect on " + figure + found;
    }
    EffectStep step = EffectStep.of(effect.input(), effect.value(), units);
    double change = step.change();
    if (effect.change() instanceof Effect.Change.Kinked kinked) {
      double more = change > 0 ? kinked.above() : kinked.below();
      double less = change > 0 ? kinked.below() : kinked.above();
      return step.words()
          + " more of "
          + input
          + " "
          + does(more * change)
          + ", "
          + step.words()
          + " less "
          + does(-less * change)
          + ": different to either side"
          + found;
    }
    double rate = effect.rate().orElseThrow();
    if (effect.change() instanceof Effect.Change.OneSided one) {
      boolean more = one.above() == change > 0;
      return step.words()
          + (more ? " more" : " less")
          + " of "
          + input
          + " "
          + does(more ? rate * change : -rate * change)
          + found
          + "; with "
          + (more ? "less" : "more")
          + " of it there is no answer";
    }
    return step.words() + " more of " + input + " " + does(rate * change) + found;
  }

  private String does(double change) {
    FigureAnswer.Is stated = (FigureAnswer.Is) of.answer();
    if (Math.abs(change) <= NOTHING * Math.abs(stated.si())) {
      return "leaves " + figure + " as it is";
    }
    return (change > 0 ? "raises " : "lowers ") + figure + " by " + amount(change, stated);
  }

  private String amount(double change, FigureAnswer.Is stated) {
    double share = Math.abs(change / stated.si());
    String size = text(Math.abs(change), stated.dimension());
    // a share of an angle would depend on where angles are counted from
    if (!(share < 10) || share == 0 || stated.dimension() == Dimension.ANGLE) {
      return size;
    }
    String percent = percent(share);
    return stated.si() > 0 ? percent + " (" + size + ")" : size + " (" + percent + " of its size)";
  }

  private static String percent(double share) {
    return new Quantity(share, Dimension.NUMBER).format(Unit.parse("%"), DIGITS);
  }

  private String text(double si, Dimension dimension) {
    return new Quantity(si, dimension).format(EffectStep.fine(dimension, units), DIGITS);
  }
}
