package bellcrank.statics.drawing;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;

/** Draws connections at one place, with the ground where they join it. */
record SupportShapes(Scene scene, View view, Places places) {

  private static final List<Vector> WAYS =
      List.of(Vector.of(0, 1), Vector.of(-1, 0), Vector.of(1, 0), Vector.of(0, -1));

  /**
   * Draws a connection that is not cut.
   *
   * @param ground whether the ground is drawn as well
   */
  void draw(Connection connection, boolean ground) {
    boolean onGround = ground && connection.bodies().contains(Ground.NAME);
    if (new LinkShapes(scene, view, places).draw(connection)) {
      if (onGround) {
        anchors(connection);
      }
      return;
    }
    Point at = view.at(places.of(connection.bodies().get(0), connection.places().get(0)));
    GroundShapes shapes = new GroundShapes(scene);
    if (connection instanceof Pin) {
      pin(at, onGround);
    } else if (connection instanceof Clamp) {
      clamp(at, onGround);
    } else if (connection instanceof Roller roller) {
      Vector solid = away(roller.other(), roller.push());
      if (onGround) {
        shapes.wheels(at, solid, roller.sides() == Sides.TWO);
        scene.circle(Layer.PIN, "hole", at, 3.6);
      } else {
        scene.circle(Layer.PIN, "sheave", at.plus(solid.times(-4)), 4);
      }
    } else if (connection instanceof Contact contact) {
      surface(at, away(contact.other(), contact.push()), 16, onGround);
    } else if (connection instanceof ContactBase base) {
      foot(base);
      double half = halfWidth(base);
      surface(at, away(base.other(), base.push()), half + 8, onGround);
    } else if (connection instanceof Slot slot) {
      Vector along = View.unit(turned(slot.other(), slot.along()));
      slot(at, along, onGround);
      scene.circle(Layer.PIN, "hole", at, 3.6);
    } else if (connection instanceof Guide guide) {
      Vector along = View.unit(turned(guide.other(), guide.along()));
      slot(at, along, onGround);
      Vector half = along.times(9);
      Vector side = along.perpendicular().times(4.5);
      scene.draw(
          Layer.PIN,
          "plate",
          Pen.from(at.plus(half).plus(side))
              .to(at.plus(half).plus(side.times(-1)))
              .to(at.plus(half.times(-1)).plus(side.times(-1)))
              .to(at.plus(half.times(-1)).plus(side))
              .close());
    }
  }

  private double halfWidth(ContactBase base) {
    return Math.max(6, base.width() / 2 * view.scale());
  }

  /** The flat underside of a base. */
  void foot(ContactBase base) {
    Point at = view.at(places.of(base.body(), base.at()));
    Vector along = away(base.other(), base.push()).perpendicular().times(halfWidth(base));
    scene.draw(Layer.BODY, "ground-line", Pen.line(at.plus(along), at.plus(along.times(-1))));
  }

  private Vector turned(String body, Direction drawn) {
    Direction turned = places.pose().frame(body).apply(drawn);
    return Vector.of(turned.x(), turned.y());
  }

  /** Into the solid of a body that pushes in a direction. */
  private Vector away(String body, Direction push) {
    return View.unit(turned(body, push)).times(-1);
  }

  private void pin(Point at, boolean onGround) {
    if (onGround) {
      new GroundShapes(scene).block(at, clear(at, 22));
    }
    scene.circle(Layer.PIN, "hole", at, 4.4);
    scene.circle(Layer.PIN, "dot", at, 1.4);
  }

  private void clamp(Point at, boolean onGround) {
    if (onGround) {
      new GroundShapes(scene).across(at, clear(at, 14), 17);
    } else {
      Vector half = Vector.of(4.5, 4.5);
      scene.draw(
          Layer.PIN,
          "plate",
          Pen.from(at.plus(half))
              .to(at.plus(half.perpendicular()))
              .to(at.plus(half.times(-1)))
              .to(at.plus(half.perpendicular().times(-1)))
              .close());
    }
  }

  /** The way from a point, of the four along the axes, on which least is drawn. */
  private Vector clear(Point at, double length) {
    Vector best = WAYS.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < WAYS.size(); i++) {
      double crowd = scene.crowding(at, at.plus(WAYS.get(i).times(length))) + 0.6 * i;
      if (crowd < least) {
        least = crowd;
        best = WAYS.get(i);
      }
    }
    return best;
  }

  private void surface(Point at, Vector solid, double half, boolean onGround) {
    if (onGround) {
      new GroundShapes(scene).across(at.plus(solid.times(1)), solid, half);
    } else {
      Vector along = solid.perpendicular().times(Math.min(half, 12));
      scene.draw(Layer.PIN, "contact", Pen.line(at.plus(along), at.plus(along.times(-1))));
    }
  }

  /** Two edges along a direction, with the ground behind them or as a slot in a member. */
  private void slot(Point at, Vector along, boolean onGround) {
    Vector half = along.times(18);
    Vector side = along.perpendicular().times(6);
    for (int sense = -1; sense <= 1; sense += 2) {
      Point middle = at.plus(side.times(sense));
      if (onGround) {
        new GroundShapes(scene)
            .line(middle.plus(half.times(-1)), middle.plus(half), side.times(sense / 6.0));
      } else {
        scene.draw(Layer.PIN, "edge", Pen.line(middle.plus(half.times(-1)), middle.plus(half)));
      }
    }
  }

  private void anchors(Connection connection) {
    GroundShapes shapes = new GroundShapes(scene);
    if (connection instanceof Reeving || connection instanceof Wrap) {
      List<Stop> stops =
          connection instanceof Reeving reeving
              ? reeving.stops()
              : List.of(
                  ((Wrap) connection).first(),
                  ((Wrap) connection).post(),
                  ((Wrap) connection).last());
      List<Strand> strands = Strand.of(places, stops);
      end(shapes, stops.get(0), strands.get(0).along().times(-1));
      end(shapes, stops.get(stops.size() - 1), strands.get(strands.size() - 1).along());
      return;
    }
    for (int i = 0; i < 2; i++) {
      if (connection.bodies().get(i).equals(Ground.NAME)) {
        Point at = places.of(Ground.NAME, connection.places().get(i));
        Point other = places.of(connection.bodies().get(1 - i), connection.places().get(1 - i));
        if (connection instanceof Line) {
          anchor(shapes, at, other.to(at));
        } else if (connection instanceof Strut || connection instanceof Screw) {
          shapes.block(view.at(at), clear(view.at(at), 22));
        }
      }
    }
  }

  private void end(GroundShapes shapes, Stop stop, Vector outwards) {
    if (stop.body().equals(Ground.NAME) && stop.kind() == Stop.Kind.END) {
      anchor(shapes, places.of(stop.body(), stop.at()), outwards);
    }
  }

  private void anchor(GroundShapes shapes, Point at, Vector outwards) {
    if (outwards.norm() > 0) {
      shapes.anchor(view.at(at), View.unit(outwards));
    }
  }
}
