package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import java.util.List;

/**
 * The working load limit of a rope, chain, shackle or other fitting that carries the force of a
 * part.
 *
 * @param name what is rated, such as {@code shackle at the hook}
 * @param part name of a line, reeving, wrap, strut or other connection; its tension, or the size of
 *     its force, is what the fitting carries
 * @param limit working load limit of one in N, above 0, as its maker or a table states it
 * @param source where the limit comes from
 * @param legs number of legs that share the force, 1 or more
 * @param legAngle angle of the legs from the direction of the force in rad, 0 to below π/2
 * @param reductions what the limit is multiplied by: bends, terminals, side pull; may be empty
 */
public record Rating(
    String name,
    String part,
    double limit,
    String source,
    int legs,
    double legAngle,
    List<Reduction> reductions)
    implements Detail {

  /**
   * A share of the limit that is left.
   *
   * @param why what takes the rest, such as {@code bent over an edge}
   * @param share share that is left, above 0 and at most 1
   * @param source where the share comes from
   */
  public record Reduction(String why, double share, String source) {

    /**
     * Checks the share.
     *
     * @param why what takes the rest
     * @param share share that is left, above 0 and at most 1
     * @param source where the share comes from
     * @throws ModelException if the share is out of range
     */
    public Reduction {
      if (!(share > 0 && share <= 1)) {
        throw new ModelException(why, "share", share, "above 0 and at most 1");
      }
    }
  }

  /**
   * Checks the numbers and copies the list.
   *
   * @param name what is rated
   * @param part name of a connection
   * @param limit working load limit of one in N, above 0
   * @param source where the limit comes from
   * @param legs number of legs that share the force, 1 or more
   * @param legAngle angle of the legs from the direction of the force in rad, 0 to below π/2
   * @param reductions what the limit is multiplied by
   * @throws ModelException if a number is out of range
   */
  public Rating {
    Positive.check(name, "working load limit", limit);
    if (legs < 1) {
      throw new ModelException(name, "legs", legs, "a whole number of 1 or more");
    }
    if (!(legAngle >= 0 && legAngle < Math.PI / 2)) {
      throw new ModelException(name, "leg angle", legAngle, "an angle in rad from 0 to below π/2");
    }
    reductions = List.copyOf(reductions);
  }

  /**
   * A single line with nothing that takes from its limit.
   *
   * @param part name of a line, reeving, wrap or other connection
   * @param limit working load limit in N, above 0
   * @param source where the limit comes from
   * @return the rating
   * @throws ModelException if the limit is not above 0
   */
  public static Rating of(String part, double limit, String source) {
    return new Rating(part, part, limit, source, 1, 0, List.of());
  }

  /**
   * A copy with one more reduction.
   *
   * @param reduction what takes from the limit
   * @return a copy
   */
  public Rating with(Reduction reduction) {
    List<Reduction> all = new java.util.ArrayList<>(reductions);
    all.add(reduction);
    return new Rating(name, part, limit, source, legs, legAngle, all);
  }

  /**
   * What is left of the limit of one leg.
   *
   * @return in N, above 0
   */
  public double reducedLimit() {
    double left = limit;
    for (Reduction reduction : reductions) {
      left *= reduction.share();
    }
    return left;
  }
}
