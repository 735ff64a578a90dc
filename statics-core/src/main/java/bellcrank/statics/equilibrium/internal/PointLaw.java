package bellcrank.statics.equilibrium.internal;

/**
 * Forces along one or two directions and possibly a couple, at one point between two bodies: pins,
 * clamps, rollers, slots, guides, contacts and bases.
 */
final class PointLaw extends ForceLaw {

  private final int body;
  private final int other;
  private final double qx;
  private final double qy;
  private final double[] directions;
  private final boolean turnsWithOther;
  private final boolean couple;

  /**
   * A law.
   *
   * @param directions x and y of one or two directions, in turn
   * @param turnsWithOther whether they are fixed in the other body rather than in the world
   */
  PointLaw(
      String owner,
      int body,
      int other,
      double qx,
      double qy,
      double[] directions,
      boolean turnsWithOther,
      boolean couple) {
    super(owner);
    this.body = body;
    this.other = other;
    this.qx = qx;
    this.qy = qy;
    this.directions = directions;
    this.turnsWithOther = turnsWithOther;
    this.couple = couple;
  }

  @Override
  int columns() {
    return directions.length / 2 + (couple ? 1 : 0);
  }

  @Override
  int actions() {
    return 2 * columns();
  }

  @Override
  int bodyOf(int action) {
    return action % 2 == 0 ? body : other;
  }

  @Override
  int columnOf(int action) {
    return action / 2;
  }

  @Override
  boolean isCouple(int column) {
    return column == directions.length / 2;
  }

  @Override
  void evaluate(Placements at, Actions out) {
    double ax = at.x(body, qx, qy);
    double ay = at.y(body, qx, qy);
    double bx = at.x(other, qx, qy);
    double by = at.y(other, qx, qy);
    int action = firstAction;
    for (int k = 0; k < directions.length; k += 2) {
      double dx = directions[k];
      double dy = directions[k + 1];
      if (turnsWithOther) {
        double turned = at.turnedX(other, dx, dy);
        dy = at.turnedY(other, dx, dy);
        dx = turned;
        // the surface belongs to the other body, the touching point to the first one
        out.put(action++, ax, ay, dx, dy, 0);
        out.put(action++, ax, ay, -dx, -dy, 0);
      } else {
        out.put(action++, ax, ay, dx, dy, 0);
        out.put(action++, bx, by, -dx, -dy, 0);
      }
    }
    if (couple) {
      out.put(action++, ax, ay, 0, 0, 1);
      out.put(action, bx, by, 0, 0, -1);
    }
  }
}
