package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.ground.BasePressure;
import java.util.Locale;
import java.util.OptionalDouble;

/** What a base sends into the ground as JSON. */
final class GroundJson {

  private final JsonPage page;
  private final GroundLoad load;

  GroundJson(JsonPage page, GroundLoad load) {
    this.page = page;
    this.load = load;
  }

  void write() {
    BasePressure pressure = load.load().pressure();
    page.text("base", load.base().name());
    page.truth("isAssumed", load.assumed());
    page.number("normal", load.load().normal());
    page.number("tangential", load.load().tangential());
    number("offset", pressure.offset(), "nothing presses on the base");
    page.text("shape", pressure.shape().name().toLowerCase(Locale.ROOT));
    number("left", pressure.left(), "no finite pressure balances the force");
    number("right", pressure.right(), "no finite pressure balances the force");
    page.number("kern", pressure.kern());
    page.number("pressedWidth", pressure.contactWidth());
    page.number("effectiveWidth", pressure.effectiveWidth());
    if (load.bears().isPresent()) {
      page.number("bears", load.bears().getAsDouble());
    } else {
      page.nothing("bears");
    }
    page.number("slidesAt", load.holds());
  }

  private void number(String name, OptionalDouble value, String otherwise) {
    if (value.isPresent()) {
      page.number(name, value.getAsDouble());
    } else {
      page.unanswered(name, Answer.Reason.NOT_DEFINED, otherwise);
    }
  }
}
