package bellcrank.statics.drawing;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Weight;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Where a free body is cut: which bodies and pins are inside. */
final class Cut {

  private final Set<String> bodies;
  private final boolean whole;
  private final Set<String> loadedPins = new HashSet<>();

  Cut(Device device, List<String> bodies, boolean whole) {
    this.bodies = new HashSet<>(bodies);
    this.whole = whole;
    for (Load load : device.loads()) {
      String body =
          load instanceof Force force
              ? force.body()
              : load instanceof Weight weight
                  ? weight.body()
                  : load instanceof Sought sought ? sought.body() : Ground.NAME;
      if (!body.equals(Ground.NAME) && device.body(body).isEmpty()) {
        loadedPins.add(body);
      }
    }
  }

  /** Whether a body is inside. */
  boolean has(String body) {
    return bodies.contains(body);
  }

  /** Whether forces on a pin are told for each of its bodies, since it is a body of its own. */
  boolean isOwn(Pin pin) {
    return pin.bodies().size() > 2 || isLoaded(pin.name());
  }

  /** Whether a pin that is a body of its own stays with the free body. */
  boolean holds(Pin pin) {
    List<String> movable = pin.bodies().stream().filter(body -> !body.equals(Ground.NAME)).toList();
    return bodies.containsAll(movable) && (movable.size() > 1 || whole);
  }

  /** Whether a load acts on a pin itself. */
  boolean isLoaded(String pin) {
    return loadedPins.contains(pin);
  }

  /** Whether the named body, or the pin of that name, is inside. */
  boolean hasLoaded(String name, Device device) {
    if (bodies.contains(name)) {
      return true;
    }
    return device.body(name).isEmpty()
        && device.connection(name).orElse(null) instanceof Pin pin
        && holds(pin);
  }
}
