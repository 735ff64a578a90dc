package bellcrank.examples.report;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.equilibrium.Violation;
import bellcrank.statics.units.UnitSystem;

/** The verdict, and how the forces that are told below belong to it. */
final class VerdictSection {

  private VerdictSection() {}

  static void write(
      Page page, LimitsAnswer answer, Balance balance, Amounts amounts, UnitSystem units) {
    Device device = balance.device();
    page.paragraph(VerdictWords.of(answer, device, amounts, units));
    Outcome outcome = balance.outcome();
    if (outcome instanceof Outcome.NoBalance) {
      page.paragraph("There are no reactions to tell.");
    } else if (answer.stands()) {
      if (outcome instanceof Outcome.InBalanceForTheseLoads) {
        page.paragraph(OutcomeWords.free(balance, "the loads", units));
      }
      if (outcome instanceof Outcome.NotDecided open) {
        page.paragraph(
            "Friction in " + Listing.ofNames(open.parts()) + " leaves a range of forces.");
      }
    } else if (!balance.violations().isEmpty()) {
      page.paragraph(
          "The forces below are those that balance would need if every part held. They ask of a"
              + " part what it cannot give:");
      for (Violation violation : balance.violations()) {
        page.item(ViolationWords.of(device, violation, amounts));
      }
    } else if (!(outcome instanceof Outcome.NotDecided)) {
      page.paragraph("The forces below are those that balance would need if every part held.");
    }
  }
}
