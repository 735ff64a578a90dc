package bellcrank.statics.harness;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Subject;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.Rules;
import bellcrank.statics.strength.Sizing;
import java.util.List;
import java.util.Optional;

/**
 * Assertions about a device. They are about its first case, as drawn, on ground that bears
 * everything, unless {@link #inCase}, {@link #inPose} or {@link #on} choose otherwise; what is
 * chosen counts for what follows.
 */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class DeviceAssert extends LimitedAssert<DeviceAssert, Device> {

  private Optional<Sizing> sizing = Optional.empty();
  private Optional<Rules> rules = Optional.empty();

  DeviceAssert(Device actual) {
    super(actual, DeviceAssert.class, Setup.of(actual));
  }

  /**
   * Chooses a case of loads.
   *
   * @param name name of the case
   * @return this assertion
   * @throws ModelException if there is no such case
   */
  public DeviceAssert inCase(String name) {
    return choose(setup().in(actual.loadCase(name)));
  }

  /**
   * Chooses a pose.
   *
   * @param pose where the bodies are; it must fit the connections
   * @return this assertion
   */
  public DeviceAssert inPose(Pose pose) {
    return choose(setup().in(pose));
  }

  /**
   * Chooses the ground under contact bases.
   *
   * @param foundations one at most for each base
   * @return this assertion
   */
  public DeviceAssert on(Foundation... foundations) {
    return choose(setup().on(List.of(foundations)));
  }

  /**
   * Chooses what the parts are made of, with the rules of its method. How far loads may grow, and
   * what gives first, is then a question of all checks of strength as well.
   *
   * @param chosen sections, materials and details
   * @return this assertion
   */
  public DeviceAssert sizedBy(Sizing chosen) {
    return sizedBy(chosen, Rules.of(chosen.method()));
  }

  /**
   * Chooses what the parts are made of.
   *
   * @param chosen sections, materials and details
   * @param checked rules of the method of the sizing
   * @return this assertion
   */
  public DeviceAssert sizedBy(Sizing chosen, Rules checked) {
    sizing = Optional.of(chosen);
    rules = Optional.of(checked);
    return this;
  }

  /**
   * Chooses what grows until something gives way first.
   *
   * @param loads names of given loads, at least one
   * @return this assertion
   */
  public DeviceAssert asLoadsGrow(String... loads) {
    return asItVaries(Variation.of(loads));
  }

  /**
   * {@inheritDoc} With a sizing, no check of strength may be reached below a multiple of loads
   * either; what could not be checked is left out.
   */
  @Override
  public DeviceAssert holdsUntilAtLeast(Variation variation, double value) {
    super.holdsUntilAtLeast(variation, value);
    return sizing.isPresent() && variation instanceof Variation.Multiple loads
        ? hold(capacity(loads).holdsUntilAtLeast(value))
        : this;
  }

  /**
   * Asserts that a part is among the first to give way, as what {@link #asLoadsGrow} or {@link
   * #asItVaries} chose grows. With a sizing it may do so by a check of strength.
   *
   * @param part name of the connection that slips, tips, lifts or goes slack; with a sizing also of
   *     a part that is checked
   * @return this assertion
   * @throws ModelException if there is no such part, or a sizing names what the device does not
   *     have
   */
  public DeviceAssert firstToGiveWayIs(String part) {
    return hold(
        sizing.isPresent()
            ? growingCapacity().firstToGiveWay(part)
            : new LimitClaims(setup(), growing()).firstToGiveWay(part));
  }

  /**
   * Asserts that a check of a part is among the first to be reached, as what {@link #asLoadsGrow}
   * chose grows.
   *
   * @param part name of the part
   * @param check name of the check, such as {@code working load limit}
   * @return this assertion
   * @throws ModelException if no sizing was chosen, there is no such part, or the sizing names what
   *     the device does not have
   */
  public DeviceAssert firstToGiveWayIs(String part, String check) {
    return hold(growingCapacity().firstToGiveWay(part, check));
  }

  /**
   * Goes on with the mechanical advantage over a travel.
   *
   * @param travel a travel of this device
   * @return an assertion about the advantage in every pose of it; it fails if the device cannot be
   *     driven
   * @throws ModelException if the travel is of another device
   */
  public CurveAssert advantageOver(Travel travel) {
    CourseAssert course = described(new CourseAssert(travel)).inUnits(setup().units());
    course.requireDevice(actual);
    return course.answers(Ask.of(new Subject.Advantage(), Measure.ACTUAL).text());
  }

  private CapacityClaims growingCapacity() {
    if (growing() instanceof Variation.Multiple loads) {
      return capacity(loads);
    }
    throw new ModelException(
        actual.name(), "variation", VariedWords.varies(growing()), "loads that grow");
  }

  private CapacityClaims capacity(Variation.Multiple loads) {
    Sizing chosen =
        sizing.orElseThrow(
            () ->
                new ModelException(
                    actual.name(), "sizing", "none", "sections and details, chosen by sizedBy"));
    return CapacityAssert.claims(
        Capacity.of(
            actual,
            setup().loadCase(),
            setup().pose(),
            chosen,
            rules.orElseGet(() -> Rules.of(chosen.method())),
            loads,
            setup().foundations()),
        setup().units());
  }
}
