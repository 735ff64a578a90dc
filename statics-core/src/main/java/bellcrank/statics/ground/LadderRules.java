package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import java.util.List;

/**
 * Published rules for ladders. A leaning ladder is set up with its foot a quarter of the working
 * length from the line of its top support. The quarter is of the length along the ladder, so the
 * angle has a cosine, not a cotangent, of a quarter.
 */
public final class LadderRules {

  private static final double QUARTER = 0.25;

  private static final String FIGURES =
      """
      @source 29 CFR 1926.1053(b)(5)(i)
      @note For construction. From memory: general industry dropped the rule in 2017.
      foot distance per working length | NUMBER | 0.25
      @source 29 CFR 1926.1053(a)(1)(ii)
      @note From the horizontal; the rule of the quarter, rounded.
      angle of the load test | ANGLE | 75.5 deg
      @source 29 CFR 1926.1053(a)(1)(i)
      @note Leaning ladders are loaded vertically at the angle of the load test. Type 1A is \
      extra-heavy-duty.
      strength of a portable ladder per intended load | NUMBER | 4
      strength of a type 1A portable ladder per intended load | NUMBER | 3.3
      @source 29 CFR 1926.1053(a)(1)(iii)
      @note Two of them between neighbouring attachments, and one on each step.
      concentrated load on a fixed ladder | FORCE | 250 lbf
      """;

  private static final FigureTable<CitedValue> TABLE =
      FigureTable.of("ladder rules", FIGURES, FigureLine::cited);

  private LadderRules() {}

  /**
   * All rows.
   *
   * @return the rows
   */
  public static List<CitedValue> rows() {
    return TABLE.rows();
  }

  /**
   * The row of a name.
   *
   * @param name the exact name of a row, such as {@code foot distance per working length}
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public static CitedValue named(String name) {
    return TABLE.named(name);
  }

  /**
   * How far the foot of a leaning ladder stands from the line of its top support: a quarter of the
   * working length. Source: 29 CFR 1926.1053(b)(5)(i).
   *
   * @param workingLength length along the ladder from its foot to its top support in m, above 0
   * @return in m, above 0
   * @throws ModelException if the length is not above 0
   */
  public static double footDistance(double workingLength) {
    return QUARTER * Check.positive("ladder", "working length", workingLength);
  }

  /**
   * The angle of a ladder that is set up so, from the level of its foot: arccos ¼, about 75.5°.
   *
   * @return in rad
   */
  public static double leaningAngle() {
    return Math.acos(QUARTER);
  }
}
