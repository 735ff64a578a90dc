package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import java.util.List;

/**
 * Published coefficients of friction. They differ by a factor of five for the same pair: cleaned
 * test pieces, surfaces as found, and values for design. So the user chooses a row by its name,
 * takes the low end where slipping does harm and the high end where sticking does, and there is no
 * default.
 */
public final class FrictionTable {

  /** Pair and table, static coefficient, kinetic coefficient. */
  private static final String FIGURES =
      """
      @source NAVFAC DM-7.02 (1986), Chapter 3, Table 1; ETL 1110-3-446 (1992), Table C-1
      @note Ultimate values of concrete cast against the ground; formed concrete has less.
      concrete on clean sound rock (NAVFAC) | 0.70
      concrete on clean gravel or coarse sand (NAVFAC) | 0.55 to 0.60
      concrete on fine to medium sand or silty gravel (NAVFAC) | 0.45 to 0.55
      concrete on fine or silty sand (NAVFAC) | 0.35 to 0.45
      concrete on sandy or nonplastic silt (NAVFAC) | 0.30 to 0.35
      concrete on very stiff to hard clay (NAVFAC) | 0.40 to 0.50
      concrete on medium to stiff clay (NAVFAC) | 0.30 to 0.35
      @source IMO/ILO/UNECE CTU Code (2014), Annex 7, Appendix 2
      @note Design values for swept surfaces, dry or wet; kinetic is 75 % of static as it says.
      sawn timber on plywood (CTU Code) | 0.45 | 0.3375
      sawn timber on grooved aluminium (CTU Code) | 0.40 | 0.30
      sawn timber on stainless sheet (CTU Code) | 0.30 | 0.225
      planed timber on plywood (CTU Code) | 0.30 | 0.225
      planed timber on grooved aluminium (CTU Code) | 0.25 | 0.1875
      planed timber on stainless sheet (CTU Code) | 0.20 | 0.15
      steel on steel, rough, unpainted (CTU Code) | 0.4 | 0.3
      steel on steel, rough, painted (CTU Code) | 0.3 | 0.225
      steel on steel, smooth (CTU Code) | 0.2 | 0.15
      rough concrete on sawn timber (CTU Code) | 0.7 | 0.525
      @source handbook friction table, as compiled in an open physics wiki
      @note Clean laboratory surfaces: high for design.
      mild steel on mild steel, dry (handbook) | 0.74 | 0.57
      hard steel on hard steel, dry (handbook) | 0.78 | 0.42
      aluminium on mild steel, dry (handbook) | 0.61 | 0.47
      timber on timber, dry (handbook) | 0.25 to 0.5
      timber on metal, dry (handbook) | 0.2 to 0.6
      timber on timber or metal, wet (handbook) | 0.2
      timber on concrete, dry (handbook) | 0.62
      @source friction tests of the 19th century
      @memory
      oak on oak along the grain, dry (old tests) | 0.62
      @source engineering guide of a drive maker, formula bank, Table 7.21
      @note Wide ranges for machine design.
      steel on steel, dry (machine design) | 0.12 to 0.60
      steel on timber, dry (machine design) | 0.45 to 0.75
      timber on timber, dry (machine design) | 0.40 to 0.75
      steel on steel, greased (machine design) | 0.12 to 0.35
      @source friction appendix of an open college physics text
      @note Teaching values.
      cast iron on oak, dry (college physics) | 0.49
      brick on timber (college physics) | 0.6
      tyre on asphalt (college physics) | 0.72
      tyre on grass (college physics) | 0.35
      bronze on steel, greased (college physics) | 0.16
      cast iron on cast iron, dry (college physics) | 1.1 | 0.15
      @source coefficient table of introductory physics
      @note Teaching values.
      rubber on concrete, dry (introductory physics) | 1.0 | 0.7
      rubber on concrete, wet (introductory physics) | 0.7 | 0.5
      @source Aira et al., Materiales de Construcción: friction of Scots pine
      @note Smooth test surfaces: far below the usual textbook values.
      Scots pine on itself, end grain (timber tests) | 0.24 | 0.17
      Scots pine on itself, radial face along the grain (timber tests) | 0.12 | 0.08
      """;

  private static final FigureTable<FrictionRow> TABLE =
      FigureTable.of("friction table", FIGURES, FrictionTable::row);

  private FrictionTable() {}

  /**
   * All rows.
   *
   * @return the rows, source by source
   */
  public static List<FrictionRow> rows() {
    return TABLE.rows();
  }

  /**
   * The row of a name.
   *
   * @param name the exact name of a row, such as {@code sawn timber on plywood (CTU Code)}
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public static FrictionRow named(String name) {
    return TABLE.named(name);
  }

  private static FrictionRow row(FigureLine line) {
    return new FrictionRow(
        line.name(),
        line.span(1, Dimension.NUMBER),
        line.ifGiven(2, Dimension.NUMBER),
        line.source(),
        line.basis(),
        line.note());
  }
}
