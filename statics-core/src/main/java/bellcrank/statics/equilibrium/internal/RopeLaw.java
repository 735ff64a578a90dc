package bellcrank.statics.equilibrium.internal;

/**
 * A rope past any number of stops. Its straight parts are tangents of the circles at the stops. A
 * part's tension is a given multiple of one unknown; a post starts the next unknown. Forces act
 * where the rope touches; the motion it forbids is the change of its whole length.
 */
final class RopeLaw extends ForceLaw {

  /** Stops as arrays: body, drawn centre, signed radius (counter-clockwise positive). */
  static final class Stops {
    final int[] body;
    final double[] qx;
    final double[] qy;
    final double[] signedRadius;

    Stops(int count) {
      body = new int[count];
      qx = new double[count];
      qy = new double[count];
      signedRadius = new double[count];
    }
  }

  private final Stops stops;
  private final int[] columnOfPart;
  private final double[] multiple;

  /**
   * A law.
   *
   * @param columnOfPart for each straight part the unknown that it carries
   * @param multiple for each straight part its tension for one unit of that unknown
   */
  RopeLaw(String owner, Stops stops, int[] columnOfPart, double[] multiple) {
    super(owner, columnOfPart[columnOfPart.length - 1] + 1, 2 * columnOfPart.length);
    this.stops = stops;
    this.columnOfPart = columnOfPart;
    this.multiple = multiple;
  }

  @Override
  void wire(int[] columnOfAction, int[] bodyOfAction) {
    for (int part = 0; part < columnOfPart.length; part++) {
      int action = firstAction + 2 * part;
      columnOfAction[action] = firstColumn + columnOfPart[part];
      columnOfAction[action + 1] = firstColumn + columnOfPart[part];
      bodyOfAction[action] = stops.body[part];
      bodyOfAction[action + 1] = stops.body[part + 1];
    }
  }

  /** Tension of the last straight part for one unit of the last unknown. */
  double lastMultiple() {
    return multiple[multiple.length - 1];
  }

  /** A sheave, drum or post hands its rope's forces on at its centre. */
  @Override
  Entry entry(int action) {
    int stop = action / 2 + action % 2;
    return new Entry.At(stops.qx[stop], stops.qy[stop]);
  }

  @Override
  void evaluate(Placements at, Actions out) {
    for (int part = 0; part < columnOfPart.length; part++) {
      double x1 = at.x(stops.body[part], stops.qx[part], stops.qy[part]);
      double y1 = at.y(stops.body[part], stops.qx[part], stops.qy[part]);
      double x2 = at.x(stops.body[part + 1], stops.qx[part + 1], stops.qy[part + 1]);
      double y2 = at.y(stops.body[part + 1], stops.qx[part + 1], stops.qy[part + 1]);
      double r1 = stops.signedRadius[part];
      double r2 = stops.signedRadius[part + 1];
      double dx = x2 - x1;
      double dy = y2 - y1;
      double squared = dx * dx + dy * dy;
      double gap = r1 - r2;
      double tangent = Math.sqrt(Math.max(0, squared - gap * gap));
      // direction u of the part with u·d = tangent length and u×d = −gap:
      // a circle run round counter-clockwise lies to the left of the rope
      double scale = squared > 0 ? 1 / squared : 0;
      double ux = (dx * tangent - dy * gap) * scale;
      double uy = (dy * tangent + dx * gap) * scale;
      int a = firstAction + 2 * part;
      double m = multiple[part];
      out.put(a, x1 + r1 * uy, y1 - r1 * ux, m * ux, m * uy, 0);
      out.put(a + 1, x2 + r2 * uy, y2 - r2 * ux, -m * ux, -m * uy, 0);
      if (out.lossy()) {
        // a free sheave's turning drops out: it counts +r where the rope leaves, -r where it comes
        out.putMotion(a, ux, uy);
        out.putMotion(a + 1, -ux, -uy);
      }
    }
  }

  /**
   * Each run of rope between two drums, posts or ends: its straight parts, the arcs on free sheaves
   * between, and what is wound on drums and posts, which turn with their bodies.
   */
  @Override
  void gaps(Placements at, double[] gaps) {
    for (int k = 0; k < columns(); k++) {
      gaps[firstColumn + k] = 0;
    }
    for (int part = 0; part < columnOfPart.length; part++) {
      double gap = stops.signedRadius[part] - stops.signedRadius[part + 1];
      double drawnX = stops.qx[part + 1] - stops.qx[part];
      double drawnY = stops.qy[part + 1] - stops.qy[part];
      double dx = x(part + 1, at) - x(part, at);
      double dy = y(part + 1, at) - y(part, at);
      double turned = direction(dx, dy, gap) - direction(drawnX, drawnY, gap);
      turned -= 2 * Math.PI * Math.rint(turned / (2 * Math.PI));
      boolean begins = part == 0 || columnOfPart[part - 1] != columnOfPart[part];
      boolean ends =
          part == columnOfPart.length - 1 || columnOfPart[part + 1] != columnOfPart[part];
      // an arc grows with the turn of the part that leaves it, and shrinks with that which comes
      double grown = tangent(dx, dy, gap) - tangent(drawnX, drawnY, gap);
      grown += stops.signedRadius[part] * (turned - (begins ? at.turn(stops.body[part]) : 0));
      grown -= stops.signedRadius[part + 1] * (turned - (ends ? at.turn(stops.body[part + 1]) : 0));
      gaps[firstColumn + columnOfPart[part]] -= grown;
    }
  }

  private double x(int stop, Placements at) {
    return at.x(stops.body[stop], stops.qx[stop], stops.qy[stop]);
  }

  private double y(int stop, Placements at) {
    return at.y(stops.body[stop], stops.qx[stop], stops.qy[stop]);
  }

  /** Length of a straight part between two circles whose signed radii differ by a gap. */
  private static double tangent(double dx, double dy, double gap) {
    return Math.sqrt(Math.max(0, dx * dx + dy * dy - gap * gap));
  }

  /** Angle of that part: u·d is its length, u×d minus the gap. */
  private static double direction(double dx, double dy, double gap) {
    return Math.atan2(dy, dx) + Math.atan2(gap, tangent(dx, dy, gap));
  }
}
