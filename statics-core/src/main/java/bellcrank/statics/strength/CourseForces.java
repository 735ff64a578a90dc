package bellcrank.statics.strength;

import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.internal.HoldingSpan;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Sweep;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the parts carry along a course; the numbers of a pose last until the next is asked for. */
final class CourseForces {

  private final Driven driven;
  private final Needs needs;
  private final Sweep sweep;
  private final Reading reading;
  private final LoadCase unloaded;

  /** How far it holds, from the forces that are read anyway; empty where it takes a program. */
  private final Optional<HoldingSpan> span;

  private final Optional<Limits> limits;
  private final CarriedForces none;
  private final CarriedForces one;
  private final double[] unknownsOfNone;
  private final double[] unknownsOfOne;
  private double standsAt = Double.NaN;
  private Optional<PoseForces> last = Optional.empty();

  CourseForces(Course course, Driven driven, Needs needs) {
    this.driven = driven;
    this.needs = needs;
    sweep = course.sweep();
    reading = new Reading(driven.device(), needs);
    unloaded = Grown.by(driven.loadCase(), driven.driving().varied(driven.device()), 0);
    boolean concerns = Limits.concern(driven.device());
    span =
        concerns && reading.isComplete() && driven.foundations().isEmpty()
            ? HoldingSpan.of(driven.device(), driven.loadCase())
            : Optional.empty();
    limits =
        concerns && span.isEmpty() ? Optional.of(driven.limits(course.pose(0))) : Optional.empty();
    if (reading.isComplete()) {
      none = reading.room(needs);
      one = reading.room(needs);
    } else {
      none = CarriedForces.of(driven.balance(course.pose(0), 0), needs);
      one = none;
    }
    unknownsOfNone = reading.unknowns();
    unknownsOfOne = reading.unknowns();
  }

  /** Room for a mixed state. */
  CarriedForces room() {
    return none.empty(needs);
  }

  /** Forces in a pose, with how far the device holds there. */
  PoseForces at(double drive) {
    standsAt = Double.NaN;
    sweep.moveTo(drive);
    Pose pose = sweep.pose();
    if (limits.isPresent()) {
      OptionalDouble greatest = limits.get().at(pose).greatest(driven.driving());
      // at no multiple, or not decided: the whole limit tells which
      return greatest.isPresent()
          ? at(pose, Math.max(0, greatest.getAsDouble()))
          : driven.forces(pose, needs);
    }
    PoseForces alone = at(pose, Double.POSITIVE_INFINITY);
    if (span.isEmpty() || alone.isTold()) {
      return alone;
    }
    return holds(span.get())
        ? PoseForces.known(none, one, Math.max(0, span.get().greatest()))
        : driven.forces(pose, needs);
  }

  private boolean holds(HoldingSpan of) {
    double loads = reading.loads();
    return of.find(unknownsOfNone, unknownsOfOne, loads > 0 ? loads : 1);
  }

  /**
   * How far the device holds in the pose that {@link #at} was asked for last, if something may have
   * to be said of it; empty where it holds from no multiple on, or no part can give way.
   */
  Optional<Limit> limit(PoseForces here) {
    if (here.limit().isPresent()) {
      return here.limit();
    }
    return span.isPresent() && !here.isTold() && Holding.isPlain(span.get())
        ? Optional.empty()
        : driven.limit(sweep.pose());
  }

  /** Forces in a pose, as if the device held for ever. */
  PoseForces alone(double drive) {
    if (last.isPresent() && standsAt == drive) {
      return last.get();
    }
    sweep.moveTo(drive);
    PoseForces found = at(sweep.pose(), Double.POSITIVE_INFINITY);
    last = Optional.of(found);
    standsAt = drive;
    return found;
  }

  private PoseForces at(Pose pose, double farthest) {
    if (!reading.isComplete() || !reading.read(pose, unloaded, none)) {
      return driven.forces(pose, needs);
    }
    reading.unknowns(unknownsOfNone);
    if (!reading.readAgain(pose, driven.loadCase(), one)) {
      return driven.forces(pose, needs);
    }
    reading.unknowns(unknownsOfOne);
    return PoseForces.known(none, one, farthest);
  }
}
