package bellcrank.examples.report;

import bellcrank.statics.study.Combinations.Combination;
import bellcrank.statics.study.Envelope;
import bellcrank.statics.study.FigureAnswer;
import bellcrank.statics.study.Influence;
import bellcrank.statics.study.InfluenceLine;
import bellcrank.statics.study.SearchAnswer;
import bellcrank.statics.study.Train;
import bellcrank.statics.study.Variants;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The studies of a file as JSON. */
final class StudyJson {

  private final JsonPage page;

  StudyJson(JsonPage page) {
    this.page = page;
  }

  /** The field of a file. */
  void write(Optional<StudyAnswer> answer) {
    if (answer.isEmpty()) {
      return;
    }
    StudyAnswer study = answer.get();
    page.object(
        "study",
        () -> {
          new RoughJson(page, study).write();
          page.list("searches", study.searches(), one -> page.object(() -> search(one)));
          page.list("variants", rows(study), one -> page.object(() -> row(one, study)));
          if (study.combined().isPresent()) {
            page.object("combinations", () -> combined(study.combined().get()));
          } else {
            page.nothing("combinations");
          }
          page.list("movingLoads", study.moved(), one -> page.object(() -> moved(one)));
        });
  }

  private static List<Variants.Row> rows(StudyAnswer study) {
    return study.variants().map(Variants::rows).orElse(List.of());
  }

  private void figure(FigureAnswer answer) {
    if (answer instanceof FigureAnswer.Is is) {
      page.text("quantity", ReportJson.name(is.dimension()));
      page.number("value", is.si());
      page.nothing("why");
    } else {
      page.nothing("quantity");
      page.nothing("value");
      page.text("why", ((FigureAnswer.None) answer).why());
    }
  }

  private void search(SearchFound one) {
    SearchAnswer answer = one.answer();
    page.text("name", one.plan().name());
    page.text("kind", kind(answer));
    page.whole("looks", answer.looks());
    page.truth("cutShort", answer.isCutShort());
    page.list("settings", settings(answer), two -> page.object(() -> setting(two)));
    Optional<SearchAnswer.Reading> wanted =
        answer instanceof SearchAnswer.Found found ? found.wanted() : Optional.empty();
    if (wanted.isPresent()) {
      page.object(
          "wanted",
          () -> {
            page.text("figure", wanted.get().figure().text());
            figure(wanted.get().answer());
          });
    } else {
      page.nothing("wanted");
    }
    page.list("goals", goals(answer), two -> page.object(() -> goal(two)));
    page.texts("stops", answer instanceof SearchAnswer.Found found ? found.stops() : List.of());
    page.texts(
        "reasons", answer instanceof SearchAnswer.NoAnswer none ? none.reasons() : List.of());
    if (one.plan().expected().isPresent()) {
      page.truth("holds", one.holds());
    } else {
      page.nothing("holds");
    }
  }

  private static String kind(SearchAnswer answer) {
    if (answer instanceof SearchAnswer.Found) {
      return "found";
    }
    return answer instanceof SearchAnswer.Infeasible ? "nearest miss" : "no answer";
  }

  private static List<SearchAnswer.Setting> settings(SearchAnswer answer) {
    if (answer instanceof SearchAnswer.Found found) {
      return found.settings();
    }
    return answer instanceof SearchAnswer.Infeasible miss ? miss.settings() : List.of();
  }

  private static List<SearchAnswer.Outcome> goals(SearchAnswer answer) {
    if (answer instanceof SearchAnswer.Found found) {
      return found.goals();
    }
    return answer instanceof SearchAnswer.Infeasible miss ? miss.goals() : List.of();
  }

  private void setting(SearchAnswer.Setting one) {
    page.text("number", one.free().input().text());
    page.text("quantity", ReportJson.name(one.free().input().dimension()));
    page.number("value", one.value());
    page.number("from", one.free().from());
    page.number("to", one.free().to());
    page.text("stop", one.stop().name().toLowerCase(Locale.ROOT));
  }

  private void goal(SearchAnswer.Outcome one) {
    page.text("goal", one.goal().text());
    if (one.answer().isPresent()) {
      figure(one.answer().get());
    } else {
      page.nothing("quantity");
      page.nothing("value");
      page.nothing("why");
    }
    if (Double.isFinite(one.missedBy())) {
      page.number("missedBy", one.missedBy());
    } else {
      page.nothing("missedBy");
    }
    page.truth("usedUp", one.isUsedUp());
  }

  private void row(Variants.Row row, StudyAnswer study) {
    page.text("figure", row.compared().figure().text());
    page.text("better", row.compared().wish().name().toLowerCase(Locale.ROOT));
    List<String> names = study.variants().map(Variants::names).orElse(List.of());
    List<Integer> columns = java.util.stream.IntStream.range(0, names.size()).boxed().toList();
    page.list("variants", columns, k -> page.object(() -> cell(names.get(k), row.cells().get(k))));
  }

  private void cell(String name, Variants.Cell cell) {
    page.text("name", name);
    figure(cell.answer());
    page.text("mark", cell.mark().word());
    page.truth("differs", cell.differs());
    optional("change", cell.change());
  }

  private void combined(StudyAnswer.Combined combined) {
    page.list("cases", combined.all(), one -> page.object(() -> combination(one)));
    page.list("envelope", combined.envelope().rows(), one -> page.object(() -> row(one)));
  }

  private void combination(Combination one) {
    page.text("name", one.loadCase().name());
    page.list(
        "groups",
        one.taken(),
        two ->
            page.object(
                () -> {
                  page.text("group", two.group());
                  page.text("role", two.role().word());
                  page.number("factor", two.factor());
                }));
  }

  private void row(Envelope.Row row) {
    page.text("ask", row.ask().text());
    page.text("quantity", row.dimension().map(ReportJson::name));
    extreme("least", row.least());
    extreme("greatest", row.greatest());
    page.list(
        "missing",
        row.missing(),
        one ->
            page.object(
                () -> {
                  page.text("case", one.loadCase());
                  page.text("why", one.why());
                }));
  }

  private void extreme(String name, Optional<Envelope.Extreme> extreme) {
    if (extreme.isEmpty()) {
      page.nothing(name);
      return;
    }
    page.object(
        name,
        () -> {
          page.number("value", extreme.get().value());
          page.text("case", extreme.get().loadCase());
          optional("driven", extreme.get().drive());
        });
  }

  private void moved(StudyAnswer.Moved moved) {
    page.text("name", moved.plan().name());
    page.text("load", moved.plan().load());
    page.texts("along", moved.plan().along());
    page.number("length", moved.load().length());
    page.list("answers", moved.influences(), one -> page.object(() -> influence(moved, one)));
  }

  private void influence(StudyAnswer.Moved moved, Influence influence) {
    page.text("ask", influence.ask().text());
    if (influence instanceof InfluenceLine line) {
      page.text("quantity", ReportJson.name(line.dimension()));
      page.nothing("why");
      page.number("withoutIt", line.base());
      page.list(
          "pieces",
          line.pieces(),
          one ->
              page.object(
                  () -> {
                    page.number("from", one.from());
                    page.number("to", one.to());
                    page.number("first", one.first());
                    page.number("last", one.last());
                  }));
      List<Train.Passage> ends = moved.extremes(line);
      page.object("least", () -> passage(ends.get(0)));
      page.object("greatest", () -> passage(ends.get(1)));
    } else {
      page.nothing("quantity");
      page.text("why", ((Influence.None) influence).why().explanation());
      page.nothing("withoutIt");
      page.list("pieces", List.<String>of(), one -> {});
      page.nothing("least");
      page.nothing("greatest");
    }
  }

  private void passage(Train.Passage passage) {
    page.number("value", passage.at().value());
    page.numbers("wheels", passage.wheels());
    page.text("side", passage.at().side().map(one -> one.name().toLowerCase(Locale.ROOT)));
  }

  private void optional(String name, OptionalDouble value) {
    if (value.isPresent()) {
      page.number(name, value.getAsDouble());
    } else {
      page.nothing(name);
    }
  }
}
