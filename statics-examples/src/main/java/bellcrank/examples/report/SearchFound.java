package bellcrank.examples.report;

import bellcrank.examples.file.Expected;
import bellcrank.examples.file.SearchPlan;
import bellcrank.statics.harness.ExpectedAnswer;
import bellcrank.statics.study.Free;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Model;
import bellcrank.statics.study.SearchAnswer;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What was found for one search.
 *
 * @param plan the search
 * @param answer what was found
 * @param holds whether it is as the file expects; true if the file expects nothing
 */
record SearchFound(SearchPlan plan, SearchAnswer answer, boolean holds) {

  static SearchFound of(SearchPlan plan, Model model) {
    SearchAnswer answer = plan.search(model);
    return new SearchFound(plan, answer, holds(plan, answer));
  }

  private static boolean holds(SearchPlan plan, SearchAnswer answer) {
    if (plan.expected().isEmpty()) {
      return true;
    }
    SearchPlan.Values expected = plan.expected().get();
    if (expected.values().isEmpty()) {
      return answer instanceof SearchAnswer.Infeasible;
    }
    if (!(answer instanceof SearchAnswer.Found found)) {
      return false;
    }
    for (Map.Entry<Input, Expected.Amount> one : expected.values().entrySet()) {
      for (SearchAnswer.Setting setting : found.settings()) {
        Free free = setting.free();
        double size = free.to() - free.from();
        if (free.input().equals(one.getKey())
            && !meets(one.getValue(), setting.value(), expected.digits(), size)) {
          return false;
        }
      }
    }
    if (expected.reaches().isEmpty()) {
      return true;
    }
    OptionalDouble reached =
        found.wanted().map(one -> one.answer().number()).orElse(OptionalDouble.empty());
    return reached.isPresent()
        && meets(expected.reaches().get(), reached.getAsDouble(), expected.digits(), 1);
  }

  private static boolean meets(Expected.Amount wanted, double found, int digits, double size) {
    ExpectedAnswer.Amount amount =
        new ExpectedAnswer.Amount(wanted.quantity(), wanted.unit(), digits);
    return amount.isMetBy(found, amount.allowed(size));
  }
}
