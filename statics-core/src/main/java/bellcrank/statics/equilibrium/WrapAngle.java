package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Point;

/** Angle over which a rope lies on a post, as drawn, with the extra turns. */
public final class WrapAngle {

  private WrapAngle() {}

  /**
   * The angle.
   *
   * @param device the device
   * @param wrap a wrap of it
   * @return in rad, 0 or more
   */
  public static double of(Device device, Wrap wrap) {
    Point from = device.point(wrap.first().at());
    Point centre = device.point(wrap.post().at());
    Point to = device.point(wrap.last().at());
    double r = wrap.post().radius();
    int sign = wrap.post().turn().sign();
    // directions of both straight parts; a point to which a tangent leads lies at asin(r/d) off
    double in = from.to(centre).norm();
    double out = centre.to(to).norm();
    double before =
        Math.atan2(centre.y() - from.y(), centre.x() - from.x())
            - sign * Math.asin(Math.min(1, r / in));
    double after =
        Math.atan2(to.y() - centre.y(), to.x() - centre.x())
            + sign * Math.asin(Math.min(1, r / out));
    double turned = sign * (after - before);
    double whole = 2 * Math.PI;
    return turned - whole * Math.floor(turned / whole) + whole * wrap.extraTurns();
  }
}
