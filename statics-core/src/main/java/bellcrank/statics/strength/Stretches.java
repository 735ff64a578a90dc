package bellcrank.statics.strength;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;

/** The bars of a member that lie on a straight stretch between two points. */
final class Stretches {

  /** A point this near to a line, in shares of its length, is on it. */
  private static final double ON_LINE = 1e-9;

  private Stretches() {}

  static List<Bar> between(Device device, Member member, Point from, Point to) {
    return member.bars().stream()
        .filter(bar -> isOn(device.point(bar.start()), from, to))
        .filter(bar -> isOn(device.point(bar.end()), from, to))
        .toList();
  }

  private static boolean isOn(Point point, Point from, Point to) {
    Vector way = from.to(to);
    Vector there = from.to(point);
    double length = way.norm();
    double along = way.dot(there) / length;
    return Math.abs(way.cross(there)) <= ON_LINE * length * length
        && along >= -ON_LINE * length
        && along <= length * (1 + ON_LINE);
  }

  /** The different sizings of some bars; empty if one of them has none. */
  static List<Sized> sized(Sizing sizing, String member, List<Bar> bars) {
    if (bars.stream().anyMatch(bar -> sizing.sized(member, bar).isEmpty())) {
      return List.of();
    }
    return bars.stream().flatMap(bar -> sizing.sized(member, bar).stream()).distinct().toList();
  }

  static boolean hasTension(Connection connection) {
    return connection instanceof Line
        || connection instanceof Strut
        || connection instanceof Reeving
        || connection instanceof Wrap
        || connection instanceof Screw;
  }
}
