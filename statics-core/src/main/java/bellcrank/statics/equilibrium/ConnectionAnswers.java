package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Screw;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.ForceSum;
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.Dimension;

/** Reads the answers of a connection. */
final class ConnectionAnswers {

  private final Balance balance;
  private final Device device;
  private final Solved solved;

  ConnectionAnswers(Balance balance, Solved solved) {
    this.balance = balance;
    this.device = balance.device();
    this.solved = solved;
  }

  Answer answer(Connection connection, int index, Ask ask) {
    Assembly assembly = solved.assembly();
    int column = assembly.firstColumn(index);
    int last = column + assembly.columnCount(index) - 1;
    boolean determined = solved.determined(column);
    Measure measure = ask.measure() == Measure.VALUE ? natural(connection) : ask.measure();
    return switch (measure) {
      case NORMAL, TENSION -> force(solved.unknown(column), determined);
      case COMPRESSION -> force(-solved.unknown(column), determined);
      case END_TENSION ->
          force(solved.unknown(last) * assembly.lastMultiple(index), solved.determined(last));
      case RATIO_OF_TENSIONS -> ratio(column);
      case FRICTION -> friction(connection, column);
      case OFFSET -> offset(column, last);
      case RAISING -> turning((Screw) connection, column, 1);
      case LOWERING -> turning((Screw) connection, column, -1);
      default -> sum(connection, index, ask, measure);
    };
  }

  private static Measure natural(Connection connection) {
    return switch (connection.kind()) {
      case "strut", "line", "reeving", "screw", "wrap" -> Measure.TENSION;
      case "pin", "clamp" -> Measure.SIZE;
      default -> Measure.NORMAL;
    };
  }

  private static Answer force(double value, boolean determined) {
    return Values.of(value, Dimension.FORCE, determined);
  }

  private Answer friction(Connection connection, int column) {
    boolean smooth =
        (connection instanceof Contact contact && contact.friction() == 0)
            || (connection instanceof ContactBase base && base.friction() == 0);
    return smooth
        ? new Answer.Value(0, Dimension.FORCE)
        : force(solved.unknown(column + 1), solved.determined(column + 1));
  }

  private Answer ratio(int column) {
    double first = solved.unknown(column);
    double second = solved.unknown(column + 1);
    boolean determined = solved.determined(column) && solved.determined(column + 1);
    return determined && second == 0
        ? Values.notDefined("the second tension is zero")
        : Values.of(determined ? first / second : 0, Dimension.NUMBER, determined);
  }

  private Answer offset(int column, int last) {
    double normal = solved.unknown(column);
    boolean determined = solved.determined(column) && solved.determined(last);
    if (determined && Math.abs(normal) <= 1e-12 * solved.forceScale()) {
      return Values.notDefined("a normal force of zero has no place");
    }
    double offset = determined ? solved.unknown(last) * device.size() / normal : 0;
    // a normal force to the right of the middle turns counter-clockwise
    return Values.of(offset, Dimension.LENGTH, determined);
  }

  /**
   * Couple that turns a square-threaded screw against (raising) or with (lowering) its axial force:
   * F·r·tan(φ ± α), tan α = lead / (2πr), tan φ = μ. Lowering is negative if the load drives the
   * screw. Source: the inclined-plane development of a screw, e.g. Engineering Statics: Open and
   * Interactive, section on screws.
   */
  private Answer turning(Screw screw, int column, int sense) {
    double slope = screw.lead() / (2 * Math.PI * screw.meanRadius());
    double denominator = 1 - sense * screw.friction() * slope;
    if (denominator <= 0) {
      return Values.notDefined("the thread binds: no couple turns it");
    }
    double tangent = (screw.friction() + sense * slope) / denominator;
    return Values.of(
        Math.abs(solved.unknown(column)) * screw.meanRadius() * tangent,
        Dimension.MOMENT,
        solved.determined(column));
  }

  private Answer sum(Connection connection, int index, Ask ask, Measure measure) {
    String body = ask.on().orElse(connection.bodies().get(0));
    int place = connection.bodies().indexOf(body);
    Point at = balance.pose().frame(body).apply(device.point(connection.places().get(place)));
    Point about = ask.about().map(device::point).orElse(at);
    ForceSum sum = new ForceSum(solved, about);
    sum.addConnection(index, device.bodyIndex(body));
    return ForceMeasures.of(sum, measure, solved.forceScale());
  }
}
