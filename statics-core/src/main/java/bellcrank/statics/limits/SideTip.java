package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a device tips or slides sideways, out of its plane, and how far it is from doing so. The
 * {@link SideView} becomes an ordinary device that {@link Limits} decides: the base tips where the
 * force of the ground would have to act beyond its edge, that is, where the moments about that edge
 * turn over (textbook statics: tipping about an edge and sliding, whichever comes first).
 *
 * <p>Sideways effects are everything that does not act plumb in the plane of the device: level
 * forces, moments of offsets, and what lean and slope add.
 *
 * <p>The result is an estimate for rigid parts and static loads. Swinging, gusts, soft ground, bent
 * parts and feet that are not where they were drawn are unknown to it.
 */
public final class SideTip {

  private final SideView view;
  private final SideDevice.Built built;
  private final Limits limits;

  private SideTip(SideView view) {
    this.view = view;
    built = SideDevice.of(view);
    limits = Limits.of(built.device());
  }

  /**
   * Side tip of a side view.
   *
   * @param view the side view
   * @return how it stands sideways
   * @throws ModelException if a stay's two ends come to the same place
   */
  public static SideTip of(SideView view) {
    return new SideTip(view);
  }

  /**
   * The side view.
   *
   * @return the side view
   */
  public SideView view() {
    return view;
  }

  /**
   * The side view as a device.
   *
   * @return what is decided
   */
  public Device device() {
    return built.device();
  }

  /**
   * Limits of the side view as a device: for states and ranges, such as the pull of a stay.
   *
   * @return its limits
   */
  public Limits limits() {
    return limits;
  }

  /**
   * Whether it stands.
   *
   * @return the verdict; where it does not hold, the sideways effects grew from nothing until it
   *     gave way, if it held without them
   */
  public Verdict verdict() {
    return limits.verdict();
  }

  /**
   * The multiples of all sideways effects together at which it stands; what presses in the plane of
   * the device stays as it is.
   *
   * @return from where to where; 1 is as stated
   */
  public Limit margin() {
    if (!built.effects().isEmpty()) {
      return limits.limit(new Variation.Multiple(built.effects()));
    }
    Variation none = new Variation.Multiple(List.of());
    return SideSearch.stands(built.device())
        ? new Limit.Between(none, new Limit.End.Unlimited(), new Limit.End.Unlimited())
        : new Limit.Never(none);
  }

  /**
   * The multiples of one load's level force sideways at which it stands; all else stays as it is.
   *
   * @param load name of a load with a level force
   * @return from where to where; 1 is as stated
   * @throws ModelException if there is no such load or it has no level force
   */
  public Limit margin(String load) {
    force(load);
    return limits.limit(Variation.of(load));
  }

  /**
   * The level force of one load at which it gives way, in the sense of the stated one.
   *
   * @param load name of a load with a level force
   * @return in N, positive to the right; empty if it may grow without limit or stands at no value
   * @throws ModelException if there is no such load or it has no level force
   */
  public OptionalDouble greatestForce(String load) {
    double stated = force(load);
    return margin(load) instanceof Limit.Between between
            && between.greatest() instanceof Limit.End.At at
        ? OptionalDouble.of(at.value() * stated)
        : OptionalDouble.empty();
  }

  private double force(String load) {
    for (SideLoad one : view.loads()) {
      if (one.name().equals(load) && one.side() != 0) {
        return one.side();
      }
    }
    throw new ModelException(
        view.base(), "sideways force", '"' + load + '"', "the name of a load with a level force");
  }

  /**
   * How it gives way as all sideways effects grow together, or as it is if it does not stand
   * without them.
   *
   * @return empty if they may grow without limit
   */
  public Optional<GivingWay> givingWay() {
    Limit margin = margin();
    if (margin instanceof Limit.Between between
        && between.greatest() instanceof Limit.End.At at
        && at.value() >= 0) {
      return Optional.of(at.how());
    }
    Verdict verdict = verdict();
    if (verdict instanceof Verdict.DoesNotHold not) {
      return Optional.of(not.how());
    }
    return verdict instanceof Verdict.Impending impending
        ? Optional.of(impending.how())
        : Optional.empty();
  }

  /**
   * The edge about which it tips as all sideways effects grow together.
   *
   * @return empty if it slides first or nothing gives way
   */
  public Optional<SideEdge> tippingEdge() {
    for (Event event : baseEvents()) {
      if (event.kind() == Event.Kind.TIPS) {
        return Optional.of(
            event.words().contains(SideEdge.LEFT.word()) ? SideEdge.LEFT : SideEdge.RIGHT);
      }
    }
    return Optional.empty();
  }

  /**
   * Whether it slides before it tips as all sideways effects grow together.
   *
   * @return true if the base slides and does not tip
   */
  public boolean slidesFirst() {
    List<Event> events = baseEvents();
    return events.stream().anyMatch(event -> event.kind() == Event.Kind.SLIDES)
        && events.stream().noneMatch(event -> event.kind() == Event.Kind.TIPS);
  }

  private List<Event> baseEvents() {
    return givingWay()
        .map(how -> how.events().stream().filter(e -> e.part().equals(view.base())).toList())
        .orElse(List.of());
  }

  /**
   * How far the device may lean to one side on its flat base, in place of the stated lean.
   *
   * @param towards the side
   * @return the least angle from upright at which it gives way
   */
  public SideReach greatestLean(SideEdge towards) {
    return reach(SideSearch.angle(angle -> view.withLean(towards.sign() * angle)), true, towards);
  }

  /**
   * How far the ground may fall to one side, the device being square to it, in place of the stated
   * slope.
   *
   * @param towards the side
   * @return the least angle from level at which it gives way
   */
  public SideReach greatestSlope(SideEdge towards) {
    return reach(SideSearch.angle(angle -> view.withSlope(towards.sign() * angle)), false, towards);
  }

  private SideReach reach(OptionalDouble angle, boolean lean, SideEdge towards) {
    if (angle.isEmpty()) {
      return new SideReach.Unlimited();
    }
    double size = angle.getAsDouble();
    if (size == 0) {
      return new SideReach.Never();
    }
    double signed = towards.sign() * size;
    SideTip there = of(lean ? view.withLean(signed) : view.withSlope(signed));
    return new SideReach.At(
        size, there.givingWay().orElseGet(() -> new GivingWay(List.of(), Optional.empty(), 0)));
  }

  /**
   * The least breadth of the base at which it stands, its middle staying where it is.
   *
   * @param factor multiple of all sideways effects that it has to stand, 0 or more; 1 for those
   *     stated
   * @return in m, to a share of 1e-9 of the size of the side view; 0 if it needs none; empty if no
   *     breadth would do, since it slides or is lifted
   * @throws ModelException if the factor is negative or not finite
   */
  public OptionalDouble breadthNeeded(double factor) {
    return SideSearch.breadth(view, SideCheck.notNegative(view.base(), "factor", factor));
  }
}
