package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.ground.FigureLine;
import bellcrank.statics.ground.FigureTable;
import java.util.List;

/**
 * Published figures for fillet welds. European sizes are throats, American ones legs; a leg is 1.41
 * throats.
 */
public final class WeldTable {

  private static final double HALF = 0.5;
  private static final double POWER = 1.5;

  private static final String FIGURES =
      """
      @source AISC 360, J2.2a; EN 1993-1-8, 4.5.2
      @note Legs of equal length.
      throat per leg | NUMBER | 0.707
      @source AISC Design Examples V14.0, Example J.1
      E70 electrode, tensile strength | PRESSURE | 70 ksi
      shear strength of weld metal per tensile strength | NUMBER | 0.60
      resistance factor of fillet welds (AISC) | NUMBER | 0.75
      @source AISC Manual, Part 8, Eq. 8-2a and 8-2b
      @memory
      @note Per length, for each sixteenth of an inch of leg, pulled along.
      E70 fillet weld per 1/16 in of leg, with load factors | FORCE_PER_LENGTH | 1.392 kip/in
      E70 fillet weld per 1/16 in of leg, allowable | FORCE_PER_LENGTH | 0.928 kip/in
      @source EN 1993-1-8 (2005), Table 4.1 and 2.2
      @memory
      @note Correlation factor by the grade of the weaker part.
      correlation factor S235 | NUMBER | 0.8
      correlation factor S275 | NUMBER | 0.85
      correlation factor S355 | NUMBER | 0.9
      partial factor of welds (EN 1993-1-8) | NUMBER | 1.25
      @source CSA S16-14, 13.13.2.2, example in a steel institute's note
      @note Shear share 0.67 too. The lower strength of longer seams beside crosswise ones counts.
      resistance factor of fillet welds (CSA S16) | NUMBER | 0.67
      share of a lengthwise seam beside one at 60 degrees (CSA S16) | NUMBER | 0.895
      """;

  private static final FigureTable<CitedValue> TABLE =
      FigureTable.of("weld table", FIGURES, FigureLine::cited);

  private WeldTable() {}

  /**
   * All rows.
   *
   * @return the rows, source by source
   */
  public static List<CitedValue> rows() {
    return TABLE.rows();
  }

  /**
   * The row of a name.
   *
   * @param name the exact name of a row, such as {@code correlation factor S355}
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public static CitedValue named(String name) {
    return TABLE.named(name);
  }

  /**
   * The throat of a fillet weld with equal legs, leg/√2. Source: AISC 360, J2.2a.
   *
   * @param leg length of a leg in m, above 0
   * @return in m
   * @throws ModelException if the leg is not above 0
   */
  public static double throat(double leg) {
    return SectionLength.below("weld", "leg", leg, 1, "; in m") / Math.sqrt(2);
  }

  /**
   * How much stronger a fillet weld is when it is not pulled along, 1 + 0.5·sin^1.5 θ. Not for
   * welds at hollow sections whose walls give way first, and not freely for groups of seams with
   * different directions. Source: AISC 360, J2.4.
   *
   * @param angle angle between force and seam in rad, 0 to π/2, bounds included
   * @return 1 (along) to 1.5 (across)
   * @throws ModelException if the angle is out of its range
   */
  public static double directionalFactor(double angle) {
    if (!(angle >= 0 && angle <= Math.PI / 2)) {
      throw new ModelException("weld", "angle", angle, "an angle in rad from 0 to π/2");
    }
    return 1 + HALF * Math.pow(Math.sin(angle), POWER);
  }
}
