package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Reaction;
import bellcrank.statics.equilibrium.Violation;
import bellcrank.statics.units.Dimension;
import java.util.Locale;

/** Broken conditions, reactions, axial forces and sought quantities as JSON. */
final class ForcesJson {

  private final JsonPage page;
  private final Balance balance;

  ForcesJson(JsonPage page, Balance balance) {
    this.page = page;
    this.balance = balance;
  }

  void write() {
    page.list("violations", balance.violations(), this::violation);
    page.list("reactions", balance.reactions(), this::reaction);
    page.list("axial", AxialParts.of(balance.device()), this::axial);
    page.list("sought", balance.device().sought(), this::sought);
  }

  private void violation(Violation violation) {
    page.object(
        () -> {
          page.text("part", violation.part());
          page.text("words", violation.words());
          if (violation.needed() == Double.MAX_VALUE) {
            page.unanswered("needed", Answer.Reason.NOT_DEFINED, "no ratio is enough");
          } else {
            page.number("needed", violation.needed());
          }
          page.number("limit", violation.limit());
          page.text("quantity", ReportJson.name(violation.dimension()));
        });
  }

  private void reaction(Reaction reaction) {
    page.object(
        () -> {
          page.text("connection", reaction.connection());
          page.text("kind", reaction.kind());
          page.text("on", reaction.body());
          page.point("at", reaction.at());
          page.answer("x", reaction.x());
          page.answer("y", reaction.y());
          page.answer("size", reaction.size());
          page.answer("direction", direction(reaction));
          if (reaction.hasCouple()) {
            page.answer("couple", reaction.couple());
          } else {
            page.nothing("couple");
          }
          page.whole("count", reaction.count());
        });
  }

  private Answer direction(Reaction reaction) {
    return balance.answer(Ask.of(reaction.connection(), Measure.DIRECTION).onBody(reaction.body()));
  }

  private void axial(AxialParts.Part part) {
    page.object(
        () -> {
          page.text("part", part.connection().name());
          page.text("kind", part.connection().kind());
          page.answer("tension", answer(part.connection().name(), Measure.TENSION));
          if (part.isRope()) {
            page.answer("endTension", answer(part.connection().name(), Measure.END_TENSION));
          } else {
            page.nothing("endTension");
          }
          page.whole("count", part.count());
        });
  }

  private void sought(Sought sought) {
    page.object(
        () -> {
          page.text("name", sought.name());
          page.text("want", sought.want().name().toLowerCase(Locale.ROOT));
          page.text("on", sought.body());
          page.text("at", sought.at());
          page.text("to", sought.to());
          Answer value = answer(sought.name(), Measure.VALUE);
          page.answer("value", value);
          page.text("quantity", ReportJson.name(quantity(sought)));
          for (Measure measure : new Measure[] {Measure.X, Measure.Y, Measure.DIRECTION}) {
            if (sought.want() == Sought.Want.COUPLE) {
              page.nothing(measure.word());
            } else {
              page.answer(measure.word(), answer(sought.name(), measure));
            }
          }
        });
  }

  private Answer answer(String part, Measure measure) {
    return balance.answer(Ask.of(part, measure));
  }

  private static Dimension quantity(Sought sought) {
    return switch (sought.want()) {
      case FORCE, COMPONENTS -> Dimension.FORCE;
      case COUPLE -> Dimension.MOMENT;
      case MASS -> Dimension.MASS;
      case INTENSITY -> Dimension.FORCE_PER_LENGTH;
    };
  }
}
