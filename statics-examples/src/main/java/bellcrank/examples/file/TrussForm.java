package bellcrank.examples.file;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Strut;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Tells which struts and joints of a device the short form {@code truss} states.
 *
 * @param bars the leading connections that are bars of a truss
 * @param joints the joints that must be stated nevertheless, the leading ones of the device
 */
record TrussForm(List<Strut> bars, List<Joint> joints) {

  static TrussForm of(Device device, BodyNames bodies) {
    List<Connection> connections = device.connections();
    int count = 0;
    while (count < connections.size() && isBar(connections.get(count), device, bodies)) {
      count++;
    }
    List<Strut> bars = connections.subList(0, count).stream().map(Strut.class::cast).toList();
    List<Joint> joints = device.joints();
    return new TrussForm(bars, joints.subList(0, joints.size() - made(joints, bars)));
  }

  private static boolean isBar(Connection connection, Device device, BodyNames bodies) {
    return connection instanceof Strut strut
        && strut.mass() == 0
        && !device.counts().containsKey(strut.name())
        && strut.name().equals(JointsReader.nameOfBar(strut.first().at(), strut.second().at()))
        && isJointOfPoint(strut.first(), bodies)
        && isJointOfPoint(strut.second(), bodies);
  }

  private static boolean isJointOfPoint(End end, BodyNames bodies) {
    return bodies.jointAt(end.at()).filter(end.body()::equals).isPresent();
  }

  /** How many of the last joints the bars make by themselves, in this order. */
  private static int made(List<Joint> joints, List<Strut> bars) {
    Map<String, Integer> order = new HashMap<>();
    for (Strut bar : bars) {
      order.putIfAbsent(bar.first().at(), order.size());
      order.putIfAbsent(bar.second().at(), order.size());
    }
    int made = 0;
    int next = Integer.MAX_VALUE;
    for (int i = joints.size() - 1; i >= 0; i--) {
      Joint joint = joints.get(i);
      int place = order.getOrDefault(joint.at(), Integer.MAX_VALUE);
      if (place >= next || !joint.name().equals(joint.at())) {
        break;
      }
      next = place;
      made++;
    }
    Set<String> stated = new HashSet<>();
    joints.subList(0, joints.size() - made).forEach(joint -> stated.add(joint.at()));
    // a joint stated at the same point under another name would be taken in its place
    boolean clear =
        joints.subList(joints.size() - made, joints.size()).stream()
            .noneMatch(joint -> stated.contains(joint.at()));
    return clear ? made : 0;
  }
}
