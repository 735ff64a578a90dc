package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;

/** Draws one path of the sheet and keeps the room that it takes. */
final class Pen {

  private final StringBuilder data = new StringBuilder();
  private Room box;

  private Pen(Point start) {
    box = Room.at(start);
  }

  static Pen from(Point start) {
    return new Pen(start).move(start);
  }

  static Pen line(Point start, Point end) {
    return from(start).to(end);
  }

  Pen move(Point point) {
    return step('M', point);
  }

  Pen to(Point point) {
    return step('L', point);
  }

  private Pen step(char command, Point point) {
    data.append(command).append(Figure.of(point.x())).append(' ').append(Figure.of(point.y()));
    box = box.with(point);
    return this;
  }

  Pen close() {
    data.append('Z');
    return this;
  }

  /** An arc from where the pen is: angles in rad, counter-clockwise positive as it is seen. */
  Pen arc(Point centre, double radius, double start, double end) {
    Point goal = on(centre, radius, end);
    data.append('A').append(Figure.of(radius)).append(' ').append(Figure.of(radius)).append(" 0 ");
    data.append(Math.abs(end - start) > Math.PI ? '1' : '0').append(' ');
    data.append(end > start ? '0' : '1').append(' ');
    data.append(Figure.of(goal.x())).append(' ').append(Figure.of(goal.y()));
    int parts = 1 + (int) Math.ceil(Math.abs(end - start) / 0.3);
    for (int i = 0; i <= parts; i++) {
      box = box.with(on(centre, radius, start + (end - start) * i / parts));
    }
    return this;
  }

  /** A point of a circle of the sheet, the angle counter-clockwise as it is seen. */
  static Point on(Point centre, double radius, double angle) {
    return Point.of(centre.x() + radius * Math.cos(angle), centre.y() - radius * Math.sin(angle));
  }

  String data() {
    return data.toString();
  }

  Room box() {
    return box;
  }

  Element element(String css) {
    return Element.of("path").with("class", css).with("d", data());
  }
}
