package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;

/**
 * A straight arrow of the sheet.
 *
 * @param tail where it starts
 * @param tip where it ends
 */
record Arrow(Point tail, Point tip) {

  double length() {
    return tail.distance(tip);
  }

  Vector unit() {
    return tail.to(tip).times(1 / length());
  }

  Point middle() {
    return tail.plus(tail.to(tip).times(0.5));
  }

  /** Shaft and head: the shaft starts at the tail, the head at the tip. */
  Element element(String css, Head head) {
    double size = Head.size(length());
    // the line ends inside the head, so that the tip stays sharp
    Point end = tip.plus(unit().times(-0.8 * size));
    return Element.group(css)
        .add(Pen.line(tail, end).element("shaft"))
        .add(head.pen(tip, unit(), size).element("head"));
  }

  Room box() {
    return Room.at(tail).with(tip).grown(5);
  }
}
