package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.units.Dimension;
import java.util.List;

/** What was sought, and how much it is. */
final class SoughtSection {

  private static final String NOT_FIXED = "not fixed by statics";

  private final Balance balance;
  private final Amounts amounts;

  private SoughtSection(Balance balance, Amounts amounts) {
    this.balance = balance;
    this.amounts = amounts;
  }

  static void write(Page page, Balance balance, Amounts amounts) {
    List<Sought> sought = balance.device().sought();
    if (sought.isEmpty()) {
      return;
    }
    page.heading("Sought");
    SoughtSection section = new SoughtSection(balance, amounts);
    for (Sought one : sought) {
      page.item(one.name() + ": " + section.words(one));
    }
    if (!balance.undetermined().isEmpty()) {
      TooManySought.words(balance).ifPresent(words -> page.item("(" + words + ")"));
    }
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
      case COUPLE -> couple(value.si(), place);
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
    return balance.answer(Ask.of(sought.name(), measure));
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

  private String couple(double moment, String place) {
    String size = amounts.text(Math.abs(moment), Dimension.MOMENT);
    boolean none = amounts.isZero(moment, Dimension.MOMENT);
    return size + (none ? "" : " " + DirectionWords.turning(moment)) + place;
  }

  private String mass(double mass, String place) {
    String text = amounts.text(mass, Dimension.MASS) + place;
    boolean negative = mass < 0 && !amounts.isZero(mass, Dimension.MASS);
    return negative ? text + "; no mass can do this, something has to push up" : text;
  }
}
