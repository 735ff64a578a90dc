package bellcrank.examples.report;

import java.util.Locale;

/** Draws how much of something is used as a bar of text. */
final class UsedBar {

  private static final int LENGTH = 10;
  private static final double MOST = 9.995;

  private UsedBar() {}

  /** Such as {@code [######....] 58 %}; what is beyond all of it ends in an arrow. */
  static String of(double share) {
    boolean beyond = share > 1;
    int round = (int) Math.min(LENGTH, Math.round(share * LENGTH));
    int full = share > 0 ? Math.max(1, round) : 0;
    String bar =
        beyond ? "#".repeat(LENGTH - 1) + ">" : "#".repeat(full) + ".".repeat(LENGTH - full);
    String percent = share > MOST ? "more" : String.format(Locale.ROOT, "%.0f %%", share * 100);
    String room = "\u00A0".repeat(Math.max(0, 5 - percent.length()));
    return "[" + bar + "]" + Wrapping.UNBROKEN + room + percent.replace(' ', Wrapping.UNBROKEN);
  }
}
