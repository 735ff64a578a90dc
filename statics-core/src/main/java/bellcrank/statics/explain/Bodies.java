package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** The bodies of a device in the order of their names, and where their points are in the pose. */
final class Bodies {

  /** A pin between two bodies has at most so many components: two, and a friction couple. */
  private static final int OF_TWO = 3;

  final List<String> names;
  final BitSet particles = new BitSet();

  /** Components of the balance by the part that has them, in the order of the balance. */
  final Map<String, List<Ask>> components = new HashMap<>();

  private final Device device;
  private final Pose pose;
  private final Map<String, Integer> numbers = new HashMap<>();

  Bodies(Balance balance) {
    device = balance.device();
    pose = balance.pose();
    for (Ask ask : balance.components()) {
      String part = ((Subject.Part) ask.subject()).name();
      components.computeIfAbsent(part, key -> new ArrayList<>()).add(ask);
    }
    TreeSet<String> all = new TreeSet<>();
    device.members().forEach(member -> all.add(member.name()));
    device.joints().forEach(joint -> all.add(joint.name()));
    device.connections().stream()
        .filter(one -> one instanceof Pin pin && isBody(pin))
        .forEach(pin -> all.add(pinName(pin.name())));
    names = List.copyOf(all);
    for (int i = 0; i < names.size(); i++) {
      numbers.put(names.get(i), i);
    }
    for (Joint joint : device.joints()) {
      particles.set(number(joint.name()));
    }
    for (Connection one : device.connections()) {
      if (one instanceof Pin pin && isBody(pin)) {
        particles.set(number(pinName(pin.name())));
      }
    }
  }

  static String pinName(String pin) {
    return "pin " + pin;
  }

  /** Whether a pin is a body of its own: it joins three or more, or carries a load. */
  boolean isBody(Pin pin) {
    return asks(pin.name()).size() > OF_TWO;
  }

  List<Ask> asks(String part) {
    return components.getOrDefault(part, List.of());
  }

  int number(String body) {
    return numbers.getOrDefault(body, Picture.OUTSIDE);
  }

  /** Number of what a load acts on: a body or a pin. */
  int underLoad(String name) {
    return device.body(name).isPresent() ? number(name) : number(pinName(name));
  }

  /** Where a point of a body is. */
  Point place(String body, String point) {
    return pose.frame(body).apply(device.point(point));
  }

  /** Where a point of what a load acts on is: a pin goes with its first body, or the ground. */
  Point placeUnderLoad(String name, String point) {
    String frame = name;
    if (device.body(name).isEmpty() && device.connection(name).orElse(null) instanceof Pin pin) {
      frame = pin.bodies().contains(Ground.NAME) ? Ground.NAME : pin.bodies().get(0);
    }
    return place(frame, point);
  }

  /** All points where they are, by name; a point of several bodies may be in several places. */
  Map<String, List<Point>> places() {
    Map<String, List<Point>> places = new TreeMap<>();
    for (String point : device.points().keySet()) {
      List<String> owners = new ArrayList<>(List.of(Ground.NAME));
      if (!pose.isDrawn()) {
        owners.clear();
        device.members().stream()
            .filter(member -> member.points().contains(point))
            .map(Member::name)
            .forEach(owners::add);
        owners.addAll(owners.isEmpty() ? List.of(Ground.NAME) : List.of());
      }
      places.put(point, owners.stream().map(body -> place(body, point)).toList());
    }
    return places;
  }
}
