package bellcrank.statics.drawing;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Point;
import java.util.List;

/** Where the points of a device are in a pose. */
record Places(Device device, Pose pose) {

  /** Where a point of a body is. */
  Point of(String body, String point) {
    return pose.frame(body).apply(device.point(point));
  }

  Point of(End end) {
    return of(end.body(), end.at());
  }

  /** Where a point is: with the first body that has it, or on the ground. */
  Point of(String point) {
    List<String> owners = device.bodiesAt(point);
    return owners.isEmpty() ? device.point(point) : of(owners.get(0), point);
  }
}
