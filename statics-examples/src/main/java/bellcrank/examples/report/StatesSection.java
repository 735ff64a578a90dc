package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.limits.PartState;
import bellcrank.statics.limits.Range;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.OptionalDouble;

/** The table of what parts that only push, only pull or rub do, and how much friction they need. */
final class StatesSection {

  private final CaseSolution solution;
  private final Device device;
  private final Amounts amounts;

  private StatesSection(CaseSolution solution, Amounts amounts) {
    this.solution = solution;
    device = solution.balance().device();
    this.amounts = amounts;
  }

  static void write(Page page, List<PartState> states, CaseSolution solution, Amounts amounts) {
    StatesSection section = new StatesSection(solution, amounts);
    if (states.stream().anyMatch(section::saysMore)) {
      section.write(page, states);
    }
  }

  /** Whether the tables of forces do not say it all: what simply carries is told there. */
  private boolean saysMore(PartState state) {
    return state.state() != PartState.State.CARRIES
        || !state.force().isOne()
        || coefficient(state) > 0;
  }

  private void write(Page page, List<PartState> states) {
    boolean rough = states.stream().anyMatch(state -> coefficient(state) > 0);
    Table table =
        new Table()
            .column("part", Table.Kind.WORDS)
            .column("state", Table.Kind.WORDS)
            .column(amounts.head("push or pull", Dimension.FORCE), Table.Kind.NUMBERS);
    if (rough) {
      table.column("needs μ", Table.Kind.NUMBERS).column("has μ", Table.Kind.NUMBERS);
    }
    for (PartState state : states) {
      List<String> start = List.of(state.part(), state.state().words(), force(state.force()));
      table.row(
          rough
              ? List.of(start.get(0), start.get(1), start.get(2), needed(state), has(state))
              : start);
    }
    page.heading("Parts that can only push or pull");
    page.table(table);
  }

  private String force(Range range) {
    double least = range.least().orElse(0);
    if (range.isOne() || range.greatest().isEmpty()) {
      String more = range.greatest().isEmpty() ? " or more" : "";
      return amounts.number(least, Dimension.FORCE) + more;
    }
    return amounts.number(least, Dimension.FORCE)
        + " to "
        + amounts.number(range.greatest().getAsDouble(), Dimension.FORCE);
  }

  private String needed(PartState state) {
    if (coefficient(state) == 0
        || state.state() == PartState.State.OPEN
        || state.state() == PartState.State.SLACK) {
      return "";
    }
    OptionalDouble normal = number(state.part(), Measure.NORMAL);
    OptionalDouble friction = number(state.part(), Measure.FRICTION);
    if (normal.isEmpty() || friction.isEmpty() || !(normal.getAsDouble() > 0)) {
      return "open";
    }
    double shear = Math.abs(friction.getAsDouble());
    return amounts.isZero(shear, Dimension.FORCE)
        ? "none"
        : amounts.number(shear / normal.getAsDouble(), Dimension.NUMBER);
  }

  private OptionalDouble number(String part, Measure measure) {
    return solution.answer(Ask.of(part, measure)) instanceof Answer.Value value
        ? OptionalDouble.of(value.si())
        : OptionalDouble.empty();
  }

  private String has(PartState state) {
    double coefficient = coefficient(state);
    return coefficient > 0 ? CaseWords.number(coefficient) : "";
  }

  /** Friction of a contact; what only the ground holds back has none of its own. */
  private double coefficient(PartState state) {
    Connection connection = device.connection(state.part()).orElse(null);
    double friction =
        connection instanceof Contact contact
            ? contact.friction()
            : connection instanceof ContactBase base ? base.friction() : 0;
    return friction > Double.MIN_NORMAL ? friction : 0;
  }
}
