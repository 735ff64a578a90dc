package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Limits;
import java.util.List;
import java.util.Optional;

/**
 * How a device is solved by hand: what is cut free, which equation is written and why, what it
 * yields. The equations are chosen so that there are few of them and each has few terms; they need
 * not be those that the balance itself was found by, but their numbers are the same. Immutable.
 */
public final class WorkedSolution {

  private final Balance balance;
  private final List<Step> steps;
  private final List<Unknown> unknowns;
  private final List<Given> given;
  private final int bodies;

  WorkedSolution(
      Balance balance, List<Step> steps, List<Unknown> unknowns, List<Given> given, int bodies) {
    this.balance = balance;
    this.steps = List.copyOf(steps);
    this.unknowns = List.copyOf(unknowns);
    this.given = List.copyOf(given);
    this.bodies = bodies;
  }

  /**
   * The solution for all forces of a device.
   *
   * @param balance the balance of the device in a case
   * @return its solution; where there is no balance, the equation that cannot be met
   */
  public static WorkedSolution of(Balance balance) {
    return new SolutionWriting(balance, Optional.empty()).write();
  }

  /**
   * The solution for some answers, with no more steps than they need.
   *
   * @param balance the balance of the device in a case
   * @param asks what is asked
   * @return its solution
   * @throws bellcrank.statics.device.ModelException if an ask names what the device does not have
   */
  public static WorkedSolution of(Balance balance, List<Ask> asks) {
    return new SolutionWriting(balance, Optional.of(List.copyOf(asks))).write();
  }

  /**
   * The solution for all forces of a device with one-sided or rough parts: how it is decided
   * whether it stands comes after the forces.
   *
   * @param limits the limits of the device in a case
   * @return its solution
   */
  public static WorkedSolution of(Limits limits) {
    return LimitWriting.decided(limits, Optional.empty());
  }

  /**
   * The solution for some answers of a device with one-sided or rough parts, and whether it stands.
   *
   * @param limits the limits of the device in a case
   * @param asks what is asked; of asks that only limits tell the answer is given, not how it is
   *     found
   * @return its solution
   * @throws bellcrank.statics.device.ModelException if an ask names what the device does not have
   */
  public static WorkedSolution of(Limits limits, List<Ask> asks) {
    return LimitWriting.decided(limits, Optional.of(List.copyOf(asks)));
  }

  /**
   * The solution for the greatest or least value of a sought effort: for parts that are at their
   * limit there, what holds for them is an equation as well.
   *
   * @param limits the limits of the device in a case
   * @param sought name of a sought force, couple, mass or intensity
   * @param greatest whether its greatest value is asked for
   * @param asks what else is asked, in the state with that value; may be empty
   * @return its solution; empty if there is no such value
   * @throws bellcrank.statics.device.ModelException if nothing of that name is sought, or an ask
   *     names what the device does not have
   */
  public static Optional<WorkedSolution> atLimit(
      Limits limits, String sought, boolean greatest, List<Ask> asks) {
    return LimitWriting.atLimit(limits, sought, greatest, List.copyOf(asks));
  }

  /** The same solution with other steps. */
  WorkedSolution withSteps(List<Step> other) {
    return new WorkedSolution(balance, other, unknowns, given, bodies);
  }

  /** Number of bodies that can be cut free. */
  int bodies() {
    return bodies;
  }

  /**
   * The balance that is explained.
   *
   * @return the balance
   */
  public Balance balance() {
    return balance;
  }

  /**
   * The steps, in order; the answers come last.
   *
   * @return at least one step
   */
  public List<Step> steps() {
    return steps;
  }

  /**
   * The unknowns that come up in the steps.
   *
   * @return in the order of their symbols
   */
  public List<Unknown> unknowns() {
    return unknowns;
  }

  /**
   * The given loads that come up in the steps.
   *
   * @return in the order of their symbols
   */
  public List<Given> given() {
    return given;
  }

  /**
   * The equations that are solved, one after the other.
   *
   * @return the equations, those that are solved together as well
   */
  public List<Equation> equations() {
    return steps.stream()
        .flatMap(
            step ->
                step instanceof Step.Single single
                    ? java.util.stream.Stream.of(single.equation())
                    : step instanceof Step.Together together
                        ? together.equations().stream()
                        : java.util.stream.Stream.empty())
        .toList();
  }

  /**
   * What the equations yield.
   *
   * @return each unknown that is found or taken, with its value
   */
  public List<Step.Found> found() {
    return steps.stream()
        .flatMap(
            step ->
                step instanceof Step.Single single
                    ? java.util.stream.Stream.of(single.found())
                    : step instanceof Step.Together together
                        ? together.found().stream()
                        : step instanceof Step.Taken taken
                            ? java.util.stream.Stream.of(taken.found())
                            : java.util.stream.Stream.empty())
        .toList();
  }

  /**
   * The answers.
   *
   * @return in the order of the asks, or of the parts of the device
   */
  public List<Step.Result> results() {
    return steps.stream()
        .filter(Step.Result.class::isInstance)
        .map(Step.Result.class::cast)
        .toList();
  }
}
