package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.Basis;
import java.util.Optional;

/**
 * Published strength of one size of a rope, chain or fitting. Either the working load is printed,
 * or it follows from breaking strength and factor.
 *
 * @param name stable plain name by which it is chosen
 * @param kind what it is
 * @param size nominal size in m, above 0
 * @param breaking least breaking strength in N, above 0, if the source has it
 * @param working working load in N, above 0, if the source prints it
 * @param factor breaking strength over working load, above 1, if the source says it
 * @param source document, edition and place
 * @param basis how the figures came here
 * @param note what to mind when using them; may be empty
 */
public record LineRow(
    String name,
    Kind kind,
    double size,
    Optional<Double> breaking,
    Optional<Double> working,
    Optional<Double> factor,
    String source,
    Basis basis,
    String note) {

  /** What carries the pull. */
  public enum Kind {
    /** Welded link chain. */
    CHAIN,
    /** Wire rope. */
    WIRE_ROPE,
    /** Rope of natural fibres. */
    FIBRE_ROPE,
    /** Shackle, by the diameter of its body. */
    SHACKLE,
    /** Turnbuckle, by the diameter of its threads. */
    TURNBUCKLE
  }

  /**
   * Checks that a working load is printed or follows.
   *
   * @param name stable plain name by which it is chosen
   * @param kind what it is
   * @param size nominal size in m, above 0
   * @param breaking least breaking strength in N, if the source has it
   * @param working working load in N, if the source prints it
   * @param factor breaking strength over working load, if the source says it
   * @param source document, edition and place
   * @param basis how the figures came here
   * @param note what to mind when using them; may be empty
   * @throws ModelException if there is neither a working load nor both others
   */
  public LineRow {
    if (working.isEmpty() && (breaking.isEmpty() || factor.isEmpty())) {
      throw new ModelException(
          name, "working load", "missing", "a working load, or breaking strength and factor");
    }
  }

  /**
   * The working load of the row: as printed, else the breaking strength over the factor.
   *
   * @return in N, above 0
   */
  public double workingLoad() {
    return working.orElseGet(() -> breaking.orElseThrow() / factor.orElseThrow());
  }

  /**
   * The breaking strength of the row: as printed, else the working load times the factor.
   *
   * @return in N, above 0; empty if the row has no factor
   */
  public Optional<Double> breakingStrength() {
    return breaking.or(() -> factor.map(times -> times * workingLoad()));
  }
}
