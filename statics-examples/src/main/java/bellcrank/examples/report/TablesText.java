package bellcrank.examples.report;

import bellcrank.statics.ground.AnchorTable;
import bellcrank.statics.ground.Basis;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.ground.FrictionRow;
import bellcrank.statics.ground.FrictionTable;
import bellcrank.statics.ground.LadderRules;
import bellcrank.statics.ground.SoilRow;
import bellcrank.statics.ground.SoilTable;
import bellcrank.statics.ground.Span;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;

/** The tables of published figures as a page of text, at most 80 characters wide. */
public final class TablesText {

  private static final int DIGITS = 4;

  private final Page page = new Page();
  private final UnitSystem units;
  private String source = "";

  private TablesText(UnitSystem units) {
    this.units = units;
  }

  /**
   * Writes all rows with their sources.
   *
   * @param units units of the values
   * @return lines with line ends
   */
  public static String of(UnitSystem units) {
    TablesText text = new TablesText(units);
    text.friction();
    text.soil();
    text.title("Anchors");
    AnchorTable.rows().forEach(text::cited);
    text.title("Ladders");
    LadderRules.rows().forEach(text::cited);
    return text.page.toString();
  }

  private void title(String words) {
    page.title(words, '=');
    source = "";
  }

  private void friction() {
    title("Friction");
    page.paragraph(
        "In a file: friction: {table: NAME, take: lowest}, or highest; take only where there is a"
            + " range.");
    for (FrictionRow row : FrictionTable.rows()) {
      source(row.source(), row.basis(), row.note());
      String kinetic =
          row.kineticFriction().map(span -> "; kinetic " + value(span, Unit.parse(""))).orElse("");
      page.item(row.name() + ": " + value(row.staticFriction(), Unit.parse("")) + kinetic);
    }
  }

  private void soil() {
    title("Soil");
    page.paragraph("What the ground is allowed to bear. In a file: ground: {foot: {soil: NAME}}.");
    for (SoilRow row : SoilTable.rows()) {
      source(row.source(), row.basis(), row.note());
      page.item(row.name() + ": " + value(row.pressure(), unit(Dimension.PRESSURE)));
    }
  }

  private void cited(CitedValue row) {
    source(row.source(), row.basis(), row.note());
    page.item(row.name() + ": " + value(row.value(), unit(row.dimension())));
  }

  /** A source is said once, over its rows. */
  private void source(String from, Basis basis, String note) {
    String words =
        "Source: "
            + from
            + (basis == Basis.FROM_MEMORY ? " (from memory)" : "")
            + (note.isEmpty() ? "" : ". " + note);
    if (!words.equals(source)) {
      page.heading(words);
      source = words;
    }
  }

  /** The unit in which the ground is usually told, for the one of the system. */
  private Unit unit(Dimension dimension) {
    Unit unit = units.unit(dimension);
    return switch (unit.symbol()) {
      case "Pa" -> Unit.parse("kPa");
      case "psi" -> Unit.parse("psf");
      default -> unit;
    };
  }

  private static String value(Span span, Unit unit) {
    String high = number(span.high(), unit);
    String symbol = unit.symbol().isEmpty() ? "" : Wrapping.UNBROKEN + unit.symbol();
    return (span.isSingle() ? "" : number(span.low(), unit) + " to ") + high + symbol;
  }

  private static String number(double si, Unit unit) {
    String text = new Quantity(si, unit.dimension()).format(unit, DIGITS);
    int blank = text.indexOf(' ');
    String number = blank < 0 ? text : text.substring(0, blank);
    return number.contains(".") ? number.replaceAll("\\.?0+$", "") : number;
  }
}
