package bellcrank.statics.harness;

import static bellcrank.statics.harness.StaticsAssertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.TravelCapacity;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Messages of failed assertions that were read and found good. A message that changes is to be read
 * again: put what the test found in place of the kept file.
 */
final class HarnessMessagesTest {

  static Stream<Arguments> messages() {
    return Stream.of(
        kept("at-most", () -> assertThat(Rigs.press()).answers("ram").isAtMost("1.4 kN")),
        kept(
            "at-most-by-a-hair",
            () -> assertThat(Rigs.press()).answers("ram").isAtMost("1407.99 N")),
        kept("between", () -> assertThat(Rigs.press()).answers("hinge.y").isBetween("0 N", "2 kN")),
        kept(
            "close-to-percentage",
            () ->
                assertThat(Rigs.press())
                    .answers("ram")
                    .isCloseTo("1450 N", Percentage.withPercentage(0.5))),
        kept(
            "close-to-in-a-case",
            () ->
                assertThat(Rigs.pressInTwoCases())
                    .inUnits(UnitSystem.US)
                    .inCase("light")
                    .as("reading of %s", "Monday")
                    .answers("ram")
                    .isCloseTo("150 lbf", "5 lbf")),
        kept("ratio", () -> assertThat(Rigs.press()).answers("advantage").isAtLeast("7")),
        kept("words", () -> assertThat(Rigs.gate()).answers("outcome").isInWords("in balance")),
        kept(
            "unanswered",
            () -> assertThat(Rigs.press()).answers("ram").isUnanswered(Answer.Reason.UNDETERMINED)),
        kept("no-balance", () -> assertThat(Rigs.gate()).answers("low end.x").isAtLeast("0 N")),
        kept("undetermined", () -> assertThat(Rigs.bench()).answers("left.x").isAtMost("5 N")),
        kept("open-range", () -> assertThat(Rigs.ladder(0.35)).answers("boards").isAtMost("200 N")),
        kept(
            "every-state",
            () -> assertThat(Rigs.ladder(0.35)).carries("boards").between("0 N", "240 N")),
        kept("every-state-rope", () -> assertThat(Rigs.capstan()).carries("pull").atLeast("60 N")),
        kept("held-mechanism", () -> assertThat(Rigs.gate()).isHeld()),
        kept("held-slips", () -> assertThat(Rigs.ladder(0.2)).isHeld()),
        kept("held-tips", () -> assertThat(Rigs.chest(0.5, 240)).isHeld()),
        kept("held-pushes", () -> assertThat(Balance.of(Rigs.jibOnAProp())).isHeld()),
        kept("held-open", () -> assertThat(Balance.of(Rigs.dryLever())).isHeld()),
        kept("can-rest", () -> assertThat(Limits.of(Rigs.chest(0.5, 240))).canRest()),
        kept("gives-way", () -> assertThat(Rigs.ladder(0.35)).givesWay()),
        kept("holds-until", () -> assertThat(Rigs.chest(0.5, 150)).holdsUntilAtLeast("push", 1.8)),
        kept(
            "holds-until-of-limits",
            () ->
                assertThat(Limits.of(Rigs.chest(0.5, 150)).withFriction(0.4))
                    .holdsUntilAtLeast("push", 1.8)),
        kept(
            "holds-until-place",
            () ->
                assertThat(Rigs.ladder(0.35))
                    .holdsUntilAtLeast(Variation.place("picker", "foot", "top"), 3.8)),
        kept("holds-until-never", () -> assertThat(Rigs.jibOnAProp()).holdsUntilAtLeast("gust", 2)),
        kept(
            "holds-until-below-zero",
            () -> assertThat(Rigs.ladder(0)).holdsUntilAtLeast("picker", 2)),
        kept("holds-until-mechanism", () -> assertThat(Rigs.gate()).holdsUntilAtLeast("weight", 2)),
        kept(
            "slips-not-before",
            () ->
                assertThat(Rigs.chest(0.2, 150))
                    .slipsNotBefore("floor", Variation.of("push"), 1.5)),
        kept(
            "slips-not-before-any",
            () ->
                assertThat(Rigs.ladder(0.35))
                    .slipsNotBefore(Variation.place("picker", "foot", "top"), 3.8)),
        kept(
            "first-to-give-way",
            () -> assertThat(Rigs.crates()).asLoadsGrow("push").firstToGiveWayIs("between")),
        kept(
            "first-to-give-way-of-limits",
            () -> assertThat(Limits.of(Rigs.crates())).firstToGiveWayIs("between")),
        kept(
            "first-to-give-way-on-a-line",
            () ->
                assertThat(Rigs.ladder(0.35))
                    .asItVaries(Variation.place("picker", "foot", "rung"))
                    .firstToGiveWayIs("boards")),
        kept(
            "first-to-give-way-none",
            () -> assertThat(Rigs.roof()).asLoadsGrow("snow").firstToGiveWayIs("wall")),
        kept(
            "first-check",
            () ->
                assertThat(Rigs.roof())
                    .sizedBy(Rigs.roofSizing())
                    .asLoadsGrow("snow")
                    .firstToGiveWayIs("prop", "axial stress")),
        kept(
            "capacity-holds-until",
            () ->
                assertThat(Capacity.of(Rigs.roof(), Rigs.roofSizing(), Variation.of("snow")))
                    .holdsUntilAtLeast(2)),
        kept(
            "capacity-of-another-part",
            () ->
                assertThat(Capacity.of(Rigs.roof(), Rigs.roofSizing(), Variation.of("snow")))
                    .firstToGiveWayIs("beam")),
        kept(
            "capacity-checks-everything",
            () ->
                assertThat(Capacity.of(Rigs.roof(), Rigs.roofSizing(), Variation.of("snow")))
                    .checksEverything()),
        kept(
            "capacity-over-a-course",
            () ->
                assertThat(TravelCapacity.of(luffing(), Rigs.jibSizing(), Variation.of("barrel")))
                    .holdsUntilAtLeast(1.5)),
        kept(
            "advantage-over-a-course",
            () -> assertThat(Rigs.jib()).advantageOver(luffing()).isAtLeast(0.8)),
        kept(
            "force-over-a-course",
            () -> assertThat(luffing()).answers("rope.tension").isAtMost("0.8 kN")),
        kept(
            "no-course",
            () ->
                assertThat(Travel.of(Rigs.bench(), Drive.turn("beam"), -1, 1))
                    .answers("left.y")
                    .isAtLeast("0 N")),
        kept(
            "no-answer-on-a-course",
            () ->
                assertThat(Travel.of(Rigs.loose(), Drive.turn("arm"), -0.1, 0.1))
                    .answers("hinge.y")
                    .isAtLeast("0 N")));
  }

  private static Course luffing() {
    return (Course) Travel.of(Rigs.jib(), Drive.length("rope"), -2, 3);
  }

  private static Arguments kept(String name, ThrowingCallable assertion) {
    return Arguments.of(name, assertion);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("messages")
  void theMessageIsAsItWas(String name, ThrowingCallable assertion) throws IOException {
    Assertions.assertThat(message(assertion)).isEqualTo(text(name));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("messages")
  void theMessageIsTheSameInEveryLocale(String name, ThrowingCallable assertion) {
    Locale before = Locale.getDefault();
    String here = message(assertion);
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      Assertions.assertThat(message(assertion)).as(name).isEqualTo(here);
    } finally {
      Locale.setDefault(before);
    }
  }

  private static String message(ThrowingCallable assertion) {
    return catchThrowableOfType(AssertionError.class, assertion).getMessage() + "\n";
  }

  private static String text(String name) throws IOException {
    String file = "/harness-messages/" + name + ".txt";
    try (InputStream kept =
        Objects.requireNonNull(HarnessMessagesTest.class.getResourceAsStream(file), file)) {
      return new String(kept.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
