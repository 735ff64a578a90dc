package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.geometry.Point;

/**
 * A sum of connection forces, read as components and as a moment about a point, together with how
 * it depends on the unknowns, so that it can be told whether statics fixes it.
 */
public final class ForceSum {

  private final Solved solved;
  private final double aboutX;
  private final double aboutY;
  private final double[] xMultiples;
  private final double[] yMultiples;
  private final double[] momentMultiples;
  private double fx;
  private double fy;
  private double moment;

  /**
   * An empty sum.
   *
   * @param solved the solved device
   * @param about point of the moment, in world coordinates
   */
  public ForceSum(Solved solved, Point about) {
    this.solved = solved;
    aboutX = solved.assembly.scale().x(about);
    aboutY = solved.assembly.scale().y(about);
    int n = solved.isDeterminate() ? 0 : solved.assembly.columns();
    xMultiples = new double[n];
    yMultiples = new double[n];
    momentMultiples = new double[n];
  }

  void add(int action) {
    Actions a = solved.actions;
    double mx = a.fx(action);
    double my = a.fy(action);
    double mm = a.moment(action, aboutX, aboutY);
    int column = a.column[action];
    double size = solved.unknown(column);
    fx += mx * size;
    fy += my * size;
    moment += mm * size;
    if (xMultiples.length > 0) {
      xMultiples[column] += mx;
      yMultiples[column] += my;
      momentMultiples[column] += mm;
    }
  }

  /** Adds the force on a body through a connection; returns how many actions there were. */
  public int addConnection(int connection, int body) {
    int count = 0;
    for (ForceLaw law : solved.assembly.lawsOf(connection)) {
      count += addLaw(law, body);
    }
    return count;
  }

  /** Adds the force on a body by a sought effort. */
  public int addSought(String name) {
    int count = 0;
    for (ForceLaw law : solved.assembly.laws()) {
      if (law instanceof SoughtLaw && law.owner.equals(name)) {
        for (int k = 0; k < law.actions(); k++) {
          add(law.firstAction + k);
          count++;
        }
      }
    }
    return count;
  }

  private int addLaw(ForceLaw law, int body) {
    int count = 0;
    for (int k = 0; k < law.actions(); k++) {
      if (solved.actions.body[law.firstAction + k] == body) {
        add(law.firstAction + k);
        count++;
      }
    }
    return count;
  }

  /**
   * Adds all forces on bodies of one set that come through connections from bodies of another.
   *
   * @param on whether a body belongs to the first set, by index + 1, the ground being 0
   * @param from whether a body belongs to the second set
   */
  public void addBetween(boolean[] on, boolean[] from) {
    for (ForceLaw law : solved.assembly.laws()) {
      if (law instanceof SoughtLaw) {
        continue;
      }
      for (int k = 0; k < law.actions(); k++) {
        int action = law.firstAction + k;
        // the actions of a connection come in pairs of action and reaction
        int partner = law.firstAction + (k ^ 1);
        if (on[solved.actions.body[action] + 1] && from[solved.actions.body[partner] + 1]) {
          add(action);
        }
      }
    }
  }

  /** Component to the right, in N. */
  public double fx() {
    return fx;
  }

  /** Component up, in N. */
  public double fy() {
    return fy;
  }

  /** Moment about the point, in N·m, counter-clockwise positive. */
  public double moment() {
    return moment * solved.assembly.size();
  }

  /** Whether statics fixes the component to the right. */
  public boolean xDetermined() {
    return solved.determined(xMultiples);
  }

  /** Whether statics fixes the component up. */
  public boolean yDetermined() {
    return solved.determined(yMultiples);
  }

  /** Whether statics fixes the moment. */
  public boolean momentDetermined() {
    return solved.determined(momentMultiples);
  }
}
