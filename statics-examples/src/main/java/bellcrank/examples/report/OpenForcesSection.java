package bellcrank.examples.report;

import bellcrank.statics.limits.Range;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.OptionalDouble;

/** The table of forces that statics leaves open, between which values they lie. */
final class OpenForcesSection {

  /** Rows beyond this number are only counted. */
  private static final int MOST_ROWS = 30;

  private OpenForcesSection() {}

  static void write(Page page, List<OpenForce> forces, Amounts amounts) {
    if (forces.isEmpty()) {
      return;
    }
    Table table =
        new Table()
            .column("force", Table.Kind.WORDS)
            .column("from", Table.Kind.NUMBERS)
            .column("to", Table.Kind.NUMBERS)
            .column("assumed *", Table.Kind.NUMBERS);
    for (OpenForce force : forces.subList(0, Math.min(MOST_ROWS, forces.size()))) {
      Range range = force.range();
      table.row(
          List.of(
              force.ask().text(),
              end(range.least(), range.dimension(), amounts),
              end(range.greatest(), range.dimension(), amounts),
              force
                  .withLeastForces()
                  .map(value -> amounts.text(value.si(), value.dimension()))
                  .orElse("")));
    }
    page.heading("Forces that equilibrium leaves open");
    page.table(table);
    int more = forces.size() - MOST_ROWS;
    if (more > 0) {
      page.item("and " + more + " more");
    }
    page.item(
        "* in the state with the least pushes and pulls: an assumption on how the parts were put"
            + " together, not something that statics knows");
  }

  private static String end(OptionalDouble end, Dimension dimension, Amounts amounts) {
    return end.isPresent() ? amounts.text(end.getAsDouble(), dimension) : "no end";
  }
}
