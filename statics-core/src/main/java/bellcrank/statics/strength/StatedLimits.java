package bellcrank.statics.strength;

/**
 * The rules that both methods share: limits that are stated for a part, or follow from its shape.
 */
final class StatedLimits {

  private static final Factor RATED =
      new Factor(1, "not needed, the working load limit has its design factor in it");
  private static final Factor GEOMETRY = new Factor(1, "not needed for a limit of geometry");

  private StatedLimits() {}

  static Rules of(Method method) {
    return Rules.none(method)
        .with(
            new Rule<>(
                Check.WORKING_LOAD,
                method,
                "F/(n·cos α) ≤ working load limit",
                RATED,
                "the limit that is stated for the part",
                new WorkingLoadLaw()))
        .with(
            new Rule<>(
                Check.SEAT,
                method,
                "angle ≤ 90° − opening/2 + arctan μ",
                GEOMETRY,
                "cones of friction at both sides of the notch",
                new SeatLaw()));
  }
}
