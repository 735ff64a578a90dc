package bellcrank.statics.strength;

import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.CheckResult.NotChecked;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All checks of a device under one state of balance.
 *
 * @param checked the checks that were made, the part that is used most first
 * @param notChecked those that could not be made, and why
 * @param loads what is in the loads: factors of the case, its dynamic factor, and whether the
 *     method wants them; clauses, at least one
 */
public record Checks(List<Checked> checked, List<NotChecked> notChecked, List<String> loads) {

  /**
   * Copies the lists.
   *
   * @param checked the checks that were made
   * @param notChecked those that could not be made
   * @param loads what is in the loads
   */
  public Checks {
    checked = List.copyOf(checked);
    notChecked = List.copyOf(notChecked);
    loads = List.copyOf(loads);
  }

  /**
   * Makes all checks that a sizing calls for, with the rules of its method.
   *
   * @param balance the state; one with undetermined forces leaves the checks open that need them
   * @param sizing sections, materials and details
   * @return the results
   * @throws bellcrank.statics.device.ModelException if the sizing names what the device does not
   *     have
   */
  public static Checks of(Balance balance, Sizing sizing) {
    return of(balance, sizing, Rules.of(sizing.method()));
  }

  /**
   * Makes all checks that a sizing calls for.
   *
   * @param balance the state; one with undetermined forces leaves the checks open that need them
   * @param sizing sections, materials and details
   * @param rules rules of the method of the sizing
   * @return the results
   * @throws bellcrank.statics.device.ModelException if the sizing names what the device does not
   *     have, or the rules are of another method
   */
  public static Checks of(Balance balance, Sizing sizing, Rules rules) {
    Plan plan = new Plan(balance.device(), sizing, rules);
    CarriedForces state = CarriedForces.of(balance, plan.needs());
    List<Checked> checked = new ArrayList<>();
    List<NotChecked> open = new ArrayList<>();
    for (Checking<?> checking : plan.checkings()) {
      CheckResult result = checking.result(state);
      if (result instanceof Checked done) {
        checked.add(done);
      } else if (result instanceof NotChecked none) {
        open.add(none);
      }
    }
    open.addAll(plan.missing());
    checked.sort(Comparator.comparingDouble(Checked::utilisation).reversed());
    return new Checks(checked, open, LoadWords.of(balance.loadCase(), sizing.method()));
  }
}
