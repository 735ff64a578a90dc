package bellcrank.statics.equilibrium.internal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;

/**
 * Chooses free forces of a large device body by body. A body whose equations can be solved for
 * forces that act on no other body left is put aside with them, and so is one on which no more
 * forces are left than it has equations; what is left over of the former is free. Only the core
 * that remains goes to a dense factor, whose work grows with the cube of its size.
 */
final class FreeChoice {

  /** Diagonal entries of a body's factor below this share of the first do not count as firm. */
  private static final double FIRM = 0.03;

  /** Where a core has more than this share of all equations, it is no less work than the whole. */
  private static final double LARGEST_CORE = 0.7;

  private final Assembly assembly;
  private final Equations equations;
  private final double zero;
  private final int[][] columnsOfBody;
  private final int[][] bodiesOfColumn;

  /** Number of bodies left on which a force acts; −1 once it is disposed of. */
  private final int[] openBodies;

  private final boolean[] closed;
  private final Deque<Integer> queue = new ArrayDeque<>();
  private final List<Integer> free = new ArrayList<>();

  private FreeChoice(Assembly assembly, Equations equations, double zero) {
    this.assembly = assembly;
    this.equations = equations;
    this.zero = zero;
    bodiesOfColumn = new int[equations.columns][];
    openBodies = new int[equations.columns];
    closed = new boolean[assembly.bodyCount()];
    int[] counts = new int[assembly.bodyCount()];
    for (int column = 0; column < equations.columns; column++) {
      bodiesOfColumn[column] = bodies(column);
      openBodies[column] = bodiesOfColumn[column].length;
      for (int body : bodiesOfColumn[column]) {
        counts[body]++;
      }
    }
    columnsOfBody = new int[counts.length][];
    for (int body = 0; body < counts.length; body++) {
      columnsOfBody[body] = new int[counts[body]];
      queue.add(body);
    }
    for (int column = equations.columns - 1; column >= 0; column--) {
      for (int body : bodiesOfColumn[column]) {
        columnsOfBody[body][--counts[body]] = column;
      }
    }
  }

  /**
   * Chooses.
   *
   * @param equations with numbers, moments being about a place on each member
   * @param zero bound at or below which a coefficient is zero
   * @return the columns of the free forces; empty if the equations depend on one another, or little
   *     is gained
   */
  static Optional<int[]> of(Assembly assembly, Equations equations, double zero) {
    FreeChoice choice = new FreeChoice(assembly, equations, zero);
    return choice.putAside() && choice.core()
        ? Optional.of(choice.free.stream().mapToInt(column -> column).toArray())
        : Optional.empty();
  }

  /** The bodies on which a force acts. */
  private int[] bodies(int column) {
    int[] found = new int[equations.start[column + 1] - equations.start[column]];
    int used = 0;
    for (int k = equations.start[column]; k < equations.start[column + 1]; k++) {
      int body = bodyOf(equations.row[k]);
      if (Math.abs(equations.value[k]) > zero && (used == 0 || found[used - 1] != body)) {
        found[used++] = body;
      }
    }
    return Arrays.stream(found, 0, used).distinct().toArray();
  }

  private int bodyOf(int row) {
    int members = assembly.memberCount();
    return row < 3 * members ? row / 3 : members + (row - 3 * members) / 2;
  }

  /** False if a body has fewer forces than equations, or nobody can tell. */
  private boolean putAside() {
    while (!queue.isEmpty()) {
      int body = queue.remove();
      if (closed[body]) {
        continue;
      }
      int count = assembly.firstRow(body + 1) - assembly.firstRow(body);
      List<Integer> open = columns(body, Integer.MAX_VALUE);
      List<Integer> own = columns(body, 1);
      if (open.size() < count) {
        return false;
      }
      List<Integer> solved = own.size() < count && open.size() == count ? open : own;
      if (solved.size() >= count) {
        close(body, count, solved);
      }
    }
    return true;
  }

  /** Forces on a body that act on no more than so many bodies. */
  private List<Integer> columns(int body, int most) {
    List<Integer> found = new ArrayList<>();
    for (int column : columnsOfBody[body]) {
      if (openBodies[column] > 0 && openBodies[column] <= most) {
        found.add(column);
      }
    }
    return found;
  }

  private void close(int body, int count, List<Integer> solved) {
    PivotedFactor factor = new PivotedFactor(matrix(assembly.firstRow(body), count, solved));
    if (factor.rank(FIRM) < count) {
      return;
    }
    closed[body] = true;
    for (int place = count; place < solved.size(); place++) {
      free.add(solved.get(factor.pivot(place)));
    }
    for (int column : columnsOfBody[body]) {
      openBodies[column]--;
    }
    for (int column : solved) {
      openBodies[column] = -1;
    }
    for (int column : columnsOfBody[body]) {
      for (int other : bodiesOfColumn[column]) {
        if (!closed[other]) {
          queue.add(other);
        }
      }
    }
  }

  /** Coefficients of some forces in a body's equations, each divided by the largest. */
  private DMatrixRMaj matrix(int firstRow, int count, List<Integer> columns) {
    DMatrixRMaj matrix = new DMatrixRMaj(count, columns.size());
    for (int j = 0; j < columns.size(); j++) {
      int column = columns.get(j);
      for (int k = equations.start[column]; k < equations.start[column + 1]; k++) {
        int i = equations.row[k] - firstRow;
        if (i >= 0 && i < count) {
          matrix.set(i, j, equations.value[k]);
        }
      }
    }
    for (int i = 0; i < count; i++) {
      double largest = 0;
      for (int j = 0; j < columns.size(); j++) {
        largest = Math.max(largest, Math.abs(matrix.get(i, j)));
      }
      for (int j = 0; j < columns.size() && largest > 0; j++) {
        matrix.set(i, j, matrix.get(i, j) / largest);
      }
    }
    return matrix;
  }

  /** Lets a dense factor choose among the forces that are left. */
  private boolean core() {
    int[] placeOfRow = new int[equations.rows];
    Arrays.fill(placeOfRow, -1);
    int rows = 0;
    for (int row = 0; row < equations.rows; row++) {
      if (!closed[bodyOf(row)]) {
        placeOfRow[row] = rows++;
      }
    }
    List<Integer> left = new ArrayList<>();
    for (int column = 0; column < equations.columns; column++) {
      if (openBodies[column] >= 0) {
        left.add(column);
      }
    }
    if (rows > LARGEST_CORE * equations.rows || left.size() < rows) {
      return false;
    }
    DMatrixRMaj matrix = new DMatrixRMaj(rows, left.size());
    for (int j = 0; j < left.size(); j++) {
      int column = left.get(j);
      for (int k = equations.start[column]; k < equations.start[column + 1]; k++) {
        if (placeOfRow[equations.row[k]] >= 0) {
          matrix.set(placeOfRow[equations.row[k]], j, equations.value[k]);
        }
      }
    }
    if (rows == 0) {
      free.addAll(left);
      return true;
    }
    PivotedFactor factor = new PivotedFactor(matrix);
    for (int place = rows; place < left.size(); place++) {
      free.add(left.get(factor.pivot(place)));
    }
    return factor.rank(Math.max(ForceSpace.RANK_TOLERANCE, 4 * zero)) == rows;
  }
}
