package bellcrank.statics.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;

/** Equations in the order in which they are solved, and the values that they yield. */
final class Plan {

  /**
   * Some equations and the unknowns that they yield; no equations if the unknown is taken as given.
   */
  record Move(List<Candidate> equations, List<Integer> found) {}

  private final List<Move> moves;
  private final double[] values;

  Plan(List<Move> moves, double[] values) {
    this.moves = List.copyOf(moves);
    this.values = values.clone();
  }

  List<Move> moves() {
    return moves;
  }

  double value(int unknown) {
    return values[unknown];
  }

  BitSet known() {
    BitSet known = new BitSet();
    moves.forEach(move -> move.found().forEach(known::set));
    return known;
  }

  int equations() {
    return moves.stream().mapToInt(move -> move.equations().size()).sum();
  }

  /** This plan with the values of another one where it has some. */
  Plan with(Plan other) {
    double[] mixed = values.clone();
    other.known().stream().forEach(k -> mixed[k] = other.value(k));
    return new Plan(moves, mixed);
  }

  /** The moves that some goals need. */
  Plan slice(BitSet goals) {
    BitSet needed = (BitSet) goals.clone();
    List<Move> kept = new ArrayList<>();
    for (int k = moves.size() - 1; k >= 0; k--) {
      Move move = moves.get(k);
      if (move.found().stream().anyMatch(needed::get)) {
        kept.add(move);
        move.equations().forEach(one -> one.unknowns().forEach(needed::set));
      }
    }
    Collections.reverse(kept);
    return new Plan(kept, values);
  }
}
