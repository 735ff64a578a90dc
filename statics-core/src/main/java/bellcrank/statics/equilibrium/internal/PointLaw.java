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
    super(owner, directions.length / 2 + (couple ? 1 : 0), directions.length + (couple ? 2 : 0));
    this.body = body;
    this.other = other;
    this.qx = qx;
    this.qy = qy;
    this.directions = directions;
    this.turnsWithOther = turnsWithOther;
    this.couple = couple;
  }

  @Override
  void wire(int[] columnOfAction, int[] bodyOfAction) {
    for (int k = 0; k < actions(); k++) {
      columnOfAction[firstAction + k] = firstColumn + k / 2;
      bodyOfAction[firstAction + k] = k % 2 == 0 ? body : other;
    }
  }

  @Override
  boolean isCouple(int column) {
    return column == directions.length / 2;
  }

  @Override
  boolean isFixed() {
    return !turnsWithOther;
  }

  @Override
  Entry entry(int action) {
    return action % 2 == 1 && turnsWithOther ? new Entry.Sliding() : new Entry.At(qx, qy);
  }

  @Override
  void evaluate(Placements at, Actions out) {
    double x = at.x(body, qx, qy);
    double y = at.y(body, qx, qy);
    // a direction belongs to the other body's surface, its touching point to the first body
    double otherX = turnsWithOther ? x : at.x(other, qx, qy);
    double otherY = turnsWithOther ? y : at.y(other, qx, qy);
    int action = firstAction;
    for (int k = 0; k < directions.length; k += 2) {
      double dx = directions[k];
      double dy = directions[k + 1];
      if (turnsWithOther) {
        double turned = at.turnedX(other, dx, dy);
        dy = at.turnedY(other, dx, dy);
        dx = turned;
      }
      out.put(action++, x, y, dx, dy, 0);
      out.put(action++, otherX, otherY, -dx, -dy, 0);
    }
    if (couple) {
      out.put(action++, x, y, 0, 0, 1);
      out.put(action, otherX, otherY, 0, 0, -1);
    }
  }

  @Override
  void gaps(Placements at, double[] gaps) {
    double apartX = at.x(body, qx, qy) - at.x(other, qx, qy);
    double apartY = at.y(body, qx, qy) - at.y(other, qx, qy);
    int column = firstColumn;
    for (int k = 0; k < directions.length; k += 2) {
      double dx = directions[k];
      double dy = directions[k + 1];
      if (turnsWithOther) {
        double turned = at.turnedX(other, dx, dy);
        dy = at.turnedY(other, dx, dy);
        dx = turned;
      }
      gaps[column++] = apartX * dx + apartY * dy;
    }
    if (couple) {
      gaps[column] = at.turn(body) - at.turn(other);
    }
  }
}
