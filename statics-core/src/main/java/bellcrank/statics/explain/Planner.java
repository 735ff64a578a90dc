package bellcrank.statics.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/** Finds an order in which to write and solve equations. */
final class Planner {

  private final Picture picture;
  private final List<Candidate> candidates;
  private final List<Candidate> laws;
  private final int count;

  Planner(Picture picture, List<Candidate> laws) {
    this.picture = picture;
    this.laws = laws;
    candidates = Candidates.of(picture, laws);
    count = picture.unknowns().size();
  }

  List<Candidate> candidates() {
    return candidates;
  }

  /**
   * Finds all unknowns that statics fixes.
   *
   * @param given value of an unknown from elsewhere; empty if there is none
   * @param fixed whether an unknown can be found at all
   */
  Plan all(IntFunction<OptionalDouble> given, IntPredicate fixed) {
    Search search = new Search(fixed);
    search.run(given);
    return new Plan(search.moves, search.values);
  }

  /** Finds what some goals need, in as few equations as can be found. */
  Plan some(Plan all, BitSet goals) {
    BitSet within = (BitSet) goals.clone();
    within.and(all.known());
    Plan sliced = all.slice(within);
    Plan cheap =
        CheapestChain.find(candidates, within, count)
            .map(chain -> plan(chain, all))
            .filter(plan -> plan.equations() <= sliced.equations())
            .orElse(sliced);
    List<Plan.Move> sets =
        all.moves().stream().filter(move -> move.equations().size() > 1).toList();
    return ShortChain.find(candidates, sets, within, count, cheap)
        .map(chain -> plan(chain, all))
        .orElse(cheap);
  }

  private Plan plan(List<Plan.Move> chain, Plan all) {
    return new Plan(chain, solved(chain, all));
  }

  private double[] solved(List<Plan.Move> chain, Plan all) {
    double[] values = new double[count];
    BitSet known = new BitSet();
    for (Plan.Move move : chain) {
      for (int unknown : move.found()) {
        values[unknown] =
            move.equations().size() > 1
                ? all.value(unknown)
                : value(move.equations().get(0), unknown, known, values);
      }
      move.found().forEach(known::set);
    }
    return values;
  }

  private double value(Candidate equation, int unknown, BitSet known, double[] values) {
    double sum = equation.loads();
    double size = Math.abs(sum);
    for (int k = 0; k < equation.unknowns().size(); k++) {
      int other = equation.unknowns().get(k);
      if (known.get(other)) {
        double part = equation.coefficients().get(k) * values[other];
        sum += part;
        size += Math.abs(part);
      }
    }
    // what cancels but for rounding is a zero force
    return Math.abs(sum) <= Candidates.ZERO / 100 * size ? 0 : -sum / equation.coefficient(unknown);
  }

  /** One run: the cheapest equation with one unknown left, again and again. */
  private final class Search {
    final List<Plan.Move> moves = new ArrayList<>();
    final double[] values = new double[count];
    private final IntPredicate fixed;
    private final BitSet known = new BitSet();
    private final int[] open = new int[candidates.size()];
    private final List<List<Integer>> with = new ArrayList<>();
    private final PriorityQueue<Integer> ready = new PriorityQueue<>();

    Search(IntPredicate fixed) {
      this.fixed = fixed;
      for (int unknown = 0; unknown < count; unknown++) {
        with.add(new ArrayList<>());
      }
      for (int k = 0; k < candidates.size(); k++) {
        List<Integer> unknowns = candidates.get(k).unknowns();
        open[k] = unknowns.size();
        for (int unknown : unknowns) {
          with.get(unknown).add(k);
        }
        if (open[k] == 1) {
          ready.add(k);
        }
      }
    }

    void run(IntFunction<OptionalDouble> given) {
      do {
        singles();
      } while (known.cardinality() < count && (block() || plain() || taken(given)));
    }

    private void singles() {
      while (!ready.isEmpty()) {
        int next = ready.remove();
        if (open[next] == 1) {
          Candidate equation = candidates.get(next);
          int unknown = Block.open(equation, known).nextSetBit(0);
          found(unknown, value(equation, unknown, known, values));
          moves.add(new Plan.Move(List.of(equation), List.of(unknown)));
        }
      }
    }

    private void found(int unknown, double value) {
      values[unknown] = value;
      known.set(unknown);
      for (int k : with.get(unknown)) {
        open[k]--;
        if (open[k] == 1) {
          ready.add(k);
        }
      }
    }

    private boolean block() {
      return take(Block.smallest(candidates, known, values, count));
    }

    private boolean plain() {
      if (count - known.cardinality() > Block.LARGEST_WHOLE) {
        return false;
      }
      List<Candidate> left =
          Stream.concat(laws.stream(), Candidates.plain(picture).stream())
              .filter(one -> !Block.open(one, known).isEmpty())
              .toList();
      return take(Block.solve(left, known, values, count));
    }

    private boolean take(Optional<Block.Solved> found) {
      Optional<Block.Solved> solved =
          found.filter(block -> block.unknowns().stream().allMatch(fixed::test));
      solved.ifPresent(
          block -> {
            moves.add(new Plan.Move(block.equations(), block.unknowns()));
            for (int k = 0; k < block.unknowns().size(); k++) {
              found(block.unknowns().get(k), block.found().get(k));
            }
          });
      return solved.isPresent();
    }

    private boolean taken(IntFunction<OptionalDouble> given) {
      for (int unknown = 0; unknown < count; unknown++) {
        OptionalDouble value = known.get(unknown) ? OptionalDouble.empty() : given.apply(unknown);
        if (value.isPresent()) {
          moves.add(new Plan.Move(List.of(), List.of(unknown)));
          found(unknown, value.getAsDouble());
          return true;
        }
      }
      return false;
    }
  }
}
