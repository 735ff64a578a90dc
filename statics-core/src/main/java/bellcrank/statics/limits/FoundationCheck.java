package bellcrank.statics.limits;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.Foundation;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Sees to it that foundations are of contact bases, one of each. */
final class FoundationCheck {

  private FoundationCheck() {}

  static void check(Device device, List<Foundation> foundations) {
    if (foundations.isEmpty()) {
      return;
    }
    Set<String> seen = new HashSet<>();
    for (Foundation foundation : foundations) {
      String base = foundation.base();
      if (!(device.connection(base).orElse(null) instanceof ContactBase)) {
        throw new ModelException(device.name(), "ground under", base, "the name of a contact base");
      }
      if (!seen.add(base)) {
        throw new ModelException(
            device.name(), "ground under", base, "one foundation of each base");
      }
    }
  }
}
