package bellcrank.statics.equilibrium.internal;

/** How a given load acts on its bodies at a placement. */
abstract sealed class LoadLaw {

  final String owner;

  LoadLaw(String owner) {
    this.owner = owner;
  }

  /**
   * Adds the load.
   *
   * @param at where the bodies are
   * @param factor factor of the case
   * @param out where it is collected, scaled
   */
  abstract void add(Placements at, double factor, Wrenches out);

  /** A force of fixed size and direction at a point. */
  static final class AtPoint extends LoadLaw {
    private final int body;
    private final double qx;
    private final double qy;
    private final double fx;
    private final double fy;

    AtPoint(String owner, int body, double qx, double qy, double fx, double fy) {
      super(owner);
      this.body = body;
      this.qx = qx;
      this.qy = qy;
      this.fx = fx;
      this.fy = fy;
    }

    @Override
    void add(Placements at, double factor, Wrenches out) {
      out.add(body, at.x(body, qx, qy), at.y(body, qx, qy), factor * fx, factor * fy, 0);
    }
  }

  /** A couple; scaled by the size. */
  static final class Turning extends LoadLaw {
    private final int body;
    private final double moment;

    Turning(String owner, int body, double moment) {
      super(owner);
      this.body = body;
      this.moment = moment;
    }

    @Override
    void add(Placements at, double factor, Wrenches out) {
      out.add(body, 0, 0, 0, 0, factor * moment);
    }
  }

  /**
   * A linear load along a segment. Its resultant has the size of the trapezoid; its couple about
   * the middle of the segment is that of the difference of the ends.
   */
  static final class Spread extends LoadLaw {
    private final int body;
    private final double ax;
    private final double ay;
    private final double bx;
    private final double by;
    private final double total;
    private final double difference;
    private final double dx;
    private final double dy;
    private final boolean square;

    /**
     * A load.
     *
     * @param total mean intensity times the measured length, in N
     * @param difference end intensity minus start intensity times the measured length, in N
     * @param dx direction, unused if square
     * @param square whether it acts to the left of the segment instead of a fixed direction
     */
    Spread(
        String owner,
        int body,
        double[] ends,
        double total,
        double difference,
        double dx,
        double dy,
        boolean square) {
      super(owner);
      this.body = body;
      ax = ends[0];
      ay = ends[1];
      bx = ends[2];
      by = ends[3];
      this.total = total;
      this.difference = difference;
      this.dx = dx;
      this.dy = dy;
      this.square = square;
    }

    @Override
    void add(Placements at, double factor, Wrenches out) {
      double x1 = at.x(body, ax, ay);
      double y1 = at.y(body, ax, ay);
      double x2 = at.x(body, bx, by);
      double y2 = at.y(body, bx, by);
      double ux = dx;
      double uy = dy;
      if (square) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        ux = -(y2 - y1) / length;
        uy = (x2 - x1) / length;
      }
      // the antisymmetric part of the trapezoid is a couple of difference · length / 12
      double couple = factor * difference / 12 * ((x2 - x1) * uy - (y2 - y1) * ux);
      out.add(body, (x1 + x2) / 2, (y1 + y2) / 2, factor * total * ux, factor * total * uy, couple);
    }
  }

  /** A linear spring. */
  static final class Stretch extends LoadLaw {
    private final int first;
    private final int second;
    private final double[] ends;
    private final double stiffness;
    private final double freeLength;

    /**
     * A spring.
     *
     * @param stiffness in N per scaled length
     * @param freeLength scaled
     */
    Stretch(
        String owner, int first, int second, double[] ends, double stiffness, double freeLength) {
      super(owner);
      this.first = first;
      this.second = second;
      this.ends = ends;
      this.stiffness = stiffness;
      this.freeLength = freeLength;
    }

    @Override
    void add(Placements at, double factor, Wrenches out) {
      double x1 = at.x(first, ends[0], ends[1]);
      double y1 = at.y(first, ends[0], ends[1]);
      double x2 = at.x(second, ends[2], ends[3]);
      double y2 = at.y(second, ends[2], ends[3]);
      double length = Math.hypot(x2 - x1, y2 - y1);
      double tension = factor * stiffness * (length - freeLength);
      double scale = length > 0 ? tension / length : 0;
      out.add(first, x1, y1, scale * (x2 - x1), scale * (y2 - y1), 0);
      out.add(second, x2, y2, scale * (x1 - x2), scale * (y1 - y2), 0);
    }
  }

  /** A torsion spring. */
  static final class Twist extends LoadLaw {
    private final int body;
    private final int other;
    private final double stiffness;
    private final double turned;

    /**
     * A spring.
     *
     * @param stiffness in N·m/rad divided by the size
     */
    Twist(String owner, int body, int other, double stiffness, double turned) {
      super(owner);
      this.body = body;
      this.other = other;
      this.stiffness = stiffness;
      this.turned = turned;
    }

    @Override
    void add(Placements at, double factor, Wrenches out) {
      double couple = -factor * stiffness * (turned + at.turn(body) - at.turn(other));
      out.add(body, 0, 0, 0, 0, couple);
      out.add(other, 0, 0, 0, 0, -couple);
    }
  }
}
