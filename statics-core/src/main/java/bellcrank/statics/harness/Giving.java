package bellcrank.statics.harness;

import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Event;
import bellcrank.statics.strength.Crossing;
import bellcrank.statics.strength.TravelCapacity;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Something that gives as loads grow.
 *
 * @param crossing what it is, and at what multiple
 * @param worst its place on a course, if it was looked for over one
 * @param state the balance at that multiple
 */
record Giving(Crossing crossing, Optional<TravelCapacity.Worst> worst, Supplier<Balance> state) {

  /** Whether it is this part that gives, by a check or by slipping, tipping and the like. */
  boolean isOf(String part) {
    return parts().contains(part);
  }

  /** Whether it is this check of this part. */
  boolean isOf(String part, String check) {
    return isOf(part) && check().equals(check);
  }

  /** The part that a check is of, or those that give way. */
  List<String> parts() {
    if (crossing instanceof Crossing.Used used) {
      return List.of(used.stated().part());
    }
    return ((Crossing.GivesWay) crossing).at().how().events().stream().map(Event::part).toList();
  }

  /** What gives of it. */
  String check() {
    return crossing instanceof Crossing.Used used ? used.stated().what() : "gives way";
  }

  /** The part by name, or the device if no part of it is at a limit of its own. */
  String part() {
    return parts().isEmpty() ? "the device" : String.join(" and ", parts());
  }
}
