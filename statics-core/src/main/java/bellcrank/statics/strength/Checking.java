package bellcrank.statics.strength;

import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.CheckResult.NotChecked;
import java.util.Optional;

/**
 * One check of one part, ready to be made in any state.
 *
 * @param <D> what its rule is fed with
 */
abstract class Checking<D> {

  private final String part;
  private final String what;
  private final Rule<D> rule;

  Checking(String part, String what, Rule<D> rule) {
    this.part = part;
    this.what = what;
    this.rule = rule;
  }

  /** What the part carries where it is used most. */
  abstract D worst(CarriedForces state);

  /** Mixes what it reads: {@code none + multiple · (one − none)}. */
  abstract void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple);

  /** Why the forces it needs are open. */
  abstract Optional<String> open(CarriedForces state);

  /** Where the part is used most, in words; may be empty. */
  String place(CarriedForces state) {
    return "";
  }

  final Rule<D> rule() {
    return rule;
  }

  final String part() {
    return part;
  }

  final String what() {
    return what;
  }

  /** Whether the share that is used is convex in the multiple of the driving loads. */
  boolean isConvex() {
    return rule.law().isProportional();
  }

  /** What strengths are divided by; it may depend on the material. */
  Factor factor(D demand) {
    return rule.factor();
  }

  /** Share of the resistance that a demand uses; without bound where that cannot be told. */
  final double used(D demand) {
    return rule.law().used(demand, factor(demand).value());
  }

  /** Share of the resistance that is used; its forces are known. */
  double utilisation(CarriedForces state) {
    return used(worst(state));
  }

  /** Why it cannot be made in a state. */
  final Optional<String> whyNot(CarriedForces state) {
    return open(state).or(() -> rule.law().lacks(worst(state)));
  }

  final CheckResult result(CarriedForces state) {
    Optional<String> whyNot = whyNot(state);
    if (whyNot.isPresent()) {
      return new NotChecked(part, what, whyNot.get());
    }
    D demand = worst(state);
    Law<D> law = rule.law();
    Factor factor = factor(demand);
    return new Checked(
        part,
        what,
        place(state),
        law.demanded(demand),
        law.resistance(demand, factor.value()),
        law.dimension(),
        rule,
        factor,
        units -> law.working(demand, factor.value(), units));
  }
}
