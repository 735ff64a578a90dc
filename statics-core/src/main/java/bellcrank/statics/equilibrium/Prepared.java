package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.PreparedSystem;
import java.util.Optional;

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
    return new SlotFinder(device, system.assembly())
        .find(Ask.parse(ask).check(device))
        .orElseThrow(
            () ->
                new ModelException(
                    "prepared",
                    "ask",
                    '"' + ask + '"',
                    "an ask for one unknown, such as a component of a pin, a tension or a sought"
                        + " size"));
  }

  /**
   * Where the answer to an ask is found after a solve by any prepared form of a device, if it is a
   * single unknown.
   *
   * @param device the device
   * @param ask what is asked
   * @return the slot; empty if the answer is not a single unknown
   * @throws ModelException if the ask names what the device does not have
   */
  public static Optional<Slot> slot(Device device, Ask ask) {
    return new SlotFinder(device, Assembly.of(device)).find(ask.check(device));
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
