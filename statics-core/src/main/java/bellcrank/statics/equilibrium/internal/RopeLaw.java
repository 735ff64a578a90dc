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
}
