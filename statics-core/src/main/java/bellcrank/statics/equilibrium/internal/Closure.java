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

  /** The held rows with the row of a drive, in order; found when a drive first asks. */
  private Optional<DrivenRows> driven = Optional.empty();

  private final boolean asMany;
  private boolean keepsOrder;
  private final double[] right;

  /** Whether gaps and actions are those of the present place. */
  private boolean gapsKnown;

  private boolean actionsKnown;

  /** Length of the fastest motion that the last rows allow, and the least that they forbid. */
  private double least;

  private Senses senses = Senses.NONE;

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
    asMany = SquareRows.fits(assembly, held);
    square =
        rows <= LARGE && asMany ? Optional.of(SquareRows.of(assembly, held)) : Optional.empty();
    right = new double[rows];
    keepsOrder = isLarge();
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
    gapsKnown = false;
    actionsKnown = false;
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

  private void gaps() {
    if (!gapsKnown) {
      assembly.gaps(placements, gaps);
      gapsKnown = true;
    }
  }

  private void actions() {
    if (!actionsKnown) {
      assembly.evaluate(placements, actions);
      actionsKnown = true;
    }
  }

  /** Largest gap of the held restraints, scaled by the device's size. */
  public double error() {
    gaps();
    double worst = 0;
    for (int column = 0; column < columns; column++) {
      worst = held[column] ? Math.max(worst, Math.abs(gaps[column])) : worst;
    }
    return worst;
  }

  /** Gap of one unknown, scaled; of a rope or strut its shortening. */
  public double gap(int column) {
    gaps();
    return gaps[column];
  }

  /**
   * Row of the motion that a unit of an unknown forbids.
   *
   * @return by velocities
   */
  public double[] row(int column) {
    double[] row = new double[rows];
    addRow(column, 1, row);
    return row;
  }

  /** Adds a multiple of the row of the motion that a unit of an unknown forbids. */
  public void addRow(int column, double times, double[] row) {
    actions();
    for (int action = 0; action < actions.count(); action++) {
      int body = actions.body[action];
      if (actions.column[action] == column && body >= 0) {
        int first = assembly.firstRow(body);
        row[first] += times * actions.motionX(action);
        row[first + 1] += times * actions.motionY(action);
        if (body < assembly.memberCount()) {
          row[first + 2] += times * actions.motionMoment(action, 0, 0);
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
      actions();
      gaps();
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
      double[] velocities = new double[rows];
      if (inOrder(row) && closing(miss, velocities)) {
        return velocities;
      }
    }
    if (square.isPresent() && row.length > 0) {
      actions();
      gaps();
      double[] quick = square.get().solve(actions, gaps, row, miss);
      if (quick.length > 0) {
        return quick;
      }
    }
    return row.length == 0
        ? new Rows(List.of(), new double[0]).solve()
        : new Rows(List.of(row), new double[] {miss}).solve();
  }

  /**
   * The same for a row with few velocities, as that of a drive. Nothing is allocated where the rows
   * are as many as the velocities and none depends on the others.
   *
   * @param row the further row
   * @param miss what the motion shall do along that row
   * @param velocities written
   */
  public void correct(double[] row, double miss, double[] velocities) {
    if (!inOrder(row) || !closing(miss, velocities)) {
      System.arraycopy(correction(row, miss), 0, velocities, 0, rows);
    }
  }

  /**
   * From now on looks for the order in which a drive's row is solved with the held ones, and keeps
   * it. A large device always does so; for a small one it is worth while for many places only.
   */
  public void keepOrder() {
    keepsOrder = true;
  }

  /** Whether singular values would take long, so that steps are solved in order instead. */
  public boolean isLarge() {
    return rows > LARGE;
  }

  /** Factors the held rows and a further one in order; false if they cannot be solved so. */
  private boolean inOrder(double[] more) {
    if (!asMany || !keepsOrder) {
      return false;
    }
    DrivenRows found = driven.orElse(null);
    if (found == null || !found.covers(more)) {
      found = new DrivenRows(assembly, held, more, isLarge() ? 0 : SquareRows.NEARLY_FREE);
      driven = Optional.of(found);
    }
    actions();
    return found.factor(actions, more);
  }

  /** Solves for the motion that closes all gaps and a miss, with the rows last factored. */
  private boolean closing(double miss, double[] velocities) {
    gaps();
    int k = 0;
    for (int column = 0; column < columns; column++) {
      if (held[column]) {
        right[k++] = -gaps[column];
      }
    }
    right[k] = miss;
    return driven.orElseThrow().solve(right, velocities);
  }

  /**
   * The motion at a rate of one of a further row, found without singular values.
   *
   * @param row the row
   * @return velocities; empty if there is none, or not just one
   */
  public double[] along(double[] row) {
    double[] velocities = new double[rows];
    senses = Senses.NONE;
    if (square.isPresent() && !keepsOrder) {
      actions();
      return square.get().solve(actions, new double[gaps.length], row, 1);
    }
    if (!inOrder(row)) {
      return new double[0];
    }
    if (isLarge()) {
      senses = driven.orElseThrow().senses();
    }
    Arrays.fill(right, 0);
    right[rows - 1] = 1;
    return driven.orElseThrow().solve(right, velocities) ? velocities : new double[0];
  }

  /**
   * On which side of dependent the rows lie with which {@link #along} last found a motion of a
   * large device. They are dependent where a second motion opens or the drive stands still.
   *
   * @return signs of blocks; none if that found no motion
   */
  public Senses senses() {
    return senses;
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

  /** Where a drawn place of a body is now, to the right of the middle, in sizes as it is drawn. */
  public double x(int body, double qx, double qy) {
    return placements.x(body, qx, qy);
  }

  /** Where a drawn place of a body is now, above the middle, in sizes as it is drawn. */
  public double y(int body, double qx, double qy) {
    return placements.y(body, qx, qy);
  }

  /** One number of the configuration: turn, shift to the right and up of each body in turn. */
  public double number(int index) {
    return place[index];
  }

  Placements placements() {
    return placements;
  }

  /** Turn of a body since the drawn pose in rad, whole turns counted. */
  public double turn(int body) {
    return body < 0 ? 0 : place[3 * body];
  }
}
