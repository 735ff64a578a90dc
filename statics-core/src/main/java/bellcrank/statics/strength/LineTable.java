package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.ground.FigureLine;
import bellcrank.statics.ground.FigureTable;
import bellcrank.statics.ground.Span;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * Published strengths of chains, ropes, shackles and turnbuckles for a straight pull, and the
 * shares that ends and side pull leave of them. The user chooses a row by its name; there is no
 * default. The tag or certificate of the piece itself goes before any table.
 */
public final class LineTable {

  /** Name, kind, size, breaking strength, working load, factor. */
  private static final String FIGURES =
      """
      @source OSHA, Safe Sling Use, Table 1 (Grade 80); follows ASME B30.9
      @note One leg, straight.
      Grade 80 chain 9/32 in | CHAIN | 9/32 in | - | 3500 lbf
      Grade 80 chain 3/8 in | CHAIN | 3/8 in | - | 7100 lbf
      Grade 80 chain 1/2 in | CHAIN | 1/2 in | - | 12000 lbf
      Grade 80 chain 5/8 in | CHAIN | 5/8 in | - | 18100 lbf
      Grade 80 chain 1 in | CHAIN | 1 in | - | 47700 lbf
      @source public engineering table of 6x19 improved plough steel wire rope with fibre core
      @note Ends and bends take from it. A core of steel makes it about 7 % stronger.
      wire rope 6x19 fibre core 3/8 in | WIRE_ROPE | 3/8 in | 12200 lbf | - | 5
      wire rope 6x19 fibre core 1/2 in | WIRE_ROPE | 1/2 in | 21400 lbf | - | 5
      wire rope 6x19 fibre core 3/4 in | WIRE_ROPE | 3/4 in | 47600 lbf | - | 5
      wire rope 6x19 fibre core 1 in | WIRE_ROPE | 1 in | 83600 lbf | - | 5
      wire rope 6x19 fibre core 1 5/8 in | WIRE_ROPE | 1 5/8 in | 214000 lbf | - | 5
      @source 29 CFR 1918, Appendix II, Table 2
      @note Eye-and-eye sling, vertical; to be used where there is no certificate.
      natural fibre rope sling 3/4 in | FIBRE_ROPE | 3/4 in | - | 1100 lbf
      natural fibre rope sling 1 in | FIBRE_ROPE | 1 in | - | 1800 lbf
      @source RR-C-271D (1990), as used in a utility's material standard; superseded by later issues
      @note Round-pin anchor shackles, straight pull. Makers state 6 on the same working load, that \
      utility takes 4.
      shackle 1/2 in (RR-C-271) | SHACKLE | 1/2 in | 20000 lbf | - | 5
      shackle 5/8 in (RR-C-271) | SHACKLE | 5/8 in | 32500 lbf | - | 5
      shackle 3/4 in (RR-C-271) | SHACKLE | 3/4 in | 47500 lbf | - | 5
      @source shackle maker's table to EN 13889, grade 6
      @note Bow shackles, straight pull, metric tons: the federal sizes have the same numbers in \
      short tons.
      shackle 11 mm (EN 13889) | SHACKLE | 11 mm | - | 1.5 tf | 6
      shackle 13 mm (EN 13889) | SHACKLE | 13 mm | - | 2 tf | 6
      shackle 16 mm (EN 13889) | SHACKLE | 16 mm | - | 3.25 tf | 6
      shackle 19 mm (EN 13889) | SHACKLE | 19 mm | - | 4.75 tf | 6
      shackle 22 mm (EN 13889) | SHACKLE | 22 mm | - | 6.5 tf | 6
      shackle 25 mm (EN 13889) | SHACKLE | 25 mm | - | 8.5 tf | 6
      @source AASHTO M 269-77, Table 2
      @note Forged turnbuckles, straight pull.
      turnbuckle 3/4 in | TURNBUCKLE | 3/4 in | 20000 lbf | - | 5
      turnbuckle 1 in | TURNBUCKLE | 1 in | 38000 lbf | - | 5
      turnbuckle 1 1/2 in | TURNBUCKLE | 1 1/2 in | 85000 lbf | - | 5
      """;

  private static final String OLD =
      """
      @source former 29 CFR 1910.184 Table N-184-1 (removed 2011) and 1926.251 Table H-1 (removed \
      2012), as kept in an Ohio rule
      @note Superseded: the federal rule now refers to the tag of the sling.
      alloy chain 3/8 in (to 2011) | CHAIN | 3/8 in | - | 6600 lbf
      alloy chain 1/2 in (to 2011) | CHAIN | 1/2 in | - | 11250 lbf
      @source former 29 CFR 1926.251 Table H-19 and 1915.118 Table G-10 (removed 2011 to 2012)
      @memory
      @note Superseded, and recalled only. The numbers follow 5.6 times the square of the diameter.
      shackle 1/2 in (to 2011) | SHACKLE | 1/2 in | - | 1.4 tonf-US
      shackle 5/8 in (to 2011) | SHACKLE | 5/8 in | - | 2.2 tonf-US
      shackle 3/4 in (to 2011) | SHACKLE | 3/4 in | - | 3.2 tonf-US
      shackle 7/8 in (to 2011) | SHACKLE | 7/8 in | - | 4.3 tonf-US
      shackle 1 in (to 2011) | SHACKLE | 1 in | - | 5.6 tonf-US
      """;

  private static final String SHARES =
      """
      @source TM 5-3810-305-10, Table 4
      @note Share of the nominal strength of a wire rope with steel core that its end leaves. With \
      a fibre core a mechanical splice leaves 92.5 %.
      rope end: poured socket | NUMBER | 100 %
      rope end: swaged socket | NUMBER | 95 %
      rope end: mechanical splice, up to 1 in | NUMBER | 95 %
      rope end: hand-tucked splice, 1/2 in | NUMBER | 86 %
      rope end: wedge socket | NUMBER | 75 % to 95 %
      rope end: clips | NUMBER | 80 %
      @source 30 CFR 57.19025(a)
      @note What the attachment must keep at least, in hoists for people.
      rope end: least share on hoists for people | NUMBER | 80 %
      @source shackle maker's table to EN 13889, grade 6
      @note Share of the working load that is left; more than 90 degrees is not allowed. From \
      memory: practice of ASME B30.26.
      shackle pulled sideways at 45 degrees | NUMBER | 70 %
      shackle pulled sideways at 90 degrees | NUMBER | 50 %
      @source 29 CFR 1918, Appendix II, Table 2
      @note 75 to 80 % for slings of other kinds.
      natural fibre rope sling as a choker | NUMBER | 50 %
      @source ASME B30.9 (2018 and earlier), chapters 9-1 to 9-5
      @memory
      @note Least ratio of breaking strength and rated load.
      design factor of slings: alloy chain | NUMBER | 4
      design factor of slings: wire rope | NUMBER | 5
      design factor of slings: metal mesh | NUMBER | 5
      design factor of slings: synthetic fibre rope | NUMBER | 5
      design factor of slings: synthetic web | NUMBER | 5
      design factor of slings: roundsling | NUMBER | 5
      """;

  private static final FigureTable<LineRow> TABLE =
      FigureTable.of("line table", FIGURES, LineTable::row);
  private static final FigureTable<LineRow> SUPERSEDED =
      FigureTable.of("superseded lines", OLD, LineTable::row);
  private static final FigureTable<CitedValue> FACTORS =
      FigureTable.of("line factors", SHARES, FigureLine::cited);

  private LineTable() {}

  /**
   * All rows that hold today.
   *
   * @return the rows, source by source
   */
  public static List<LineRow> rows() {
    return TABLE.rows();
  }

  /**
   * Rows whose documents have been withdrawn, to be recognised where they are met.
   *
   * @return the rows, source by source
   */
  public static List<LineRow> superseded() {
    return SUPERSEDED.rows();
  }

  /**
   * What rope ends, side pull and hitches leave of the strength, and design factors.
   *
   * @return the rows, source by source
   */
  public static List<CitedValue> factors() {
    return FACTORS.rows();
  }

  /**
   * The row of a name.
   *
   * @param name the exact name of a row, such as {@code Grade 80 chain 3/8 in}
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public static LineRow named(String name) {
    return TABLE.named(name);
  }

  /**
   * The factor of a name.
   *
   * @param name the exact name of a row, such as {@code rope end: clips}
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public static CitedValue factor(String name) {
    return FACTORS.named(name);
  }

  private static LineRow row(FigureLine line) {
    Optional<Double> factor = line.ifGiven(5, Dimension.NUMBER).map(Span::low);
    return new LineRow(
        line.name(),
        LineRow.Kind.valueOf(line.cells().get(1)),
        line.span(2, Dimension.LENGTH).low(),
        line.ifGiven(3, Dimension.FORCE).map(Span::low),
        line.ifGiven(4, Dimension.FORCE).map(Span::low),
        factor,
        line.source(),
        line.basis(),
        line.note());
  }
}
