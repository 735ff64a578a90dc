package bellcrank.examples.report;

import bellcrank.examples.file.TravelPlan;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.Crossing;
import bellcrank.statics.strength.Rule;
import bellcrank.statics.strength.TravelCapacity.Worst;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What gives first as loads grow, or how far the stated loads use each part. */
final class StrengthSection {

  /** No more than so much is told one by one. */
  private static final int MOST = 12;

  private static final int SHARE_DIGITS = 3;

  private final Page page;
  private final StrengthAnswer answer;
  private final Balance balance;
  private final Amounts amounts;
  private final UnitSystem units;

  /** The rules that are spoken of, each with its number. */
  private final Map<Rule<?>, Integer> rules = new LinkedHashMap<>();

  private StrengthSection(
      Page page, StrengthAnswer answer, Balance balance, Amounts amounts, UnitSystem units) {
    this.page = page;
    this.answer = answer;
    this.balance = balance;
    this.amounts = amounts;
    this.units = units;
  }

  static void write(
      Page page, StrengthAnswer answer, Balance balance, Amounts amounts, UnitSystem units) {
    new StrengthSection(page, answer, balance, amounts, units).write();
  }

  private void write() {
    page.heading(
        answer.driving().isPresent()
            ? "What gives first as "
                + names()
                + (loads().size() > 1 ? " grow" : " grows")
                + (answer.travel().isPresent() ? ", over the travel" : ", as drawn")
            : "How far the stated loads use each part");
    page.item("method: " + answer.sizing().method().words());
    answer.checks().loads().forEach(one -> page.item("loads: " + one));
    answer.remarks().forEach(page::item);
    if (answer.driving().isPresent()) {
      first();
      commonCertainty().ifPresent(words -> page.item("all multiples: " + words));
      answer.ranked().stream().limit(MOST).forEach(this::row);
      rest(answer.ranked().size(), "more that give later");
      never();
    } else {
      answer.checks().checked().stream().limit(MOST).forEach(this::used);
      rest(answer.checks().checked().size(), "more that are used less");
    }
    notChecked();
    sources();
  }

  private void rest(int all, String words) {
    if (all > MOST) {
      page.item("and " + (all - MOST) + " " + words);
    }
  }

  private List<String> loads() {
    Set<String> varied = answer.driving().orElseThrow().variation().varied(balance.device());
    return balance.device().loads().stream().map(Load::name).filter(varied::contains).toList();
  }

  private String names() {
    boolean all = answer.driving().orElseThrow().loads().isEmpty();
    return all && loads().size() > 1 ? "all loads but weights" : Listing.ofNames(loads());
  }

  private String number(double value) {
    return amounts.text(value, Dimension.NUMBER);
  }

  /** A number without zeros at its end. */
  private static String plain(double value) {
    return new BigDecimal(value)
        .round(new MathContext(Amounts.DIGITS))
        .stripTrailingZeros()
        .toPlainString();
  }

  private String percent(double share) {
    return amounts.text(share, Unit.parse("%"), SHARE_DIGITS);
  }

  private void first() {
    Optional<StrengthAnswer.Row> first = answer.ranked().stream().findFirst();
    if (first.isEmpty()) {
      page.item("nothing that is checked gives, however large");
      return;
    }
    String title =
        first.get().crossing() instanceof Crossing.GivesWay gives
            ? "the device gives way: " + gives.at().how().words(balance.device(), units)
            : title(first.get());
    page.item("first: " + title + ", " + at(first.get(), true));
    if (first.get().crossing() instanceof Crossing.Used used) {
      page.subitem("there " + used.reached().working(units));
    }
  }

  private String title(StrengthAnswer.Row row) {
    if (row.crossing() instanceof Crossing.GivesWay gives) {
      List<String> events =
          gives.at().how().events().stream().map(one -> one.part() + " " + one.words()).toList();
      return "the device gives way" + (events.isEmpty() ? "" : ": " + String.join(", ", events));
    }
    Checked stated = ((Crossing.Used) row.crossing()).reached();
    return stated.part()
        + ", "
        + stated.what()
        + (stated.place().isEmpty() ? "" : ", " + stated.place());
  }

  /** Multiple, sizes of the loads, what is told there, and the place on the way. */
  private String at(StrengthAnswer.Row row, boolean withAsks) {
    double multiple = row.crossing().multiple();
    List<String> sizes = new ArrayList<>();
    for (String load : loads()) {
      size(load)
          .ifPresent(
              size -> sizes.add(load + " " + amounts.text(size.si() * multiple, size.dimension())));
    }
    for (Ask ask : withAsks ? answer.driving().orElseThrow().tell() : List.<Ask>of()) {
      Answer told = answer.told().apply(ask, row);
      sizes.add(ask.text() + " " + AnswerWords.of(ask, told, amounts, Amounts.DIGITS));
    }
    String told = sizes.isEmpty() ? "" : " (" + String.join(", ", sizes) + ")";
    return "at " + number(multiple) + " times" + told + row.worst().map(this::place).orElse("");
  }

  private String place(Worst worst) {
    TravelPlan plan = answer.travel().orElseThrow();
    return ", "
        + percent(worst.share())
        + " of the travel ("
        + DriveWords.head(plan.drive())
        + " "
        + amounts.text(worst.drive(), plan.dimension())
        + ")";
  }

  private Optional<Answer.Value> size(String name) {
    Load load = balance.device().load(name).orElse(null);
    boolean turns = load instanceof Couple || load instanceof TorsionSpring;
    return balance.answer(Ask.of(name, turns ? Measure.COUPLE : Measure.SIZE))
            instanceof Answer.Value value
        ? Optional.of(value)
        : Optional.empty();
  }

  private void row(StrengthAnswer.Row row) {
    page.item(UsedBar.of(row.utilisation()) + " " + title(row));
    String certainty = commonCertainty().isPresent() ? "" : "; " + certainty(row);
    page.subitem(at(row, false) + certainty);
    if (row.crossing() instanceof Crossing.Used used) {
      page.subitem(rule(used.reached()));
    }
  }

  /** How sure all multiples are, if all are alike. */
  private Optional<String> commonCertainty() {
    List<String> all = answer.ranked().stream().map(StrengthSection::certainty).distinct().toList();
    return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
  }

  private static String certainty(StrengthAnswer.Row row) {
    return row.crossing() instanceof Crossing.Used used
        ? used.certainty().words()
        : "by equilibrium and friction alone";
  }

  private String rule(Checked checked) {
    Rule<?> rule = checked.rule();
    int mark = rules.computeIfAbsent(rule, any -> rules.size() + 1);
    return rule.formula()
        + ", factor "
        + plain(checked.factor().value())
        + ": "
        + checked.factor().meaning()
        + " ["
        + mark
        + "]";
  }

  private void used(Checked one) {
    page.item(
        UsedBar.of(one.utilisation())
            + " "
            + one.part()
            + ", "
            + one.what()
            + (one.place().isEmpty() ? "" : ", " + one.place()));
    page.subitem(rule(one));
  }

  private void never() {
    List<Checked> never = answer.never();
    if (!never.isEmpty()) {
      String grow = loads().size() > 1 ? "they grow" : "it grows";
      page.item("not reached as " + grow + "; used by the stated loads:");
      never.stream()
          .limit(MOST)
          .forEach(
              one ->
                  page.subitem(one.part() + ", " + one.what() + ": " + percent(one.utilisation())));
      if (never.size() > MOST) {
        page.subitem("and " + (never.size() - MOST) + " more");
      }
    }
  }

  private void notChecked() {
    if (!answer.notChecked().isEmpty()) {
      page.item("not checked:");
    }
    Map<String, List<String>> reasons = new LinkedHashMap<>();
    for (NotChecked one : answer.notChecked()) {
      reasons
          .computeIfAbsent(one.why(), any -> new ArrayList<>())
          .add(one.part() + ", " + one.what());
    }
    reasons.forEach((why, all) -> page.subitem(some(all) + ": " + why));
  }

  private static String some(List<String> all) {
    String told = String.join("; ", all.subList(0, Math.min(MOST, all.size())));
    return all.size() > MOST ? told + " and " + (all.size() - MOST) + " more" : told;
  }

  private void sources() {
    if (!rules.isEmpty()) {
      page.item("sources of the rules:");
    }
    Map<String, List<String>> marks = new LinkedHashMap<>();
    rules.forEach(
        (rule, mark) ->
            marks.computeIfAbsent(rule.source(), any -> new ArrayList<>()).add("[" + mark + "]"));
    marks.forEach((source, all) -> page.subitem(String.join(", ", all) + " " + source));
    Map<String, String> strengths = StrengthSources.of(answer.sizing());
    if (!strengths.isEmpty()) {
      page.item("sources of the strengths:");
    }
    strengths.forEach((name, source) -> page.subitem(name + ": " + source));
  }
}
