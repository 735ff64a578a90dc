package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.PartState;
import bellcrank.statics.limits.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * What the limits of a case say, worked out once for a page.
 *
 * @param verdict whether it stands
 * @param friction how much of the friction is needed
 * @param limits how far loads and places may be varied
 * @param states what each part of one side or with friction does; empty if it does not hold
 * @param efforts sought quantities that may lie in a range
 * @param open forces that statics leaves open
 * @param grounds what the bases on stated ground do
 */
record LimitsAnswer(
    Verdict verdict,
    FrictionFactor friction,
    List<NamedLimit> limits,
    List<PartState> states,
    List<EffortRange> efforts,
    List<OpenForce> open,
    List<GroundLoad> grounds) {

  /** Those of a case; empty if the balance alone decides the device. */
  static Optional<LimitsAnswer> of(CaseSolution solution, DeviceFile file) {
    return solution.limits().map(limits -> of(limits, solution.balance(), file));
  }

  private static LimitsAnswer of(Limits limits, Balance balance, DeviceFile file) {
    Optional<Balance> least = limits.withLeastForces();
    return new LimitsAnswer(
        limits.verdict(),
        limits.frictionFactor(),
        NamedLimit.of(file, limits),
        limits.states(),
        EffortRange.of(limits),
        OpenForce.of(limits, balance, least),
        GroundLoad.of(limits, least));
  }

  /** The range of a sought quantity; empty if it has one value or none. */
  Optional<EffortRange> effort(String name) {
    return efforts.stream().filter(one -> one.sought().name().equals(name)).findFirst();
  }

  /** Whether the device stands, or at least can. */
  boolean stands() {
    return !(verdict instanceof Verdict.DoesNotHold || verdict instanceof Verdict.NotDecided);
  }
}
