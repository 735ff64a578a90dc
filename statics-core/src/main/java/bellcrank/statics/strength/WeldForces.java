package bellcrank.statics.strength;

import bellcrank.statics.strength.FilletWeld.Seam;

/**
 * Force per length at the most loaded end of a seam.
 *
 * <p>Along a straight seam the components vary linearly, so the size is greatest at an end.
 */
final class WeldForces {

  private final FilletWeld weld;
  private final WeldGroup group;
  private double across;
  private double along;

  /** Square of the size of the force per length that was kept. */
  private double greatest;

  WeldForces(FilletWeld weld, WeldGroup group) {
    this.weld = weld;
    this.group = group;
  }

  /**
   * A group across the section of a bar.
   *
   * @param normal axial force at the axis of the bar
   * @param shear shear force, along y of the group
   * @param moment moment that stretches the bottom, about the axis of the bar
   */
  WeldDemand ofCut(double normal, double shear, double moment) {
    // the axial force acts at y = 0; about the centroid of the group it adds to the moment
    double about = moment + normal * group.y();
    start();
    for (Seam seam : weld.lines()) {
      double upright = (seam.y2() - seam.y1()) / seam.length();
      double level = (seam.x2() - seam.x1()) / seam.length();
      double sheared = shear / group.length();
      for (double y : new double[] {seam.y1(), seam.y2()}) {
        double bent = about == 0 ? 0 : about * (y - group.y()) / group.ix();
        double pulled = normal / group.length() - bent;
        keep(Math.hypot(pulled, sheared * level), Math.abs(sheared * upright));
      }
    }
    return new WeldDemand(across, along, weld);
  }

  /**
   * A group in the plane of the device.
   *
   * @param x force along x of the group
   * @param y force along y
   * @param couple couple about the centroid of the group
   */
  WeldDemand inPlane(double x, double y, double couple) {
    start();
    double twist = couple / group.polar();
    for (Seam seam : weld.lines()) {
      double ux = (seam.x2() - seam.x1()) / seam.length();
      double uy = (seam.y2() - seam.y1()) / seam.length();
      for (int end = 0; end < 2; end++) {
        double px = (end == 0 ? seam.x1() : seam.x2()) - group.x();
        double py = (end == 0 ? seam.y1() : seam.y2()) - group.y();
        double qx = x / group.length() - twist * py;
        double qy = y / group.length() + twist * px;
        keep(Math.abs(qx * uy - qy * ux), Math.abs(qx * ux + qy * uy));
      }
    }
    return new WeldDemand(across, along, weld);
  }

  private void start() {
    greatest = 0;
    across = 0;
    along = 0;
  }

  private void keep(double square, double lengthwise) {
    double size = square * square + lengthwise * lengthwise;
    if (size > greatest) {
      greatest = size;
      across = square;
      along = lengthwise;
    }
  }
}
