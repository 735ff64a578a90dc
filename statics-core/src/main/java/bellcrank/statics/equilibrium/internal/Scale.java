package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Point;

/** The device's own scale: its middle and its size. Scaled coordinates are of order one. */
record Scale(double middleX, double middleY, double size, double zero) {

  /** Rounding of a scaled coefficient in units of the relative rounding of a double. */
  private static final double ROUNDINGS = 32;

  static Scale of(Device device) {
    double middleX = device.middle().x();
    double middleY = device.middle().y();
    double size = device.size();
    // far from the origin the drawn coordinates themselves are coarser
    double far = Math.max(Math.abs(middleX), Math.abs(middleY)) / size;
    return new Scale(middleX, middleY, size, ROUNDINGS * Math.ulp(1.0) * (1 + far));
  }

  double x(Point point) {
    return (point.x() - middleX) / size;
  }

  double y(Point point) {
    return (point.y() - middleY) / size;
  }
}
