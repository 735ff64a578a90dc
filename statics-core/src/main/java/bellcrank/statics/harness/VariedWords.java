package bellcrank.statics.harness;

import bellcrank.statics.limits.Variation;
import bellcrank.statics.units.Dimension;

/** What is varied, in words. */
final class VariedWords {

  private VariedWords() {}

  /** The subject that grows or moves. */
  static String of(Variation variation) {
    if (variation instanceof Variation.Place place) {
      return place.load() + " on its way from " + place.from() + " to " + place.to();
    }
    return loads((Variation.Multiple) variation);
  }

  static String loads(Variation.Multiple multiple) {
    return multiple.loads().isEmpty()
        ? "all loads but weights"
        : String.join(" and ", multiple.loads());
  }

  /** A value of it, with the number in front. */
  static String at(Variation variation, String number) {
    return variation instanceof Variation.Place place
        ? number + " from " + place.from() + " to " + place.to() + " for " + place.load()
        : number + " times " + loads((Variation.Multiple) variation);
  }

  static Dimension dimension(Variation variation) {
    return variation instanceof Variation.Place ? Dimension.LENGTH : Dimension.NUMBER;
  }
}
