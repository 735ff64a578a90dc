package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Balance;
import java.util.List;
import java.util.Optional;

/** Says that more is sought than balance can tell, and what helps. */
final class TooManySought {

  private TooManySought() {}

  /** The sentence; empty if it is not the sought quantities that are too many. */
  static Optional<String> words(Balance balance) {
    List<Sought> sought = balance.device().sought();
    int values = 0;
    for (Sought one : sought) {
      values += one.want() == Sought.Want.COMPONENTS ? 2 : 1;
    }
    // what a sought value does not hold in place, it leaves open
    int held = balance.mobility().freedoms().size() - balance.freedoms().size();
    int over = values - held;
    if (over <= 0) {
      return Optional.empty();
    }
    String many =
        Listing.count(over, "value") + " too many " + (over == 1 ? "is" : "are") + " sought";
    List<String> rough = rough(balance);
    if (!rough.isEmpty()) {
      return Optional.of(
          many
              + ": "
              + Listing.ofNames(rough)
              + (rough.size() == 1 ? " holds" : " hold")
              + " by an unknown share of the friction; state what is known as a load");
    }
    String names = Listing.ofNames(sought.stream().map(Sought::name).toList());
    return Optional.of(
        many
            + ": leave out "
            + (over == 1 ? "one" : "some")
            + " of "
            + names
            + ", or state what is known as a load");
  }

  /** Parts with friction whose forces are not fixed. */
  private static List<String> rough(Balance balance) {
    Device device = balance.device();
    return balance.undetermined().stream()
        .map(Ask::subject)
        .filter(Subject.Part.class::isInstance)
        .map(subject -> ((Subject.Part) subject).name())
        .distinct()
        .filter(name -> device.connection(name).filter(TooManySought::isRough).isPresent())
        .toList();
  }

  private static boolean isRough(Connection connection) {
    return (connection instanceof Contact contact && contact.friction() > 0)
        || (connection instanceof ContactBase base && base.friction() > 0)
        || (connection instanceof Wrap wrap && wrap.friction() > 0);
  }
}
