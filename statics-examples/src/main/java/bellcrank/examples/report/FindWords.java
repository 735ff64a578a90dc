package bellcrank.examples.report;

import bellcrank.examples.file.FindUnknown;
import bellcrank.examples.file.TravelPlan;
import java.util.Optional;

/** What is not known, in words. */
final class FindWords {

  private FindWords() {}

  /** Such as {@code the mass of "stone"}. */
  static String of(FindUnknown unknown, Optional<TravelPlan> travel) {
    if (unknown instanceof FindUnknown.Move move) {
      return "how far "
          + Listing.ofNames(move.points())
          + (move.points().size() == 1 ? " is" : " are")
          + " moved "
          + DirectionWords.of(move.along().x(), move.along().y())
          + " from where drawn";
    }
    if (unknown instanceof FindUnknown.Place place) {
      return "how far "
          + Listing.quoted(place.point())
          + " lies "
          + DirectionWords.of(place.along().x(), place.along().y())
          + " from "
          + place.from().map(Listing::quoted).orElse("the origin");
    }
    if (unknown instanceof FindUnknown.Turn turn) {
      return "how far "
          + Listing.ofNames(turn.points())
          + (turn.points().size() == 1 ? " is" : " are")
          + " turned about "
          + Listing.quoted(turn.about())
          + ", counter-clockwise positive";
    }
    if (unknown instanceof FindUnknown.OfLoad load) {
      return "the " + load.kind().key() + " of " + Listing.quoted(load.load());
    }
    return unknown instanceof FindUnknown.Slope
        ? "the slope of the ground, positive where it rises to the right"
        : travel
            .map(plan -> DriveWords.of(plan.drive()) + ", " + DriveWords.sense(plan.drive()))
            .orElse("the drive");
  }
}
