package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Problem;
import bellcrank.statics.device.Subject;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code ask} and {@code expect}. */
final class AsksReader {

  private static final int LONGEST = 4000;

  private final Reading reading;
  private final Optional<Device> device;
  private final List<String> cases;
  private boolean ofStrength;
  private Dimension drive = Dimension.ANGLE;

  /**
   * The device is empty if it could not be built; names in asks are then checked by half. The cases
   * are empty if they are not known.
   */
  AsksReader(Reading reading, Optional<Device> device, List<String> cases) {
    this.reading = reading;
    this.device = device;
    this.cases = cases;
  }

  /** From now on expectations may be about strength; the drive is measured so. */
  void strength(Optional<Dimension> driven) {
    ofStrength = true;
    drive = driven.orElse(Dimension.ANGLE);
  }

  List<Ask> asks(Spot spot) {
    List<Ask> asks = new ArrayList<>();
    for (Spot item : spot.items("a list of asks such as [heel.x, advantage]").orElse(List.of())) {
      item.text("an ask such as heel.x").flatMap(text -> ask(text, item)).ifPresent(asks::add);
    }
    return asks;
  }

  /** One ask that is answered by a number. */
  Optional<Ask> numberAsk(Spot spot) {
    Optional<Ask> ask = spot.text("an ask such as heel.x").flatMap(text -> ask(text, spot));
    return ask.isPresent() && AskDimension.of(ask.get(), reading.parts()).isEmpty()
        ? spot.refuse("an ask that is answered by a number")
        : ask;
  }

  List<Expectation> expectations(Spot spot) {
    List<Expectation> expectations = new ArrayList<>();
    Map<String, Mark> seen = new HashMap<>();
    Optional<Fields> fields = spot.fields("asks with values, such as ram: {value: 15, digits: 3}");
    for (Named named : fields.map(Fields::named).orElse(List.of())) {
      Optional<Ask> ask = expected(named.text(), named.name());
      Optional<Fields> stated =
          named.value().fields("an expected value, such as {value: 15 N, digits: 3}");
      if (ask.isPresent() && stated.isPresent()) {
        Mark first = seen.putIfAbsent(ask.get().text(), named.name().mark());
        if (first != null) {
          named
              .name()
              .report("each ask once; the same is asked in line " + first.line() + " already");
        }
        expectation(ask.get(), named, stated.get()).ifPresent(expectations::add);
      }
    }
    return expectations;
  }

  private Optional<Expectation> expectation(Ask ask, Named named, Fields fields) {
    fields.only(FileKeys.EXPECT);
    Draft draft = new Draft(reading, named.text(), named.name(), fields);
    Optional<StrengthAsk> strength = ofStrength ? StrengthAsk.of(ask) : Optional.empty();
    Optional<Dimension> dimension =
        strength.isPresent()
            ? strength.get().dimension(reading.parts(), drive)
            : AskDimension.of(ask, reading.parts());
    Optional<Expected> value =
        fields.need("value", "the expected value").flatMap(spot -> value(draft, spot, dimension));
    Optional<Integer> digits =
        dimension.isEmpty()
            ? noDigits(fields)
            : fields
                .need("digits", "the number of significant digits")
                .flatMap(spot -> WholeNumber.read(spot, 1, Expectation.MOST_DIGITS));
    Optional<String> source = words(draft, "source");
    Optional<String> printed = words(draft, "printed");
    Optional<String> reason = words(draft, "reason");
    if (value.isEmpty() || digits.isEmpty()) {
      return Optional.empty();
    }
    return draft.made(
        () -> new Expectation(ask, value.get(), digits.get(), source, printed, reason));
  }

  private static Optional<Integer> noDigits(Fields fields) {
    Optional<Spot> digits = fields.find("digits");
    return digits.isPresent()
        ? digits.get().refuse("the key digits", "no digits, since the answer is words")
        : Optional.of(0);
  }

  private static Optional<String> words(Draft draft, String key) {
    Optional<Spot> spot = draft.fields().find(key);
    Optional<String> text = spot.flatMap(stated -> stated.text("a text"));
    if (spot.isPresent() && text.isEmpty()) {
      draft.fail();
    }
    return text;
  }

  private Optional<Expected> value(Draft draft, Spot spot, Optional<Dimension> dimension) {
    return dimension.isEmpty()
        ? spot.text("words").flatMap(text -> expectedWords(spot, text))
        : expectedAmount(draft, spot, dimension.get());
  }

  private Optional<Expected> expectedAmount(Draft draft, Spot spot, Dimension dimension) {
    Optional<Double> si = reading.values().amount(spot, dimension);
    if (si.isEmpty()) {
      return Optional.empty();
    }
    Quantity quantity = new Quantity(si.get(), dimension);
    return reading
        .values()
        .unit(spot, dimension)
        .flatMap(unit -> draft.made(() -> new Expected.Amount(quantity, unit)));
  }

  private static Optional<Expected> expectedWords(Spot spot, String text) {
    try {
      return Optional.of(new Expected.Words(text));
    } catch (ModelException e) {
      return spot.refuse("a text without control characters");
    }
  }

  private Optional<Ask> expected(String text, Spot spot) {
    try {
      Optional<Ask> ask = ofStrength ? StrengthAsk.parse(text) : Optional.empty();
      Optional<StrengthAsk> found = ask.flatMap(StrengthAsk::of);
      if (found.isPresent() && device.isPresent()) {
        found.get().check(device.get());
      }
      return ask.isPresent() ? ask : ask(text, spot);
    } catch (ModelException e) {
      e.problems().forEach(problem -> report(problem, spot));
      return Optional.empty();
    }
  }

  private Optional<Ask> ask(String text, Spot spot) {
    if (text.length() > LONGEST) {
      return spot.refuse("an ask of at most " + LONGEST + " characters");
    }
    try {
      Ask ask = Ask.parse(text);
      return isAnswerable(ask, spot) ? Optional.of(ask) : Optional.empty();
    } catch (ModelException e) {
      e.problems().forEach(problem -> report(problem, spot));
      return Optional.empty();
    }
  }

  private boolean isAnswerable(Ask ask, Spot spot) {
    if (device.isPresent()) {
      if (reading.problems().mayLook()) {
        ask.check(device.get());
      }
      return true;
    }
    Optional<String> stated = ask.loadCase();
    if (stated.isPresent() && !cases.isEmpty() && !cases.contains(stated.get())) {
      spot.report(
          Excerpt.quoted(stated.get()) + " in " + Excerpt.quoted(ask.text()),
          reading.problems().name("case", stated.get(), cases));
    }
    if (ask.subject() instanceof Subject.Part part
        && !reading.parts().isDeclared(part.name())
        && !reading.bodies().is(part.name(), BodyNames.Kind.MEMBER)
        && ask.measure() != Measure.OUTCOME) {
      spot.report(
          reading
              .problems()
              .name("connection, load or sought quantity", part.name(), reading.parts().names()));
      return false;
    }
    return true;
  }

  private static void report(Problem problem, Spot spot) {
    String piece = Excerpt.quoted(problem.field());
    String whole = Excerpt.quoted(problem.value());
    spot.report(piece.equals(whole) ? whole : piece + " in " + whole, problem.wanted());
  }
}
