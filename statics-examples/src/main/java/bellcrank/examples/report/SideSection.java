package bellcrank.examples.report;

import bellcrank.statics.limits.SideEdge;
import bellcrank.statics.limits.SideLoad;
import bellcrank.statics.limits.SideTip;
import bellcrank.statics.limits.SideTipWords;
import bellcrank.statics.limits.SideView;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;

/** How the device stands as seen along its plane. */
final class SideSection {

  private static final int DIGITS = 4;

  private SideSection() {}

  static void write(Page page, SideAnswer answer, UnitSystem units) {
    if (answer.tip().isEmpty()) {
      page.heading("Seen from the side");
      page.item("not told: " + answer.why());
      return;
    }
    SideTip tip = answer.tip().get();
    page.heading(
        "Seen from the side, on "
            + Listing.quoted(tip.view().base())
            + " (right is out of the drawing)"
            + (answer.assumed() ? ", with the least pushes and pulls (an assumption)" : ""));
    SideTipWords words = SideTipWords.of(tip, units);
    item(page, words.verdict());
    item(page, words.margin());
    for (SideLoad load : tip.view().loads()) {
      if (load.side() != 0) {
        item(page, words.margin(load.name()));
      }
    }
    for (SideEdge edge : SideEdge.values()) {
      item(page, words.lean(edge));
      item(page, words.slope(edge));
    }
    item(page, words.breadth(1) + "; it has " + breadth(tip.view(), units));
    item(page, words.caution());
  }

  /** A number stays with the unit behind it. */
  private static void item(Page page, String words) {
    page.item(words.replaceAll("(?<=\\d) (?=\\p{L})", String.valueOf(Wrapping.UNBROKEN)));
  }

  private static String breadth(SideView view, UnitSystem units) {
    return units.format(view.breadth(), Dimension.LENGTH, DIGITS).replace(' ', Wrapping.UNBROKEN);
  }
}
