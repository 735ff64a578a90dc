package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.Closure;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.motion.internal.Seat;
import bellcrank.statics.motion.internal.Tracer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way of a device with one freedom between two ends, by the value of its drive: 0 as drawn, in
 * rad for a turn and in m for a length or a slide. Immutable.
 */
public final class Course implements Travel {

  private final Device device;
  private final LoadCase loadCase;
  private final Drive drive;
  private final Tracer down;
  private final Tracer up;
  private final CourseEnd least;
  private final CourseEnd greatest;
  private final double unit;
  private final Assembly assembly;
  private final List<Integer> released;

  Course(
      Device device,
      LoadCase loadCase,
      Drive drive,
      Tracer down,
      Tracer up,
      CourseEnd least,
      CourseEnd greatest) {
    this.device = device;
    this.loadCase = loadCase;
    this.drive = drive;
    this.down = down;
    this.up = up;
    this.least = least;
    this.greatest = greatest;
    unit = Drivers.unit(device, drive);
    assembly = Assembly.of(device);
    released = Drivers.released(device, drive);
  }

  /**
   * The device.
   *
   * @return as drawn
   */
  public Device device() {
    return device;
  }

  /**
   * The loads.
   *
   * @return the case under which forces on the way are told
   */
  public LoadCase loadCase() {
    return loadCase;
  }

  /**
   * What drives it.
   *
   * @return the drive
   */
  public Drive drive() {
    return drive;
  }

  /**
   * The end with the least value of the drive.
   *
   * @return where it is and why
   */
  public CourseEnd least() {
    return least;
  }

  /**
   * The end with the greatest value of the drive.
   *
   * @return where it is and why
   */
  public CourseEnd greatest() {
    return greatest;
  }

  /**
   * Where a second motion opens, as in a parallelogram that lies flat. The course keeps its
   * direction there.
   *
   * @return values of the drive, in ascending order
   */
  public List<Double> changePoints() {
    List<Double> changes = new ArrayList<>();
    down.changes().forEach(one -> changes.add(one * unit));
    up.changes().forEach(one -> changes.add(one * unit));
    changes.sort(Double::compare);
    return List.copyOf(changes);
  }

  /**
   * The pose at a value of the drive. All connections fit to 1e-12 of the device's size.
   *
   * @param at value of the drive, between the ends
   * @return the pose
   * @throws ModelException if the value lies beyond an end
   */
  public Pose pose(double at) {
    return stand(at).pose();
  }

  /** A closure that stands at a value of the drive. */
  Closure stand(double at) {
    Closure closure = closure();
    put(seat(closure), at);
    return closure;
  }

  /** A closure of the device, as drawn, its drive let go. */
  Closure closure() {
    return Closure.of(assembly, released);
  }

  /** What puts a closure to places of this course. */
  Seat seat(Closure closure) {
    return up.seat(closure);
  }

  /** Puts a seat to a value of the drive. */
  void put(Seat seat, double at) {
    double room = 1e-9 * Math.max(1, greatest.drive() - least.drive());
    if (!(at >= least.drive() - room && at <= greatest.drive() + room)) {
      throw new ModelException(
          device.name(), "drive", at, "from " + least.drive() + " to " + greatest.drive());
    }
    double within = Math.max(least.drive(), Math.min(greatest.drive(), at));
    (within < 0 ? down : up).put(seat, within / unit);
  }

  /** Configurations that were found on the way between two values, in ascending order. */
  List<double[]> configurations(double from, double to) {
    List<double[]> found = new ArrayList<>(down.configurations(from / unit, to / unit));
    // both ways begin at the drawn pose
    found.addAll(up.configurations(Math.max(0, from / unit), to / unit));
    return found;
  }

  /** How fast the drive goes where a closure stands, in rad or m, at given velocities. */
  double rate(Closure closure, double[] velocities) {
    return unit * up.rate(closure, velocities);
  }

  /**
   * A sweep through many poses, which allocates nothing on the way.
   *
   * @return a new sweep, as drawn, for one thread at a time
   */
  public Sweep sweep() {
    return new Sweep(this);
  }

  /**
   * How the bodies move at a value of the drive, for a rate of the drive of 1 rad/s or 1 m/s:
   * turning speeds, velocities and instant centres. The ratio of two speeds is the inverse of the
   * ratio of the forces that balance there.
   *
   * @param at value of the drive, between the ends
   * @return the bodies that move; empty at a dead centre
   * @throws ModelException if the value lies beyond an end
   */
  public List<BodyMotion> velocities(double at) {
    Closure closure = stand(at);
    double[] velocities = (at < 0 ? down : up).velocities(closure);
    return velocities.length == 0
        ? List.of()
        : CourseFinder.motions(device, closure, CourseFinder.times(velocities, 1 / unit));
  }

  /**
   * The place of a point of a body.
   *
   * @param at value of the drive, between the ends
   * @param body name of the body
   * @param point name of the point
   * @return in the world
   * @throws ModelException if the value lies beyond an end or there is no such point
   */
  public Point place(double at, String body, String point) {
    return pose(at).frame(body).apply(device.point(point));
  }

  /**
   * The account of work between two values of the drive: what efforts and loads do and what springs
   * take up. It is a check of forces and motion against one another. It is added up along the
   * motion, not along the drive, so it closes up to a dead centre as well.
   *
   * @param from value of the drive at the beginning
   * @param to value of the drive at the end; may be the smaller one
   * @return the work; empty if an effort is not told somewhere on the way
   * @throws ModelException if a value lies beyond an end
   */
  public Optional<Work> work(double from, double to) {
    return new WorkFinder(this).between(from, to);
  }

  /**
   * How the answer to an ask changes on the way.
   *
   * @param ask what is asked, answered by a number
   * @return its curve
   * @throws ModelException if the ask names what the device does not have
   */
  public Curve curve(Ask ask) {
    return curve(ask, List.of());
  }

  /**
   * How the answer to an ask changes on the way, on stated ground.
   *
   * @param ask what is asked, answered by a number
   * @param foundations the ground under contact bases, which counts where limits answer
   * @return its curve
   * @throws ModelException if the ask names what the device does not have, or a foundation is of no
   *     contact base
   */
  public Curve curve(Ask ask, List<Foundation> foundations) {
    return CurveFinder.find(this, ask.check(device), foundations);
  }

  /**
   * How the answer to an ask changes on the way.
   *
   * @param ask text of the ask
   * @return its curve
   * @throws ModelException if the text is no ask or names what the device does not have
   */
  public Curve curve(String ask) {
    return curve(Ask.parse(ask));
  }
}
