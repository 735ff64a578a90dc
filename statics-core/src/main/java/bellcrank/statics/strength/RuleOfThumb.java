package bellcrank.statics.strength;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;

/**
 * Rules of thumb for ropes, chains and shackles without a tag: a number times the square of the
 * diameter or of the girth. They are rough, differ from tables by a factor of up to three, and
 * stand apart from them; nothing uses them by itself.
 */
public enum RuleOfThumb {
  /** Shackles by the diameter at the bow, in inches. */
  SHACKLE(
      "working load = 3·D² short tons, D in in",
      "3 tonf-US",
      "1 in",
      false,
      "NAVEDTRA 14251 Steelworker, ch. 6",
      "For shackles of any make: about a third of the federal rating."),
  /** Shackles by the diameter at the bow, in centimetres. */
  SHACKLE_METRIC(
      "working load = 0.417·D² tonnes, D in cm",
      "0.417 tf",
      "1 cm",
      false,
      "NAVEDTRA 14251 Steelworker, ch. 6, metric rule",
      "As printed; 3 short tons per square inch are 0.4218, so it is 1.1 % low."),
  /** Common open-link chain by the diameter of the link. */
  OPEN_LINK_CHAIN(
      "working load = 8·D² short tons, D in in",
      "8 tonf-US",
      "1 in",
      false,
      "FM 5-125 (1995), ch. 3",
      "With a factor of 6, for common chain; alloy chain has its own table."),
  /** Breaking strength of manila by its girth. */
  MANILA_BREAKING(
      "breaking strength = 900·C² lbf, C the circumference in in",
      "900 lbf",
      "1 in",
      true,
      "NAVEDTRA 14043 Builder 3 and 2, vol. 1, ch. 4",
      "Breaking strength, by the circumference, not the diameter."),
  /** Breaking strength of nylon by its girth. */
  NYLON_BREAKING(
      "breaking strength = 2400·C² lbf, C the circumference in in",
      "2400 lbf",
      "1 in",
      true,
      "NAVEDTRA 14043 Builder 3 and 2, vol. 1, ch. 4",
      "Breaking strength, by the circumference, not the diameter."),
  /** Flexible steel wire rope by its diameter. */
  FLEXIBLE_WIRE_ROPE(
      "working load = 8·D² kilograms, D in mm",
      "8 kgf",
      "1 mm",
      false,
      "public rigging sheet (Australian practice)",
      "Working load of a new rope, straight."),
  /** Breaking strength of fibre rope by its diameter. */
  FIBRE_ROPE_BREAKING(
      "breaking strength = D²/200 tonnes, D in mm",
      "0.005 tf",
      "1 mm",
      false,
      "public rigging sheet (Australian practice)",
      "Breaking strength; the sheet takes a factor of 6 and rounds between.");

  private final String formula;
  private final double coefficient;
  private final double unit;
  private final boolean girth;
  private final String source;
  private final String caution;

  RuleOfThumb(
      String formula, String load, String unit, boolean girth, String source, String caution) {
    this.formula = formula;
    this.coefficient = Quantity.parse(load, Dimension.FORCE).si();
    this.unit = Quantity.parse(unit, Dimension.LENGTH).si();
    this.girth = girth;
    this.source = source;
    this.caution = caution;
  }

  /**
   * The load by the rule: a working load or a breaking strength, as the rule says.
   *
   * @param diameter diameter in m, above 0; the girth is worked out where the rule takes that
   * @return in N, above 0
   * @throws bellcrank.statics.device.ModelException if the diameter is not above 0
   */
  public double load(double diameter) {
    SectionLength.below("rule of thumb", "diameter", diameter, 1, "; in m, not the circumference");
    double size = girth ? Math.PI * diameter : diameter;
    return coefficient * (size / unit) * (size / unit);
  }

  /**
   * Whether the rule tells the breaking strength, from which a factor still has to be taken.
   *
   * @return false if it tells a working load
   */
  public boolean isBreaking() {
    return formula.startsWith("breaking");
  }

  /**
   * The rule as a formula.
   *
   * @return one line of text
   */
  public String formula() {
    return formula;
  }

  /**
   * Where the rule stands.
   *
   * @return document and place
   */
  public String source() {
    return source;
  }

  /**
   * What to mind when using it.
   *
   * @return one sentence
   */
  public String caution() {
    return caution;
  }
}
