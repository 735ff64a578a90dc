package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.limits.internal.Goal;
import java.util.ArrayList;
import java.util.List;

/** The pushes and tensions of one-sided parts. */
final class LeastForces {

  private LeastForces() {}

  /** Unknowns that cannot be below zero, of one connection. */
  static List<Integer> columns(Connection connection, int first) {
    boolean oneSided =
        connection instanceof Line
            || connection instanceof Reeving
            || connection instanceof Contact
            || connection instanceof ContactBase
            || (connection instanceof Roller roller && roller.sides() == Sides.ONE)
            || (connection instanceof Slot slot && slot.sides() == Sides.ONE);
    if (connection instanceof Wrap) {
      return List.of(first, first + 1);
    }
    return oneSided ? List.of(first) : List.of();
  }

  /** All of them in a device. */
  static List<Integer> columns(Device device, Assembly assembly) {
    List<Integer> columns = new ArrayList<>();
    for (int i = 0; i < device.connections().size(); i++) {
      columns.addAll(columns(device.connections().get(i), assembly.firstColumn(i)));
    }
    return columns;
  }

  /** The least sum of them. */
  static Goal goal(Device device, Admissible admissible) {
    double[] multiples = new double[admissible.columns()];
    for (int column : columns(device, admissible.assembly())) {
      multiples[column] = -1;
    }
    return Goal.forces(multiples);
  }

  /** Forces by unknowns as values of a balance's components. */
  static List<Double> values(double[] forces, Assembly assembly) {
    List<Double> values = new ArrayList<>();
    for (int column = 0; column < forces.length; column++) {
      values.add(forces[column] * (assembly.isCouple(column) ? assembly.size() : 1));
    }
    return values;
  }
}
