package bellcrank.statics.units;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The listed units and their order. */
final class UnitList {
  /** The plain number, which has no symbol. */
  static final Unit PLAIN = new Unit("", Dimension.NUMBER, 1, "definition, exact");

  /** The hundredth part; it is no factor of compounds. */
  static final Unit PERCENT = new Unit("%", Dimension.NUMBER, 0.01, "definition, exact");

  private static final List<String> SYMBOLS =
      List.of(
          // length and angle
          "m mm cm km in ft yd rad deg turn",
          // force and mass
          "N kN MN daN lbf ozf kip kgf tf tonf-US tonf-UK kg g t lb oz slug",
          // moment
          "N·m kN·m N·mm N·cm lbf·ft lbf·in kip·ft kgf·m",
          // force per length
          "N/m kN/m N/mm lbf/ft lbf/in kip/ft",
          // pressure
          "Pa kPa MPa GPa N/mm² psi ksi psf",
          // acceleration
          "m/s² ft/s²",
          // moment per angle
          "N·m/rad kN·m/rad N·m/deg lbf·ft/rad lbf·in/rad lbf·ft/deg lbf·in/deg",
          // area
          "m² mm² cm² in² ft²",
          // section modulus and second moment
          "m³ mm³ cm³ in³ ft³",
          "m⁴ mm⁴ cm⁴ in⁴ ft⁴",
          // force per volume
          "N/m³ kN/m³ lbf/ft³");

  private static final Map<Compound, Unit> COMPOUNDS = compounds();
  private static final List<Unit> LISTED = withNumbers();

  private UnitList() {}

  static List<Unit> listed() {
    return LISTED;
  }

  /** The listed unit with these factors, in whatever order they were written. */
  static Optional<Unit> find(Compound compound) {
    return Optional.ofNullable(COMPOUNDS.get(compound));
  }

  static Unit si(Dimension dimension) {
    return LISTED.stream()
        .filter(unit -> unit.dimension() == dimension && unit.factor() == 1)
        .findFirst()
        .orElseThrow();
  }

  private static Map<Compound, Unit> compounds() {
    Map<Compound, Unit> units = new LinkedHashMap<>();
    for (String group : SYMBOLS) {
      for (String symbol : List.of(group.split(" ", -1))) {
        Compound compound = UnitText.compound(symbol);
        units.put(compound, compound.unit(compound.dimension().orElseThrow()));
      }
    }
    return units;
  }

  private static List<Unit> withNumbers() {
    List<Unit> units = new ArrayList<>(COMPOUNDS.values());
    units.add(PLAIN);
    units.add(PERCENT);
    return List.copyOf(units);
  }
}
