package bellcrank.statics.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Finds a cheap chain of equations for some goals in a device of any size: the cost of an unknown
 * is that of an equation and of all other unknowns in it. Costs of what two unknowns share count
 * twice, so the chain may be longer than needed. The unknowns are settled in the order of cost.
 *
 * <p>Source of the method: D. E. Knuth, A generalization of Dijkstra's algorithm, 1977 (from
 * memory).
 */
final class CheapestChain {

  /** An equation costs so much before its terms are counted. */
  private static final long PER_EQUATION = 1000;

  private static final long ENOUGH = Long.MAX_VALUE / 4;

  private record Offer(long cost, int candidate, int unknown) {}

  private final List<Candidate> candidates;
  private final long[] sums;
  private final int[] open;
  private final List<List<Integer>> with = new ArrayList<>();
  private final PriorityQueue<Offer> offers =
      new PriorityQueue<>(
          java.util.Comparator.comparingLong(Offer::cost).thenComparingInt(Offer::candidate));
  private final BitSet settled = new BitSet();
  private final List<Offer> order = new ArrayList<>();

  private CheapestChain(List<Candidate> candidates, int unknowns) {
    this.candidates = candidates;
    sums = new long[candidates.size()];
    open = new int[candidates.size()];
    for (int k = 0; k < unknowns; k++) {
      with.add(new ArrayList<>());
    }
    for (int k = 0; k < candidates.size(); k++) {
      open[k] = candidates.get(k).unknowns().size();
      sums[k] = PER_EQUATION + candidates.get(k).cost();
      for (int unknown : candidates.get(k).unknowns()) {
        with.get(unknown).add(k);
      }
      offer(k);
    }
  }

  /** A chain for the goals; empty if single equations do not reach them. */
  static Optional<List<Plan.Move>> find(List<Candidate> candidates, BitSet goals, int unknowns) {
    CheapestChain chain = new CheapestChain(candidates, unknowns);
    chain.settle(goals);
    return chain.moves(goals);
  }

  private void offer(int candidate) {
    if (open[candidate] == 1 && sums[candidate] < ENOUGH) {
      int last = Block.open(candidates.get(candidate), settled).nextSetBit(0);
      offers.add(new Offer(sums[candidate], candidate, last));
    }
  }

  private void settle(BitSet goals) {
    BitSet left = (BitSet) goals.clone();
    while (!left.isEmpty() && !offers.isEmpty()) {
      Offer best = offers.remove();
      if (settled.get(best.unknown())) {
        continue;
      }
      settled.set(best.unknown());
      left.clear(best.unknown());
      order.add(best);
      for (int k : with.get(best.unknown())) {
        open[k]--;
        sums[k] = Math.min(ENOUGH, sums[k] + best.cost());
        offer(k);
      }
    }
  }

  private Optional<List<Plan.Move>> moves(BitSet goals) {
    BitSet needed = (BitSet) goals.clone();
    List<Plan.Move> moves = new ArrayList<>();
    for (int k = order.size() - 1; k >= 0; k--) {
      Offer one = order.get(k);
      if (needed.get(one.unknown())) {
        Candidate equation = candidates.get(one.candidate());
        equation.unknowns().forEach(needed::set);
        moves.add(0, new Plan.Move(List.of(equation), List.of(one.unknown())));
      }
    }
    needed.andNot(settled);
    return needed.isEmpty() ? Optional.of(moves) : Optional.empty();
  }
}
