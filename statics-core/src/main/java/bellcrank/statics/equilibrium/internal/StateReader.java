package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Reads what bars carry and what connections do to bodies, pose after pose, without lists or names
 * in between. What is to be read is stated once; each part has a number in the order in which it
 * was stated. Only for devices whose equations fix all unknowns.
 */
public final class StateReader {

  /** Coefficients of a piece of a bar: three of N, three of V, four of M. */
  public static final int CURVES = CutSums.CURVES;

  private static final class BarPart {
    private final int cut;
    private final List<Integer> edges = new ArrayList<>();

    BarPart(int cut) {
      this.cut = cut;
    }
  }

  private static final class ForcePart {
    private final int[] actions;
    private final int body;
    private final double x;
    private final double y;

    ForcePart(int[] actions, int body, double x, double y) {
      this.actions = actions;
      this.body = body;
      this.x = x;
      this.y = y;
    }
  }

  private final Device device;
  private final PreparedSystem system;
  private final PreparedSystem.Storage storage;
  private final List<MemberCut> cuts = new ArrayList<>();
  private final List<CutSums> sums = new ArrayList<>();
  private final List<BarPart> bars = new ArrayList<>();
  private final List<ForcePart> forces = new ArrayList<>();
  private boolean complete = true;

  /**
   * A reader of a device.
   *
   * @param device the device
   */
  public StateReader(Device device) {
    this.device = device;
    system = new PreparedSystem(device);
    storage = system.storage();
    complete = system.isSquare();
  }

  /** Whether everything that was stated can be read; else a balance has to tell why not. */
  public boolean isComplete() {
    return complete;
  }

  /** States a bar of a member. */
  public void addBar(String member, int bar) {
    int known = 0;
    while (known < cuts.size() && !cuts.get(known).member.name().equals(member)) {
      known++;
    }
    if (known == cuts.size()) {
      MemberCut cut = MemberCut.of(system.assembly(), (Member) device.body(member).orElseThrow());
      cuts.add(cut);
      if (cut.shape().isPresent()) {
        sums.add(new CutSums(cut, cut.shape().get()));
      } else {
        complete = false;
      }
    }
    BarPart part = new BarPart(known);
    bars.add(part);
    if (!complete) {
      return;
    }
    CutShape shape = cuts.get(known).shape().orElseThrow();
    for (int edge = 0; edge < shape.graph.edges().size(); edge++) {
      if (shape.graph.edges().get(edge).bar() == bar) {
        part.edges.add(edge);
        complete &= shape.before[edge].length > 0;
      }
    }
    complete &= !part.edges.isEmpty();
    for (int set : shape.set) {
      complete &= set == shape.set[0];
    }
  }

  /**
   * States what a connection does to a body.
   *
   * @param connection number of the connection
   * @param body index of the body
   * @param x where the couple is told about, as drawn
   * @param y where the couple is told about, as drawn
   */
  public void addForce(int connection, int body, double x, double y) {
    Actions actions = storage.actions();
    List<Integer> own = new ArrayList<>();
    for (ForceLaw law : system.assembly().lawsOf(connection)) {
      for (int k = 0; k < law.actions(); k++) {
        if (actions.body[law.firstAction + k] == body) {
          own.add(law.firstAction + k);
        }
      }
    }
    Scale scale = system.assembly().scale();
    Point at = Point.of(x, y);
    forces.add(
        new ForcePart(
            own.stream().mapToInt(Integer::intValue).toArray(), body, scale.x(at), scale.y(at)));
  }

  /**
   * Solves at a pose.
   *
   * @return false if the equations are singular there or a load finds no way into the bars
   */
  public boolean solve(Pose pose, LoadCase loadCase) {
    if (!storage.solve(pose, loadCase)) {
      return false;
    }
    storage.evaluate();
    return addUp();
  }

  /**
   * Solves under another case in the same pose, which takes much less.
   *
   * @return false if a force is beyond all bounds or a load finds no way into the bars
   */
  public boolean again(LoadCase loadCase) {
    return storage.again(loadCase) && addUp();
  }

  private boolean addUp() {
    boolean none = storage.loads() == 0;
    for (CutSums sum : sums) {
      if (!none) {
        sum.fill(storage);
      }
      if (none ? sum.isPulledAstray() : sum.astray() >= 0) {
        return false;
      }
    }
    return true;
  }

  /** Number of pieces of a bar. */
  public int pieces(int bar) {
    return bars.get(bar).edges.size();
  }

  /** Where a piece starts, in m from the start of its bar. */
  public double start(int bar, int piece) {
    return edge(bar, piece).start() * system.assembly().size();
  }

  /** Where a piece ends, in m from the start of its bar. */
  public double end(int bar, int piece) {
    return edge(bar, piece).end() * system.assembly().size();
  }

  private BarGraph.Edge edge(int bar, int piece) {
    BarPart part = bars.get(bar);
    return cuts.get(part.cut).shape().orElseThrow().graph.edges().get(part.edges.get(piece));
  }

  /** Writes the coefficients of all pieces of a bar, {@link #CURVES} each. */
  public void bar(int bar, double[] to) {
    BarPart part = bars.get(bar);
    if (storage.loads() == 0) {
      Arrays.fill(to, 0, CURVES * part.edges.size(), 0);
      return;
    }
    for (int k = 0; k < part.edges.size(); k++) {
      sums.get(part.cut).curves(part.edges.get(k), storage, to, CURVES * k);
    }
  }

  /** Force to the right on a body. */
  public double x(int force) {
    double sum = 0;
    for (int action : forces.get(force).actions) {
      sum += storage.unknown(storage.actions().column[action]) * storage.actions().fx(action);
    }
    return sum;
  }

  /** Force up on a body. */
  public double y(int force) {
    double sum = 0;
    for (int action : forces.get(force).actions) {
      sum += storage.unknown(storage.actions().column[action]) * storage.actions().fy(action);
    }
    return sum;
  }

  /** Couple on a body, about the place that was stated. */
  public double couple(int force) {
    ForcePart part = forces.get(force);
    double x = storage.placements().x(part.body, part.x, part.y);
    double y = storage.placements().y(part.body, part.x, part.y);
    double sum = 0;
    for (int action : part.actions) {
      sum +=
          storage.unknown(storage.actions().column[action])
              * storage.actions().moment(action, x, y);
    }
    return sum * system.assembly().size();
  }

  /** Value of an unknown. */
  public double unknown(int column) {
    return storage.unknown(column);
  }

  /** Number of unknowns. */
  public int unknowns() {
    return system.assembly().columns();
  }

  /** Sum of the sizes of the loads of the state, in N. */
  public double loads() {
    return storage.loads();
  }
}
