package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.limits.Range;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;

/** What was sought, and how much it is. */
final class SoughtSection {

  private static final String NOT_FIXED = "not fixed by statics";

  private final CaseSolution solution;
  private final Balance balance;
  private final Amounts amounts;
  private final UnitSystem units;

  private SoughtSection(CaseSolution solution, Amounts amounts, UnitSystem units) {
    this.solution = solution;
    balance = solution.balance();
    this.amounts = amounts;
    this.units = units;
  }

  static void write(
      Page page,
      CaseSolution solution,
      Optional<LimitsAnswer> limits,
      Amounts amounts,
      UnitSystem units) {
    List<Sought> sought = solution.balance().device().sought();
    if (sought.isEmpty()) {
      return;
    }
    page.heading("Sought");
    SoughtSection section = new SoughtSection(solution, amounts, units);
    boolean ranges = false;
    for (Sought one : sought) {
      Optional<EffortRange> range = limits.flatMap(answer -> answer.effort(one.name()));
      if (range.isPresent()) {
        section.write(page, range.get());
        ranges = true;
      } else {
        page.item(one.name() + ": " + section.words(one));
      }
    }
    if (!section.balance.undetermined().isEmpty() && !ranges) {
      TooManySought.words(section.balance).ifPresent(words -> page.item("(" + words + ")"));
    }
  }

  private void write(Page page, EffortRange effort) {
    Sought sought = effort.sought();
    Range range = effort.range();
    String stated =
        switch (sought.want()) {
          case FORCE, INTENSITY, COMPONENTS ->
              sought.direction().map(way -> " " + DirectionWords.of(way.x(), way.y())).orElse("");
          case COUPLE, MASS -> "";
        };
    page.item(
        sought.name()
            + ": "
            + between(range)
            + stated
            + sense(sought, range)
            + " on "
            + Listing.quoted(sought.body())
            + place(sought)
            + (effort.holdsWithNone() ? "; it holds without any as well" : ""));
    effort.below().ifPresent(how -> page.subitem("with less: " + how.words(device(), units)));
    effort.above().ifPresent(how -> page.subitem("with more: " + how.words(device(), units)));
  }

  /** What the sign means, where it is not plain. */
  private String sense(Sought sought, Range range) {
    if (sought.want() == Sought.Want.COUPLE) {
      return isOnScrew(sought)
          ? " (positive drives its ends apart)"
          : " (positive counter-clockwise)";
    }
    return range.least().orElse(-1) < 0 ? " (negative: the other way)" : "";
  }

  private Device device() {
    return balance.device();
  }

  private String between(Range range) {
    if (range.least().isEmpty() && range.greatest().isEmpty()) {
      return "any size";
    }
    if (range.greatest().isEmpty()) {
      return amounts.text(range.least().getAsDouble(), range.dimension()) + " or more";
    }
    String most = amounts.text(range.greatest().getAsDouble(), range.dimension());
    return range.least().isEmpty()
        ? most + " or less"
        : "anything from "
            + amounts.text(range.least().getAsDouble(), range.dimension())
            + " to "
            + most;
  }

  private String words(Sought sought) {
    Answer answer = answer(sought, Measure.VALUE);
    if (answer instanceof Answer.Unanswered none && none.reason() == Answer.Reason.UNDETERMINED) {
      return NOT_FIXED;
    }
    if (!(answer instanceof Answer.Value value)) {
      return AnswerWords.of(answer, amounts, Amounts.DIGITS);
    }
    String place = " on " + Listing.quoted(sought.body()) + place(sought);
    return switch (sought.want()) {
      case FORCE -> force(sought.direction().orElseThrow(), value.si(), place);
      case COMPONENTS -> components(sought, place);
      case COUPLE -> couple(sought, value.si(), place);
      case MASS -> mass(value.si(), place);
      case INTENSITY -> intensity(sought.direction().orElseThrow(), value.si(), place);
    };
  }

  private static String place(Sought sought) {
    String at = sought.at().map(Listing::quoted).orElse("");
    return sought
        .to()
        .map(end -> " from " + at + " to " + Listing.quoted(end))
        .orElse(at.isEmpty() ? "" : " at " + at);
  }

  private Answer answer(Sought sought, Measure measure) {
    return solution.answer(Ask.of(sought.name(), measure));
  }

  private String force(Direction wanted, double size, String place) {
    String force = amounts.force(wanted.x() * size, wanted.y() * size) + place;
    return force + against(size, Dimension.FORCE);
  }

  private String intensity(Direction wanted, double size, String place) {
    String text = amounts.text(Math.abs(size), Dimension.FORCE_PER_LENGTH);
    double sense = Math.signum(size);
    String direction =
        size == 0 ? "" : " " + DirectionWords.of(wanted.x() * sense, wanted.y() * sense);
    return text + direction + place + against(size, Dimension.FORCE_PER_LENGTH);
  }

  private String against(double size, Dimension dimension) {
    boolean against = size < 0 && !amounts.isZero(size, dimension);
    return against ? "; this is against the direction that was stated" : "";
  }

  private String components(Sought sought, String place) {
    if (answer(sought, Measure.X) instanceof Answer.Value x
        && answer(sought, Measure.Y) instanceof Answer.Value y) {
      return amounts.force(x.si(), y.si())
          + place
          + "; x "
          + amounts.text(x.si(), Dimension.FORCE)
          + ", y "
          + amounts.text(y.si(), Dimension.FORCE);
    }
    return NOT_FIXED;
  }

  private boolean isOnScrew(Sought sought) {
    return device().connection(sought.body()).isPresent();
  }

  private String couple(Sought sought, double moment, String place) {
    String size = amounts.text(Math.abs(moment), Dimension.MOMENT);
    boolean none = amounts.isZero(moment, Dimension.MOMENT);
    String way =
        isOnScrew(sought)
            ? moment < 0 ? "drawing its ends together" : "driving its ends apart"
            : DirectionWords.turning(moment);
    return size + (none ? "" : " " + way) + place;
  }

  private String mass(double mass, String place) {
    String text = amounts.text(mass, Dimension.MASS) + place;
    boolean negative = mass < 0 && !amounts.isZero(mass, Dimension.MASS);
    return negative ? text + "; no mass can do this, something has to push up" : text;
  }
}
