package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.NearCritical;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import java.util.Locale;

/** The warning that small errors in the shape change the answer much. */
final class NearCriticalSection {

  private static final int DIGITS = 2;

  private NearCriticalSection() {}

  static void write(Page page, Balance balance, Amounts amounts) {
    balance
        .nearCritical()
        .ifPresent(
            found -> {
              write(page, found, amounts);
              page.item(
                  String.format(
                      Locale.ROOT,
                      "(condition of the equations about %.0e: they may magnify small errors so"
                          + " many times)",
                      balance.condition()));
            });
  }

  private static void write(Page page, NearCritical found, Amounts amounts) {
    page.heading("Near-critical shape");
    String move =
        "a move of point "
            + Listing.quoted(found.point())
            + " by "
            + amounts.text(found.move(), Dimension.LENGTH, DIGITS);
    if (Double.isInfinite(found.change())) {
      page.item("small errors in the shape decide: after " + move + " it no longer holds");
    } else {
      String change =
          new Quantity(found.change(), Dimension.NUMBER).format(Unit.parse("%"), DIGITS);
      page.item(
          "small errors in the shape matter much: "
              + move
              + " changes a force by "
              + change
              + " of the largest one");
    }
  }
}
