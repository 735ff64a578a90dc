package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Balance;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * A device seen along its own plane: the second plane, square to the first and to the ground,
 * through the middle of a base. {@link SideTip} tells whether the device tips or slides sideways in
 * it. Immutable.
 *
 * <p><b>What it is.</b> The whole device is one rigid body that stands on this one base and is held
 * by the stated stays. One who looks along the drawing's x axis, to its right, sees the plane of
 * the device as an upright line; offsets from it are positive to his right, which is out of the
 * drawing, towards one who stands before it. Heights are measured square to the base, from it.
 *
 * <p><b>What is not counted.</b> Other supports act with the force that they have in the plane of
 * the device and no other: what they could hold sideways, or by their own breadth, is left out. A
 * support that holds sideways is stated as a stay. Where two feet of the same breadth stand in
 * line, {@link #without} takes the force of the second away, so that this base stands for both.
 * Twisting about an upright axis is not asked.
 *
 * <p><b>Lean and slope.</b> A lean tilts the device alone about the line where its plane meets the
 * ground; the base still lies flat. A slope tilts the ground, and the device with its stays and
 * supports on it, while loads stay plumb. Forces of supports are then taken times the cosine of the
 * slope, which is exact where all loads in the plane of the device are plumb.
 *
 * <p>The result is an estimate for rigid parts and static loads; swinging, gusts, soft ground and
 * bending are unknown to it.
 */
public final class SideView {

  private final String base;
  private final double breadth;
  private final double baseOffset;
  private final double friction;
  private final double lean;
  private final double slope;
  private final List<SideLoad> loads;
  private final List<SideSupport> supports;
  private final List<SideLink> links;
  private final List<SideStay> stays;

  private SideView(Draft draft) {
    base = SideCheck.name(draft.base);
    breadth = SideCheck.positive(base, "breadth", draft.breadth);
    baseOffset = SideCheck.finite(base, "offset", draft.baseOffset);
    friction = SideCheck.notNegative(base, "friction", draft.friction);
    lean = SideCheck.tilt(base, "lean", draft.lean);
    slope = SideCheck.tilt(base, "slope", draft.slope);
    loads = List.copyOf(draft.loads);
    supports = List.copyOf(draft.supports);
    links = List.copyOf(draft.links);
    stays = List.copyOf(draft.stays);
    Set<String> seen = new HashSet<>(Set.of(base));
    List<String> names = new ArrayList<>(forces());
    stays.forEach(stay -> names.add(stay.name()));
    for (String name : names) {
      if (!seen.add(name)) {
        throw new ModelException(
            name, "name", '"' + name + '"', "a name for one part of the side view only");
      }
    }
  }

  /** What a changed copy is made of. */
  private static final class Draft {
    private String base = "base";
    private double breadth;
    private double baseOffset;
    private double friction;
    private double lean;
    private double slope;
    private List<SideLoad> loads = List.of();
    private List<SideSupport> supports = List.of();
    private List<SideLink> links = List.of();
    private List<SideStay> stays = List.of();
  }

  private Draft draft() {
    Draft draft = new Draft();
    draft.base = base;
    draft.breadth = breadth;
    draft.baseOffset = baseOffset;
    draft.friction = friction;
    draft.lean = lean;
    draft.slope = slope;
    draft.loads = loads;
    draft.supports = supports;
    draft.links = links;
    draft.stays = stays;
    return draft;
  }

  /**
   * A side view without loads.
   *
   * @param base name of the base
   * @param breadth breadth of the base sideways in m, above 0, half to each side of its middle
   * @param friction coefficient of friction sideways, 0 or more
   * @return the side view
   * @throws ModelException if a field is not acceptable
   */
  public static SideView of(String base, double breadth, double friction) {
    Draft draft = new Draft();
    draft.base = base;
    draft.breadth = breadth;
    draft.friction = friction;
    return new SideView(draft);
  }

  /**
   * The side view of a device in balance. All its loads, weights and sought forces act at their
   * heights in the plane of the device; other supports on the ground act with the forces they have
   * there. Down is against the push of the base, which is plumb where the base lies level. The
   * friction left for sideways is what the base's own leaves beside the force F that it carries
   * along the plane already: μ′ = √(μ² − (F/N)²).
   *
   * @param balance balance of the device
   * @param base name of a contact base on the ground
   * @param breadth breadth of the base sideways in m, above 0
   * @return the side view, upright on level ground, all in the plane
   * @throws ModelException if there is no such base, or the balance does not fix the force of the
   *     base, another support or a sought quantity; where statics leaves several possible, {@link
   *     Limits#withLeastForces} or {@link Balance#withForces} fixes them
   */
  public static SideView from(Balance balance, String base, double breadth) {
    return new SideReading(balance, base).read(breadth);
  }

  /**
   * Name of the base.
   *
   * @return the name
   */
  public String base() {
    return base;
  }

  /**
   * Breadth of the base.
   *
   * @return in m, above 0
   */
  public double breadth() {
    return breadth;
  }

  /**
   * Offset of the middle of the base from the plane of the device.
   *
   * @return in m, positive to the right
   */
  public double baseOffset() {
    return baseOffset;
  }

  /**
   * Coefficient of friction sideways.
   *
   * @return 0 or more
   */
  public double friction() {
    return friction;
  }

  /**
   * Angle between the plane of the device and the square to the base.
   *
   * @return in rad, positive to the right
   */
  public double lean() {
    return lean;
  }

  /**
   * Slope of the ground sideways.
   *
   * @return in rad, positive if it falls to the right
   */
  public double slope() {
    return slope;
  }

  /**
   * The loads.
   *
   * @return in order
   */
  public List<SideLoad> loads() {
    return loads;
  }

  /**
   * The known forces of other supports.
   *
   * @return in order
   */
  public List<SideSupport> supports() {
    return supports;
  }

  /**
   * The ropes, struts and springs of known force that go to the ground.
   *
   * @return in order
   */
  public List<SideLink> links() {
    return links;
  }

  /**
   * The stays.
   *
   * @return in order
   */
  public List<SideStay> stays() {
    return stays;
  }

  private List<String> forces() {
    List<String> names = new ArrayList<>();
    loads.forEach(one -> names.add(one.name()));
    supports.forEach(one -> names.add(one.name()));
    links.forEach(one -> names.add(one.name()));
    return names;
  }

  /**
   * The same on a base of another breadth.
   *
   * @param other breadth in m, above 0
   * @return a copy
   * @throws ModelException if it is not above 0
   */
  public SideView withBreadth(double other) {
    Draft draft = draft();
    draft.breadth = other;
    return new SideView(draft);
  }

  /**
   * The same with the middle of the base elsewhere.
   *
   * @param other offset from the plane of the device in m, positive to the right
   * @return a copy
   * @throws ModelException if it is not finite
   */
  public SideView withBaseOffset(double other) {
    Draft draft = draft();
    draft.baseOffset = other;
    return new SideView(draft);
  }

  /**
   * The same with other friction sideways.
   *
   * @param other coefficient, 0 or more
   * @return a copy
   * @throws ModelException if it is negative or not finite
   */
  public SideView withFriction(double other) {
    Draft draft = draft();
    draft.friction = other;
    return new SideView(draft);
  }

  /**
   * The same at another lean.
   *
   * @param angle in rad, positive to the right, between −π/2 and π/2 without the ends
   * @return a copy
   * @throws ModelException if the angle is out of range
   */
  public SideView withLean(double angle) {
    Draft draft = draft();
    draft.lean = angle;
    return new SideView(draft);
  }

  /**
   * The same on another slope.
   *
   * @param angle in rad, positive if the ground falls to the right, between −π/2 and π/2 without
   *     the ends
   * @return a copy
   * @throws ModelException if the angle is out of range
   */
  public SideView withSlope(double angle) {
    Draft draft = draft();
    draft.slope = angle;
    return new SideView(draft);
  }

  /**
   * The same with one load more.
   *
   * @param load the load
   * @return a copy
   * @throws ModelException if its name is used already
   */
  public SideView withLoad(SideLoad load) {
    Draft draft = draft();
    draft.loads = added(loads, load);
    return new SideView(draft);
  }

  /**
   * The same with one more weight or other force down.
   *
   * @param name its name
   * @param height of its place above the base in m
   * @param offset of its place from the plane of the device in m, positive to the right
   * @param force in N, positive down
   * @return a copy
   * @throws ModelException if a field is not acceptable or the name is used already
   */
  public SideView withDown(String name, double height, double offset, double force) {
    return withLoad(new SideLoad(name, height, offset, force, 0));
  }

  /**
   * The same with one more level pull sideways.
   *
   * @param name its name
   * @param height of its place above the base in m
   * @param force in N, positive to the right
   * @return a copy
   * @throws ModelException if a field is not acceptable or the name is used already
   */
  public SideView withSidePull(String name, double height, double force) {
    return withLoad(new SideLoad(name, height, 0, 0, force));
  }

  /**
   * The same with one more known force of a support.
   *
   * @param support the support
   * @return a copy
   * @throws ModelException if its name is used already
   */
  public SideView withSupport(SideSupport support) {
    Draft draft = draft();
    draft.supports = added(supports, support);
    return new SideView(draft);
  }

  /**
   * The same with one more rope, strut or spring of known force.
   *
   * @param link the link
   * @return a copy
   * @throws ModelException if its name is used already
   */
  public SideView withLink(SideLink link) {
    Draft draft = draft();
    draft.links = added(links, link);
    return new SideView(draft);
  }

  /**
   * The same with one stay more.
   *
   * @param stay the stay
   * @return a copy
   * @throws ModelException if its name is used already
   */
  public SideView withStay(SideStay stay) {
    Draft draft = draft();
    draft.stays = added(stays, stay);
    return new SideView(draft);
  }

  /**
   * The same with a load or support elsewhere; of a link its anchor.
   *
   * @param name name of a load, support or link
   * @param offset from the plane of the device in m, positive to the right
   * @return a copy
   * @throws ModelException if there is no such force or the offset is not finite
   */
  public SideView withOffset(String name, double offset) {
    checkForce(name);
    Draft draft = draft();
    draft.loads = changed(loads, one -> one.name().equals(name) ? one.at(offset) : one);
    draft.supports = changed(supports, one -> one.name().equals(name) ? one.at(offset) : one);
    draft.links = changed(links, one -> one.name().equals(name) ? one.at(offset) : one);
    return new SideView(draft);
  }

  /**
   * The same without a load, support or link.
   *
   * @param name its name
   * @return a copy
   * @throws ModelException if there is no such force
   */
  public SideView without(String name) {
    checkForce(name);
    Draft draft = draft();
    draft.loads = loads.stream().filter(one -> !one.name().equals(name)).toList();
    draft.supports = supports.stream().filter(one -> !one.name().equals(name)).toList();
    draft.links = links.stream().filter(one -> !one.name().equals(name)).toList();
    return new SideView(draft);
  }

  /**
   * The same without stays.
   *
   * @return a copy
   */
  public SideView withoutStays() {
    Draft draft = draft();
    draft.stays = List.of();
    return new SideView(draft);
  }

  private void checkForce(String name) {
    if (!forces().contains(name)) {
      throw new ModelException(
          base, "load", '"' + name + '"', "one of " + String.join(", ", forces()));
    }
  }

  private static <T> List<T> added(List<T> parts, T part) {
    List<T> more = new ArrayList<>(parts);
    more.add(part);
    return more;
  }

  private static <T> List<T> changed(List<T> parts, UnaryOperator<T> change) {
    return parts.stream().map(change).toList();
  }

  /**
   * The side view as a device of one member on one contact base: x is the offset, y the height.
   * What presses in the plane of the device is one weight there; what acts sideways are forces and
   * couples beside it; stays are lines.
   *
   * @return the device
   * @throws ModelException if a stay's two ends come to the same place
   */
  public Device device() {
    return SideDevice.of(this).device();
  }

  private List<Object> parts() {
    return List.of(base, breadth, baseOffset, friction, lean, slope, loads, supports, links, stays);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SideView view && parts().equals(view.parts());
  }

  @Override
  public int hashCode() {
    return Objects.hash(parts());
  }

  @Override
  public String toString() {
    return "SideView " + parts();
  }
}
