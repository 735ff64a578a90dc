package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.Solved;
import java.util.ArrayList;
import java.util.List;

/** Names the unknowns of the equations as asks. */
final class UnknownNames {

  private final Device device;
  private final Solved solved;

  UnknownNames(Device device, Solved solved) {
    this.device = device;
    this.solved = solved;
  }

  List<Ask> undetermined() {
    List<Ask> asks = new ArrayList<>();
    if (solved.redundancy() == 0) {
      return asks;
    }
    Assembly assembly = solved.assembly();
    for (int i = 0; i < device.connections().size(); i++) {
      int first = assembly.firstColumn(i);
      int count = assembly.columnCount(i);
      for (int k = 0; k < count; k++) {
        if (!solved.determined(first + k)) {
          asks.add(name(device.connections().get(i), k, count));
        }
      }
    }
    for (Sought sought : device.sought()) {
      int column = assembly.soughtColumn(sought.name());
      boolean open =
          !solved.determined(column)
              || (sought.want() == Sought.Want.COMPONENTS && !solved.determined(column + 1));
      if (open) {
        asks.add(Ask.of(sought.name(), Measure.VALUE));
      }
    }
    return List.copyOf(asks);
  }

  /** One ask for each unknown, in the order of the assembly. */
  static List<Ask> all(Device device, Assembly assembly) {
    List<Ask> asks = new ArrayList<>();
    for (int i = 0; i < device.connections().size(); i++) {
      int count = assembly.columnCount(i);
      for (int k = 0; k < count; k++) {
        asks.add(name(device.connections().get(i), k, count));
      }
    }
    for (Sought sought : device.sought()) {
      if (sought.want() == Sought.Want.COMPONENTS) {
        asks.add(Ask.of(sought.name(), Measure.X));
        asks.add(Ask.of(sought.name(), Measure.Y));
      } else {
        asks.add(Ask.of(sought.name(), Measure.VALUE));
      }
    }
    return List.copyOf(asks);
  }

  private static Ask name(Connection connection, int k, int count) {
    String name = connection.name();
    if (connection instanceof Pin pin && (count == 3 || count == 3 * pin.bodies().size())) {
      Measure measure = k % 3 == 0 ? Measure.X : k % 3 == 1 ? Measure.Y : Measure.COUPLE;
      return count == 3
          ? Ask.of(name, measure)
          : Ask.of(name, measure).onBody(pin.bodies().get(k / 3));
    }
    if (connection instanceof Pin pin) {
      Measure measure = k % 2 == 0 ? Measure.X : Measure.Y;
      return count == 2
          ? Ask.of(name, measure)
          : Ask.of(name, measure).onBody(pin.bodies().get(k / 2));
    }
    if (connection instanceof Clamp) {
      return Ask.of(name, k == 0 ? Measure.X : k == 1 ? Measure.Y : Measure.COUPLE);
    }
    if (connection instanceof Guide || connection instanceof ContactBase) {
      if (k == count - 1) {
        return Ask.of(name, Measure.COUPLE);
      }
      return Ask.of(name, k == 0 ? Measure.NORMAL : Measure.FRICTION);
    }
    return switch (connection.kind()) {
      case "strut", "line", "screw", "reeving" -> Ask.of(name, Measure.TENSION);
      case "wrap" -> Ask.of(name, k == 0 ? Measure.TENSION : Measure.END_TENSION);
      default -> Ask.of(name, k == 0 ? Measure.NORMAL : Measure.FRICTION);
    };
  }
}
