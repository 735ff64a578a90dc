package bellcrank.statics.explain;

import bellcrank.statics.geometry.Direction;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * An equation that could be written.
 *
 * @param cut the bodies cut free
 * @param condition moments or forces
 * @param unknowns numbers of the unknowns in it, rising
 * @param coefficients their coefficients, in N per N or m per N
 * @param loads what the given loads add up to
 * @param cost how laborious it is
 * @param key tells it from all others, whatever the order of parts
 */
record Candidate(
    BitSet cut,
    Condition condition,
    List<Integer> unknowns,
    List<Double> coefficients,
    double loads,
    int cost,
    String key) {

  static final Comparator<Candidate> CHEAPEST =
      Comparator.comparingInt(Candidate::cost).thenComparing(Candidate::key);

  double coefficient(int unknown) {
    int place = unknowns.indexOf(unknown);
    return place < 0 ? 0 : coefficients.get(place);
  }

  /** Share of a wrench in the equation. */
  static double share(Condition condition, Wrench wrench, Picture picture) {
    if (condition instanceof Condition.Moments moments) {
      return wrench.about(picture.middle().to(moments.about()));
    }
    return wrench.along(((Condition.Forces) condition).along());
  }

  /** Whether a share is no more than rounding. */
  static boolean isNone(double share, Condition condition, Wrench wrench, Picture picture) {
    double reach = 1;
    if (condition instanceof Condition.Moments moments) {
      reach = picture.size() + picture.middle().distance(moments.about());
    }
    return Math.abs(share) <= Candidates.ZERO * wrench.size() * reach;
  }

  static boolean isLevelOrUpright(Direction direction) {
    return direction.x() == 0 || direction.y() == 0;
  }
}
