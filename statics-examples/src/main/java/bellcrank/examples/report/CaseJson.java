package bellcrank.examples.report;

import bellcrank.examples.file.Expectation;
import bellcrank.examples.file.Expected;
import bellcrank.examples.file.StrengthAsk;
import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Advantage;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.equilibrium.Mobility;
import bellcrank.statics.equilibrium.NearCritical;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/** The answers for one case as JSON. */
final class CaseJson {

  private final JsonPage page;
  private final CaseAnswer answer;
  private final Optional<LimitsAnswer> limits;
  private final Optional<SideAnswer> side;
  private final Balance balance;

  CaseJson(
      JsonPage page, CaseAnswer answer, Optional<LimitsAnswer> limits, Optional<SideAnswer> side) {
    this.page = page;
    this.answer = answer;
    this.limits = limits;
    this.side = side;
    balance = answer.balance();
  }

  void write() {
    loadCase();
    outcome();
    limits();
    side();
    strength();
    new ForcesJson(page, balance).write();
    new InsideJson(page, balance).write();
    advantage();
    page.list("freedoms", balance.freedoms(), this::freedom);
    mobility(balance.mobility());
    page.texts("undetermined", balance.undetermined().stream().map(Ask::text).toList());
    page.whole("redundancy", balance.redundancy());
    nearCritical();
    page.list("asks", answer.answers(), this::ask);
    page.list("expectations", answer.checks(), this::expectation);
    residual();
    page.number("condition", balance.condition());
  }

  private void residual() {
    if (balance.outcome() instanceof Outcome.NoBalance) {
      page.unanswered("residual", Answer.Reason.NO_BALANCE, "there are no forces that could close");
    } else if (balance.outcome() instanceof Outcome.NotDecided) {
      page.unanswered("residual", Answer.Reason.NOT_DECIDED, "the forces lie within a range");
    } else {
      page.number("residual", balance.residual());
    }
  }

  private void loadCase() {
    page.object(
        "case",
        () -> {
          page.text("name", balance.loadCase().name());
          page.object("factors", () -> balance.loadCase().factors().forEach(page::number));
          page.number("dynamic", balance.loadCase().dynamic());
        });
  }

  private void outcome() {
    page.object(
        "outcome",
        () -> {
          page.text("kind", balance.outcome().words());
          page.text("words", OutcomeWords.of(balance, UnitSystem.SI));
          if (balance.outcome() instanceof Outcome.NoBalance none) {
            page.object("driven", () -> fields(none.driven()));
          } else {
            page.nothing("driven");
          }
          page.texts(
              "parts",
              balance.outcome() instanceof Outcome.NotDecided open ? open.parts() : List.of());
        });
  }

  private void limits() {
    if (limits.isPresent()) {
      Amounts si = Amounts.of(UnitSystem.SI, balance);
      String words =
          VerdictWords.of(limits.get(), balance.device(), si, UnitSystem.SI)
              .replace(Wrapping.UNBROKEN, ' ');
      page.object("limits", () -> new LimitsJson(page, limits.get(), words, this::fields).write());
    } else {
      page.nothing("limits");
    }
  }

  private void side() {
    if (side.isPresent()) {
      page.object("side", () -> new SideJson(page, side.get(), this::fields).write());
    } else {
      page.nothing("side");
    }
  }

  private void strength() {
    answer
        .solution()
        .strength()
        .ifPresent(
            one ->
                page.object(
                    "strength", () -> new StrengthJson(page, one, balance, this::fields).write()));
  }

  private void advantage() {
    if (balance.device().advantage().isEmpty() || balance.advantage().isEmpty()) {
      page.nothing("advantage");
      return;
    }
    Advantage advantage = balance.advantage().get();
    page.object(
        "advantage",
        () -> {
          page.text("effort", balance.device().advantage().get().effort());
          page.text("resistance", balance.device().advantage().get().resistance());
          page.answer("ideal", advantage.idealAnswer());
          page.answer("actual", advantage.actualAnswer());
        });
  }

  private void mobility(Mobility mobility) {
    page.object(
        "mobility",
        () -> {
          page.list("freedoms", mobility.freedoms(), this::freedom);
          page.whole("critical", mobility.criticalCount());
        });
  }

  private void freedom(Freedom freedom) {
    page.object(() -> fields(freedom));
  }

  private void fields(Freedom freedom) {
    page.text("words", freedom.words());
    page.truth("critical", freedom.critical());
    page.list("motions", freedom.motions(), this::motion);
  }

  private void motion(BodyMotion motion) {
    page.object(
        () -> {
          page.text("body", motion.body());
          page.number("turning", motion.turning());
          page.vector("velocity", motion.velocity());
          page.point("reference", motion.reference());
          if (motion.centre().isPresent()) {
            page.point("centre", motion.centre().get());
          } else {
            page.nothing("centre");
          }
        });
  }

  private void nearCritical() {
    if (balance.nearCritical().isEmpty()) {
      page.nothing("nearCritical");
      return;
    }
    NearCritical found = balance.nearCritical().get();
    page.object(
        "nearCritical",
        () -> {
          page.text("point", found.point());
          page.number("move", found.move());
          page.number("change", found.change());
        });
  }

  private void ask(CaseAnswer.Answered one) {
    page.object(
        () -> {
          page.text("ask", one.ask().text());
          page.answer("answer", one.answer());
          kind(one.answer());
        });
  }

  private void kind(Answer found) {
    if (found instanceof Answer.Value value) {
      page.text("quantity", ReportJson.name(value.dimension()));
    } else {
      page.nothing("quantity");
    }
  }

  private void expectation(Checked checked) {
    Expectation expectation = checked.expectation();
    page.object(
        () -> {
          page.text("ask", StrengthAsk.text(expectation.ask()));
          if (expectation.value() instanceof Expected.Amount amount) {
            page.number("expected", amount.quantity().si());
            page.whole("digits", expectation.digits());
          } else {
            page.text("expected", ((Expected.Words) expectation.value()).text());
            page.nothing("digits");
          }
          page.answer("found", checked.found());
          kind(checked.found());
          page.number("allowed", checked.allowed());
          page.truth("holds", checked.holds());
          page.text("source", expectation.source());
          page.text("printed", expectation.printed());
          page.text("reason", expectation.reason());
        });
  }
}
