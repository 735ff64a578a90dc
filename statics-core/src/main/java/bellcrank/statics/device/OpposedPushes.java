package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds one-sided supports that contradict one another: between the same two bodies, at the same
 * place, with opposite push. No body can be in front of both; what is meant is a slot.
 */
final class OpposedPushes {

  /** How far the sum of two pushes of length one may be from nothing. */
  private static final double OPPOSITE = 1e-9;

  /** A one-sided support; the push is the one on the first of its bodies by name. */
  private record OneSided(Connection connection, Point at, double x, double y) {

    boolean isOpposed(OneSided other) {
      return at.distance(other.at) <= Device.SAME_PLACE
          && Math.hypot(x + other.x, y + other.y) <= OPPOSITE;
    }
  }

  private final DeviceBuilder device;
  private final Map<List<String>, List<OneSided>> seen = new HashMap<>();

  OpposedPushes(DeviceBuilder device) {
    this.device = device;
  }

  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    for (Connection connection : device.connections) {
      oneSided(connection).flatMap(this::problem).ifPresent(problems::add);
    }
    return problems;
  }

  private Optional<OneSided> oneSided(Connection connection) {
    Optional<Direction> push = push(connection);
    if (push.isEmpty()) {
      return Optional.empty();
    }
    List<String> bodies = connection.bodies();
    double sign = bodies.get(0).compareTo(bodies.get(1)) < 0 ? 1 : -1;
    return Optional.ofNullable(device.points.get(connection.places().get(0)))
        .map(at -> new OneSided(connection, at, sign * push.get().x(), sign * push.get().y()));
  }

  /** Direction of the push on the first-named body; empty for what can pull as well. */
  private static Optional<Direction> push(Connection connection) {
    if (connection instanceof Contact contact) {
      return Optional.of(contact.push());
    } else if (connection instanceof ContactBase base) {
      return Optional.of(base.push());
    } else if (connection instanceof Roller roller && roller.sides() == Sides.ONE) {
      return Optional.of(roller.push());
    } else if (connection instanceof Slot slot && slot.sides() == Sides.ONE) {
      return Optional.of(slot.along().perpendicular());
    }
    return Optional.empty();
  }

  private Optional<Problem> problem(OneSided support) {
    List<String> bodies = support.connection().bodies().stream().sorted().toList();
    List<OneSided> before = seen.computeIfAbsent(bodies, pair -> new ArrayList<>());
    Optional<Problem> problem =
        before.stream()
            .filter(support::isOpposed)
            .findFirst()
            .map(other -> problem(support.connection(), other.connection()));
    before.add(support);
    return problem;
  }

  private static Problem problem(Connection support, Connection other) {
    return new Problem(
        support.name(),
        support instanceof Slot ? "along" : "push",
        "against the one of " + other.name() + " at the same place",
        "one of the two pushes; both make a slot with two sides: for that a slot or a roller of"
            + " two sides, or two places that are apart");
  }
}
