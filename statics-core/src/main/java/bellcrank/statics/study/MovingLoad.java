package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.limits.Limits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A force or weight that moves along one member or over several, one after the other. Its way is
 * straight from point to point; places on it are told as the distance gone from its start. The load
 * keeps its size and direction. Immutable.
 */
public final class MovingLoad {

  private static final int LONGEST_NAME = 80;

  private final Device device;
  private final LoadCase loadCase;
  private final Pose pose;
  private final String load;
  private final List<Leg> way;
  private final List<Double> stops;
  private final Direction direction;
  private final double size;
  private final String name;

  /**
   * A straight part of the way.
   *
   * @param member name of the member on which the load is
   * @param from name of the point where it comes on
   * @param to name of the point where it goes off, another one
   */
  public record Leg(String member, String from, String to) {}

  private MovingLoad(Device device, LoadCase loadCase, Pose pose, String load, List<Leg> way) {
    this.device = device;
    this.loadCase = loadCase;
    this.pose = pose;
    this.load = load;
    this.way = List.copyOf(way);
    Load drawn = device.load(load).orElse(null);
    if (drawn instanceof Force force && force.vector().norm() > 0) {
      direction = Direction.from(force.vector());
      size = force.vector().norm() * loadCase.factor(load);
    } else if (drawn instanceof Weight weight && device.gravity().norm() > 0) {
      direction = Direction.from(device.gravity());
      size = weight.mass() * device.gravity().norm() * loadCase.factor(load);
    } else {
      throw new ModelException(
          device.name(), "load that moves", load, "the name of a force other than zero or weight");
    }
    stops = measure();
    name = freeName();
  }

  private List<Double> measure() {
    if (way.isEmpty()) {
      throw new ModelException(load, "way", "nothing", "at least one leg on a member");
    }
    List<Double> found = new ArrayList<>(List.of(0.0));
    for (Leg leg : way) {
      if (!(device.body(leg.member()).orElse(null) instanceof Member)) {
        List<String> names = device.members().stream().map(Member::name).toList();
        throw new ModelException(
            load,
            "way",
            "on " + leg.member(),
            "on one of the members: " + String.join(", ", names));
      }
      double length = device.point(leg.from()).distance(device.point(leg.to()));
      if (!(length > 0)) {
        throw new ModelException(
            load, "way", leg.from() + " to " + leg.to(), "two points that are apart");
      }
      found.add(found.get(found.size() - 1) + length);
    }
    return List.copyOf(found);
  }

  /** A name that nothing in the device has, for the point and the force. */
  private String freeName() {
    String free = "moving " + load;
    free = free.substring(0, Math.min(free.length(), LONGEST_NAME / 2)).strip();
    while (device.points().containsKey(free)
        || device.load(free).isPresent()
        || device.connection(free).isPresent()
        || device.body(free).isPresent()) {
      free += "'";
    }
    return free;
  }

  /**
   * A load that moves over members.
   *
   * @param device the device
   * @param loadCase factors on all loads, this one among them
   * @param pose where the bodies are; it must fit the connections
   * @param load name of a force or weight; where it is drawn does not matter
   * @param way its way, one leg after the other
   * @return the moving load
   * @throws ModelException if there is no such force, weight, member or point, the way has no leg,
   *     or a leg has no length
   */
  public static MovingLoad of(
      Device device, LoadCase loadCase, Pose pose, String load, List<Leg> way) {
    return new MovingLoad(device, loadCase, pose, load, way);
  }

  /**
   * A load that moves along its member, in the first case and as drawn.
   *
   * @param device the device
   * @param load name of a force or weight on a member
   * @param from name of the point where its way starts
   * @param to name of the point where its way ends
   * @return the moving load
   * @throws ModelException if there is no such force, weight or point, it is on no member, or the
   *     way has no length
   */
  public static MovingLoad of(Device device, String load, String from, String to) {
    Load drawn = device.load(load).orElse(null);
    String body =
        drawn instanceof Force force
            ? force.body()
            : drawn instanceof Weight weight ? weight.body() : load;
    return of(device, device.cases().get(0), Pose.DRAWN, load, List.of(new Leg(body, from, to)));
  }

  /**
   * Length of the way.
   *
   * @return in m, above 0
   */
  public double length() {
    return stops.get(stops.size() - 1);
  }

  /**
   * Size of the load with the factor of the case, which is negative if the factor is.
   *
   * @return in N
   */
  public double size() {
    return size;
  }

  /**
   * The load's name.
   *
   * @return name of the force or weight
   */
  public String load() {
    return load;
  }

  /**
   * The device with the load at a place. The load as it is drawn is still in it; {@link
   * #loadCase()} leaves it out.
   *
   * @param place distance gone in m, 0 to the length of the way
   * @return the device
   * @throws ModelException if the place is beyond the way
   */
  public Device device(double place) {
    int leg = leg(place);
    return device(leg, place, size);
  }

  /**
   * The case for {@link #device(double)}: as stated, without the load as it is drawn.
   *
   * @return factors on the loads
   */
  public LoadCase loadCase() {
    Map<String, Double> factors = new LinkedHashMap<>(loadCase.factors());
    factors.put(load, 0.0);
    // the size of the load has all its factors in it
    factors.put(name, 1 / loadCase.dynamic());
    return new LoadCase(loadCase.name(), factors, loadCase.dynamic());
  }

  /** The case for {@link #device(double)} without the moving load. */
  LoadCase without() {
    Map<String, Double> factors = new LinkedHashMap<>(loadCase().factors());
    factors.put(name, 0.0);
    return new LoadCase(loadCase.name(), factors, loadCase.dynamic());
  }

  /**
   * The balance with the load at a place.
   *
   * @param place distance gone in m, 0 to the length of the way
   * @return the balance
   * @throws ModelException if the place is beyond the way
   */
  public Balance balance(double place) {
    return Balance.of(device(place), loadCase(), pose);
  }

  /**
   * What the load does to an answer, by where it is.
   *
   * @param ask what is asked: a number that is a sum of forces, such as a reaction, a tension or a
   *     force inside a member at a place
   * @return its influence line, or why there is none
   * @throws ModelException if the ask names what the device does not have
   */
  public Influence influence(Ask ask) {
    return new InfluenceFinder(this, ask.check(device)).find();
  }

  /**
   * What the load does to an answer, by where it is.
   *
   * @param ask text of the ask
   * @return its influence line, or why there is none
   * @throws ModelException if the text is no ask or names what the device does not have
   */
  public Influence influence(String ask) {
    return influence(Ask.parse(ask));
  }

  /**
   * What is to be known about all influence lines of this device, if anything.
   *
   * @return a clause where parts are one-sided or rough: they are taken as holding
   */
  public Optional<String> remark() {
    return Limits.concern(device)
        ? Optional.of(
            "one-sided and rough parts are taken as holding, so whether the device stands with the"
                + " load at a place is to be asked there")
        : Optional.empty();
  }

  private int leg(double place) {
    double room = 1e-9 * length();
    if (!(place >= -room && place <= length() + room)) {
      throw new ModelException(
          load, "place in m", place, "0 to " + length() + ", the length of the way");
    }
    int leg = 0;
    while (leg < way.size() - 1 && place > stops.get(leg + 1)) {
      leg++;
    }
    return leg;
  }

  /** The device with a force of some size at a place on a leg. */
  Device device(int leg, double place, double force) {
    Point from = device.point(way.get(leg).from());
    Direction along = Direction.from(from, device.point(way.get(leg).to()));
    Point at = from.plus(along.times(place - stops.get(leg)));
    return device.toBuilder()
        .point(name, at)
        .force(name, way.get(leg).member(), name, direction.times(force))
        .build();
  }

  /**
   * The case in which nothing acts but the force that {@link #device(int, double, double)} adds.
   */
  LoadCase alone() {
    Map<String, Double> factors = new LinkedHashMap<>();
    for (Load one : device.loads()) {
      if (!(one instanceof Sought)) {
        factors.put(one.name(), 0.0);
      }
    }
    for (Connection one : device.connections()) {
      // struts may have masses of their own
      factors.put(one.name(), 0.0);
    }
    return new LoadCase(loadCase.name(), factors, 1);
  }

  Device device() {
    return device;
  }

  Pose pose() {
    return pose;
  }

  List<Leg> way() {
    return way;
  }

  /** Distances gone where legs begin, and the length of the way. */
  List<Double> stops() {
    return stops;
  }
}
