package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import java.util.Optional;

/**
 * What a published table allows for one kind of ground.
 *
 * @param name stable plain name by which it is chosen
 * @param pressure allowed pressure under a base in Pa, above 0
 * @param lateral allowed sideways pressure per metre of depth in Pa/m, if the table has it
 * @param friction allowed coefficient of friction against sliding, if the table has it
 * @param cohesion allowed adhesion against sliding in Pa, if the table has it instead of friction
 * @param source document, edition and place
 * @param basis how the figures came here
 * @param note what to mind when using them; may be empty
 */
public record SoilRow(
    String name,
    Span pressure,
    Optional<Span> lateral,
    Optional<Span> friction,
    Optional<Span> cohesion,
    String source,
    Basis basis,
    String note) {

  /**
   * Checks the fields.
   *
   * @param name stable plain name by which it is chosen
   * @param pressure allowed pressure under a base in Pa, above 0
   * @param lateral allowed sideways pressure per metre of depth in Pa/m, if the table has it
   * @param friction allowed coefficient of friction against sliding, if the table has it
   * @param cohesion allowed adhesion against sliding in Pa, if the table has it instead of friction
   * @param source document, edition and place
   * @param basis how the figures came here
   * @param note what to mind when using them; may be empty
   * @throws ModelException if the name or the source is blank or a figure is out of its range
   */
  public SoilRow {
    Check.text("soil", "name", name);
    Check.text(name, "source", source);
    Check.positive(name, "pressure", pressure.low());
    Check.notNegative(name, "lateral pressure", lateral);
    Check.notNegative(name, "friction", friction);
    Check.notNegative(name, "cohesion", cohesion);
  }

  /**
   * The bearing of this ground, where the table gives a single pressure.
   *
   * @return the bearing, with this row as its source
   * @throws ModelException if the table gives a range: then take {@link #lowest()} or {@link
   *     #highest()}
   */
  public Presumptive presumptive() {
    if (!pressure.isSingle()) {
      throw new ModelException(
          name,
          "pressure",
          pressure.low() + " to " + pressure.high() + " Pa",
          "a choice: the lowest or the highest of the range");
    }
    return lowest();
  }

  /**
   * The bearing with the lowest pressure of the range.
   *
   * @return the bearing, with this row as its source
   */
  public Presumptive lowest() {
    return new Presumptive(pressure.low(), cite());
  }

  /**
   * The bearing with the highest pressure of the range.
   *
   * @return the bearing, with this row as its source
   */
  public Presumptive highest() {
    return new Presumptive(pressure.high(), cite());
  }

  private String cite() {
    return source + ": " + name;
  }
}
