package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Screw;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.Dimension;
import java.util.List;

/** The table of what pulls and pushes along its own line: struts, lines, screws and ropes. */
final class AxialSection {

  private static final String HEADING = "Struts, lines and ropes";

  private final Balance balance;
  private final Amounts amounts;
  private final BrokenMark mark;

  private AxialSection(Balance balance, Amounts amounts) {
    this.balance = balance;
    this.amounts = amounts;
    mark = BrokenMark.of(balance);
  }

  static void write(Page page, Balance balance, Amounts amounts) {
    new AxialSection(balance, amounts).write(page);
  }

  private void write(Page page) {
    List<AxialParts.Part> parts = AxialParts.of(balance.device());
    if (parts.isEmpty()) {
      return;
    }
    page.heading(HEADING);
    if (answer(parts.get(0).connection(), Measure.TENSION) instanceof Answer.Unanswered none
        && none.reason() == Answer.Reason.NOT_DECIDED) {
      page.item("no answer: " + none.explanation());
      return;
    }
    page.table(table(parts));
    mark.note(page, parts.stream().anyMatch(part -> mark.isBroken(part.connection().name())));
  }

  private Table table(List<AxialParts.Part> parts) {
    Table table =
        new Table()
            .column("part", Table.Kind.WORDS)
            .column("kind", Table.Kind.WORDS)
            .column(amounts.head("force", Dimension.FORCE), Table.Kind.NUMBERS)
            .column("what it does", Table.Kind.WORDS);
    for (AxialParts.Part part : parts) {
      Connection connection = part.connection();
      row(table, part, connection.name(), Measure.TENSION, "");
      if (part.isRope() && differs(connection)) {
        row(table, part, "", Measure.END_TENSION, " at its last end");
      }
      if (connection instanceof Screw) {
        turning(table, connection, Measure.RAISING, "turns it against the load");
        turning(table, connection, Measure.LOWERING, "turns it with the load");
      }
    }
    return table;
  }

  private Answer answer(Connection connection, Measure measure) {
    return balance.answer(Ask.of(connection.name(), measure));
  }

  /** Whether a rope pulls differently at its two ends. */
  private boolean differs(Connection rope) {
    return answer(rope, Measure.TENSION) instanceof Answer.Value first
        && answer(rope, Measure.END_TENSION) instanceof Answer.Value last
        && !amounts.isZero(first.si() - last.si(), Dimension.FORCE);
  }

  private void row(Table table, AxialParts.Part part, String name, Measure measure, String where) {
    Connection connection = part.connection();
    String kind = name.isEmpty() ? "" : connection.kind();
    if (!(answer(connection, measure) instanceof Answer.Value value)) {
      table.row(List.of(name, kind, "not fixed", "not fixed by statics" + where));
      return;
    }
    double size = Math.abs(value.si());
    boolean push = value.si() < 0 && mark.isBroken(connection.name());
    String does = (push ? "would have to push" : does(value.si())) + where;
    table.row(
        List.of(
            name.isEmpty() ? "" : mark.name(name),
            kind,
            amounts.number(size, Dimension.FORCE),
            does));
    if (part.count() > 1) {
      String share = amounts.number(size / part.count(), Dimension.FORCE);
      table.row(List.of("", "", share, "each of " + part.count()));
    }
  }

  private String does(double tension) {
    if (amounts.isZero(tension, Dimension.FORCE)) {
      return "carries nothing";
    }
    return tension > 0 ? "pulls (tension)" : "pushes (compression)";
  }

  private void turning(Table table, Connection screw, Measure measure, String does) {
    if (answer(screw, measure) instanceof Answer.Value couple) {
      String text = amounts.text(couple.si(), Dimension.MOMENT);
      table.row(List.of("", "", "", text + " " + does));
    }
  }
}
