package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.MemberCut;
import bellcrank.statics.equilibrium.internal.MotionFinder;
import bellcrank.statics.equilibrium.internal.Solved;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The equilibrium of a device under one case of loads: outcome, forces, freedoms, undetermined
 * forces and broken conditions. Immutable.
 *
 * <p>One-sided parts (lines, one-sided rollers, contacts) are taken as holding; where the balance
 * needs from one of them what it cannot give, it is among the {@link #violations()}.
 *
 * <p>Signs are shown in figures on <a
 * href="{@docRoot}/bellcrank.statics/bellcrank/statics/device/doc-files/signs.html">the page of
 * signs</a>.
 */
public final class Balance {

  /** Relative error of a number times condition above which a shape is called near-critical. */
  private static final double NEAR_CRITICAL = 1e-9;

  private final Device device;
  private final LoadCase loadCase;
  private final Pose pose;
  private final Solved solved;
  private final List<String> undecided;
  private final List<Violation> violations;

  private Balance(Balance of, Solved solved) {
    device = of.device;
    loadCase = of.loadCase;
    pose = of.pose;
    this.solved = solved;
    undecided = List.of();
    violations = new Conditions(device, solved).violations();
  }

  private Balance(Device device, LoadCase loadCase, Pose pose) {
    this.device = device;
    this.loadCase = loadCase;
    this.pose = pose;
    solved = Solved.of(device, loadCase, pose);
    undecided = undecided(device);
    violations =
        solved.balanced() && undecided.isEmpty()
            ? new Conditions(device, solved).violations()
            : List.of();
  }

  /**
   * Balance of a device under its first case, as drawn.
   *
   * @param device the device
   * @return its balance
   */
  public static Balance of(Device device) {
    return new Balance(device, device.cases().get(0), Pose.DRAWN);
  }

  /**
   * Balance of a device under a case, as drawn.
   *
   * @param device the device
   * @param loadCase name of the case
   * @return its balance
   * @throws bellcrank.statics.device.ModelException if there is no such case
   */
  public static Balance of(Device device, String loadCase) {
    return new Balance(device, device.loadCase(loadCase), Pose.DRAWN);
  }

  /**
   * Balance of a device under a case in a pose. The pose must fit the connections.
   *
   * @param device the device
   * @param loadCase factors on the loads
   * @param pose where the bodies are
   * @return its balance
   */
  public static Balance of(Device device, LoadCase loadCase, Pose pose) {
    return new Balance(device, loadCase, pose);
  }

  /**
   * All force components that a device has, in the order of {@link #withForces}: of connections,
   * the friction couples of dry pins among them, then sought quantities.
   *
   * @return an ask for each
   */
  public List<Ask> components() {
    return UnknownNames.all(device, Assembly.withDryPins(device));
  }

  /**
   * This balance with forces that are known, where statics alone leaves several possible: from a
   * measurement, or from what else decides between them. Every answer is then read from these
   * forces. They are not changed so as to fit: {@link #residual()} tells how well they close.
   *
   * @param forces one value in SI units for each of {@link #components()}; a mass as its weight in
   *     N, an intensity as the total force in N
   * @return the balance with these forces
   * @throws bellcrank.statics.device.ModelException if the number of values differs or one is not
   *     finite
   */
  public Balance withForces(List<Double> forces) {
    Assembly assembly = Assembly.withDryPins(device);
    if (forces.size() != assembly.columns()) {
      throw new ModelException(
          device.name(), "forces", forces.size() + " values", assembly.columns() + " values");
    }
    double[] values = new double[forces.size()];
    for (int column = 0; column < values.length; column++) {
      double value = forces.get(column);
      if (!Double.isFinite(value)) {
        throw new ModelException(device.name(), "forces", value, "finite numbers");
      }
      values[column] = assembly.isCouple(column) ? value / device.size() : value;
    }
    return new Balance(this, Solved.with(device, loadCase, pose, values));
  }

  /** Parts whose law is a range even where the equations have one solution. */
  private static List<String> undecided(Device device) {
    List<String> parts = List.of();
    for (Connection connection : device.connections()) {
      if (connection instanceof Pin pin && pin.friction() > 0) {
        parts = new ArrayList<>(parts);
        parts.add(pin.name());
      }
    }
    return parts;
  }

  /**
   * The device.
   *
   * @return the device
   */
  public Device device() {
    return device;
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
   * The pose.
   *
   * @return where the bodies are
   */
  public Pose pose() {
    return pose;
  }

  /**
   * How it comes out.
   *
   * @return the outcome
   */
  public Outcome outcome() {
    if (!undecided.isEmpty()) {
      return new Outcome.NotDecided(undecided);
    }
    if (!solved.balanced()) {
      MotionFinder finder = MotionFinder.of(device, pose, true, Set.of());
      return new Outcome.NoBalance(
          FreedomWriter.write(device, finder, finder.driven(solved), false, true));
    }
    if (!violations.isEmpty()) {
      return new Outcome.ConditionsBroken(violations);
    }
    return isHeld() ? new Outcome.InBalance() : new Outcome.InBalanceForTheseLoads();
  }

  private boolean isHeld() {
    return solved.isHeld();
  }

  /**
   * Independent ways in which the device still moves although sought efforts hold. A rope with
   * losses may hold by its friction what it does not restrain: that is told as free to move.
   *
   * @return empty if its restraints hold it
   */
  public List<Freedom> freedoms() {
    // without losses forces and motions are the same rows, so what the forces hold cannot move
    return isHeld() && !solved.assembly().lossy()
        ? List.of()
        : Mobility.of(device, pose, true).freedoms();
  }

  /**
   * What moves when only the connections hold.
   *
   * @return the mobility without sought efforts
   */
  public Mobility mobility() {
    return Mobility.of(device, pose, false);
  }

  /**
   * Forces that statics alone does not fix, as asks of their natural components.
   *
   * @return empty if all are fixed
   */
  public List<Ask> undetermined() {
    return new UnknownNames(device, solved).undetermined();
  }

  /**
   * How many restraints are more than statics needs.
   *
   * @return 0 or more
   */
  public int redundancy() {
    return solved.redundancy();
  }

  /**
   * Conditions that the forces of the balance break.
   *
   * @return empty if none, or if there is no balance
   */
  public List<Violation> violations() {
    return violations;
  }

  /**
   * How well the forces close: the largest force or moment over the size that is left on any body.
   * Where there is no balance it is the share of the loads that nothing takes up, and says nothing
   * about accuracy.
   *
   * @return relative to the largest force; 0 or more
   */
  public double residual() {
    return solved.residual();
  }

  /**
   * Estimate of the condition number of the scaled equations.
   *
   * @return 1 or more
   */
  public double condition() {
    return solved.condition();
  }

  /**
   * Whether the shape is close to a critical one, and what a small move would do.
   *
   * @return empty if it is not
   */
  public Optional<NearCritical> nearCritical() {
    if (!solved.balanced() || !(solved.condition() * Math.ulp(1.0) > NEAR_CRITICAL)) {
      return Optional.empty();
    }
    return Sensitivity.worst(device, loadCase, pose, solved);
  }

  /**
   * The answer to an ask. An {@code in case} of the ask is not regarded: this balance is of one
   * case.
   *
   * @param ask what is asked
   * @return the answer, or why there is none
   * @throws bellcrank.statics.device.ModelException if the ask names what the device does not have
   */
  public Answer answer(Ask ask) {
    return new Answering(this, solved).answer(ask.check(device));
  }

  /**
   * The answer to an ask.
   *
   * @param ask text of the ask, such as {@code hinge.x on lever}
   * @return the answer, or why there is none
   * @throws bellcrank.statics.device.ModelException if the text is no ask or names what the device
   *     does not have
   */
  public Answer answer(String ask) {
    return answer(Ask.parse(ask));
  }

  /**
   * The number that answers an ask.
   *
   * @param ask text of the ask
   * @return in SI units; empty if there is no number
   * @throws bellcrank.statics.device.ModelException if the text is no ask or names what the device
   *     does not have
   */
  public OptionalDouble number(String ask) {
    return answer(ask) instanceof Answer.Value value
        ? OptionalDouble.of(value.si())
        : OptionalDouble.empty();
  }

  /**
   * What every connection does to its bodies. The ground is left out where a connection joins it to
   * one body only, since it takes the opposite.
   *
   * @return in the order of the model
   */
  public List<Reaction> reactions() {
    return new Reactions(this, solved).all();
  }

  /**
   * The forces inside a member: normal force, shear force and bending moment along its bars.
   *
   * @param member name of the member
   * @return its bars with what is told of each; without balance nothing is told of any
   * @throws ModelException if there is no such member
   */
  public InternalForces internalForces(String member) {
    Member found = member(device, member);
    return InternalForces.of(this, solved, found, MemberCut.of(solved.assembly(), found));
  }

  static Member member(Device device, String name) {
    for (Member member : device.members()) {
      if (member.name().equals(name)) {
        return member;
      }
    }
    List<String> names = device.members().stream().map(Member::name).toList();
    throw new ModelException(
        device.name(), "member", '"' + name + '"', "one of: " + String.join(", ", names));
  }

  /**
   * Whether an ask is about forces inside a member.
   *
   * @param ask an ask that has been checked against the device
   * @return true if so
   */
  public boolean isInside(Ask ask) {
    return ask.subject() instanceof Subject.Part part
        && MemberAnswers.concern(device, part.name(), ask);
  }

  Solved solved() {
    return solved;
  }

  /**
   * The mechanical advantage between the device's stated effort and resistance.
   *
   * @return empty if none are stated
   */
  public Optional<Advantage> advantage() {
    return device.advantage().map(pair -> new AdvantageFinder(this, solved).find(pair));
  }

  /**
   * The ratio of resistance to effort at which both do equal work on the free motion. It is the
   * ideal advantage, but is told also where the one is a couple and the other a force, and where
   * one turns a screw.
   *
   * @return the ratio in SI units, with the sign of the ratio of forces; it says why if there is
   *     none
   */
  public Answer ratioOfEqualWork() {
    return device
        .advantage()
        .map(pair -> new AdvantageFinder(this, solved).equalWork(pair))
        .orElseGet(() -> Values.notDefined("no effort and resistance are stated"));
  }

  /** Why forces cannot be told, if so. */
  Optional<Answer> noForces() {
    if (!undecided.isEmpty()) {
      return Optional.of(
          new Answer.Unanswered(
              Answer.Reason.NOT_DECIDED,
              "friction in " + String.join(", ", undecided) + " leaves a range of forces"));
    }
    if (!solved.balanced()) {
      return Optional.of(
          new Answer.Unanswered(
              Answer.Reason.NO_BALANCE,
              "the device is not in balance, so it carries no reactions"));
    }
    return Optional.empty();
  }
}
