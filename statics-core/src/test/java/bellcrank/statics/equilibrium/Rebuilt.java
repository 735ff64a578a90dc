package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Changed copies of devices. */
@SuppressWarnings("exports") // public for the tests of other packages, which never leave the build
public final class Rebuilt {

  private Rebuilt() {}

  /** All parts in another order. */
  public static Device shuffled(Device device, Random random) {
    DeviceBuilder builder = Device.named(device.name()).gravity(device.gravity());
    List<Map.Entry<String, Point>> points = new ArrayList<>(device.points().entrySet());
    Collections.shuffle(points, random);
    points.forEach(point -> builder.point(point.getKey(), point.getValue()));
    List<Member> members = new ArrayList<>(device.members());
    Collections.shuffle(members, random);
    members.forEach(builder::member);
    List<Joint> joints = new ArrayList<>(device.joints());
    Collections.shuffle(joints, random);
    joints.forEach(builder::joint);
    List<Connection> connections = new ArrayList<>(device.connections());
    Collections.shuffle(connections, random);
    connections.forEach(builder::connect);
    List<Load> loads = new ArrayList<>(device.loads());
    Collections.shuffle(loads, random);
    loads.forEach(builder::load);
    device.cases().forEach(builder::loadCase);
    return builder.build();
  }

  /** Without one connection. */
  static Device without(Device device, Connection left) {
    DeviceBuilder builder = parts(device);
    device.connections().stream().filter(one -> !one.equals(left)).forEach(builder::connect);
    device.loads().forEach(builder::load);
    return builder.build();
  }

  /** With one more two-sided roller, on the ground. */
  static Device withRoller(Device device, String body, String at, Direction push) {
    DeviceBuilder builder = parts(device);
    device.connections().forEach(builder::connect);
    device.loads().forEach(builder::load);
    builder.connect(new Roller("one more", at, body, "ground", push, Sides.TWO));
    return builder.build();
  }

  private static DeviceBuilder parts(Device device) {
    DeviceBuilder builder = Device.named(device.name()).gravity(device.gravity());
    device.points().forEach(builder::point);
    device.members().forEach(builder::member);
    device.joints().forEach(builder::joint);
    return builder;
  }
}
