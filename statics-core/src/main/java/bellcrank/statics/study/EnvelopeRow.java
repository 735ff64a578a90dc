package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.motion.Curve;
import bellcrank.statics.study.Envelope.Extreme;
import bellcrank.statics.study.Envelope.Missing;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Collects the extremes of one answer, case after case. */
final class EnvelopeRow {

  private final Ask ask;
  private final double rounding;
  private final List<Missing> missing = new ArrayList<>();
  private Optional<Dimension> dimension = Optional.empty();
  private Optional<Extreme> least = Optional.empty();
  private Optional<Extreme> greatest = Optional.empty();

  EnvelopeRow(Ask ask, double rounding) {
    this.ask = ask;
    this.rounding = rounding;
  }

  /** Adds the answer of a device that stays as drawn. */
  void add(Device device, LoadCase loadCase, Answer answer) {
    if (answer instanceof Answer.Value value) {
      take(value.dimension(), new Extreme(value.si(), loadCase.name(), OptionalDouble.empty()));
    } else if (answer instanceof Answer.Unanswered none) {
      miss(loadCase, none.explanation());
    } else {
      throw new ModelException(
          device.name(), "ask", ask.text(), "an ask that is answered by a number");
    }
  }

  /** Adds what a course says. */
  void add(LoadCase loadCase, Curve curve) {
    if (curve.samples().isEmpty()) {
      miss(loadCase, "nowhere on the way there is an answer");
    }
    List<Curve.Sample> ends = new ArrayList<>();
    curve.least().ifPresent(ends::add);
    curve.greatest().ifPresent(ends::add);
    for (Curve.Sample one : ends) {
      OptionalDouble drive = OptionalDouble.of(one.drive());
      take(curve.dimension(), new Extreme(one.value(), loadCase.name(), drive));
    }
  }

  void miss(LoadCase loadCase, String why) {
    missing.add(new Missing(loadCase.name(), why));
  }

  private void take(Dimension kind, Extreme one) {
    dimension = Optional.of(kind);
    if (least.isEmpty() || one.value() < least.get().value() - room(least.get())) {
      least = Optional.of(one);
    }
    if (greatest.isEmpty() || one.value() > greatest.get().value() + room(greatest.get())) {
      greatest = Optional.of(one);
    }
  }

  private double room(Extreme known) {
    return rounding * Math.abs(known.value());
  }

  Envelope.Row row() {
    return new Envelope.Row(ask, dimension, least, greatest, missing);
  }
}
