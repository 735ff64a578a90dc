package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.motion.internal.RootSearch;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** Searches the values of an unknown for which an answer equals a target. */
final class FindSearch {

  /** Share of the scale of an answer up to which a difference is rounding. */
  private static final double ROUNDING = 1e-11;

  /** The same for answers that limits find by programs. */
  private static final double ROUNDING_OF_LIMITS = 1e-9;

  /** Number of places at which the scale of the answers is read. */
  private static final int PROBES = 5;

  private final String name;
  private final DoubleFunction<Stand> stands;
  private final Ask ask;
  private final double target;
  private Optional<ModelException> mistake = Optional.empty();
  private boolean built;

  /** A device, its loads, its pose and what is under it. */
  record Stand(Device device, LoadCase loadCase, Pose pose, List<Foundation> foundations) {}

  FindSearch(String name, DoubleFunction<Stand> stands, Ask ask, double target) {
    this.name = name;
    this.stands = stands;
    this.ask = ask;
    this.target = target;
  }

  /** The case that an ask names, else another. */
  static LoadCase loadCase(Device device, Ask ask, LoadCase otherwise) {
    return ask.loadCase().map(device::loadCase).orElse(otherwise);
  }

  Find over(double from, double to) {
    if (!Double.isFinite(from) || !Double.isFinite(to) || !(from < to)) {
      throw new ModelException(
          name, "range", from + " to " + to, "finite ends, the first below the second");
    }
    if (!Double.isFinite(target)) {
      throw new ModelException(name, "target", target, "a finite number");
    }
    double zero = (Limits.decide(ask) ? ROUNDING_OF_LIMITS : ROUNDING) * scale(from, to);
    RootSearch search = RootSearch.over(this::difference, from, to, zero);
    if (!built && mistake.isPresent()) {
      throw mistake.get();
    }
    List<Double> ends = search.stretches();
    List<Find.Interval> intervals = new ArrayList<>();
    for (int k = 0; k + 1 < ends.size(); k += 2) {
      intervals.add(new Find.Interval(ends.get(k), ends.get(k + 1)));
    }
    if (intervals.equals(List.of(new Find.Interval(from, to)))) {
      return new Find.Always();
    }
    if (search.roots().isEmpty() && intervals.isEmpty()) {
      return new Find.None(nearest(search));
    }
    return new Find.At(search.roots(), intervals);
  }

  private Optional<Find.Miss> nearest(RootSearch search) {
    OptionalDouble at = search.nearest();
    if (at.isPresent() && answer(at.getAsDouble()).orElse(null) instanceof Answer.Value value) {
      return Optional.of(new Find.Miss(at.getAsDouble(), value.si()));
    }
    return Optional.empty();
  }

  /** Answer minus target; angles the shorter way round. */
  private OptionalDouble difference(double at) {
    if (answer(at).orElse(null) instanceof Answer.Value value) {
      double difference = value.si() - target;
      return OptionalDouble.of(
          value.dimension() == Dimension.ANGLE
              ? Math.IEEEremainder(difference, 2 * Math.PI)
              : difference);
    }
    return OptionalDouble.empty();
  }

  private Optional<Stand> stand(double at) {
    try {
      Stand stand = stands.apply(at);
      built = true;
      return Optional.of(stand);
    } catch (ModelException wrong) {
      mistake = Optional.of(wrong);
      return Optional.empty();
    }
  }

  private Optional<Answer> answer(double at) {
    return stand(at).map(this::answer);
  }

  private Answer answer(Stand stand) {
    Answer answer =
        Limits.answer(stand.device(), stand.loadCase(), stand.pose(), stand.foundations(), ask);
    if (answer instanceof Answer.Words || answer instanceof Answer.LineOfAction) {
      throw new ModelException(
          stand.device().name(), "ask", ask.text(), "an ask that is answered by a number");
    }
    return answer;
  }

  /** What answers of this kind are like in size, from the loads and the size of the devices. */
  private double scale(double from, double to) {
    double scale = Math.abs(target);
    for (int k = 0; k < PROBES; k++) {
      double at = from + (to - from) * k / (PROBES - 1);
      Optional<Stand> stand = stand(at);
      if (stand.isPresent() && answer(stand.get()) instanceof Answer.Value value) {
        scale = Math.max(scale, scale(stand.get(), value.dimension()));
      }
    }
    return scale;
  }

  private static double scale(Stand stand, Dimension dimension) {
    double force = LoadSizes.sum(stand.device(), stand.loadCase());
    double size = stand.device().size();
    double gravity = stand.device().gravity().norm();
    return switch (dimension) {
      case FORCE -> force;
      case MOMENT -> force * size;
      case FORCE_PER_LENGTH -> force / size;
      case MASS -> gravity > 0 ? force / gravity : 0;
      case LENGTH -> size;
      case NUMBER, ANGLE -> 1;
      default -> 0;
    };
  }
}
