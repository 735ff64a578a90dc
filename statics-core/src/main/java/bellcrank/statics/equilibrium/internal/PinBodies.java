package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Pin;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The pins that are bodies of their own: those through three or more bodies, and those with loads
 * on them. They are numbered after the members and joints. Most devices have none.
 */
final class PinBodies {

  private final Device device;
  private final int first;
  private List<Pin> pins = List.of();
  private Map<String, Integer> numbers = Map.of();

  /** The pins through three or more bodies; those under loads are added as the loads are read. */
  PinBodies(Device device) {
    this.device = device;
    first = device.members().size() + device.joints().size();
    for (Connection connection : device.connections()) {
      if (connection instanceof Pin pin && pin.bodies().size() > 2) {
        add(pin);
      }
    }
  }

  private int add(Pin pin) {
    if (pins.isEmpty()) {
      pins = new ArrayList<>();
      numbers = new HashMap<>();
    }
    int number = first + pins.size();
    pins.add(pin);
    numbers.put(pin.name(), number);
    return number;
  }

  int count() {
    return pins.size();
  }

  /** Number of the body that a pin is; −1 if it is none. */
  int of(String pin) {
    Integer number = numbers.get(pin);
    return number == null ? -1 : number;
  }

  /** Number of the body on which a load acts: that makes a pin a body; −1 for the ground. */
  int underLoad(String name) {
    int body = device.bodyIndex(name);
    if (body >= 0 || name.equals(Ground.NAME)) {
      return body;
    }
    int known = of(name);
    return known < 0 && device.connection(name).orElse(null) instanceof Pin pin ? add(pin) : known;
  }

  String name(int body) {
    return pins.get(body - first).name();
  }

  /** The body with which a pin moves: its first one, but the ground if that is among them. */
  String frameName(int body) {
    List<String> bodies = pins.get(body - first).bodies();
    return bodies.contains(Ground.NAME) ? Ground.NAME : bodies.get(0);
  }
}
