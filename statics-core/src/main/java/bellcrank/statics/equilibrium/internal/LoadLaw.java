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

  /** Whether it acts on a body. */
  abstract boolean actsOn(int body);

  /** Where it enters a body on which it acts. */
  abstract Entry entry(int body);

  /** A force of fixed size and direction at a point. */
  static final class AtPoint extends LoadLaw {
    private final int body;
    private final double qx;
    private final double qy;
    private final double fx;
    private final double fy;
    private final boolean overBars;

    /**
     * A force.
     *
     * @param overBars whether it is the sum of what is spread evenly over the body's bars
     */
    AtPoint(String owner, int body, double qx, double qy, double fx, double fy, boolean overBars) {
      super(owner);
      this.body = body;
      this.qx = qx;
      this.qy = qy;
      this.fx = fx;
      this.fy = fy;
      this.overBars = overBars;
    }

    @Override
    boolean actsOn(int other) {
      return other == body;
    }

    @Override
    Entry entry(int of) {
      return overBars ? new Entry.OverBars() : new Entry.At(qx, qy);
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
    private final Entry entry;

    Turning(String owner, int body, double moment, Entry entry) {
      super(owner);
      this.body = body;
      this.moment = moment;
      this.entry = entry;
    }

    @Override
    boolean actsOn(int other) {
      return other == body;
    }

    @Override
    Entry entry(int of) {
      return entry;
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
    boolean actsOn(int other) {
      return other == body;
    }

    @Override
    Entry entry(int of) {
      return new Entry.Along(ax, ay, bx, by);
    }

    /**
     * Writes its intensities as forces per whole segment: x and y at the start, x and y at the end.
     */
    void intensities(Placements at, double factor, double[] out) {
      double ux = directionX(at);
      double uy = directionY(at);
      double start = factor * (total - difference / 2);
      double end = factor * (total + difference / 2);
      out[0] = start * ux;
      out[1] = start * uy;
      out[2] = end * ux;
      out[3] = end * uy;
    }

    private double directionX(Placements at) {
      return square ? -at.turnedY(body, bx - ax, by - ay) / Math.hypot(bx - ax, by - ay) : dx;
    }

    private double directionY(Placements at) {
      return square ? at.turnedX(body, bx - ax, by - ay) / Math.hypot(bx - ax, by - ay) : dy;
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
    boolean actsOn(int body) {
      return body == first || body == second;
    }

    /** Both ends of a spring on one body add up to nothing, wherever they enter. */
    @Override
    Entry entry(int body) {
      return body == first ? new Entry.At(ends[0], ends[1]) : new Entry.At(ends[2], ends[3]);
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
    private final Entry entry;

    /**
     * A spring.
     *
     * @param stiffness in N·m/rad divided by the size
     * @param entry where it enters both bodies
     */
    Twist(String owner, int body, int other, double stiffness, double turned, Entry entry) {
      super(owner);
      this.body = body;
      this.other = other;
      this.stiffness = stiffness;
      this.turned = turned;
      this.entry = entry;
    }

    @Override
    boolean actsOn(int one) {
      return one == body || one == other;
    }

    @Override
    Entry entry(int of) {
      return entry;
    }

    @Override
    void add(Placements at, double factor, Wrenches out) {
      double couple = -factor * stiffness * (turned + at.turn(body) - at.turn(other));
      out.add(body, 0, 0, 0, 0, couple);
      out.add(other, 0, 0, 0, 0, -couple);
    }
  }
}
