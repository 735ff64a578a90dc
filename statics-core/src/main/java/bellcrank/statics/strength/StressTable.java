package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.ground.FigureLine;
import bellcrank.statics.ground.FigureTable;
import java.util.List;

/** Published coefficients for pins, bolts and columns. */
public final class StressTable {

  private static final String FIGURES =
      """
      @source AISC 360-16, J7(a), Eq. J7-1
      @memory
      @note The coefficient agrees with the numbers of Example D.7.
      pin bearing coefficient (AISC) | NUMBER | 1.8
      pin bearing resistance factor (AISC) | NUMBER | 0.75
      pin bearing safety factor (AISC) | NUMBER | 2.00
      @source EN 1993-1-8 (2005), Table 3.10 and Eq. 3.15 to 3.16
      @note Shear goes with the ultimate strength of the pin, all others with a yield strength. The \
      values for use are for pins that are meant to be taken out.
      pin shear coefficient (EN 1993-1-8) | NUMBER | 0.6
      pin bearing coefficient (EN 1993-1-8) | NUMBER | 1.5
      pin bearing coefficient in use (EN 1993-1-8) | NUMBER | 0.6
      pin bending coefficient (EN 1993-1-8) | NUMBER | 1.5
      pin bending coefficient in use (EN 1993-1-8) | NUMBER | 0.8
      pin contact coefficient (EN 1993-1-8) | NUMBER | 0.591
      pin contact limit (EN 1993-1-8) | NUMBER | 2.5
      @source EN 1993-1-1 (2005), Table 6.1
      @note Hot-finished tubes of S235 to S420 curve a, cold-formed tubes curve c.
      imperfection of buckling curve a0 | NUMBER | 0.13
      imperfection of buckling curve a | NUMBER | 0.21
      imperfection of buckling curve b | NUMBER | 0.34
      imperfection of buckling curve c | NUMBER | 0.49
      imperfection of buckling curve d | NUMBER | 0.76
      @source IS 800 (2007), Table 11, in a public exam answer
      effective length: both ends fixed (IS 800) | NUMBER | 0.65
      effective length: one end fixed, one hinged (IS 800) | NUMBER | 0.80
      effective length: one end fixed, one may shift (IS 800) | NUMBER | 1.2
      effective length: both ends hinged (IS 800) | NUMBER | 1.0
      effective length: one end fixed, one partly held and may shift (IS 800) | NUMBER | 1.5
      effective length: one end fixed, one free (IS 800) | NUMBER | 2.0
      effective length: one end hinged, one may shift (IS 800) | NUMBER | 2.0
      """;

  private static final String OLD =
      """
      @source BS 5950-1 in a pocket book; withdrawn 2010
      @note Superseded by EN 1993-1-1.
      effective length: both ends fixed (BS 5950) | NUMBER | 0.70
      effective length: one end fixed, one hinged (BS 5950) | NUMBER | 0.85
      effective length: both ends hinged (BS 5950) | NUMBER | 1.00
      effective length: one end fixed, one held in direction only (BS 5950) | NUMBER | 1.50
      effective length: one end fixed, one free (BS 5950) | NUMBER | 2.00
      """;

  private static final FigureTable<CitedValue> TABLE =
      FigureTable.of("stress table", FIGURES, FigureLine::cited);
  private static final FigureTable<CitedValue> SUPERSEDED =
      FigureTable.of("superseded figures", OLD, FigureLine::cited);

  private StressTable() {}

  /**
   * All rows that hold today.
   *
   * @return the rows, source by source
   */
  public static List<CitedValue> rows() {
    return TABLE.rows();
  }

  /**
   * Rows whose documents have been withdrawn, to be recognised where they are met.
   *
   * @return the rows, source by source
   */
  public static List<CitedValue> superseded() {
    return SUPERSEDED.rows();
  }

  /**
   * The row of a name.
   *
   * @param name the exact name of a row, such as {@code imperfection of buckling curve c}
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public static CitedValue named(String name) {
    return TABLE.named(name);
  }
}
