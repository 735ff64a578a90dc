package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.internal.MotionFinder;
import java.util.List;
import java.util.Set;

/**
 * What moves when only the connections hold, whatever the loads. Sought efforts are no restraints
 * here.
 *
 * @param freedoms independent ways to move, to first order; empty if the device is held
 * @param criticalCount how many of them only a special shape leaves free
 */
public record Mobility(List<Freedom> freedoms, int criticalCount) {

  /**
   * Copies the list.
   *
   * @param freedoms independent ways to move
   * @param criticalCount how many of them only a special shape leaves free
   */
  public Mobility {
    freedoms = List.copyOf(freedoms);
  }

  /**
   * Mobility of a device as drawn.
   *
   * @param device the device
   * @return its mobility
   */
  public static Mobility of(Device device) {
    return of(device, Pose.DRAWN, false);
  }

  static Mobility of(Device device, Pose pose, boolean held) {
    MotionFinder finder = MotionFinder.of(device, pose, held, Set.of());
    if (finder.count() == 0) {
      return new Mobility(List.of(), 0);
    }
    int generic = MotionFinder.of(Jitter.of(device), pose, held, Set.of()).count();
    int critical = Math.max(0, finder.count() - generic);
    List<Freedom> freedoms =
        finder.localMotions().stream()
            .map(motion -> FreedomWriter.write(device, finder, motion, generic == 0, false))
            .toList();
    return new Mobility(freedoms, critical);
  }
}
