package bellcrank.examples.report;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Violation;
import bellcrank.statics.units.Dimension;

/** Says which condition the forces of a balance break. */
final class ViolationWords {

  private ViolationWords() {}

  static String of(Device device, Violation violation, Amounts amounts) {
    String kind = device.connection(violation.part()).map(Connection::kind).orElse("part");
    return capital(kind)
        + " "
        + Listing.quoted(violation.part())
        + " "
        + violation.words()
        + bound(violation, amounts)
        + ".";
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  private static String bound(Violation violation, Amounts amounts) {
    Dimension dimension = violation.dimension();
    if (dimension == Dimension.NUMBER && violation.needed() == Double.MAX_VALUE) {
      return ": no ratio of tensions is enough";
    }
    String needed = amounts.text(Math.abs(violation.needed()), dimension);
    String limit = amounts.text(Math.abs(violation.limit()), dimension);
    if (violation.words().endsWith("push")) {
      return " with " + needed + ", and it can only pull";
    }
    if (violation.words().endsWith("pull")) {
      return " with " + needed + ", and it can only push";
    }
    if (dimension == Dimension.LENGTH) {
      return ": " + needed + " from its middle, and it reaches " + limit;
    }
    String quantity = dimension == Dimension.NUMBER ? "a ratio of tensions of " : "";
    return ": " + quantity + needed + ", and there is " + limit + " at most";
  }
}
