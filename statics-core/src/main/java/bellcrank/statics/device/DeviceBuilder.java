package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Collects the parts of a device and checks them together. Parts may be added in any order; names
 * are resolved by {@link #build()}.
 */
public final class DeviceBuilder {

  final String name;
  Vector gravity = Device.STANDARD_GRAVITY;
  final Map<String, Point> points = new LinkedHashMap<>();
  final List<Member> members = new ArrayList<>();
  final List<Joint> joints = new ArrayList<>();
  final List<Connection> connections = new ArrayList<>();
  final List<Load> loads = new ArrayList<>();
  final List<LoadCase> cases = new ArrayList<>();
  final Map<String, Integer> counts = new LinkedHashMap<>();
  Optional<EffortAndResistance> advantage = Optional.empty();

  DeviceBuilder(String name) {
    this.name = name;
  }

  /**
   * Sets gravity.
   *
   * @param gravity in m/s²
   * @return this
   */
  public DeviceBuilder gravity(Vector gravity) {
    this.gravity = gravity;
    return this;
  }

  /**
   * Names a point.
   *
   * @param point its name
   * @param x abscissa in m, positive to the right
   * @param y ordinate in m, positive up
   * @return this
   * @throws ModelException if the name is not acceptable or used already, or a coordinate is not
   *     finite
   */
  public DeviceBuilder point(String point, double x, double y) {
    return point(point, Point.of(Check.finite(point, "x", x), Check.finite(point, "y", y)));
  }

  /**
   * Names a point.
   *
   * @param point its name
   * @param place in the drawn pose
   * @return this
   * @throws ModelException if the name is not acceptable or used already
   */
  public DeviceBuilder point(String point, Point place) {
    Check.name("point", point);
    if (points.putIfAbsent(point, place) != null) {
      throw new ModelException(point, "name", Check.quote(point), "a name for one point only");
    }
    return this;
  }

  /**
   * Adds a member whose bars join neighbouring points.
   *
   * @param member its name
   * @param chain names of its points in order
   * @return this
   * @throws ModelException if the name is not acceptable
   */
  public DeviceBuilder member(String member, String... chain) {
    return member(Member.of(member, List.of(chain)));
  }

  /**
   * Adds a member.
   *
   * @param member the member
   * @return this
   */
  public DeviceBuilder member(Member member) {
    members.add(member);
    return this;
  }

  /**
   * Adds a joint at the point of the same name.
   *
   * @param joint name of the joint and of its point
   * @return this
   * @throws ModelException if the name is not acceptable
   */
  public DeviceBuilder joint(String joint) {
    return joint(new Joint(joint, joint));
  }

  /**
   * Adds a joint.
   *
   * @param joint the joint
   * @return this
   */
  public DeviceBuilder joint(Joint joint) {
    joints.add(joint);
    return this;
  }

  /**
   * Adds a connection.
   *
   * @param connection the connection
   * @return this
   */
  public DeviceBuilder connect(Connection connection) {
    connections.add(connection);
    return this;
  }

  /**
   * Adds a smooth pin.
   *
   * @param pin its name
   * @param at name of its point
   * @param bodies names of the bodies it goes through
   * @return this
   * @throws ModelException if a name is not acceptable
   */
  public DeviceBuilder pin(String pin, String at, String... bodies) {
    return connect(Pin.smooth(pin, at, List.of(bodies)));
  }

  /**
   * Adds a built-in support or rigid splice.
   *
   * @param clamp its name
   * @param at name of its point
   * @param body the body on which its force is reported
   * @param other the other body
   * @return this
   * @throws ModelException if a name is not acceptable
   */
  public DeviceBuilder clamp(String clamp, String at, String body, String other) {
    return connect(new Clamp(clamp, at, body, other));
  }

  /**
   * Adds a two-sided roller.
   *
   * @param roller its name
   * @param at name of its point
   * @param body the body on which its force is reported
   * @param other the other body
   * @param push direction of the positive force on {@code body}
   * @return this
   * @throws ModelException if a name is not acceptable
   */
  public DeviceBuilder roller(String roller, String at, String body, String other, Direction push) {
    return connect(new Roller(roller, at, body, other, push, Sides.TWO));
  }

  /**
   * Adds a weightless strut.
   *
   * @param strut its name
   * @param first an end
   * @param second the other end
   * @return this
   * @throws ModelException if a name is not acceptable
   */
  public DeviceBuilder strut(String strut, End first, End second) {
    return connect(new Strut(strut, first, second, 0));
  }

  /**
   * Adds a straight rope.
   *
   * @param line its name
   * @param first an end
   * @param second the other end
   * @return this
   * @throws ModelException if a name is not acceptable
   */
  public DeviceBuilder line(String line, End first, End second) {
    return connect(new Line(line, first, second));
  }

  /**
   * Adds a load or sought quantity.
   *
   * @param load the load
   * @return this
   */
  public DeviceBuilder load(Load load) {
    loads.add(load);
    return this;
  }

  /**
   * Adds a force.
   *
   * @param force its name
   * @param body the member, joint or pin on which it acts
   * @param at name of the point where it acts
   * @param vector components in N
   * @return this
   * @throws ModelException if the name is not acceptable
   */
  public DeviceBuilder force(String force, String body, String at, Vector vector) {
    return load(new Force(force, body, at, vector));
  }

  /**
   * Adds a weight at a centre of gravity.
   *
   * @param weight its name
   * @param body the member, joint or pin
   * @param at name of the point where it acts
   * @param mass in kg, 0 or more
   * @return this
   * @throws ModelException if a field is not acceptable
   */
  public DeviceBuilder weight(String weight, String body, String at, double mass) {
    return load(new Weight(weight, body, Optional.of(at), mass));
  }

  /**
   * Asks for the size of a force.
   *
   * @param sought its name
   * @param body the member, joint or pin on which it acts
   * @param at name of the point where it acts
   * @param direction direction of a positive size
   * @return this
   * @throws ModelException if the name is not acceptable
   */
  public DeviceBuilder sought(String sought, String body, String at, Direction direction) {
    return load(
        new Sought(sought, Sought.Want.FORCE, body, Optional.of(at), Optional.of(direction)));
  }

  /**
   * Says that a connection stands for several equal parts in planes behind one another.
   *
   * @param connection its name
   * @param count number of parts, 1 or more
   * @return this
   * @throws ModelException if the count is below 1
   */
  public DeviceBuilder count(String connection, int count) {
    if (count < 1) {
      throw new ModelException(connection, "count", count, "a whole number of 1 or more");
    }
    if (count > 1) {
      counts.put(connection, count);
    } else {
      counts.remove(connection);
    }
    return this;
  }

  /**
   * Adds a case.
   *
   * @param loadCase the case
   * @return this
   */
  public DeviceBuilder loadCase(LoadCase loadCase) {
    cases.add(loadCase);
    return this;
  }

  /**
   * States the forces between which the mechanical advantage is taken.
   *
   * @param effort name of the effort
   * @param resistance name of the resistance
   * @return this
   * @throws ModelException if both are the same
   */
  public DeviceBuilder advantage(String effort, String resistance) {
    advantage = Optional.of(new EffortAndResistance(effort, resistance));
    return this;
  }

  /**
   * Finds everything that keeps the parts from making a device.
   *
   * @return empty if {@link #build()} will succeed
   */
  public List<Problem> problems() {
    return new DeviceValidation(this).problems();
  }

  /**
   * The device.
   *
   * @return the validated device
   * @throws ModelException with all problems, if there are any
   */
  public Device build() {
    List<Problem> problems = problems();
    if (!problems.isEmpty()) {
      throw new ModelException(problems);
    }
    return new Device(this);
  }
}
