package bellcrank.statics.equilibrium.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;

/** The motions that some restraints leave free, as an orthonormal basis. */
final class FreeMotions {

  /** From so many velocities on, singular values take too long. */
  private static final int LARGE = 150;

  private FreeMotions() {}

  /**
   * The motions to which all restraints are square.
   *
   * @param actions with the places of all forces
   * @param forbidden the motion that each restraint forbids, by equations
   */
  static List<double[]> basis(Assembly assembly, Actions actions, List<double[]> forbidden) {
    int m = assembly.rows();
    double zero = assembly.scale().zero();
    if (m >= LARGE && areHeld(assembly, actions, forbidden)) {
      return List.of();
    }
    DMatrixRMaj a = new DMatrixRMaj(Math.max(m, 1), Math.max(forbidden.size(), 1));
    for (int k = 0; k < forbidden.size(); k++) {
      for (int i = 0; i < m; i++) {
        a.set(i, k, forbidden.get(k)[i]);
      }
    }
    if (m < LARGE) {
      int[] rows = IntStream.range(0, m).toArray();
      int[] columns = IntStream.range(0, forbidden.size()).toArray();
      return new RankPart(a, rows, columns, zero).leftNull();
    }
    PivotedFactor factor = new PivotedFactor(a);
    int rank = factor.rank(Math.max(RankPart.RANK_TOLERANCE, 4 * zero));
    List<double[]> basis = new ArrayList<>();
    for (int k = rank; k < m; k++) {
      basis.add(factor.q(k));
    }
    return basis;
  }

  /** Whether each body is held firmly once those are that it leans on. */
  private static boolean areHeld(Assembly assembly, Actions actions, List<double[]> forbidden) {
    double[] centre = new double[2 * assembly.memberCount()];
    KeptChoice.firstPlaces(actions, centre);
    int m = assembly.rows();
    int[] start = new int[forbidden.size() + 1];
    int[] row = new int[16];
    double[] value = new double[16];
    int used = 0;
    for (int k = 0; k < forbidden.size(); k++) {
      double[] about = forbidden.get(k).clone();
      for (int body = 0; body < assembly.memberCount(); body++) {
        about[3 * body + 2] +=
            centre[2 * body + 1] * about[3 * body] - centre[2 * body] * about[3 * body + 1];
      }
      for (int i = 0; i < m; i++) {
        if (about[i] != 0) {
          if (used == row.length) {
            row = Arrays.copyOf(row, 2 * used);
            value = Arrays.copyOf(value, 2 * used);
          }
          row[used] = i;
          value[used++] = about[i];
        }
      }
      start[k + 1] = used;
    }
    Equations equations =
        new Equations(m, start, Arrays.copyOf(row, used), Arrays.copyOf(value, used));
    return FreeChoice.of(assembly, equations, assembly.scale().zero()).isPresent();
  }
}
