package bellcrank.statics.study.internal;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The numbers of a device as drawn, with their rates. */
final class DualDevice {

  final Device device;
  final LoadCase loadCase;
  final Rates rates;

  /** Numbers of the bodies by name: members, joints, and pins that are bodies of their own. */
  private final Map<String, Integer> bodies;

  DualDevice(Device device, LoadCase loadCase, Rates rates) {
    this(device, loadCase, rates, numbered(device));
  }

  private DualDevice(Device device, LoadCase loadCase, Rates rates, Map<String, Integer> bodies) {
    this.device = device;
    this.loadCase = loadCase;
    this.rates = rates;
    this.bodies = bodies;
  }

  DualDevice with(Rates others) {
    return new DualDevice(device, loadCase, others, bodies);
  }

  private static Map<String, Integer> numbered(Device device) {
    Map<String, Integer> bodies = new HashMap<>();
    device.members().forEach(member -> bodies.put(member.name(), bodies.size()));
    device.joints().forEach(joint -> bodies.put(joint.name(), bodies.size()));
    List<String> loaded = new ArrayList<>();
    for (Load load : device.loads()) {
      if (load instanceof Force force) {
        loaded.add(force.body());
      } else if (load instanceof Weight weight) {
        loaded.add(weight.body());
      } else if (load instanceof Sought sought) {
        loaded.add(sought.body());
      }
    }
    for (Connection connection : device.connections()) {
      boolean own =
          connection instanceof Pin pin
              && !bodies.containsKey(pin.name())
              && (pin.bodies().size() > 2 || loaded.contains(pin.name()));
      if (own) {
        bodies.put(connection.name(), bodies.size());
      }
    }
    return bodies;
  }

  int bodyCount() {
    return bodies.size();
  }

  /** Whether a body is a member, which has a moment equation. */
  boolean turns(int body) {
    return body < device.members().size();
  }

  /** Number of a body; −1 for the ground and for what is no body. */
  int body(String name) {
    return name.equals(Ground.NAME) ? -1 : bodies.getOrDefault(name, -1);
  }

  boolean isOwnBody(Pin pin) {
    return body(pin.name()) >= device.members().size() + device.joints().size();
  }

  DualVector point(String name) {
    return DualVector.of(
        Vector.of(device.point(name).x(), device.point(name).y()),
        rates.points().getOrDefault(name, Vector.ZERO));
  }

  DualVector gravity() {
    return DualVector.of(device.gravity(), rates.gravity());
  }

  DualVector force(Force force) {
    return DualVector.of(force.vector(), rates.forces().getOrDefault(force.name(), Vector.ZERO));
  }

  Dual number(String words, String part, double value) {
    return new Dual(value, rates.number(words, part));
  }

  DualVector way(String part, Direction direction) {
    return DualVector.of(direction, rates.number("direction", part));
  }

  /** The factor that the case puts on a load. */
  Dual factor(String load) {
    Dual own =
        number("factor in " + loadCase.name(), load, loadCase.factors().getOrDefault(load, 1.0));
    return own.times(number("dynamic factor", loadCase.name(), loadCase.dynamic()));
  }

  DualVector middleOfBars(String body) {
    Member member = (Member) device.body(body).orElseThrow();
    Dual length = Dual.ZERO;
    DualVector sum = DualVector.ZERO;
    for (Bar bar : member.bars()) {
      DualVector a = point(bar.start());
      DualVector b = point(bar.end());
      Dual own = b.minus(a).norm();
      length = length.plus(own);
      sum = sum.plus(a.plus(b).times(own.times(0.5)));
    }
    return new DualVector(sum.x().over(length), sum.y().over(length));
  }
}
