package bellcrank.statics.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Looks for the smallest set of equations that can be solved together. */
final class Block {

  /** Equations from which a set may grow. */
  static final int SEEDS = 40;

  /** A set does not grow beyond this many unknowns; all plain equations are taken then. */
  static final int LARGEST = 10;

  /** No more equations than this, the least laborious ones, are looked at. */
  static final int MOST_LOOKED_AT = 600;

  /** Sets of all plain equations with more unknowns than this are not solved. */
  static final int LARGEST_WHOLE = 250;

  /** Of no more equations than this those that are not needed are left out. */
  static final int LARGEST_THINNED = 40;

  private final List<Candidate> candidates;
  private final BitSet known;
  private final double[] values;

  private Block(List<Candidate> candidates, BitSet known, double[] values) {
    this.candidates = candidates;
    this.known = known;
    this.values = values;
  }

  /** What a set of equations yields. */
  record Solved(List<Candidate> equations, List<Integer> unknowns, List<Double> found) {}

  /** The smallest set among the candidates that can be found by letting sets grow. */
  static Optional<Solved> smallest(
      List<Candidate> candidates, BitSet known, double[] values, int unknowns) {
    List<Candidate> some =
        candidates.stream()
            .filter(one -> open(one, known).cardinality() > 0)
            .limit(MOST_LOOKED_AT)
            .toList();
    Block block = new Block(some, known, values);
    List<Candidate> best = List.of();
    List<Candidate> seeds =
        some.stream()
            .sorted(
                java.util.Comparator.<Candidate>comparingInt(one -> open(one, known).cardinality())
                    .thenComparing(Candidate.CHEAPEST))
            .limit(SEEDS)
            .toList();
    for (Candidate seed : seeds) {
      int most = best.isEmpty() ? LARGEST : best.size() - 1;
      List<Candidate> grown = block.grown(seed, most, unknowns);
      best = grown.isEmpty() ? best : grown;
      if (best.size() == 2) {
        break;
      }
    }
    return best.isEmpty() ? Optional.empty() : solve(best, known, values, unknowns);
  }

  static BitSet open(Candidate one, BitSet known) {
    BitSet open = new BitSet();
    one.unknowns().forEach(open::set);
    open.andNot(known);
    return open;
  }

  private List<Candidate> grown(Candidate seed, int most, int unknowns) {
    List<Candidate> taken = new ArrayList<>(List.of(seed));
    BitSet union = open(seed, known);
    Rows rows = new Rows(unknowns);
    rows.add(row(seed, known, values, unknowns));
    // what depends on the rows now depends on them for ever
    Set<String> spent = new HashSet<>();
    while (rows.rank() < union.cardinality()) {
      if (union.cardinality() > most) {
        return List.of();
      }
      boolean grew = false;
      // the fewest new unknowns first; the list itself is in the order of cost
      for (int fresh = 0; fresh <= 2 && !grew; fresh++) {
        for (Candidate next : candidates) {
          BitSet more = open(next, known);
          more.andNot(union);
          if (more.cardinality() != fresh || spent.contains(next.key())) {
            continue;
          }
          if (!rows.add(row(next, known, values, unknowns))) {
            spent.add(next.key());
          } else {
            union.or(more);
            taken.add(next);
            grew = true;
            break;
          }
        }
      }
      if (!grew) {
        return List.of();
      }
    }
    return union.cardinality() > most ? List.of() : taken;
  }

  static double[] row(Candidate one, BitSet known, double[] values, int unknowns) {
    double[] row = new double[unknowns + 1];
    row[unknowns] = -one.loads();
    for (int k = 0; k < one.unknowns().size(); k++) {
      int unknown = one.unknowns().get(k);
      if (known.get(unknown)) {
        row[unknowns] -= one.coefficients().get(k) * values[unknown];
      } else {
        row[unknown] = one.coefficients().get(k);
      }
    }
    return row;
  }

  /** All unknowns that equations fix, by as few of them as do it; empty if they fix none. */
  static Optional<Solved> solve(
      List<Candidate> equations, BitSet known, double[] values, int unknowns) {
    List<Candidate> used = new ArrayList<>();
    Rows rows = rows(equations, known, values, unknowns, used);
    List<Integer> fixed = fixed(rows, unknowns);
    if (fixed.isEmpty()) {
      return Optional.empty();
    }
    if (fixed.size() < used.size() && used.size() <= LARGEST_THINNED) {
      thin(used, fixed, known, values, unknowns);
    }
    List<Double> found = fixed.stream().map(rows::value).toList();
    return Optional.of(new Solved(List.copyOf(used), fixed, found));
  }

  private static Rows rows(
      List<Candidate> equations,
      BitSet known,
      double[] values,
      int unknowns,
      List<Candidate> used) {
    Rows rows = new Rows(unknowns);
    for (Candidate one : equations) {
      if (rows.add(row(one, known, values, unknowns))) {
        used.add(one);
      }
    }
    return rows;
  }

  private static List<Integer> fixed(Rows rows, int unknowns) {
    List<Integer> fixed = new ArrayList<>();
    for (int k = 0; k < unknowns; k++) {
      if (rows.fixes(k)) {
        fixed.add(k);
      }
    }
    return fixed;
  }

  /** Leaves out equations without which the same unknowns are fixed. */
  private static void thin(
      List<Candidate> used, List<Integer> fixed, BitSet known, double[] values, int unknowns) {
    for (Candidate one : List.copyOf(used)) {
      List<Candidate> fewer = new ArrayList<>(used);
      fewer.remove(one);
      Rows rows = rows(fewer, known, values, unknowns, new ArrayList<>());
      if (fixed(rows, unknowns).containsAll(fixed)) {
        used.remove(one);
      }
    }
  }
}
