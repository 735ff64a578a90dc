package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.ground.FigureLine;
import bellcrank.statics.ground.FigureTable;
import bellcrank.statics.ground.Span;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Published strengths of materials. The user chooses a row by its name; there is no default. A
 * material of one's own is made as a {@link Material} and counts as much.
 */
public final class MaterialTable {

  /** Grade, kind, E, mass of a cubic metre, then the strengths for each thickness. */
  private static final String FIGURES =
      """
      @source BS EN 10025-2 (2004), Table 7; E from EN 1993-1-1 (2005), 3.2.6
      @note Least yield strength; tensile range for 3 to 100 mm. From memory: the density, and that \
      an edition of 2019 exists.
      S235 (EN 10025-2) | STEEL | 210 GPa | 7850 kg | up to 16 mm, yield 235 MPa, ultimate 360 MPa \
      to 510 MPa | up to 40 mm, yield 225 MPa, ultimate 360 MPa to 510 MPa | up to 100 mm, yield \
      215 MPa, ultimate 360 MPa to 510 MPa
      S275 (EN 10025-2) | STEEL | 210 GPa | 7850 kg | up to 16 mm, yield 275 MPa, ultimate 410 MPa \
      to 560 MPa | up to 40 mm, yield 265 MPa, ultimate 410 MPa to 560 MPa | up to 63 mm, yield \
      255 MPa, ultimate 410 MPa to 560 MPa | up to 80 mm, yield 245 MPa, ultimate 410 MPa to 560 \
      MPa | up to 100 mm, yield 235 MPa, ultimate 410 MPa to 560 MPa
      S355 (EN 10025-2) | STEEL | 210 GPa | 7850 kg | up to 16 mm, yield 355 MPa, ultimate 470 MPa \
      to 630 MPa | up to 40 mm, yield 345 MPa, ultimate 470 MPa to 630 MPa | up to 63 mm, yield \
      335 MPa, ultimate 470 MPa to 630 MPa | up to 80 mm, yield 325 MPa, ultimate 470 MPa to 630 \
      MPa | up to 100 mm, yield 315 MPa, ultimate 470 MPa to 630 MPa
      @source EN 1993-1-1 (2005) with AC2 (2009), Table 3.1
      @note Simplified values for design. The national annex may ask for those of EN 10025-2. From \
      memory: the density, and the ultimate strength of S235 beyond 40 mm.
      S235 (EN 1993-1-1) | STEEL | 210 GPa | 7850 kg | up to 40 mm, yield 235 MPa, ultimate 360 MPa \
      | up to 80 mm, yield 215 MPa, ultimate 360 MPa
      S275 (EN 1993-1-1) | STEEL | 210 GPa | 7850 kg | up to 40 mm, yield 275 MPa, ultimate 430 MPa \
      | up to 80 mm, yield 255 MPa, ultimate 410 MPa
      S355 (EN 1993-1-1) | STEEL | 210 GPa | 7850 kg | up to 40 mm, yield 355 MPa, ultimate 490 MPa \
      | up to 80 mm, yield 335 MPa, ultimate 470 MPa
      @source ASTM A36/A36M, tensile requirements; E from AISC 360
      @note Plates, shapes and bars. Density as in EI 02C097, 490 lb/ft³.
      A36 (ASTM) | STEEL | 29000 ksi | 7850 kg | up to 8 in, yield 36 ksi, ultimate 58 ksi to 80 \
      ksi | yield 32 ksi, ultimate 58 ksi to 80 ksi
      @source ASTM A500/A500M-21, as summarised by the tube makers' institute; E from AISC 360
      @note All shapes, round too. Properties are found with 0.93 of the nominal wall.
      A500 grade C (ASTM 2021) | STEEL | 29000 ksi | 7850 kg | yield 50 ksi, ultimate 62 ksi
      @source ASTM A500/A500M, editions up to about 2018, as reprinted by mills; E from AISC 360
      @note Grade B of the edition of 2021 was not seen: look it up. Properties are found with 0.93 \
      of the nominal wall.
      A500 grade B, square or rectangular (ASTM to 2018) | STEEL | 29000 ksi | 7850 kg | yield 46 \
      ksi, ultimate 58 ksi
      A500 grade B, round (ASTM to 2018) | STEEL | 29000 ksi | 7850 kg | yield 42 ksi, ultimate 58 \
      ksi
      @source 49 CFR 178.46, Table 2; Aluminum Structures (Kissell, Ferry), ch. 4
      @note Least values, not the typical 40 and 45 ksi. Beside welds the strength is much lower: \
      take the row of the welded zone there. E and density from memory.
      6061-T6 extrusion | ALUMINIUM | 10100 ksi | 2700 kg | yield 35 ksi, ultimate 38 ksi
      6061-T6 sheet | ALUMINIUM | 10100 ksi | 2700 kg | yield 35 ksi, ultimate 42 ksi
      @source note to the 6061 table of MMPDS-01 in a public material sheet
      @note In the heat-affected zone, yield by an older gauge of 10 in. From memory: the Aluminum \
      Design Manual from 2010 on has about 15 ksi. E and density from memory.
      6061-T6 welded zone | ALUMINIUM | 10100 ksi | 2700 kg | yield 20 ksi, ultimate 24 ksi, shear \
      15 ksi
      @source EN 338 (2009), Table 1
      @memory
      @note Characteristic values, along the grain, mean E and density; other editions differ by up \
      to a third, in shear by more. For design they are multiplied by k_mod (from memory 0.6 for \
      lasting loads, 0.9 for short ones, less out of doors) and divided by 1.3.
      softwood C16 (EN 338) | TIMBER | 8 GPa | 370 kg | bending 16 MPa, tension 10 MPa, compression \
      17 MPa, compression_across 2.2 MPa, shear 3.2 MPa
      softwood C24 (EN 338) | TIMBER | 11 GPa | 420 kg | bending 24 MPa, tension 14 MPa, \
      compression 21 MPa, compression_across 2.5 MPa, shear 4 MPa
      hardwood D30 (EN 338) | TIMBER | 11 GPa | 640 kg | bending 30 MPa, tension 18 MPa, \
      compression 23 MPa, compression_across 8 MPa, shear 4 MPa
      """;

  private static final String OLD =
      """
      @source ASTM A500/A500M, editions up to about 2018, as reprinted by mills; E from AISC 360
      @note Superseded by the edition of 2021.
      A500 grade C, square or rectangular (ASTM to 2018) | STEEL | 29000 ksi | 7850 kg | yield 50 \
      ksi, ultimate 62 ksi
      A500 grade C, round (ASTM to 2018) | STEEL | 29000 ksi | 7850 kg | yield 46 ksi, ultimate 62 \
      ksi
      @source EN 1993-1-1 (2005), first printing, Table 3.1
      @memory
      @note Corrected to 490 MPa by AC2 (2009); 510 is still met on many pages.
      S355 (EN 1993-1-1, first printing) | STEEL | 210 GPa | 7850 kg | up to 40 mm, yield 355 MPa, \
      ultimate 510 MPa
      """;

  private static final String MODULI =
      """
      @source EN 1993-1-1 (2005), 3.2.6
      steel E (EN 1993-1-1) | PRESSURE | 210 GPa
      steel G (EN 1993-1-1) | PRESSURE | 81 GPa
      @source AISC 360, list of symbols
      @note Buckling loads with the European value are 5 % higher.
      steel E (AISC) | PRESSURE | 29000 ksi
      steel G (AISC) | PRESSURE | 11200 ksi
      @source AISC 360-16, B4.2, as summarised by the tube makers' institute
      design wall per nominal wall of A500 tubes | NUMBER | 0.93
      greatest outside corner radius per wall of A500 tubes | NUMBER | 3
      """;

  private static final int FIRST_STEP = 4;
  private static final String BOUND = "up to ";

  private static final FigureTable<MaterialRow> TABLE =
      FigureTable.of("material table", FIGURES, MaterialTable::row);
  private static final FigureTable<MaterialRow> SUPERSEDED =
      FigureTable.of("superseded materials", OLD, MaterialTable::row);
  private static final FigureTable<CitedValue> CONSTANTS =
      FigureTable.of("material constants", MODULI, FigureLine::cited);

  private MaterialTable() {}

  /**
   * All rows that hold today.
   *
   * @return the rows, source by source
   */
  public static List<MaterialRow> rows() {
    return TABLE.rows();
  }

  /**
   * Rows that later editions have replaced, to be recognised where they are met.
   *
   * @return the rows, source by source
   */
  public static List<MaterialRow> superseded() {
    return SUPERSEDED.rows();
  }

  /**
   * Elastic constants and factors on sizes.
   *
   * @return the rows, source by source
   */
  public static List<CitedValue> constants() {
    return CONSTANTS.rows();
  }

  /**
   * The row of a name.
   *
   * @param name the exact name of a row, such as {@code S235 (EN 10025-2)}
   * @return the row
   * @throws ModelException if there is none of that name; it says the nearest names
   */
  public static MaterialRow named(String name) {
    return TABLE.named(name);
  }

  private static MaterialRow row(FigureLine line) {
    List<String> cells = line.cells();
    List<MaterialStep> steps =
        cells.subList(FIRST_STEP, cells.size()).stream().map(MaterialTable::step).toList();
    return new MaterialRow(
        line.name(),
        Material.Kind.valueOf(cells.get(1)),
        line.span(2, Dimension.PRESSURE).low(),
        line.span(3, Dimension.MASS).low(),
        steps,
        line.source(),
        line.basis(),
        line.note());
  }

  private static MaterialStep step(String cell) {
    List<String> figures = new ArrayList<>(List.of(cell.split(", ", -1)));
    Optional<Double> bound = Optional.empty();
    if (figures.get(0).startsWith(BOUND)) {
      String thickness = figures.remove(0).substring(BOUND.length());
      bound = Optional.of(Quantity.parse(thickness, Dimension.LENGTH).si());
    }
    Map<Material.Strength, Span> strengths = new EnumMap<>(Material.Strength.class);
    for (String figure : figures) {
      int blank = figure.indexOf(' ');
      String key = figure.substring(0, blank).toUpperCase(Locale.ROOT);
      strengths.put(
          Material.Strength.valueOf(key),
          FigureLine.parse(figure.substring(blank + 1), Dimension.PRESSURE));
    }
    return new MaterialStep(bound, strengths);
  }
}
