package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.study.Combinations.Group;
import bellcrank.statics.study.Combinations.Permanent;
import bellcrank.statics.study.Combinations.Variable;
import bellcrank.statics.study.Free;
import bellcrank.statics.study.Goal;
import bellcrank.statics.study.Happening;
import bellcrank.statics.study.Input;
import bellcrank.statics.study.Model;
import bellcrank.statics.study.Spread;
import bellcrank.statics.study.Uncertain;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes what a file asks of numbers that can be otherwise, of cases and of moving loads. */
final class StudiesText {

  private final AmountText amounts;
  private final Model model;

  StudiesText(AmountText amounts, Model model) {
    this.amounts = amounts;
    this.model = model;
  }

  void write(Studies studies, YamlLayout out) {
    if (!studies.rough().isEmpty()) {
      out.section("rough");
    }
    studies.rough().forEach(one -> out.entry(one.input().text(), spread(one)));
    studies.study().ifPresent(one -> out.field("study", study(one)));
    if (!studies.searches().isEmpty()) {
      out.section("search");
    }
    studies.searches().forEach(one -> out.entry(one.name(), search(one)));
    studies.variants().ifPresent(one -> out.field("variants", variants(one)));
    studies.combinations().ifPresent(one -> out.field("combinations", combinations(one)));
    if (!studies.moving().isEmpty()) {
      out.section("moving loads");
    }
    studies.moving().forEach(one -> out.entry(one.name(), moving(one)));
  }

  private String value(double si, Input input) {
    return amounts.ofKind(si, input.dimension());
  }

  private String value(Quantity quantity) {
    return amounts.ofKind(quantity.si(), quantity.dimension());
  }

  private String spread(Uncertain one) {
    Input input = one.input();
    Flow flow = new Flow();
    if (one.spread() instanceof Spread.Within within) {
      if (within.minus() == within.plus()) {
        flow.put("within", value(within.plus(), input));
      } else {
        flow.put("plus", value(within.plus(), input)).put("minus", value(within.minus(), input));
      }
    } else if (one.spread() instanceof Spread.Uniform uniform) {
      flow.put(
          "uniform", Flow.items(List.of(value(uniform.from(), input), value(uniform.to(), input))));
    } else if (one.spread() instanceof Spread.Normal normal) {
      flow.put("normal", value(normal.deviation(), input));
      if (normal.mean() != input.value(model)) {
        flow.put("mean", value(normal.mean(), input));
      }
    } else if (one.spread() instanceof Spread.Triangular triangular) {
      flow.put(
          "triangular",
          Flow.items(
              List.of(
                  value(triangular.from(), input),
                  value(triangular.peak(), input),
                  value(triangular.to(), input))));
    }
    return flow.written();
  }

  private String study(StudyPlan plan) {
    Flow flow = new Flow().texts("asks", plan.figures().stream().map(FigureText::of).toList());
    if (plan.samples() > 0) {
      flow.put("samples", Integer.toString(plan.samples()));
    }
    if (plan.seed() != 1) {
      flow.put("seed", Integer.toString(plan.seed()));
    }
    for (StudyPlan.Chance kind : StudyPlan.Chance.values()) {
      List<Happening> all =
          plan.chances().stream().filter(one -> StudyPlan.Chance.of(one) == kind).toList();
      if (!all.isEmpty()) {
        chances(flow, kind, all);
      }
    }
    return flow.written();
  }

  private void chances(Flow flow, StudyPlan.Chance kind, List<Happening> all) {
    Flow bounds = new Flow();
    List<String> parts = new ArrayList<>();
    boolean any = false;
    for (Happening one : all) {
      if (one instanceof Happening.Above above) {
        bounds.put(FigureText.of(above.figure()), value(above.bound()));
      } else if (one instanceof Happening.Below below) {
        bounds.put(FigureText.of(below.figure()), value(below.bound()));
      } else {
        any = any || StudyPlan.Chance.part(one).isEmpty();
        StudyPlan.Chance.part(one).ifPresent(parts::add);
      }
    }
    if (any) {
      flow.text(kind.key(), StudyPlan.ANY);
    } else if (parts.isEmpty()) {
      flow.put(kind.key(), bounds.written());
    } else {
      flow.texts(kind.key(), parts);
    }
  }

  private String search(SearchPlan plan) {
    Flow change = new Flow();
    for (Free one : plan.free()) {
      change.put(
          one.input().text(),
          Flow.items(List.of(value(one.from(), one.input()), value(one.to(), one.input()))));
    }
    Flow flow = new Flow().put("change", change.written());
    plan.aim().ifPresent(aim -> flow.text(aim.key(), aim.text()));
    Flow goals = new Flow();
    List<String> cases = new ArrayList<>();
    boolean some = false;
    boolean stands = false;
    for (Goal goal : plan.goals()) {
      if (goal instanceof Goal.Stands one) {
        stands = true;
        one.loadCase().ifPresent(cases::add);
      } else {
        some = true;
        goals.put(FigureText.of(SearchPlan.figure(goal).orElseThrow()), goal(goal));
      }
    }
    if (some) {
      flow.put("goals", goals.written());
    }
    if (stands) {
      flow.put("stands", cases.isEmpty() ? SearchReader.TRUE : Flow.list(cases));
    }
    plan.expected().ifPresent(one -> flow.put("expect", expected(one)));
    return flow.written();
  }

  private String goal(Goal goal) {
    Flow flow = new Flow();
    if (goal instanceof Goal.AtMost one) {
      flow.put("at most", value(one.bound()));
    } else if (goal instanceof Goal.AtLeast one) {
      flow.put("at least", value(one.bound()));
    } else if (goal instanceof Goal.Between one) {
      flow.put("at least", value(one.least())).put("at most", value(one.greatest()));
    } else if (goal instanceof Goal.Equal one) {
      flow.put("equals", value(one.value()));
    }
    return flow.written();
  }

  private String expected(SearchPlan.Values expected) {
    Flow flow = new Flow();
    if (expected.values().isEmpty()) {
      flow.text("values", SearchReader.NONE);
    } else {
      Flow values = new Flow();
      expected.values().forEach((input, one) -> values.put(input.text(), amount(one)));
      flow.put("values", values.written());
      expected.reaches().ifPresent(one -> flow.put("reaches", amount(one)));
      flow.put("digits", Integer.toString(expected.digits()));
    }
    return flow.text("source", expected.source()).written();
  }

  private String amount(Expected.Amount amount) {
    return amounts.withUnit(amount.quantity().si(), amount.unit());
  }

  private String variants(VariantsPlan plan) {
    Flow compare = new Flow();
    plan.compared()
        .forEach(one -> compare.text(FigureText.of(one.figure()), VariantsReader.word(one.wish())));
    Flow changes = new Flow();
    for (VariantsPlan.Change one : plan.changes()) {
      Flow values = new Flow();
      one.values().forEach((input, si) -> values.put(input.text(), value(si, input)));
      changes.put(one.name(), values.written());
    }
    return new Flow().put("compare", compare.written()).put("changes", changes.written()).written();
  }

  private String combinations(CombinationsPlan plan) {
    Flow groups = new Flow();
    plan.groups().forEach(one -> groups.put(one.name(), group(one)));
    Flow flow =
        new Flow()
            .put("groups", groups.written())
            .texts("asks", plan.asks().stream().map(Ask::text).toList());
    return (plan.overTravel() ? flow.text("over", CombinationsReader.TRAVEL) : flow).written();
  }

  private static String group(Group group) {
    Flow flow = new Flow();
    if (group instanceof Permanent one) {
      flow.put("unfavourable", AmountText.number(one.unfavourable()));
      if (one.favourable() != one.unfavourable()) {
        flow.put("favourable", AmountText.number(one.favourable()));
      }
    } else if (group instanceof Variable one) {
      flow.put("leading", AmountText.number(one.leading()));
      if (one.accompanying() != 0) {
        flow.put("accompanying", AmountText.number(one.accompanying()));
      }
    }
    return flow.texts("loads", group.loads()).written();
  }

  private String moving(MovingPlan plan) {
    Flow flow = new Flow().text("load", plan.load()).texts("along", plan.along());
    flow.text("on", plan.on()).text("case", plan.loadCase());
    flow.texts("asks", plan.asks().stream().map(Ask::text).toList());
    Optional<List<String>> wheels =
        plan.train()
            .map(
                train ->
                    train.wheels().stream()
                        .map(
                            one -> {
                              Flow wheel =
                                  new Flow()
                                      .put("force", amounts.withUnit(one.force(), Dimension.FORCE));
                              return (one.behind() == 0
                                      ? wheel
                                      : wheel.put(
                                          "behind",
                                          amounts.withUnit(one.behind(), Dimension.LENGTH)))
                                  .written();
                            })
                        .toList());
    wheels.ifPresent(all -> flow.put("train", Flow.items(all)));
    return flow.written();
  }
}
