package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.explain.Condition;
import bellcrank.statics.explain.Equation;
import bellcrank.statics.explain.Given;
import bellcrank.statics.explain.Step;
import bellcrank.statics.explain.Term;
import bellcrank.statics.explain.Unknown;
import bellcrank.statics.explain.WorkedSolution;
import bellcrank.statics.limits.Event;
import bellcrank.statics.limits.FrictionFactor;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A worked solution as JSON. */
final class WorkedJson {

  private final JsonPage page;

  WorkedJson(JsonPage page) {
    this.page = page;
  }

  void write(WorkedCase worked) {
    worked.solution().ifPresent(one -> page.object("workedSolution", () -> solution(one)));
    page.list("workedLimits", List.copyOf(worked.ends().entrySet()), this::limit);
  }

  private void limit(Map.Entry<Ask, WorkedSolution> end) {
    page.object(
        () -> {
          page.text("ask", end.getKey().text());
          solution(end.getValue());
        });
  }

  private void solution(WorkedSolution solution) {
    page.list("unknowns", solution.unknowns(), this::unknown);
    page.list("given", solution.given(), this::given);
    page.list("steps", solution.steps(), step -> page.object(() -> step(step)));
  }

  private void unknown(Unknown one) {
    page.object(
        () -> {
          page.text("symbol", one.symbol().text());
          page.text("part", one.part());
          page.text("meaning", one.meaning());
          page.text("quantity", ReportJson.name(one.dimension()));
        });
  }

  private void given(Given one) {
    page.object(
        () -> {
          page.text("symbol", one.symbol().text());
          page.text("load", one.name());
          page.number("value", one.si());
          page.text("words", one.words());
          page.text("quantity", ReportJson.name(one.kind()));
        });
  }

  private void step(Step step) {
    if (step instanceof Step.Single one) {
      page.text("kind", "equation");
      page.list("equations", List.of(one.equation()), this::equation);
      page.list("found", List.of(one.found()), this::found);
    } else if (step instanceof Step.Together one) {
      page.text("kind", "equations together");
      page.list("equations", one.equations(), this::equation);
      page.list("found", one.found(), this::found);
    } else if (step instanceof Step.NotMet one) {
      page.text("kind", "equation not met");
      page.list("equations", List.of(one.equation()), this::equation);
      page.number("left", one.equation().sum());
    } else if (step instanceof Step.Open one) {
      page.text("kind", "left open");
      page.list("equations", one.equations(), this::equation);
      page.texts("open", symbols(one.open()));
      page.texts("released", symbols(one.released()));
    } else if (step instanceof Step.Result one) {
      page.text("kind", "answer");
      page.text("ask", one.ask().text());
      page.answer("answer", one.answer());
      if (one.answer() instanceof Answer.Value value) {
        page.text("quantity", ReportJson.name(value.dimension()));
      } else {
        page.nothing("quantity");
      }
      page.texts("from", symbols(one.from()));
    } else {
      remark(step);
    }
  }

  private void remark(Step step) {
    if (step instanceof Step.TwoForceMember one) {
      page.text("kind", "two-force member");
      page.text("member", one.member());
      page.texts("pins", List.of(one.from(), one.to()));
      page.text("symbol", one.symbol().text());
    } else if (step instanceof Step.RopeLaw one) {
      page.text("kind", "rope over sheaves");
      page.text("rope", one.rope());
      page.text("symbol", one.symbol().text());
      page.list(
          "parts", one.multiples(), multiple -> page.object(() -> page.number("times", multiple)));
    } else if (step instanceof Step.PostLaw one) {
      page.text("kind", "rope round a post");
      page.text("rope", one.rope());
      page.texts("symbols", List.of(one.first().text(), one.last().text()));
      page.number("friction", one.friction());
      page.number("angle", one.angle());
    } else if (step instanceof Step.Taken one) {
      page.text("kind", "taken as known");
      page.list("found", List.of(one.found()), this::found);
    } else if (step instanceof Step.ThreeForces one) {
      page.text("kind", "three forces");
      page.text("body", one.body());
      page.texts("forces", one.forces());
      if (one.meeting().isPresent()) {
        page.point("meeting", one.meeting().get());
      } else {
        page.nothing("meeting");
      }
    } else if (step instanceof Step.Broken one) {
      page.text("kind", "condition broken");
      page.text("part", one.violation().part());
      page.text("words", one.violation().words());
    } else if (step instanceof Step.Moves one) {
      page.text("kind", "motion");
      page.text("words", one.freedom().words());
      page.text("body", one.body());
      page.text("point", one.point());
      page.vector("way", one.way());
    } else if (step instanceof Step.Finding one) {
      page.text("kind", "finding");
      page.text("words", one.sentence());
    } else {
      limited(step);
    }
  }

  /** Steps that limits bring in. */
  private void limited(Step step) {
    if (step instanceof Step.AtLimit one) {
      page.text("kind", "at a limit");
      page.text("sought", one.sought());
      page.truth("greatest", one.greatest());
      page.texts("events", events(one.how().events()));
    } else if (step instanceof Step.JustHeld one) {
      page.text("kind", "just held");
      page.number("frictionFactor", one.friction());
      page.texts("events", events(one.how().events()));
    } else if (step instanceof Step.Margin one) {
      page.text("kind", "friction used");
      page.text("part", one.part());
      page.texts("symbols", List.of(one.friction().text(), one.normal().text()));
      page.number("ratio", one.ratio());
      page.number("friction", one.coefficient());
    } else if (step instanceof Step.PinFriction one) {
      page.text("kind", "friction in a pin");
      page.text("part", one.pin());
      page.number("radius", one.radius());
      page.number("angle", one.angle());
    } else if (step instanceof Step.ThreadLaw one) {
      page.text("kind", "couples on a screw");
      page.text("part", one.screw());
      page.text("symbol", one.symbol().text());
      page.number("radius", one.radius());
      page.number("slope", one.slope());
      page.number("angle", one.angle());
    } else if (step instanceof Step.Judged one) {
      page.text("kind", "verdict");
      page.text("words", one.verdict().words());
      if (one.friction() instanceof FrictionFactor.Least least) {
        page.number("frictionFactor", least.factor());
      } else {
        page.nothing("frictionFactor");
      }
    }
  }

  private static List<String> events(List<Event> events) {
    return events.stream().map(one -> one.part() + " " + one.words()).toList();
  }

  private static List<String> symbols(List<Unknown> unknowns) {
    return unknowns.stream().map(one -> one.symbol().text()).toList();
  }

  private void equation(Equation one) {
    page.object(
        () -> {
          page.texts("cut", one.cut());
          page.truth("section", one.section());
          if (one.condition() instanceof Condition.Moments moments) {
            page.point("momentsAbout", moments.about());
            page.text("place", moments.place());
            page.nothing("forcesAlong");
            page.nothing("law");
          } else if (one.condition() instanceof Condition.Forces forces) {
            page.nothing("momentsAbout");
            page.nothing("place");
            page.number("forcesAlong", forces.along().angle());
            page.nothing("law");
          } else {
            Condition.Law law = (Condition.Law) one.condition();
            page.nothing("momentsAbout");
            page.nothing("place");
            page.nothing("forcesAlong");
            page.object(
                "law",
                () -> {
                  page.text("part", law.part());
                  page.text("rule", law.rule().name().toLowerCase(Locale.ROOT));
                });
          }
          page.texts("avoided", symbols(one.avoided()));
          page.list("terms", one.terms(), this::term);
        });
  }

  private void term(Term one) {
    page.object(
        () -> {
          page.text("symbol", one.symbol().text());
          page.number("coefficient", one.coefficient());
          page.truth("arm", one.arm());
          if (one.value().isPresent()) {
            page.number("value", one.value().getAsDouble());
          } else {
            page.nothing("value");
          }
          page.truth("given", one.given());
          page.truth("sought", one.sought());
        });
  }

  private void found(Step.Found one) {
    page.object(
        () -> {
          page.text("symbol", one.unknown().symbol().text());
          page.number("value", one.si());
          page.text("words", one.unknown().words(one.si()));
        });
  }
}
