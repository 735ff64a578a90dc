package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Reaction;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** The table of what pins, supports, contacts and ropes do to their bodies. */
final class ReactionsSection {

  private static final String HEADING = "Forces of the connections on the bodies";
  private static final String NOT_FIXED = "not fixed";

  private final Amounts amounts;
  private final BrokenMark mark;
  private final List<Reaction> reactions;
  private final boolean couples;

  private ReactionsSection(Balance balance, Amounts amounts) {
    this.amounts = amounts;
    mark = BrokenMark.of(balance);
    reactions =
        balance.reactions().stream().filter(one -> !AxialParts.isStraight(one.kind())).toList();
    couples = reactions.stream().anyMatch(Reaction::hasCouple);
  }

  static void write(Page page, Balance balance, Amounts amounts) {
    new ReactionsSection(balance, amounts).write(page);
  }

  private void write(Page page) {
    if (reactions.isEmpty()) {
      return;
    }
    if (reactions.get(0).x() instanceof Answer.Unanswered none
        && none.reason() == Answer.Reason.NOT_DECIDED) {
      page.heading(HEADING);
      page.item("no answer: " + none.explanation());
      return;
    }
    Table table =
        new Table()
            .column("connection", Table.Kind.WORDS)
            .column("on", Table.Kind.WORDS)
            .column(amounts.head("x", Dimension.FORCE), Table.Kind.NUMBERS)
            .column(amounts.head("y", Dimension.FORCE), Table.Kind.NUMBERS)
            .column(amounts.head("size", Dimension.FORCE), Table.Kind.NUMBERS)
            .column("direction", Table.Kind.WORDS);
    if (couples) {
      table.column(amounts.head("couple", Dimension.MOMENT), Table.Kind.NUMBERS);
    }
    for (Reaction reaction : reactions) {
      table.row(row(reaction, mark.name(reaction.connection()), reaction.body(), 1));
      if (reaction.count() > 1) {
        table.row(row(reaction, "", "each of " + reaction.count(), reaction.count()));
      }
    }
    page.heading(HEADING + " (angles from the horizontal)");
    page.table(table);
    mark.note(page, reactions.stream().anyMatch(one -> mark.isBroken(one.connection())));
  }

  private List<String> row(Reaction reaction, String name, String on, int share) {
    List<String> cells = new ArrayList<>(List.of(name, on));
    cells.add(number(reaction.x(), share));
    cells.add(number(reaction.y(), share));
    cells.add(number(reaction.size(), share));
    cells.add(direction(reaction));
    if (couples) {
      cells.add(reaction.hasCouple() ? number(reaction.couple(), share) : "");
    }
    return cells;
  }

  private String number(Answer answer, int share) {
    return answer instanceof Answer.Value value
        ? amounts.number(value.si() / share, value.dimension())
        : NOT_FIXED;
  }

  private String direction(Reaction reaction) {
    if (reaction.x() instanceof Answer.Value x && reaction.y() instanceof Answer.Value y) {
      boolean none = amounts.isZero(Math.hypot(x.si(), y.si()), Dimension.FORCE);
      return none ? "" : DirectionWords.of(x.si(), y.si());
    }
    return "not fixed by statics";
  }
}
