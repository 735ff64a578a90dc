package bellcrank.statics.drawing;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import java.util.List;
import java.util.OptionalDouble;

/** Reads what connections do to the bodies inside a cut. */
final class ConnectionReader {

  private final Known known;
  private final Places places;
  private final Cut cut;
  private final CutForces out;

  ConnectionReader(Known known, Places places, Cut cut, Collected found) {
    this.known = known;
    this.places = places;
    this.cut = cut;
    out = new CutForces(found);
  }

  void read(Connection connection) {
    if (connection instanceof Pin pin && cut.isOwn(pin)) {
      ownPin(pin);
    } else if (connection instanceof Reeving reeving) {
      new RopeReader(known, places, cut, out).reeving(reeving);
    } else if (connection instanceof Wrap wrap) {
      new RopeReader(known, places, cut, out).wrap(wrap);
    } else {
      between(connection);
    }
  }

  /** A pin that is a body of its own acts on each of its bodies in its own way. */
  private void ownPin(Pin pin) {
    boolean inside = cut.holds(pin);
    if (inside && pin.bodies().contains(Ground.NAME)) {
      // the pin is cut from the ground: what it does to the ground, the other way round
      pin(pin, Ground.NAME, movable(pin), -1);
    }
    for (String body : pin.bodies()) {
      if (!inside && cut.has(body)) {
        pin(pin, body, body, 1);
      }
    }
  }

  private static String movable(Pin pin) {
    return pin.bodies().stream().filter(one -> !one.equals(Ground.NAME)).findFirst().orElseThrow();
  }

  private void pin(Pin pin, String asked, String on, int sign) {
    Spot spot = new Spot(pin.name(), on, places.of(on, pin.at()));
    out.axes(
        spot,
        times(known.value(pin.name(), Measure.X, asked), sign),
        times(known.value(pin.name(), Measure.Y, asked), sign));
    if (pin.friction() > 0) {
      out.couple(spot, times(known.value(pin.name(), Measure.COUPLE, asked), sign));
    }
  }

  private void between(Connection connection) {
    List<String> bodies = connection.bodies();
    boolean first = cut.has(bodies.get(0));
    if (first == cut.has(bodies.get(1))) {
      return;
    }
    int own = first ? 0 : 1;
    String name = connection.name();
    if (connection instanceof Strut || connection instanceof Line || connection instanceof Screw) {
      axial(connection, own);
      return;
    }
    boolean slides = !(connection instanceof Pin || connection instanceof Clamp);
    int carrier = slides ? 0 : own;
    Point at = places.of(bodies.get(carrier), connection.places().get(carrier));
    Spot spot = new Spot(name, bodies.get(own), at);
    int sign = first ? 1 : -1;
    if (connection instanceof Pin pin) {
      out.axes(spot, value(name, Measure.X, sign), value(name, Measure.Y, sign));
      if (pin.friction() > 0) {
        out.couple(spot, value(name, Measure.COUPLE, sign));
      }
    } else if (connection instanceof Clamp) {
      out.axes(spot, value(name, Measure.X, sign), value(name, Measure.Y, sign));
      out.couple(spot, value(name, Measure.COUPLE, sign));
    } else if (connection instanceof Roller roller) {
      out.single(spot, name, on(roller.other(), roller.push(), sign), value(name, Measure.NORMAL));
    } else if (connection instanceof Slot slot) {
      Direction square = slot.along().perpendicular();
      out.single(spot, name, on(slot.other(), square, sign), value(name, Measure.NORMAL));
    } else if (connection instanceof Guide guide) {
      Direction square = guide.along().perpendicular();
      out.single(spot, name, on(guide.other(), square, sign), value(name, Measure.NORMAL));
      out.couple(spot, value(name, Measure.COUPLE, sign));
    } else if (connection instanceof Contact contact) {
      surface(spot, on(contact.other(), contact.push(), sign), contact.friction() > 0);
    } else if (connection instanceof ContactBase base) {
      base(spot, base, on(base.other(), base.push(), sign), sign);
    }
  }

  private Direction on(String body, Direction drawn, int sign) {
    Direction turned = places.pose().frame(body).apply(drawn);
    return sign > 0 ? turned : turned.opposite();
  }

  private OptionalDouble value(String name, Measure measure) {
    return known.value(name, measure);
  }

  private OptionalDouble value(String name, Measure measure, int sign) {
    return times(known.value(name, measure), sign);
  }

  private static OptionalDouble times(OptionalDouble value, int sign) {
    return value.isPresent() ? OptionalDouble.of(sign * value.getAsDouble()) : value;
  }

  private void surface(Spot spot, Direction push, boolean rough) {
    OptionalDouble normal = value(spot.part(), Measure.NORMAL);
    if (rough) {
      out.resolved(spot, Resolution.surface(push), normal, value(spot.part(), Measure.FRICTION));
    } else {
      out.single(spot, spot.part(), push, normal);
    }
  }

  /** A base pushes where its pressure has its middle, so that there is no couple. */
  private void base(Spot spot, ContactBase base, Direction push, int sign) {
    OptionalDouble offset = value(base.name(), Measure.OFFSET);
    OptionalDouble couple = value(base.name(), Measure.COUPLE, sign);
    if (offset.isPresent() && Math.abs(offset.getAsDouble()) <= base.width()) {
      // to the right of the push on the first body; both signs turn for the second
      Direction right = on(base.other(), base.push(), 1).perpendicular().opposite();
      Point shifted = spot.at().plus(right.times(offset.getAsDouble()));
      surface(new Spot(spot.part(), spot.on(), shifted), push, base.friction() > 0);
    } else {
      surface(spot, push, base.friction() > 0);
      out.couple(spot, couple);
    }
  }

  private void axial(Connection connection, int own) {
    Point at = places.of(connection.bodies().get(own), connection.places().get(own));
    Point other = places.of(connection.bodies().get(1 - own), connection.places().get(1 - own));
    if (at.distance(other) > 0) {
      Spot spot = new Spot(connection.name(), connection.bodies().get(own), at);
      OptionalDouble tension = value(connection.name(), Measure.TENSION);
      out.single(spot, connection.name(), Direction.from(at, other), tension);
    }
  }
}
