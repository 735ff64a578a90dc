package bellcrank.statics.device;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds the bodies to which a point belongs. */
final class PointOwners {

  private final Device device;
  private final String point;
  private final Set<String> owners = new LinkedHashSet<>();

  private PointOwners(Device device, String point) {
    this.device = device;
    this.point = point;
  }

  /** Names of members and joints that have the point or are touched there, in their order. */
  static List<String> of(Device device, String point) {
    return new PointOwners(device, point).found();
  }

  private List<String> found() {
    for (Member member : device.members()) {
      if (member.points().contains(point) || member.outline().contains(point)) {
        owners.add(member.name());
      }
    }
    device.joints().forEach(joint -> add(joint.name(), joint.at()));
    device.connections().forEach(this::add);
    device.loads().forEach(this::add);
    owners.remove(Ground.NAME);
    return owners.stream()
        .sorted((a, b) -> Integer.compare(device.bodyIndex(a), device.bodyIndex(b)))
        .toList();
  }

  private void add(Connection connection) {
    boolean slides = !(connection instanceof Pin || connection instanceof Clamp);
    boolean oneAt = slides && connection.places().stream().distinct().count() == 1;
    // the place of what slides is carried by its first body only
    int carriers = oneAt ? 1 : connection.bodies().size();
    for (int i = 0; i < carriers; i++) {
      add(connection.bodies().get(i), connection.places().get(i));
    }
  }

  private void add(Load load) {
    if (load instanceof Force force) {
      add(force.body(), force.at());
    } else if (load instanceof SpreadLoad spread) {
      add(spread.member(), spread.from());
      add(spread.member(), spread.to());
    } else if (load instanceof Couple couple) {
      couple.at().ifPresent(at -> add(couple.member(), at));
    } else if (load instanceof Weight weight) {
      weight.at().ifPresent(at -> add(weight.body(), at));
    } else if (load instanceof Spring spring) {
      add(spring.first().body(), spring.first().at());
      add(spring.second().body(), spring.second().at());
    } else if (load instanceof Sought sought && device.body(sought.body()).isPresent()) {
      sought.at().ifPresent(at -> add(sought.body(), at));
    }
  }

  private void add(String body, String at) {
    if (at.equals(point)) {
      owners.add(body);
    }
  }
}
