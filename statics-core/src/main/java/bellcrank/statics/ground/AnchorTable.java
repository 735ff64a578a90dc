package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import java.util.List;

/**
 * Published holding power of things in the ground that a guy line is made fast to: buried beams
 * (deadmen), in Pa of the face that bears, and driven pickets, in N.
 */
public final class AnchorTable {

  private static final String FIGURES =
      """
      @source TM 5-5420-278-10, WP 0035, Table 9
      @note Loamy soil; the factors are for other ground. Mean depth of the face; the slope of \
      the line is rise to run.
      deadman 3 ft deep, line 1:1 | PRESSURE | 950 psf
      deadman 3 ft deep, line 1:2 | PRESSURE | 1300 psf
      deadman 3 ft deep, line 1:3 | PRESSURE | 1450 psf
      deadman 3 ft deep, line 1:4 | PRESSURE | 1500 psf
      deadman 4 ft deep, line 1:1 | PRESSURE | 1750 psf
      deadman 4 ft deep, line 1:2 | PRESSURE | 2200 psf
      deadman 4 ft deep, line 1:3 | PRESSURE | 2600 psf
      deadman 4 ft deep, line 1:4 | PRESSURE | 2700 psf
      deadman 5 ft deep, line 1:1 | PRESSURE | 2800 psf
      deadman 5 ft deep, line 1:2 | PRESSURE | 3600 psf
      deadman 5 ft deep, line 1:3 | PRESSURE | 4000 psf
      deadman 5 ft deep, line 1:4 | PRESSURE | 4100 psf
      deadman 6 ft deep, line 1:1 | PRESSURE | 3800 psf
      deadman 6 ft deep, line 1:2 | PRESSURE | 5100 psf
      deadman 6 ft deep, line 1:3 | PRESSURE | 5800 psf
      deadman 6 ft deep, line 1:4 | PRESSURE | 6000 psf
      deadman 7 ft deep, line 1:1 | PRESSURE | 5100 psf
      deadman 7 ft deep, line 1:2 | PRESSURE | 7000 psf
      deadman 7 ft deep, line 1:3 | PRESSURE | 8000 psf
      deadman 7 ft deep, line 1:4 | PRESSURE | 8400 psf
      deadman factor in hardpan or rock | NUMBER | 5
      deadman factor in wet fine soil | NUMBER | 0.5
      @source Australian Emergency Manual: Disaster Rescue, 8.3
      @note Working load, printed as 350 kg, here times standard gravity. Each further picket adds \
      as much, in ordinary soil up to about 2 tonnes. Driven at 45 degrees.
      steel picket 1.5 m by 25 mm in good ground | FORCE | 350 kgf
      """;

  private static final FigureTable<CitedValue> TABLE =
      FigureTable.of("anchor table", FIGURES, FigureLine::cited);

  private AnchorTable() {}

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
   * @param name the exact name of a row, such as {@code deadman 4 ft deep, line 1:3}
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public static CitedValue named(String name) {
    return TABLE.named(name);
  }
}
