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
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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

  /** The sizing of the bar that is easiest to buckle. */
  static Optional<Sized> slimmest(Sizing sizing, String member, List<Bar> bars) {
    if (bars.stream().anyMatch(bar -> sizing.sized(member, bar).isEmpty())) {
      return Optional.empty();
    }
    return bars.stream()
        .flatMap(bar -> sizing.sized(member, bar).stream())
        .min(Comparator.comparingDouble(Stretches::stiffness));
  }

  private static double stiffness(Sized sized) {
    Section section = sized.section();
    double gyration = section.leastGyration();
    return sized.material().elasticity() * section.area() * gyration * gyration;
  }

  static boolean hasTension(Connection connection) {
    return connection instanceof Line
        || connection instanceof Strut
        || connection instanceof Reeving
        || connection instanceof Wrap
        || connection instanceof Screw;
  }
}
