package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
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

  private final Course course;
  private final Ask ask;
  private Dimension dimension = Dimension.NUMBER;

  private CurveFinder(Course course, Ask ask) {
    this.course = course;
    this.ask = ask;
  }

  static Curve find(Course course, Ask ask) {
    return new CurveFinder(course, ask).find();
  }

  private OptionalDouble value(double at) {
    Answer answer =
        Limits.decide(ask)
            ? Limits.of(course.device(), course.loadCase(), course.pose(at), List.of()).answer(ask)
            : Balance.of(course.device(), course.loadCase(), course.pose(at)).answer(ask);
    if (answer instanceof Answer.Value value) {
      dimension = value.dimension();
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
      value(at).ifPresent(value -> samples.add(new Curve.Sample(at, value)));
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
    if (best == 0 || best == samples.size() - 1) {
      return Optional.of(found);
    }
    double at =
        Peak.of(
            drive -> sense * value(drive).orElse(-sense * Double.MAX_VALUE),
            samples.get(best - 1).drive(),
            samples.get(best + 1).drive());
    double value = value(at).orElse(found.value());
    return Optional.of(
        sense * value >= sense * found.value() ? new Curve.Sample(at, value) : found);
  }
}
