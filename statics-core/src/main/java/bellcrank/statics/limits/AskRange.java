package bellcrank.statics.limits;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.EffortAndResistance;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.units.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Finds between which values the answer to an ask lies over all states. An answer that is linear in
 * the forces is one program for each end; a size or direction is read from the outline of the two
 * components, a ratio from a few programs.
 */
final class AskRange {

  /** How an ask comes out: a range, or an answer that says why there is none. */
  record Outcome(Optional<Range> range, Answer answer) {

    static Outcome of(Range range) {
      return new Outcome(Optional.of(range), new Answer.Words("a range"));
    }

    static Outcome of(Answer answer) {
      return new Outcome(Optional.empty(), answer);
    }

    static Outcome notDefined(String why) {
      return of(new Answer.Unanswered(Answer.Reason.NOT_DEFINED, why));
    }
  }

  private final Device device;
  private final Balance balance;
  private final Function<Goal, Extreme> greatest;
  private final LinearAsks linear;

  /**
   * A finder.
   *
   * @param greatest makes a goal greatest over the states
   */
  AskRange(Balance balance, LinearAsks linear, Function<Goal, Extreme> greatest) {
    this.device = balance.device();
    this.balance = balance;
    this.linear = linear;
    this.greatest = greatest;
  }

  Outcome of(Ask ask) {
    Subject subject = ask.subject();
    if (subject instanceof Subject.Ratio ratio) {
      return ratio(linear.of(plain(ratio.numerator())), linear.of(plain(ratio.denominator())));
    }
    if (subject instanceof Subject.Advantage && ask.measure() == Measure.ACTUAL) {
      return advantage();
    }
    if (!dependsOnForces(ask)) {
      return constant(balance.answer(ask));
    }
    Ask plain = plain(ask);
    return switch (plain.measure()) {
      case SIZE, DIRECTION -> outline(plain);
      case OFFSET ->
          ratio(linear.of(with(plain, Measure.COUPLE)), linear.of(with(plain, Measure.NORMAL)));
      case RATIO_OF_TENSIONS ->
          ratio(
              linear.of(with(plain, Measure.TENSION)), linear.of(with(plain, Measure.END_TENSION)));
      case RAISING, LOWERING -> turning(plain);
      case PEAK_NORMAL,
          PEAK_SHEAR,
          PEAK_MOMENT,
          PLACE_OF_PEAK_NORMAL,
          PLACE_OF_PEAK_SHEAR,
          PLACE_OF_PEAK_MOMENT ->
          Outcome.notDefined(
              "where a force inside is largest changes from state to state; its range is told at a"
                  + " place: at LENGTH of A–B");
      default -> range(linear.of(plain));
    };
  }

  private static Outcome constant(Answer answer) {
    return answer instanceof Answer.Value value
        ? Outcome.of(range(value.dimension(), value.si(), value.si(), 0))
        : Outcome.of(answer);
  }

  private static Range range(Dimension dimension, double least, double greatest, double gap) {
    return new Range(dimension, OptionalDouble.of(least), OptionalDouble.of(greatest), gap);
  }

  /** Whether an answer is read from forces at all. */
  private boolean dependsOnForces(Ask ask) {
    Subject subject = ask.subject();
    if (subject instanceof Subject.Part part) {
      if (balance.isInside(ask)) {
        return true;
      }
      Load load = device.load(part.name()).orElse(null);
      return device.connection(part.name()).isPresent() || load instanceof Sought;
    }
    return subject instanceof Subject.Group;
  }

  /** The ask with its natural measure, where that is a size. */
  private Ask plain(Ask ask) {
    if (ask.measure() != Measure.VALUE || !(ask.subject() instanceof Subject.Part part)) {
      return ask.subject() instanceof Subject.Group && ask.measure() == Measure.VALUE
          ? with(ask, Measure.SIZE)
          : ask;
    }
    Connection connection = device.connection(part.name()).orElse(null);
    boolean size =
        connection instanceof Pin
            || connection instanceof Clamp
            || (device.load(part.name()).orElse(null) instanceof Sought sought
                && sought.want() == Sought.Want.COMPONENTS);
    return size ? with(ask, Measure.SIZE) : ask;
  }

  private static Ask with(Ask ask, Measure measure) {
    return new Ask(
        ask.subject(), measure, ask.on(), ask.about(), ask.stretch(), ask.each(), ask.loadCase());
  }

  private Outcome range(LinearAsks.Form form) {
    if (form.refusal().isPresent()) {
      return Outcome.of(form.refusal().get());
    }
    Extreme high = greatest.apply(form.goal());
    Extreme low = greatest.apply(form.goal().negative());
    OptionalDouble most = end(high, form.constant());
    OptionalDouble least = end(low, -form.constant());
    if (high.kind() == Extreme.Kind.OPEN || low.kind() == Extreme.Kind.OPEN) {
      return open();
    }
    return Outcome.of(
        new Range(
            form.dimension(),
            least.isPresent() ? OptionalDouble.of(0 - least.getAsDouble()) : least,
            most,
            Math.max(high.gap(), low.gap())));
  }

  private static Outcome open() {
    return Outcome.of(new Answer.Unanswered(Answer.Reason.NOT_DECIDED, Admissible.OPEN));
  }

  private static OptionalDouble end(Extreme extreme, double constant) {
    return extreme.isFound()
        ? OptionalDouble.of(extreme.value() + constant)
        : OptionalDouble.empty();
  }

  private Outcome advantage() {
    EffortAndResistance pair = device.advantage().orElse(null);
    if (pair == null) {
      return Outcome.of(balance.answer("advantage"));
    }
    return ratio(
        linear.of(Ask.of(pair.resistance(), Measure.VALUE)),
        linear.of(Ask.of(pair.effort(), Measure.VALUE)));
  }

  /**
   * Range of a quotient of two linear forms by Dinkelbach's rounds: the greatest of a/b is where
   * the greatest of a − t·b is zero.
   */
  private Outcome ratio(LinearAsks.Form a, LinearAsks.Form b) {
    if (a.refusal().isPresent() || b.refusal().isPresent()) {
      return Outcome.of(a.refusal().isPresent() ? a.refusal().get() : b.refusal().get());
    }
    Outcome below = range(b);
    Range bottom = below.range().orElse(null);
    if (bottom == null) {
      return below;
    }
    double low = bottom.least().orElse(Double.NEGATIVE_INFINITY);
    double high = bottom.greatest().orElse(Double.POSITIVE_INFINITY);
    double zero = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
    if (!(low > zero || high < -zero) || Double.isInfinite(zero)) {
      return Outcome.notDefined("what it is divided by may be zero, or has no bound");
    }
    double sign = low > 0 ? 1 : -1;
    OptionalDouble most = quotient(a, b, sign, 1);
    OptionalDouble least = quotient(a, b, sign, -1);
    Dimension dimension =
        a.dimension() == Dimension.MOMENT && b.dimension() == Dimension.FORCE
            ? Dimension.LENGTH
            : Dimension.NUMBER;
    return Outcome.of(new Range(dimension, least, most, 0));
  }

  private OptionalDouble quotient(
      LinearAsks.Form a, LinearAsks.Form b, double signOfBottom, int side) {
    double t = 0;
    for (int round = 0; round < 60; round++) {
      // side · sign · (a − t·b), so that the greatest side · a/b is sought
      double multiple = side * signOfBottom;
      Goal goal = a.goal().plus(b.goal(), -t).times(multiple);
      Extreme extreme = greatest.apply(goal);
      if (!extreme.isFound()) {
        return OptionalDouble.empty();
      }
      double top = a.at(extreme.forces());
      double bottom = b.at(extreme.forces());
      double next = top / bottom;
      if (round > 0 && Math.abs(next - t) <= 1e-12 * Math.max(1, Math.abs(t))) {
        return OptionalDouble.of(next);
      }
      t = next;
    }
    return OptionalDouble.of(t);
  }

  /** A screw's turning couple grows with the size of its axial force, whichever its sense. */
  private Outcome turning(Ask ask) {
    Outcome tension = range(linear.of(with(ask, Measure.TENSION)));
    Range range = tension.range().orElse(null);
    if (range == null) {
      return tension;
    }
    Answer perUnit = linear.atUnit(with(ask, ask.measure()), with(ask, Measure.TENSION));
    if (!(perUnit instanceof Answer.Value couple)) {
      return Outcome.of(perUnit);
    }
    double low = range.least().orElse(Double.NEGATIVE_INFINITY);
    double high = range.greatest().orElse(Double.POSITIVE_INFINITY);
    double least = low <= 0 && high >= 0 ? 0 : Math.min(Math.abs(low), Math.abs(high));
    double most = Math.max(Math.abs(low), Math.abs(high));
    double one = couple.si() * least;
    double other = couple.si() * most;
    return Outcome.of(
        new Range(
            Dimension.MOMENT,
            Double.isInfinite(Math.min(one, other))
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.min(one, other)),
            Double.isInfinite(Math.max(one, other))
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(one, other)),
            range.gap() * Math.abs(couple.si())));
  }

  private Outcome outline(Ask ask) {
    LinearAsks.Form x = linear.of(with(ask, Measure.X));
    LinearAsks.Form y = linear.of(with(ask, Measure.Y));
    if (x.refusal().isPresent() || y.refusal().isPresent()) {
      return Outcome.of(x.refusal().isPresent() ? x.refusal().get() : y.refusal().get());
    }
    Outline outline = Outline.of(x, y, greatest);
    if (outline.isOpen()) {
      return open();
    }
    if (ask.measure() == Measure.SIZE) {
      return Outcome.of(
          new Range(Dimension.FORCE, OptionalDouble.of(outline.nearest()), outline.farthest(), 0));
    }
    return outline
        .directions()
        .map(ends -> Outcome.of(range(Dimension.ANGLE, ends.from(), ends.to(), 0)))
        .orElseGet(() -> Outcome.notDefined("the force may be zero or have any direction"));
  }
}
