package bellcrank.statics.strength;

import bellcrank.statics.strength.FilletWeld.Seam;
import java.util.List;

/**
 * A group of welds as an elastic group of lines: length, centroid and second moments, for a throat
 * of one.
 *
 * @param length length of all seams in m
 * @param x centroid in m
 * @param y centroid in m
 * @param ix second moment about the axis along x through the centroid in m³
 * @param iy second moment about the axis along y in m³
 */
record WeldGroup(double length, double x, double y, double ix, double iy) {

  static WeldGroup of(List<Seam> seams) {
    double length = 0;
    double x = 0;
    double y = 0;
    for (Seam seam : seams) {
      length += seam.length();
      x += seam.length() * (seam.x1() + seam.x2()) / 2;
      y += seam.length() * (seam.y1() + seam.y2()) / 2;
    }
    x /= length;
    y /= length;
    double ix = 0;
    double iy = 0;
    for (Seam seam : seams) {
      // a straight line of length L: L³/12 along itself, and L times the square of its distance
      ix += seam.length() * (square(seam.y2() - seam.y1()) / 12 + square(middle(seam, true) - y));
      iy += seam.length() * (square(seam.x2() - seam.x1()) / 12 + square(middle(seam, false) - x));
    }
    return new WeldGroup(length, x, y, ix, iy);
  }

  private static double middle(Seam seam, boolean ofY) {
    return ofY ? (seam.y1() + seam.y2()) / 2 : (seam.x1() + seam.x2()) / 2;
  }

  private static double square(double value) {
    return value * value;
  }

  /** Second moment about the centroid, for a couple in the plane of the group. */
  double polar() {
    return ix + iy;
  }
}
