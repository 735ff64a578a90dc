package bellcrank.statics.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a part refuses on its own: part, field, value and what would do. */
class PartMistakesTest {

  private static final End A = End.of("a", "A");
  private static final End B = End.of("b", "B");
  private static final Stop END = Stop.end("a", "A");
  private static final Stop POST = new Stop(Stop.Kind.POST, "b", "B", 0.1, Turn.CLOCKWISE);
  private static final Stop SHEAVE = Stop.sheave("b", "B", 0.1, Turn.CLOCKWISE);
  private static final Direction UP = Direction.UP;

  private static Arguments mistake(String sentence, ThrowingCallable call) {
    return Arguments.of(sentence, call);
  }

  static Stream<Arguments> mistakes() {
    return Stream.of(
        mistake("bar: ends is \"A\"; wanted: two different points", () -> new Bar("A", "A")),
        mistake(
            "m: count is 0; wanted: a whole number of 1 or more",
            () -> new Member("m", List.of(), List.of(), List.of(), 0)),
        mistake(
            "p: joins is [a]; wanted: at least 2 names", () -> Pin.smooth("p", "P", List.of("a"))),
        mistake(
            "p: joins is [a, b, a]; wanted: names that differ",
            () -> Pin.smooth("p", "P", List.of("a", "b", "a"))),
        mistake(
            "p: radius is -0.1; wanted: 0 or more",
            () -> new Pin("p", "P", List.of("a", "b"), -0.1, 0)),
        mistake(
            "p: friction is NaN; wanted: a finite number of 0 or more: the tangent of a friction"
                + " angle below 90 degrees",
            () -> new Pin("p", "P", List.of("a", "b"), 0, Double.NaN)),
        mistake(
            "p: friction is -0.2; wanted: 0 or more",
            () -> new Pin("p", "P", List.of("a", "b"), 0.1, -0.2)),
        mistake(
            "s: friction is Infinity; wanted: a finite number of 0 or more: the tangent of a"
                + " friction angle below 90 degrees",
            () -> new Screw("s", A, B, 0.01, 0.02, Double.POSITIVE_INFINITY)),
        mistake(
            "w: friction is NaN; wanted: a finite number of 0 or more: the tangent of a friction"
                + " angle below 90 degrees",
            () -> new Wrap("w", END, POST, END, Double.NaN, 0)),
        mistake(
            "c: friction is Infinity; wanted: a finite number of 0 or more: the tangent of a"
                + " friction angle below 90 degrees",
            () -> new Contact("c", "P", "a", "b", UP, Double.POSITIVE_INFINITY, 0)),
        mistake(
            "c: kinetic friction is NaN; wanted: a finite number of 0 or more: the tangent of a"
                + " friction angle below 90 degrees",
            () -> new Contact("c", "P", "a", "b", UP, 0.3, Double.NaN)),
        mistake(
            "c: friction is 1.0E31; wanted: a finite number of 0 or more: the tangent of a friction"
                + " angle below 90 degrees",
            () -> new ContactBase("c", "P", "a", "b", UP, 1, 1e31, 0)),
        mistake(
            "c: width is -0.4; wanted: a number above 0",
            () -> new ContactBase("c", "P", "a", "b", UP, -0.4, 0.1, 0)),
        mistake(
            "c: friction is -Infinity; wanted: a finite number within ±1.0E30",
            () -> new Contact("c", "P", "a", "b", UP, Double.NEGATIVE_INFINITY, 0)),
        mistake(
            "p: radius is 0.0; wanted: a radius above 0, since there is friction",
            () -> new Pin("p", "P", List.of("a", "b"), 0, 0.1)),
        mistake(
            "c: joins is [a, a]; wanted: names that differ", () -> new Clamp("c", "P", "a", "a")),
        mistake(
            "r: joins is [a, a]; wanted: names that differ",
            () -> new Roller("r", "P", "a", "a", UP, Sides.TWO)),
        mistake(
            "s: joins is [a, a]; wanted: names that differ",
            () -> new Slot("s", "P", "a", "a", UP, Sides.TWO)),
        mistake(
            "g: joins is [a, a]; wanted: names that differ",
            () -> new Guide("g", "P", "a", "a", UP)),
        mistake("l: joins is [a, a]; wanted: names that differ", () -> new Line("l", A, A)),
        mistake("s: joins is [a, a]; wanted: names that differ", () -> new Strut("s", A, A, 0)),
        mistake("s: weight is -1.0; wanted: 0 or more", () -> new Strut("s", A, B, -1)),
        mistake(
            "s: joins is [a, a]; wanted: names that differ",
            () -> new Screw("s", A, A, 0.01, 0.02, 0.1)),
        mistake(
            "s: lead is 0.0; wanted: a number above 0", () -> new Screw("s", A, B, 0, 0.02, 0.1)),
        mistake(
            "s: mean radius is -0.02; wanted: a number above 0",
            () -> new Screw("s", A, B, 0.01, -0.02, 0.1)),
        mistake(
            "s: friction is -0.1; wanted: 0 or more", () -> new Screw("s", A, B, 0.01, 0.02, -0.1)),
        mistake(
            "c: joins is [a, a]; wanted: names that differ",
            () -> new Contact("c", "P", "a", "a", UP, 0, 0)),
        mistake(
            "c: friction is -0.1; wanted: 0 or more",
            () -> new Contact("c", "P", "a", "b", UP, -0.1, 0)),
        mistake(
            "c: kinetic friction is -0.1; wanted: 0 or more",
            () -> new Contact("c", "P", "a", "b", UP, 0.1, -0.1)),
        mistake(
            "c: kinetic friction is 0.4; wanted: at most the static one, 0.3",
            () -> new Contact("c", "P", "a", "b", UP, 0.3, 0.4)),
        mistake(
            "c: joins is [a, a]; wanted: names that differ",
            () -> new ContactBase("c", "P", "a", "a", UP, 1, 0, 0)),
        mistake(
            "c: width is 0.0; wanted: a number above 0",
            () -> new ContactBase("c", "P", "a", "b", UP, 0, 0.1, 0)),
        mistake(
            "c: friction is -0.1; wanted: 0 or more",
            () -> new ContactBase("c", "P", "a", "b", UP, 1, -0.1, 0)),
        mistake(
            "c: kinetic friction is -0.1; wanted: 0 or more",
            () -> new ContactBase("c", "P", "a", "b", UP, 1, 0.1, -0.1)),
        mistake(
            "c: kinetic friction is 0.4; wanted: at most the static one, 0.3",
            () -> new ContactBase("c", "P", "a", "b", UP, 1, 0.3, 0.4)),
        mistake(
            "r: reeving is 1 stops; wanted: two stops or more",
            () -> new Reeving("r", List.of(END), 1, Reeving.Hauling.IDEAL)),
        mistake(
            "r: stop 2 is sheave; wanted: an end or a drum",
            () -> new Reeving("r", List.of(END, SHEAVE), 1, Reeving.Hauling.IDEAL)),
        mistake(
            "r: stop 2 is end; wanted: a sheave",
            () -> new Reeving("r", List.of(END, END, END), 1, Reeving.Hauling.IDEAL)),
        mistake(
            "r: stop 1 is post; wanted: an end or a drum",
            () -> new Reeving("r", List.of(POST, END), 1, Reeving.Hauling.IDEAL)),
        mistake(
            "r: efficiency is 0.0; wanted: above 0 and at most 1",
            () -> new Reeving("r", List.of(END, END), 0, Reeving.Hauling.RAISING)),
        mistake(
            "r: efficiency is 1.1; wanted: above 0 and at most 1",
            () -> new Reeving("r", List.of(END, END), 1.1, Reeving.Hauling.RAISING)),
        mistake(
            "r: efficiency is NaN; wanted: above 0 and at most 1",
            () -> new Reeving("r", List.of(END, END), Double.NaN, Reeving.Hauling.RAISING)),
        mistake(
            "w: wrap is SHEAVE; wanted: a post in the middle",
            () -> new Wrap("w", END, SHEAVE, END, 0.3, 0)),
        mistake(
            "w: wrap is SHEAVE, END; wanted: plain ends",
            () -> new Wrap("w", SHEAVE, POST, END, 0.3, 0)),
        mistake(
            "w: wrap is END, SHEAVE; wanted: plain ends",
            () -> new Wrap("w", END, POST, SHEAVE, 0.3, 0)),
        mistake(
            "w: radius is 0.0; wanted: a number above 0",
            () ->
                new Wrap(
                    "w", END, new Stop(Stop.Kind.POST, "b", "B", 0, Turn.CLOCKWISE), END, 0.3, 0)),
        mistake(
            "w: friction is -0.3; wanted: 0 or more", () -> new Wrap("w", END, POST, END, -0.3, 0)),
        mistake(
            "w: extra turns is -1; wanted: 0 or more",
            () -> new Wrap("w", END, POST, END, 0.3, -1)),
        mistake(
            "c: couple is Infinity; wanted: a finite number within ±1.0E30",
            () -> new Couple("c", "m", Double.POSITIVE_INFINITY)),
        mistake(
            "w: weight is -5.0; wanted: 0 or more",
            () -> new Weight("w", "m", Optional.empty(), -5)),
        mistake(
            "s: spread is NaN; wanted: a finite number within ±1.0E30",
            () ->
                new SpreadLoad(
                    "s", "m", "A", "B", Double.NaN, 0, Optional.empty(), SpreadLoad.Per.LENGTH)),
        mistake(
            "s: spread is Infinity; wanted: a finite number within ±1.0E30",
            () ->
                new SpreadLoad(
                    "s",
                    "m",
                    "A",
                    "B",
                    0,
                    Double.POSITIVE_INFINITY,
                    Optional.empty(),
                    SpreadLoad.Per.LENGTH)),
        mistake(
            "s: to is \"A\"; wanted: another point than the start",
            () ->
                new SpreadLoad("s", "m", "A", "A", 0, 0, Optional.empty(), SpreadLoad.Per.LENGTH)),
        mistake("s: joins is [a, a]; wanted: names that differ", () -> new Spring("s", A, A, 5, 1)),
        mistake("s: spring is 0.0; wanted: a number above 0", () -> new Spring("s", A, B, 0, 1)),
        mistake("s: free length is -1.0; wanted: 0 or more", () -> new Spring("s", A, B, 5, -1)),
        mistake(
            "s: joins is [m, m]; wanted: names that differ",
            () -> new TorsionSpring("s", "m", "m", 5, 0)),
        mistake(
            "s: torsion spring is -5.0; wanted: a number above 0",
            () -> new TorsionSpring("s", "m", "n", -5, 0)),
        mistake(
            "s: turned is NaN; wanted: a finite number within ±1.0E30",
            () -> new TorsionSpring("s", "m", "n", 5, Double.NaN)),
        mistake(
            "c: factor of hand is NaN; wanted: a finite number within ±1.0E30",
            () -> new LoadCase("c", Map.of("hand", Double.NaN), 1)),
        mistake(
            "c: dynamic is 0.0; wanted: a number above 0", () -> new LoadCase("c", Map.of(), 0)),
        mistake(
            "advantage: resistance is \"hand\"; wanted: another part than the effort",
            () -> new EffortAndResistance("hand", "hand")),
        mistake(
            "s: at is missing; wanted: a point, unless a couple is sought",
            () ->
                new Sought(
                    "s", Sought.Want.FORCE, "m", Optional.empty(), Optional.of(Direction.UP))),
        mistake(
            "s: direction is missing; wanted: a direction for a force or intensity, none for"
                + " anything else",
            () -> new Sought("s", Sought.Want.FORCE, "m", Optional.of("A"), Optional.empty())),
        mistake(
            "s: direction is given; wanted: a direction for a force or intensity, none for"
                + " anything else",
            () ->
                new Sought(
                    "s", Sought.Want.MASS, "m", Optional.of("A"), Optional.of(Direction.UP))),
        mistake(
            "s: to is missing; wanted: an end point for an intensity, none for anything else",
            () ->
                new Sought(
                    "s", Sought.Want.INTENSITY, "m", Optional.of("A"), Optional.of(Direction.UP))),
        mistake(
            "tie: count is 0; wanted: a whole number of 1 or more",
            () -> Device.named("d").count("tie", 0)),
        mistake(
            "P: x is NaN; wanted: a finite number within ±1.0E30",
            () -> Device.named("d").point("P", Double.NaN, 0)),
        mistake(
            "P: y is Infinity; wanted: a finite number within ±1.0E30",
            () -> Device.named("d").point("P", 0, Double.POSITIVE_INFINITY)),
        mistake(
            "P: name is \"P\"; wanted: a name for one point only",
            () -> Device.named("d").point("P", 0, 0).point("P", 1, 0)));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void aMistakeIsToldInOneSentence(String sentence, ThrowingCallable call) {
    assertThatThrownBy(call).isInstanceOf(ModelException.class).hasMessage(sentence);
  }

  private static Arguments named(String kind, Consumer<String> make) {
    return Arguments.of(kind, make);
  }

  static Stream<Arguments> named() {
    return Stream.of(
        named("device", n -> Device.named(n)),
        named("point", n -> Device.named("d").point(n, 0, 0)),
        named("member", n -> Member.of(n, List.of("A"))),
        named("joint", n -> new Joint(n, "A")),
        named("pin", n -> Pin.smooth(n, "P", List.of("a", "b"))),
        named("clamp", n -> new Clamp(n, "P", "a", "b")),
        named("roller", n -> new Roller(n, "P", "a", "b", UP, Sides.TWO)),
        named("slot", n -> new Slot(n, "P", "a", "b", UP, Sides.TWO)),
        named("guide", n -> new Guide(n, "P", "a", "b", UP)),
        named("strut", n -> new Strut(n, A, B, 0)),
        named("line", n -> new Line(n, A, B)),
        named("screw", n -> new Screw(n, A, B, 1, 1, 0)),
        named("contact", n -> new Contact(n, "P", "a", "b", UP, 0, 0)),
        named("contact base", n -> new ContactBase(n, "P", "a", "b", UP, 1, 0, 0)),
        named("reeving", n -> new Reeving(n, List.of(END, END), 1, Reeving.Hauling.IDEAL)),
        named("wrap", n -> new Wrap(n, END, POST, END, 0, 0)),
        named("force", n -> new Force(n, "m", "A", Vector.ZERO)),
        named("couple", n -> new Couple(n, "m", 0)),
        named("weight", n -> new Weight(n, "m", Optional.empty(), 0)),
        named(
            "spread load",
            n -> new SpreadLoad(n, "m", "A", "B", 0, 0, Optional.empty(), SpreadLoad.Per.LENGTH)),
        named("spring", n -> new Spring(n, A, B, 1, 0)),
        named("torsion spring", n -> new TorsionSpring(n, "a", "b", 1, 0)),
        named(
            "sought quantity",
            n -> new Sought(n, Sought.Want.COUPLE, "m", Optional.empty(), Optional.empty())),
        named("case", n -> new LoadCase(n, Map.of(), 1)));
  }

  @ParameterizedTest
  @MethodSource("named")
  void everyPartRefusesABadName(String kind, Consumer<String> make) {
    make.accept("crème de la crème, № 5 (left) – upper");
    for (String bad :
        List.of(
            "", " ", " a", "a ", "a\"b", "a\nb", "a\tb", "\u2028", "a\u200bb", "x".repeat(81))) {
      assertThatThrownBy(() -> make.accept(bad))
          .isInstanceOf(ModelException.class)
          .hasMessage(
              kind
                  + ": name is \""
                  + bad
                  + "\"; wanted: a text of 1 to 80 characters without \", line breaks or outer"
                  + " blanks");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "x", "ground floor", "+", "100%", "日本"})
  void plainNamesAreFine(String name) {
    assertThat(new Joint(name, "A").name()).isEqualTo(name);
    assertThat(new Joint("x".repeat(80), "A").name()).hasSize(80);
  }

  @Test
  void anExceptionTellsItsProblemsAsData() {
    ModelException one = new ModelException("lever", "at", 5, "a point");
    assertThat(one.problems()).containsExactly(new Problem("lever", "at", "5", "a point"));
    assertThat(one).hasMessage("lever: at is 5; wanted: a point");
    ModelException two =
        new ModelException(
            List.of(new Problem("a", "b", "c", "d"), new Problem("e", "f", "g", "h")));
    assertThat(two).hasMessage("a: b is c; wanted: d\ne: f is g; wanted: h");
  }
}
