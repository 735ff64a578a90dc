package bellcrank.examples.file;

import bellcrank.statics.strength.Material;
import bellcrank.statics.units.Dimension;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Reads and writes materials of one's own. */
final class MaterialText {

  private static final Map<String, Material.Kind> KINDS = new TreeMap<>();

  static {
    for (Material.Kind kind : Material.Kind.values()) {
      KINDS.put(word(kind), kind);
    }
  }

  private MaterialText() {}

  private static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The key of a strength. */
  static String key(Material.Strength strength) {
    return word(strength);
  }

  static Optional<Material> read(Draft draft) {
    Material.Kind kind = draft.choiceNeeded("kind", KINDS, Material.Kind.OTHER);
    double elasticity = draft.amount("elasticity", Dimension.PRESSURE);
    Map<Material.Strength, Double> strengths = new java.util.EnumMap<>(Material.Strength.class);
    for (Material.Strength strength : Material.Strength.values()) {
      draft
          .amountIfAny(key(strength), Dimension.PRESSURE)
          .ifPresent(value -> strengths.put(strength, value));
    }
    String source = draft.text("source", "where the values come from");
    return draft.made(
        () -> {
          Material material =
              new Material(
                  draft.part(),
                  kind,
                  elasticity,
                  OptionalDouble.empty(),
                  strengths,
                  FreeText.check("source", source));
          return new Materials(Map.of(draft.part(), material)).own().get(draft.part());
        });
  }

  static String written(Material material, AmountText amounts) {
    Flow flow =
        new Flow()
            .put("kind", word(material.kind()))
            .put("elasticity", amounts.withUnit(material.elasticity(), Dimension.PRESSURE));
    for (Material.Strength strength : Material.Strength.values()) {
      material
          .strength(strength)
          .ifPresent(value -> flow.put(key(strength), amounts.withUnit(value, Dimension.PRESSURE)));
    }
    return flow.text("source", material.source()).written();
  }
}
