package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.Material;
import bellcrank.statics.strength.MaterialRow;
import bellcrank.statics.strength.MaterialTable;
import bellcrank.statics.units.NearestName;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The materials that a file can name: its own, and the rows of the material table.
 *
 * @param own materials of the file by their names, in order
 */
public record Materials(Map<String, Material> own) {

  /** Stands in where only the rest of a part is checked: it has no bound of thickness. */
  static final String ANY = "A500 grade C (ASTM 2021)";

  /** Lower strengths are taken for a unit that was forgotten, in Pa. */
  private static final double LEAST = 1e4;

  /**
   * Copies the map and checks that no name is one of the table and no strength out of reason.
   *
   * @param own materials of the file by their names
   * @throws ModelException if a name stands in the table, or a value has probably lost its unit
   */
  public Materials {
    own = Collections.unmodifiableMap(new LinkedHashMap<>(own));
    own.forEach(Materials::check);
  }

  private static void check(String name, Material material) {
    if (MaterialTable.rows().stream().map(MaterialRow::name).anyMatch(name::equals)) {
      throw new ModelException(
          name, "name", '"' + name + '"', "a name that no row of the material table has");
    }
    reasonable(name, "elasticity", material.elasticity());
    material
        .strengths()
        .forEach((strength, value) -> reasonable(name, MaterialText.key(strength), value));
  }

  private static void reasonable(String name, String field, double value) {
    if (!(value >= LEAST)) {
      throw new ModelException(
          name,
          field,
          value + " Pa",
          "at least 10 kPa; a bare number is in the file's unit of pressure, so write it as 235"
              + " MPa");
    }
  }

  /** Whether the file or the table has a material. */
  boolean has(String name) {
    return own.containsKey(name)
        || MaterialTable.rows().stream().map(MaterialRow::name).anyMatch(name::equals);
  }

  /** Checks that there is a material; the nearest names are told. */
  void check(String name) {
    if (has(name)) {
      return;
    }
    List<String> known = new ArrayList<>(own.keySet());
    MaterialTable.rows().forEach(row -> known.add(row.name()));
    throw new ModelException(
        name,
        "material",
        '"' + name + '"',
        NearestName.of(name, known)
            .or(() -> near(name, known))
            .map(near -> "a material of the file or of the table; the nearest is \"" + near + '"')
            .orElseGet(
                () -> "a material of the file or a row of the material table" + alike(name)));
  }

  /** The name whose first word, such as a grade without its standard, is the nearest. */
  private static Optional<String> near(String name, List<String> known) {
    List<String> grades = known.stream().map(one -> one.split(" ", 2)[0]).toList();
    return NearestName.of(name, grades).map(grades::indexOf).map(known::get);
  }

  /** The rows whose names hold what was written, such as all editions of one grade. */
  private static String alike(String name) {
    List<String> rows =
        MaterialTable.rows().stream()
            .map(MaterialRow::name)
            .filter(row -> row.toLowerCase(Locale.ROOT).contains(name.toLowerCase(Locale.ROOT)))
            .map(row -> '"' + row + '"')
            .toList();
    return rows.isEmpty() ? " (--tables prints them)" : ", such as " + String.join(" or ", rows);
  }

  /** A material, in a thickness in m. */
  Material of(String name, double thickness) {
    Material stated = own.get(name);
    return stated == null ? MaterialTable.named(name).at(thickness) : stated;
  }
}
