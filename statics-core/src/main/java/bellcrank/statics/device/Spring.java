package bellcrank.statics.device;

import java.util.List;

/**
 * A straight linear spring between two points; its force follows from the pose.
 *
 * @param name name, unique among connections and loads
 * @param first one end
 * @param second the other end, on another body
 * @param stiffness in N/m, above 0
 * @param freeLength length without force in m, 0 or more
 */
public record Spring(String name, End first, End second, double stiffness, double freeLength)
    implements Load {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param first one end
   * @param second the other end, on another body
   * @param stiffness in N/m, above 0
   * @param freeLength length without force in m, 0 or more
   * @throws ModelException if a field is not acceptable
   */
  public Spring {
    Check.name("spring", name);
    Check.different(name, "joins", List.of(first.body(), second.body()), 2);
    Check.positive(name, "spring", stiffness);
    Check.notNegative(name, "free length", freeLength);
  }
}
