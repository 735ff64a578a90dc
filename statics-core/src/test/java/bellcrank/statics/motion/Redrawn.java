package bellcrank.statics.motion;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.TorsionSpring;

/** A device drawn anew in another of its poses. */
final class Redrawn {

  private Redrawn() {}

  static Device at(Device device, Pose pose) {
    DeviceBuilder builder = Device.named(device.name()).gravity(device.gravity());
    device
        .points()
        .forEach(
            (name, point) -> builder.point(name, pose.frame(owner(device, name)).apply(point)));
    device.members().forEach(builder::member);
    device.joints().forEach(builder::joint);
    device.connections().forEach(one -> builder.connect(turned(one, pose)));
    device.loads().forEach(one -> builder.load(turned(one, pose)));
    device.advantage().ifPresent(pair -> builder.advantage(pair.effort(), pair.resistance()));
    return builder.build();
  }

  /** The first member that has a point; what no member has is of the ground. */
  private static String owner(Device device, String point) {
    for (Member member : device.members()) {
      if (member.points().contains(point)) {
        return member.name();
      }
    }
    return "ground";
  }

  /** With its direction turned as its second body is. */
  private static Connection turned(Connection connection, Pose pose) {
    if (connection instanceof Guide g) {
      return new Guide(
          g.name(), g.at(), g.body(), g.other(), pose.frame(g.other()).apply(g.along()));
    } else if (connection instanceof Slot s) {
      return new Slot(
          s.name(), s.at(), s.body(), s.other(), pose.frame(s.other()).apply(s.along()), s.sides());
    } else if (connection instanceof Roller r) {
      return new Roller(
          r.name(), r.at(), r.body(), r.other(), pose.frame(r.other()).apply(r.push()), r.sides());
    }
    return connection;
  }

  private static Load turned(Load load, Pose pose) {
    return load instanceof TorsionSpring s
        ? new TorsionSpring(
            s.name(),
            s.body(),
            s.other(),
            s.stiffness(),
            s.turned() + pose.frame(s.body()).turn() - pose.frame(s.other()).turn())
        : load;
  }
}
