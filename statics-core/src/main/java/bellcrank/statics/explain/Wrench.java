package bellcrank.statics.explain;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.BitSet;
import java.util.List;

/** Sum of forces and couples on a cut: force, and moment about the middle of the device. */
record Wrench(double x, double y, double moment, double size) {

  static final Wrench NONE = new Wrench(0, 0, 0, 0);

  /** What is left of links on a cut. */
  static Wrench of(List<Link> links, BitSet cut, Point middle, double length) {
    Wrench sum = NONE;
    for (Link link : links) {
      sum = sum.plus(of(link, cut, middle, length));
    }
    return sum;
  }

  static Wrench of(Link link, BitSet cut, Point middle, double length) {
    boolean first = link.body() >= 0 && cut.get(link.body());
    boolean second = link.other() >= 0 && cut.get(link.other());
    if (first == second) {
      return NONE;
    }
    double sign = first ? 1 : -1;
    Vector arm = middle.to(first ? link.at() : link.otherAt());
    double size = link.force().norm() + Math.abs(link.couple()) / length;
    return new Wrench(
        sign * link.force().x(),
        sign * link.force().y(),
        sign * (arm.cross(link.force()) + link.couple()),
        size);
  }

  private Wrench plus(Wrench other) {
    return new Wrench(x + other.x, y + other.y, moment + other.moment, size + other.size);
  }

  boolean isNothing(double zero, double length) {
    return Math.hypot(x, y) <= zero * size && Math.abs(moment) <= zero * size * length;
  }

  boolean isCouple(double zero) {
    return Math.hypot(x, y) <= zero * size;
  }

  double about(Vector fromMiddle) {
    return moment - fromMiddle.x() * y + fromMiddle.y() * x;
  }

  double along(Direction direction) {
    return x * direction.x() + y * direction.y();
  }
}
