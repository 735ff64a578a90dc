package bellcrank.examples.report;

import bellcrank.statics.device.Member;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.equilibrium.InsideForce;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The tables of normal force, shear force and bending moment inside the members. */
final class InsideSection {

  private static final String NOT_TOLD = "not told";

  private final Balance balance;
  private final Amounts amounts;

  private InsideSection(Balance balance, Amounts amounts) {
    this.balance = balance;
    this.amounts = amounts;
  }

  static void write(Page page, Balance balance, Amounts amounts) {
    Outcome outcome = balance.outcome();
    if (!(outcome instanceof Outcome.NoBalance || outcome instanceof Outcome.NotDecided)) {
      new InsideSection(balance, amounts).write(page);
    }
  }

  private void write(Page page) {
    Table table =
        new Table()
            .column("member, bar", Table.Kind.WORDS)
            .column(amounts.head("at", Dimension.LENGTH), Table.Kind.NUMBERS)
            .column("", Table.Kind.WORDS)
            .column(amounts.head("N", Dimension.FORCE), Table.Kind.NUMBERS)
            .column(amounts.head("V", Dimension.FORCE), Table.Kind.NUMBERS)
            .column(amounts.head("M", Dimension.MOMENT), Table.Kind.NUMBERS);
    Set<String> notes = new LinkedHashSet<>();
    boolean some = false;
    for (Member member : balance.device().members()) {
      String name = member.count() > 1 ? member.name() + ", all " + member.count() : member.name();
      for (BarForces bar : balance.internalForces(member.name()).bars()) {
        for (InsideForce force : InsideForce.values()) {
          bar.unresolved(force).ifPresent(notes::add);
        }
        if (bar.unresolved().isEmpty() && carries(bar)) {
          some = true;
          add(table, name, bar);
          name = "";
        }
      }
    }
    if (!some && notes.isEmpty()) {
      return;
    }
    page.heading("Forces inside the members (N pulls, V and M as seen along the bar)");
    if (some) {
      page.table(table);
    }
    notes.forEach(note -> page.item(NOT_TOLD + ": " + note));
  }

  private boolean carries(BarForces bar) {
    for (InsideForce force : InsideForce.values()) {
      if (bar.unresolved(force).isPresent()
          || !amounts.isZero(bar.extremes(force).largest().value(), force.dimension())) {
        return true;
      }
    }
    return false;
  }

  private void add(Table table, String member, BarForces bar) {
    String name = bar.bar().start() + "–" + bar.bar().end();
    String first = member.isEmpty() ? name : member + ": " + name;
    for (InsideRows.Row row : InsideRows.of(bar, amounts)) {
      List<String> cells = new ArrayList<>(List.of(first));
      cells.add(amounts.number(row.at(), Dimension.LENGTH));
      cells.add(row.words());
      for (InsideForce force : InsideForce.values()) {
        cells.add(
            bar.unresolved(force).isPresent()
                ? NOT_TOLD
                : amounts.number(bar.value(force, row.at(), row.side()), force.dimension()));
      }
      table.row(cells);
      first = "";
    }
  }
}
