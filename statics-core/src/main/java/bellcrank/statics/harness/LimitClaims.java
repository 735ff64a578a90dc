package bellcrank.statics.harness;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.limits.Event;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.units.Unit;
import java.util.List;
import java.util.Optional;

/** Holds the limit of what is varied against what is expected. */
final class LimitClaims {

  /** Share of a multiple or distance that is rounding. */
  private static final double ROUNDING = 1e-9;

  private static final String BUT = ", but ";

  private final Setup setup;
  private final Variation variation;
  private final Numbers numbers;
  private final StandingWords standing;

  LimitClaims(Setup setup, Variation variation) {
    this.setup = setup;
    this.variation = variation;
    numbers = Numbers.of(setup.shown());
    standing = StandingWords.of(setup.shown());
  }

  /**
   * What is wrong with saying that the device holds up to a value: from the loads as they are
   * stated, or from distance 0, on.
   */
  Optional<Message> holdsUntilAtLeast(double value) {
    StatedBound wanted = bound(value);
    String expected =
        setup.name()
            + " is expected to hold with "
            + VariedWords.upTo(variation, wanted.text())
            + BUT;
    Limit limit = setup.limits().limit(variation);
    if (!(limit instanceof Limit.Between between)) {
      return Optional.of(nowhere(expected, limit));
    }
    double start = start(value);
    if (between.least() instanceof Limit.End.At low && low.value() > start + room(start)) {
      return Optional.of(
          atEnd(expected + "it holds only from " + number(start, low.value()) + " on", low, 1));
    }
    if (between.least() instanceof Limit.End.Open open) {
      return Optional.of(undecided(expected, open.why()));
    }
    return beforeValue(expected, wanted, between.greatest());
  }

  private Optional<Message> beforeValue(String expected, StatedBound wanted, Limit.End end) {
    double value = wanted.si();
    if (end instanceof Limit.End.At at && at.value() < value - room(value)) {
      String open =
          at.value() + at.gap() >= value ? ", and whether it does so already is not decided" : "";
      String missing =
          numbers.gap(value - at.value(), value, wanted.unit()) + " short of " + wanted.text();
      String gives = "it gives way with " + number(value, at.value()) + ", " + missing + open;
      return Optional.of(
          atEnd(expected + (at.value() < 0 ? "it does not hold even without any" : gives), at, -1));
    }
    requireOnLine(end, wanted);
    return end instanceof Limit.End.Open open
        ? Optional.of(undecided(expected, open.why()))
        : Optional.empty();
  }

  /** What is wrong with saying that a part, or any, does not slip before a value. */
  Optional<Message> slipsNotBefore(Optional<String> part, double value) {
    part.ifPresent(name -> requirePart(setup.device(), name));
    StatedBound wanted = bound(value);
    String expected =
        part.orElse("no part")
            + " of "
            + setup.name()
            + " is expected"
            + (part.isPresent() ? " not" : "")
            + " to slip with "
            + VariedWords.upTo(variation, wanted.text())
            + BUT;
    Limit limit = setup.limits().limit(variation);
    if (!(limit instanceof Limit.Between between)) {
      return Optional.of(nowhere(expected, limit));
    }
    if (between.greatest() instanceof Limit.End.Open open) {
      return Optional.of(undecided(expected, open.why()));
    }
    requireOnLine(between.greatest(), wanted);
    double start = start(value);
    if (between.least() instanceof Limit.End.At low
        && low.value() > start + room(start)
        && slips(part, low)) {
      return Optional.of(
          atEnd(expected + "it holds only from " + number(start, low.value()) + " on", low, 1));
    }
    return between.greatest() instanceof Limit.End.At at
            && at.value() < value - room(value)
            && slips(part, at)
        ? Optional.of(atEnd(expected + "it gives way with " + number(value, at.value()), at, -1))
        : Optional.empty();
  }

  /** Whether a part, or any, slips at an end; where nothing is told of it, it may. */
  private static boolean slips(Optional<String> part, Limit.End.At end) {
    List<Event> events = end.how().events();
    return (events.isEmpty() && end.how().motion().isEmpty())
        || events.stream()
            .filter(event -> part.isEmpty() || part.get().equals(event.part()))
            .anyMatch(event -> slips(event.kind()));
  }

  /** From where on it is to hold: with its loads as stated, or at the end of a line. */
  private double start(double value) {
    return variation instanceof Variation.Place ? 0 : Math.min(1, value);
  }

  private void requireOnLine(Limit.End end, StatedBound wanted) {
    double value = wanted.si();
    if (end instanceof Limit.End.EndOfLine line && line.value() < value - room(value)) {
      throw new ModelException(
          setup.device().name(),
          "distance",
          wanted.text(),
          "at most " + number(value, line.value()) + ", where the line ends");
    }
  }

  private static boolean slips(Event.Kind kind) {
    return kind == Event.Kind.SLIDES || kind == Event.Kind.SLIPS_ROUND;
  }

  /** What is wrong with saying that a part is the first to give way. */
  Optional<Message> firstToGiveWay(String part) {
    requirePart(setup.device(), part);
    String expected =
        part
            + " of "
            + setup.name()
            + " is expected to give way first as "
            + VariedWords.varies(variation)
            + BUT;
    Limit limit = setup.limits().limit(variation);
    if (!(limit instanceof Limit.Between between)) {
      return Optional.of(nowhere(expected, limit));
    }
    if (between.greatest() instanceof Limit.End.Open open) {
      return Optional.of(undecided(expected, open.why()));
    }
    if (between.greatest() instanceof Limit.End.At at) {
      boolean first = at.how().events().stream().anyMatch(event -> event.part().equals(part));
      return first
          ? Optional.empty()
          : Optional.of(
              atEnd(expected + "with " + number(at.value(), at.value()) + " others do so", at, -1));
    }
    String none =
        between.greatest() instanceof Limit.End.EndOfLine
            ? "nothing gives way up to the end of the line"
            : between.greatest() instanceof Limit.End.SelfLocking
                ? "nothing gives way, for the device locks itself"
                : "nothing gives way, however far";
    return Optional.of(Message.of(expected + none + ".").with(setup.shown(), concerned(part)));
  }

  private Message nowhere(String expected, Limit limit) {
    if (limit instanceof Limit.NotDecided open) {
      return undecided(expected, open.why());
    }
    return Message.of(
            expected
                + "it holds at no value of that; as stated, "
                + new StandingClaims(setup).words()
                + ".")
        .with(setup.shown(), List.of());
  }

  private static Message undecided(String expected, String why) {
    return Message.of(expected + "that was not decided: " + why + ".");
  }

  /**
   * With how it gives way at an end, and the forces there; the device holds in that sense of it.
   */
  private Message atEnd(String sentence, Limit.End.At end, int sense) {
    GivingWay how = end.how();
    List<String> bodies =
        how.events().isEmpty() ? List.of() : concerned(how.events().get(0).part());
    return Message.of(sentence + ": " + standing.of(how) + ".").with(stateAt(end, sense), bodies);
  }

  /** The state at an end where its loads can be stated; else the one under the stated loads. */
  private Setup.Shown stateAt(Limit.End.At end, int sense) {
    if (variation instanceof Variation.Multiple multiple) {
      // a hair within, since no state is left a hair beyond
      double within = end.value() + sense * room(end.value());
      Optional<Setup.Shown> there =
          setup
              .grown(multiple, within)
              .flatMap(grown -> grown.limits().withLeastForces())
              .map(balance -> new Setup.Shown(balance, setup.units(), ""));
      if (there.isPresent()) {
        return there.get().remarked("with " + number(end.value(), end.value()));
      }
    }
    return setup.shown().remarked("under the loads as they are stated");
  }

  private List<String> concerned(String part) {
    return new ConcernedBodies(setup.device()).ofPart(part);
  }

  private StatedBound bound(double value) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      throw new ModelException(setup.device().name(), "limit", value, "a finite number");
    }
    Unit unit = setup.units().unit(VariedWords.dimension(variation));
    return new StatedBound(Numbers.stated(value, unit), value, unit);
  }

  private String number(double other, double value) {
    return VariedWords.at(
        variation,
        numbers.apartFrom(other, value, setup.units().unit(VariedWords.dimension(variation))));
  }

  private static double room(double value) {
    return ROUNDING * Math.max(1, Math.abs(value));
  }

  /** The name must be of a part that can give way. */
  static void requirePart(Device device, String part) {
    if (device.connection(part).isEmpty()) {
      List<String> names = device.connections().stream().map(one -> one.name()).toList();
      throw new ModelException(
          device.name(), "connection", '"' + part + '"', "one of: " + String.join(", ", names));
    }
  }
}
