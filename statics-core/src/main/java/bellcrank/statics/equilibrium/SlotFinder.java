package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.internal.Assembly;
import java.util.Optional;

/** Finds the one unknown that answers an ask, if it is one. */
final class SlotFinder {

  private final Device device;
  private final Assembly assembly;

  SlotFinder(Device device, Assembly assembly) {
    this.device = device;
    this.assembly = assembly;
  }

  /** Where the answer to a checked ask is found. */
  Optional<Prepared.Slot> find(Ask ask) {
    if (ask.subject() instanceof Subject.Part part
        && ask.about().isEmpty()
        && !MemberAnswers.concern(device, part.name(), ask)
        && !ask.each()) {
      int index = 0;
      for (Connection connection : device.connections()) {
        if (connection.name().equals(part.name())) {
          Optional<Prepared.Slot> found = of(connection, index, ask);
          if (found.isPresent()) {
            return found;
          }
        }
        index++;
      }
      if (device.load(part.name()).orElse(null) instanceof Sought sought) {
        return of(sought, ask);
      }
    }
    return Optional.empty();
  }

  private static Optional<Prepared.Slot> at(int column, double factor) {
    return Optional.of(new Prepared.Slot(column, factor));
  }

  private Optional<Prepared.Slot> of(Sought sought, Ask ask) {
    int column = assembly.soughtColumn(sought.name());
    boolean value = ask.measure() == Measure.VALUE || ask.measure() == Measure.MASS;
    double g = device.gravity().norm();
    return switch (sought.want()) {
      case FORCE -> value ? at(column, 1) : Optional.empty();
      // a couple about a screw's own axis is none of the plane
      case COUPLE ->
          device.body(sought.body()).isPresent() ? at(column, device.size()) : Optional.empty();
      case INTENSITY ->
          value ? at(column, 1 / SoughtAnswers.length(device, sought)) : Optional.empty();
      case MASS -> value && g > 0 ? at(column, 1 / g) : Optional.empty();
      case COMPONENTS ->
          ask.measure() == Measure.X
              ? at(column, 1)
              : ask.measure() == Measure.Y ? at(column + 1, 1) : Optional.empty();
    };
  }

  private Optional<Prepared.Slot> of(Connection connection, int index, Ask ask) {
    int column = assembly.firstColumn(index);
    int count = assembly.columnCount(index);
    String body = ask.on().orElse(connection.bodies().get(0));
    int place = connection.bodies().indexOf(body);
    return switch (ask.measure()) {
      case X, Y -> {
        boolean pinOrClamp = connection instanceof Pin || connection.kind().equals("clamp");
        int offset = ask.measure() == Measure.X ? 0 : 1;
        boolean joint = connection instanceof Pin && count > 2;
        yield !pinOrClamp
            ? Optional.empty()
            : joint ? at(column + 2 * place + offset, 1) : at(column + offset, place == 0 ? 1 : -1);
      }
      case NORMAL, TENSION -> at(column, 1);
      case FRICTION -> isRough(connection) ? at(column + 1, 1) : Optional.empty();
      case COMPRESSION -> at(column, -1);
      case END_TENSION -> at(column + count - 1, assembly.lastMultiple(index));
      case COUPLE ->
          // what slides is no more where the other body has its place, and has a moment about that
          assembly.isCouple(column + count - 1) && (place == 0 || connection instanceof Clamp)
              ? at(column + count - 1, place == 0 ? device.size() : -device.size())
              : Optional.empty();
      case VALUE -> count == 1 && !(connection instanceof Pin) ? at(column, 1) : Optional.empty();
      default -> Optional.empty();
    };
  }

  private static boolean isRough(Connection connection) {
    return (connection instanceof Contact contact && contact.friction() > 0)
        || (connection instanceof ContactBase base && base.friction() > 0);
  }
}
