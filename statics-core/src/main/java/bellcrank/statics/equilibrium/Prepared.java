package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.PreparedSystem;

/**
 * A device whose order of solution is found once, for many poses or cases: solving again allocates
 * nothing. Immutable and safe for several threads, each with a {@link Buffer} of its own. It tells
 * forces only; whether conditions hold and what moves is told by {@link Balance}.
 *
 * <pre>{@code
 * Prepared prepared = Prepared.of(device);
 * Prepared.Buffer buffer = prepared.buffer();
 * Prepared.Slot stay = prepared.slot("stay.tension");
 * if (buffer.solve(pose, device.cases().get(0))) {
 *   double tension = buffer.value(stay);
 * }
 * }</pre>
 */
public final class Prepared {

  private final Device device;
  private final PreparedSystem system;

  private Prepared(Device device) {
    this.device = device;
    system = new PreparedSystem(device);
  }

  /**
   * Prepares a device.
   *
   * @param device the device
   * @return the prepared device
   */
  public static Prepared of(Device device) {
    return new Prepared(device);
  }

  /**
   * Whether the number of equations and unknowns and their pattern allow one solution. If not, a
   * buffer never solves, and {@link Balance} tells why.
   *
   * @return true if so
   */
  public boolean isDeterminate() {
    return system.isSquare();
  }

  /**
   * How many unknowns have to be solved together at most.
   *
   * @return 1 if each equation gives one unknown in turn
   */
  public int largestBlock() {
    return system.largestBlock();
  }

  /**
   * Storage for solving.
   *
   * @return a new buffer, for one thread at a time
   */
  public Buffer buffer() {
    return new Buffer(system.storage());
  }

  /**
   * Where the answer to an ask is found after a solve.
   *
   * @param ask text of an ask for a single unknown: a component of a pin or clamp, a normal force,
   *     friction, a tension, a couple of a clamp, a sought effort
   * @return the slot
   * @throws ModelException if the ask is none, or is not a single unknown
   */
  public Slot slot(String ask) {
    Ask checked = Ask.parse(ask).check(device);
    if (checked.subject() instanceof Subject.Part part
        && checked.about().isEmpty()
        && !checked.each()) {
      int index = 0;
      for (Connection connection : device.connections()) {
        if (connection.name().equals(part.name())) {
          Slot found = slot(connection, index, checked);
          if (found.column() >= 0) {
            return found;
          }
        }
        index++;
      }
      if (device.load(part.name()).orElse(null) instanceof Sought sought) {
        return sought(sought, checked);
      }
    }
    throw unusable(ask);
  }

  private static ModelException unusable(String ask) {
    return new ModelException(
        "prepared",
        "ask",
        '"' + ask + '"',
        "an ask for one unknown, such as a component of a pin, a tension or a sought size");
  }

  private Slot sought(Sought sought, Ask ask) {
    int column = system.assembly().soughtColumn(sought.name());
    boolean value = ask.measure() == Measure.VALUE || ask.measure() == Measure.MASS;
    double g = device.gravity().norm();
    return switch (sought.want()) {
      case FORCE -> value ? new Slot(column, 1) : refuse(ask);
      case COUPLE -> new Slot(column, device.size());
      case INTENSITY ->
          value ? new Slot(column, 1 / SoughtAnswers.length(device, sought)) : refuse(ask);
      case MASS -> value && g > 0 ? new Slot(column, 1 / g) : refuse(ask);
      case COMPONENTS ->
          ask.measure() == Measure.X
              ? new Slot(column, 1)
              : ask.measure() == Measure.Y ? new Slot(column + 1, 1) : refuse(ask);
    };
  }

  private static Slot refuse(Ask ask) {
    throw unusable(ask.text());
  }

  private Slot slot(Connection connection, int index, Ask ask) {
    Assembly assembly = system.assembly();
    int column = assembly.firstColumn(index);
    int count = assembly.columnCount(index);
    String body = ask.on().orElse(connection.bodies().get(0));
    int place = connection.bodies().indexOf(body);
    boolean axial = assembly.columnCount(index) == 1;
    return switch (ask.measure()) {
      case X, Y -> {
        boolean pinOrClamp = connection instanceof Pin || connection.kind().equals("clamp");
        int offset = ask.measure() == Measure.X ? 0 : 1;
        boolean joint = connection instanceof Pin && count > 2;
        yield !pinOrClamp
            ? new Slot(-1, 0)
            : joint
                ? new Slot(column + 2 * place + offset, 1)
                : new Slot(column + offset, place == 0 ? 1 : -1);
      }
      case NORMAL -> new Slot(column, 1);
      case FRICTION -> count > 1 ? new Slot(column + 1, 1) : new Slot(-1, 0);
      case TENSION -> new Slot(column, 1);
      case COMPRESSION -> new Slot(column, -1);
      case END_TENSION -> new Slot(column + count - 1, assembly.lastMultiple(index));
      case COUPLE ->
          assembly.isCouple(column + count - 1)
              ? new Slot(column + count - 1, place == 0 ? device.size() : -device.size())
              : new Slot(-1, 0);
      case VALUE -> axial && !(connection instanceof Pin) ? new Slot(column, 1) : new Slot(-1, 0);
      default -> new Slot(-1, 0);
    };
  }

  /**
   * Where an answer is found.
   *
   * @param column number of the unknown
   * @param factor SI value of one unit of it
   */
  public record Slot(int column, double factor) {}

  /** Storage of one solve; not for several threads at once. */
  public static final class Buffer {

    private final PreparedSystem.Storage storage;

    private Buffer(PreparedSystem.Storage storage) {
      this.storage = storage;
    }

    /**
     * Solves at a pose under a case.
     *
     * @param pose where the bodies are; it must fit the connections
     * @param loadCase factors on the loads
     * @return false if the equations have no single solution there
     */
    public boolean solve(Pose pose, LoadCase loadCase) {
      return storage.solve(pose, loadCase);
    }

    /**
     * An answer of the last solve that succeeded.
     *
     * @param slot where it is
     * @return SI value
     */
    public double value(Slot slot) {
      return storage.unknown(slot.column()) * slot.factor();
    }

    /**
     * How well the forces of the last solve close.
     *
     * @return relative to the largest force; 0 or more
     */
    public double residual() {
      return storage.residual();
    }
  }
}
