package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceDraft;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.ground.BaseLoad;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.limits.internal.GroundCap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the ground gives at a state. A presumptive pressure is the same at every state; resistances
 * that depend on the inclination and place of the force are found again at each state until they
 * stay.
 */
final class GroundCaps {

  /** Relative change of a resistance that counts as none. */
  private static final double SAME = 1e-10;

  private final Device device;
  private final List<Foundation> foundations;

  GroundCaps(Device device, List<Foundation> foundations) {
    this.device = device;
    this.foundations = foundations;
  }

  /** Whether nothing depends on the state. */
  boolean areFixed() {
    for (Foundation one : foundations) {
      if (one.adhesion() != 0 || !one.bearing().map(Presumptive.class::isInstance).orElse(true)) {
        return false;
      }
    }
    return true;
  }

  /** What the ground gives to forces that press each base in its middle, square to it. */
  Map<String, GroundCap> first(Assembly assembly) {
    return foundations.isEmpty() ? Map.of() : at(assembly, new double[assembly.columns()]);
  }

  /** What the ground gives at a state. */
  Map<String, GroundCap> at(Assembly assembly, double[] forces) {
    Map<String, GroundCap> caps = new HashMap<>();
    for (int i = 0; i < device.connections().size(); i++) {
      Connection connection = device.connections().get(i);
      if (connection instanceof ContactBase base) {
        int column = assembly.firstColumn(i);
        int last = column + assembly.columnCount(i) - 1;
        double normal = Math.max(0, forces[column]);
        double tangential = last > column + 1 ? forces[column + 1] : 0;
        double couple = forces[last] * device.size();
        for (Foundation foundation : foundations) {
          if (foundation.base().equals(base.name())) {
            caps.put(base.name(), cap(foundation, base, normal, tangential, couple));
          }
        }
      }
    }
    return caps;
  }

  private static GroundCap cap(
      Foundation foundation, ContactBase base, double normal, double tangential, double couple) {
    // a force at the very edge leaves no width: a little is kept, on which the pressure is reckoned
    double widest = 0.999_999 * normal * base.width() / 2;
    double within = Math.max(-widest, Math.min(widest, couple));
    BaseLoad load = foundation.load(normal > 0 ? normal : 1e-9, tangential, within, base.width());
    double width = base.width() - 2 * Math.abs(within) / Math.max(normal, 1e-9);
    double pressure =
        foundation
            .bearing()
            .map(
                bearing ->
                    bearing instanceof Presumptive presumptive
                        ? presumptive.pressure()
                        : bearing.resistance(load) / (width * foundation.length()))
            .orElse(Double.POSITIVE_INFINITY);
    return new GroundCap(foundation.length(), pressure, foundation.slidingResistance(0, load));
  }

  /** Half way from one to the other, so that a resistance that swings settles. */
  static Map<String, GroundCap> between(Map<String, GroundCap> one, Map<String, GroundCap> other) {
    Map<String, GroundCap> middle = new HashMap<>();
    for (Map.Entry<String, GroundCap> entry : one.entrySet()) {
      GroundCap a = entry.getValue();
      GroundCap b = other.getOrDefault(entry.getKey(), a);
      middle.put(
          entry.getKey(),
          new GroundCap(
              a.length(),
              a.pressure() == b.pressure() ? a.pressure() : (a.pressure() + b.pressure()) / 2,
              (a.sliding() + b.sliding()) / 2));
    }
    return middle;
  }

  /** Whether two such maps are the same but for rounding. */
  static boolean same(Map<String, GroundCap> one, Map<String, GroundCap> other) {
    for (Map.Entry<String, GroundCap> entry : one.entrySet()) {
      GroundCap a = entry.getValue();
      GroundCap b = other.getOrDefault(entry.getKey(), a);
      if (differ(a.pressure(), b.pressure()) || differ(a.sliding(), b.sliding())) {
        return false;
      }
    }
    return true;
  }

  private static boolean differ(double a, double b) {
    return a != b && Math.abs(a - b) > SAME * Math.max(Math.abs(a), Math.abs(b));
  }

  /** A device in which every base that the ground holds back has a friction force at all. */
  static Device withFrictionForces(Device device, List<Foundation> foundations) {
    Device changed = device;
    for (Foundation foundation : foundations) {
      if (device.connection(foundation.base()).orElse(null) instanceof ContactBase base
          && base.friction() == 0
          && (foundation.adhesion() > 0 || foundation.cleat().isPresent())) {
        changed = DeviceDraft.of(changed).connection(rough(base)).build();
      }
    }
    return changed;
  }

  private static ContactBase rough(ContactBase base) {
    return new ContactBase(
        base.name(),
        base.at(),
        base.body(),
        base.other(),
        base.push(),
        base.width(),
        Double.MIN_NORMAL,
        Double.MIN_NORMAL);
  }
}
