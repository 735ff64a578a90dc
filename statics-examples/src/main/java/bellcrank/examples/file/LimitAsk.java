package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.device.Subject;
import bellcrank.statics.limits.Variation;

/** A named limit as the ask for its upper end: what the one names, the other can check. */
final class LimitAsk {

  private LimitAsk() {}

  static Ask of(Variation variation) {
    if (variation instanceof Variation.Place place) {
      return Ask.of(new Subject.Place(place.load()), Measure.DISTANCE)
          .alongLine(place.from(), place.to())
          .greatest();
    }
    Variation.Multiple multiple = (Variation.Multiple) variation;
    return Ask.of(new Subject.Multiple(multiple.loads()), Measure.VALUE).greatest();
  }

  /** A variation whose name and own names are acceptable; the device is not looked at. */
  static Variation named(String name, Variation variation) {
    Ask.of(name);
    of(variation);
    return variation;
  }

  /** Checks that a device can be varied so. */
  static void check(String name, Variation variation, Device device) {
    try {
      of(named(name, variation)).check(device);
    } catch (ModelException e) {
      throw new ModelException(
          e.problems().stream()
              .map(problem -> new Problem(name, "limit", problem.field(), problem.wanted()))
              .toList());
    }
  }
}
