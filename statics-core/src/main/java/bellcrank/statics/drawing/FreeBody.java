package bellcrank.statics.drawing;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/**
 * One body or a group of bodies, cut free, with all that acts on it from outside. What acts between
 * bodies of the group is not among it.
 *
 * @param device the device that it is cut from
 * @param pose where the bodies are
 * @param bodies names of the bodies, without the ground, at least one
 * @param whole whether only the ground was cut away
 * @param forces known forces, those of zero among them
 * @param spreads known forces that are spread
 * @param couples known couples
 * @param openForces forces that are not known
 * @param openCouples couples that are not known
 * @param reactions whether forces at the cut are among these; without balance there are none
 * @param scale the largest force of the whole device in N, 0 or more: what is far below it is zero
 */
public record FreeBody(
    Device device,
    Pose pose,
    List<String> bodies,
    boolean whole,
    List<ActingForce> forces,
    List<SpreadForce> spreads,
    List<ActingCouple> couples,
    List<OpenForce> openForces,
    List<OpenCouple> openCouples,
    boolean reactions,
    double scale) {

  /** Share of the largest force below which a force is zero but for rounding. */
  private static final double ROUNDING = 1e-9;

  /**
   * Copies the lists.
   *
   * @param device the device that it is cut from
   * @param pose where the bodies are
   * @param bodies names of the bodies, without the ground, at least one
   * @param whole whether only the ground was cut away
   * @param forces known forces, those of zero among them
   * @param spreads known forces that are spread
   * @param couples known couples
   * @param openForces forces that are not known
   * @param openCouples couples that are not known
   * @param reactions whether forces at the cut are among these; without balance there are none
   * @param scale the largest force of the whole device in N, 0 or more
   */
  public FreeBody {
    bodies = List.copyOf(bodies);
    forces = List.copyOf(forces);
    spreads = List.copyOf(spreads);
    couples = List.copyOf(couples);
    openForces = List.copyOf(openForces);
    openCouples = List.copyOf(openCouples);
  }

  /**
   * The whole device, cut free from the ground.
   *
   * @param balance its balance
   * @return all its bodies and what acts on them from outside
   * @throws ModelException if the device has no bodies
   */
  public static FreeBody of(Balance balance) {
    return of(balance, names(balance.device()));
  }

  /**
   * One body or a group.
   *
   * @param balance the balance of the device
   * @param bodies names of members or joints, at least one
   * @return these bodies and what acts on them from outside
   * @throws ModelException if no body is named, or one that the device does not have
   */
  public static FreeBody of(Balance balance, List<String> bodies) {
    Device device = balance.device();
    List<String> all = names(device);
    List<String> wanted = List.copyOf(new LinkedHashSet<>(bodies));
    for (String body : wanted) {
      if (!all.contains(body)) {
        throw new ModelException(
            device.name(), "body", '"' + body + '"', "a member or joint: " + list(all));
      }
    }
    if (wanted.isEmpty()) {
      throw new ModelException(
          device.name(), "bodies", "none", "at least one member or joint: " + list(all));
    }
    return new FreeBodyReader(balance, wanted, wanted.size() == all.size()).read();
  }

  private static String list(List<String> names) {
    return names.isEmpty() ? "the device has none" : String.join(", ", names);
  }

  /** Names of the members and joints in order. */
  static List<String> names(Device device) {
    List<String> names = new ArrayList<>();
    device.members().forEach(member -> names.add(member.name()));
    device.joints().forEach(joint -> names.add(joint.name()));
    return names;
  }

  /**
   * Whether a force is zero but for rounding.
   *
   * @param force size in N
   * @return true if it is far below the largest force of the device
   */
  public boolean isZero(double force) {
    return Math.abs(force) <= ROUNDING * scale;
  }

  /**
   * Whether a couple is zero but for rounding.
   *
   * @param moment size in N·m
   * @return true if it is far below the largest force of the device times its size
   */
  public boolean isZeroCouple(double moment) {
    return Math.abs(moment) <= ROUNDING * scale * device.size();
  }

  /** Where loads act, by body; these places belong to the bodies. */
  Map<String, List<Point>> loadPlaces() {
    Map<String, List<Point>> loads = new HashMap<>();
    for (ActingForce force : forces) {
      if (force.origin() != Origin.CONNECTION) {
        loads.computeIfAbsent(force.on(), key -> new ArrayList<>()).add(force.at());
      }
    }
    for (OpenForce force : openForces) {
      if (force.origin() != Origin.CONNECTION) {
        loads.computeIfAbsent(force.on(), key -> new ArrayList<>()).add(force.at());
      }
    }
    return loads;
  }
}
