package bellcrank.examples.report;

import bellcrank.examples.file.Driving;
import bellcrank.statics.device.Load;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.Crossing;
import bellcrank.statics.strength.Rule;
import bellcrank.statics.strength.TravelCapacity.Worst;
import bellcrank.statics.units.UnitSystem;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a sizing says as JSON. */
final class StrengthJson {

  private final JsonPage page;
  private final StrengthAnswer answer;
  private final Balance balance;
  private final GivingWayJson ways;

  StrengthJson(
      JsonPage page, StrengthAnswer answer, Balance balance, JsonPage.Element<Freedom> motion) {
    this.page = page;
    this.answer = answer;
    this.balance = balance;
    ways = new GivingWayJson(page, motion);
  }

  void write() {
    page.object(
        "method",
        () -> {
          page.text("kind", answer.sizing().method().name().toLowerCase(Locale.ROOT));
          page.text("words", answer.sizing().method().words());
        });
    page.texts("driving", answer.driving().map(this::loads).orElse(List.of()));
    page.texts("loads", answer.checks().loads());
    page.truth("overTravel", answer.travel().isPresent());
    page.list("ranked", answer.ranked(), row -> page.object(() -> row(row)));
    page.list("checks", answer.checks().checked(), one -> page.object(() -> check(one)));
    page.list(
        "notChecked",
        answer.notChecked(),
        one ->
            page.object(
                () -> {
                  page.text("part", one.part());
                  page.text("check", one.what());
                  page.text("why", one.why());
                }));
    page.texts("remarks", answer.remarks());
    page.list("rules", rules(), rule -> page.object(() -> rule(rule)));
    page.list(
        "sources",
        List.copyOf(StrengthSources.of(answer.sizing()).entrySet()),
        one ->
            page.object(
                () -> {
                  page.text("name", one.getKey());
                  page.text("source", one.getValue());
                }));
  }

  private List<String> loads(Driving driving) {
    Set<String> varied = driving.variation().varied(balance.device());
    return balance.device().loads().stream().map(Load::name).filter(varied::contains).toList();
  }

  private void row(StrengthAnswer.Row row) {
    page.number("multiple", row.crossing().multiple());
    if (row.crossing() instanceof Crossing.Used used) {
      page.text("kind", "check");
      page.text("certainty", used.certainty().name().toLowerCase(Locale.ROOT));
      page.object("stated", () -> check(used.stated()));
      page.object("reached", () -> check(used.reached()));
      page.nothing("how");
    } else {
      page.text("kind", "gives way");
      page.nothing("certainty");
      page.nothing("stated");
      page.nothing("reached");
      ways.how("how", Optional.of(((Crossing.GivesWay) row.crossing()).at().how()));
    }
    if (row.worst().isPresent()) {
      Worst worst = row.worst().get();
      page.number("driven", worst.drive());
      page.number("share", worst.share());
    } else {
      page.nothing("driven");
      page.nothing("share");
    }
    page.list(
        "told",
        answer.driving().orElseThrow().tell(),
        ask ->
            page.object(
                () -> {
                  page.text("ask", ask.text());
                  page.answer("answer", answer.told().apply(ask, row));
                }));
  }

  private void check(Checked one) {
    page.text("part", one.part());
    page.text("check", one.what());
    page.text("place", one.place());
    page.number("utilisation", one.utilisation());
    page.number("demand", one.demand());
    page.number("resistance", one.resistance());
    page.text("quantity", ReportJson.name(one.dimension()));
    page.text("rule", one.rule().check().name());
    page.number("factor", one.factor().value());
    page.text("meaning", one.factor().meaning());
    page.text("working", one.working(UnitSystem.SI));
  }

  private List<Rule<?>> rules() {
    Set<Rule<?>> used = new LinkedHashSet<>();
    answer.checks().checked().forEach(one -> used.add(one.rule()));
    answer
        .ranked()
        .forEach(
            row -> {
              if (row.crossing() instanceof Crossing.Used one) {
                used.add(one.reached().rule());
              }
            });
    return List.copyOf(used);
  }

  private void rule(Rule<?> rule) {
    page.text("name", rule.check().name());
    page.text("formula", rule.formula());
    page.text("source", rule.source());
  }
}
