package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Line2;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;

/** Draws lines of action: moment arms, and where three forces meet. */
record ActionLines(Scene scene, View view, Amount amount) {

  /** A meeting point farther away than this, in sizes of the picture, is only told. */
  private static final double FARTHEST = 0.9;

  /** Drops the perpendicular from a point on the line of a force; returns its length in m. */
  double arm(ActingForce force, Point about) {
    Line2 line = Line2.of(force.at(), Direction.from(force.vector()));
    double arm = line.arm(about);
    Direction along = line.direction();
    // counter-clockwise: the line passes on the right of who looks along it from the point
    Point foot = about.plus(along.perpendicular().opposite().times(arm));
    through(force.at(), foot, along);
    Point start = view.at(about);
    Point end = view.at(foot);
    scene.draw(Layer.CONSTRUCTION, "measure arm", Pen.line(start, end));
    scene.circle(Layer.CONSTRUCTION, "dot", start, 2.6);
    if (start.distance(end) > 12) {
      Vector in = end.to(start).times(8 / start.distance(end));
      Vector on = in.perpendicular();
      Point corner = end.plus(in).plus(on);
      scene.draw(Layer.CONSTRUCTION, "measure", Pen.from(end.plus(in)).to(corner).to(end.plus(on)));
    }
    scene.block(start, end, 1.5);
    scene.label(ForceLabels.along(List.of(amount.length(Math.abs(arm))), "measure", start, end));
    return Math.abs(arm);
  }

  /** The line of a force through two of its places and a little beyond. */
  private void through(Point a, Point b, Direction along) {
    Vector beyond = View.unit(Vector.of(along.x(), along.y())).times(18);
    boolean forward = a.to(b).dot(along.times(1)) >= 0;
    Point start = view.at(a);
    Point end = view.at(b).plus(forward ? beyond : beyond.times(-1));
    scene.draw(Layer.CONSTRUCTION, "action", Pen.line(start, end));
    scene.block(start, end, 0.5);
  }

  /** Draws where the lines of three forces meet; empty if they are parallel or meet far away. */
  Optional<Point> meeting(List<ActingForce> forces) {
    Optional<Point> found = crossing(forces);
    if (found.isEmpty()) {
      return found;
    }
    Point meeting = view.at(found.get());
    Room drawn = scene.bounds();
    double room = FARTHEST * Math.max(drawn.width(), drawn.height());
    if (drawn.nearest(meeting).distance(meeting) > room) {
      return Optional.empty();
    }
    for (ActingForce force : forces) {
      Point at = view.at(force.at());
      if (at.distance(meeting) > 1) {
        through(force.at(), found.get(), Direction.from(force.at(), found.get()));
      }
    }
    scene.circle(Layer.FORCE, "sheave", meeting, 5.5);
    scene.circle(Layer.FORCE, "dot", meeting, 2.2);
    scene.label(ForceLabels.round(List.of("lines meet"), "measure", meeting, 9));
    return found;
  }

  /** Where two lines that are farthest from parallel cross. */
  static Optional<Point> crossing(List<ActingForce> forces) {
    if (forces.size() != 3) {
      return Optional.empty();
    }
    double best = 1e-3;
    Optional<Point> found = Optional.empty();
    for (int i = 0; i < 3; i++) {
      ActingForce a = forces.get(i);
      ActingForce b = forces.get((i + 1) % 3);
      double sine = Math.abs(a.vector().cross(b.vector())) / a.size() / b.size();
      if (sine > best) {
        best = sine;
        found =
            Line2.of(a.at(), Direction.from(a.vector()))
                .crossing(Line2.of(b.at(), Direction.from(b.vector())));
      }
    }
    return found;
  }
}
