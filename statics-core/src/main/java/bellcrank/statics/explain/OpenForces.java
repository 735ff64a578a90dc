package bellcrank.statics.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What statics leaves open.
 *
 * @param equations the independent equations that are left
 * @param released unknowns that would have to be known to find the others
 */
record OpenForces(List<Candidate> equations, List<Integer> released) {

  /** No more equations than this are told. */
  static final int TOLD = 12;

  static OpenForces of(Planner planner, Picture picture, Plan plan, BitSet open) {
    int count = picture.unknowns().size();
    BitSet known = plan.known();
    double[] values = new double[count];
    known.stream().forEach(k -> values[k] = plan.value(k));
    // the force of a strut or prop is more easily released than a pin's, so it comes last
    List<Integer> order = new ArrayList<>();
    open.stream().filter(k -> !isEasy(picture, k)).forEach(order::add);
    open.stream().filter(k -> isEasy(picture, k)).forEach(order::add);
    List<Candidate> used = new ArrayList<>();
    Rows rows = new Rows(order.size());
    if (count - known.cardinality() <= Block.LARGEST_WHOLE) {
      for (Candidate one : planner.candidates()) {
        if (Block.open(one, known).isEmpty()) {
          continue;
        }
        double[] full = Block.row(one, known, values, count);
        double[] row = new double[order.size() + 1];
        for (int j = 0; j < order.size(); j++) {
          row[j] = full[order.get(j)];
        }
        if (rows.add(row)) {
          used.add(one);
        }
      }
    }
    List<Integer> released = new ArrayList<>();
    for (int j = 0; j < order.size(); j++) {
      if (!rows.pivots().contains(j)) {
        released.add(order.get(j));
      }
    }
    return new OpenForces(used.subList(0, Math.min(TOLD, used.size())), released);
  }

  private static boolean isEasy(Picture picture, int unknown) {
    return switch (picture.unknowns().get(unknown).kind()) {
      case AXIAL, ROPE, NORMAL -> true;
      default -> false;
    };
  }
}
