package bellcrank.examples.report;

import bellcrank.examples.file.MeasuredLine;
import bellcrank.examples.file.WinchPlan;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.motion.Deflection;
import bellcrank.statics.motion.HandWinch;
import bellcrank.statics.motion.Handle;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Winches on lines of the device, and tensions that were estimated by a deflection. */
final class HaulSection {

  private final Page page;
  private final CaseSolution solution;
  private final Amounts amounts;

  private HaulSection(Page page, CaseSolution solution, Amounts amounts) {
    this.page = page;
    this.solution = solution;
    this.amounts = amounts;
  }

  static void write(
      Page page,
      List<WinchPlan> winches,
      List<MeasuredLine> lines,
      CaseSolution solution,
      Amounts amounts) {
    HaulSection section = new HaulSection(page, solution, amounts);
    winches.forEach(section::winch);
    if (!lines.isEmpty()) {
      page.heading("Tension of lines by their deflection");
      lines.forEach(section::line);
    }
  }

  private String length(double si) {
    return amounts.text(si, Dimension.LENGTH);
  }

  private String force(double si) {
    return amounts.text(si, Dimension.FORCE);
  }

  private void winch(WinchPlan plan) {
    page.heading("Winch: " + plan.name());
    WinchAnswer answer = WinchAnswer.of(plan, solution);
    if (answer.pull().isEmpty()) {
      page.item("pull in its line, " + plan.hauls().text() + ": not told: " + answer.why());
    } else {
      page.item(
          "pull in its line: "
              + plan.hauls().text()
              + " = "
              + force(answer.pull().getAsDouble())
              + ", as drawn");
    }
    String cycle = plan.hand().map(hand -> WinchAnswer.cycle(hand.handle())).orElse("turn");
    Table table = new Table();
    table.column("layer", Table.Kind.NUMBERS);
    table.column(amounts.head("radius", Dimension.LENGTH), Table.Kind.NUMBERS);
    table.column(amounts.head("holds", Dimension.LENGTH), Table.Kind.NUMBERS);
    table.column(amounts.head("per " + cycle, Dimension.LENGTH), Table.Kind.NUMBERS);
    String last = plan.hand().isPresent() ? "hand" : "can pull";
    boolean told = plan.hand().isEmpty() || answer.pull().isPresent();
    if (told) {
      table.column(amounts.head(last, Dimension.FORCE), Table.Kind.NUMBERS);
    }
    for (WinchAnswer.Layer layer : answer.layers()) {
      List<String> cells = new ArrayList<>();
      cells.add(Integer.toString(layer.number()));
      cells.add(amounts.number(layer.radius(), Dimension.LENGTH));
      cells.add(amounts.number(layer.holds(), Dimension.LENGTH));
      cells.add(amounts.number(layer.perCycle(), Dimension.LENGTH));
      layer.force().ifPresent(one -> cells.add(amounts.number(one, Dimension.FORCE)));
      table.row(cells);
    }
    page.table(table);
    plan.firstPull().ifPresent(pull -> enough(plan, answer));
    answer.haul().ifPresent(haul -> haul(plan, haul, cycle));
  }

  private void enough(WinchPlan plan, WinchAnswer answer) {
    OptionalDouble pull = answer.pull();
    if (pull.isPresent()) {
      int last = answer.lastStrongLayer();
      page.item(
          last == 0
              ? "it cannot pull that much on any layer"
              : last == plan.layers()
                  ? "it can pull that much on every layer told"
                  : "it can pull that much up to layer " + last + ", no further");
    }
  }

  private void haul(WinchPlan plan, HandWinch.Haul haul, String cycle) {
    page.item(
        "to haul in "
            + length(plan.length().orElseThrow())
            + ", with "
            + length(plan.wound())
            + " on the drum before and the same pull all the way: "
            + String.format(Locale.ROOT, "%.1f", haul.cycles())
            + " "
            + cycle
            + "s, the hand goes "
            + length(haul.handWay())
            + " with at most "
            + force(haul.greatestForce())
            + " and does "
            + amounts.text(haul.handWork(), Dimension.MOMENT)
            + ", of which "
            + amounts.text(haul.lineWork(), Dimension.MOMENT)
            + " reach the line");
    if (plan.hand().map(HandWinch::handle).orElseThrow() instanceof Handle.Lever) {
      page.item("a stroke is a working swing of the lever with its idle return");
    }
  }

  private void line(MeasuredLine line) {
    Deflection measured = line.deflection();
    Deflection.Estimate estimate = measured.estimate(line.errors());
    page.item(
        line.name()
            + ": "
            + force(estimate.tension())
            + " while it is deflected by "
            + length(measured.deflection())
            + (estimate.worstError() > 0
                ? "; give or take "
                    + force(estimate.likelyError())
                    + " if the errors of measuring are independent, "
                    + force(estimate.worstError())
                    + " if they all add up"
                : "; no error of measuring is stated"));
    line.stiffness()
        .ifPresent(
            stiffness ->
                page.subitem(
                    measured.tensionBefore(stiffness).stream()
                        .mapToObj(before -> force(before) + " before it was deflected")
                        .findFirst()
                        .orElse("it hung slack before it was deflected")));
    line.beside()
        .ifPresent(
            ask -> {
              Answer answer = solution.answer(ask);
              page.subitem(
                  "beside it, "
                      + ask.text()
                      + " = "
                      + AnswerWords.of(ask, answer, amounts, Amounts.DIGITS));
            });
  }
}
