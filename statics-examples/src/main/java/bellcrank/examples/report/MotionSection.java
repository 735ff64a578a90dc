package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.equilibrium.Mobility;
import java.util.List;
import java.util.Optional;

/** What can still move, and which restraints are too many. */
final class MotionSection {

  private MotionSection() {}

  static void write(Page page, Balance balance, Optional<LimitsAnswer> limits, Amounts amounts) {
    boolean stands = limits.filter(LimitsAnswer::stands).isPresent();
    page.heading(
        "Motion and restraint"
            + (limits.isPresent() && !stands ? ", while every contact and rope holds" : ""));
    List<String> sought = balance.device().sought().stream().map(Sought::name).toList();
    if (!sought.isEmpty()) {
      String without = "without the sought " + Listing.ofNames(sought);
      ways(page, without, balance.mobility().freedoms(), amounts);
      special(page, balance.mobility());
    }
    String held = sought.size() == 1 ? "with it held" : "with them held";
    ways(page, sought.isEmpty() ? "" : held, balance.freedoms(), amounts);
    if (!balance.freedoms().isEmpty()) {
      if (sought.isEmpty()) {
        special(page, balance.mobility());
      }
      LooseBodies.words(balance.device()).ifPresent(page::item);
    }
    restraints(page, balance, stands);
  }

  /** Where all ways are due to a special shape, each of them says so itself. */
  private static void special(Page page, Mobility mobility) {
    int critical = mobility.criticalCount();
    if (critical > 0 && critical < mobility.freedoms().size()) {
      page.item(
          critical
              + " of these ways "
              + (critical == 1 ? "is" : "are")
              + " free only because of a special shape");
    }
  }

  private static void ways(Page page, String condition, List<Freedom> freedoms, Amounts amounts) {
    String when = condition.isEmpty() ? "" : condition + ", ";
    if (freedoms.isEmpty()) {
      page.item(when + "nothing can move");
      return;
    }
    page.item(when + "it can move in " + Listing.count(freedoms.size(), "way") + ":");
    freedoms.forEach(freedom -> page.subitem(amounts.motion(freedom)));
  }

  private static void restraints(Page page, Balance balance, boolean told) {
    int redundancy = balance.redundancy();
    if (redundancy == 0) {
      page.item("no restraint is superfluous");
      return;
    }
    page.item(
        Listing.count(redundancy, "restraint")
            + (redundancy == 1 ? " is" : " are")
            + " more than statics needs");
    if (told) {
      return;
    }
    List<String> open = balance.undetermined().stream().map(Ask::text).toList();
    page.item(
        open.isEmpty()
            ? "all forces are fixed all the same"
            : "not fixed by statics: " + String.join(", ", open));
  }
}
