package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.limits.Event;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Verdict;
import java.util.Locale;
import java.util.Optional;

/** Verdicts, limits and how something gives way as JSON. */
final class GivingWayJson {

  private final JsonPage page;
  private final JsonPage.Element<Freedom> motion;

  /**
   * A writer.
   *
   * @param motion writes the fields of a motion
   */
  GivingWayJson(JsonPage page, JsonPage.Element<Freedom> motion) {
    this.page = page;
    this.motion = motion;
  }

  /** The fields of a verdict; {@code words} is the verdict in a sentence. */
  void verdict(Verdict verdict, String words) {
    page.text("kind", verdict.words());
    page.text("words", words);
    if (verdict instanceof Verdict.DoesNotHold failing) {
      page.text("after", word(failing.after()));
      how("how", Optional.of(failing.how()));
    } else {
      page.nothing("after");
      how(
          "how",
          verdict instanceof Verdict.Impending impending
              ? Optional.of(impending.how())
              : Optional.empty());
    }
  }

  /** The fields of a limit. */
  void limit(Limit limit) {
    if (limit instanceof Limit.Between between) {
      page.text("kind", "between");
      page.object("least", () -> end(between.least()));
      page.object("greatest", () -> end(between.greatest()));
    } else {
      page.text("kind", limit instanceof Limit.Never ? "never" : "not decided");
      page.nothing("least");
      page.nothing("greatest");
    }
    page.text(
        "why", limit instanceof Limit.NotDecided open ? Optional.of(open.why()) : Optional.empty());
  }

  void how(String name, Optional<GivingWay> how) {
    if (how.isPresent()) {
      page.object(name, () -> how(how.get()));
    } else {
      page.nothing(name);
    }
  }

  private void how(GivingWay how) {
    page.list("events", how.events(), one -> page.object(() -> event(one)));
    page.whole("ways", how.ways());
    if (how.motion().isPresent()) {
      page.object("motion", () -> motion.write(how.motion().get()));
    } else {
      page.nothing("motion");
    }
  }

  private void event(Event event) {
    page.text("part", event.part());
    page.text("kind", word(event.kind()));
    page.text("words", event.words());
  }

  private void end(Limit.End end) {
    if (end instanceof Limit.End.At at) {
      page.text("kind", "gives way");
      page.number("value", at.value());
      page.number("gap", at.gap());
      how("how", Optional.of(at.how()));
      return;
    }
    if (end instanceof Limit.End.EndOfLine line) {
      page.text("kind", "end of line");
      page.number("value", line.value());
    } else {
      page.text("kind", end instanceof Limit.End.SelfLocking ? "self-locking" : "unlimited");
      page.nothing("value");
    }
    page.nothing("gap");
    page.nothing("how");
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
