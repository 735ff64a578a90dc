package bellcrank.statics.drawing;

import bellcrank.statics.device.Body;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;

/** Collects the places of the world that a picture has to show. */
final class Extent {

  private final Places places;
  private final Device device;
  private final List<Point> shown = new ArrayList<>();

  Extent(Places places) {
    this.places = places;
    device = places.device();
  }

  List<Point> shown() {
    return shown;
  }

  Extent body(String name) {
    Body body = device.body(name).orElseThrow();
    if (body instanceof Member member) {
      member.points().forEach(point -> shown.add(places.of(name, point)));
      member.outline().forEach(point -> shown.add(places.of(name, point)));
    } else if (body instanceof Joint joint) {
      shown.add(places.of(name, joint.at()));
    }
    return this;
  }

  /** A connection with all its places, its sheaves and its width. */
  Extent connection(Connection connection) {
    for (int i = 0; i < connection.bodies().size(); i++) {
      shown.add(places.of(connection.bodies().get(i), connection.places().get(i)));
    }
    if (connection instanceof ContactBase base) {
      Point at = places.of(base.body(), base.at());
      Vector half = base.push().perpendicular().times(base.width() / 2);
      shown.add(at.plus(half));
      shown.add(at.plus(half.times(-1)));
    } else if (connection instanceof Reeving reeving) {
      reeving.stops().forEach(this::round);
    }
    return this;
  }

  private void round(Stop stop) {
    Point centre = places.of(stop.body(), stop.at());
    shown.add(centre.plus(Vector.of(stop.radius(), stop.radius())));
    shown.add(centre.plus(Vector.of(-stop.radius(), -stop.radius())));
  }

  Extent place(Point place) {
    shown.add(place);
    return this;
  }
}
