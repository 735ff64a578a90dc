package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import java.util.Optional;

/**
 * Published coefficients of friction of one pair of surfaces.
 *
 * @param name stable plain name by which it is chosen: the pair, its state and the table
 * @param staticFriction static coefficient μ, 0 or more
 * @param kineticFriction kinetic coefficient, 0 or more, if the table has it
 * @param source document, edition and place
 * @param basis how the figures came here
 * @param note what to mind when using them; may be empty
 */
public record FrictionRow(
    String name,
    Span staticFriction,
    Optional<Span> kineticFriction,
    String source,
    Basis basis,
    String note) {

  /**
   * Checks the fields.
   *
   * @param name stable plain name by which it is chosen: the pair, its state and the table
   * @param staticFriction static coefficient μ, 0 or more
   * @param kineticFriction kinetic coefficient, 0 or more, if the table has it
   * @param source document, edition and place
   * @param basis how the figures came here
   * @param note what to mind when using them; may be empty
   * @throws ModelException if the name or the source is blank or a coefficient is negative
   */
  public FrictionRow {
    Check.text("friction", "name", name);
    Check.text(name, "source", source);
    Check.notNegative(name, "static friction", staticFriction.low());
    Check.notNegative(name, "kinetic friction", kineticFriction);
  }

  /**
   * The angle of static friction, arctan μ.
   *
   * @return in rad, 0 or more, below π/2
   */
  public Span angle() {
    return Span.of(Math.atan(staticFriction.low()), Math.atan(staticFriction.high()));
  }
}
