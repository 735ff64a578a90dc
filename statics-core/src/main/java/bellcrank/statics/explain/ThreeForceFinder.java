package bellcrank.statics.explain;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Line2;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds bodies on which just three forces act; it serves as a check of the numbers. */
final class ThreeForceFinder {

  /** Share of the largest force below which a force is none. */
  private static final double NONE = 1e-9;

  /** Lines whose angle has a smaller sine are parallel. */
  private static final double PARALLEL = 1e-6;

  private static final int THREE = 3;

  private final Picture picture;
  private final Plan plan;
  private final Set<Integer> bodies;

  ThreeForceFinder(Picture picture, Plan plan, Set<Integer> bodies) {
    this.picture = picture;
    this.plan = plan;
    this.bodies = bodies;
  }

  private record Acts(Point at, Vector force) {}

  List<Step> find() {
    List<Step> found = new ArrayList<>();
    bodies.stream()
        .filter(body -> !picture.particles().get(body))
        .sorted()
        .forEach(body -> check(body).ifPresent(found::add));
    return found;
  }

  private Optional<Step> check(int body) {
    Map<String, Acts> forces = new LinkedHashMap<>();
    boolean couple = false;
    for (int k = 0; k < picture.unknowns().size(); k++) {
      String part = picture.unknowns().get(k).part();
      for (Link link : picture.links().get(k)) {
        couple |= !add(forces, part, link, body, plan.value(k));
      }
    }
    for (KnownLoad load : picture.loads()) {
      couple |= !add(forces, load.name(), load.link(), body, 1);
    }
    double largest = 0;
    for (Acts acts : forces.values()) {
      largest = Math.max(largest, acts.force().norm());
    }
    double none = NONE * largest;
    forces.values().removeIf(acts -> acts.force().norm() <= none);
    if (couple || forces.size() != THREE) {
      return Optional.empty();
    }
    return Optional.of(
        new Step.ThreeForces(
            picture.bodies().get(body),
            List.copyOf(forces.keySet()),
            meeting(List.copyOf(forces.values()))));
  }

  /** Adds a force of a part; whether it was a force and no couple. */
  private static boolean add(
      Map<String, Acts> forces, String part, Link link, int body, double value) {
    boolean first = link.body() == body;
    if (first == (link.other() == body) || value == 0) {
      return true;
    }
    Point at = first ? link.at() : link.otherAt();
    Vector force = link.force().times(first ? value : -value);
    String name = part;
    Acts before = forces.get(name);
    for (int more = 2; before != null && !before.at().equals(at); more++) {
      name = part + " (" + more + ")";
      before = forces.get(name);
    }
    forces.put(name, new Acts(at, before == null ? force : before.force().plus(force)));
    return link.couple() == 0;
  }

  private Optional<Point> meeting(List<Acts> three) {
    for (int i = 1; i < THREE; i++) {
      Acts a = three.get(0);
      Acts b = three.get(i);
      Direction da = Direction.from(a.force());
      Direction db = Direction.from(b.force());
      if (Math.abs(da.x() * db.y() - da.y() * db.x()) > PARALLEL) {
        return Line2.of(a.at(), da).crossing(Line2.of(b.at(), db));
      }
    }
    return Optional.empty();
  }
}
