package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;

/** Draws the ground: a line with strokes on the side that is solid. */
record GroundShapes(Scene scene) {

  private static final double STROKE = 8;

  private static final double HALF_WIDTH = 15;

  /** Most strokes of one line, however long it is. */
  private static final int MOST = 60;

  /** A line with strokes towards the solid side. */
  void line(Point start, Point end, Vector solid) {
    scene.draw(Layer.GROUND, "ground-line", Pen.line(start, end));
    Vector way = start.to(end);
    int strokes = (int) Math.min(MOST, Math.max(3, Math.round(way.norm() / 6)));
    Vector unit = way.norm() > 0 ? way.times(1 / way.norm()) : Vector.of(1, 0);
    Vector stroke = solid.times(STROKE).plus(unit.times(-0.75 * STROKE));
    Pen pen = Pen.from(start);
    for (int i = 0; i < strokes; i++) {
      Point at = start.plus(way.times((i + 0.7) / strokes));
      pen.move(at).to(at.plus(stroke));
    }
    scene.draw(Layer.GROUND, "hatch", pen);
    scene.block(start.plus(solid.times(4)), end.plus(solid.times(4)), 1);
  }

  /** Ground across a direction, in the middle of which a point lies. */
  void across(Point at, Vector solid, double halfWidth) {
    Vector along = solid.perpendicular().times(halfWidth);
    line(at.plus(along.times(-1)), at.plus(along), solid);
  }

  /** The bearing block of a pin: a triangle on the ground. */
  void block(Point pin, Vector solid) {
    foot(pin, solid, 18);
    across(pin.plus(solid.times(18)), solid, HALF_WIDTH);
  }

  /** A bearing block on wheels. */
  void wheels(Point pin, Vector solid, boolean bothSides) {
    foot(pin, solid, 14);
    Vector along = solid.perpendicular();
    Point middle = pin.plus(solid.times(17.5));
    scene.circle(Layer.GROUND, "sheave", middle.plus(along.times(7)), 3.5);
    scene.circle(Layer.GROUND, "sheave", middle.plus(along.times(-7)), 3.5);
    across(pin.plus(solid.times(21)), solid, HALF_WIDTH + 3);
    if (bothSides) {
      // a rail on the other side of the wheels keeps it from lifting
      Point rail = pin.plus(solid.times(14));
      for (int side = -1; side <= 1; side += 2) {
        Point inner = rail.plus(along.times(side * 7));
        scene.draw(Layer.GROUND, "ground-line", Pen.line(inner, rail.plus(along.times(side * 17))));
      }
    }
  }

  private void foot(Point pin, Vector solid, double height) {
    Vector along = solid.perpendicular().times(0.55 * height);
    Point base = pin.plus(solid.times(height));
    scene.draw(
        Layer.GROUND,
        "plate",
        Pen.from(pin).to(base.plus(along)).to(base.plus(along.times(-1))).close());
    scene.block(pin, base, 1.5);
    scene.block(base.plus(along), base.plus(along.times(-1)), 1);
  }

  /** A hanger from above for something round. */
  void under(Point centre, double radius) {
    Point top = Point.of(centre.x(), centre.y() - radius - 6);
    scene.draw(Layer.GROUND, "hatch", Pen.line(centre, top));
    across(top, Vector.of(0, -1), 10);
  }

  /** A small anchor at the end of a rope, strut or spring; the solid lies away from it. */
  void anchor(Point end, Vector solid) {
    across(end.plus(solid.times(3)), solid, 9);
  }
}
