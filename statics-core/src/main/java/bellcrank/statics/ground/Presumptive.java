package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;

/**
 * A pressure that a table or a soil report allows for a kind of ground, evenly spread over the
 * effective area: N at most q·B'·L. The tangential force plays no part.
 *
 * @param pressure allowed pressure q in Pa, above 0
 * @param source where the figure comes from, not blank
 */
public record Presumptive(double pressure, String source) implements Bearing {

  private static final String PART = "presumptive bearing";

  /**
   * Checks the fields.
   *
   * @param pressure allowed pressure q in Pa, above 0
   * @param source where the figure comes from, not blank
   * @throws ModelException if the pressure is not above 0 or the source is blank
   */
  public Presumptive {
    Check.positive(PART, "pressure", pressure);
    Check.text(PART, "source", source);
  }

  /**
   * The same ground with the pressure raised or lowered by a factor, as a code or a report allows.
   *
   * @param factor factor, above 0
   * @param reason where the factor comes from, not blank; it is added to the source
   * @return the bearing with its pressure times the factor
   * @throws ModelException if the factor is not above 0 or the reason is blank
   */
  public Presumptive times(double factor, String reason) {
    Check.positive(PART, "factor", factor);
    Check.text(PART, "reason", reason);
    return new Presumptive(pressure * factor, source + "; times " + factor + ": " + reason);
  }

  @Override
  public double resistance(BaseLoad load) {
    return pressure * EffectiveBase.from(load).area();
  }
}
