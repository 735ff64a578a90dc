package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.Check;
import bellcrank.statics.strength.Factor;
import bellcrank.statics.strength.Rule;
import bellcrank.statics.strength.Rules;
import java.util.Optional;

/**
 * A factor in place of that of a rule.
 *
 * @param check name of the check whose rule it is
 * @param factor what strengths are divided by, above 0
 * @param meaning what it covers; if left out, what that of the rule does
 * @param why why it differs
 */
public record FactorStatement(String check, double factor, Optional<String> meaning, String why) {

  /**
   * Checks the texts and the number.
   *
   * @param check name of the check
   * @param factor what strengths are divided by, above 0
   * @param meaning what it covers
   * @param why why it differs
   * @throws ModelException if there is no such check, or a text is empty
   */
  public FactorStatement {
    meaning = FreeText.check("meaning", meaning);
    why = FreeText.check("why", why);
    Factor made = new Factor(factor, meaning.orElse("factor"));
    if (Check.all().stream().map(Check::name).noneMatch(check::equals) || made.value() <= 0) {
      throw new ModelException(
          check,
          "check",
          '"' + check + '"',
          "a check: " + String.join(", ", Check.all().stream().map(Check::name).toList()));
    }
  }

  /** The rules with this factor. */
  Rules in(Rules rules) {
    Rules changed = rules;
    for (Rule<?> rule : rules.all()) {
      if (rule.check().name().equals(check)) {
        Factor other = new Factor(factor, meaning.orElse(rule.factor().meaning()));
        changed = changed.with(rule.with(other, why));
      }
    }
    return changed;
  }
}
