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
import java.util.Optional;

/** Turns velocities into body motions and words. */
final class FreedomWriter {

  /** Turning slower than this share of the fastest motion over the size is a slide. */
  private static final double SLIDE = 1e-8;

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
      if (v[0] == 0 && v[1] == 0 && v[2] == 0) {
        continue;
      }
      Point reference = finder.reference(body);
      Vector velocity = Vector.of(v[0], v[1]);
      Optional<Point> centre = Optional.empty();
      double turning = Math.abs(v[2]) * device.size() > SLIDE ? v[2] : 0;
      if (turning != 0) {
        centre = Optional.of(reference.plus(velocity.perpendicular().times(1 / turning)));
      }
      motions.add(
          new BodyMotion(finder.assembly().bodyName(body), turning, velocity, reference, centre));
    }
    String words = new FreedomWriter(device, UnitSystem.SI).words(motions, critical, driven);
    return new Freedom(motions, critical, driven, words);
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
    return name + (joint ? " moves " : " slides ") + direction(motion.velocity());
  }

  private static String direction(Vector v) {
    double degrees = Math.toDegrees(Math.atan2(v.y(), v.x()));
    String[] words = {"right", "up", "left", "down"};
    double quarters = degrees / 90;
    if (Math.abs(quarters - Math.rint(quarters)) < 1e-6) {
      return words[Math.floorMod((int) Math.rint(quarters), 4)];
    }
    String level = v.x() > 0 ? "right" : "left";
    String steep = v.y() > 0 ? "up" : "down";
    double slope = Math.toDegrees(Math.atan2(Math.abs(v.y()), Math.abs(v.x())));
    return level + " and " + steep + " at " + rounded(slope) + "° to the level";
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

  private static String rounded(double value) {
    return java.math.BigDecimal.valueOf(value)
        .round(new java.math.MathContext(4))
        .stripTrailingZeros()
        .toPlainString();
  }
}
