package bellcrank.statics.study.internal;

import bellcrank.statics.study.internal.Ledger.Spent;
import java.util.List;

/** Finds the place in a box where a value is least and all goals are kept, or the nearest miss. */
public final class GoalSearch {

  private GoalSearch() {}

  /** More numbers than this are not searched at once. */
  public static int mostNumbers() {
    return SeveralNumbers.MOST_NUMBERS;
  }

  /**
   * Searches.
   *
   * @param view what is seen from a place
   * @param aims the goals, one for each miss that is seen
   * @param start a place at which it looks as well, one share for each number
   * @param most how often it may look
   */
  public static Best of(View view, List<Aim> aims, double[] start, int most) {
    Ledger ledger = new Ledger(view, aims, most);
    try {
      if (start.length == 1) {
        new OneNumber(ledger).run(start[0]);
      } else {
        new SeveralNumbers(ledger, start.length).run(start.clone());
      }
    } catch (Spent spent) {
      // the ledger tells what was found until then, and that it was cut short
      return ledger.report();
    }
    return ledger.report();
  }
}
