package bellcrank.examples.report;

import bellcrank.examples.file.TravelPlan;
import bellcrank.statics.device.Side;
import bellcrank.statics.study.Combinations.Combination;
import bellcrank.statics.study.Envelope;
import bellcrank.statics.study.Influence;
import bellcrank.statics.study.InfluenceLine;
import bellcrank.statics.study.Train;
import bellcrank.statics.study.Variants;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Variants side by side, extremes over combinations, and what moving loads do. */
final class CombinedSection {

  /** Share of the larger extreme below which a value is rounding. */
  private static final double ROUNDING = 1e-11;

  private final StudyValues values;
  private final Optional<TravelPlan> travel;

  private CombinedSection(UnitSystem units, Optional<TravelPlan> travel) {
    values = new StudyValues(units);
    this.travel = travel;
  }

  static void write(Page page, StudyAnswer answer, Optional<TravelPlan> travel, UnitSystem units) {
    CombinedSection section = new CombinedSection(units, travel);
    answer.variants().ifPresent(one -> section.variants(page, one));
    answer.combined().ifPresent(one -> section.combined(page, one));
    answer.moved().forEach(one -> section.moved(page, one));
  }

  private void variants(Page page, Variants variants) {
    page.heading("Variants");
    Table table = new Table().column("answer", Table.Kind.WORDS);
    variants.names().forEach(name -> table.column(name, Table.Kind.WORDS));
    for (Variants.Row row : variants.rows()) {
      List<String> cells = new ArrayList<>(List.of(row.compared().figure().text()));
      row.cells().forEach(cell -> cells.add(cell(cell)));
      table.row(cells);
    }
    page.table(table);
  }

  private String cell(Variants.Cell cell) {
    List<String> words = new ArrayList<>(List.of(values.text(cell.answer())));
    cell.words().map(StudyValues::kept).ifPresent(words::add);
    if (cell.mark() != Variants.Mark.NONE) {
      words.add(cell.mark().word());
    }
    return String.join(", ", words);
  }

  private void combined(Page page, StudyAnswer.Combined combined) {
    page.heading("Combinations of loads");
    Set<String> deciding = new HashSet<>();
    for (Envelope.Row row : combined.envelope().rows()) {
      row.least().ifPresent(one -> deciding.add(one.loadCase()));
      row.greatest().ifPresent(one -> deciding.add(one.loadCase()));
    }
    page.item(Listing.count(combined.all().size(), "combination") + "; those that decide:");
    for (Combination one : combined.all()) {
      if (deciding.contains(one.loadCase().name())) {
        page.subitem(
            one.loadCase().name()
                + ": "
                + one.taken().stream()
                    .map(taken -> taken.group() + " " + taken.role().word())
                    .collect(Collectors.joining(", ")));
      }
    }
    page.heading(
        combined.envelope().trips().isEmpty()
            ? "Least and greatest over the combinations"
            : "Least and greatest over the combinations and the travel");
    Table table =
        new Table()
            .column("answer", Table.Kind.WORDS)
            .column("least", Table.Kind.NUMBERS)
            .column("where", Table.Kind.WORDS)
            .column("greatest", Table.Kind.NUMBERS)
            .column("where", Table.Kind.WORDS);
    boolean some = false;
    for (Envelope.Row row : combined.envelope().rows()) {
      if (row.least().isPresent() && row.greatest().isPresent()) {
        Envelope.Extreme least = row.least().get();
        Envelope.Extreme greatest = row.greatest().get();
        Dimension dimension = row.dimension().orElse(Dimension.NUMBER);
        double size = Math.max(Math.abs(least.value()), Math.abs(greatest.value()));
        table.row(
            List.of(
                row.ask().text(),
                values.text(clean(least.value(), size), dimension),
                where(least),
                values.text(clean(greatest.value(), size), dimension),
                where(greatest)));
        some = true;
      }
    }
    if (some) {
      page.table(table);
    }
    for (Envelope.Row row : combined.envelope().rows()) {
      for (Envelope.Missing one : row.missing()) {
        page.item(row.ask().text() + " has no answer in " + one.loadCase() + ": " + one.why());
      }
    }
  }

  private String where(Envelope.Extreme extreme) {
    if (extreme.drive().isEmpty() || travel.isEmpty()) {
      return extreme.loadCase();
    }
    return extreme.loadCase()
        + ", driven by "
        + values.text(extreme.drive().getAsDouble(), travel.get().dimension());
  }

  private void moved(Page page, StudyAnswer.Moved moved) {
    List<String> along = moved.plan().along();
    String start = along.get(0);
    page.heading(
        "Moving load "
            + Listing.quoted(moved.plan().name())
            + ", along "
            + String.join("–", along)
            + " ("
            + values.text(moved.load().length(), Dimension.LENGTH)
            + ")");
    for (Influence one : moved.influences()) {
      if (one instanceof InfluenceLine line) {
        List<Train.Passage> ends = moved.extremes(line);
        double size =
            Math.max(Math.abs(ends.get(0).at().value()), Math.abs(ends.get(1).at().value()));
        page.item(
            line.ask().text()
                + " is least, "
                + passage(ends.get(0), line, size, start)
                + ", and greatest, "
                + passage(ends.get(1), line, size, start)
                + ".");
        page.subitem("influence line, per unit of load: " + ordinates(line));
      } else if (one instanceof Influence.None none) {
        page.item(one.ask().text() + " has no influence line: " + none.why().explanation());
      }
    }
  }

  private String passage(Train.Passage passage, InfluenceLine line, double size, String start) {
    InfluenceLine.Extreme at = passage.at();
    String side =
        at.side().map(one -> one == Side.BEFORE ? "just before " : "just after ").orElse("");
    List<String> places = new ArrayList<>();
    for (double wheel : passage.wheels()) {
      if (wheel >= 0 && wheel <= line.length()) {
        places.add(values.text(wheel, Dimension.LENGTH));
      }
    }
    int all = passage.wheels().size();
    return values.text(clean(at.value(), size), line.dimension())
        + ", with "
        + (all == 1 ? "the load " : places.size() == 1 ? "one wheel " : "the wheels ")
        + (places.isEmpty() ? "off the way" : side + Listing.of(places) + " from " + start)
        + (places.isEmpty() || places.size() == all
            ? ""
            : all - places.size() == 1 ? " and one off the way" : " and the others off the way");
  }

  private String ordinates(InfluenceLine line) {
    List<String> parts = new ArrayList<>();
    for (double corner : line.corners()) {
      String place = " at " + values.text(corner, Dimension.LENGTH);
      boolean inside = corner > 0 && corner < line.length();
      String before = ordinate(line.unit(corner, Side.BEFORE), line);
      String after = ordinate(line.unit(corner, Side.AFTER), line);
      if (inside && line.jumpsAt(corner)) {
        parts.add(
            before + " just before and " + after + " just after" + place.substring(" at".length()));
      } else {
        parts.add((inside ? before : corner == 0 ? after : before) + place);
      }
    }
    return String.join(", ", parts) + ", straight between";
  }

  /** A moment per newton is a length, a force per newton a number. */
  private String ordinate(double unit, InfluenceLine line) {
    double largest =
        line.pieces().stream()
            .mapToDouble(one -> Math.max(Math.abs(one.first()), Math.abs(one.last())))
            .max()
            .orElse(0);
    double shown = clean(unit, largest);
    return switch (line.dimension()) {
      case MOMENT -> values.text(shown, Dimension.LENGTH);
      case FORCE -> values.text(shown, Dimension.NUMBER);
      default -> values.text(shown, line.dimension());
    };
  }

  private static double clean(double value, double size) {
    return Math.abs(value) <= ROUNDING * size ? 0 : value;
  }
}
