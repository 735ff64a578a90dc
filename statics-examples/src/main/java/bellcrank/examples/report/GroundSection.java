package bellcrank.examples.report;

import bellcrank.statics.ground.BasePressure;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;

/** What bases press on the ground with, and how much of it the ground gives. */
final class GroundSection {

  private final Amounts amounts;
  private final Unit pressure;

  private GroundSection(Amounts amounts, UnitSystem units) {
    this.amounts = amounts;
    pressure = pressure(units.unit(Dimension.PRESSURE));
  }

  static void write(Page page, List<GroundLoad> loads, Amounts amounts, UnitSystem units) {
    GroundSection section = new GroundSection(amounts, units);
    loads.forEach(load -> section.write(page, load));
  }

  /** The unit in which the ground is usually told, for the one of the file. */
  private static Unit pressure(Unit unit) {
    return switch (unit.symbol()) {
      case "Pa" -> Unit.parse("kPa");
      case "psi" -> Unit.parse("psf");
      default -> unit;
    };
  }

  private void write(Page page, GroundLoad load) {
    page.heading(
        "Ground under "
            + Listing.quoted(load.base().name())
            + (load.assumed() ? ", with the least pushes and pulls (an assumption)" : ""));
    BasePressure pressed = load.load().pressure();
    page.item(shape(pressed));
    pressed.offset().ifPresent(offset -> page.item(offset(offset, pressed)));
    load.bears().ifPresent(most -> page.item(bears(load, most)));
    load.foundation()
        .bearing()
        .ifPresent(bearing -> page.item("source of that: " + bearing.source()));
    page.item(slides(load));
  }

  private String shape(BasePressure pressed) {
    return switch (pressed.shape()) {
      case NONE -> "nothing presses on it";
      case EDGE -> "the force is at the edge or beyond it, where no ground can bear it";
      case TRAPEZOID -> "the whole base is pressed: " + edges(pressed);
      case TRIANGLE ->
          "a part of the base lifts, "
              + length(pressed.contactWidth())
              + " of "
              + length(pressed.width())
              + " is pressed: "
              + edges(pressed);
    };
  }

  private String edges(BasePressure pressed) {
    String left = pressure(pressed.left());
    String right = pressure(pressed.right());
    return left.equals(right)
        ? left + " all over"
        : left + " at the left edge, " + right + " at the right edge";
  }

  private String offset(double offset, BasePressure pressed) {
    double size = Math.abs(offset);
    String where =
        amounts.isZero(size, Dimension.LENGTH)
            ? "the force is in the middle"
            : "the force is " + length(size) + (offset < 0 ? " left" : " right") + " of the middle";
    return where
        + "; up to "
        + length(pressed.kern())
        + " the whole base is pressed; effective width "
        + length(pressed.effectiveWidth());
  }

  private String bears(GroundLoad load, double most) {
    double normal = load.load().normal();
    String share = most > 0 ? "; " + percent(normal / most) + " of that is used" : "";
    return "presses with "
        + amounts.text(normal, Dimension.FORCE)
        + "; so placed and inclined, the ground bears "
        + amounts.text(most, Dimension.FORCE)
        + " and sinks beyond"
        + share;
  }

  private String slides(GroundLoad load) {
    double shear = Math.abs(load.load().tangential());
    return (amounts.isZero(shear, Dimension.FORCE)
            ? "nothing pushes it sideways"
            : "pushed sideways with " + amounts.text(shear, Dimension.FORCE))
        + "; it slides at "
        + amounts.text(load.holds(), Dimension.FORCE);
  }

  private String pressure(OptionalDouble value) {
    return value.isPresent() ? amounts.text(value.getAsDouble(), pressure, Amounts.DIGITS) : "";
  }

  private String length(double value) {
    return amounts.text(value, Dimension.LENGTH);
  }

  private String percent(double share) {
    return amounts.text(share, Unit.parse("%"), 3);
  }
}
