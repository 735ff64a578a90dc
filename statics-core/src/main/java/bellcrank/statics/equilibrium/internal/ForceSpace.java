package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * All forces that can balance loads on a device: f = f₀ + N·z, with z the forces that statics
 * leaves free. Friction couples of pins are among the forces. z are forces of the device
 * themselves: a {@link ForceChoice} says which.
 */
public final class ForceSpace {

  /** Diagonal entries of the factor below this share of the largest are zero. */
  static final double RANK_TOLERANCE = 1e-11;

  /** From so many equations on, the free forces are chosen body by body. */
  private static final int LARGE = 150;

  /** Largest multiple of a free force in another one with which such a choice is taken. */
  static final double MODERATE = 100;

  private final Assembly assembly;
  private final Placements placements;
  private final Actions actions;
  private final double[] centre;
  private final int rows;
  private final int columns;
  private final boolean soon;
  private int rank;
  private double[][] free = {};
  private ForceChoice choice;

  /** Made once it is needed. */
  private Optional<PivotedChoice> pivoted = Optional.empty();

  private ForceSpace(Assembly assembly, Pose pose, boolean soon) {
    this.assembly = assembly;
    this.soon = soon;
    placements = assembly.placements();
    actions = assembly.actions();
    // moments of loads are about the middle; a choice takes them about places that suit it
    centre = new double[2 * assembly.memberCount()];
    columns = assembly.columns();
    rows = assembly.rows() + PivotedChoice.shafts(assembly);
    place(pose);
    KeptChoice byBodies = rows >= LARGE ? byBodies().orElse(null) : null;
    choice = byBodies != null && take(byBodies) ? byBodies : chosen();
  }

  private void place(Pose pose) {
    assembly.place(placements, pose);
    assembly.evaluate(placements, actions);
  }

  /** Whether the equations are those of the bodies alone, without shafts of dry pins. */
  private boolean isPlain() {
    return rows == assembly.rows();
  }

  private Optional<KeptChoice> byBodies() {
    if (!isPlain()) {
      return Optional.empty();
    }
    Equations equations = new Equations(assembly, actions);
    double[] places = centre.clone();
    KeptChoice.firstPlaces(actions, places);
    equations.fillForces(actions, places);
    return FreeChoice.of(assembly, equations, assembly.scale().zero())
        .flatMap(free -> KeptChoice.of(assembly, free, MODERATE));
  }

  /** Whether a choice made before serves here. */
  private boolean take(KeptChoice kept) {
    expect(rows);
    return kept.take(actions, free);
  }

  /** Chooses anew. */
  private ForceChoice chosen() {
    SmallChoice small = soon && isPlain() ? SmallChoice.of(assembly, actions).orElse(null) : null;
    if (small != null) {
      expect(rows);
      small.write(free);
      return small;
    }
    PivotedChoice dense = pivoted.orElse(null);
    if (dense == null) {
      dense = new PivotedChoice(assembly, rows, actions);
      pivoted = Optional.of(dense);
    } else {
      dense.take(actions);
    }
    expect(dense.rank());
    dense.write(free);
    return dense;
  }

  /** Takes in the rank, and how many forces are free then. */
  private void expect(int newRank) {
    rank = newRank;
    int freedom = Math.max(0, columns - rank);
    if (free.length != freedom) {
      free = new double[freedom][columns];
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
    return new ForceSpace(Assembly.withDryPins(device), pose, false);
  }

  /**
   * The same forces, the free ones being those that are found soonest, rather than with most care.
   * That serves where only a number is asked for, which is the same whichever forces are free. A
   * state among several that are as good depends on it.
   *
   * @param device the device
   * @param pose where its bodies are
   * @return its forces
   */
  public static ForceSpace soonest(Device device, Pose pose) {
    return new ForceSpace(Assembly.withDryPins(device), pose, true);
  }

  /**
   * The same forces, the free ones being chosen with care.
   *
   * @param pose where the bodies are already
   * @return these, or others if other forces are free
   */
  public ForceSpace withCare(Pose pose) {
    return choice instanceof SmallChoice ? new ForceSpace(assembly, pose, false) : this;
  }

  /**
   * The forces in another pose, chosen in the same way.
   *
   * @param pose where the bodies are
   * @return its forces
   */
  public ForceSpace at(Pose pose) {
    return new ForceSpace(assembly, pose, soon);
  }

  /**
   * Goes to another pose itself, in the storage that it has. Only who has made it for this may do
   * so: what was read from it before no longer holds. The free forces stay the same as long as they
   * serve.
   *
   * @param pose where the bodies are
   */
  public void moveTo(Pose pose) {
    KeptChoice kept = choice instanceof KeptChoice same ? same : keep().orElse(null);
    place(pose);
    choice = kept != null && take(kept) ? kept : chosen();
  }

  /** Keeps the choice of free forces, if they are all that the equations leave. */
  private Optional<KeptChoice> keep() {
    if (!isPlain() || rank < rows) {
      return Optional.empty();
    }
    int[] freeColumns = new int[free.length];
    double largest = 0;
    for (int which = 0; which < free.length; which++) {
      freeColumns[which] = freeColumn(which);
      for (double multiple : free[which]) {
        largest = Math.max(largest, Math.abs(multiple));
      }
    }
    return KeptChoice.of(assembly, freeColumns, largest);
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
   * Which of the unknowns is free.
   *
   * @param which which of the free forces
   * @return its place among the unknowns
   */
  public int freeColumn(int which) {
    return choice.freeColumn(which);
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
   * Loads seen from the choice: what forces can balance comes first, what none can comes last.
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
    choice.turn(load);
  }

  /**
   * Forces that balance loads as far as they can be balanced, with all free forces zero.
   *
   * @param turned loads seen from the choice; changed
   * @return by unknowns
   */
  public double[] responseTo(double[] turned) {
    double[] forces = new double[columns];
    respond(turned, forces);
    return forces;
  }

  /** The same, the forces being written into {@code forces}. */
  public void respond(double[] turned, double[] forces) {
    choice.respond(turned, forces);
  }

  /**
   * What is left of loads that no forces can balance.
   *
   * @param turned loads seen from the choice
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
