package bellcrank.examples.report;

import bellcrank.examples.file.HangPlan;
import bellcrank.examples.file.Inquiries;
import bellcrank.statics.device.Device;
import bellcrank.statics.motion.BalancePoint;
import bellcrank.statics.motion.Hang;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/** How bodies hang from a point, and where a handle balances them. */
final class HangSection {

  private static final int DIGITS = 4;

  private final Device device;
  private final UnitSystem units;

  private HangSection(Device device, UnitSystem units) {
    this.device = device;
    this.units = units;
  }

  static void write(Page page, Inquiries asked, Device device, UnitSystem units) {
    HangSection section = new HangSection(device, units);
    if (!asked.hangs().isEmpty()) {
      page.heading("Hung up, as one rigid piece");
      asked.hangs().forEach(one -> page.item(section.hang(one)));
    }
    if (!asked.handles().isEmpty()) {
      page.heading("Carried by a handle, as one rigid piece");
      asked.handles().forEach(one -> page.item(section.handle(one)));
    }
  }

  private String text(double si, Dimension dimension) {
    double shown = Math.abs(si) < 1e-12 ? 0 : si;
    return units.format(shown, dimension, DIGITS).replace(' ', Wrapping.UNBROKEN);
  }

  private static String carried(List<String> bodies) {
    return bodies.isEmpty() ? "the whole device" : Listing.ofNames(bodies);
  }

  /** Such as {@code lid: hung from "hook", the whole device …}. */
  String hang(HangPlan plan) {
    String head =
        plan.name() + ": hung from " + Listing.quoted(plan.from()) + ", " + carried(plan.bodies());
    Hang hang = plan.hang(device);
    if (!(hang instanceof Hang.Turned turned)) {
      return head + " hangs however it is put: its centre of gravity is there";
    }
    return head
        + " turns by "
        + text(turned.stable(), Dimension.ANGLE)
        + " (counter-clockwise positive) until its centre of gravity is plumb below, "
        + text(turned.arm(), Dimension.LENGTH)
        + " away; turned by "
        + text(turned.unstable(), Dimension.ANGLE)
        + " it balances on that point until it is disturbed";
  }

  /** Such as {@code handle: 0.4 m from "A" towards "B" …}. */
  String handle(HangPlan plan) {
    String to = plan.to().orElse(plan.from());
    String head = plan.name() + ": " + carried(plan.bodies());
    Optional<BalancePoint> found = plan.handle(device);
    if (found.isEmpty()) {
      return head + ": the line is plumb, so no place on it is better than another";
    }
    BalancePoint point = found.get();
    return head
        + " is level as drawn with the handle "
        + text(point.distance(), Dimension.LENGTH)
        + " from "
        + Listing.quoted(plan.from())
        + " towards "
        + Listing.quoted(to)
        + (point.between() ? "" : ", which is not between the two")
        + (point.hangs()
            ? "; it hangs there and swings back"
            : "; the centre of gravity is not below it there, so it tips over when it is disturbed");
  }
}
