package bellcrank.examples.report;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Guide;
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
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Says what is stated about a connection beyond its places and bodies.
 *
 * @param stated writes the values
 */
record ConnectionWords(Stated stated) {

  private static final String SMOOTH = "without friction";

  // a chain of tests, since Java 17 has no switch over the kinds
  String of(Connection connection) {
    if (connection instanceof Pin pin) {
      return pin.friction() == 0
          ? radius(pin.radius(), SMOOTH)
          : radius(pin.radius(), friction(pin.friction(), pin.friction()));
    }
    if (connection instanceof Roller roller) {
      return "pushes " + Stated.way(roller.push()) + sides(roller.sides());
    }
    if (connection instanceof Slot slot) {
      return "slides along " + Stated.way(slot.along()) + sides(slot.sides());
    }
    if (connection instanceof Guide guide) {
      return "slides along " + Stated.way(guide.along()) + " without turning";
    }
    if (connection instanceof Strut strut) {
      return strut.mass() == 0 ? "" : "mass " + stated.text(strut.mass(), Dimension.MASS);
    }
    if (connection instanceof Reeving reeving) {
      return reeving(reeving);
    }
    if (connection instanceof Wrap wrap) {
      String turns = wrap.extraTurns() == 0 ? "" : ", " + wrap.extraTurns() + " extra turns";
      return stop(wrap.post()) + turns + "; " + friction(wrap.friction(), wrap.friction());
    }
    if (connection instanceof Screw screw) {
      return "lead "
          + length(screw.lead())
          + ", mean radius "
          + length(screw.meanRadius())
          + "; "
          + friction(screw.friction(), screw.friction());
    }
    if (connection instanceof Contact contact) {
      return "pushes "
          + Stated.way(contact.push())
          + " only; "
          + friction(contact.friction(), contact.kineticFriction());
    }
    if (connection instanceof ContactBase base) {
      return "pushes "
          + Stated.way(base.push())
          + " only; width "
          + length(base.width())
          + "; "
          + friction(base.friction(), base.kineticFriction());
    }
    return "";
  }

  private String length(double si) {
    return stated.text(si, Dimension.LENGTH);
  }

  private String radius(double radius, String words) {
    return radius == 0 ? words : "radius " + length(radius) + "; " + words;
  }

  private static String friction(double friction, double kinetic) {
    if (friction == 0) {
      return SMOOTH;
    }
    String words = "friction " + Stated.number(friction);
    return kinetic == friction ? words : words + ", " + Stated.number(kinetic) + " once it slides";
  }

  private static String sides(Sides sides) {
    return sides == Sides.TWO ? ", held on both sides" : ", held on one side";
  }

  private String reeving(Reeving reeving) {
    List<String> stops = new ArrayList<>();
    reeving.stops().forEach(stop -> stops.add(stop(stop)));
    String words = String.join("; ", stops);
    if (reeving.efficiency() != 1) {
      words += "; " + Stated.number(reeving.efficiency()) + " of the pull gets over each sheave";
    }
    return reeving.hauling() == Reeving.Hauling.IDEAL
        ? words
        : words + "; " + reeving.hauling().name().toLowerCase(Locale.ROOT);
  }

  private String stop(Stop stop) {
    String words = stop.kind().name().toLowerCase(Locale.ROOT) + " at " + stop.at();
    if (stop.kind() == Stop.Kind.END) {
      return words;
    }
    String radius = stop.radius() == 0 ? "" : ", radius " + length(stop.radius());
    String turn = stop.turn() == Turn.CLOCKWISE ? ", clockwise" : ", counter-clockwise";
    return words + radius + turn;
  }
}
