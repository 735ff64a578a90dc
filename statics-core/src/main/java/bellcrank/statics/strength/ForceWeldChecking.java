package bellcrank.statics.strength;

import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import java.util.Optional;

/** A check of welds that carry what a connection does to a body. */
final class ForceWeldChecking extends Checking<WeldDemand> {

  private final FilletWeld weld;
  private final int force;
  private final Point at;
  private final WeldGroup group;

  /**
   * A check.
   *
   * @param at where the connection acts, as drawn
   */
  ForceWeldChecking(FilletWeld weld, int force, Point at, Rule<WeldDemand> rule) {
    super(weld.part(), weld.name(), rule);
    this.weld = weld;
    this.force = force;
    this.at = at;
    group = WeldGroup.of(weld.lines());
  }

  @Override
  void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple) {
    to.mixForce(force, none, one, multiple);
  }

  @Override
  Optional<String> open(CarriedForces state) {
    return state.forceOpen(force);
  }

  @Override
  WeldDemand worst(CarriedForces state) {
    Frame frame = state.frame(force);
    double cosine = frame.cosine();
    double sine = frame.sine();
    double x = state.x(force) * cosine + state.y(force) * sine;
    double y = -state.x(force) * sine + state.y(force) * cosine;
    double couple = state.couple(force) + (at.x() - group.x()) * y - (at.y() - group.y()) * x;
    return new WeldForces(weld, group).inPlane(x, y, couple);
  }
}
