package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * How far the connections of a device are from fitting one another, and how that changes as the
 * bodies move: the position-level side of the motion rows. Velocities are three numbers for a
 * member (of its point at the device's middle, and its turning) and two for a joint, all scaled.
 * Not for several threads at once.
 */
public final class Closure {

  /** Singular values below this share of the largest are zero. */
  private static final double RANK_TOLERANCE = 1e-9;

  /** More velocities than this are not looked at by singular values while another way serves. */
  private static final int LARGE = 150;

  private final Assembly assembly;
  private final Placements placements;
  private final Actions actions;
  private final int columns;
  private final int rows;
  private final double[] gaps;

  // turn, shift to the right and up of each body
  private final double[] place;

  /** Restraints that are driven or let go instead of held. */
  private final boolean[] held;

  /** A quicker way to correct, where rows and velocities are few and as many. */
  private final Optional<SquareRows> square;

  /** Length of the fastest motion that the last rows allow, and the least that they forbid. */
  private double least;

  private Closure(Assembly assembly, List<Integer> released) {
    this.assembly = assembly;
    placements = assembly.placements();
    actions = assembly.actions();
    columns = assembly.firstSoughtColumn();
    rows = assembly.rows();
    gaps = new double[assembly.columns()];
    place = new double[3 * assembly.bodyCount()];
    held = new boolean[columns];
    Arrays.fill(held, true);
    for (int column : released) {
      held[column] = false;
    }
    square =
        rows <= LARGE && SquareRows.fits(assembly, held)
            ? Optional.of(SquareRows.of(assembly, held))
            : Optional.empty();
    put();
  }

  /**
   * The closure of a device as drawn.
   *
   * @param device the device
   * @param released unknowns whose motion is let go
   * @return its closure
   */
  public static Closure of(Device device, List<Integer> released) {
    return of(Assembly.of(device), released);
  }

  /**
   * The closure of an assembled device as drawn.
   *
   * @param assembly the assembly, which several closures may share
   * @param released unknowns whose motion is let go
   * @return its closure
   */
  public static Closure of(Assembly assembly, List<Integer> released) {
    return new Closure(assembly, released);
  }

  /** The assembly. */
  public Assembly assembly() {
    return assembly;
  }

  /** Number of velocities. */
  public int speeds() {
    return rows;
  }

  /** Where the bodies are, to come back to. */
  public double[] configuration() {
    return place.clone();
  }

  /** Goes back to a configuration. */
  public void restore(double[] configuration) {
    System.arraycopy(configuration, 0, place, 0, place.length);
    put();
  }

  private void put() {
    for (int body = 0; body < assembly.bodyCount(); body++) {
      placements.put(body, place[3 * body], place[3 * body + 1], place[3 * body + 2]);
    }
  }

  /**
   * Moves each body by velocities times a time: it turns about the device's middle, then shifts.
   */
  public void move(double[] velocity, double time) {
    for (int body = 0; body < assembly.bodyCount(); body++) {
      int row = assembly.firstRow(body);
      double turn = body < assembly.memberCount() ? velocity[row + 2] * time : 0;
      double c = Math.cos(turn);
      double s = Math.sin(turn);
      double x = place[3 * body + 1];
      double y = place[3 * body + 2];
      place[3 * body] += turn;
      place[3 * body + 1] = c * x - s * y + velocity[row] * time;
      place[3 * body + 2] = s * x + c * y + velocity[row + 1] * time;
    }
    put();
  }

  /** Largest gap of the held restraints, scaled by the device's size. */
  public double error() {
    assembly.gaps(placements, gaps);
    double worst = 0;
    for (int column = 0; column < columns; column++) {
      worst = held[column] ? Math.max(worst, Math.abs(gaps[column])) : worst;
    }
    return worst;
  }

  /** Gap of one unknown, scaled; of a rope or strut its shortening. */
  public double gap(int column) {
    assembly.gaps(placements, gaps);
    return gaps[column];
  }

  /**
   * Row of the motion that a unit of an unknown forbids.
   *
   * @return by velocities
   */
  public double[] row(int column) {
    assembly.evaluate(placements, actions);
    double[] row = new double[rows];
    addRow(column, row);
    return row;
  }

  private void addRow(int column, double[] row) {
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      if (actions.column[action] == column && body >= 0) {
        int first = assembly.firstRow(body);
        row[first] += actions.motionX(action);
        row[first + 1] += actions.motionY(action);
        if (body < assembly.memberCount()) {
          row[first + 2] += actions.motionMoment(action, 0, 0);
        }
      }
    }
  }

  /** Singular values and vectors of the held rows and of further ones at the present place. */
  private final class Rows {
    final DMatrixRMaj u;
    final DMatrixRMaj v;
    final double[] singular;
    final Integer[] order;
    final int rank;
    final double[] right;

    Rows(List<double[]> more, double[] misses) {
      assembly.evaluate(placements, actions);
      assembly.gaps(placements, gaps);
      int count = more.size();
      for (boolean one : held) {
        count += one ? 1 : 0;
      }
      DMatrixRMaj j = new DMatrixRMaj(Math.max(1, count), Math.max(1, rows));
      right = new double[count];
      int[] rowOfColumn = new int[actions.column.length == 0 ? 1 : assembly.columns()];
      Arrays.fill(rowOfColumn, -1);
      int k = 0;
      for (int column = 0; column < columns; column++) {
        if (held[column]) {
          right[k] = -gaps[column];
          rowOfColumn[column] = k++;
        }
      }
      for (int action = 0; action < actions.count(); action++) {
        int row = rowOfColumn[actions.column[action]];
        int body = actions.body[action];
        if (row >= 0 && body >= 0) {
          int first = assembly.firstRow(body);
          j.add(row, first, actions.motionX(action));
          j.add(row, first + 1, actions.motionY(action));
          if (body < assembly.memberCount()) {
            j.add(row, first + 2, actions.motionMoment(action, 0, 0));
          }
        }
      }
      for (int m = 0; m < more.size(); m++) {
        for (int i = 0; i < rows; i++) {
          j.set(k, i, more.get(m)[i]);
        }
        right[k++] = misses[m];
      }
      SingularValueDecomposition_F64<DMatrixRMaj> svd =
          DecompositionFactory_DDRM.svd(j.numRows, j.numCols, true, true, false);
      if (!svd.decompose(j)) {
        throw new IllegalStateException("singular values did not converge");
      }
      u = svd.getU(new DMatrixRMaj(1, 1), false);
      v = svd.getV(new DMatrixRMaj(1, 1), false);
      DMatrixRMaj w = svd.getW(new DMatrixRMaj(1, 1));
      int values = Math.min(j.numRows, j.numCols);
      singular = new double[values];
      order = new Integer[values];
      for (int i = 0; i < values; i++) {
        singular[i] = Math.abs(w.get(i, i));
        order[i] = i;
      }
      Arrays.sort(order, (a, b) -> Double.compare(singular[b], singular[a]));
      double largest = values == 0 ? 0 : singular[order[0]];
      int r = 0;
      while (r < values && singular[order[r]] > RANK_TOLERANCE * largest) {
        r++;
      }
      rank = count == 0 ? 0 : r;
      least = rank == 0 ? 0 : singular[order[rank - 1]] / largest;
    }

    double[] solve() {
      double[] x = new double[rows];
      for (int k = 0; k < rank; k++) {
        int s = order[k];
        double sum = 0;
        for (int i = 0; i < right.length; i++) {
          sum += u.get(i, s) * right[i];
        }
        sum /= singular[s];
        for (int i = 0; i < rows; i++) {
          x[i] += v.get(i, s) * sum;
        }
      }
      return x;
    }

    List<double[]> free() {
      boolean[] used = new boolean[Math.max(1, rows)];
      for (int k = 0; k < rank; k++) {
        used[order[k]] = true;
      }
      List<double[]> free = new java.util.ArrayList<>();
      for (int k = 0; k < rows; k++) {
        if (!used[k]) {
          double[] vector = new double[rows];
          for (int i = 0; i < rows; i++) {
            vector[i] = v.get(i, k);
          }
          free.add(vector);
        }
      }
      return free;
    }
  }

  /** Orthonormal motions that the held restraints leave free here. */
  public List<double[]> free() {
    return new Rows(List.of(), new double[0]).free();
  }

  /** Least share, of the largest, of the singular values that count, at the last solution. */
  public double least() {
    return least;
  }

  /**
   * One step of Newton's method: the smallest motion that closes all gaps to first order, and a
   * further row's miss.
   *
   * @param row a further row, by velocities; empty for none
   * @param miss what the motion shall do along that row
   * @return velocities for a time of one
   */
  public double[] correction(double[] row, double miss) {
    if (isLarge() && row.length > 0) {
      double[] inOrder = ordered(row, miss);
      if (inOrder.length > 0) {
        return inOrder;
      }
    }
    if (square.isPresent() && row.length > 0) {
      assembly.evaluate(placements, actions);
      assembly.gaps(placements, gaps);
      double[] quick = square.get().solve(actions, gaps, row, miss);
      if (quick.length > 0) {
        return quick;
      }
    }
    return row.length == 0
        ? new Rows(List.of(), new double[0]).solve()
        : new Rows(List.of(row), new double[] {miss}).solve();
  }

  /** Whether singular values would take long, so that steps are solved in order instead. */
  public boolean isLarge() {
    return rows > LARGE;
  }

  /**
   * Solves the held rows and a further one in the order that their pattern allows, block after
   * block, if they are as many as the velocities and no block is singular.
   *
   * @param more the further row
   * @param right what the motion shall do along each held row, then along the further one
   * @return velocities; empty if they cannot be solved so
   */
  private double[] inOrder(double[] more, double[] right) {
    int[] start = new int[rows + 1];
    int count = 0;
    int[] rowOfColumn = new int[assembly.columns()];
    Arrays.fill(rowOfColumn, -1);
    for (int column = 0; column < columns; column++) {
      if (held[column]) {
        rowOfColumn[column] = count++;
      }
    }
    if (count + 1 != rows) {
      return new double[0];
    }
    assembly.evaluate(placements, actions);
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      if (body >= 0 && rowOfColumn[actions.column[action]] >= 0) {
        int first = assembly.firstRow(body);
        int last = body < assembly.memberCount() ? 3 : 2;
        for (int k = 0; k < last; k++) {
          start[first + k + 1]++;
        }
      }
    }
    for (int i = 0; i < rows; i++) {
      start[i + 1] += start[i] + (more[i] != 0 ? 1 : 0);
    }
    int[] row = new int[start[rows]];
    double[] value = new double[start[rows]];
    int[] next = start.clone();
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      int of = rowOfColumn[actions.column[action]];
      if (body >= 0 && of >= 0) {
        int first = assembly.firstRow(body);
        put(row, value, next, start, first, of, actions.motionX(action));
        put(row, value, next, start, first + 1, of, actions.motionY(action));
        if (body < assembly.memberCount()) {
          put(row, value, next, start, first + 2, of, actions.motionMoment(action, 0, 0));
        }
      }
    }
    for (int i = 0; i < rows; i++) {
      if (more[i] != 0) {
        put(row, value, next, start, i, count, more[i]);
      }
      // two actions of one connection on one body share an entry and leave one unused
      for (int k = next[i]; k < start[i + 1]; k++) {
        row[k] = count;
      }
    }
    Equations equations = new Equations(rows, start, row, value);
    double zero = assembly.scale().zero();
    Order order = Order.of(new Pattern(equations, zero, rows));
    if (!order.isSquare()) {
      return new double[0];
    }
    OrderedRows ordered = new OrderedRows(order);
    ordered.take(equations);
    BlockSolver solver = new BlockSolver(ordered, zero);
    if (!solver.factor()) {
      return new double[0];
    }
    double[] x = new double[rows];
    solver.solve(right, x);
    for (double one : x) {
      if (!(Math.abs(one) < Double.MAX_VALUE)) {
        return new double[0];
      }
    }
    return x;
  }

  private static void put(
      int[] row, double[] value, int[] next, int[] start, int column, int of, double entry) {
    for (int k = start[column]; k < next[column]; k++) {
      if (row[k] == of) {
        value[k] += entry;
        return;
      }
    }
    row[next[column]] = of;
    value[next[column]++] = entry;
  }

  /**
   * The motion at a rate of one of a further row, found in order.
   *
   * @param row the row
   * @return velocities; empty if there is none, or not just one
   */
  public double[] along(double[] row) {
    double[] right = new double[rows];
    right[rows - 1] = 1;
    return inOrder(row, right);
  }

  /** A step of Newton's method in order; empty if it cannot be solved so. */
  private double[] ordered(double[] row, double miss) {
    assembly.gaps(placements, gaps);
    double[] right = new double[rows];
    int k = 0;
    for (int column = 0; column < columns && k < rows - 1; column++) {
      if (held[column]) {
        right[k++] = -gaps[column];
      }
    }
    right[rows - 1] = miss;
    return inOrder(row, right);
  }

  /** The present pose. */
  public Pose pose() {
    Map<String, Frame> frames = new HashMap<>();
    int named = assembly.memberCount() + assembly.device().joints().size();
    Point middle = assembly.device().middle();
    double size = assembly.size();
    for (int body = 0; body < named; body++) {
      double turn = place[3 * body];
      Frame about = Frame.turnAbout(middle, turn);
      Vector shift = Vector.of(size * place[3 * body + 1], size * place[3 * body + 2]);
      frames.put(assembly.bodyName(body), about.then(Frame.of(shift, 0)));
    }
    return Pose.of(frames);
  }

  /** Where a point of a body is now, in the world. */
  public Point at(int body, Point drawn) {
    double qx = assembly.scale().x(drawn);
    double qy = assembly.scale().y(drawn);
    return assembly.world(placements.x(body, qx, qy), placements.y(body, qx, qy));
  }

  /** Turn of a body since the drawn pose in rad, whole turns counted. */
  public double turn(int body) {
    return body < 0 ? 0 : place[3 * body];
  }
}
