package bellcrank.examples.report;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Wrap;
import java.util.List;
import java.util.Set;

/** The connections that pull or push along their own line. */
final class AxialParts {

  private static final Set<String> STRAIGHT = Set.of("strut", "line", "screw");

  private AxialParts() {}

  /**
   * Such a connection.
   *
   * @param connection the connection
   * @param count number of equal parts that share its force
   */
  record Part(Connection connection, int count) {

    /** Whether it runs round something, so that its ends may pull differently. */
    boolean isRope() {
      return connection instanceof Reeving || connection instanceof Wrap;
    }
  }

  /** Whether a kind does nothing but pull or push along one line. */
  static boolean isStraight(String kind) {
    return STRAIGHT.contains(kind);
  }

  /** Such connections in the order of the device. */
  static List<Part> of(Device device) {
    return device.connections().stream()
        .map(one -> new Part(one, device.sharing(one, one.bodies().get(0))))
        .filter(part -> part.isRope() || isStraight(part.connection().kind()))
        .toList();
  }
}
