package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Violation;
import java.util.Set;
import java.util.stream.Collectors;

/** Marks the rows of parts that cannot give what balance needs from them. */
final class BrokenMark {

  private static final String MARK = " *";

  private final Set<String> parts;

  private BrokenMark(Set<String> parts) {
    this.parts = parts;
  }

  static BrokenMark of(Balance balance) {
    return new BrokenMark(
        balance.violations().stream().map(Violation::part).collect(Collectors.toSet()));
  }

  boolean isBroken(String part) {
    return parts.contains(part);
  }

  /** The name of a part, with the mark if need be. */
  String name(String part) {
    return isBroken(part) ? part + MARK : part;
  }

  /** The line below a table that says what the mark means. */
  void note(Page page, boolean marked) {
    if (marked) {
      page.item("* balance needs this, but the part cannot give it");
    }
  }
}
