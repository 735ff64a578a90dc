package bellcrank.statics.harness;

import bellcrank.statics.limits.Variation;
import bellcrank.statics.units.Dimension;

/** What is varied, in words. */
final class VariedWords {

  private VariedWords() {}

  /** That it is varied, as a clause. */
  static String varies(Variation variation) {
    if (variation instanceof Variation.Place place) {
      return place.load() + " moves from " + place.from() + " to " + place.to();
    }
    Variation.Multiple multiple = (Variation.Multiple) variation;
    return loads(multiple) + (multiple.loads().size() == 1 ? " grows" : " grow");
  }

  /** What it is at a value. */
  static String at(Variation variation, String number) {
    return variation instanceof Variation.Place place
        ? place.load() + " " + number + towards(place)
        : number + " times " + loads((Variation.Multiple) variation);
  }

  /** All that it is up to a value. */
  static String upTo(Variation variation, String number) {
    return variation instanceof Variation.Place place
        ? place.load() + " up to " + number + towards(place)
        : "up to " + at(variation, number);
  }

  static Dimension dimension(Variation variation) {
    return variation instanceof Variation.Place ? Dimension.LENGTH : Dimension.NUMBER;
  }

  private static String towards(Variation.Place place) {
    return " from " + place.from() + " towards " + place.to();
  }

  private static String loads(Variation.Multiple multiple) {
    return multiple.loads().isEmpty()
        ? "all loads but weights"
        : String.join(" and ", multiple.loads());
  }
}
