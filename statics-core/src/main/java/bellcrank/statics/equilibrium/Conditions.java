package bellcrank.statics.equilibrium;

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
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Compares the forces of a balance with what one-sided and rough parts can give. */
final class Conditions {

  /** Share of the force scale by which a condition may be missed by rounding. */
  private static final double ROUNDING = 1e-9;

  private final Device device;
  private final Solved solved;
  private final double slack;
  private List<Violation> violations = List.of();

  Conditions(Device device, Solved solved) {
    this.device = device;
    this.solved = solved;
    slack = ROUNDING * solved.forceScale();
    List<Connection> connections = device.connections();
    for (int i = 0; i < connections.size(); i++) {
      check(connections.get(i), solved.assembly().firstColumn(i), i);
    }
  }

  List<Violation> violations() {
    return violations;
  }

  private void check(Connection connection, int column, int index) {
    String name = connection.name();
    if (connection instanceof Line || connection instanceof Reeving) {
      atLeastZero(name, column, "would have to push");
    } else if ((connection instanceof Roller roller && roller.sides() == Sides.ONE)
        || (connection instanceof Slot slot && slot.sides() == Sides.ONE)) {
      atLeastZero(name, column, "would have to pull");
    } else if (connection instanceof Contact contact) {
      atLeastZero(name, column, "would have to pull");
      friction(name, column, contact.friction());
    } else if (connection instanceof ContactBase base) {
      atLeastZero(name, column, "would have to pull");
      friction(name, column, base.friction());
      tipping(base, column, solved.assembly().columnCount(index) - 1);
    } else if (connection instanceof Wrap wrap) {
      atLeastZero(name, column, "would have to push");
      atLeastZero(name, column + 1, "would have to push");
      wrap(wrap, column);
    }
  }

  private void atLeastZero(String name, int column, String words) {
    if (solved.determined(column) && solved.unknown(column) < -slack) {
      add(new Violation(name, words, solved.unknown(column), 0, Dimension.FORCE));
    }
  }

  private void friction(String name, int column, double coefficient) {
    if (coefficient == 0 || !solved.determined(column) || !solved.determined(column + 1)) {
      return;
    }
    double needed = Math.abs(solved.unknown(column + 1));
    double limit = coefficient * Math.max(0, solved.unknown(column));
    if (needed > limit + slack) {
      add(new Violation(name, "would need more friction than μN", needed, limit, Dimension.FORCE));
    }
  }

  private void tipping(ContactBase base, int column, int coupleOffset) {
    double normal = solved.unknown(column);
    int couple = column + coupleOffset;
    if (!solved.determined(column) || !solved.determined(couple) || normal <= slack) {
      return;
    }
    double offset = Math.abs(solved.unknown(couple) * device.size() / normal);
    if (offset > base.width() / 2 + ROUNDING * device.size()) {
      add(
          new Violation(
              base.name(),
              "would need its normal force outside the base",
              offset,
              base.width() / 2,
              Dimension.LENGTH));
    }
  }

  private void wrap(Wrap wrap, int column) {
    if (!solved.determined(column) || !solved.determined(column + 1)) {
      return;
    }
    double first = solved.unknown(column);
    double last = solved.unknown(column + 1);
    double angle = WrapAngle.of(device, wrap);
    // many turns or much friction hold any ratio that a number can tell
    double most = Math.min(Math.exp(wrap.friction() * angle), Double.MAX_VALUE);
    double large = Math.max(first, last);
    double small = Math.min(first, last);
    if ((small > slack && large > most * small + slack) || (small <= slack && large > slack)) {
      add(
          new Violation(
              wrap.name(),
              "would need more friction round the post than there is",
              small > 0 ? Math.min(large / small, Double.MAX_VALUE) : Double.MAX_VALUE,
              most,
              Dimension.NUMBER));
    }
  }

  private void add(Violation violation) {
    if (violations.isEmpty()) {
      violations = new ArrayList<>();
    }
    violations.add(violation);
  }
}
