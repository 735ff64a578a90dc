package bellcrank.examples.file;

import bellcrank.statics.units.Dimension;
import java.util.Optional;

/**
 * Reads radii of gyration and reaches of a section that may be stated as tables print them: as
 * second moments of area I = A·i², and as section moduli W = I/c.
 */
final class SecondMoments {

  private final Draft draft;
  private final double area;

  SecondMoments(Draft draft, double area) {
    this.draft = draft;
    this.area = area;
  }

  /** A radius in m, of one of two keys. */
  double gyration(String radius, String moment) {
    Optional<Double> found = gyrationIfAny(radius, moment);
    // none of both: the first one is missed
    return found.orElseGet(() -> draft.amount(radius, Dimension.LENGTH));
  }

  /** A radius in m, of one of two keys, that may be left out. */
  Optional<Double> gyrationIfAny(String radius, String moment) {
    if (isTwice(radius, moment)) {
      return Optional.of(1.0);
    }
    return positive(moment, Dimension.SECOND_MOMENT)
        .map(inertia -> Math.sqrt(inertia / area))
        .or(() -> draft.amountIfAny(radius, Dimension.LENGTH));
  }

  /** Distance of a fibre from the centroid in m, of one of two keys. */
  double reach(String distance, String modulus, double gyration) {
    if (isTwice(distance, modulus)) {
      return 1;
    }
    return positive(modulus, Dimension.SECTION_MODULUS)
        .map(stated -> area * gyration * gyration / stated)
        .orElseGet(() -> draft.amount(distance, Dimension.LENGTH));
  }

  private Optional<Double> positive(String key, Dimension dimension) {
    Optional<Double> value = draft.amountIfAny(key, dimension);
    if (value.isPresent() && !(value.get() > 0)) {
      draft.fail();
      draft.fields().find(key).ifPresent(spot -> spot.report(dimension.noun() + " above 0"));
      return Optional.of(1.0);
    }
    return value;
  }

  private boolean isTwice(String one, String other) {
    Optional<Spot> second = draft.fields().find(other);
    if (second.isEmpty() || !draft.has(one)) {
      return false;
    }
    draft.fail();
    second.get().report("either " + one + " or " + other + ", since one follows from the other");
    return true;
  }
}
