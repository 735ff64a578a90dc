package bellcrank.statics.device;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

/**
 * A device as it is drawn: points, bodies, connections, loads and cases. Immutable and validated;
 * made by {@link #named(String)}. Two devices are equal if all their parts are.
 *
 * <p>Signs are shown in figures on <a
 * href="{@docRoot}/bellcrank.statics/bellcrank/statics/device/doc-files/signs.html">the page of
 * signs</a>.
 */
public final class Device {

  /** Standard gravity, 9.80665 m/s² down (3rd CGPM 1901; NIST SP 811, Appendix B.8). */
  public static final Vector STANDARD_GRAVITY = Vector.of(0, -9.80665);

  /** Places nearer to one another than this, in m, are the same place. */
  static final double SAME_PLACE = 1e-9;

  private final String name;
  private final Vector gravity;
  private final Map<String, Point> points;
  private final List<Member> members;
  private final List<Joint> joints;
  private final List<Connection> connections;
  private final List<Load> loads;
  private final List<LoadCase> cases;
  private final Map<String, Integer> counts;
  private final Optional<EffortAndResistance> advantage;
  private final Map<String, Integer> bodyIndex = new HashMap<>();
  private final Map<String, Connection> connectionByName = new HashMap<>();
  private final Map<String, Load> loadByName = new HashMap<>();
  private final Point middle;
  private final double size;

  Device(DeviceBuilder from) {
    name = from.name;
    gravity = from.gravity;
    points = Collections.unmodifiableMap(new LinkedHashMap<>(from.points));
    members = List.copyOf(from.members);
    joints = List.copyOf(from.joints);
    connections = List.copyOf(from.connections);
    loads = List.copyOf(from.loads);
    cases = from.cases.isEmpty() ? List.of(LoadCase.ALL_LOADS) : List.copyOf(from.cases);
    counts = Collections.unmodifiableMap(new LinkedHashMap<>(from.counts));
    advantage = from.advantage;
    for (Member member : members) {
      bodyIndex.put(member.name(), bodyIndex.size());
    }
    for (Joint joint : joints) {
      bodyIndex.put(joint.name(), bodyIndex.size());
    }
    for (Connection connection : connections) {
      connectionByName.put(connection.name(), connection);
    }
    for (Load load : loads) {
      loadByName.put(load.name(), load);
    }
    Point low = corner(points, Math::min);
    Point high = corner(points, Math::max);
    middle = Point.of((low.x() + high.x()) / 2, (low.y() + high.y()) / 2);
    double diagonal = low.distance(high);
    size = diagonal > SAME_PLACE ? diagonal : 1;
  }

  /**
   * Starts a device.
   *
   * @param name the device's name
   * @return a builder without parts
   * @throws ModelException if the name is not acceptable
   */
  public static DeviceBuilder named(String name) {
    return new DeviceBuilder(Check.name("device", name));
  }

  /** A corner of the box round all points; the origin if there are none. */
  private static Point corner(Map<String, Point> points, DoubleBinaryOperator outer) {
    return points.values().stream()
        .reduce(
            (a, b) ->
                Point.of(outer.applyAsDouble(a.x(), b.x()), outer.applyAsDouble(a.y(), b.y())))
        .orElse(Point.ORIGIN);
  }

  /**
   * The device's name.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Acceleration of gravity.
   *
   * @return in m/s²
   */
  public Vector gravity() {
    return gravity;
  }

  /**
   * The named points in order.
   *
   * @return name to place in the drawn pose
   */
  public Map<String, Point> points() {
    return points;
  }

  /**
   * The place of a named point.
   *
   * @param point name of the point
   * @return its place in the drawn pose
   * @throws ModelException if there is no such point
   */
  public Point point(String point) {
    Point found = points.get(point);
    if (found == null) {
      throw new ModelException(
          name,
          "point",
          Check.quote(point),
          DeviceValidation.oneOf("point", point, points.keySet()));
    }
    return found;
  }

  /**
   * The members in order.
   *
   * @return may be empty
   */
  public List<Member> members() {
    return members;
  }

  /**
   * The joints in order.
   *
   * @return may be empty
   */
  public List<Joint> joints() {
    return joints;
  }

  /**
   * The connections in order.
   *
   * @return may be empty
   */
  public List<Connection> connections() {
    return connections;
  }

  /**
   * The loads in order, sought quantities among them.
   *
   * @return may be empty
   */
  public List<Load> loads() {
    return loads;
  }

  /**
   * The sought quantities in order.
   *
   * @return may be empty
   */
  public List<Sought> sought() {
    List<Sought> sought = new ArrayList<>();
    for (Load load : loads) {
      if (load instanceof Sought one) {
        sought.add(one);
      }
    }
    return sought;
  }

  /**
   * The cases in order.
   *
   * @return at least one; {@link LoadCase#ALL_LOADS} if none is stated
   */
  public List<LoadCase> cases() {
    return cases;
  }

  /**
   * Counts of connections that stand for several equal parts.
   *
   * @return connection name to count, only where above 1
   */
  public Map<String, Integer> counts() {
    return counts;
  }

  /**
   * How many equal parts share the force of a connection on a body: the connection's own count, or
   * else that of the body if it is a member that stands for several.
   *
   * @param connection a connection of this device
   * @param body name of one of its bodies
   * @return 1 or more
   */
  public int sharing(Connection connection, String body) {
    Integer own = counts.get(connection.name());
    if (own != null) {
      return own;
    }
    int index = bodyIndex(body);
    return index >= 0 && index < members.size() ? members.get(index).count() : 1;
  }

  /**
   * The forces between which the mechanical advantage is taken.
   *
   * @return empty if none are stated
   */
  public Optional<EffortAndResistance> advantage() {
    return advantage;
  }

  /**
   * Number of a body: members in order, then joints.
   *
   * @param body name of a body
   * @return 0 or more; −1 for the ground or an unknown name
   */
  public int bodyIndex(String body) {
    Integer index = bodyIndex.get(body);
    return index == null ? -1 : index;
  }

  /**
   * A body by name.
   *
   * @param body name of a member, a joint or {@code ground}
   * @return empty if there is none
   */
  public Optional<Body> body(String body) {
    if (body.equals(Ground.NAME)) {
      return Optional.of(Ground.GROUND);
    }
    int index = bodyIndex(body);
    if (index < 0) {
      return Optional.empty();
    }
    return Optional.of(
        index < members.size() ? members.get(index) : joints.get(index - members.size()));
  }

  /**
   * The bodies to which a point belongs: members and joints that name it, or that a connection or
   * load touches there. What slides along a body has its place on the sliding one only.
   *
   * @param point name of a point
   * @return names in the order of the bodies, without the ground; empty if only the ground has it
   */
  public List<String> bodiesAt(String point) {
    return PointOwners.of(this, point);
  }

  /**
   * A connection by name.
   *
   * @param connection its name
   * @return empty if there is none
   */
  public Optional<Connection> connection(String connection) {
    return Optional.ofNullable(connectionByName.get(connection));
  }

  /**
   * A load or sought quantity by name.
   *
   * @param load its name
   * @return empty if there is none
   */
  public Optional<Load> load(String load) {
    return Optional.ofNullable(loadByName.get(load));
  }

  /**
   * A case by name.
   *
   * @param loadCase its name
   * @return the case
   * @throws ModelException if there is no such case
   */
  public LoadCase loadCase(String loadCase) {
    for (LoadCase one : cases) {
      if (one.name().equals(loadCase)) {
        return one;
      }
    }
    throw new ModelException(
        name,
        "case",
        Check.quote(loadCase),
        DeviceValidation.oneOf("case", loadCase, cases.stream().map(LoadCase::name).toList()));
  }

  /**
   * The middle of the box round the device's points.
   *
   * @return the origin if there are no points
   */
  public Point middle() {
    return middle;
  }

  /**
   * The device's size: the diagonal of the box round its points.
   *
   * @return in m, above 0; 1 if all points coincide
   */
  public double size() {
    return size;
  }

  /**
   * Centre of gravity of a member whose bars weigh in proportion to their lengths.
   *
   * @param member a member of this device that has bars
   * @return the place in the drawn pose
   * @throws ModelException if the member has no bars
   */
  public Point middleOfBars(Member member) {
    if (member.bars().isEmpty()) {
      throw new ModelException(member.name(), "bars", "none", "at least one bar");
    }
    double length = 0;
    double x = 0;
    double y = 0;
    for (Bar bar : member.bars()) {
      Point a = point(bar.start());
      Point b = point(bar.end());
      double own = a.distance(b);
      length += own;
      x += own * (a.x() + b.x()) / 2;
      y += own * (a.y() + b.y()) / 2;
    }
    return Point.of(x / length, y / length);
  }

  /**
   * A builder that holds all parts of this device, for a changed copy.
   *
   * @return a new builder
   */
  public DeviceBuilder toBuilder() {
    return DeviceDraft.of(this).builder();
  }

  private List<Object> parts() {
    return List.of(
        name, gravity, points, members, joints, connections, loads, cases, counts, advantage);
  }

  @Override
  public boolean equals(Object other) {
    return this == other || (other instanceof Device device && parts().equals(device.parts()));
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  @Override
  public String toString() {
    return "Device "
        + name
        + " ("
        + members.size()
        + " members, "
        + joints.size()
        + " joints, "
        + connections.size()
        + " connections, "
        + loads.size()
        + " loads)";
  }
}
