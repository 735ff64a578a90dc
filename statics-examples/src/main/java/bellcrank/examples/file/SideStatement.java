package bellcrank.examples.file;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.SideLoad;
import bellcrank.statics.limits.SideStay;
import bellcrank.statics.limits.SideView;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a file says of the device as seen along its plane. With the balance of a case it becomes a
 * {@link SideView}, in which right is out of the drawing.
 *
 * @param base name of the contact base on the ground on which the device stands
 * @param breadth breadth of that base sideways in m, above 0
 * @param friction coefficient of friction sideways, 0 or more; empty for what the base's own leaves
 *     beside the force along the plane
 * @param baseOffset offset of the middle of the base from the plane in m, positive to the right
 * @param lean angle of the device from upright in rad, positive to the right, below π/2
 * @param slope angle of the ground from level in rad, positive if it falls to the right, below π/2
 * @param offsets offset from the plane in m, positive to the right, by the name of a load, a weight
 *     or a support on the ground
 * @param loads further loads, with heights, offsets and forces sideways
 * @param stays ropes that hold the device sideways
 * @param leaveOut names of loads, weights and supports on the ground that do not count
 */
public record SideStatement(
    String base,
    double breadth,
    OptionalDouble friction,
    double baseOffset,
    double lean,
    double slope,
    Map<String, Double> offsets,
    List<SideLoad> loads,
    List<SideStay> stays,
    List<String> leaveOut) {

  /** By this name its problems call it. */
  static final String PART = "side view";

  /**
   * Copies lists and map and checks the fields; the device is not looked at.
   *
   * @param base name of the contact base on the ground on which the device stands
   * @param breadth breadth of that base sideways in m, above 0
   * @param friction coefficient of friction sideways, 0 or more; empty for what the base's own
   *     leaves beside the force along the plane
   * @param baseOffset offset of the middle of the base from the plane in m, positive to the right
   * @param lean angle of the device from upright in rad, positive to the right, below π/2
   * @param slope angle of the ground from level in rad, positive if it falls to the right, below
   *     π/2
   * @param offsets offset from the plane in m, positive to the right, by the name of a load, a
   *     weight or a support on the ground
   * @param loads further loads, with heights, offsets and forces sideways
   * @param stays ropes that hold the device sideways
   * @param leaveOut names of loads, weights and supports on the ground that do not count
   * @throws ModelException if a number is out of its range, a name is used twice, or what is left
   *     out has an offset
   */
  public SideStatement {
    loads = List.copyOf(loads);
    stays = List.copyOf(stays);
    leaveOut = List.copyOf(leaveOut);
    SideView view = SideView.of(base, breadth, friction.orElse(0)).withBaseOffset(baseOffset);
    view = with(view, lean, slope, loads, stays);
    baseOffset = view.baseOffset();
    lean = view.lean();
    slope = view.slope();
    friction = friction.isPresent() ? OptionalDouble.of(view.friction()) : friction;
    offsets = checked(offsets);
    Set<String> left = new HashSet<>();
    for (String name : leaveOut) {
      if (!left.add(name) || offsets.containsKey(name)) {
        throw new ModelException(
            PART,
            "leave out",
            '"' + name + '"',
            offsets.containsKey(name) ? "a name that has no offset" : "each name once");
      }
    }
  }

  private static Map<String, Double> checked(Map<String, Double> offsets) {
    Map<String, Double> checked = new LinkedHashMap<>();
    // a load at the offset knows the rules for both
    offsets.forEach(
        (name, offset) -> checked.put(name, new SideLoad(name, 0, offset, 0, 0).offset()));
    return Collections.unmodifiableMap(checked);
  }

  private static SideView with(
      SideView view, double lean, double slope, List<SideLoad> loads, List<SideStay> stays) {
    SideView changed = view.withLean(lean).withSlope(slope);
    for (SideLoad load : loads) {
      changed = changed.withLoad(load);
    }
    for (SideStay stay : stays) {
      changed = changed.withStay(stay);
    }
    return changed;
  }

  /**
   * The side view with the forces of a balance.
   *
   * @param balance balance of the device
   * @return the side view
   * @throws ModelException if the balance does not fix the force of the base, of another support on
   *     the ground or of a sought quantity
   */
  public SideView view(Balance balance) {
    SideView view = SideView.from(balance, base, breadth).withBaseOffset(baseOffset);
    if (friction.isPresent()) {
      view = view.withFriction(friction.getAsDouble());
    }
    // a spread load that a case takes away has no place that could be elsewhere
    Set<String> present = names(view);
    for (Map.Entry<String, Double> offset : offsets.entrySet()) {
      if (present.contains(offset.getKey())) {
        view = view.withOffset(offset.getKey(), offset.getValue());
      }
    }
    for (String name : leaveOut) {
      view = present.contains(name) ? view.without(name) : view;
    }
    return with(view, lean, slope, loads, stays);
  }

  private static Set<String> names(SideView view) {
    Set<String> names = new HashSet<>();
    view.loads().forEach(one -> names.add(one.name()));
    view.supports().forEach(one -> names.add(one.name()));
    view.links().forEach(one -> names.add(one.name()));
    return names;
  }

  /** What is wrong with it for a device; the value of each problem is a quoted name. */
  List<Problem> problems(Device device) {
    List<Problem> problems = new ArrayList<>();
    Connection standing = device.connection(base).orElse(null);
    if (!(standing instanceof ContactBase) || !standing.bodies().contains(Ground.NAME)) {
      problems.add(problem("base", base, "the name of a contact base on the ground"));
      return problems;
    }
    List<String> forces = SideForces.of(device, base);
    String known =
        forces.isEmpty()
            ? "the name of a load or of a support on the ground (there is none)"
            : "the name of a load or of a support on the ground: " + Problems.listed(forces);
    for (String name : offsets.keySet()) {
      if (!forces.contains(name)) {
        problems.add(problem("offsets", name, known));
      }
    }
    for (String name : leaveOut) {
      if (!forces.contains(name)) {
        problems.add(problem("leave out", name, known));
      }
    }
    String own = "a name that no load and no support on the ground has";
    for (SideLoad load : loads) {
      if (forces.contains(load.name())) {
        problems.add(problem("loads", load.name(), own));
      }
    }
    for (SideStay stay : stays) {
      if (forces.contains(stay.name())) {
        problems.add(problem("stays", stay.name(), own));
      }
    }
    return problems;
  }

  private static Problem problem(String field, String name, String wanted) {
    return new Problem(PART, field, '"' + name + '"', wanted);
  }

  /** Checks that it fits a device. */
  void check(Device device) {
    List<Problem> problems = problems(device);
    if (!problems.isEmpty()) {
      throw new ModelException(problems);
    }
  }
}
