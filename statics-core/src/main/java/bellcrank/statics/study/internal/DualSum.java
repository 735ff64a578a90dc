package bellcrank.statics.study.internal;

import bellcrank.statics.device.Measure;
import java.util.List;
import java.util.Optional;

/**
 * Forces added up about a place.
 *
 * @param force their sum
 * @param moment their moment about the place
 */
record DualSum(DualVector force, Dual moment) {

  static DualSum of(List<DualAction> actions, DualVector about) {
    DualVector force = DualVector.ZERO;
    Dual moment = Dual.ZERO;
    for (DualAction action : actions) {
      force = force.plus(action.force());
      moment = moment.plus(action.moment(about));
    }
    return new DualSum(force, moment);
  }

  Optional<Dual> measure(Measure measure) {
    return switch (measure) {
      case X -> Optional.of(force.x());
      case Y -> Optional.of(force.y());
      case COUPLE, MOMENT -> Optional.of(moment);
      case DIRECTION -> Optional.of(direction());
      case SIZE, VALUE -> Optional.of(force.norm());
      default -> Optional.empty();
    };
  }

  private Dual direction() {
    Dual angle = Dual.angle(force.x(), force.y());
    return angle.value() < 0 ? new Dual(angle.value() + 2 * Math.PI, angle.rate()) : angle;
  }
}
