package bellcrank.examples.report;

import bellcrank.statics.device.Measure;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.limits.Efficiency;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.CourseEnd;
import bellcrank.statics.motion.Curve;
import bellcrank.statics.motion.Rest;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.motion.Work;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What happens to a device over its travel: ends, change points, a table, extremes. */
final class TravelSection {

  /** The longest head that a column of the table bears. */
  private static final int LONGEST_HEAD = 30;

  /** Share of the largest work up to which what is left over is the error of adding it up. */
  private static final double CLOSES = 1e-5;

  /** What stands for an answer that there is not. */
  private static final String NONE = "–";

  private final Page page;
  private final TravelAnswer answer;
  private final Amounts amounts;
  private final Dimension dimension;

  private TravelSection(Page page, TravelAnswer answer, Amounts amounts) {
    this.page = page;
    this.answer = answer;
    this.amounts = amounts;
    dimension = answer.plan().dimension();
  }

  static void write(Page page, TravelAnswer answer, Amounts amounts) {
    new TravelSection(page, answer, amounts).write();
  }

  private void write() {
    page.heading(
        "Over the travel: "
            + DriveWords.of(answer.plan().drive())
            + ", "
            + DriveWords.sense(answer.plan().drive()));
    if (answer.travel() instanceof Travel.Standstill standstill) {
      standstill(standstill);
    } else if (answer.travel() instanceof Course course) {
      end("it begins", course.least());
      end("it ends", course.greatest());
      for (double change : course.changePoints()) {
        page.item("change point at " + drive(change) + ": a second motion opens there");
      }
      tables();
      answer.curves().forEach(this::extremes);
      efficiencies(course);
      answer.rests().ifPresent(this::rests);
      answer.account().ifPresent(this::account);
    }
  }

  private void standstill(Travel.Standstill standstill) {
    boolean some = !standstill.freedoms().isEmpty();
    page.item(
        "it cannot be driven so: " + standstill.reason().words() + (some ? ". Free to move:" : ""));
    standstill.freedoms().forEach(freedom -> page.subitem(amounts.motion(freedom)));
  }

  private void end(String verb, CourseEnd end) {
    page.item(verb + " at " + drive(end.drive()) + ": " + DriveWords.why(end));
  }

  private String drive(double value) {
    return amounts.text(value, dimension);
  }

  /** As many tables as the width of the page asks for; each begins with the drive. */
  private void tables() {
    if (answer.curves().isEmpty()) {
      return;
    }
    List<String> heads = new ArrayList<>();
    for (Curve curve : answer.curves()) {
      String full = amounts.head(curve.ask().text(), curve.dimension());
      boolean fits = Wrapping.length(full) <= LONGEST_HEAD;
      String mark = "(" + (heads.size() + 1) + ")";
      if (!fits) {
        page.item("column " + mark + ": " + full);
      }
      heads.add(fits ? full : mark);
    }
    int from = 0;
    while (from < heads.size()) {
      int to = from + 1;
      while (to < heads.size() && width(table(heads, from, to + 1)) <= Page.WIDTH - 2) {
        to++;
      }
      if (from > 0) {
        page.gap();
      }
      page.table(table(heads, from, to));
      from = to;
    }
    why();
  }

  private static int width(Table table) {
    return table.lines(Integer.MAX_VALUE).stream().mapToInt(Wrapping::length).max().orElse(0);
  }

  private Table table(List<String> heads, int from, int to) {
    Table table = new Table();
    String head = DriveWords.head(answer.plan().drive());
    table.column(amounts.head(head, dimension), Table.Kind.NUMBERS);
    heads.subList(from, to).forEach(one -> table.column(one, Table.Kind.NUMBERS));
    for (TravelAnswer.Row row : answer.rows()) {
      List<String> cells = new ArrayList<>();
      cells.add(amounts.number(row.drive(), dimension));
      row.answers().subList(from, to).forEach(one -> cells.add(cell(one)));
      table.row(cells);
    }
    return table;
  }

  private String cell(Answer answer) {
    return answer instanceof Answer.Value value
        ? amounts.number(value.si(), value.dimension())
        : NONE;
  }

  /** Why some cells are empty. */
  private void why() {
    Set<String> reasons = new LinkedHashSet<>();
    for (TravelAnswer.Row row : answer.rows()) {
      for (Answer one : row.answers()) {
        if (one instanceof Answer.Unanswered none) {
          reasons.add(none.explanation());
        }
      }
    }
    reasons.forEach(reason -> page.item(NONE + " no answer: " + reason));
  }

  private void extremes(Curve curve) {
    if (curve.least().isEmpty() || curve.greatest().isEmpty()) {
      page.item(curve.ask().text() + ": no answer on the way");
      return;
    }
    String low = extreme(curve, curve.least().get(), "falling");
    String high = extreme(curve, curve.greatest().get(), "rising");
    String one = amounts.text(curve.least().get().value(), curve.dimension());
    boolean constant = high.startsWith(one + " at ") && low.startsWith(one + " at ");
    page.item(
        curve.ask().text()
            + ": "
            + (constant ? one + " all the way" : "least " + low + ", greatest " + high));
  }

  private String extreme(Curve curve, Curve.Sample extreme, String open) {
    if (curve.isBoundless(extreme)) {
      return "without bound, near " + drive(extreme.drive());
    }
    return amounts.text(extreme.value(), curve.dimension())
        + " at "
        + drive(extreme.drive())
        + (answer.isOpen(curve, extreme)
            ? " and still " + open + " towards the end, where it has no value"
            : "");
  }

  /** Where nothing is lost, an efficiency tells of other loads only; else how exact it is. */
  private void efficiencies(Course course) {
    boolean asked =
        answer.curves().stream()
            .map(curve -> curve.ask().measure())
            .anyMatch(one -> one == Measure.EFFICIENCY || one == Measure.RETURN_EFFICIENCY);
    if (!asked) {
      return;
    }
    double gap = 0;
    boolean none = true;
    for (TravelAnswer.Row row : answer.rows()) {
      Efficiency efficiency =
          Limits.of(course.device(), course.loadCase(), course.pose(row.drive()), List.of())
              .efficiency()
              .orElseThrow();
      none = none && efficiency.frictionless();
      gap = Math.max(gap, efficiency.gap());
    }
    if (none) {
      page.item(
          "no part has friction or losses: what an efficiency differs by from 1 is the work of"
              + " other loads");
    } else if (gap > 0) {
      page.item(
          "dry pins are closed in from two sides: the efficiencies may be too favourable by "
              + String.format(Locale.ROOT, "%.0e", gap)
              + " at most");
    }
  }

  private void rests(List<Rest.Place> places) {
    if (places.isEmpty()) {
      page.item("left alone, it rests nowhere on the way");
      return;
    }
    page.item("left alone, without efforts and friction:");
    for (Rest.Place place : places) {
      page.subitem(
          (place.from() == place.to()
                  ? "at " + drive(place.drive())
                  : "from " + drive(place.from()) + " to " + drive(place.to()))
              + " it "
              + place.words());
    }
  }

  /** The account of work: what the efforts do, the loads take, springs keep and sheaves lose. */
  private void account(TravelAnswer.Account account) {
    Work work = account.work();
    String springs = work.stored() == 0 ? "" : ", springs take up " + energy(work.stored());
    String rest =
        work.share() <= CLOSES
            ? "nothing is left over ("
                + String.format(Locale.ROOT, "%.0e", work.share())
                + " of the largest)"
            : energy(work.lost()) + " is left over, in losses or in the adding up";
    page.item(
        "work from "
            + drive(account.from())
            + " to "
            + drive(account.to())
            + ": the efforts do "
            + energy(work.effort())
            + ", the loads do "
            + energy(work.loads())
            + springs
            + "; "
            + rest);
  }

  private String energy(double si) {
    return amounts.text(si, Dimension.MOMENT);
  }
}
