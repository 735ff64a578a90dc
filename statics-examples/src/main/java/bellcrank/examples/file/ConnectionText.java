package bellcrank.examples.file;

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
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes connections. */
final class ConnectionText {

  private final AmountText amounts;
  private final DirectionText directions;
  private final BodyNames bodies;
  private final List<TableFriction> tables;

  ConnectionText(AmountText amounts, BodyNames bodies, List<TableFriction> tables) {
    this.tables = tables;
    this.amounts = amounts;
    this.directions = new DirectionText(amounts);
    this.bodies = bodies;
  }

  String written(Connection connection, int count) {
    return flow(connection).count(count).written();
  }

  // a chain of tests, since Java 17 has no switch over the kinds
  private Flow flow(Connection connection) {
    if (connection instanceof Pin pin) {
      Flow flow = place(pin).texts("joins", pin.bodies());
      length(flow, "radius", pin.radius());
      return pin.friction() == 0 && taken(pin).isEmpty()
          ? flow
          : friction(flow, pin, pin.friction());
    }
    if (connection instanceof Clamp) {
      return place(connection).texts("joins", connection.bodies());
    }
    if (connection instanceof Roller roller) {
      return sides(directed(roller, "push", roller.push()), roller.sides());
    }
    if (connection instanceof Slot slot) {
      return sides(directed(slot, "along", slot.along()), slot.sides());
    }
    if (connection instanceof Guide guide) {
      return directed(guide, "along", guide.along());
    }
    if (connection instanceof Strut strut) {
      Flow flow = ends(strut, strut.first(), strut.second());
      return strut.mass() == 0 ? flow : flow.put("weight", amounts.mass(strut.mass()));
    }
    if (connection instanceof Line line) {
      return ends(line, line.first(), line.second());
    }
    if (connection instanceof Reeving reeving) {
      return reeving(reeving);
    }
    if (connection instanceof Wrap wrap) {
      Flow flow =
          friction(
              stops(wrap, List.of(wrap.first(), wrap.post(), wrap.last())), wrap, wrap.friction());
      return wrap.extraTurns() == 0
          ? flow
          : flow.put("extra turns", Integer.toString(wrap.extraTurns()));
    }
    if (connection instanceof Screw screw) {
      Flow flow =
          ends(screw, screw.first(), screw.second())
              .put("lead", amounts.bare(screw.lead(), Dimension.LENGTH))
              .put("mean radius", amounts.bare(screw.meanRadius(), Dimension.LENGTH));
      return friction(flow, screw, screw.friction());
    }
    if (connection instanceof Contact contact) {
      Flow flow = friction(directed(contact, "push", contact.push()), contact, contact.friction());
      return kinetic(flow, contact.friction(), contact.kineticFriction());
    }
    ContactBase base = (ContactBase) connection;
    Flow flow =
        directed(base, "push", base.push())
            .put("width", amounts.bare(base.width(), Dimension.LENGTH));
    return kinetic(friction(flow, base, base.friction()), base.friction(), base.kineticFriction());
  }

  private static Flow place(Connection connection) {
    return new Flow().text(connection.kind(), connection.places().get(0));
  }

  private Flow directed(Connection connection, String key, Direction direction) {
    return place(connection).texts("joins", connection.bodies()).put(key, directions.of(direction));
  }

  private static Flow sides(Flow flow, Sides sides) {
    return sides == Sides.TWO ? flow : flow.text("sides", "one");
  }

  /** Friction as a number, or by the row of the table it was taken from. */
  private Flow friction(Flow flow, Connection connection, double friction) {
    Optional<TableFriction> taken = taken(connection);
    if (taken.isEmpty()) {
      return flow.put("friction", AmountText.number(friction));
    }
    Flow table = new Flow().text("table", taken.get().row());
    return flow.put(
        "friction", table.text("take", taken.get().take().map(TableFriction.Take::word)).written());
  }

  private Optional<TableFriction> taken(Connection connection) {
    return tables.stream().filter(one -> one.part().equals(connection.name())).findFirst();
  }

  private static Flow kinetic(Flow flow, double friction, double kinetic) {
    return kinetic == friction ? flow : flow.put("kinetic friction", AmountText.number(kinetic));
  }

  private void length(Flow flow, String key, double length) {
    if (length != 0) {
      flow.put(key, amounts.bare(length, Dimension.LENGTH));
    }
  }

  private Flow ends(Connection connection, End first, End second) {
    Flow flow = new Flow().texts(connection.kind(), connection.places());
    boolean implied =
        bodies.jointAt(first.at()).equals(Optional.of(first.body()))
            && bodies.jointAt(second.at()).equals(Optional.of(second.body()));
    return implied ? flow : flow.texts("joins", connection.bodies());
  }

  private Flow reeving(Reeving reeving) {
    Flow flow = stops(reeving, reeving.stops());
    if (reeving.efficiency() != 1) {
      flow.put("efficiency", AmountText.number(reeving.efficiency()));
    }
    return reeving.hauling() == Reeving.Hauling.IDEAL
        ? flow
        : flow.text("hauling", reeving.hauling().name().toLowerCase(Locale.ROOT));
  }

  private Flow stops(Connection rope, List<Stop> stops) {
    return new Flow().put(rope.kind(), Flow.items(stops.stream().map(this::stop).toList()));
  }

  private String stop(Stop stop) {
    Flow flow =
        new Flow()
            .text(stop.kind().name().toLowerCase(Locale.ROOT), stop.at())
            .text("joins", stop.body());
    boolean round =
        stop.kind() != Stop.Kind.END && (stop.radius() != 0 || stop.turn() != Turn.CLOCKWISE);
    if (round) {
      flow.put("radius", amounts.bare(stop.radius(), Dimension.LENGTH))
          .text("turns", stop.turn() == Turn.CLOCKWISE ? "clockwise" : "counter-clockwise");
    }
    return flow.written();
  }
}
