package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.limits.SideEdge;
import bellcrank.statics.limits.SideLoad;
import bellcrank.statics.limits.SideReach;
import bellcrank.statics.limits.SideTip;
import bellcrank.statics.limits.SideTipWords;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How the device stands as seen along its plane as JSON. */
final class SideJson {

  private final JsonPage page;
  private final SideAnswer answer;
  private final GivingWayJson ways;

  /**
   * A writer.
   *
   * @param motion writes the fields of a motion
   */
  SideJson(JsonPage page, SideAnswer answer, JsonPage.Element<Freedom> motion) {
    this.page = page;
    this.answer = answer;
    ways = new GivingWayJson(page, motion);
  }

  void write() {
    page.text("base", answer.statement().base());
    page.number("breadth", answer.statement().breadth());
    page.truth("isAssumed", answer.assumed());
    if (answer.tip().isPresent()) {
      page.nothing("why");
      page.object("tip", () -> tip(answer.tip().get()));
    } else {
      page.text("why", answer.why());
      page.nothing("tip");
    }
  }

  private void tip(SideTip tip) {
    SideTipWords words = SideTipWords.of(tip, UnitSystem.SI);
    page.object("verdict", () -> ways.verdict(tip.verdict(), words.verdict()));
    page.object("margin", () -> ways.limit(tip.margin()));
    page.text("edge", tip.tippingEdge().map(SideEdge::word));
    page.truth("slidesFirst", tip.slidesFirst());
    List<SideLoad> pulls = tip.view().loads().stream().filter(one -> one.side() != 0).toList();
    page.list("pulls", pulls, one -> page.object(() -> pull(tip, one)));
    List<SideEdge> edges = List.of(SideEdge.values());
    page.list("leans", edges, one -> page.object(() -> reach(one, tip.greatestLean(one))));
    page.list("slopes", edges, one -> page.object(() -> reach(one, tip.greatestSlope(one))));
    number("breadthNeeded", tip.breadthNeeded(1), "no breadth would do");
  }

  private void pull(SideTip tip, SideLoad load) {
    page.text("load", load.name());
    page.number("force", load.side());
    number("greatestForce", tip.greatestForce(load.name()), "no size of it is the greatest");
    page.object("margin", () -> ways.limit(tip.margin(load.name())));
  }

  private void reach(SideEdge edge, SideReach reach) {
    page.text("edge", edge.word());
    if (reach instanceof SideReach.At at) {
      page.text("kind", "gives way");
      page.number("angle", at.angle());
      ways.how("how", Optional.of(at.how()));
    } else {
      page.text("kind", reach instanceof SideReach.Never ? "never" : "unlimited");
      page.nothing("angle");
      page.nothing("how");
    }
  }

  private void number(String name, OptionalDouble value, String otherwise) {
    if (value.isPresent()) {
      page.number(name, value.getAsDouble());
    } else {
      page.unanswered(name, Answer.Reason.NOT_DEFINED, otherwise);
    }
  }
}
