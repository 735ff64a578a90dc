package bellcrank.benchmarks;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.geometry.Point;

/**
 * The plain way to follow a device of pinned members and one rope that drives it, as the measure of
 * speed: gaps of the pins and of the rope's length, their derivatives in a dense matrix, and
 * Newton's method with a dense solve. Storage is used again for every pose, and no object is made.
 *
 * <p>It keeps places on the way at even distances of the drive, and begins each pose between the
 * two next to it, as a course does. A pose is three numbers for each member: its turn, and how far
 * it is shifted to the right and up in sizes of the device, its turn being about the device's
 * middle.
 */
public final class PlainCourse {

  /** Gap, in sizes of the device, at which all fits: as narrow as that of a course. */
  static final double FITS = 1e-13;

  private static final int MOST_ROUNDS = 12;

  private final Device device;
  private final DenseSolver solver;
  private final int members;
  private final int gaps;

  // of each gap: the two members, −1 for the ground, and their points in sizes from the middle
  private final int[] body;
  private final double[] x;
  private final double[] y;
  private final double[] nowX;
  private final double[] nowY;
  private final double[] cosine;
  private final double[] sine;
  private final double drawnLength;
  private final double least;
  private final double step;
  private final double[][] places;
  private final double[] place;
  private int rounds;

  private PlainCourse(
      Device device, DenseSolver solver, double least, double greatest, int intervals) {
    this.device = device;
    this.solver = solver;
    this.least = least;
    members = device.members().size();
    gaps = device.connections().size();
    body = new int[2 * gaps];
    x = new double[2 * gaps];
    y = new double[2 * gaps];
    nowX = new double[2 * gaps];
    nowY = new double[2 * gaps];
    cosine = new double[members];
    sine = new double[members];
    step = (greatest - least) / intervals;
    place = new double[3 * members];
    drawnLength = takeParts();
    places = new double[intervals + 1][3 * members];
    // the drawn pose is on the way: outward from it, each place begins at the one before
    int drawn = Math.max(0, Math.min(intervals, (int) Math.round(-least / step)));
    for (int k = drawn; k <= intervals; k++) {
      keep(k);
    }
    System.arraycopy(places[drawn], 0, place, 0, place.length);
    for (int k = drawn - 1; k >= 0; k--) {
      keep(k);
    }
  }

  /**
   * Follows a device.
   *
   * @param device members and smooth pins of two bodies each, and one line, the last connection
   * @param solver solver with three unknowns for each member
   * @param least least change of the line's length, in m, at most 0
   * @param greatest greatest change of it, at least 0 and more than the least
   * @param intervals number of intervals between the places that are kept
   * @return its course
   * @throws IllegalArgumentException if the device has other parts
   * @throws IllegalStateException if Newton's method does not come to an end
   */
  public static PlainCourse of(
      Device device, DenseSolver solver, double least, double greatest, int intervals) {
    return new PlainCourse(device, solver, least, greatest, intervals);
  }

  private double takeParts() {
    for (int k = 0; k < gaps; k++) {
      Connection connection = device.connections().get(k);
      boolean drives = k == gaps - 1;
      boolean known =
          drives
              ? connection instanceof Line
              : connection instanceof Pin pin && pin.bodies().size() == 2;
      if (!known || 2 * (gaps - 1) + 1 != 3 * members) {
        throw new IllegalArgumentException("pins and a driving line only, not " + connection);
      }
      for (int side = 0; side < 2; side++) {
        Point drawn = device.point(connection.places().get(side));
        body[2 * k + side] = device.bodyIndex(connection.bodies().get(side));
        x[2 * k + side] = (drawn.x() - device.middle().x()) / device.size();
        y[2 * k + side] = (drawn.y() - device.middle().y()) / device.size();
      }
    }
    int rope = 2 * (gaps - 1);
    return Math.hypot(x[rope] - x[rope + 1], y[rope] - y[rope + 1]);
  }

  private void keep(int k) {
    fit(least + k * step);
    System.arraycopy(place, 0, places[k], 0, place.length);
  }

  /**
   * Finds a pose.
   *
   * @param at change of the line's length, in m, between the ends
   * @return turn, shift to the right and shift up of each member; overwritten by the next pose
   */
  public double[] pose(double at) {
    double along = (at - least) / step;
    int k = Math.max(0, Math.min(places.length - 2, (int) along));
    double share = along - k;
    double[] from = places[k];
    double[] to = places[k + 1];
    for (int i = 0; i < place.length; i++) {
      place[i] = from[i] + share * (to[i] - from[i]);
    }
    fit(at);
    return place;
  }

  /**
   * How many solves the last pose took.
   *
   * @return a number of 1 or more
   */
  public int rounds() {
    return rounds;
  }

  private void fit(double at) {
    double length = drawnLength + at / device.size();
    for (rounds = 0; rounds < MOST_ROUNDS; rounds++) {
      if (write(length) <= FITS && rounds > 0) {
        return;
      }
      double[] change = solver.solve();
      for (int i = 0; i < place.length; i++) {
        place[i] += change[i];
      }
    }
    throw new IllegalStateException("no pose was found at " + at);
  }

  /** Writes the equations of a step; the largest gap. */
  private double write(double length) {
    turn();
    solver.clear();
    double worst = 0;
    for (int k = 0; k < gaps - 1; k++) {
      double gapX = nowX[2 * k] - nowX[2 * k + 1];
      double gapY = nowY[2 * k] - nowY[2 * k + 1];
      for (int side = 0; side < 2; side++) {
        double sign = side == 0 ? 1 : -1;
        enter(2 * k, 2 * k + side, sign, 0);
        enter(2 * k + 1, 2 * k + side, 0, sign);
      }
      solver.addRight(2 * k, -gapX);
      solver.addRight(2 * k + 1, -gapY);
      worst = Math.max(worst, Math.max(Math.abs(gapX), Math.abs(gapY)));
    }
    int rope = 2 * (gaps - 1);
    double alongX = nowX[rope] - nowX[rope + 1];
    double alongY = nowY[rope] - nowY[rope + 1];
    double now = Math.sqrt(alongX * alongX + alongY * alongY);
    enter(rope, rope, alongX / now, alongY / now);
    enter(rope, rope + 1, -alongX / now, -alongY / now);
    solver.addRight(rope, length - now);
    return Math.max(worst, Math.abs(length - now));
  }

  /** Enters how the way of a point along a direction changes with its member's three numbers. */
  private void enter(int row, int end, double alongX, double alongY) {
    int member = body[end];
    if (member >= 0) {
      double armX = nowX[end] - place[3 * member + 1];
      double armY = nowY[end] - place[3 * member + 2];
      solver.add(row, 3 * member, armX * alongY - armY * alongX);
      solver.add(row, 3 * member + 1, alongX);
      solver.add(row, 3 * member + 2, alongY);
    }
  }

  /** Where the points of all gaps are now, in sizes from the middle. */
  private void turn() {
    for (int member = 0; member < members; member++) {
      cosine[member] = Math.cos(place[3 * member]);
      sine[member] = Math.sin(place[3 * member]);
    }
    for (int end = 0; end < body.length; end++) {
      int member = body[end];
      if (member < 0) {
        nowX[end] = x[end];
        nowY[end] = y[end];
      } else {
        nowX[end] = cosine[member] * x[end] - sine[member] * y[end] + place[3 * member + 1];
        nowY[end] = sine[member] * x[end] + cosine[member] * y[end] + place[3 * member + 2];
      }
    }
  }

  /**
   * Where a point of a member is in the last pose.
   *
   * @param member name of the member
   * @param point name of the point
   * @return in the world
   */
  public Point place(String member, String point) {
    int first = 3 * device.bodyIndex(member);
    Point drawn = device.point(point);
    double armX = drawn.x() - device.middle().x();
    double armY = drawn.y() - device.middle().y();
    double c = Math.cos(place[first]);
    double s = Math.sin(place[first]);
    return Point.of(
        device.middle().x() + c * armX - s * armY + device.size() * place[first + 1],
        device.middle().y() + s * armX + c * armY + device.size() * place[first + 2]);
  }
}
