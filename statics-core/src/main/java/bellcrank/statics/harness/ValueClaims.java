package bellcrank.statics.harness;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.limits.Range;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Unit;
import java.util.Optional;

/** Holds the answer to an ask, or the range of its answers, against limits. */
record ValueClaims(Told told) {

  private static final String END = ".";

  /** What is wrong with saying that the answer is not below a limit. */
  Optional<Message> atLeast(String low) {
    return within("at least " + low, Optional.of(low), Optional.empty());
  }

  /** What is wrong with saying that the answer is not above a limit. */
  Optional<Message> atMost(String high) {
    return within("at most " + high, Optional.empty(), Optional.of(high));
  }

  /** What is wrong with saying that the answer lies between two limits, both included. */
  Optional<Message> between(String low, String high) {
    return within("between " + low + " and " + high, Optional.of(low), Optional.of(high));
  }

  /** What is wrong with saying that the answer is near a value; angles count modulo a turn. */
  Optional<Message> closeTo(String value, String allowed) {
    Range range = told.range().orElse(null);
    if (range == null) {
      return Optional.of(unanswered("within " + allowed + " of " + value));
    }
    StatedBound near = bound(value, range.dimension());
    StatedBound room = bound(allowed, range.dimension());
    if (room.si() < 0) {
      throw new ModelException(told.ask().text(), "allowed difference", allowed, "0 or more");
    }
    return near(range, near, room.si(), "within " + allowed + " of " + value);
  }

  /** The same with a share of the value. */
  Optional<Message> closeTo(String value, double percent) {
    String share = Double.toString(percent).replaceFirst("\\.0$", "") + " %";
    Range range = told.range().orElse(null);
    if (range == null) {
      return Optional.of(unanswered("within " + share + " of " + value));
    }
    StatedBound near = bound(value, range.dimension());
    if (near.si() == 0) {
      throw new ModelException(
          told.ask().text(), "allowed difference", share + " of zero", "a quantity of its own");
    }
    double room = Math.abs(near.si()) * percent / 100;
    return near(range, near, room, "within " + share + " of " + value);
  }

  /** What is wrong with saying that the answer is these words. */
  Optional<Message> words(String text) {
    if (told.answer() instanceof Answer.Words words && words.text().equals(text)) {
      return Optional.empty();
    }
    String found =
        told.answer() instanceof Answer.Words words
            ? "it is \"" + words.text() + "\""
            : told.range().map(this::found).orElseGet(this::none);
    return Optional.of(
        message("\"" + text + "\"", found + "; " + new StandingClaims(told.setup()).words()));
  }

  /** What is wrong with saying that statics gives no one answer. */
  Optional<Message> unanswered(Answer.Reason reason) {
    if (told.answer() instanceof Answer.Unanswered none && none.reason() == reason) {
      return Optional.empty();
    }
    String found =
        told.answer() instanceof Answer.Unanswered
            ? none()
            : told.range().map(this::found).orElse("it is answered by no number");
    return Optional.of(message(open(reason), found));
  }

  private static String open(Answer.Reason reason) {
    return switch (reason) {
      case NO_BALANCE -> "without an answer for want of balance";
      case UNDETERMINED -> "not fixed by statics";
      case NOT_DEFINED -> "without a meaning";
      case NOT_DECIDED -> "not decided by balance alone";
      case UNLIMITED -> "without an end";
    };
  }

  private Optional<Message> near(Range range, StatedBound near, double allowed, String expected) {
    LoadScale scale = LoadScale.of(told.setup().balance());
    double room = allowed + near.room(scale);
    double low = difference(range, near, range.least().orElse(Double.NEGATIVE_INFINITY));
    double high = difference(range, near, range.greatest().orElse(Double.POSITIVE_INFINITY));
    double worst = Math.abs(low) > Math.abs(high) ? low : high;
    if (Math.abs(worst) + range.gap() <= room) {
      return Optional.empty();
    }
    String off =
        Double.isInfinite(worst)
            ? ""
            : ": "
                + numbers().gap(worst, near.si(), near.unit())
                + (worst > 0 ? " above" : " below")
                + " it";
    return Optional.of(message(expected, found(range, near) + off));
  }

  private static double difference(Range range, StatedBound near, double value) {
    double plain = value - near.si();
    return range.dimension() == Dimension.ANGLE && Double.isFinite(plain)
        ? Math.IEEEremainder(plain, 2 * Math.PI)
        : plain;
  }

  private Optional<Message> within(String expected, Optional<String> low, Optional<String> high) {
    Range range = told.range().orElse(null);
    if (range == null) {
      return Optional.of(unanswered(expected));
    }
    LoadScale scale = LoadScale.of(told.setup().balance());
    StatedBound least = low.map(text -> bound(text, range.dimension())).orElse(null);
    StatedBound most = high.map(text -> bound(text, range.dimension())).orElse(null);
    if (least != null && most != null && least.si() > most.si()) {
      throw new ModelException(
          told.ask().text(), "limits", least.text() + " and " + most.text(), "the smaller first");
    }
    if (least != null) {
      double found = range.least().orElse(Double.NEGATIVE_INFINITY) - range.gap();
      if (found < least.si() - least.room(scale)) {
        return Optional.of(
            message(expected, found(range, least) + missed(found, least, "below"), shown(false)));
      }
    }
    if (most != null) {
      double found = range.greatest().orElse(Double.POSITIVE_INFINITY) + range.gap();
      if (found > most.si() + most.room(scale)) {
        return Optional.of(
            message(expected, found(range, most) + missed(found, most, "above"), shown(true)));
      }
    }
    return Optional.empty();
  }

  private String missed(double found, StatedBound bound, String side) {
    return Double.isInfinite(found)
        ? ", without end " + side + " " + bound.text()
        : ": "
            + numbers().gap(found - bound.si(), bound.si(), bound.unit())
            + " "
            + side
            + " "
            + bound.text();
  }

  private String found(Range range) {
    Unit unit = told.setup().units().unit(range.dimension());
    double itself = range.least().orElse(0);
    return found(range, new StatedBound("", itself, unit));
  }

  /** What was found, in the unit of the limit. */
  private String found(Range range, StatedBound bound) {
    if (range.isOne()) {
      return "it is " + number(range.least().orElseThrow(), bound);
    }
    String low = range.least().isPresent() ? number(range.least().getAsDouble(), bound) : "no end";
    String high =
        range.greatest().isPresent() ? number(range.greatest().getAsDouble(), bound) : "no end";
    return "it lies between " + low + " and " + high + " in the states in which it can rest";
  }

  private String number(double si, StatedBound bound) {
    return numbers().apartFrom(bound.si(), si, bound.unit());
  }

  /** Why there is no number. */
  private Message unanswered(String expected) {
    return message(expected, none());
  }

  private String none() {
    if (told.answer() instanceof Answer.Words words) {
      return "it is answered by words: \"" + words.text() + "\"";
    }
    if (told.answer() instanceof Answer.LineOfAction) {
      return "it is answered by a line";
    }
    if (!(told.answer() instanceof Answer.Unanswered none)) {
      return "it has no range of answers";
    }
    String why = "there is no answer: " + none.explanation();
    if (none.reason() == Answer.Reason.NO_BALANCE) {
      return why + "; " + new StandingClaims(told.setup()).words();
    }
    Optional<Range> range =
        told.setup().isDecidedByLimits()
                && none.reason() != Answer.Reason.NOT_DEFINED
                && none.reason() != Answer.Reason.UNLIMITED
            ? told.setup().range(told.ask())
            : Optional.empty();
    return range.map(one -> why + "; " + found(one)).orElse(why);
  }

  /** The state at an end of the range, where there is one to be had. */
  private Setup.Shown shown(boolean greatest) {
    Optional<Setup.Shown> end =
        told.states() && told.range().filter(range -> !range.isOne()).isPresent()
            ? told.setup().shownAtEnd(told.ask(), greatest)
            : Optional.empty();
    return end.orElseGet(() -> told.setup().shown());
  }

  private Message message(String expected, String found) {
    return message(expected, found, told.setup().shown());
  }

  private Message message(String expected, String found, Setup.Shown shown) {
    return Message.of(
            told.ask().text()
                + " on "
                + told.setup().name()
                + " is expected to be "
                + expected
                + (told.states() ? " in every state" : "")
                + ", but "
                + found
                + END)
        .with(shown, new ConcernedBodies(told.setup().device()).of(told.ask()));
  }

  private StatedBound bound(String text, Dimension dimension) {
    return StatedBound.parse(told.ask().text(), text, dimension, told.setup().units());
  }

  private Numbers numbers() {
    return Numbers.of(told.setup().shown());
  }
}
