package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Joint;
import bellcrank.statics.equilibrium.internal.MotionFinder;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Turns velocities into body motions and words. */
final class FreedomWriter {

  /** A body listed beyond this number is only counted in words. */
  private static final int LISTED = 4;

  /** Significant digits of a place. */
  private static final int DIGITS = 4;

  private final Device device;
  private final UnitSystem units;

  FreedomWriter(Device device, UnitSystem units) {
    this.device = device;
    this.units = units;
  }

  static Freedom write(
      Device device, MotionFinder finder, double[] motion, boolean critical, boolean driven) {
    List<BodyMotion> motions = new ArrayList<>();
    for (int body = 0; body < finder.assembly().bodyCount(); body++) {
      double[] v = finder.bodyVelocity(motion, body);
      if (v[0] != 0 || v[1] != 0 || v[2] != 0) {
        Vector velocity = Vector.of(v[0], v[1]);
        String name = finder.assembly().bodyName(body);
        motions.add(BodyMotion.of(device, name, velocity, finder.reference(body), v[2]));
      }
    }
    return Freedom.of(device, motions, critical, driven);
  }

  String words(List<BodyMotion> motions, boolean critical, boolean driven) {
    if (motions.isEmpty()) {
      return "nothing moves";
    }
    StringBuilder text = new StringBuilder();
    int listed = motions.size() > LISTED + 1 ? LISTED : motions.size();
    for (int i = 0; i < listed; i++) {
      if (i > 0) {
        text.append(i == listed - 1 && listed == motions.size() ? " and " : ", ");
      }
      text.append(words(motions.get(i)));
    }
    if (motions.size() > listed) {
      text.append(" and ").append(motions.size() - listed).append(" more bodies move along");
    }
    if (!driven) {
      text.append(", or the reverse");
    }
    if (critical) {
      text.append("; enough restraints, but a special shape: ")
          .append(new CriticalShape(device, this).words(motions));
    }
    return text.toString();
  }

  private String words(BodyMotion motion) {
    String name = motion.body();
    if (motion.centre().isPresent()) {
      String sense = motion.turning() > 0 ? " counter-clockwise" : " clockwise";
      return name + " turns" + sense + " about " + place(motion.centre().get());
    }
    boolean joint = device.body(name).filter(Joint.class::isInstance).isPresent();
    return name + (joint ? " moves " : " slides ") + DirectionWords.of(motion.velocity());
  }

  /** Name of the point at a place, or its coordinates. */
  String place(Point point) {
    for (Map.Entry<String, Point> named : device.points().entrySet()) {
      if (named.getValue().distance(point) <= near()) {
        return named.getKey();
      }
    }
    return "a point at (" + length(point.x()) + ", " + length(point.y()) + ")";
  }

  private String length(double value) {
    double shown = Math.abs(value) < near() ? 0 : value;
    return units.format(shown, Dimension.LENGTH, DIGITS);
  }

  private double near() {
    return 1e-6 * device.size();
  }
}
