package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.Dimension;

/** The coefficient of friction that each rough contact needs, beside the one that it has. */
final class FrictionSection {

  private static final String HEADING = "Friction";

  private final Balance balance;
  private final Amounts amounts;
  private boolean begun;

  private FrictionSection(Balance balance, Amounts amounts) {
    this.balance = balance;
    this.amounts = amounts;
  }

  static void write(Page page, Balance balance, Amounts amounts) {
    FrictionSection section = new FrictionSection(balance, amounts);
    balance.device().connections().forEach(connection -> section.write(page, connection));
  }

  private void write(Page page, Connection connection) {
    double coefficient = coefficient(connection);
    if (coefficient > 0
        && answer(connection, Measure.NORMAL) instanceof Answer.Value normal
        && answer(connection, Measure.FRICTION) instanceof Answer.Value friction
        && normal.si() > 0
        && !amounts.isZero(normal.si(), Dimension.FORCE)) {
      if (!begun) {
        page.heading(HEADING);
        begun = true;
      }
      boolean none = amounts.isZero(friction.si(), Dimension.FORCE);
      double needed = Math.abs(friction.si()) / normal.si();
      page.item(
          connection.name()
              + ": needs "
              + (none ? "none" : "μ = " + amounts.number(needed, Dimension.NUMBER))
              + ", has "
              + CaseWords.number(coefficient));
    }
  }

  private Answer answer(Connection connection, Measure measure) {
    return balance.answer(Ask.of(connection.name(), measure));
  }

  private static double coefficient(Connection connection) {
    if (connection instanceof Contact contact) {
      return contact.friction();
    }
    return connection instanceof ContactBase base ? base.friction() : 0;
  }
}
