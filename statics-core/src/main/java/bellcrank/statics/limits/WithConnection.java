package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Wrap;
import java.util.List;
import java.util.Map;

/** A device with connections exchanged for others of the same names. */
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

  /**
   * A device whose contacts slide and whose ropes run without friction, so that its free motion is
   * the one in which it gives way.
   */
  static Device smooth(Device device) {
    DeviceBuilder builder = base(device);
    device.connections().forEach(one -> builder.connect(smooth(one)));
    device.loads().forEach(builder::load);
    return finished(device, builder);
  }

  private static Connection smooth(Connection one) {
    if (one instanceof Contact c) {
      return new Contact(c.name(), c.at(), c.body(), c.other(), c.push(), 0, 0);
    }
    if (one instanceof ContactBase b) {
      return new ContactBase(b.name(), b.at(), b.body(), b.other(), b.push(), b.width(), 0, 0);
    }
    if (one instanceof Wrap wrap) {
      Stop post = wrap.post();
      Stop sheave = Stop.sheave(post.body(), post.at(), post.radius(), post.turn());
      List<Stop> stops = List.of(wrap.first(), sheave, wrap.last());
      return new Reeving(wrap.name(), stops, 1, Reeving.Hauling.IDEAL);
    }
    return one;
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
