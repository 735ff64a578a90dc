package bellcrank.statics.harness;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.limits.Event;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Holds the limit of what is varied against what is expected. */
final class LimitClaims {

  /** Share of a multiple or distance that is rounding. */
  private static final double ROUNDING = 1e-9;

  private static final String BUT = ", but ";

  private final Setup setup;
  private final Variation variation;
  private final Figures figures;
  private final StandingWords standing;

  LimitClaims(Setup setup, Variation variation) {
    this.setup = setup;
    this.variation = variation;
    figures = Figures.of(setup.shown());
    standing = StandingWords.of(setup.shown());
  }

  /**
   * What is wrong with saying that the device holds up to a value: from the loads as they are
   * stated, or from distance 0, on.
   */
  Optional<Message> holdsUntilAtLeast(double value) {
    Bound wanted = bound(value);
    String expected =
        setup.name()
            + " is expected to hold until at least "
            + VariedWords.at(variation, wanted.text())
            + BUT;
    Limit limit = setup.limits().limit(variation);
    if (!(limit instanceof Limit.Between between)) {
      return Optional.of(nowhere(expected, limit));
    }
    double start = variation instanceof Variation.Place ? 0 : Math.min(1, value);
    if (between.least() instanceof Limit.End.At low && low.value() > start + room(start)) {
      return Optional.of(
          atEnd(expected + "it holds only from " + number(start, low.value()) + " on", low));
    }
    if (between.least() instanceof Limit.End.Open open) {
      return Optional.of(undecided(expected, open.why()));
    }
    return beforeValue(expected, wanted, between.greatest());
  }

  private Optional<Message> beforeValue(String expected, Bound wanted, Limit.End end) {
    double value = wanted.si();
    if (end instanceof Limit.End.At at && at.value() < value - room(value)) {
      String open =
          at.value() + at.gap() >= value ? ", and whether it does so already is not decided" : "";
      String missing =
          figures.gap(value - at.value(), value, wanted.unit()) + " short of " + wanted.text();
      return Optional.of(
          atEnd(expected + "it gives way at " + number(value, at.value()) + ", " + missing + open, at));
    }
    if (end instanceof Limit.End.EndOfLine line && line.value() < value - room(value)) {
      throw new ModelException(
          setup.device().name(),
          "distance",
          wanted.text(),
          "at most " + number(value, line.value()) + ", where the line ends");
    }
    return end instanceof Limit.End.Open open
        ? Optional.of(undecided(expected, open.why()))
        : Optional.empty();
  }

  /** What is wrong with saying that a part, or any, does not slip before a value. */
  Optional<Message> slipsNotBefore(Optional<String> part, double value) {
    part.ifPresent(name -> requirePart(setup.device(), name));
    Bound wanted = bound(value);
    String expected =
        part.orElse("no part")
            + " of "
            + setup.name()
            + " is expected to slip"
            + (part.isPresent() ? " not before " : " before ")
            + VariedWords.at(variation, wanted.text())
            + BUT;
    Limit limit = setup.limits().limit(variation);
    if (!(limit instanceof Limit.Between between)) {
      return Optional.of(nowhere(expected, limit));
    }
    if (between.greatest() instanceof Limit.End.Open open) {
      return Optional.of(undecided(expected, open.why()));
    }
    if (!(between.greatest() instanceof Limit.End.At at) || at.value() >= value - room(value)) {
      return Optional.empty();
    }
    List<Event> slipping =
        at.how().events().stream()
            .filter(event -> part.isEmpty() || part.get().equals(event.part()))
            .filter(event -> slips(event.kind()))
            .toList();
    if (slipping.isEmpty() && !at.how().events().isEmpty()) {
      return Optional.empty();
    }
    String happens =
        slipping.isEmpty()
            ? "it gives way"
            : slipping.stream()
                .map(event -> event.part() + " " + event.words())
                .collect(Collectors.joining(" and "));
    return Optional.of(atEnd(expected + happens + " at " + number(value, at.value()), at));
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
            + VariedWords.of(variation)
            + (variation instanceof Variation.Place ? " moves" : " grows")
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
              atEnd(expected + "at " + number(at.value(), at.value()) + " others do so", at));
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

  /** With how it gives way at an end, and the forces there. */
  private Message atEnd(String sentence, Limit.End.At end) {
    GivingWay how = end.how();
    List<String> bodies =
        how.events().isEmpty() ? List.of() : concerned(how.events().get(0).part());
    return Message.of(sentence + ": " + standing.of(how) + ".").with(stateAt(end), bodies);
  }

  /** The state at an end where its loads can be stated; else the one under the stated loads. */
  private Setup.Shown stateAt(Limit.End.At end) {
    if (variation instanceof Variation.Multiple multiple) {
      // a hair within, since no state is left a hair beyond
      double within = end.value() - Math.signum(end.value()) * room(end.value());
      Optional<Setup.Shown> there =
          setup
              .grown(multiple, within)
              .flatMap(grown -> grown.limits().withLeastForces())
              .map(balance -> new Setup.Shown(balance, setup.units(), ""));
      if (there.isPresent()) {
        return there.get().remarked("at " + number(end.value(), end.value()));
      }
    }
    return setup.shown().remarked("under the loads as they are stated");
  }

  private List<String> concerned(String part) {
    return new ConcernedBodies(setup.device()).ofPart(part);
  }

  private Bound bound(double value) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      throw new ModelException(setup.device().name(), "limit", value, "a finite number");
    }
    Unit unit = setup.units().unit(VariedWords.dimension(variation));
    String text = new Quantity(value, unit.dimension()).format(unit, 4);
    return new Bound(trimmed(text), value, unit);
  }

  /** Without zeros behind the last digit that counts. */
  private static String trimmed(String text) {
    return text.replaceFirst("(\\.[0-9]*?)0+(?= |$)", "$1").replaceFirst("\\.(?= |$)", "");
  }

  private String number(double other, double value) {
    return VariedWords.at(
        variation,
        figures.apartFrom(
            other,
            value,
            setup.units().unit(VariedWords.dimension(variation))));
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
