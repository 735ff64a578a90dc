package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.Basis;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Published strengths of one grade of material.
 *
 * @param name stable plain name by which it is chosen: the grade, its form and the table
 * @param kind what it is
 * @param elasticity modulus of elasticity E in Pa, above 0
 * @param density density in kg/m³, above 0
 * @param steps the strengths, by growing thickness, one or more
 * @param source document, edition and place
 * @param basis how the figures came here
 * @param note what to mind when using them; may be empty
 */
public record MaterialRow(
    String name,
    Material.Kind kind,
    double elasticity,
    double density,
    List<MaterialStep> steps,
    String source,
    Basis basis,
    String note) {

  /**
   * Copies the steps.
   *
   * @param name stable plain name by which it is chosen
   * @param kind what it is
   * @param elasticity modulus of elasticity E in Pa, above 0
   * @param density density in kg/m³, above 0
   * @param steps the strengths, by growing thickness, one or more
   * @param source document, edition and place
   * @param basis how the figures came here
   * @param note what to mind when using them; may be empty
   * @throws ModelException if there is no step
   */
  public MaterialRow {
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new ModelException(name, "steps", "none", "strengths for one thickness or more");
    }
  }

  /**
   * The material in a thickness, with the low end of each range as its strength.
   *
   * @param thickness greatest thickness in m, above 0
   * @return the material
   * @throws ModelException if the table has no strengths for a thickness as large
   */
  public Material at(double thickness) {
    String most =
        steps.get(steps.size() - 1).upTo().map(bound -> " and at most " + bound).orElse("");
    if (!(thickness > 0 && Double.isFinite(thickness))) {
      throw new ModelException(name, "thickness", thickness, "above 0" + most + " m");
    }
    MaterialStep step =
        steps.stream()
            .filter(one -> one.holdsFor(thickness))
            .findFirst()
            .orElseThrow(
                () -> new ModelException(name, "thickness", thickness, "above 0" + most + " m"));
    Map<Material.Strength, Double> least = new EnumMap<>(Material.Strength.class);
    step.strengths().forEach((strength, span) -> least.put(strength, span.low()));
    String from = basis == Basis.FROM_MEMORY ? source + " (from memory)" : source;
    return new Material(name, kind, elasticity, OptionalDouble.of(density), least, from);
  }
}
