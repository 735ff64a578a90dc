package bellcrank.statics.device;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class AskProperties {

  private static final List<String> PIECES =
      List.of(
          "heel",
          "a",
          "on",
          "about",
          "at",
          "of",
          "along",
          "each",
          "in",
          "per",
          "from",
          "to",
          "group",
          "group(",
          "resultant",
          "centre(",
          "point(",
          "outcome",
          "freedoms",
          "redundancy",
          "verdict",
          "friction factor",
          "greatest",
          "least",
          "multiple",
          "multiple(",
          "distance(",
          "advantage",
          "ground",
          ".",
          ",",
          "(",
          ")",
          "–",
          "A–B",
          "x",
          ".x",
          "end tension",
          ".value",
          "0.4 m",
          "1e400 m",
          "'",
          "½",
          "No. 3",
          "\u00a0",
          "\u2009",
          "𝛼");

  private static final List<String> MORE_PIECES =
      List.of("\"", "\t", "\n", "\u0000", "\ud800", " ");

  private static boolean isName(String text) {
    try {
      Check.name("ask", text);
      return true;
    } catch (ModelException e) {
      return false;
    }
  }

  /** Names that look like anything but a name. */
  @Provide
  Arbitrary<String> names() {
    Arbitrary<String> pieces =
        Arbitraries.of(PIECES)
            .list()
            .ofMinSize(1)
            .ofMaxSize(5)
            .flatMap(some -> Arbitraries.of("", " ", "  ").map(gap -> String.join(gap, some)));
    return Arbitraries.oneOf(Arbitraries.strings().ofMaxLength(8), pieces)
        .filter(AskProperties::isName);
  }

  private Arbitrary<List<String>> lists(int least) {
    return names().list().uniqueElements().ofMinSize(least).ofMaxSize(3);
  }

  private Arbitrary<Stretch> stretches() {
    Arbitrary<OptionalDouble> distances =
        Arbitraries.doubles()
            .between(0, Check.LARGEST)
            .ofScale(20)
            .optional()
            .map(found -> found.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    Arbitrary<Optional<Side>> sides = Arbitraries.of(Side.values()).optional();
    return Combinators.combine(lists(2), distances, sides)
        .as(
            (ends, distance, side) ->
                new Stretch(
                    ends.get(0),
                    ends.get(1),
                    distance,
                    distance.isPresent() ? side : Optional.empty()));
  }

  private Arbitrary<Subject> subjects() {
    return Arbitraries.oneOf(
        names().map(Subject.Part::new),
        Combinators.combine(lists(1), lists(0)).as(Subject.Group::new),
        lists(0).map(Subject.Resultant::new),
        lists(0).map(Subject.Centre::new),
        names().map(Subject.Spot::new),
        limits(),
        Arbitraries.of(new Subject.Advantage(), new Subject.Whole()));
  }

  private Arbitrary<Subject> limits() {
    return Arbitraries.oneOf(lists(0).map(Subject.Multiple::new), names().map(Subject.Place::new));
  }

  private static boolean isOfLimits(Ask ask) {
    return ask.subject() instanceof Subject.Multiple || ask.subject() instanceof Subject.Place;
  }

  private static Measure fitting(Subject subject, Measure measure) {
    if (subject instanceof Subject.Multiple || subject instanceof Subject.Place) {
      return Measure.VALUE;
    }
    return subject instanceof Subject.Whole && !PartMeasures.WHOLE.contains(measure)
        ? Measure.OUTCOME
        : measure;
  }

  private Arbitrary<Ask> singles() {
    return Combinators.combine(
            subjects(),
            Arbitraries.of(Measure.class),
            names().optional(),
            names().optional(),
            stretches().optional(),
            Arbitraries.of(true, false))
        .as(
            (subject, measure, on, about, stretch, each) ->
                new Ask(
                    subject,
                    fitting(subject, measure),
                    on,
                    about,
                    stretch,
                    each,
                    Optional.empty()));
  }

  @Provide
  Arbitrary<Ask> asks() {
    Arbitrary<Ask> sides = singles().filter(ask -> !isOfLimits(ask));
    Arbitrary<Ask> ratios = Combinators.combine(sides, sides).as(Ask::per);
    Arbitrary<Ask> plain = Arbitraries.oneOf(singles(), ratios);
    Arbitrary<Ask> ends = Arbitraries.oneOf(plain.map(Ask::greatest), plain.map(Ask::least));
    return Combinators.combine(Arbitraries.oneOf(plain, ends), names().optional())
        .as((ask, loadCase) -> loadCase.map(ask::inCase).orElse(ask));
  }

  @Property
  void textIsReadAsTheSameAsk(@ForAll("asks") Ask ask) {
    assertThat(Ask.parse(ask.text())).isEqualTo(ask);
  }

  @Provide
  Arbitrary<String> texts() {
    Arbitrary<String> mixed =
        Arbitraries.oneOf(Arbitraries.of(PIECES), Arbitraries.of(MORE_PIECES))
            .list()
            .ofMaxSize(12)
            .flatMap(some -> Arbitraries.of("", " ").map(gap -> String.join(gap, some)));
    Arbitrary<String> damaged =
        Combinators.combine(asks(), Arbitraries.integers().between(0, 200))
            .as((ask, cut) -> without(ask.text(), cut));
    return Arbitraries.oneOf(Arbitraries.strings().ofMaxLength(40), mixed, damaged);
  }

  private static String without(String text, int cut) {
    int at = text.isEmpty() ? 0 : cut % text.length();
    return text.substring(0, at) + text.substring(Math.min(text.length(), at + 1));
  }

  @Property(tries = 5000)
  void anyTextIsAnAskOrIsRefused(@ForAll("texts") String text) {
    Ask ask;
    try {
      ask = Ask.parse(text);
    } catch (ModelException e) {
      assertThat(e.problems())
          .singleElement()
          .satisfies(
              problem -> {
                assertThat(problem.part()).isEqualTo("ask");
                assertThat(problem.value()).isEqualTo(text);
                assertThat(problem.wanted()).isNotBlank();
              });
      return;
    }
    assertThat(Ask.parse(ask.text())).isEqualTo(ask);
  }

  @Property
  void anAskIsCheckedWithAnyNamesWithoutOtherErrors(@ForAll("asks") Ask ask) {
    Device device =
        Device.named("picking ladder")
            .point("A", 0, 0)
            .point("B", 1, 1)
            .member("a", "A", "B")
            .pin("heel", "A", "a", "ground")
            .build();
    try {
      assertThat(ask.check(device)).isSameAs(ask);
    } catch (ModelException e) {
      assertThat(e.problems()).isNotEmpty().allMatch(problem -> problem.value().equals(ask.text()));
    }
  }

  @Property(tries = 50)
  void longTextsAreReadOrRefused(@ForAll("names") String name) {
    String[] words = new String[2000];
    Arrays.fill(words, name);
    String text = String.join(" ", words);
    try {
      assertThat(Ask.parse(text).text()).isNotEmpty();
    } catch (ModelException e) {
      assertThat(e.problems()).hasSize(1);
    }
  }
}
