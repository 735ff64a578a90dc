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
import bellcrank.statics.strength.LineRow;
import bellcrank.statics.strength.LineTable;
import bellcrank.statics.strength.MaterialRow;
import bellcrank.statics.strength.MaterialStep;
import bellcrank.statics.strength.MaterialTable;
import bellcrank.statics.strength.RuleOfThumb;
import bellcrank.statics.strength.StressTable;
import bellcrank.statics.strength.WeldTable;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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
    text.materials();
    text.lines();
    text.title("Welds");
    WeldTable.rows().forEach(text::strength);
    text.title("Pins and columns");
    StressTable.rows().forEach(text::strength);
    text.superseded();
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

  private void materials() {
    title("Materials");
    MaterialTable.rows().forEach(this::material);
    MaterialTable.constants().forEach(this::strength);
  }

  private void material(MaterialRow row) {
    source(row.source(), row.basis(), row.note());
    page.item(
        row.name() + ": " + row.steps().stream().map(this::step).collect(Collectors.joining("; ")));
  }

  private String step(MaterialStep step) {
    String bound =
        step.upTo().map(most -> "up to " + value(Span.of(most), thickness()) + ", ").orElse("");
    return bound
        + step.strengths().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(entry -> entry.getKey().words() + " " + value(entry.getValue(), stress()))
            .collect(Collectors.joining(", "));
  }

  private void lines() {
    title("Lines and fittings");
    page.paragraph(
        "Working loads for a straight pull. The tag or certificate of the piece goes before them.");
    LineTable.rows().forEach(this::line);
    LineTable.factors().forEach(this::strength);
    title("Rules of thumb");
    page.paragraph("For pieces without a tag. Rough, and apart from the tables.");
    for (RuleOfThumb rule : List.of(RuleOfThumb.values())) {
      source(rule.source(), Basis.PRINTED, "");
      page.item(rule.formula() + ". " + rule.caution());
    }
  }

  private void line(LineRow row) {
    source(row.source(), row.basis(), row.note());
    Unit force = units.unit(Dimension.FORCE);
    String breaking =
        row.breakingStrength()
            .map(most -> "; breaking strength " + value(Span.of(most), force))
            .orElse("");
    page.item(row.name() + ": " + value(Span.of(row.workingLoad()), force) + breaking);
  }

  private void superseded() {
    title("Superseded");
    page.paragraph("To be recognised where they are met; nothing takes them.");
    MaterialTable.superseded().forEach(this::material);
    LineTable.superseded().forEach(this::line);
    StressTable.superseded().forEach(this::strength);
  }

  private void strength(CitedValue row) {
    source(row.source(), row.basis(), row.note());
    Unit unit = row.dimension() == Dimension.PRESSURE ? stress() : units.unit(row.dimension());
    page.item(row.name() + ": " + value(row.value(), unit));
  }

  private Unit thickness() {
    Unit unit = units.unit(Dimension.LENGTH);
    return switch (unit.symbol()) {
      case "m" -> Unit.parse("mm");
      case "ft" -> Unit.parse("in");
      default -> unit;
    };
  }

  private Unit stress() {
    Unit unit = units.unit(Dimension.PRESSURE);
    return switch (unit.symbol()) {
      case "Pa" -> Unit.parse("MPa");
      case "psi" -> Unit.parse("ksi");
      default -> unit;
    };
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
