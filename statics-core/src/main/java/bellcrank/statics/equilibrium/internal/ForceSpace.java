package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Vector;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;
import org.ejml.data.DMatrixRMaj;

/**
 * All forces that can balance loads on a device: f = f₀ + N·z, with z the forces that statics
 * leaves free. Friction couples of pins are among the forces. Which of the forces are free is
 * chosen by a rank-revealing factor, so z are forces of the device themselves.
 */
public final class ForceSpace {

  /** Diagonal entries of the factor below this share of the largest are zero. */
  static final double RANK_TOLERANCE = 1e-11;

  /** From so many equations on, the free forces are chosen body by body. */
  private static final int LARGE = 150;

  /** Largest multiple of a free force in another one with which such a choice is taken. */
  private static final double MODERATE = 100;

  private static final PivotedFactor NOTHING = new PivotedFactor(new DMatrixRMaj(0, 0));

  private final Assembly assembly;
  private final Placements placements;
  private final Actions actions;
  private final double[] centre;
  private final int rows;
  private final int columns;

  /** The equations and their dense factor; of no size until they are needed. */
  private DMatrixRMaj matrix = new DMatrixRMaj(0, 0);

  private PivotedFactor factor = NOTHING;
  private final double[] right;
  private int rank;
  private double[][] free = {};

  /** Once moved: the choice of free forces made before, while it serves. */
  private Optional<KeptChoice> kept = Optional.empty();

  private boolean keeps;

  private ForceSpace(Assembly assembly, Pose pose) {
    this.assembly = assembly;
    placements = assembly.placements();
    actions = assembly.actions();
    // a dense factor gains nothing from moments about well-chosen points: all are about the middle
    centre = new double[2 * assembly.memberCount()];
    columns = assembly.columns();
    int shafts = 0;
    for (Connection connection : assembly.device().connections()) {
      shafts += connection instanceof Pin pin && isShaft(pin) ? 1 : 0;
    }
    rows = assembly.rows() + shafts;
    right = new double[rows];
    place(pose);
    if (rows >= LARGE && rows == assembly.rows()) {
      chooseByBodies();
    }
    if (!keeps) {
      choose();
    }
  }

  private void chooseByBodies() {
    Equations equations = new Equations(assembly, actions);
    KeptChoice.firstPlaces(actions, centre);
    equations.fillForces(actions, centre);
    Arrays.fill(centre, 0);
    kept =
        FreeChoice.of(assembly, equations, assembly.scale().zero())
            .flatMap(chosen -> KeptChoice.of(assembly, chosen, MODERATE));
    free = new double[Math.max(0, columns - rows)][columns];
    KeptChoice choice = kept.orElse(null);
    keeps = choice != null && choice.take(actions, free);
    rank = rows;
  }

  /** Lets a dense factor choose. */
  private void choose() {
    if (factor == NOTHING) {
      matrix = new DMatrixRMaj(rows, columns);
      fill();
      factor = new PivotedFactor(matrix);
    } else {
      fill();
      factor.take(matrix);
    }
    free();
  }

  private void place(Pose pose) {
    assembly.place(placements, pose);
    assembly.evaluate(placements, actions);
  }

  /** Writes the equations. */
  private void fill() {
    Arrays.fill(matrix.data, 0);
    addActions();
    double zero = assembly.scale().zero();
    for (int k = 0; k < matrix.data.length; k++) {
      matrix.data[k] = Math.abs(matrix.data[k]) > zero ? matrix.data[k] : 0;
    }
    if (rows > assembly.rows()) {
      balanceShafts(assembly.rows());
    }
  }

  /** Finds which forces are free, and what each adds. */
  private void free() {
    rank = factor.rank(Math.max(RANK_TOLERANCE, 4 * assembly.scale().zero()));
    if (free.length != columns - rank) {
      free = new double[columns - rank][columns];
    }
    for (int which = 0; which < free.length; which++) {
      for (int i = 0; i < rank; i++) {
        right[i] = -factor.r(i, rank + which);
      }
      factor.solve(rank, right, free[which]);
      free[which][factor.pivot(rank + which)] = 1;
    }
  }

  /**
   * The forces of a device in a pose.
   *
   * @param device the device
   * @param pose where its bodies are
   * @return its forces
   */
  public static ForceSpace of(Device device, Pose pose) {
    return new ForceSpace(Assembly.withDryPins(device), pose);
  }

  /**
   * The forces in another pose.
   *
   * @param pose where the bodies are
   * @return its forces
   */
  public ForceSpace at(Pose pose) {
    return new ForceSpace(assembly, pose);
  }

  /**
   * Goes to another pose itself, in the storage that it has. Only who has made it for this may do
   * so: what was read from it before no longer holds. The free forces stay the same as long as they
   * serve.
   *
   * @param pose where the bodies are
   */
  public void moveTo(Pose pose) {
    if (!keeps) {
      keep();
    }
    place(pose);
    KeptChoice choice = kept.orElse(null);
    keeps = choice != null && choice.take(actions, free);
    if (!keeps) {
      choose();
    }
  }

  /** Keeps the choice of free forces of the factor, if they are all that the equations leave. */
  private void keep() {
    kept = Optional.empty();
    if (rank == rows && rows == assembly.rows()) {
      int[] columnsOfFree = new int[free.length];
      double largest = 0;
      for (int which = 0; which < free.length; which++) {
        columnsOfFree[which] = factor.pivot(rank + which);
        for (double multiple : free[which]) {
          largest = Math.max(largest, Math.abs(multiple));
        }
      }
      kept = KeptChoice.of(assembly, columnsOfFree, largest);
    }
  }

  /** A dry pin that is a body of its own: its shaft turns freely unless friction holds it. */
  private boolean isShaft(Pin pin) {
    return pin.friction() > 0 && assembly.pinBody(pin.name()) >= 0;
  }

  /** Adds the forces of all actions; a dense matrix needs no pattern of {@link Equations}. */
  private void addActions() {
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      if (body >= 0) {
        int at = matrix.getIndex(assembly.firstRow(body), actions.column[action]);
        matrix.data[at] += actions.fx(action);
        matrix.data[at + columns] += actions.fy(action);
        if (body < assembly.memberCount()) {
          matrix.data[at + 2 * columns] += actions.moment(action, 0, 0);
        }
      }
    }
  }

  /** Joints have no equation of moments; the shaft of a dry pin needs one. */
  private void balanceShafts(int firstRow) {
    Device device = assembly.device();
    int row = firstRow;
    for (int i = 0; i < device.connections().size(); i++) {
      if (device.connections().get(i) instanceof Pin pin && isShaft(pin)) {
        for (int body = 0; body < pin.bodies().size(); body++) {
          matrix.set(row, assembly.coupleColumn(i, body), 1);
        }
        row++;
      }
    }
  }

  /** The assembly. */
  public Assembly assembly() {
    return assembly;
  }

  /** Number of equations, those of the shafts of dry pins with them. */
  public int rows() {
    return rows;
  }

  /** Number of free forces. */
  public int freedom() {
    return columns - rank;
  }

  /** Number of independent conditions that loads must fulfil to be balanced at all. */
  public int conditions() {
    return rows - rank;
  }

  /**
   * What one unit of a free force adds to the forces.
   *
   * @param which which one
   * @return by unknowns; shared, not to be changed
   */
  public double[] free(int which) {
    return free[which];
  }

  /**
   * Loads seen from the factor: what forces can balance comes first, what none can comes last.
   *
   * @param load right side, of {@link #loads} and the like
   * @return for {@link #responseTo} and {@link #leftOf}
   */
  public double[] turned(double[] load) {
    double[] turned = load.clone();
    turn(turned);
    return turned;
  }

  /** The same, in the place of the right side. */
  public void turn(double[] load) {
    if (!keeps) {
      factor.turn(load);
    }
  }

  /**
   * Forces that balance loads as far as they can be balanced, with all free forces zero.
   *
   * @param turned loads seen from the factor; changed
   * @return by unknowns
   */
  public double[] responseTo(double[] turned) {
    double[] forces = new double[columns];
    respond(turned, forces);
    return forces;
  }

  /** The same, the forces being written into {@code forces}. */
  public void respond(double[] turned, double[] forces) {
    KeptChoice choice = kept.orElse(null);
    if (keeps && choice != null) {
      choice.respond(turned, forces);
    } else {
      factor.solve(rank, turned, forces);
    }
  }

  /**
   * What is left of loads that no forces can balance.
   *
   * @param turned loads seen from the factor
   * @param which which condition, from 0 to below {@link #conditions}
   * @return zero if the condition is kept
   */
  public double leftOf(double[] turned, int which) {
    return turned[rank + which];
  }

  /**
   * Some of the given loads, to be added up wherever these forces are moved to.
   *
   * @param loadCase factors
   * @param which which loads, by name
   * @return the loads
   */
  public LoadGroup group(LoadCase loadCase, Predicate<String> which) {
    return new LoadGroup(assembly, placements, rows, centre, loadCase, which);
  }

  /**
   * Right side of some of the given loads.
   *
   * @param loadCase factors
   * @param which which loads, by name
   * @return by equations, scaled
   */
  public double[] loads(LoadCase loadCase, Predicate<String> which) {
    Wrenches sum = new Wrenches(assembly.bodyCount());
    add(loadCase, which, sum);
    return rightSide(sum);
  }

  /** Sum of the sizes of the given loads of a case in N. */
  public double scale(LoadCase loadCase) {
    Wrenches sum = new Wrenches(assembly.bodyCount());
    assembly.load(placements, loadCase, sum);
    return sum.scale;
  }

  /**
   * Right side of moving a load along a line by one metre: the couple that its force then adds.
   *
   * @param loadCase factors
   * @param load name of the load
   * @param along unit vector of the way, in the world
   * @return by equations, scaled
   */
  public double[] shift(LoadCase loadCase, String load, Vector along) {
    Wrenches sum = new Wrenches(assembly.bodyCount());
    add(loadCase, load::equals, sum);
    Wrenches couples = new Wrenches(assembly.bodyCount());
    for (int body = 0; body < sum.bodies(); body++) {
      double couple = along.x() * sum.fy(body) - along.y() * sum.fx(body);
      couples.add(body, 0, 0, 0, 0, couple / assembly.size());
    }
    return rightSide(couples);
  }

  private void add(LoadCase loadCase, Predicate<String> which, Wrenches sum) {
    for (LoadLaw law : assembly.loadLaws()) {
      if (which.test(law.owner)) {
        law.add(placements, loadCase.factor(law.owner), sum);
      }
    }
  }

  private double[] rightSide(Wrenches loads) {
    double[] b = new double[rows];
    loads.rightSide(assembly.memberCount(), centre, b);
    return b;
  }
}
