package bellcrank.statics.drawing;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Point;

/** Parts that pull or push along themselves: ropes, struts, screws and springs. */
record Links(Places places) {

  /** Whether a part is one. */
  boolean has(String part) {
    Device device = places.device();
    Connection connection = device.connection(part).orElse(null);
    return connection instanceof Strut
        || connection instanceof Line
        || connection instanceof Screw
        || connection instanceof Reeving
        || connection instanceof Wrap
        || device.load(part).orElse(null) instanceof Spring;
  }

  /** Whether such a force draws its body towards the other end. */
  boolean pulls(ActingForce force) {
    Device device = places.device();
    if (device.load(force.part()).orElse(null) instanceof Spring spring) {
      Point first = places.of(spring.first());
      Point second = places.of(spring.second());
      return towards(force, first, second);
    }
    Connection connection = device.connection(force.part()).orElseThrow();
    if (connection instanceof Reeving || connection instanceof Wrap) {
      return true;
    }
    return towards(
        force,
        places.of(connection.bodies().get(0), connection.places().get(0)),
        places.of(connection.bodies().get(1), connection.places().get(1)));
  }

  private static boolean towards(ActingForce force, Point first, Point second) {
    Point other = force.at().distance(first) > force.at().distance(second) ? first : second;
    return force.vector().dot(force.at().to(other)) > 0;
  }
}
