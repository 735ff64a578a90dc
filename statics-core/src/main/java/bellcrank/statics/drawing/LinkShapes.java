package bellcrank.statics.drawing;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Draws what reaches from one place to another: struts, lines, screws, springs and ropes. */
record LinkShapes(Scene scene, View view, Places places) {

  /** A sheave that is a point is drawn with this radius. */
  private static final double POINT_SHEAVE = 5;

  private static final int TURNS = 5;

  private static final double COIL = 6;

  private static final int COIL_TURNS = 2;

  /** Draws a connection if it is of this kind; tells whether it was. */
  boolean draw(Connection connection) {
    if (connection instanceof Strut strut) {
      strut(view.at(places.of(strut.first())), view.at(places.of(strut.second())));
    } else if (connection instanceof Line line) {
      rope(view.at(places.of(line.first())), view.at(places.of(line.second())));
    } else if (connection instanceof Screw screw) {
      screw(view.at(places.of(screw.first())), view.at(places.of(screw.second())));
    } else if (connection instanceof Reeving reeving) {
      reeving(reeving.stops());
    } else if (connection instanceof Wrap wrap) {
      reeving(List.of(wrap.first(), wrap.post(), wrap.last()));
    } else {
      return false;
    }
    return true;
  }

  void spring(Spring spring) {
    Point a = view.at(places.of(spring.first()));
    Point b = view.at(places.of(spring.second()));
    Vector way = a.to(b);
    if (way.norm() == 0) {
      return;
    }
    Vector side = way.perpendicular().times(7 / way.norm());
    Pen pen = Pen.from(a).to(a.plus(way.times(0.15)));
    for (int i = 0; i < 2 * TURNS; i++) {
      double share = 0.15 + 0.7 * (i + 0.5) / (2 * TURNS);
      pen.to(a.plus(way.times(share)).plus(i % 2 == 0 ? side : side.times(-1)));
    }
    scene.draw(Layer.LINK, "spring", pen.to(a.plus(way.times(0.85))).to(b));
    scene.block(a, b, 1.5);
    ends(a, b);
  }

  /** A torsion spring: two turns of a spiral. */
  void coil(Point at) {
    Pen pen = Pen.from(Pen.on(at, COIL, 0));
    int steps = 8 * COIL_TURNS;
    for (int i = 1; i <= steps; i++) {
      pen.to(Pen.on(at, COIL * (1 + 1.4 * i / steps), 2 * Math.PI * COIL_TURNS * i / steps));
    }
    scene.draw(Layer.LINK, "spring", pen);
    double outer = 2.4 * COIL;
    scene.block(Pen.on(at, outer, 0), Pen.on(at, outer, Math.PI), 1.5);
  }

  /** Draws the sheaves and drums of a rope that sit on some bodies, without the rope. */
  void sheaves(Connection connection, Predicate<String> bodies) {
    List<Stop> stops =
        connection instanceof Reeving reeving
            ? reeving.stops()
            : connection instanceof Wrap wrap
                ? List.of(wrap.first(), wrap.post(), wrap.last())
                : List.of();
    for (Stop stop : stops) {
      if (stop.kind() != Stop.Kind.END && bodies.test(stop.body())) {
        round(stop, view.at(places.of(stop.body(), stop.at())));
      }
    }
  }

  private void strut(Point a, Point b) {
    scene.draw(Layer.BODY, "rim strut", Pen.line(a, b));
    scene.draw(Layer.BODY, "core strut", Pen.line(a, b));
    scene.block(a, b, 1);
    ends(a, b);
  }

  private void ends(Point a, Point b) {
    scene.circle(Layer.PIN, "hole", a, 2.6);
    scene.circle(Layer.PIN, "hole", b, 2.6);
  }

  private void rope(Point a, Point b) {
    scene.draw(Layer.LINK, "rope", Pen.line(a, b));
    scene.circle(Layer.PIN, "dot", a, 2.6);
    scene.circle(Layer.PIN, "dot", b, 2.6);
    scene.block(a, b, 1);
  }

  private void screw(Point a, Point b) {
    strut(a, b);
    Vector way = a.to(b);
    if (way.norm() == 0) {
      return;
    }
    Vector unit = way.times(1 / way.norm());
    Vector slant = unit.perpendicular().times(5).plus(unit.times(2));
    for (double along = 8; along < way.norm() - 6 && along < 400; along += 7) {
      Point at = a.plus(unit.times(along));
      scene.draw(Layer.LINK, "thread", Pen.line(at.plus(slant), at.plus(slant.times(-1))));
    }
  }

  private void reeving(List<Stop> stops) {
    List<Strand> strands = Strand.of(places, stops);
    for (Strand strand : strands) {
      Point a = view.at(strand.start());
      Point b = view.at(strand.end());
      scene.draw(Layer.LINK, "rope", Pen.line(a, b));
      scene.block(a, b, 1);
    }
    for (int i = 0; i < stops.size(); i++) {
      Stop stop = stops.get(i);
      Point centre = view.at(places.of(stop.body(), stop.at()));
      if (stop.kind() == Stop.Kind.END) {
        scene.circle(Layer.PIN, "dot", centre, 2.6);
      } else {
        round(stop, centre);
        if (i > 0 && i < stops.size() - 1 && stop.radius() > 0) {
          arc(strands.get(i - 1), strands.get(i), stop, centre);
        }
      }
    }
  }

  private void round(Stop stop, Point centre) {
    double radius = stop.radius() * view.scale();
    double drawn = Math.max(radius, POINT_SHEAVE);
    scene.circle(Layer.BODY, "sheave", centre, drawn);
    if (stop.kind() == Stop.Kind.DRUM) {
      scene.circle(Layer.BODY, "sheave", centre, 0.7 * drawn);
    } else if (stop.kind() == Stop.Kind.POST) {
      Vector diagonal = Vector.of(0.7, 0.7).times(drawn);
      Vector other = diagonal.perpendicular();
      scene.draw(
          Layer.BODY, "hatch", Pen.line(centre.plus(diagonal), centre.plus(diagonal.times(-1))));
      scene.draw(Layer.BODY, "hatch", Pen.line(centre.plus(other), centre.plus(other.times(-1))));
    }
    scene.circle(Layer.PIN, "dot", centre, 1.8);
    int sides = 12;
    for (int i = 0; i < sides; i++) {
      scene.block(
          Pen.on(centre, drawn, 2 * Math.PI * i / sides),
          Pen.on(centre, drawn, 2 * Math.PI * (i + 1) / sides),
          1);
    }
    if (stop.body().equals(Ground.NAME) && stop.kind() != Stop.Kind.POST) {
      new GroundShapes(scene).under(centre, drawn + 3);
    }
  }

  /** The part of the rope that lies on a sheave. */
  private void arc(Strand in, Strand out, Stop stop, Point centre) {
    double radius = stop.radius() * view.scale();
    double start = angle(centre, view.at(in.end()));
    double end = angle(centre, view.at(out.start()));
    int sense = stop.turn().sign();
    double swept = (end - start) * sense % (2 * Math.PI);
    swept = swept < 0 ? swept + 2 * Math.PI : swept;
    if (radius > 1 && swept > 1e-3) {
      Pen pen = Pen.from(view.at(in.end())).arc(centre, radius, start, start + sense * swept);
      scene.draw(Layer.LINK, "rope", pen);
    }
  }

  private static double angle(Point centre, Point point) {
    return Math.atan2(centre.y() - point.y(), point.x() - centre.x());
  }

  /** Where labels of such a connection belong: the ends of its longest straight part. */
  List<Point> stretch(Connection connection) {
    List<Point> best = new ArrayList<>();
    if (connection instanceof Reeving reeving) {
      longest(Strand.of(places, reeving.stops()), best);
    } else if (connection instanceof Wrap wrap) {
      longest(Strand.of(places, List.of(wrap.first(), wrap.post(), wrap.last())), best);
    } else {
      for (int i = 0; i < 2; i++) {
        best.add(view.at(places.of(connection.bodies().get(i), connection.places().get(i))));
      }
    }
    return best;
  }

  private void longest(List<Strand> strands, List<Point> best) {
    double length = -1;
    for (Strand strand : strands) {
      double own = strand.start().distance(strand.end());
      if (own > length) {
        length = own;
        best.clear();
        best.add(view.at(strand.start()));
        best.add(view.at(strand.end()));
      }
    }
  }
}
