package bellcrank.statics.study;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.device.Wrap;
import java.util.ArrayList;
import java.util.List;

/** All numbers of a device. */
final class AllInputs {

  private AllInputs() {}

  static List<Input> of(Device device) {
    List<Input> all = new ArrayList<>(List.of(Input.gravity(), Input.slope()));
    List<String> points = List.copyOf(device.points().keySet());
    for (String point : points) {
      all.add(Input.x(point));
      all.add(Input.y(point));
    }
    String first = points.get(0);
    for (String point : points.subList(1, points.size())) {
      if (device.point(first).distance(device.point(point)) > 0.01) {
        all.add(Input.distance(point, first));
        all.add(Input.turn(List.of(point), first));
      }
    }
    device.loads().forEach(load -> load(all, load));
    device.connections().forEach(connection -> connection(all, connection));
    String loadCase = device.cases().get(0).name();
    device.loads().stream()
        .filter(load -> !(load instanceof Sought))
        .forEach(load -> all.add(Input.factor(load.name(), loadCase)));
    all.add(Input.dynamicFactor(loadCase));
    return all;
  }

  private static void load(List<Input> all, Load load) {
    String name = load.name();
    if (load instanceof Force force && force.vector().norm() > 0) {
      all.add(Input.size(name));
      all.add(Input.direction(name));
    } else if (load instanceof Weight) {
      all.add(Input.mass(name));
    } else if (load instanceof Couple) {
      all.add(Input.moment(name));
    } else if (load instanceof SpreadLoad spread) {
      all.add(Input.start(name));
      all.add(Input.end(name));
      if (spread.direction().isPresent()) {
        all.add(Input.direction(name));
      }
    } else if (load instanceof Spring) {
      all.add(Input.stiffness(name));
      all.add(Input.freeLength(name));
    } else if (load instanceof TorsionSpring) {
      all.add(Input.torsionStiffness(name));
      all.add(Input.turnedAngle(name));
    } else if (load instanceof Sought sought && sought.direction().isPresent()) {
      all.add(Input.direction(name));
    }
  }

  private static void connection(List<Input> all, Connection connection) {
    String name = connection.name();
    if (connection instanceof Roller || connection instanceof Slot || connection instanceof Guide) {
      all.add(Input.direction(name));
    } else if (connection instanceof Contact) {
      all.add(Input.direction(name));
      all.add(Input.friction(name));
    } else if (connection instanceof ContactBase) {
      all.add(Input.direction(name));
      all.add(Input.friction(name));
      all.add(Input.width(name));
    } else if (connection instanceof Pin pin && pin.radius() > 0) {
      all.add(Input.radius(name));
      all.add(Input.friction(name));
    } else if (connection instanceof Strut strut && strut.mass() > 0) {
      all.add(Input.mass(name));
    } else if (connection instanceof Screw) {
      all.add(Input.lead(name));
      all.add(Input.meanRadius(name));
      all.add(Input.friction(name));
    } else if (connection instanceof Wrap) {
      all.add(Input.friction(name));
      all.add(Input.radius(name));
    } else if (connection instanceof Reeving reeving) {
      all.add(Input.efficiency(name));
      for (Stop stop : reeving.stops()) {
        if (stop.kind() != Stop.Kind.END) {
          all.add(Input.radius(name, stop.at()));
        }
      }
    }
  }
}
