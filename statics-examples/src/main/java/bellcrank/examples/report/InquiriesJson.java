package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.Expected;
import bellcrank.examples.file.FindPlan;
import bellcrank.examples.file.HangPlan;
import bellcrank.examples.file.MeasuredLine;
import bellcrank.examples.file.WinchPlan;
import bellcrank.statics.device.Device;
import bellcrank.statics.motion.Deflection;
import bellcrank.statics.motion.Find;
import bellcrank.statics.motion.HandWinch;
import bellcrank.statics.motion.Hang;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Searches, winches, measured lines and what hangs, as JSON. */
final class InquiriesJson {

  private final JsonPage page;
  private final DeviceFile file;

  InquiriesJson(JsonPage page, DeviceFile file) {
    this.page = page;
    this.file = file;
  }

  /** The fields of a file. */
  void ofFile() {
    Device device = file.device();
    page.list(
        "hangs", file.inquiries().hangs(), one -> page.object(() -> hang(one, one.hang(device))));
    page.list("handles", file.inquiries().handles(), one -> page.object(() -> handle(one)));
  }

  /** The fields of a case. */
  void ofCase(CaseAnswer answer) {
    page.list("finds", answer.finds(), one -> page.object(() -> find(one)));
    page.list(
        "winches",
        file.inquiries().winches(),
        one -> page.object(() -> winch(one, WinchAnswer.of(one, answer.solution()))));
    page.list(
        "measuredLines",
        file.inquiries().measuredLines(),
        one -> page.object(() -> line(one, answer.solution())));
  }

  private void carried(HangPlan plan) {
    page.text("name", plan.name());
    page.texts("bodies", plan.bodies());
  }

  private void hang(HangPlan plan, Hang hang) {
    carried(plan);
    page.text("point", plan.from());
    if (hang instanceof Hang.Turned turned) {
      page.number("stable", turned.stable());
      page.number("unstable", turned.unstable());
      page.number("arm", turned.arm());
    } else {
      page.nothing("stable");
      page.nothing("unstable");
      page.number("arm", 0);
    }
  }

  private void handle(HangPlan plan) {
    carried(plan);
    page.texts("line", List.of(plan.from(), plan.to().orElse(plan.from())));
    plan.handle(file.device())
        .ifPresentOrElse(
            point -> {
              page.point("place", point.place());
              page.number("distance", point.distance());
              page.truth("between", point.between());
              page.truth("hangs", point.hangs());
            },
            () -> {
              page.nothing("place");
              page.nothing("distance");
              page.nothing("between");
              page.nothing("hangs");
            });
  }

  private void find(FindAnswer one) {
    FindPlan plan = one.plan();
    page.text("name", plan.name());
    page.text("unknown", FindWords.of(plan.unknown(), file.travel()));
    page.text("quantity", ReportJson.name(one.dimension()));
    page.text("ask", plan.ask().text());
    page.number("target", plan.target().si());
    if (plan.range().isPresent()) {
      page.number("from", plan.range().get().from());
      page.number("to", plan.range().get().to());
    } else {
      page.nothing("from");
      page.nothing("to");
    }
    found(one.found());
    if (plan.expected().isPresent()) {
      page.list(
          "expected",
          plan.expected().get().values(),
          value -> page.object(() -> amount(value, plan.expected().get().digits())));
      page.truth("holds", one.holds());
      page.text("source", plan.expected().get().source());
    } else {
      page.nothing("expected");
      page.nothing("holds");
      page.nothing("source");
    }
  }

  private void amount(Expected.Amount value, int digits) {
    page.number("value", value.quantity().si());
    page.whole("digits", digits);
  }

  private void found(Optional<Find> found) {
    page.text("kind", found.map(InquiriesJson::kind).orElse("not driven"));
    Find.At at =
        found.isPresent() && found.get() instanceof Find.At some
            ? some
            : new Find.At(List.of(), List.of());
    page.list("solutions", at.values(), value -> page.object(() -> page.number("value", value)));
    page.list(
        "intervals",
        at.intervals(),
        one ->
            page.object(
                () -> {
                  page.number("from", one.from());
                  page.number("to", one.to());
                }));
    if (found.isPresent() && found.get() instanceof Find.None none && none.nearest().isPresent()) {
      page.object(
          "nearest",
          () -> {
            page.number("value", none.nearest().get().value());
            page.number("answer", none.nearest().get().answer());
          });
    } else {
      page.nothing("nearest");
    }
  }

  private static String kind(Find found) {
    if (found instanceof Find.Always) {
      return "always";
    }
    return found instanceof Find.None ? "none" : "at";
  }

  private void winch(WinchPlan plan, WinchAnswer answer) {
    page.text("name", plan.name());
    page.text("ask", plan.hauls().text());
    optional("pull", answer.pull());
    page.text("why", answer.why().isEmpty() ? Optional.<String>empty() : Optional.of(answer.why()));
    page.text(
        "cycle", plan.hand().map(hand -> WinchAnswer.cycle(hand.handle())).orElse("turn of drum"));
    page.list("layers", answer.layers(), layer -> page.object(() -> layer(layer)));
    if (answer.haul().isPresent()) {
      page.object("haul", () -> haul(answer.haul().get()));
    } else {
      page.nothing("haul");
    }
  }

  private void layer(WinchAnswer.Layer layer) {
    page.whole("layer", layer.number());
    page.number("radius", layer.radius());
    page.number("holds", layer.holds());
    page.number("perCycle", layer.perCycle());
    optional("force", layer.force());
  }

  private void haul(HandWinch.Haul haul) {
    page.number("cycles", haul.cycles());
    page.number("handWay", haul.handWay());
    page.number("greatestForce", haul.greatestForce());
    page.number("handWork", haul.handWork());
    page.number("lineWork", haul.lineWork());
  }

  private void line(MeasuredLine line, CaseSolution solution) {
    Deflection.Estimate estimate = line.deflection().estimate(line.errors());
    page.text("name", line.name());
    page.number("tension", estimate.tension());
    page.number("likelyError", estimate.likelyError());
    page.number("worstError", estimate.worstError());
    OptionalDouble before =
        line.stiffness().isPresent()
            ? line.deflection().tensionBefore(line.stiffness().get())
            : OptionalDouble.empty();
    optional("tensionBefore", before);
    if (line.beside().isPresent()) {
      page.text("beside", line.beside().get().text());
      page.answer("answer", solution.answer(line.beside().get()));
    } else {
      page.nothing("beside");
      page.nothing("answer");
    }
  }

  private void optional(String name, OptionalDouble value) {
    if (value.isPresent()) {
      page.number(name, value.getAsDouble());
    } else {
      page.nothing(name);
    }
  }
}
