package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.List;

/**
 * Pressures that published tables allow for kinds of ground. The tables differ by a factor of two
 * for what may be the same ground, so the user chooses a row by its name and there is no default.
 */
public final class SoilTable {

  /** Kind, pressure, lateral pressure per foot of depth, friction, cohesion. */
  private static final String FIGURES =
      """
      @source IBC 2012, Table 1806.2, as reprinted in a handbook
      @note Numbered 1804.2 up to IBC 2006. A third more is allowed only with the alternative load \
      combinations that include wind or earthquake. From memory: cohesion counts for at most half \
      the dead load.
      IBC 2012: sedimentary and foliated rock | 4000 psf | 400 psf | 0.35
      IBC 2012: sandy gravel and gravel | 3000 psf | 200 psf | 0.35
      IBC 2012: sand, silty or clayey sand and gravel | 2000 psf | 150 psf | 0.25
      IBC 2012: clay, sandy or silty clay, silt | 1500 psf | 100 psf | - | 130 psf
      @source table of allowable bearing pressures on Canadian house plans, edition not stated
      @note The code is not named there; from memory: National Building Code, Part 9. For small \
      buildings.
      Canadian house plans: dense sand or gravel | 150 kPa
      Canadian house plans: loose sand or gravel | 50 kPa
      Canadian house plans: dense silt | 100 kPa
      Canadian house plans: stiff clay | 150 kPa
      Canadian house plans: firm clay | 75 kPa
      Canadian house plans: soft clay | 40 kPa
      Canadian house plans: till | 200 kPa
      Canadian house plans: clay shale | 300 kPa
      Canadian house plans: sound rock | 500 kPa
      """;

  private static final double FOOT = Quantity.parse("1 ft", Dimension.LENGTH).si();

  private static final FigureTable<SoilRow> TABLE =
      FigureTable.of("soil table", FIGURES, SoilTable::row);

  private SoilTable() {}

  /**
   * All rows.
   *
   * @return the rows, source by source
   */
  public static List<SoilRow> rows() {
    return TABLE.rows();
  }

  /**
   * The row of a name.
   *
   * @param name the exact name of a row, such as {@code Canadian house plans: firm clay}
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public static SoilRow named(String name) {
    return TABLE.named(name);
  }

  private static SoilRow row(FigureLine line) {
    return new SoilRow(
        line.name(),
        line.span(1, Dimension.PRESSURE),
        line.ifGiven(2, Dimension.PRESSURE).map(SoilTable::perMetre),
        line.ifGiven(3, Dimension.NUMBER),
        line.ifGiven(4, Dimension.PRESSURE),
        line.source(),
        line.basis(),
        line.note());
  }

  private static Span perMetre(Span perFoot) {
    return Span.of(perFoot.low() / FOOT, perFoot.high() / FOOT);
  }
}
