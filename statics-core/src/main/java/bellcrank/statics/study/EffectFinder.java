package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.study.internal.BalanceRates;
import bellcrank.statics.study.internal.Dual;
import bellcrank.statics.study.internal.DualReader;
import bellcrank.statics.study.internal.LimitRates;
import bellcrank.statics.study.internal.Rates;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Optional;

/** Finds how a figure changes with inputs: exactly where that is known, else by differences. */
final class EffectFinder {

  /** Share of an answer, or of what it is made of, by which two ways to it may differ. */
  private static final double SAME = 1e-9;

  /** Share of a limit by which two ways to it may differ. */
  private static final double SAME_LIMIT = 1e-7;

  /** Relative difference of the rates on both sides of a limit that is no rounding. */
  private static final double KINK = 1e-7;

  /** Difference of rates, as a share of the forces, when they are shared otherwise: rounding. */
  private static final double SHARED = 1e-9;

  private static final Effect.Change NOT_FIXED =
      new Effect.Change.None(
          "a change of it takes the balance away, or changes what statics fixes");

  /** Rate per unit of the input, as a share of the forces, that is none. */
  private static final double NOTHING = 1e-12;

  private final Model model;
  private final Figure figure;
  private final FigureAnswer answer;
  private final Optional<BalanceRates> balance;
  private Optional<Optional<LimitRates>> limit = Optional.empty();

  EffectFinder(Model model, Figure figure) {
    this.model = model;
    this.figure = figure;
    answer = figure.of(model);
    balance =
        figure instanceof Figure.OfAsk one && isOfBalance(one.ask())
            ? Optional.of(BalanceRates.of(model.device(), loadCase()))
            : Optional.empty();
  }

  FigureAnswer answer() {
    return answer;
  }

  private LoadCase loadCase() {
    return figure.loadCase(model.device());
  }

  /** Whether the balance alone answers an ask. */
  private boolean isOfBalance(Ask ask) {
    return answer instanceof FigureAnswer.Is
        && !Limits.decide(ask)
        && Balance.of(model.device(), loadCase(), Pose.DRAWN).answer(ask) instanceof Answer.Value;
  }

  Effect effect(Input input) {
    double value = input.value(model);
    if (answer instanceof FigureAnswer.None none) {
      String why = "there is no answer: " + none.why();
      return new Effect(input, value, new Effect.Change.None(why), Effect.How.NOT_FOUND);
    }
    if (isCount()) {
      String why = "a count does not change by a little";
      return new Effect(input, value, new Effect.Change.None(why), Effect.How.NOT_FOUND);
    }
    FigureAnswer.Is stated = (FigureAnswer.Is) answer;
    Optional<Rates> rates = input.number().rates(new Draft(model));
    if (balance.isPresent() && rates.isPresent()) {
      Optional<Effect.Change> exact = ofBalance(balance.get(), rates.get(), stated);
      if (exact.isPresent()) {
        boolean none = exact.get() instanceof Effect.Change.None;
        Effect.How how = none ? Effect.How.NOT_FOUND : Effect.How.SOLVED;
        return new Effect(input, value, exact.get(), how);
      }
    }
    if (rates.isPresent() && limit().isPresent()) {
      Optional<LimitRates.Sides> sides = limit().get().at(rates.get());
      if (sides.isPresent()) {
        return new Effect(input, value, change(sides.get()), Effect.How.AT_LIMIT);
      }
    }
    Effect.Change change =
        new Differences(model, figure, input, value, stated.si(), step(input, value)).find();
    return new Effect(input, value, change, Effect.How.DIFFERENCES);
  }

  private static Effect.Change change(LimitRates.Sides sides) {
    double size = Math.max(Math.abs(sides.below()), Math.abs(sides.above()));
    return Math.abs(sides.below() - sides.above()) <= KINK * size
        ? new Effect.Change.Smooth(sides.above())
        : new Effect.Change.Kinked(sides.below(), sides.above());
  }

  /** The limit that the figure is, once it is asked for. */
  private Optional<LimitRates> limit() {
    if (limit.isEmpty()) {
      limit =
          Optional.of(
              new LimitOf(model, figure)
                  .find((FigureAnswer.Is) answer)
                  .filter(found -> isStated(found.value())));
    }
    return limit.get();
  }

  private boolean isStated(double value) {
    double stated = answer.number().orElseThrow();
    return Math.abs(value - stated) <= SAME_LIMIT * Math.max(1e-6, Math.abs(stated));
  }

  private boolean isCount() {
    return figure instanceof Figure.OfAsk one
        && (one.ask().measure() == Measure.FREEDOMS || one.ask().measure() == Measure.REDUNDANCY);
  }

  private Optional<Effect.Change> ofBalance(
      BalanceRates solved, Rates rates, FigureAnswer.Is stated) {
    Ask ask = ((Figure.OfAsk) figure).ask();
    Optional<DualReader> reader = solved.at(rates);
    Optional<Dual> read = reader.orElseGet(() -> solved.withoutForces(rates)).read(ask);
    if (reader.isEmpty() && read.filter(one -> Double.isFinite(one.value())).isEmpty()) {
      return Optional.of(NOT_FIXED);
    }
    double scale = scale(solved, stated.dimension());
    boolean sure =
        read.isPresent()
            && Double.isFinite(read.get().rate())
            && Math.abs(read.get().value() - stated.si())
                <= SAME * Math.max(Math.abs(stated.si()), scale);
    if (sure && !isFixedBeside(solved, rates, ask, read.get().rate(), scale)) {
      return Optional.of(NOT_FIXED);
    }
    if (sure && Math.abs(stated.si()) <= SAME * scale) {
      Optional<List<Dual>> force = reader.flatMap(one -> one.components(ask));
      if (force.isPresent()) {
        return Optional.of(ofNoForce(force.get(), NOTHING * scale));
      }
    }
    return sure
        ? Optional.of(new Effect.Change.Smooth(read.orElseThrow().rate() + 0.0))
        : Optional.empty();
  }

  /** Whether statics still fixes an answer when the input changes, so that it has a rate at all. */
  private static boolean isFixedBeside(
      BalanceRates solved, Rates rates, Ask ask, double rate, double scale) {
    Optional<BalanceRates> other = solved.otherwiseShared();
    if (other.isEmpty()) {
      return true;
    }
    Optional<Dual> read = other.get().at(rates).flatMap(reader -> reader.read(ask));
    return read.isPresent()
        && Math.abs(read.get().rate() - rate)
            <= KINK * Math.max(Math.abs(rate), Math.abs(read.get().rate())) + SHARED * scale;
  }

  /** A force that is none gets a size whichever way its cause changes. */
  private static Effect.Change ofNoForce(List<Dual> force, double rounding) {
    double size = Math.hypot(force.get(0).rate(), force.get(1).rate());
    return size <= rounding ? new Effect.Change.Smooth(0) : new Effect.Change.Kinked(-size, size);
  }

  private double scale(BalanceRates solved, Dimension dimension) {
    double size = model.device().size();
    return switch (dimension) {
      case FORCE -> solved.scale();
      case MOMENT -> solved.scale() * size;
      case FORCE_PER_LENGTH -> solved.scale() / size;
      case LENGTH -> size;
      case ANGLE -> 1;
      default -> 0;
    };
  }

  /** The first step of differences: far enough for rounding, near enough to be smooth. */
  private double step(Input input, double value) {
    double natural =
        switch (input.dimension()) {
          case LENGTH -> model.device().size();
          case ANGLE -> 1;
          default -> 0;
        };
    double size = value == 0 ? natural : Math.abs(value);
    Device device = model.device();
    double coarse = input.dimension() == Dimension.LENGTH ? Math.min(size, device.size()) : size;
    return 0.02 * (coarse > 0 ? coarse : 1);
  }
}
