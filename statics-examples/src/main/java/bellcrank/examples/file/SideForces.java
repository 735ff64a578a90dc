package bellcrank.examples.file;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Weight;
import java.util.ArrayList;
import java.util.List;

/** Names of the forces that a side view has from a device. */
final class SideForces {

  /** Sums of intensities below this share of their sizes are zero: the load is a couple. */
  private static final double ZERO = 1e-12;

  private SideForces() {}

  static List<String> of(Device device, String base) {
    List<String> names = new ArrayList<>();
    device.loads().forEach(load -> names.addAll(of(load)));
    for (Connection connection : device.connections()) {
      if (connection instanceof Strut strut && strut.mass() > 0) {
        names.add("weight of " + strut.name());
      }
      if (connection.bodies().contains(Ground.NAME) && !connection.name().equals(base)) {
        names.add(connection.name());
      }
    }
    return names;
  }

  private static List<String> of(Load load) {
    if (load instanceof SpreadLoad spread) {
      double sum = spread.start() + spread.end();
      boolean cancels = Math.abs(sum) <= ZERO * (Math.abs(spread.start()) + Math.abs(spread.end()));
      return cancels
          ? List.of(spread.name() + " start", spread.name() + " end")
          : List.of(spread.name());
    }
    boolean placed =
        load instanceof Force
            || load instanceof Weight
            || (load instanceof Sought sought && sought.at().isPresent())
            || (load instanceof Spring spring
                && spring.first().body().equals(Ground.NAME)
                    != spring.second().body().equals(Ground.NAME));
    return placed ? List.of(load.name()) : List.of();
  }
}
