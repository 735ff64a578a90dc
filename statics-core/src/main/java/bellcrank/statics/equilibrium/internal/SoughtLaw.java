package bellcrank.statics.equilibrium.internal;

/** A sought effort: one or two directions, or a couple, on one body; fixed in the world. */
final class SoughtLaw extends ForceLaw {

  private final int body;
  private final double qx;
  private final double qy;
  private final double[] directions;
  private final Entry entry;

  /**
   * A law.
   *
   * @param directions x and y of each unknown's force in turn; empty for a couple
   * @param entry where it enters its body
   */
  SoughtLaw(String owner, int body, double qx, double qy, double[] directions, Entry entry) {
    super(owner, Math.max(1, directions.length / 2), Math.max(1, directions.length / 2));
    this.body = body;
    this.qx = qx;
    this.qy = qy;
    this.directions = directions;
    this.entry = entry;
  }

  @Override
  void wire(int[] columnOfAction, int[] bodyOfAction) {
    for (int k = 0; k < actions(); k++) {
      columnOfAction[firstAction + k] = firstColumn + k;
      bodyOfAction[firstAction + k] = body;
    }
  }

  @Override
  boolean isCouple(int column) {
    return directions.length == 0;
  }

  @Override
  boolean isFixed() {
    return true;
  }

  @Override
  Entry entry(int action) {
    return entry;
  }

  @Override
  void evaluate(Placements at, Actions out) {
    double x = at.x(body, qx, qy);
    double y = at.y(body, qx, qy);
    if (directions.length == 0) {
      out.put(firstAction, x, y, 0, 0, 1);
      return;
    }
    for (int k = 0; k < directions.length; k += 2) {
      out.put(firstAction + k / 2, x, y, directions[k], directions[k + 1], 0);
    }
  }

  /** A sought effort forbids no motion. */
  @Override
  void gaps(Placements at, double[] gaps) {}
}
