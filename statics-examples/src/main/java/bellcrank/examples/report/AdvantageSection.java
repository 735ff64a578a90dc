package bellcrank.examples.report;

import bellcrank.statics.device.EffortAndResistance;
import bellcrank.statics.equilibrium.Advantage;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.Dimension;

/** The mechanical advantage, ideal and actual, or why there is none. */
final class AdvantageSection {

  private AdvantageSection() {}

  static void write(Page page, Balance balance, Amounts amounts) {
    balance
        .device()
        .advantage()
        .ifPresent(
            pair ->
                balance
                    .advantage()
                    .ifPresent(
                        found -> {
                          write(page, pair, found, amounts);
                          NegativeAdvantage.words(balance, pair, found).ifPresent(page::item);
                        }));
  }

  private static void write(
      Page page, EffortAndResistance pair, Advantage advantage, Amounts amounts) {
    page.heading(
        "Mechanical advantage, "
            + Listing.quoted(pair.resistance())
            + " over "
            + Listing.quoted(pair.effort()));
    if (advantage instanceof Advantage.Ratio ratio) {
      page.item(
          "ideal "
              + number(ratio.ideal(), amounts)
              + ", actual "
              + number(ratio.actual(), amounts));
      page.item(
          "(ideal: ratio of the velocities of effort and resistance; actual: ratio of the forces,"
              + " with weights and losses in it)");
    } else if (advantage instanceof Advantage.IdealOnly only) {
      page.item("ideal " + number(only.ideal(), amounts) + " (ratio of the velocities)");
      page.item("no actual one: " + only.why());
    } else if (advantage instanceof Advantage.ActualOnly only) {
      page.item(
          "actual "
              + number(only.actual(), amounts)
              + " (ratio of the forces, with weights and losses in it)");
      page.item("no ideal one: " + only.why());
    } else {
      page.item("none: " + ((Advantage.NotDefined) advantage).why());
    }
  }

  private static String number(double ratio, Amounts amounts) {
    return amounts.number(ratio, Dimension.NUMBER);
  }
}
