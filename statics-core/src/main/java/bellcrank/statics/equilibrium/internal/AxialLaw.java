package bellcrank.statics.equilibrium.internal;

/** A tension along the straight line between a point of one body and a point of another. */
final class AxialLaw extends ForceLaw {

  private final int first;
  private final int second;
  private final double ax;
  private final double ay;
  private final double bx;
  private final double by;
  private final double drawnLength;

  AxialLaw(String owner, int first, int second, double ax, double ay, double bx, double by) {
    super(owner, 1, 2);
    this.first = first;
    this.second = second;
    this.ax = ax;
    this.ay = ay;
    this.bx = bx;
    this.by = by;
    drawnLength = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
  }

  @Override
  void wire(int[] columnOfAction, int[] bodyOfAction) {
    columnOfAction[firstAction] = firstColumn;
    columnOfAction[firstAction + 1] = firstColumn;
    bodyOfAction[firstAction] = first;
    bodyOfAction[firstAction + 1] = second;
  }

  @Override
  Entry entry(int action) {
    return action == 0 ? new Entry.At(ax, ay) : new Entry.At(bx, by);
  }

  @Override
  void evaluate(Placements at, Actions out) {
    double x1 = at.x(first, ax, ay);
    double y1 = at.y(first, ax, ay);
    double x2 = at.x(second, bx, by);
    double y2 = at.y(second, bx, by);
    double dx = x2 - x1;
    double dy = y2 - y1;
    double length = Math.sqrt(dx * dx + dy * dy);
    // ends that meet leave no direction: the column is zero and the order finds it singular
    double scale = length > 0 ? 1 / length : 0;
    out.put(firstAction, x1, y1, dx * scale, dy * scale, 0);
    out.put(firstAction + 1, x2, y2, -dx * scale, -dy * scale, 0);
  }

  @Override
  void gaps(Placements at, double[] gaps) {
    double dx = at.x(second, bx, by) - at.x(first, ax, ay);
    double dy = at.y(second, bx, by) - at.y(first, ax, ay);
    gaps[firstColumn] = drawnLength - Math.sqrt(dx * dx + dy * dy);
  }
}
