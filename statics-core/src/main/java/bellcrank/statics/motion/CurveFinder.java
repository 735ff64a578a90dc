package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.motion.internal.Peak;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Samples an answer over a course and finds its extremes between the samples. */
final class CurveFinder {

  /** Number of steps between the ends. */
  private static final int STEPS = 100;

  /** Share of a value below which a difference is rounding; limits are found to about this. */
  private static final double ROUNDING = 1e-9;

  private final Course course;
  private final Ask ask;
  private final List<Foundation> foundations;
  private final Sweep sweep;

  /** Where the answer is found if it is one unknown. */
  private final Optional<Prepared.Slot> slot;

  private Dimension dimension = Dimension.NUMBER;

  /** Whether an answer has told the dimension. */
  private boolean known;

  private CurveFinder(Course course, Ask ask, List<Foundation> foundations) {
    this.course = course;
    this.ask = ask;
    this.foundations = foundations;
    sweep = course.sweep();
    slot = Limits.decide(ask) ? Optional.empty() : Prepared.slot(course.device(), ask);
  }

  static Curve find(Course course, Ask ask, List<Foundation> foundations) {
    return new CurveFinder(course, ask, foundations).find();
  }

  private OptionalDouble value(double at) {
    sweep.moveTo(at);
    if (known && slot.isPresent() && sweep.isFair()) {
      return OptionalDouble.of(sweep.value(slot.get()));
    }
    return answered();
  }

  /** The answer of a balance, or of the limits, where the sweep stands. */
  private OptionalDouble answered() {
    Answer answer =
        Limits.decide(ask)
            ? Limits.of(course.device(), course.loadCase(), sweep.pose(), foundations).answer(ask)
            : Balance.of(course.device(), course.loadCase(), sweep.pose()).answer(ask);
    if (answer instanceof Answer.Value value) {
      dimension = value.dimension();
      known = true;
      return OptionalDouble.of(value.si());
    }
    return OptionalDouble.empty();
  }

  private Curve find() {
    double from = course.least().drive();
    double to = course.greatest().drive();
    List<Curve.Sample> samples = new ArrayList<>();
    for (int k = 0; k <= STEPS; k++) {
      double at = k == STEPS ? to : from + (to - from) * k / STEPS;
      sweep.moveTo(at);
      // an end may be a dead centre, where a balance tells whether the answer is fixed
      (k == 0 || k == STEPS ? answered() : value(at))
          .ifPresent(value -> samples.add(new Curve.Sample(at, value)));
    }
    return new Curve(ask, dimension, samples, extreme(samples, -1), extreme(samples, 1));
  }

  private Optional<Curve.Sample> extreme(List<Curve.Sample> samples, int sense) {
    if (samples.isEmpty()) {
      return Optional.empty();
    }
    int best = 0;
    for (int k = 1; k < samples.size(); k++) {
      best = sense * samples.get(k).value() > sense * samples.get(best).value() ? k : best;
    }
    Curve.Sample found = samples.get(best);
    int last = samples.size() - 1;
    if (samples.size() < 3
        || (best == 0 && !growsFrom(samples, 0, 1, sense))
        || (best == last && !growsFrom(samples, last, -1, sense))) {
      return Optional.of(found);
    }
    double at =
        Peak.of(
            drive -> sense * value(drive).orElse(-sense * Double.MAX_VALUE),
            samples.get(Math.max(0, best - 1)).drive(),
            samples.get(Math.min(last, best + 1)).drive());
    double value = value(at).orElse(found.value());
    // next to an end what rounding adds makes no extreme of its own
    double least = best == 0 || best == last ? ROUNDING * Math.abs(found.value()) : 0;
    return Optional.of(
        sense * (value - found.value()) >= least ? new Curve.Sample(at, value) : found);
  }

  /** Whether a parabola through three samples first grows, away from an end that is the largest. */
  private static boolean growsFrom(List<Curve.Sample> samples, int end, int step, int sense) {
    double first = samples.get(end).value();
    double second = samples.get(end + step).value();
    double third = samples.get(end + 2 * step).value();
    return sense * (4 * second - 3 * first - third) > 0;
  }
}
