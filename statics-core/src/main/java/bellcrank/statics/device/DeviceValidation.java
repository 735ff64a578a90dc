package bellcrank.statics.device;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.NearestName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Checks that the parts of a device fit one another; finds all problems, not just the first. */
final class DeviceValidation {

  /** Bound on coordinates in m; beyond it a planar yard device is a slip of the unit. */
  private static final double LARGEST_COORDINATE = 1e9;

  /** What a mechanical advantage can be taken of. */
  private static final String EFFORT_OR_RESISTANCE =
      "a force, weight, couple on a member, sought force of given direction, sought couple,"
          + " sought mass, strut, line, reeving or screw";

  private final DeviceBuilder device;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Body> bodies = new HashMap<>();
  private final Map<String, Connection> connections = new HashMap<>();
  private final Map<String, Load> loads = new HashMap<>();

  DeviceValidation(DeviceBuilder device) {
    this.device = device;
  }

  List<Problem> problems() {
    for (Map.Entry<String, Point> point : device.points.entrySet()) {
      Point place = point.getValue();
      if (Math.max(Math.abs(place.x()), Math.abs(place.y())) > LARGEST_COORDINATE) {
        problem(point.getKey(), "place", place, "coordinates within " + LARGEST_COORDINATE + " m");
      }
    }
    if (!(device.gravity.norm() <= Check.LARGEST)) {
      problem(device.name, "gravity", device.gravity, "at most " + Check.LARGEST + " m/s²");
    }
    names();
    device.members.forEach(this::member);
    device.joints.forEach(joint -> point(joint.name(), "at", joint.at()));
    device.connections.forEach(this::connection);
    problems.addAll(new OpposedPushes(device).problems());
    problems.addAll(new FacingAway(device).problems());
    device.loads.forEach(load -> new LoadValidation(this).check(load));
    device.counts.forEach(
        (name, count) -> {
          if (!connections.containsKey(name)) {
            problem(name, "count", count, oneOf("connection", name, connections.keySet()));
          }
        });
    cases();
    device.advantage.ifPresent(this::advantage);
    return problems;
  }

  private void names() {
    Map<String, Body> seen = bodies;
    seen.put(Ground.NAME, Ground.GROUND);
    List<Body> all = new ArrayList<>(device.members);
    all.addAll(device.joints);
    if (all.isEmpty()) {
      problem(device.name, "members", "none", "at least one member or joint");
    }
    for (Body body : all) {
      if (seen.putIfAbsent(body.name(), body) != null) {
        problem(
            body.name(),
            "name",
            Check.quote(body.name()),
            "a name that no other body has (" + Ground.NAME + " is reserved)");
      }
    }
    for (Connection connection : device.connections) {
      if (connections.putIfAbsent(connection.name(), connection) != null) {
        taken(connection.name());
      }
    }
    for (Load load : device.loads) {
      if (connections.containsKey(load.name()) || loads.putIfAbsent(load.name(), load) != null) {
        taken(load.name());
      }
    }
  }

  private void taken(String name) {
    problem(name, "name", Check.quote(name), "a name that no other connection, load or sought has");
  }

  private void member(Member member) {
    member.points().forEach(point -> point(member.name(), "points", point));
    member.outline().forEach(point -> point(member.name(), "outline", point));
    for (Bar bar : member.bars()) {
      apart(member.name(), "bars", bar.start(), bar.end());
    }
  }

  private void connection(Connection connection) {
    String name = connection.name();
    // some kinds make these lists anew each time, and studies build many devices
    List<String> joined = connection.bodies();
    List<String> places = connection.places();
    boolean known = true;
    for (int i = 0; i < joined.size(); i++) {
      known &= body(name, joined.get(i));
      known &= point(name, "at", places.get(i));
    }
    if (!known) {
      return;
    }
    for (int i = 0; i < joined.size(); i++) {
      atJoint(name, joined.get(i), places.get(i));
    }
    if (connection instanceof Clamp
        || connection instanceof Guide
        || connection instanceof ContactBase) {
      joined.forEach(body -> notJoint(name, "joins", body));
    } else if (connection instanceof Roller
        || connection instanceof Contact
        || connection instanceof Slot) {
      // its direction is fixed in the second body, which must be able to turn with it
      notJoint(name, "joins", joined.get(1));
    } else if (connection instanceof Strut
        || connection instanceof Line
        || connection instanceof Screw) {
      apart(name, "ends", places.get(0), places.get(1));
    } else if (connection instanceof Reeving reeving) {
      rope(
          name,
          reeving.stops(),
          reeving.hauling() != Reeving.Hauling.IDEAL && reeving.efficiency() < 1);
    } else if (connection instanceof Wrap wrap) {
      rope(name, List.of(wrap.first(), wrap.post(), wrap.last()), false);
    }
  }

  private void rope(String name, List<Stop> stops, boolean losses) {
    Set<String> joined = new HashSet<>();
    for (int i = 0; i < stops.size(); i++) {
      Stop stop = stops.get(i);
      joined.add(stop.body());
      if (stop.kind() == Stop.Kind.DRUM || stop.kind() == Stop.Kind.POST) {
        notJoint(name, stop.kind().name().toLowerCase(Locale.ROOT), stop.body());
      } else if (stop.kind() == Stop.Kind.SHEAVE && stop.radius() > 0 && losses) {
        // the tensions differ, so the sheave's bearing turns what carries it
        notJoint(name, "sheave", stop.body());
      }
      if (i == 0) {
        continue;
      }
      Stop before = stops.get(i - 1);
      double distance =
          device
              .points
              .getOrDefault(before.at(), Point.ORIGIN)
              .distance(device.points.getOrDefault(stop.at(), Point.ORIGIN));
      double least =
          Math.abs(before.turn().sign() * before.radius() - stop.turn().sign() * stop.radius());
      if (!(distance > least)) {
        problem(
            name,
            "stops " + i + " and " + (i + 1),
            distance + " m apart",
            "more than " + least + " m, so that the rope has a straight part between them");
      }
    }
    if (joined.size() < 2) {
      problem(name, "joins", joined, "at least two bodies");
    }
  }

  private void cases() {
    Set<String> seen = new HashSet<>();
    for (LoadCase one : device.cases) {
      if (!seen.add(one.name())) {
        problem(one.name(), "name", Check.quote(one.name()), "a name that no other case has");
      }
      for (String load : one.factors().keySet()) {
        Load found = loads.get(load);
        if (found == null || found instanceof Sought) {
          problem(one.name(), "factors", Check.quote(load), oneOf("load", load, loads.keySet()));
        }
      }
    }
  }

  private void advantage(EffortAndResistance pair) {
    force("effort", pair.effort());
    force("resistance", pair.resistance());
  }

  private void force(String field, String name) {
    List<String> usable = new ArrayList<>();
    device.loads.stream().filter(this::canWork).forEach(one -> usable.add(one.name()));
    device.connections.stream()
        .filter(DeviceValidation::canWork)
        .forEach(one -> usable.add(one.name()));
    if (usable.contains(name)) {
      return;
    }
    boolean otherKind = loads.containsKey(name) || connections.containsKey(name);
    problem(
        "advantage",
        field,
        Check.quote(name),
        otherKind
            ? "another kind of part than " + Check.quote(name) + " is: " + EFFORT_OR_RESISTANCE
            : EFFORT_OR_RESISTANCE + "; " + oneOf("part", name, usable));
  }

  private boolean canWork(Load load) {
    return load instanceof Force
        || load instanceof Weight
        // what turns a screw about its own axis has a range, and so is an effort if it is sought
        || (load instanceof Couple couple && !isScrew(couple.member()))
        || (load instanceof Sought sought
            && sought.want() != Sought.Want.COMPONENTS
            && sought.want() != Sought.Want.INTENSITY);
  }

  /** Whether a connection can be let go, so that its tension is an effort or a resistance. */
  private static boolean canWork(Connection connection) {
    return connection instanceof Strut
        || connection instanceof Line
        || connection instanceof Reeving
        || connection instanceof Screw;
  }

  /** Whether there is a screw of that name, and the name is no body's. */
  boolean isScrew(String name) {
    return !bodies.containsKey(name) && connections.get(name) instanceof Screw;
  }

  /** The pin of that name, if the name is no body's. */
  boolean isPin(String name) {
    return !bodies.containsKey(name) && connections.get(name) instanceof Pin;
  }

  String placeOfPin(String name) {
    Connection pin = connections.get(name);
    return pin == null ? "" : pin.places().get(0);
  }

  Body known(String name) {
    return bodies.getOrDefault(name, Ground.GROUND);
  }

  boolean body(String part, String body) {
    if (bodies.containsKey(body)) {
      return true;
    }
    problem(part, "body", Check.quote(body), oneOf("body", body, bodies.keySet()));
    return false;
  }

  boolean isBody(String name) {
    return bodies.containsKey(name);
  }

  List<String> memberAndScrewNames() {
    List<String> names = new ArrayList<>(device.members.stream().map(Member::name).toList());
    connections.values().stream()
        .filter(Screw.class::isInstance)
        .forEach(screw -> names.add(screw.name()));
    return names;
  }

  List<String> bodyAndPinNames() {
    List<String> names = new ArrayList<>(bodies.keySet());
    connections.values().stream()
        .filter(Pin.class::isInstance)
        .forEach(pin -> names.add(pin.name()));
    return names;
  }

  boolean point(String part, String field, String point) {
    if (device.points.containsKey(point)) {
      return true;
    }
    problem(part, field, Check.quote(point), oneOf("point", point, device.points.keySet()));
    return false;
  }

  void apart(String part, String field, String start, String end) {
    Point a = device.points.get(start);
    Point b = device.points.get(end);
    if (a != null && b != null && a.distance(b) <= Device.SAME_PLACE) {
      problem(part, field, start + " and " + end + " at the same place", "two places apart");
    }
  }

  /** A load per horizontal metre on an upright segment would vanish without a word. */
  void level(SpreadLoad spread) {
    Point a = device.points.get(spread.from());
    Point b = device.points.get(spread.to());
    if (a != null
        && b != null
        && spread.per() == SpreadLoad.Per.HORIZONTAL
        && Math.abs(b.x() - a.x()) <= Device.SAME_PLACE) {
      problem(
          spread.name(),
          "per",
          "horizontal on the upright segment " + spread.from() + " to " + spread.to(),
          "length, or a segment that covers some horizontal width");
    }
  }

  void notJoint(String part, String field, String body) {
    if (bodies.get(body) instanceof Joint) {
      problem(part, field, "the joint " + body, "a member or the ground, which can turn or hold");
    }
  }

  void atJoint(String part, String body, String place) {
    if (bodies.get(body) instanceof Joint joint) {
      Point own = device.points.get(joint.at());
      Point used = device.points.get(place);
      if (own != null && used != null && !own.equals(used)) {
        problem(
            part,
            "at",
            Check.quote(place),
            "the place of joint " + body + ", which is " + joint.at());
      }
    }
  }

  boolean hasBars(String member) {
    return bodies.get(member) instanceof Member found && !found.bars().isEmpty();
  }

  void problem(String part, String field, Object value, String wanted) {
    problems.add(new Problem(part, field, String.valueOf(value), wanted));
  }

  static String oneOf(String kind, String wrong, Collection<String> known) {
    if (known.isEmpty()) {
      return "the name of a " + kind + " (there is none)";
    }
    return NearestName.of(wrong, known)
        .map(near -> "the name of a " + kind + "; the nearest is " + Check.quote(near))
        .orElseGet(
            () ->
                "the name of a "
                    + kind
                    + ": "
                    + String.join(", ", known.stream().sorted().limit(12).toList())
                    + (known.size() > 12 ? ", …" : ""));
  }
}
