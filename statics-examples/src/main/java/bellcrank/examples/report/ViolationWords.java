package bellcrank.examples.report;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Violation;
import bellcrank.statics.units.Dimension;

/** Says which condition the forces of a balance break, and what that means. */
final class ViolationWords {

  private ViolationWords() {}

  static String of(Device device, Violation violation, Amounts amounts) {
    String kind = device.connection(violation.part()).map(Connection::kind).orElse("part");
    return capital(kind)
        + " "
        + Listing.quoted(violation.part())
        + " "
        + violation.words()
        + consequence(violation, amounts)
        + ", so the device does not stand like this.";
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  private static String consequence(Violation violation, Amounts amounts) {
    Dimension dimension = violation.dimension();
    if (dimension == Dimension.NUMBER && violation.needed() == Double.MAX_VALUE) {
      return ": no ratio of tensions is enough; it slips";
    }
    String needed = amounts.text(Math.abs(violation.needed()), dimension);
    String limit = amounts.text(Math.abs(violation.limit()), dimension);
    if (violation.words().endsWith("push")) {
      return " with " + needed + ", and it can only pull: it goes slack";
    }
    if (violation.words().endsWith("pull")) {
      return " with " + needed + ", and it can only push: it lifts off";
    }
    if (dimension == Dimension.LENGTH) {
      return ": " + needed + " from its middle, and it reaches " + limit + ": it tips";
    }
    String quantity = dimension == Dimension.NUMBER ? "a ratio of tensions of " : "";
    return ": " + quantity + needed + ", and there is " + limit + " at most: it slips";
  }
}
