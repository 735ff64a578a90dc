package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Freedom;
import java.util.List;

/** What can still move, and which restraints are too many. */
final class MotionSection {

  private MotionSection() {}

  static void write(Page page, Balance balance) {
    page.heading("Motion and restraint");
    List<String> sought = balance.device().sought().stream().map(Sought::name).toList();
    if (!sought.isEmpty()) {
      ways(page, "without the sought " + Listing.of(sought), balance.mobility().freedoms());
    }
    ways(page, sought.isEmpty() ? "" : "with it held", balance.freedoms());
    restraints(page, balance);
  }

  private static void ways(Page page, String condition, List<Freedom> freedoms) {
    String when = condition.isEmpty() ? "" : condition + ", ";
    if (freedoms.isEmpty()) {
      page.item(when + "nothing can move");
      return;
    }
    page.item(when + "it can move in " + Listing.count(freedoms.size(), "way") + ":");
    freedoms.forEach(freedom -> page.subitem(freedom.words()));
  }

  private static void restraints(Page page, Balance balance) {
    int redundancy = balance.redundancy();
    if (redundancy == 0) {
      page.item("no restraint is more than statics needs");
      return;
    }
    page.item(
        Listing.count(redundancy, "restraint")
            + (redundancy == 1 ? " is" : " are")
            + " more than statics needs");
    List<String> open = balance.undetermined().stream().map(Ask::text).toList();
    page.item(
        open.isEmpty()
            ? "all forces are fixed all the same"
            : "not fixed by statics: " + String.join(", ", open));
  }
}
