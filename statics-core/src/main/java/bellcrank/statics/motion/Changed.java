package bellcrank.statics.motion;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;

/** A device with points moved, a load exchanged for another of the same name, or other gravity. */
final class Changed {

  private Changed() {}

  static Device points(Device device, Map<String, Point> moved) {
    return build(device, device.gravity(), moved, device.loads());
  }

  static Device load(Device device, Load other) {
    return loadAndPoints(device, other, Map.of());
  }

  static Device loadAndPoints(Device device, Load other, Map<String, Point> moved) {
    List<Load> loads =
        device.loads().stream()
            .map(load -> load.name().equals(other.name()) ? other : load)
            .toList();
    return build(device, device.gravity(), moved, loads);
  }

  static Device gravity(Device device, Vector gravity) {
    return build(device, gravity, Map.of(), device.loads());
  }

  private static Device build(
      Device device, Vector gravity, Map<String, Point> moved, List<Load> loads) {
    DeviceBuilder builder = Device.named(device.name()).gravity(gravity);
    device.points().forEach((key, drawn) -> builder.point(key, moved.getOrDefault(key, drawn)));
    device.members().forEach(builder::member);
    device.joints().forEach(builder::joint);
    device.connections().forEach(builder::connect);
    loads.forEach(builder::load);
    device.counts().forEach(builder::count);
    // a lone case of all loads is what a device without stated cases has
    if (!device.cases().equals(List.of(LoadCase.ALL_LOADS))) {
      device.cases().forEach(builder::loadCase);
    }
    device.advantage().ifPresent(pair -> builder.advantage(pair.effort(), pair.resistance()));
    return builder.build();
  }
}
