package bellcrank.statics.strength;

import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.limits.Limits;
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
  private final Optional<Limits> limits;
  private final CarriedForces none;
  private final CarriedForces one;

  CourseForces(Course course, Driven driven, Needs needs) {
    this.driven = driven;
    this.needs = needs;
    sweep = course.sweep();
    reading = new Reading(driven.device(), needs);
    unloaded = Grown.by(driven.loadCase(), driven.driving().varied(driven.device()), 0);
    Pose drawn = course.pose(0);
    limits =
        Limits.concern(driven.device())
            ? Optional.of(
                Limits.of(driven.device(), driven.loadCase(), drawn, driven.foundations()))
            : Optional.empty();
    CarriedForces told = CarriedForces.of(driven.balance(drawn, 0), needs);
    none = reading.isComplete() ? reading.room(needs) : told;
    one = reading.isComplete() ? reading.room(needs) : told;
  }

  /** Room for a mixed state. */
  CarriedForces room() {
    return none.empty(needs);
  }

  /** Forces in a pose, with how far the device holds there. */
  PoseForces at(double drive) {
    sweep.moveTo(drive);
    Pose pose = sweep.pose();
    if (limits.isEmpty()) {
      return at(pose, Double.POSITIVE_INFINITY);
    }
    OptionalDouble greatest = limits.get().at(pose).greatest(driven.driving());
    // at no multiple, or not decided: the whole limit tells which
    return greatest.isPresent()
        ? at(pose, Math.max(0, greatest.getAsDouble()))
        : driven.forces(pose, needs);
  }

  /** Forces in a pose, as if the device held for ever. */
  PoseForces alone(double drive) {
    sweep.moveTo(drive);
    return at(sweep.pose(), Double.POSITIVE_INFINITY);
  }

  private PoseForces at(Pose pose, double farthest) {
    return reading.isComplete()
            && reading.read(pose, unloaded, none)
            && reading.read(pose, driven.loadCase(), one)
        ? new PoseForces(none, one, Optional.empty(), farthest, false)
        : driven.forces(pose, needs);
  }
}
