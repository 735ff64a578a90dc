package bellcrank.statics.study.internal;

import bellcrank.statics.study.internal.Ledger.Seen;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Puts the end of a search onto the goals that have no room there, by Newton's method with the
 * smallest steps; numbers at a bound stay there. So what a goal asks for is met to rounding, not
 * only within what counts as kept.
 */
final class Settling {

  private static final int ROUNDS = 4;

  private final Ledger ledger;

  Settling(Ledger ledger) {
    this.ledger = ledger;
  }

  void from(Seen end) {
    List<Integer> goals = new ArrayList<>();
    for (int goal = 0; goal < ledger.goals(); goal++) {
      if (ledger.isUsedUp(end.sight, goal)) {
        goals.add(goal);
      }
    }
    List<Integer> free = new ArrayList<>();
    for (int i = 0; i < end.place.length; i++) {
      if (end.place[i] > 0 && end.place[i] < 1) {
        free.add(i);
      }
    }
    Seen now = end;
    for (int round = 0; round < ROUNDS && !goals.isEmpty() && !free.isEmpty(); round++) {
      now = step(now, goals, free);
      if (!now.sight.isThere()) {
        return;
      }
    }
  }

  private Seen step(Seen now, List<Integer> goals, List<Integer> free) {
    Array2DRowRealMatrix slopes = new Array2DRowRealMatrix(goals.size(), free.size());
    double[] misses = new double[goals.size()];
    for (int column = 0; column < free.size(); column++) {
      Seen above = ledger.beside(now, free.get(column), Descent.DIFFERENCE);
      Seen below = ledger.beside(now, free.get(column), -Descent.DIFFERENCE);
      double width = above.place[free.get(column)] - below.place[free.get(column)];
      for (int row = 0; row < misses.length && width > 0; row++) {
        double rise =
            ledger.signed(above.sight, goals.get(row)) - ledger.signed(below.sight, goals.get(row));
        slopes.setEntry(row, column, rise / width);
      }
    }
    for (int row = 0; row < misses.length; row++) {
      misses[row] = -ledger.signed(now.sight, goals.get(row));
    }
    double[] step =
        new SingularValueDecomposition(slopes)
            .getSolver()
            .solve(new ArrayRealVector(misses, false))
            .toArray();
    double[] place = now.place.clone();
    for (int column = 0; column < step.length; column++) {
      int i = free.get(column);
      place[i] = Math.max(0, Math.min(1, place[i] + step[column]));
    }
    return new Seen(place, ledger.look(place));
  }
}
