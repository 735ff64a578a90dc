package bellcrank.statics.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for a shorter chain of equations that yields some goals: first chains of one equation, then
 * of two and so on, as far as the effort allows. Each equation has one new unknown, but sets of
 * equations that are known to be solvable together may be links of the chain as well.
 */
final class ShortChain {

  /** More unknowns than this are not searched. */
  static final int MOST_UNKNOWNS = 64;

  /** No more equations than this are looked at in the search. */
  static final int EFFORT = 20_000_000;

  private record Group(Plan.Move move, long needs, long yields) {}

  private final List<Candidate> candidates;
  private final List<Group> groups;
  private final long[] masks;
  private final long goals;
  private final List<Plan.Move> chain = new ArrayList<>();
  private final Map<Long, Integer> tried = new HashMap<>();
  private int effort;

  private ShortChain(List<Candidate> candidates, List<Plan.Move> sets, BitSet goals) {
    this.candidates = candidates;
    groups = sets.stream().map(ShortChain::group).toList();
    masks = new long[candidates.size()];
    for (int k = 0; k < masks.length; k++) {
      for (int unknown : candidates.get(k).unknowns()) {
        masks[k] |= 1L << unknown;
      }
    }
    this.goals = goals.isEmpty() ? 0 : goals.toLongArray()[0];
  }

  private static Group group(Plan.Move move) {
    long yields = 0;
    for (int unknown : move.found()) {
      yields |= 1L << unknown;
    }
    long all = 0;
    for (Candidate equation : move.equations()) {
      for (int unknown : equation.unknowns()) {
        all |= 1L << unknown;
      }
    }
    return new Group(move, all & ~yields, yields);
  }

  /**
   * A chain shorter than a plan; empty if none was found.
   *
   * @param sets equations that can be solved together once all else in them is known
   */
  static Optional<List<Plan.Move>> find(
      List<Candidate> candidates, List<Plan.Move> sets, BitSet goals, int unknowns, Plan plan) {
    if (unknowns > MOST_UNKNOWNS || plan.equations() < 2) {
      return Optional.empty();
    }
    ShortChain search = new ShortChain(candidates, sets, goals);
    for (int length = goals.cardinality(); length < plan.equations(); length++) {
      search.tried.clear();
      if (search.reach(0, length)) {
        return Optional.of(new ArrayList<>(search.chain));
      }
    }
    return Optional.empty();
  }

  private boolean reach(long known, int left) {
    if ((goals & ~known) == 0) {
      return true;
    }
    if (Long.bitCount(goals & ~known) > left || effort > EFFORT) {
      return false;
    }
    Integer before = tried.get(known);
    if (before != null && before >= left) {
      return false;
    }
    tried.put(known, left);
    long seen = 0;
    List<Integer> next = new ArrayList<>();
    effort += masks.length;
    for (int k = 0; k < masks.length; k++) {
      long open = masks[k] & ~known;
      // the last equation must yield a goal
      boolean fits = left > 1 || (open & goals) != 0;
      if (open != 0 && (open & (open - 1)) == 0 && (open & seen) == 0 && fits) {
        seen |= open;
        next.add(k);
      }
    }
    for (int k : next) {
      long open = masks[k] & ~known;
      Plan.Move move =
          new Plan.Move(List.of(candidates.get(k)), List.of(Long.numberOfTrailingZeros(open)));
      chain.add(move);
      if (reach(known | open, left - 1)) {
        return true;
      }
      chain.remove(chain.size() - 1);
    }
    return reachTogether(known, left);
  }

  private boolean reachTogether(long known, int left) {
    for (Group group : groups) {
      int size = group.move().equations().size();
      if (size <= left && (group.needs() & ~known) == 0 && (group.yields() & ~known) != 0) {
        chain.add(group.move());
        if (reach(known | group.yields(), left - size)) {
          return true;
        }
        chain.remove(chain.size() - 1);
      }
    }
    return false;
  }
}
