package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import java.util.Map;

/** A device with one of its connections exchanged for another of the same name. */
final class WithConnection {

  private WithConnection() {}

  static Device replaced(Device device, Connection other) {
    DeviceBuilder builder = base(device);
    for (Connection connection : device.connections()) {
      builder.connect(connection.name().equals(other.name()) ? other : connection);
    }
    device.loads().forEach(builder::load);
    return finished(device, builder);
  }

  private static DeviceBuilder base(Device device) {
    DeviceBuilder builder = Device.named(device.name()).gravity(device.gravity());
    device.points().forEach((key, point) -> builder.point(key, point));
    device.members().forEach(builder::member);
    device.joints().forEach(builder::joint);
    return builder;
  }

  private static Device finished(Device device, DeviceBuilder builder) {
    for (Map.Entry<String, Integer> count : device.counts().entrySet()) {
      builder.count(count.getKey(), count.getValue());
    }
    device.cases().stream()
        .filter(one -> device.cases().size() > 1 || !one.factors().isEmpty() || one.dynamic() != 1)
        .forEach(builder::loadCase);
    device.advantage().ifPresent(pair -> builder.advantage(pair.effort(), pair.resistance()));
    return builder.build();
  }
}
