package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import java.util.Locale;

/** What is left over when the forces are put back on the bodies. */
final class ResidualSection {

  /** Share of the largest force up to which what is left over is called rounding. */
  private static final double ROUNDING = 1e-10;

  private ResidualSection() {}

  static void write(Page page, Balance balance) {
    Outcome outcome = balance.outcome();
    if (!(outcome instanceof Outcome.NoBalance || outcome instanceof Outcome.NotDecided)) {
      page.heading(words(balance.residual()));
    }
  }

  private static String words(double residual) {
    if (residual == 0) {
      return "Check: the forces on each body add up to zero.";
    }
    String rest = String.format(Locale.ROOT, "%.0e", residual);
    return residual <= ROUNDING
        ? "Check: the forces on each body add up to zero within rounding ("
            + rest
            + " of the largest)."
        : "Check: the forces on the bodies add up to zero only within "
            + rest
            + " of the largest, so no answer is finer than that.";
  }
}
