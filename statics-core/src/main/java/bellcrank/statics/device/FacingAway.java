package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds contacts whose push faces away: out of the outline of the body that is pushed, or into that
 * of the body that pushes. Only what an outline says for certain is refused, so a body without one
 * is not looked at, nor is a push along its edge.
 */
final class FacingAway {

  /** How far from the contact the two sides are looked at, relative to the outline's size. */
  private static final double PROBE = 1e-6;

  private final DeviceBuilder device;

  FacingAway(DeviceBuilder device) {
    this.device = device;
  }

  List<Problem> problems() {
    List<Problem> problems = new ArrayList<>();
    for (Connection connection : device.connections) {
      if (connection instanceof Contact contact) {
        check(contact, contact.at(), contact.push(), problems);
      } else if (connection instanceof ContactBase base) {
        check(base, base.at(), base.push(), problems);
      }
    }
    return problems;
  }

  private void check(Connection contact, String at, Direction push, List<Problem> problems) {
    Point place = device.points.get(at);
    if (place == null) {
      return;
    }
    String pushed = contact.bodies().get(0);
    String pushing = contact.bodies().get(1);
    if (leaves(pushed, place, push)) {
      problems.add(problem(contact, "out of " + pushed, "the direction into " + pushed));
    } else if (leaves(pushing, place, push.opposite())) {
      problems.add(problem(contact, "into " + pushing, "the direction out of " + pushing));
    }
  }

  private static Problem problem(Connection contact, String found, String wanted) {
    return new Problem(
        contact.name(), "push", found, wanted + ": that of the normal force on the first body");
  }

  /** Whether a way from a place on a member's outline leads out, and the way back leads in. */
  private boolean leaves(String body, Point place, Direction way) {
    List<Point> outline = outline(body);
    if (outline.size() < 3) {
      return false;
    }
    double size = 0;
    for (Point corner : outline) {
      size = Math.max(size, corner.distance(outline.get(0)));
    }
    Vector step = way.times(PROBE * size);
    return !contains(outline, place.plus(step)) && contains(outline, place.plus(step.times(-1)));
  }

  private List<Point> outline(String body) {
    List<Point> outline = new ArrayList<>();
    for (Member member : device.members) {
      if (member.name().equals(body)) {
        for (String corner : member.outline()) {
          Optional.ofNullable(device.points.get(corner)).ifPresent(outline::add);
        }
      }
    }
    return outline;
  }

  /** Whether a point lies inside, by counting the sides that a ray to the right crosses. */
  private static boolean contains(List<Point> outline, Point point) {
    boolean inside = false;
    for (int i = 0; i < outline.size(); i++) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      if (a.y() > point.y() != b.y() > point.y()) {
        double x = a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
        inside ^= point.x() < x;
      }
    }
    return inside;
  }
}
