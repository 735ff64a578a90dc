package bellcrank.statics.motion;

import bellcrank.statics.device.ModelException;
import java.util.OptionalDouble;

/**
 * Tells the tension of a taut line from the deflection that a sideways force makes.
 *
 * <p>The line is taken as two straight parts between fixed ends, its own weight neglected. With the
 * span L, the foot of the force at a from one end and b = L − a from the other, the deflection d,
 * tan α = d/a and tan β = d/b, balance across the span gives T = F / (sin α + sin β); in the middle
 * T = F·√((L/2)² + d²) / (2d). Both parts have the same tension: the hook runs freely on the line,
 * and F is the share of its pull that lies square to the span. A hook that grips the line gives
 * {@link #grippedTensions()}, which differ unless it is in the middle. Source: balance of three
 * forces at a point, any textbook of statics; from memory.
 *
 * <p>This is the tension with the deflection in place. It is greater than the tension before,
 * because the line is stretched by the detour; see {@link #tensionBefore(double)}.
 *
 * @param force sideways force F in N, above 0
 * @param span distance L of the ends in m, above 0
 * @param at distance a along the span from the first end to the foot of the deflected point in m,
 *     above 0 and below the span
 * @param deflection sideways way d of the line at the force in m, from the straight line between
 *     the ends, above 0
 */
public record Deflection(double force, double span, double at, double deflection) {

  private static final String PART = "deflection";

  /**
   * Checks the fields.
   *
   * @param force sideways force F in N, above 0
   * @param span distance L of the ends in m, above 0
   * @param at distance a along the span from the first end to the foot of the deflected point in m,
   *     above 0 and below the span
   * @param deflection sideways way d of the line at the force in m, above 0
   * @throws ModelException if a field is out of its range or not finite
   */
  public Deflection {
    HaulCheck.positive(PART, "force", force);
    HaulCheck.positive(PART, "span", span);
    if (HaulCheck.positive(PART, "place along the span", at) >= span) {
      throw new ModelException(
          PART, "place along the span", at, "a distance above 0 and below the span, " + span);
    }
    HaulCheck.positive(PART, "deflection", deflection);
  }

  /**
   * A force in the middle of the span.
   *
   * @param force sideways force in N, above 0
   * @param span distance of the ends in m, above 0
   * @param deflection sideways way of the line at the middle in m, above 0
   * @return the deflection
   * @throws ModelException if a value is out of its range or not finite
   */
  public static Deflection middle(double force, double span, double deflection) {
    return new Deflection(force, span, span / 2, deflection);
  }

  private double rest() {
    return span - at;
  }

  private double firstPart() {
    return Math.hypot(at, deflection);
  }

  private double secondPart() {
    return Math.hypot(rest(), deflection);
  }

  private double sines() {
    return deflection / firstPart() + deflection / secondPart();
  }

  /**
   * The tension with the deflection in place, the same in both parts.
   *
   * @return in N
   */
  public double tension() {
    return force / sines();
  }

  /**
   * The tensions with the deflection in place where the hook grips the line and pulls exactly
   * square to the span: F·cos β / sin(α + β) in the first part and F·cos α / sin(α + β) in the
   * second.
   *
   * @return both tensions
   */
  public PartTensions grippedTensions() {
    // sin(α + β) = d·L / (p·q) with p, q the lengths of the parts, cos α = a/p, cos β = b/q
    double pull = force / (deflection * span);
    return new PartTensions(pull * firstPart() * rest(), pull * secondPart() * at);
  }

  /**
   * How much longer the line is than the span because of the detour.
   *
   * @return in m, above 0
   */
  public double detour() {
    // √(a² + d²) − a without the difference of near numbers
    double square = deflection * deflection;
    return square / (firstPart() + at) + square / (secondPart() + rest());
  }

  /**
   * The tension before the force was put on, from the stiffness of the line: T − k·detour, the ends
   * being fixed and the line stretching in proportion.
   *
   * @param stiffness force per stretch k of the line between its ends in N/m, 0 or more: for a rope
   *     its axial stiffness E·A divided by its length
   * @return in N, 0 or more; empty if the line hung slack before
   * @throws ModelException if the stiffness is negative or not finite
   */
  public OptionalDouble tensionBefore(double stiffness) {
    double before = tension() - HaulCheck.notNegative(PART, "stiffness", stiffness) * detour();
    return before >= 0 ? OptionalDouble.of(before) : OptionalDouble.empty();
  }

  /**
   * The tension with its error from the errors of measuring, to first order by the derivatives of T
   * = F / (sin α + sin β). For errors that are not small beside what is measured, and that of a
   * small deflection above all, the true error is greater.
   *
   * @param errors errors of what was measured
   * @return the tension and what each error adds
   * @throws ModelException if an error is as large as what was measured
   */
  public Estimate estimate(Errors errors) {
    below("error of force", errors.force(), force);
    below("error of span", errors.span(), span);
    below("error of place along the span", errors.at(), Math.min(at, rest()));
    below("error of deflection", errors.deflection(), deflection);
    double first = Math.pow(firstPart(), 3);
    double second = Math.pow(secondPart(), 3);
    // how sin α + sin β changes by d, by a with L kept, and by L with a kept, where it falls
    double byDeflection = at * at / first + rest() * rest() / second;
    double byPlace = deflection * (rest() / second - at / first);
    double bySpan = deflection * rest() / second;
    double steepness = force / (sines() * sines());
    return new Estimate(
        tension(),
        errors.force() / sines(),
        errors.span() * steepness * bySpan,
        errors.at() * steepness * Math.abs(byPlace),
        errors.deflection() * steepness * byDeflection);
  }

  private static void below(String field, double error, double measured) {
    if (error >= measured) {
      throw new ModelException(PART, field, error, "less than what was measured, " + measured);
    }
  }

  /**
   * The tensions of the two parts.
   *
   * @param first in the part to the first end, in N
   * @param second in the part to the second end, in N
   */
  public record PartTensions(double first, double second) {}

  /**
   * Errors of measuring, each as plus or minus.
   *
   * @param force of the sideways force in N, 0 or more
   * @param span of the span in m, 0 or more
   * @param at of the place along the span in m, 0 or more; in the middle it does not count to first
   *     order
   * @param deflection of the deflection in m, 0 or more
   */
  public record Errors(double force, double span, double at, double deflection) {

    /**
     * Checks the fields.
     *
     * @param force of the sideways force in N, 0 or more
     * @param span of the span in m, 0 or more
     * @param at of the place along the span in m, 0 or more
     * @param deflection of the deflection in m, 0 or more
     * @throws ModelException if an error is negative or not finite
     */
    public Errors {
      force = HaulCheck.notNegative(PART, "error of force", force);
      span = HaulCheck.notNegative(PART, "error of span", span);
      at = HaulCheck.notNegative(PART, "error of place along the span", at);
      deflection = HaulCheck.notNegative(PART, "error of deflection", deflection);
    }
  }

  /**
   * A tension with its error.
   *
   * @param tension in N, with the deflection in place
   * @param fromForce what the error of the force adds, in N, 0 or more
   * @param fromSpan what the error of the span adds, in N, 0 or more
   * @param fromPlace what the error of the place along the span adds, in N, 0 or more
   * @param fromDeflection what the error of the deflection adds, in N, 0 or more
   */
  public record Estimate(
      double tension, double fromForce, double fromSpan, double fromPlace, double fromDeflection) {

    /**
     * The error if those of measuring are independent: the root of the sum of squares.
     *
     * @return plus or minus, in N
     */
    public double likelyError() {
      return Math.hypot(Math.hypot(fromForce, fromSpan), Math.hypot(fromPlace, fromDeflection));
    }

    /**
     * The error if all those of measuring fall together to the same side: their sum.
     *
     * @return plus or minus, in N
     */
    public double worstError() {
      return fromForce + fromSpan + fromPlace + fromDeflection;
    }
  }
}
