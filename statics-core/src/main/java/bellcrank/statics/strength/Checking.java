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
  abstract D worst(Carried state);

  /** Why the forces it needs are open. */
  abstract Optional<String> open(Carried state);

  /** Where the part is used most, in words; may be empty. */
  String place(Carried state) {
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

  /** Share of the resistance that a demand uses. */
  final double used(D demand) {
    return rule.law().demanded(demand) / rule.law().resistance(demand, rule.factor().value());
  }

  /** Share of the resistance that is used; its forces are known. */
  double utilisation(Carried state) {
    return used(worst(state));
  }

  /** Why it cannot be made in a state. */
  final Optional<String> whyNot(Carried state) {
    return open(state).or(() -> rule.law().lacks(worst(state)));
  }

  final CheckResult result(Carried state) {
    Optional<String> whyNot = whyNot(state);
    if (whyNot.isPresent()) {
      return new NotChecked(part, what, whyNot.get());
    }
    D demand = worst(state);
    Law<D> law = rule.law();
    double factor = rule.factor().value();
    return new Checked(
        part,
        what,
        place(state),
        law.demanded(demand),
        law.resistance(demand, factor),
        law.dimension(),
        rule,
        units -> law.working(demand, factor, units));
  }
}
