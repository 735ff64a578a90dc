package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.PartState;
import bellcrank.statics.limits.Range;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.limits.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the limits of a case say as JSON. */
final class LimitsJson {

  private final JsonPage page;
  private final LimitsAnswer answer;
  private final String words;
  private final GivingWayJson ways;

  /**
   * A writer.
   *
   * @param words the verdict in a sentence
   * @param motion writes the fields of a motion
   */
  LimitsJson(JsonPage page, LimitsAnswer answer, String words, JsonPage.Element<Freedom> motion) {
    this.page = page;
    this.answer = answer;
    this.words = words;
    ways = new GivingWayJson(page, motion);
  }

  void write() {
    page.object("verdict", this::verdict);
    page.object("frictionFactor", this::friction);
    page.list("variations", answer.limits(), one -> page.object(() -> variation(one)));
    page.list("states", answer.states(), one -> page.object(() -> state(one)));
    page.list("efforts", answer.efforts(), one -> page.object(() -> effort(one)));
    page.list("ranges", answer.open(), one -> page.object(() -> open(one)));
    page.list(
        "ground", answer.grounds(), one -> page.object(() -> new GroundJson(page, one).write()));
  }

  private void verdict() {
    Verdict verdict = answer.verdict();
    ways.verdict(verdict, words);
    page.texts(
        "parts", verdict instanceof Verdict.HoldsOnceSeated seated ? seated.parts() : List.of());
    page.text(
        "why",
        verdict instanceof Verdict.NotDecided open ? Optional.of(open.why()) : Optional.empty());
  }

  private void friction() {
    FrictionFactor friction = answer.friction();
    page.text("kind", kind(friction));
    if (friction instanceof FrictionFactor.Least found) {
      page.number("factor", found.factor());
      ways.how("how", Optional.of(found.how()));
    } else {
      page.nothing("factor");
      page.nothing("how");
    }
    page.text(
        "why",
        friction instanceof FrictionFactor.NotDecided open
            ? Optional.of(open.why())
            : Optional.empty());
  }

  private static String kind(FrictionFactor friction) {
    if (friction instanceof FrictionFactor.Least) {
      return "least";
    }
    if (friction instanceof FrictionFactor.NotNeeded) {
      return "not needed";
    }
    if (friction instanceof FrictionFactor.AnyIsEnough) {
      return "any is enough";
    }
    if (friction instanceof FrictionFactor.NotEnough) {
      return "not enough";
    }
    return friction instanceof FrictionFactor.NoFriction ? "no friction" : "not decided";
  }

  private void variation(NamedLimit one) {
    page.text("name", one.name());
    page.texts("loads", one.loads());
    if (one.variation() instanceof Variation.Place place) {
      page.text("from", place.from());
      page.text("to", place.to());
    } else {
      page.nothing("from");
      page.nothing("to");
    }
    ways.limit(one.limit());
  }

  private void state(PartState state) {
    page.text("part", state.part());
    page.text("kind", state.state().words());
    range(state.force());
  }

  private void effort(EffortRange effort) {
    page.text("name", effort.sought().name());
    range(effort.range());
    ways.how("below", effort.below());
    ways.how("above", effort.above());
  }

  private void open(OpenForce force) {
    page.text("ask", force.ask().text());
    range(force.range());
    if (force.withLeastForces().isPresent()) {
      page.number("assumed", force.withLeastForces().get().si());
    } else {
      page.nothing("assumed");
    }
  }

  private void range(Range range) {
    page.text("quantity", ReportJson.name(range.dimension()));
    end("least", range.least());
    end("greatest", range.greatest());
    page.number("gap", range.gap());
  }

  private void end(String name, OptionalDouble end) {
    if (end.isPresent()) {
      page.number(name, end.getAsDouble());
    } else {
      page.unanswered(name, Answer.Reason.UNLIMITED, "it has no bound");
    }
  }
}
