package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Joint;
import bellcrank.statics.equilibrium.internal.MotionFinder;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
    List<Alike> groups = alike(motions);
    List<Alike> told = groups.size() > LISTED + 1 ? groups.subList(0, LISTED) : groups;
    List<String> clauses = new ArrayList<>(told.stream().map(Alike::words).toList());
    if (told.size() < groups.size()) {
      int others =
          groups.subList(LISTED, groups.size()).stream().mapToInt(one -> one.names.size()).sum();
      clauses.add(others + " more bodies move along");
    }
    StringBuilder text = new StringBuilder(listed(clauses));
    if (!driven) {
      text.append(", or the reverse");
    }
    if (critical) {
      text.append("; enough restraints, but a special shape: ")
          .append(new CriticalShape(device, this).words(motions));
    }
    return text.toString();
  }

  /** Bodies whose motions are told by the same words. */
  private record Alike(List<String> names, Verb verb, String way) {

    String words() {
      boolean one = names.size() == 1;
      boolean all = names.size() <= LISTED + 1;
      List<String> told = new ArrayList<>(all ? names : names.subList(0, LISTED));
      if (!all) {
        told.add(names.size() - LISTED + " more bodies");
      }
      return listed(told) + (one ? verb.one : verb.several) + way;
    }
  }

  private enum Verb {
    TURNS(" turns ", " turn "),
    MOVES(" moves ", " move "),
    SLIDES(" slides ", " slide ");

    private final String one;
    private final String several;

    Verb(String one, String several) {
      this.one = one;
      this.several = several;
    }
  }

  private List<Alike> alike(List<BodyMotion> motions) {
    Map<String, Alike> groups = new LinkedHashMap<>();
    for (BodyMotion motion : motions) {
      Verb verb = verb(motion);
      String way = way(motion);
      groups
          .computeIfAbsent(verb + way, any -> new Alike(new ArrayList<>(), verb, way))
          .names
          .add(motion.body());
    }
    return List.copyOf(groups.values());
  }

  private Verb verb(BodyMotion motion) {
    if (motion.centre().isPresent()) {
      return Verb.TURNS;
    }
    boolean joint = device.body(motion.body()).filter(Joint.class::isInstance).isPresent();
    return joint ? Verb.MOVES : Verb.SLIDES;
  }

  private String way(BodyMotion motion) {
    if (motion.centre().isEmpty()) {
      return DirectionWords.of(motion.velocity());
    }
    String sense = motion.turning() > 0 ? "counter-clockwise" : "clockwise";
    return sense + " about " + place(motion.centre().get());
  }

  private static String listed(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
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
