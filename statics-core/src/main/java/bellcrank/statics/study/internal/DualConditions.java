package bellcrank.statics.study.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Wrap;
import java.util.ArrayList;
import java.util.List;

/** What the one-sided and rough parts of a device can give, without ground of its own strength. */
final class DualConditions {

  private final DualDevice at;
  private final DualLaws laws;
  private final List<Condition> all = new ArrayList<>();

  private DualConditions(DualDevice at, DualLaws laws) {
    this.at = at;
    this.laws = laws;
  }

  static List<Condition> of(DualDevice at, DualLaws laws) {
    DualConditions conditions = new DualConditions(at, laws);
    for (Connection connection : at.device.connections()) {
      conditions.add(connection, laws.first(connection.name()));
    }
    return conditions.all;
  }

  private void add(Connection connection, int column) {
    if (connection instanceof Line || connection instanceof Reeving) {
      notBelowZero(column);
    } else if (connection instanceof Roller roller && roller.sides() == Sides.ONE) {
      notBelowZero(column);
    } else if (connection instanceof Slot slot && slot.sides() == Sides.ONE) {
      notBelowZero(column);
    } else if (connection instanceof Contact contact) {
      notBelowZero(column);
      slide(contact, column, contact.friction());
    } else if (connection instanceof ContactBase base) {
      notBelowZero(column);
      slide(base, column, base.friction());
      edges(base, column);
    } else if (connection instanceof Wrap wrap) {
      wrap(wrap, column);
    } else if (connection instanceof Pin pin && pin.friction() > 0) {
      pin(pin, column);
    } else if (connection instanceof Screw screw) {
      screw(screw, column);
    }
  }

  private void add(List<Integer> columns, Condition.Law law) {
    all.add(new Condition(columns, 1, law));
  }

  private void notBelowZero(int column) {
    add(List.of(column), (forces, friction) -> forces.get(0).negative());
  }

  private void slide(Connection connection, int column, double stated) {
    if (stated == 0) {
      return;
    }
    Dual mu = at.number("friction", connection.name(), stated);
    for (int side : new int[] {1, -1}) {
      add(
          List.of(column, column + 1),
          (forces, friction) ->
              forces.get(1).times(side).minus(mu.times(friction).times(forces.get(0))));
    }
  }

  private void edges(ContactBase base, int column) {
    Dual half = at.number("width", base.name(), base.width()).times(0.5);
    int couple = column + (base.friction() > 0 ? 2 : 1);
    for (int side : new int[] {1, -1}) {
      all.add(
          new Condition(
              List.of(column, couple),
              base.width(),
              (forces, friction) -> forces.get(1).times(side).minus(half.times(forces.get(0)))));
    }
  }

  private void wrap(Wrap wrap, int column) {
    notBelowZero(column);
    notBelowZero(column + 1);
    Dual power = at.number("friction", wrap.name(), wrap.friction()).times(angle(wrap));
    for (int loose = 0; loose < 2; loose++) {
      int slack = loose;
      // the smaller tension is asked to be large enough, so that multiples stay of order one
      add(
          List.of(column, column + 1),
          (forces, friction) ->
              power
                  .times(friction)
                  .negative()
                  .exp()
                  .times(forces.get(1 - slack))
                  .minus(forces.get(slack)));
    }
  }

  /** The angle that a rope covers on a post. */
  private Dual angle(Wrap wrap) {
    DualVector centre = at.point(wrap.post().at());
    DualVector in = centre.minus(at.point(wrap.first().at()));
    DualVector out = at.point(wrap.last().at()).minus(centre);
    int sign = wrap.post().turn().sign();
    Dual radius = at.number("radius", wrap.name(), wrap.post().radius());
    Dual before = Dual.angle(in.x(), in.y()).minus(lead(in, radius).times(sign));
    Dual after = Dual.angle(out.x(), out.y()).plus(lead(out, radius).times(sign));
    Dual turned = after.minus(before).times(sign);
    double whole = 2 * Math.PI;
    double shift = whole * wrap.extraTurns() - whole * Math.floor(turned.value() / whole);
    return turned.plus(Dual.of(shift));
  }

  /** By how much a tangent from a point leads past the centre: sine r/d. */
  private static Dual lead(DualVector way, Dual radius) {
    return Dual.angle(DualLaws.tangent(way, radius), radius);
  }

  private void pin(Pin pin, int column) {
    Dual radius = at.number("radius", pin.name(), pin.radius());
    Dual mu = at.number("friction", pin.name(), pin.friction());
    int count = at.isOwnBody(pin) ? pin.bodies().size() : 1;
    for (int body = 0; body < count; body++) {
      int first = column + 3 * body;
      all.add(
          new Condition(
              List.of(first, first + 1, first + 2),
              pin.radius(),
              (forces, friction) -> {
                Dual tangent = mu.times(friction);
                Dual sine = tangent.over(Dual.ONE.plus(tangent.squared()).root());
                Dual force = Dual.hypot(forces.get(0), forces.get(1));
                return forces.get(2).abs().minus(radius.times(sine).times(force));
              }));
    }
  }

  private void screw(Screw screw, int column) {
    Dual given = Dual.ZERO;
    List<Integer> columns = new ArrayList<>(List.of(column));
    boolean stated = false;
    for (Load load : at.device.loads()) {
      if (load instanceof Couple couple && couple.member().equals(screw.name())) {
        Dual moment = at.number("moment", couple.name(), couple.moment());
        given = given.plus(moment.times(at.factor(couple.name())));
        stated = true;
      } else if (load instanceof Sought sought && sought.body().equals(screw.name())) {
        columns.add(laws.first(sought.name()));
        stated = true;
      }
    }
    if (!stated) {
      return;
    }
    Dual couple = given;
    Dual radius = at.number("mean radius", screw.name(), screw.meanRadius());
    Dual slope = at.number("lead", screw.name(), screw.lead()).over(radius.times(2 * Math.PI));
    Dual mu = at.number("friction", screw.name(), screw.friction());
    for (int side : new int[] {1, -1}) {
      all.add(
          new Condition(
              columns,
              screw.meanRadius(),
              (forces, friction) ->
                  thread(side, forces, couple, radius, slope, mu.times(friction))));
    }
  }

  /** Against the load the couple is at most P·r·tan(α + φ), with it at least P·r·tan(α − φ). */
  private static Dual thread(
      int side, List<Dual> forces, Dual given, Dual radius, Dual slope, Dual mu) {
    Dual friction = mu.times(side);
    Dual below = Dual.ONE.minus(slope.times(friction));
    Dual axial = forces.get(0);
    if (below.value() <= 0) {
      // the thread binds: no couple turns it
      return axial.abs().negative();
    }
    Dual perLoad = radius.times(slope.plus(friction)).over(below);
    double sense = axial.value() > 0 ? -1 : 1;
    Dual turning = given;
    for (int k = 1; k < forces.size(); k++) {
      turning = turning.plus(forces.get(k));
    }
    return turning.plus(perLoad.times(axial)).times(side * sense);
  }
}
