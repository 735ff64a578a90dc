package bellcrank.statics.study.internal;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one unit of each unknown does to the bodies, as drawn. This is written a second time on
 * purpose, from the model and not from the solver's laws: answers that agree are held by both.
 * Forces count in N, couples in N·m.
 */
final class DualLaws {

  private final DualDevice at;
  private final boolean dryPins;
  final List<DualAction> actions = new ArrayList<>();

  /** First unknown of each connection and sought quantity by name. */
  private final Map<String, Integer> first = new HashMap<>();

  /** Unknowns that are couples. */
  final List<Boolean> couples = new ArrayList<>();

  /** By what the unknown is multiplied in the last straight part of a reeving. */
  final Map<String, Dual> lastMultiple = new HashMap<>();

  private DualLaws(DualDevice at, boolean dryPins) {
    this.at = at;
    this.dryPins = dryPins;
  }

  /**
   * The laws.
   *
   * @param dryPins whether friction couples of pins are unknowns
   */
  static DualLaws of(DualDevice at, boolean dryPins) {
    DualLaws laws = new DualLaws(at, dryPins);
    for (Connection connection : at.device.connections()) {
      laws.first.put(connection.name(), laws.couples.size());
      laws.add(connection);
    }
    for (Sought sought : at.device.sought()) {
      laws.first.put(sought.name(), laws.couples.size());
      laws.add(sought);
    }
    return laws;
  }

  /** First unknown of a connection or sought quantity. */
  int first(String name) {
    Integer column = first.get(name);
    if (column == null) {
      throw new IllegalStateException(name + " has no unknowns");
    }
    return column;
  }

  int columns() {
    return couples.size();
  }

  private int column(boolean couple) {
    couples.add(couple);
    return couples.size() - 1;
  }

  private void add(Connection connection) {
    if (connection instanceof Pin pin) {
      pin(pin);
    } else if (connection instanceof Clamp c) {
      both(c, DualVector.RIGHT);
      both(c, DualVector.UP);
      couple(c);
    } else if (connection instanceof Roller r) {
      both(r, at.way(r.name(), r.push()));
    } else if (connection instanceof Slot s) {
      both(s, at.way(s.name(), s.along().perpendicular()));
    } else if (connection instanceof Guide g) {
      both(g, at.way(g.name(), g.along().perpendicular()));
      couple(g);
    } else if (connection instanceof Contact c) {
      push(c, at.way(c.name(), c.push()), c.friction() > 0);
    } else if (connection instanceof ContactBase b) {
      push(b, at.way(b.name(), b.push()), b.friction() > 0);
      couple(b);
    } else if (connection instanceof Strut s) {
      axial(s.name(), s.first(), s.second());
    } else if (connection instanceof Line l) {
      axial(l.name(), l.first(), l.second());
    } else if (connection instanceof Screw s) {
      axial(s.name(), s.first(), s.second());
    } else if (connection instanceof Reeving reeving) {
      reeving(reeving);
    } else if (connection instanceof Wrap wrap) {
      rope(wrap, wrap.first(), wrap.post(), Dual.ONE, column(false));
      rope(wrap, wrap.post(), wrap.last(), Dual.ONE, column(false));
    }
  }

  private void pin(Pin pin) {
    List<String> bodies = pin.bodies();
    boolean dry = dryPins && pin.friction() > 0;
    if (!at.isOwnBody(pin)) {
      pair(pin, at.body(bodies.get(0)), at.body(bodies.get(1)), dry);
      return;
    }
    for (String body : bodies) {
      pair(pin, at.body(body), at.body(pin.name()), dry);
    }
  }

  private void pair(Pin pin, int body, int other, boolean dry) {
    DualVector place = at.point(pin.at());
    put(pin.name(), column(false), body, other, place, DualVector.RIGHT, Dual.ZERO);
    put(pin.name(), column(false), body, other, place, DualVector.UP, Dual.ZERO);
    if (dry) {
      put(pin.name(), column(true), body, other, place, DualVector.ZERO, Dual.ONE);
    }
  }

  private void both(Connection connection, DualVector way) {
    List<String> bodies = connection.bodies();
    put(
        connection.name(),
        column(false),
        at.body(bodies.get(0)),
        at.body(bodies.get(1)),
        at.point(connection.places().get(0)),
        way,
        Dual.ZERO);
  }

  private void couple(Connection connection) {
    List<String> bodies = connection.bodies();
    put(
        connection.name(),
        column(true),
        at.body(bodies.get(0)),
        at.body(bodies.get(1)),
        at.point(connection.places().get(0)),
        DualVector.ZERO,
        Dual.ONE);
  }

  private void push(Connection connection, DualVector push, boolean rough) {
    both(connection, push);
    if (rough) {
      both(connection, push.perpendicular().negative());
    }
  }

  private void put(
      String owner,
      int column,
      int body,
      int other,
      DualVector place,
      DualVector force,
      Dual couple) {
    actions.add(new DualAction(owner, column, body, other, place, force, couple));
    actions.add(
        new DualAction(owner, column, other, body, place, force.negative(), couple.negative()));
  }

  private void axial(String owner, End first, End second) {
    DualVector a = at.point(first.at());
    DualVector b = at.point(second.at());
    DualVector way = b.minus(a).unit();
    int column = column(false);
    int one = at.body(first.body());
    int two = at.body(second.body());
    actions.add(new DualAction(owner, column, one, two, a, way, Dual.ZERO));
    actions.add(new DualAction(owner, column, two, one, b, way.negative(), Dual.ZERO));
  }

  private void reeving(Reeving reeving) {
    Dual efficiency = at.number("efficiency", reeving.name(), reeving.efficiency());
    Dual step =
        switch (reeving.hauling()) {
          case IDEAL -> Dual.ONE;
          case RAISING -> efficiency;
          case LOWERING -> Dual.ONE.over(efficiency);
        };
    int column = column(false);
    Dual multiple = Dual.ONE;
    for (int part = 0; part + 1 < reeving.stops().size(); part++) {
      multiple = part == 0 ? Dual.ONE : multiple.times(step);
      rope(reeving, reeving.stops().get(part), reeving.stops().get(part + 1), multiple, column);
    }
    lastMultiple.put(reeving.name(), multiple);
  }

  /** Radius of the rope at a stop, counter-clockwise positive. */
  static Dual radius(DualDevice at, Connection rope, Stop stop) {
    String words = rope instanceof Wrap ? "radius" : "radius at " + stop.at();
    Dual radius =
        stop.kind() == Stop.Kind.END ? Dual.ZERO : at.number(words, rope.name(), stop.radius());
    return radius.times(stop.turn().sign());
  }

  /** Length of a straight part of a rope: a tangent of the circles at its stops. */
  static Dual tangent(DualVector way, Dual gap) {
    return way.dot(way).minus(gap.squared()).root();
  }

  private void rope(Connection rope, Stop from, Stop to, Dual multiple, int column) {
    DualVector a = at.point(from.at());
    DualVector b = at.point(to.at());
    DualVector way = b.minus(a);
    Dual r1 = radius(at, rope, from);
    Dual r2 = radius(at, rope, to);
    Dual gap = r1.minus(r2);
    Dual squared = way.dot(way);
    if (squared.value() == 0) {
      return;
    }
    Dual length = tangent(way, gap);
    // a circle run round counter-clockwise lies to the left of the rope
    DualVector along = way.times(length).plus(way.perpendicular().times(gap));
    DualVector unit = new DualVector(along.x().over(squared), along.y().over(squared));
    DualVector right = unit.perpendicular().negative();
    int one = at.body(from.body());
    int two = at.body(to.body());
    DualVector pull = unit.times(multiple);
    DualVector start = a.plus(right.times(r1));
    DualVector end = b.plus(right.times(r2));
    // a sheave, drum or post hands its rope's forces on at its centre
    DualAction first = new DualAction(rope.name(), column, one, two, start, pull, Dual.ZERO);
    actions.add(first.entering(new DualEntry.At(a)));
    DualAction second =
        new DualAction(rope.name(), column, two, one, end, pull.negative(), Dual.ZERO);
    actions.add(second.entering(new DualEntry.At(b)));
  }

  private void add(Sought sought) {
    int body = at.body(sought.body());
    DualVector place = DualVector.ZERO;
    if (sought.at().isPresent()) {
      place = at.point(sought.at().get());
      if (sought.to().isPresent()) {
        place = place.plus(at.point(sought.to().get())).times(0.5);
      }
    }
    switch (sought.want()) {
      case FORCE, INTENSITY ->
          effort(sought, body, place, at.way(sought.name(), sought.direction().orElseThrow()));
      case COMPONENTS -> {
        effort(sought, body, place, DualVector.RIGHT);
        effort(sought, body, place, DualVector.UP);
      }
      case MASS -> effort(sought, body, place, at.gravity().unit());
      case COUPLE -> {
        int column = column(true);
        boolean inPlane = at.device.body(sought.body()).isPresent();
        if (inPlane) {
          actions.add(
              new DualAction(
                  sought.name(),
                  column,
                  body,
                  DualAction.NONE,
                  place,
                  DualVector.ZERO,
                  Dual.ONE,
                  sought.at().isPresent() ? new DualEntry.At(place) : new DualEntry.Unplaced()));
        }
      }
    }
  }

  private void effort(Sought sought, int body, DualVector place, DualVector way) {
    DualAction action =
        new DualAction(sought.name(), column(false), body, DualAction.NONE, place, way, Dual.ZERO);
    if (sought.to().isPresent()) {
      DualVector from = at.point(sought.at().orElseThrow());
      DualVector to = at.point(sought.to().get());
      action = action.entering(new DualEntry.Along(from, to, way, way));
    }
    actions.add(action);
  }
}
