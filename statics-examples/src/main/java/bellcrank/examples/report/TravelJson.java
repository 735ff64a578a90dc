package bellcrank.examples.report;

import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.CourseEnd;
import bellcrank.statics.motion.Curve;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Rest;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.motion.Work;
import java.util.Locale;
import java.util.Optional;

/** What happens to a device over its travel as JSON. */
final class TravelJson {

  private final JsonPage page;
  private final TravelAnswer answer;

  private TravelJson(JsonPage page, TravelAnswer answer) {
    this.page = page;
    this.answer = answer;
  }

  /** Writes the field {@code travel}, if there is a drive. */
  static void write(JsonPage page, Optional<TravelAnswer> answer) {
    answer.ifPresent(one -> page.object("travel", () -> new TravelJson(page, one).write()));
  }

  private void write() {
    page.object("drive", () -> drive(answer.plan().drive()));
    page.number("from", answer.plan().from());
    page.number("to", answer.plan().to());
    if (answer.travel() instanceof Travel.Standstill standstill) {
      page.object("standstill", () -> standstill(standstill));
      return;
    }
    Course course = (Course) answer.travel();
    page.object("begins", () -> end(course.least()));
    page.object("ends", () -> end(course.greatest()));
    page.list("changePoints", course.changePoints(), at -> page.object(() -> driveValue(at)));
    page.list("curves", answer.curves(), curve -> page.object(() -> curve(curve)));
    page.list("rows", answer.rows(), row -> page.object(() -> row(row)));
    if (answer.rests().isPresent()) {
      page.list("rests", answer.rests().get(), place -> page.object(() -> rest(place)));
    } else {
      page.nothing("rests");
    }
    account(answer.account());
  }

  private void rest(Rest.Place place) {
    page.number("from", place.from());
    page.number("to", place.to());
    page.text("kind", word(place.kind()));
    page.text("words", place.words());
  }

  private void drive(Drive drive) {
    page.text("words", DriveWords.of(drive) + ", " + DriveWords.sense(drive));
    page.text("quantity", ReportJson.name(answer.plan().dimension()));
    if (drive instanceof Drive.Turn turn) {
      page.text("turn", turn.member());
      page.text("against", turn.other());
    } else if (drive instanceof Drive.Length length) {
      page.text("length", length.connection());
    } else if (drive instanceof Drive.Slide slide) {
      page.text("slide", slide.body());
      page.text("point", slide.point());
      page.number("along", slide.along().angle());
    }
  }

  private void standstill(Travel.Standstill standstill) {
    page.text("reason", word(standstill.reason()));
    page.text("words", standstill.reason().words());
    page.texts("motions", standstill.freedoms().stream().map(Freedom::words).toList());
  }

  private static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void end(CourseEnd end) {
    driveValue(end.drive());
    page.text("reason", word(end.why()));
    page.text("words", DriveWords.why(end));
  }

  private void driveValue(double at) {
    page.number("driven", at);
  }

  private void curve(Curve curve) {
    page.text("ask", curve.ask().text());
    page.text("quantity", ReportJson.name(curve.dimension()));
    extreme("least", curve, curve.least());
    extreme("greatest", curve, curve.greatest());
  }

  private void extreme(String name, Curve curve, Optional<Curve.Sample> extreme) {
    if (extreme.isEmpty()) {
      page.nothing(name);
      return;
    }
    page.object(
        name,
        () -> {
          driveValue(extreme.get().drive());
          page.number("value", extreme.get().value());
          page.truth("boundless", curve.isBoundless(extreme.get()));
          page.truth("open", answer.isOpen(curve, extreme.get()));
        });
  }

  private void row(TravelAnswer.Row row) {
    driveValue(row.drive());
    page.list("values", row.answers(), one -> page.object(() -> page.answer("answer", one)));
  }

  private void account(Optional<TravelAnswer.Account> account) {
    if (account.isEmpty()) {
      page.nothing("work");
      return;
    }
    Work work = account.get().work();
    page.object(
        "work",
        () -> {
          page.number("from", account.get().from());
          page.number("to", account.get().to());
          page.number("effort", work.effort());
          page.number("loads", work.loads());
          page.number("stored", work.stored());
          page.number("lost", work.lost());
        });
  }
}
