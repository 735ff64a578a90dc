package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.equilibrium.internal.Closure;
import bellcrank.statics.equilibrium.internal.PreparedSystem;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.motion.internal.Seat;
import java.util.Optional;

/**
 * Goes through many poses of a course and tells places and forces there. Moving and reading
 * allocate nothing where the connections leave just one freedom and none of them repeats what
 * others hold; elsewhere the answers are the same, but slower. It changes as it moves and is for
 * one thread at a time. All connections fit to 1e-12 of the device's size, as in {@link
 * Course#pose}.
 *
 * <pre>{@code
 * Sweep sweep = course.sweep();
 * Sweep.Spot tip = sweep.spot("jib", "tip");
 * Prepared.Slot rope = sweep.slot("luffing rope.tension");
 * for (int k = 0; k <= 100; k++) {
 *   sweep.moveTo(0.01 * k);
 *   double height = sweep.y(tip);
 *   double tension = sweep.value(rope);
 * }
 * }</pre>
 */
public final class Sweep {

  /** Forces larger than this many loads may be those of a shape that fixes none. */
  private static final double FAIR = 1e6;

  private final Course course;
  private final Closure closure;
  private final Seat seat;
  private Optional<PreparedSystem.Storage> forces = Optional.empty();
  private double at;
  private boolean solved;
  private boolean told;

  Sweep(Course course) {
    this.course = course;
    closure = course.closure();
    closure.keepOrder();
    seat = course.seat(closure);
  }

  /**
   * A point of a body, found once.
   *
   * @param body number of the body, −1 for the ground
   * @param right drawn place to the right of the device's middle, in sizes of the device
   * @param up drawn place above the device's middle, in sizes of the device
   */
  public record Spot(int body, double right, double up) {}

  /**
   * Finds a point of a body.
   *
   * @param body name of a member, a joint or {@code ground}
   * @param point name of the point
   * @return where it is read
   * @throws ModelException if there is no such body or point
   */
  public Spot spot(String body, String point) {
    if (course.device().body(body).isEmpty()) {
      throw new ModelException(course.device().name(), "body", body, "the name of a body");
    }
    Point drawn = course.device().point(point);
    Point middle = course.device().middle();
    double size = course.device().size();
    int index = body.equals(Ground.NAME) ? -1 : course.device().bodyIndex(body);
    return new Spot(index, (drawn.x() - middle.x()) / size, (drawn.y() - middle.y()) / size);
  }

  /**
   * Finds a force.
   *
   * @param ask text of an ask for one unknown, as {@link Prepared#slot} takes it
   * @return where it is read, here and in a {@link Prepared} of the same device
   * @throws ModelException if the ask is none, or is not a single unknown
   */
  public Prepared.Slot slot(String ask) {
    return Prepared.slot(course.device(), Ask.parse(ask))
        .orElseThrow(
            () ->
                new ModelException(
                    "sweep", "ask", '"' + ask + '"', "an ask for one unknown, such as a tension"));
  }

  /**
   * Goes to a value of the drive.
   *
   * @param drive in rad or m from the drawn pose, between the ends of the course
   * @throws ModelException if the value lies beyond an end
   */
  public void moveTo(double drive) {
    course.put(seat, drive);
    at = drive;
    solved = false;
  }

  /**
   * Where it stands.
   *
   * @return value of the drive, in rad or m from the drawn pose
   */
  public double at() {
    return at;
  }

  /**
   * How far a point is to the right.
   *
   * @param spot the point
   * @return in m, in the world
   */
  public double x(Spot spot) {
    return course.device().middle().x()
        + course.device().size() * closure.x(spot.body(), spot.right(), spot.up());
  }

  /**
   * How far a point is up.
   *
   * @param spot the point
   * @return in m, in the world
   */
  public double y(Spot spot) {
    return course.device().middle().y()
        + course.device().size() * closure.y(spot.body(), spot.right(), spot.up());
  }

  /**
   * How far the body of a point has turned.
   *
   * @param spot a point of the body
   * @return in rad since the drawn pose, counter-clockwise positive, whole turns counted; 0 for the
   *     ground and for joints
   */
  public double turn(Spot spot) {
    return closure.turn(spot.body());
  }

  /**
   * How far the connections are from fitting.
   *
   * @return in sizes of the device, 0 or more
   */
  public double gap() {
    return closure.error();
  }

  /**
   * The pose as an object of its own.
   *
   * @return the pose, which stays when the sweep moves on
   */
  public Pose pose() {
    return closure.pose();
  }

  /**
   * Whether the equations have a single solution here, so that forces are told. The answers that
   * {@link bellcrank.statics.equilibrium.Balance} gives to fixed forces of a device that is not
   * determinate as a whole are not told here.
   *
   * @return true if {@link #value} tells them
   */
  public boolean tellsForces() {
    if (!solved) {
      told = storage().solve(closure, course.loadCase());
      solved = true;
    }
    return told;
  }

  /**
   * A force where it stands.
   *
   * @param slot which one
   * @return SI value
   * @throws ModelException if the forces have no single solution here
   */
  public double value(Prepared.Slot slot) {
    if (!tellsForces()) {
      throw new ModelException(
          course.device().name(), "drive", at, "a value at which tellsForces() is true");
    }
    return storage().unknown(slot.column()) * slot.factor();
  }

  /** Whether forces are told and are of the order of the loads, so that rounding decides none. */
  boolean isFair() {
    return tellsForces() && storage().amplification() < FAIR;
  }

  private PreparedSystem.Storage storage() {
    PreparedSystem.Storage found = forces.orElse(null);
    if (found == null) {
      found = new PreparedSystem(course.device()).storage();
      forces = Optional.of(found);
    }
    return found;
  }
}
