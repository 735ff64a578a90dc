package bellcrank.statics.equilibrium.internal;

/**
 * Chooses for each member the point about which its moment equation is written: the one through
 * which most unknown forces pass, so that fewest are left in the equation. Candidates are the
 * places where forces act and, on members with few of them, the crossings of lines of action,
 * within ten device sizes.
 */
final class MomentCentres {

  private static final double FARTHEST = 10;
  private static final int FEW_ACTIONS = 8;

  private final Actions actions;
  private final double zero;
  private final int[] start;
  private final int[] list;

  private double bestX;
  private double bestY;
  private int bestCount;

  private MomentCentres(Assembly assembly, Actions actions) {
    this.actions = actions;
    zero = assembly.scale().zero();
    int bodies = assembly.memberCount();
    start = new int[bodies + 1];
    for (int body : actions.body) {
      if (body >= 0 && body < bodies) {
        start[body + 1]++;
      }
    }
    for (int body = 0; body < bodies; body++) {
      start[body + 1] += start[body];
    }
    list = new int[start[bodies]];
    int[] next = start.clone();
    for (int action = 0; action < actions.body.length; action++) {
      int body = actions.body[action];
      if (body >= 0 && body < bodies) {
        list[next[body]++] = action;
      }
    }
  }

  /** Writes the centres, as drawn points in scaled coordinates, for actions in the drawn pose. */
  static void choose(Assembly assembly, Actions drawn, double[] centreX, double[] centreY) {
    MomentCentres centres = new MomentCentres(assembly, drawn);
    for (int body = 0; body < assembly.memberCount(); body++) {
      centres.member(body);
      centreX[body] = centres.bestX;
      centreY[body] = centres.bestY;
    }
  }

  private void member(int body) {
    int from = start[body];
    int to = start[body + 1];
    bestX = 0;
    bestY = 0;
    bestCount = -1;
    for (int i = from; i < to; i++) {
      int a = list[i];
      if (i == from
          || actions.x[a] != actions.x[list[i - 1]]
          || actions.y[a] != actions.y[list[i - 1]]) {
        candidate(actions.x[a], actions.y[a], from, to);
      }
    }
    if (to - from > FEW_ACTIONS || bestCount >= to - from - 1) {
      return;
    }
    for (int i = from; i < to; i++) {
      for (int j = i + 1; j < to; j++) {
        crossing(list[i], list[j], from, to);
      }
    }
  }

  private void crossing(int a, int b, int from, int to) {
    double sine = actions.fx[a] * actions.fy[b] - actions.fy[a] * actions.fx[b];
    if (Math.abs(sine) < 1 / FARTHEST / FARTHEST) {
      return;
    }
    double dx = actions.x[b] - actions.x[a];
    double dy = actions.y[b] - actions.y[a];
    double along = (dx * actions.fy[b] - dy * actions.fx[b]) / sine;
    double x = actions.x[a] + along * actions.fx[a];
    double y = actions.y[a] + along * actions.fy[a];
    if (Math.abs(x) <= FARTHEST && Math.abs(y) <= FARTHEST) {
      candidate(x, y, from, to);
    }
  }

  private void candidate(double x, double y, int from, int to) {
    int count = 0;
    for (int i = from; i < to; i++) {
      int a = list[i];
      double moment =
          (actions.x[a] - x) * actions.fy[a]
              - (actions.y[a] - y) * actions.fx[a]
              + actions.couple[a];
      if (Math.abs(moment) <= zero) {
        count++;
      }
    }
    if (count > bestCount) {
      bestCount = count;
      bestX = x;
      bestY = y;
    }
  }
}
