package bellcrank.statics.motion;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceDraft;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/**
 * Families of devices that differ in one number, for {@link Find}: the device with that number put
 * in. A family throws a {@link ModelException} for a number with which the device cannot be built.
 */
public final class Unknown {

  private Unknown() {}

  /**
   * The place of a point along a line; all parts at that point go with it.
   *
   * @param device the device
   * @param point name of the point
   * @param along direction of the line
   * @return device by distance in m from the drawn place, positive along the direction
   * @throws ModelException if there is no such point
   */
  public static DoubleFunction<Device> pointAlong(Device device, String point, Direction along) {
    return pointsAlong(device, List.of(point), along);
  }

  /**
   * The place of several points that move together along a line.
   *
   * @param device the device
   * @param points names of the points
   * @param along direction of the line
   * @return device by distance in m from the drawn places, positive along the direction
   * @throws ModelException if there is no such point
   */
  public static DoubleFunction<Device> pointsAlong(
      Device device, List<String> points, Direction along) {
    return moved(device, points, distance -> Frame.of(along.times(distance), 0));
  }

  /**
   * The turn of several points about another: a member, its points given, that is set at another
   * angle.
   *
   * @param device the device
   * @param points names of the points that turn
   * @param about name of the point about which they turn
   * @return device by turn in rad from the drawn places, counter-clockwise positive
   * @throws ModelException if there is no such point
   */
  public static DoubleFunction<Device> turnOf(Device device, List<String> points, String about) {
    Point centre = device.point(about);
    return moved(device, points, turn -> Frame.turnAbout(centre, turn));
  }

  private static DoubleFunction<Device> moved(
      Device device, List<String> points, DoubleFunction<Frame> frames) {
    List<String> names = List.copyOf(points);
    names.forEach(device::point);
    return value -> {
      Frame frame = frames.apply(finite(device.name(), value));
      DeviceDraft draft = DeviceDraft.of(device);
      names.forEach(point -> draft.point(point, frame.apply(device.point(point))));
      return draft.build();
    };
  }

  /**
   * The mass of a weight.
   *
   * @param device the device
   * @param load name of the weight
   * @return device by mass in kg, 0 or more
   * @throws ModelException if there is no weight of that name
   */
  public static DoubleFunction<Device> mass(Device device, String load) {
    Weight drawn =
        named(device, load, "a weight", one -> one instanceof Weight w ? Optional.of(w) : none());
    return mass -> changed(device, new Weight(load, drawn.body(), drawn.at(), finite(load, mass)));
  }

  /**
   * The size of a force that keeps its direction.
   *
   * @param device the device
   * @param load name of a force other than zero
   * @return device by size in N, negative against the drawn direction
   * @throws ModelException if there is no such force, or it is zero and so has no direction
   */
  public static DoubleFunction<Device> force(Device device, String load) {
    Force drawn =
        named(
            device,
            load,
            "a force other than zero",
            one -> one instanceof Force f && f.vector().norm() > 0 ? Optional.of(f) : none());
    Direction along = Direction.from(drawn.vector());
    return size ->
        changed(device, new Force(load, drawn.body(), drawn.at(), along.times(finite(load, size))));
  }

  /**
   * The direction of a load that keeps its size.
   *
   * @param device the device
   * @param load name of a force, of a spread load or sought effort that has a direction
   * @return device by angle in rad from the right, counter-clockwise positive
   * @throws ModelException if there is no such load
   */
  public static DoubleFunction<Device> direction(Device device, String load) {
    Load drawn =
        named(
            device,
            load,
            "a load with a direction",
            one -> hasDirection(one) ? Optional.of(one) : none());
    return angle -> changed(device, directed(drawn, Direction.ofAngle(finite(load, angle))));
  }

  private static boolean hasDirection(Load load) {
    return load instanceof Force
        || (load instanceof SpreadLoad spread && spread.direction().isPresent())
        || (load instanceof Sought sought && sought.direction().isPresent());
  }

  private static Load directed(Load load, Direction way) {
    if (load instanceof Force force) {
      Vector vector = way.times(force.vector().norm());
      return new Force(force.name(), force.body(), force.at(), vector);
    }
    Optional<Direction> direction = Optional.of(way);
    if (load instanceof Sought sought) {
      return new Sought(
          sought.name(), sought.want(), sought.body(), sought.at(), direction, sought.to());
    }
    SpreadLoad spread = (SpreadLoad) load;
    return spread(spread, spread.start(), spread.end(), direction);
  }

  /**
   * The moment of a couple.
   *
   * @param device the device
   * @param load name of the couple
   * @return device by moment in N·m, with the sign of the couple
   * @throws ModelException if there is no couple of that name
   */
  public static DoubleFunction<Device> couple(Device device, String load) {
    Couple drawn =
        named(device, load, "a couple", one -> one instanceof Couple c ? Optional.of(c) : none());
    return moment ->
        changed(device, new Couple(load, drawn.member(), finite(load, moment), drawn.at()));
  }

  /**
   * How far a spread load reaches, its intensities at both ends kept. The point where it ends goes
   * with it, and so does all else at that point.
   *
   * @param device the device
   * @param load name of the spread load
   * @return device by length in m from the start of the load, above 0
   * @throws ModelException if there is no spread load of that name
   */
  public static DoubleFunction<Device> reach(Device device, String load) {
    SpreadLoad drawn = spreadLoad(device, load);
    return length -> reaching(device, drawn, length, drawn);
  }

  /**
   * The depth of what presses by its depth, such as water or earth: the load reaches from the
   * ground where it starts to the surface where it ends. The intensity at the surface is kept, and
   * the one at the start changes so that the intensity still grows by as much for each metre of
   * depth. The point where it ends goes with it, and so does all else at that point.
   *
   * @param device the device
   * @param load name of the spread load
   * @return device by depth in m along the load, above 0
   * @throws ModelException if there is no spread load of that name
   */
  public static DoubleFunction<Device> depth(Device device, String load) {
    SpreadLoad drawn = spreadLoad(device, load);
    double length = device.point(drawn.from()).distance(device.point(drawn.to()));
    double growth = (drawn.start() - drawn.end()) / length;
    return depth -> {
      double start = drawn.end() + growth * finite(load, depth);
      return reaching(device, drawn, depth, spread(drawn, start, drawn.end(), drawn.direction()));
    };
  }

  private static SpreadLoad spreadLoad(Device device, String load) {
    return named(
        device,
        load,
        "a spread load",
        one -> one instanceof SpreadLoad s ? Optional.of(s) : none());
  }

  private static Device reaching(
      Device device, SpreadLoad drawn, double length, SpreadLoad changed) {
    if (!(finite(drawn.name(), length) > 0)) {
      throw new ModelException(drawn.name(), "length", length, "a number above 0");
    }
    Point from = device.point(drawn.from());
    Direction along = Direction.from(from, device.point(drawn.to()));
    Point end = from.plus(along.times(length));
    return DeviceDraft.of(device).load(changed).point(drawn.to(), end).build();
  }

  private static SpreadLoad spread(
      SpreadLoad load, double start, double end, Optional<Direction> direction) {
    return new SpreadLoad(
        load.name(), load.member(), load.from(), load.to(), start, end, direction, load.per());
  }

  /**
   * The slope on which a device stands that is drawn level: gravity is turned instead.
   *
   * @param device the device
   * @return device by slope in rad, positive where the ground rises to the right
   */
  public static DoubleFunction<Device> slope(Device device) {
    return slope -> {
      Frame turned = Frame.turnAbout(Point.ORIGIN, -finite(device.name(), slope));
      Vector drawn = device.gravity();
      Point gravity = turned.apply(Point.of(drawn.x(), drawn.y()));
      return DeviceDraft.of(device).gravity(Vector.of(gravity.x(), gravity.y())).build();
    };
  }

  private static Device changed(Device device, Load other) {
    return DeviceDraft.of(device).load(other).build();
  }

  private static <T> Optional<T> none() {
    return Optional.empty();
  }

  private static <T extends Load> T named(
      Device device, String load, String kind, Function<Load, Optional<T>> as) {
    return device
        .load(load)
        .flatMap(as)
        .orElseThrow(
            () -> new ModelException(device.name(), "unknown", load, "the name of " + kind));
  }

  private static double finite(String part, double value) {
    if (!Double.isFinite(value)) {
      throw new ModelException(part, "unknown", value, "a finite number");
    }
    return value;
  }
}
