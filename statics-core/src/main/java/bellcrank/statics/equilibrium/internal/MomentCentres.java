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

  /** Places that are tried on a member with very many, so that the search stays linear. */
  private static final int MOST_PLACES = 64;

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

  /** Writes x and y of the centre of each member side by side, where the actions are. */
  static void choose(Assembly assembly, Actions actions, double[] centre) {
    MomentCentres centres = new MomentCentres(assembly, actions);
    for (int body = 0; body < assembly.memberCount(); body++) {
      centres.member(body);
      centre[2 * body] = centres.bestX;
      centre[2 * body + 1] = centres.bestY;
    }
  }

  private void member(int body) {
    int from = start[body];
    int to = start[body + 1];
    bestX = 0;
    bestY = 0;
    bestCount = -1;
    for (int i = from; i < Math.min(to, from + MOST_PLACES); i++) {
      int a = list[i];
      if (i == from
          || actions.x(a) != actions.x(list[i - 1])
          || actions.y(a) != actions.y(list[i - 1])) {
        candidate(actions.x(a), actions.y(a), from, to);
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
    double sine = actions.fx(a) * actions.fy(b) - actions.fy(a) * actions.fx(b);
    if (Math.abs(sine) < 1 / FARTHEST / FARTHEST) {
      return;
    }
    double dx = actions.x(b) - actions.x(a);
    double dy = actions.y(b) - actions.y(a);
    double along = (dx * actions.fy(b) - dy * actions.fx(b)) / sine;
    double x = actions.x(a) + along * actions.fx(a);
    double y = actions.y(a) + along * actions.fy(a);
    if (Math.abs(x) <= FARTHEST && Math.abs(y) <= FARTHEST) {
      candidate(x, y, from, to);
    }
  }

  private void candidate(double x, double y, int from, int to) {
    int count = 0;
    for (int i = from; i < to; i++) {
      int a = list[i];
      double moment = actions.moment(a, x, y);
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
