package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Point;

/** The device's own scale: its middle and its size. Scaled coordinates are of order one. */
record Scale(double middleX, double middleY, double size, double zero) {

  /** Rounding of a scaled coefficient in units of the relative rounding of a double. */
  private static final double ROUNDINGS = 32;

  static Scale of(Device device) {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Point point : device.points().values()) {
      left = Math.min(left, point.x());
      right = Math.max(right, point.x());
      low = Math.min(low, point.y());
      high = Math.max(high, point.y());
    }
    double middleX = left <= right ? (left + right) / 2 : 0;
    double middleY = left <= right ? (low + high) / 2 : 0;
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
