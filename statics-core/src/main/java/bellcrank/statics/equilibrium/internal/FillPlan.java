package bellcrank.statics.equilibrium.internal;

import java.util.Arrays;

/**
 * How ordered rows are filled straight from the laws, without the equations in between. What no
 * placement changes is written once. The moments of fixed laws need no more than the turns of the
 * bodies; only the other laws are evaluated.
 */
final class FillPlan {

  private static final int X = 0;
  private static final int Y = 1;
  private static final int MOMENT = 2;

  private final OrderedRows rows;
  private final ForceLaw[] moving;
  private final Terms x;
  private final Terms y;
  private final Terms moments;

  /** Moments of fixed laws: their actions are numbers of the arms and couples. */
  private final Terms fixedMoments;

  // of each action: moment while the body is not turned, and what a quarter turn makes of it
  private final double[] arms;
  private final double[] couples;
  private final int[] body;

  /**
   * Makes the plan and writes the coefficients that stay.
   *
   * @param assembly the device
   * @param drawn its actions as drawn
   * @param centre its moment centres as drawn
   * @param rows their order
   */
  FillPlan(Assembly assembly, Actions drawn, double[] centre, OrderedRows rows) {
    this.rows = rows;
    int count = drawn.count();
    x = new Terms(count);
    y = new Terms(count);
    moments = new Terms(count);
    fixedMoments = new Terms(count);
    arms = new double[2 * count];
    couples = new double[count];
    body = drawn.body;
    Equations equations = new Equations(assembly, drawn);
    int[] placeOfEntry = new int[equations.value.length];
    Arrays.fill(placeOfEntry, -1);
    for (int k = 0; k < rows.entry.length; k++) {
      placeOfEntry[rows.entry[k]] = k;
    }
    boolean[] met = new boolean[rows.entry.length];
    for (ForceLaw law : assembly.laws()) {
      for (int action = law.firstAction; action < law.firstAction + law.actions(); action++) {
        int entry = equations.entryOf(action);
        int components = entry < 0 ? 0 : body[action] < assembly.memberCount() ? 3 : 2;
        for (int component = 0; component < components; component++) {
          int place = placeOfEntry[entry + component];
          if (place >= 0) {
            add(law, drawn, centre, action, component, place, !met[place]);
            met[place] = true;
          }
        }
      }
    }
    moving = Arrays.stream(assembly.laws()).filter(law -> !law.isFixed()).toArray(ForceLaw[]::new);
  }

  private void add(
      ForceLaw law,
      Actions drawn,
      double[] centre,
      int action,
      int component,
      int place,
      boolean first) {
    if (!law.isFixed()) {
      Terms terms = component == X ? x : component == Y ? y : moments;
      terms.add(action, place, first);
    } else if (component == MOMENT) {
      fixedMoments.add(action, place, first);
      double armX = drawn.x(action) - centre[2 * body[action]];
      double armY = drawn.y(action) - centre[2 * body[action] + 1];
      arms[2 * action] = armX * drawn.fy(action) - armY * drawn.fx(action);
      arms[2 * action + 1] = -armX * drawn.fx(action) - armY * drawn.fy(action);
      couples[action] = drawn.couple(action);
    } else {
      rows.value[place] = component == X ? drawn.fx(action) : drawn.fy(action);
    }
  }

  /**
   * Fills in the coefficients that move.
   *
   * @param at where the bodies are
   * @param actions storage; those of fixed laws are not written
   * @param centre where the moment centres are
   */
  void fill(Placements at, Actions actions, double[] centre) {
    for (ForceLaw law : moving) {
      law.evaluate(at, actions);
    }
    double[] value = rows.value;
    for (int t = 0; t < fixedMoments.count; t++) {
      int action = fixedMoments.action[t];
      double moment =
          couples[action]
              + at.cosine(body[action]) * arms[2 * action]
              + at.sine(body[action]) * arms[2 * action + 1];
      fixedMoments.put(value, t, moment);
    }
    for (int t = 0; t < x.count; t++) {
      x.put(value, t, actions.fx(x.action[t]));
    }
    for (int t = 0; t < y.count; t++) {
      y.put(value, t, actions.fy(y.action[t]));
    }
    for (int t = 0; t < moments.count; t++) {
      int action = moments.action[t];
      int k = 2 * body[action];
      moments.put(value, t, actions.moment(action, centre[k], centre[k + 1]));
    }
  }

  /** Actions and the places of their numbers of one kind; those first at their place are ahead. */
  private static final class Terms {

    private final int[] action;
    private final int[] place;
    private int firsts;
    private int count;

    Terms(int most) {
      action = new int[most];
      place = new int[most];
    }

    void add(int from, int to, boolean first) {
      int last = count++;
      action[last] = from;
      place[last] = to;
      if (first) {
        action[last] = action[firsts];
        place[last] = place[firsts];
        action[firsts] = from;
        place[firsts++] = to;
      }
    }

    void put(double[] value, int term, double number) {
      if (term < firsts) {
        value[place[term]] = number;
      } else {
        value[place[term]] += number;
      }
    }
  }
}
