package bellcrank.statics.study;

import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a figure changes with the numbers of a model, ranked by what matters most. Rates are exact
 * for whatever forces, loads and lengths follow from the equations of equilibrium, and are found by
 * differences elsewhere; {@link Effect#how} tells which.
 *
 * <p>Inputs are compared by what a small step of each does: 1 % of a number that has a size, 1 mm
 * of a coordinate or of a length that is zero, 1 degree of an angle, 0.01 of a plain number that is
 * zero, one SI unit of anything else that is zero. Where inputs are uncertain they can be compared
 * by their spread instead.
 */
public final class Sensitivities {

  private final Model model;
  private final Figure figure;
  private final FigureAnswer answer;
  private final List<Effect> ranked;
  private final Map<Input, Spread> spreads;

  private Sensitivities(
      Model model, Figure figure, List<Input> inputs, Map<Input, Spread> spreads) {
    this.model = model;
    this.figure = figure;
    this.spreads = spreads;
    EffectFinder finder = new EffectFinder(model, figure);
    answer = finder.answer();
    List<Effect> found = new ArrayList<>();
    inputs.stream().distinct().forEach(input -> found.add(finder.effect(input)));
    found.sort(Comparator.comparingDouble((Effect one) -> -size(one, step(one))));
    ranked = List.copyOf(found);
  }

  /**
   * Finds how a figure changes with inputs.
   *
   * @param model the model
   * @param figure what is looked at
   * @param inputs the numbers that may change, one at a time
   * @return the effects
   * @throws bellcrank.statics.device.ModelException if the model has no such number, or the figure
   *     names what it does not have
   */
  public static Sensitivities of(Model model, Figure figure, List<Input> inputs) {
    return new Sensitivities(model, figure, inputs, Map.of());
  }

  /**
   * Finds how a figure changes with inputs that are not known well.
   *
   * @param model the model
   * @param figure what is looked at
   * @param inputs the numbers with their spreads
   * @return the effects, which can be ranked by spread as well
   * @throws bellcrank.statics.device.ModelException if the model has no such number, or the figure
   *     names what it does not have
   */
  public static Sensitivities ofUncertain(Model model, Figure figure, List<Uncertain> inputs) {
    Map<Input, Spread> spreads = new HashMap<>();
    inputs.forEach(one -> spreads.put(one.input(), one.spread()));
    List<Input> plain = inputs.stream().map(Uncertain::input).toList();
    return new Sensitivities(model, figure, plain, Map.copyOf(spreads));
  }

  /**
   * What the figure comes to as stated.
   *
   * @return the number, or why there is none; then no effect has a rate
   */
  public FigureAnswer answer() {
    return answer;
  }

  /**
   * The effects, that of the input which matters most first; those without a rate last.
   *
   * @return one for each input
   */
  public List<Effect> ranked() {
    return ranked;
  }

  /**
   * The effects ranked by what the spread of each input does to the figure.
   *
   * @return effects of the inputs that have a spread
   */
  public List<Effect> rankedBySpread() {
    return ranked.stream()
        .filter(one -> spreads.containsKey(one.input()))
        .sorted(Comparator.comparingDouble(one -> -bySpread(one).orElse(-1)))
        .toList();
  }

  /**
   * What the spread of an input does to the figure: its standard deviation or half its width times
   * the size of the rate.
   *
   * @param effect one of the effects
   * @return in the SI unit of the figure, 0 or more; empty without a rate or a spread
   */
  public OptionalDouble bySpread(Effect effect) {
    Spread spread = spreads.get(effect.input());
    OptionalDouble rate = effect.rate();
    return spread == null || rate.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.abs(rate.getAsDouble()) * spread.reach());
  }

  /**
   * The change of the figure per change of an input, both relative to what is stated: 2 where 1 %
   * more of the input makes 2 % more of the figure.
   *
   * @param effect one of the effects
   * @return empty without a rate, and where the input or the figure is zero
   */
  public OptionalDouble elasticity(Effect effect) {
    OptionalDouble rate = effect.rate();
    if (rate.isEmpty() || !(answer instanceof FigureAnswer.Is is)) {
      return OptionalDouble.empty();
    }
    return is.si() == 0 || effect.value() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(rate.getAsDouble() * effect.value() / is.si());
  }

  /**
   * The effects in words, in the order of the ranking, with amounts in SI units.
   *
   * @return a sentence for each input
   */
  public List<String> words() {
    return words(UnitSystem.SI);
  }

  /**
   * The effects in words, in the order of the ranking. A place is moved by 1 mm, or by 0.1 in where
   * lengths are in inches, feet or yards; the ranking does not depend on the units.
   *
   * @param units the units of the amounts
   * @return a sentence for each input
   */
  public List<String> words(UnitSystem units) {
    return new EffectWords(this, units).all();
  }

  Model model() {
    return model;
  }

  Figure figure() {
    return figure;
  }

  Optional<Spread> spread(Input input) {
    return Optional.ofNullable(spreads.get(input));
  }

  static EffectStep step(Effect effect) {
    return EffectStep.of(effect.input(), effect.value());
  }

  /** What a step of the input does; below zero where there is no rate. */
  static double size(Effect effect, EffectStep step) {
    OptionalDouble rate = effect.rate();
    return rate.isEmpty() ? -1 : Math.abs(rate.getAsDouble() * step.change());
  }
}
