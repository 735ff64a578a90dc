package bellcrank.statics.device;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A device that is being changed: places, loads, connections, cases and gravity may be exchanged
 * for others, and the changed device is built once, at the end. Nothing is added or taken away. The
 * device it started from stays as it is. Not for use by several threads.
 */
public final class DeviceDraft {

  private final Device device;
  private final Map<String, Point> points = new LinkedHashMap<>();
  private final Map<String, Load> loads = new LinkedHashMap<>();
  private final Map<String, Connection> connections = new LinkedHashMap<>();
  private final Map<String, LoadCase> cases = new LinkedHashMap<>();
  private Vector gravity;

  private DeviceDraft(Device device) {
    this.device = device;
    gravity = device.gravity();
  }

  /**
   * A draft without changes.
   *
   * @param device the device to start from
   * @return a new draft
   */
  public static DeviceDraft of(Device device) {
    return new DeviceDraft(device);
  }

  /**
   * The device it started from.
   *
   * @return without the changes
   */
  public Device device() {
    return device;
  }

  /**
   * The place of a point, changes taken in.
   *
   * @param point name of the point
   * @return its place in the drawn pose
   * @throws ModelException if there is no such point
   */
  public Point point(String point) {
    Point changed = points.get(point);
    return changed == null ? device.point(point) : changed;
  }

  /**
   * Moves a point; all parts at it go with it.
   *
   * @param point name of a point of the device
   * @param place its new place
   * @return this
   * @throws ModelException if there is no such point
   */
  public DeviceDraft point(String point, Point place) {
    device.point(point);
    points.put(point, place);
    return this;
  }

  /**
   * Gravity, changes taken in.
   *
   * @return in m/s²
   */
  public Vector gravity() {
    return gravity;
  }

  /**
   * Changes gravity.
   *
   * @param other in m/s²
   * @return this
   */
  public DeviceDraft gravity(Vector other) {
    gravity = other;
    return this;
  }

  /**
   * A load by name, changes taken in.
   *
   * @param load its name
   * @return empty if there is none
   */
  public Optional<Load> load(String load) {
    Load changed = loads.get(load);
    return changed == null ? device.load(load) : Optional.of(changed);
  }

  /**
   * Exchanges a load for another of the same name.
   *
   * @param other the other load
   * @return this
   * @throws ModelException if the device has no load of that name
   */
  public DeviceDraft load(Load other) {
    if (device.load(other.name()).isEmpty()) {
      throw unknown("load", other.name(), device.loads().stream().map(Load::name).toList());
    }
    loads.put(other.name(), other);
    return this;
  }

  /**
   * A connection by name, changes taken in.
   *
   * @param connection its name
   * @return empty if there is none
   */
  public Optional<Connection> connection(String connection) {
    Connection changed = connections.get(connection);
    return changed == null ? device.connection(connection) : Optional.of(changed);
  }

  /**
   * Exchanges a connection for another of the same name.
   *
   * @param other the other connection
   * @return this
   * @throws ModelException if the device has no connection of that name
   */
  public DeviceDraft connection(Connection other) {
    if (device.connection(other.name()).isEmpty()) {
      throw unknown(
          "connection", other.name(), device.connections().stream().map(Connection::name).toList());
    }
    connections.put(other.name(), other);
    return this;
  }

  /**
   * A case by name, changes taken in.
   *
   * @param loadCase its name
   * @return the case
   * @throws ModelException if there is no such case
   */
  public LoadCase loadCase(String loadCase) {
    LoadCase changed = cases.get(loadCase);
    return changed == null ? device.loadCase(loadCase) : changed;
  }

  /**
   * Exchanges a case for another of the same name.
   *
   * @param other the other case
   * @return this
   * @throws ModelException if the device has no case of that name
   */
  public DeviceDraft loadCase(LoadCase other) {
    device.loadCase(other.name());
    cases.put(other.name(), other);
    return this;
  }

  /**
   * The changed device.
   *
   * @return the device itself if nothing was changed
   * @throws ModelException with all problems, if there are any
   */
  public Device build() {
    boolean same =
        points.isEmpty()
            && loads.isEmpty()
            && connections.isEmpty()
            && cases.isEmpty()
            && gravity.equals(device.gravity());
    return same ? device : builder().build();
  }

  DeviceBuilder builder() {
    DeviceBuilder builder = new DeviceBuilder(device.name()).gravity(gravity);
    device.points().forEach((key, drawn) -> builder.point(key, points.getOrDefault(key, drawn)));
    device.members().forEach(builder::member);
    device.joints().forEach(builder::joint);
    device.connections().forEach(one -> builder.connect(connections.getOrDefault(one.name(), one)));
    device.loads().forEach(one -> builder.load(loads.getOrDefault(one.name(), one)));
    device.counts().forEach(builder::count);
    // a device that states no case has one of all loads, which a change of it makes a stated one
    if (!device.cases().equals(List.of(LoadCase.ALL_LOADS)) || !cases.isEmpty()) {
      device.cases().forEach(one -> builder.loadCase(cases.getOrDefault(one.name(), one)));
    }
    device.advantage().ifPresent(pair -> builder.advantage(pair.effort(), pair.resistance()));
    return builder;
  }

  private ModelException unknown(String kind, String wrong, Collection<String> known) {
    return new ModelException(
        device.name(), kind, Check.quote(wrong), DeviceValidation.oneOf(kind, wrong, known));
  }
}
