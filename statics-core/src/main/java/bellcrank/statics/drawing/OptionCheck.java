package bellcrank.statics.drawing;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Point;
import java.util.List;

/** Checks that options fit what is drawn. */
final class OptionCheck {

  private OptionCheck() {}

  static void check(FreeBody body, DrawingOptions options) {
    check(body.device(), options);
    for (MomentArm arm : options.arms()) {
      body.device().point(arm.about());
      if (forces(body, arm.force()).isEmpty()) {
        throw new ModelException(
            body.device().name(),
            "moment arm",
            '"' + arm.force() + '"',
            "a known force other than zero that acts on the body: " + names(body));
      }
    }
  }

  /** Checks the points of measurements. */
  static void check(Device device, DrawingOptions options) {
    for (Measurement one : options.measurements()) {
      if (one instanceof Measurement.Distance distance) {
        device.point(distance.from());
        device.point(distance.to());
      } else if (one instanceof Measurement.Angle angle) {
        Point at = device.point(angle.at());
        if (at.equals(device.point(angle.first())) || at.equals(device.point(angle.second()))) {
          throw new ModelException(
              device.name(), "angle at", angle.at(), "three points at different places");
        }
      }
    }
  }

  /** Known forces of a part other than zero. */
  static List<ActingForce> forces(FreeBody body, String part) {
    return body.forces().stream()
        .filter(force -> force.part().equals(part) && !body.isZero(force.size()))
        .toList();
  }

  private static String names(FreeBody body) {
    List<String> names =
        body.forces().stream()
            .filter(force -> !body.isZero(force.size()))
            .map(ActingForce::part)
            .distinct()
            .toList();
    return names.isEmpty() ? "there is none" : String.join(", ", names);
  }
}
