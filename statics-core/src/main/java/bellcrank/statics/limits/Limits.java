package bellcrank.statics.limits;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.limits.internal.Travel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Decides a device under one case of loads: whether it holds with all its one-sided and rough
 * parts, between which values its forces lie, and how far loads or friction may change until it
 * gives way. Immutable.
 *
 * <p>A state is a set of forces that balances the loads and asks of no part more than it can give:
 * contacts and one-sided rollers only push, ropes only pull, friction stays within μN, the normal
 * force of a base within its width, the tensions round a post within e^(μβ), the couple of a dry
 * pin within its friction circle. In the plane this is exact: linear programs say it without
 * approximation, and dry pins, whose condition is not convex, are closed in from both sides.
 * Whether a state exists says that the device <em>can</em> rest. Where several exist, the answers
 * are ranges; which one it is in, statics does not know.
 *
 * <p>Programs are over all forces that statics leaves free, so it is meant for devices of up to
 * some hundred of these, and of up to some thousand unknown forces in all.
 */
public final class Limits {

  private final Device device;
  private final LoadCase loadCase;
  private final Pose pose;
  private final List<Foundation> foundations;
  private final FrictionLevel friction;
  private final Admissible admissible;
  private final GivingWays givingWays;

  private Limits(
      Device device,
      LoadCase loadCase,
      Pose pose,
      List<Foundation> foundations,
      FrictionLevel friction) {
    this.device = GroundCaps.withFrictionForces(device, foundations);
    this.loadCase = loadCase;
    this.pose = pose;
    this.foundations = List.copyOf(foundations);
    this.friction = friction;
    admissible = new Admissible(this.device, loadCase, pose, this.foundations);
    givingWays = new GivingWays(this.device, pose);
  }

  private Limits(Limits of, Pose pose) {
    device = of.device;
    loadCase = of.loadCase;
    this.pose = pose;
    foundations = of.foundations;
    friction = of.friction;
    admissible = of.admissible.at(pose, friction);
    givingWays = new GivingWays(device, pose);
  }

  /**
   * Limits of a device under its first case, as drawn.
   *
   * @param device the device
   * @return its limits
   */
  public static Limits of(Device device) {
    return of(device, device.cases().get(0), Pose.DRAWN, List.of());
  }

  /**
   * Limits of a device under a case, as drawn.
   *
   * @param device the device
   * @param loadCase name of the case
   * @return its limits
   * @throws ModelException if there is no such case
   */
  public static Limits of(Device device, String loadCase) {
    return of(device, device.loadCase(loadCase), Pose.DRAWN, List.of());
  }

  /**
   * Limits of a device under a case in a pose, on stated ground. The pose must fit the connections.
   *
   * @param device the device
   * @param loadCase factors on the loads
   * @param pose where the bodies are
   * @param foundations the ground under contact bases; a base without one does not sink
   * @return its limits
   * @throws ModelException if a foundation is of no contact base, or a base has two
   */
  public static Limits of(
      Device device, LoadCase loadCase, Pose pose, List<Foundation> foundations) {
    FoundationCheck.check(device, foundations);
    return new Limits(device, loadCase, pose, foundations, FrictionLevel.STATED);
  }

  /**
   * Whether a device has one-sided or rough parts at all. One without any is decided by its balance
   * alone.
   *
   * @param device the device
   * @return true if it has a contact, base, line, rope, one-sided roller or slot, dry pin, or a
   *     screw with a couple on it
   */
  public static boolean concern(Device device) {
    return device.connections().stream()
        .anyMatch(
            one ->
                !LeastForces.columns(one, 0).isEmpty()
                    || (one instanceof Pin pin && pin.friction() > 0)
                    || (one instanceof Screw && isTurned(device, one.name())));
  }

  private static boolean isTurned(Device device, String screw) {
    return device.loads().stream()
        .anyMatch(
            load ->
                (load instanceof Couple couple && couple.member().equals(screw))
                    || (load instanceof Sought sought && sought.body().equals(screw)));
  }

  /**
   * The same with kinetic coefficients of friction in place of static ones: greatest and least then
   * are the loads at which it just keeps moving.
   *
   * @return the limits once the parts slide
   */
  public Limits moving() {
    return new Limits(device, loadCase, pose, foundations, new FrictionLevel(1, true));
  }

  /**
   * The same in another pose. What does not depend on the pose is kept, so this is quicker than new
   * limits. For one number in many poses {@link #sweep} is quicker still.
   *
   * @param other where the bodies are; it must fit the connections
   * @return the limits there
   */
  public Limits at(Pose other) {
    return new Limits(this, other);
  }

  /**
   * The same with all coefficients of friction multiplied.
   *
   * @param factor 0 or more
   * @return the limits with so much friction
   * @throws ModelException if the factor is negative or not finite
   */
  public Limits withFriction(double factor) {
    if (!(factor >= 0 && factor <= Double.MAX_VALUE)) {
      throw new ModelException(device.name(), "factor on friction", factor, "0 or more");
    }
    return new Limits(device, loadCase, pose, foundations, friction.times(factor));
  }

  /**
   * The case.
   *
   * @return factors on the loads
   */
  public LoadCase loadCase() {
    return loadCase;
  }

  /**
   * The ground under contact bases.
   *
   * @return as stated
   */
  public List<Foundation> foundations() {
    return foundations;
  }

  /**
   * The device. Where the ground holds a smooth base back, that base has a friction force.
   *
   * @return the device
   */
  public Device device() {
    return device;
  }

  /**
   * Whether it stands.
   *
   * @return the verdict
   */
  public Verdict verdict() {
    return new Judgement(this, admissible, givingWays, friction).verdict();
  }

  /**
   * What each one-sided or rough part does.
   *
   * @return in the order of the model; empty if the device does not hold
   */
  public List<PartState> states() {
    return new PartStates(device, admissible, friction).all();
  }

  /**
   * Between which values an answer lies in all states.
   *
   * @param ask what is asked
   * @return empty if the device does not hold, or the ask has no number here; {@link #answer} says
   *     why
   * @throws ModelException if the ask names what the device does not have
   */
  public Optional<Range> range(Ask ask) {
    return ranged(ask.check(device)).range();
  }

  /**
   * Between which values an answer lies in all states.
   *
   * @param ask text of the ask, such as {@code heel.normal}
   * @return empty if there is no range
   * @throws ModelException if the text is no ask or names what the device does not have
   */
  public Optional<Range> range(String ask) {
    return range(Ask.parse(ask));
  }

  /**
   * The balance under the case, in which all one-sided and rough parts count as holding. It is made
   * when it is asked for, since a limit alone does not need it.
   *
   * @return the balance
   */
  public Balance balance() {
    return Balance.of(device, loadCase, pose);
  }

  AskRange.Outcome ranged(Ask ask) {
    Travel given = admissible.given();
    Extreme any = admissible.greatest(given, friction, Goal.none(admissible.columns())).extreme();
    if (!any.isFound()) {
      return AskRange.Outcome.of(
          any.kind() == Extreme.Kind.OPEN
              ? new Answer.Unanswered(Answer.Reason.NOT_DECIDED, Admissible.OPEN)
              : new Answer.Unanswered(
                  Answer.Reason.NO_BALANCE,
                  "the device does not hold, so it has no state of rest"));
    }
    Balance balance = balance();
    LinearAsks linear = new LinearAsks(balance, admissible.assembly(), admissible.scale());
    AskRange finder =
        new AskRange(balance, linear, goal -> admissible.greatest(given, friction, goal).extreme());
    return finder.of(ask);
  }

  /**
   * How the device gives way where a sought effort is greatest or least.
   *
   * @param sought name of a sought force, couple, mass or intensity
   * @param greatest whether at its greatest value
   * @return empty if there is no such end
   * @throws ModelException if nothing of that name is sought, or both components are
   */
  public Optional<GivingWay> givingWay(String sought, boolean greatest) {
    Goal goal = effort(sought, greatest);
    Admissible.Found found = admissible.greatest(admissible.given(), friction, goal);
    return found.extreme().isFound() ? Optional.of(givingWays.at(found, goal)) : Optional.empty();
  }

  /**
   * A state in which a sought effort is greatest or least, with its forces.
   *
   * @param sought name of a sought force, couple, mass or intensity
   * @param greatest whether at its greatest value
   * @return empty if there is no such end
   * @throws ModelException if nothing of that name is sought, or both components are
   */
  public Optional<LimitState> stateAt(String sought, boolean greatest) {
    Goal goal = effort(sought, greatest);
    Admissible.Found found = admissible.greatest(admissible.given(), friction, goal);
    if (!found.extreme().isFound()) {
      return Optional.empty();
    }
    List<Double> forces = LeastForces.values(found.extreme().forces(), admissible.assembly());
    return Optional.of(
        new LimitState(
            balance().withForces(forces), givingWays.at(found, goal), friction.factor()));
  }

  private Goal effort(String sought, boolean greatest) {
    if (!(device.load(sought).orElse(null) instanceof Sought effort)
        || effort.want() == Sought.Want.COMPONENTS) {
      throw new ModelException(
          sought, "sought quantity", sought, "a sought force, couple, mass or intensity");
    }
    int column = admissible.assembly().soughtColumn(sought);
    return Goal.force(column, greatest ? 1 : -1, admissible.columns()).driven();
  }

  /**
   * How far a variation can go.
   *
   * @param variation what is varied
   * @return from where to where the device can hold
   * @throws ModelException if the variation names what the device does not have, or does not fit it
   */
  public Limit limit(Variation variation) {
    return new LimitSearch(device, loadCase, pose, admissible, givingWays, friction)
        .limit(variation);
  }

  /**
   * The greatest value of a variation alone, without how the device gives way there. This is the
   * quickest question; where all conditions are linear, what does not depend on the loads is kept
   * for the next one.
   *
   * @param variation what is varied
   * @return a multiple, or a distance in m; infinite if it holds however large; empty if it holds
   *     at no value, or that was not decided
   * @throws ModelException if the variation names what the device does not have, or does not fit it
   */
  public OptionalDouble greatest(Variation variation) {
    return new LimitSearch(device, loadCase, pose, admissible, givingWays, friction)
        .greatest(variation);
  }

  /**
   * The same greatest value in one pose after the other, in storage that is used again. It begins
   * in the pose of these limits.
   *
   * @param variation what is varied
   * @return the sweep
   * @throws ModelException if the variation names what the device does not have, or does not fit it
   */
  public LimitSweep sweep(Variation variation) {
    return new LimitSweep(this, variation, pose, admissible, friction);
  }

  /**
   * The one common factor on all coefficients of friction at which the device just holds.
   *
   * @return the factor, or that none is needed or enough
   */
  public FrictionFactor frictionFactor() {
    return new FrictionSearch(device, admissible, givingWays, friction).find();
  }

  /**
   * The state with the least sum of pushes and tensions: one without needless squeeze. This is an
   * assumption on how the device was put together, not something that statics knows.
   *
   * @return the balance with these forces; empty if the device does not hold
   */
  public Optional<Balance> withLeastForces() {
    Goal goal = LeastForces.goal(device, admissible);
    Extreme extreme = admissible.greatest(admissible.given(), friction, goal).extreme();
    return extreme.isFound()
        ? Optional.of(
            balance().withForces(LeastForces.values(extreme.forces(), admissible.assembly())))
        : Optional.empty();
  }

  /**
   * How much of the work that goes in between the device's stated effort and resistance comes out,
   * with friction at its limit against the motion, each way.
   *
   * @return empty if no effort and resistance are stated
   */
  public Optional<Efficiency> efficiency() {
    return device.advantage().map(pair -> new EfficiencyFinder(this, balance(), pair).find());
  }

  /**
   * Whether only limits tell the answer to an ask, so that a balance alone refuses it.
   *
   * @param ask what is asked
   * @return true for ends of ranges, the verdict, the common factor on friction, and efficiencies
   */
  public static boolean decide(Ask ask) {
    return switch (ask.measure()) {
      case VERDICT, FRICTION_FACTOR, EFFICIENCY, RETURN_EFFICIENCY -> true;
      default -> ask.subject() instanceof Subject.Extreme;
    };
  }

  /**
   * Answers an ask of a device: by limits where they decide it or some part is one-sided, rough or
   * a screw that is turned, else by the balance alone.
   *
   * @param device the device
   * @param loadCase its loads
   * @param pose where its bodies are
   * @param foundations the ground under contact bases
   * @param ask what is asked; a case that it names is not looked at
   * @return the answer, or why there is none
   * @throws bellcrank.statics.device.ModelException if the ask or a foundation names what the
   *     device does not have
   */
  public static Answer answer(
      Device device, LoadCase loadCase, Pose pose, List<Foundation> foundations, Ask ask) {
    return decide(ask) || concern(device)
        ? of(device, loadCase, pose, foundations).answer(ask)
        : Balance.of(device, loadCase, pose).answer(ask);
  }

  /**
   * The answer to an ask: those for limits from here, all others from the balance. An {@code in
   * case} of the ask is not regarded: these limits are of one case.
   *
   * @param ask what is asked
   * @return the answer, or why there is none
   * @throws ModelException if the ask names what the device does not have
   */
  public Answer answer(Ask ask) {
    return new LimitAnswers(this, balance()).answer(ask.check(device));
  }

  /**
   * The answer to an ask.
   *
   * @param ask text of the ask, such as {@code greatest push}
   * @return the answer, or why there is none
   * @throws ModelException if the text is no ask or names what the device does not have
   */
  public Answer answer(String ask) {
    return answer(Ask.parse(ask));
  }
}
