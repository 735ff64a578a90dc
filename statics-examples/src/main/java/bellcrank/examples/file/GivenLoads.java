package bellcrank.examples.file;

import bellcrank.statics.device.Sought;

/** Looks up names that must be those of given loads. */
final class GivenLoads {

  private final Reading reading;

  GivenLoads(Reading reading) {
    this.reading = reading;
  }

  /** Whether a load of that name was read; if there is none of that name, it is reported. */
  boolean has(String name, Spot spot) {
    PartNames parts = reading.parts();
    if (parts.given().contains(name)) {
      return true;
    }
    boolean failed =
        parts.isDeclared(name) && parts.load(name).isEmpty() && parts.connection(name).isEmpty();
    if (!failed) {
      boolean sought = parts.load(name).filter(Sought.class::isInstance).isPresent();
      spot.report(
          sought
              ? "a given load, not a sought one"
              : reading.problems().name("load", name, parts.given()));
    }
    return false;
  }
}
