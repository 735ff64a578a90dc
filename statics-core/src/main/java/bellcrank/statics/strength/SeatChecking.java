package bellcrank.statics.strength;

import bellcrank.statics.geometry.Vector;
import java.util.Optional;

/** A check whether a chain stays in its notch. */
final class SeatChecking extends Checking<SeatDemand> {

  private final ChainSeat seat;
  private final int force;

  SeatChecking(ChainSeat seat, int force, Rule<SeatDemand> rule) {
    super(seat.part(), what(seat), rule);
    this.seat = seat;
    this.force = force;
  }

  static String what(ChainSeat seat) {
    return seat.name() + ": " + Check.SEAT.name();
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
  SeatDemand worst(CarriedForces state) {
    Vector push = Vector.of(state.x(force), state.y(force));
    if (push.norm() == 0) {
      return new SeatDemand(0, seat);
    }
    Vector depth = state.frame(force).apply(seat.depth()).times(1);
    return new SeatDemand(Math.abs(Math.atan2(depth.cross(push), depth.dot(push))), seat);
  }
}
