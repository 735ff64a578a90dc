package bellcrank.examples.report;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Says which members and joints no chain of connections ties to the ground. */
final class LooseBodies {

  /** Names beyond these are only counted. */
  private static final int MOST_LISTED = 6;

  private LooseBodies() {}

  /** The sentence; empty if all are tied. */
  static Optional<String> words(Device device) {
    Set<String> tied = tied(device);
    List<String> loose = new ArrayList<>();
    device.members().forEach(member -> loose.add(member.name()));
    device.joints().forEach(joint -> loose.add(joint.name()));
    loose.removeAll(tied);
    if (loose.isEmpty()) {
      return Optional.empty();
    }
    int more = loose.size() - MOST_LISTED;
    String names =
        more > 1
            ? String.join(", ", loose.stream().limit(MOST_LISTED).map(Listing::quoted).toList())
                + " and "
                + more
                + " more"
            : Listing.ofNames(loose);
    return Optional.of("nothing ties " + names + " to the ground");
  }

  private static Set<String> tied(Device device) {
    Set<String> tied = new HashSet<>(Set.of(Ground.NAME));
    boolean grown = true;
    while (grown) {
      grown = false;
      for (Connection connection : device.connections()) {
        if (connection.bodies().stream().anyMatch(tied::contains)) {
          grown |= tied.addAll(connection.bodies());
        }
      }
    }
    return tied;
  }
}
