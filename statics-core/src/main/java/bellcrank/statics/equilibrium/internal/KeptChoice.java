package bellcrank.statics.equilibrium.internal;

import java.util.Arrays;
import java.util.Optional;

/**
 * The same choice of free forces in one pose after the other. The forces that are not free then
 * have an order of solution that is good for all poses, and follow block after block; a factor that
 * chooses anew in each pose is several times as much work. If A = B·(I N) with N of moderate size,
 * B is about as far from singular as A is. So a choice serves while N stays moderate.
 */
final class KeptChoice implements ForceChoice {

  /** How many times as large as where it was made the multiples of a choice may become. */
  private static final double GROWTH = 10;

  private final double most;
  private final int[] freeColumns;
  private final Equations equations;
  private final double[] centre;
  private final OrderedRows rows;
  private final BlockSolver solver;
  private final double[] right;

  /** Where each of the ordered coefficients stands in the equations. */
  private final int[] entry;

  private KeptChoice(
      Assembly assembly, int[] freeColumns, double largest, Equations equations, Basis basis) {
    most = GROWTH * Math.max(1, largest);
    this.freeColumns = freeColumns;
    this.equations = equations;
    centre = new double[2 * assembly.memberCount()];
    rows = new OrderedRows(basis.order);
    solver = BlockSolver.byInverses(rows, assembly.scale().zero());
    right = new double[assembly.rows()];
    entry = new int[rows.entry.length];
    for (int k = 0; k < entry.length; k++) {
      entry[k] = basis.entryOf[rows.entry[k]];
    }
  }

  /** The order of the forces that are not free, and where their coefficients are. */
  private static final class Basis {

    private final Order order;
    private final int[] entryOf;

    Basis(Order order, int[] entryOf) {
      this.order = order;
      this.entryOf = entryOf;
    }
  }

  /**
   * A choice to be kept.
   *
   * @param freeColumns the free forces, as many as there are more forces than equations
   * @param largest largest multiple of a free force in another one, where the choice was made
   * @return empty if the other forces do not fit the equations one by one
   */
  static Optional<KeptChoice> of(Assembly assembly, int[] freeColumns, double largest) {
    Placements anywhere = assembly.placements();
    Actions actions = assembly.actions();
    anywhere.scatter();
    assembly.evaluate(anywhere, actions);
    Equations equations = new Equations(assembly, actions);
    double[] centre = new double[2 * assembly.memberCount()];
    firstPlaces(actions, centre);
    equations.fillForces(actions, centre);
    Basis basis = basis(equations, freeColumns, assembly.scale().zero());
    return basis.order.column.length == equations.rows
        ? Optional.of(new KeptChoice(assembly, freeColumns, largest, equations, basis))
        : Optional.empty();
  }

  private static Basis basis(Equations all, int[] freeColumns, double zero) {
    boolean[] isFree = new boolean[all.columns];
    for (int column : freeColumns) {
      isFree[column] = true;
    }
    int[] start = new int[all.columns + 1];
    int[] row = new int[all.value.length];
    double[] value = new double[all.value.length];
    int[] entryOf = new int[all.value.length];
    int used = 0;
    for (int column = 0; column < all.columns; column++) {
      for (int k = all.start[column]; k < all.start[column + 1] && !isFree[column]; k++) {
        row[used] = all.row[k];
        value[used] = all.value[k];
        entryOf[used++] = k;
      }
      start[column + 1] = used;
    }
    Equations basic =
        new Equations(all.rows, start, Arrays.copyOf(row, used), Arrays.copyOf(value, used));
    return new Basis(Order.of(new Pattern(basic, zero, all.columns)), entryOf);
  }

  /**
   * Takes the forces of another pose.
   *
   * @param actions the forces there
   * @param free receives what one unit of each free force adds, by unknowns
   * @return false if the choice no longer serves
   */
  boolean take(Actions actions, double[][] free) {
    firstPlaces(actions, centre);
    equations.fillForces(actions, centre);
    for (int k = 0; k < entry.length; k++) {
      rows.value[k] = equations.value[entry[k]];
    }
    if (!solver.factor()) {
      return false;
    }
    boolean moderate = true;
    for (int z = 0; z < freeColumns.length; z++) {
      Arrays.fill(right, 0);
      int column = freeColumns[z];
      for (int k = equations.start[column]; k < equations.start[column + 1]; k++) {
        right[equations.row[k]] = -equations.value[k];
      }
      solve(right, free[z]);
      for (double multiple : free[z]) {
        moderate &= Math.abs(multiple) <= most;
      }
      free[z][column] = 1;
    }
    return moderate;
  }

  @Override
  public int freeColumn(int which) {
    return freeColumns[which];
  }

  @Override
  public void turn(double[] load) {
    shift(load, centre);
  }

  /** One thread at a time: blocks gather their right sides in storage of their own. */
  @Override
  public synchronized void respond(double[] turned, double[] forces) {
    solve(turned, forces);
  }

  private void solve(double[] load, double[] forces) {
    solver.solve(load, forces);
    for (int column : freeColumns) {
      forces[column] = 0;
    }
  }

  /** Takes the moments of loads about places on the members in place of the device's middle. */
  static void shift(double[] load, double[] centre) {
    for (int k = 0; k < centre.length; k += 2) {
      int row = k / 2 * 3;
      load[row + 2] += centre[k + 1] * load[row] - centre[k] * load[row + 1];
    }
  }

  /** Takes the place of the first force on each member: about it, moments are of the member. */
  static void firstPlaces(Actions actions, double[] centre) {
    for (int action = actions.count() - 1; action >= 0; action--) {
      int body = actions.body[action];
      if (body >= 0 && body < centre.length / 2) {
        centre[2 * body] = actions.x(action);
        centre[2 * body + 1] = actions.y(action);
      }
    }
  }
}
