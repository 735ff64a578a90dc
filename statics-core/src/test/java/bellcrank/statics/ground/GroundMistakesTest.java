package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Dimension;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused, and that the refusal says the part, the field, the value and what would do. */
class GroundMistakesTest {

  private static final Optional<Span> NEGATIVE = Optional.of(Span.of(-1));
  private static final Span ONE = Span.of(1);

  static Stream<Arguments> mistakes() {
    return Stream.of(
        mistake(() -> BasePressure.of(-1, 0, 1, 1), "base: normal force is -1.0; wanted: 0 or"),
        mistake(() -> BasePressure.of(1, 2e30, 1, 1), "base: couple is 2.0E30; wanted: a finite"),
        mistake(() -> BasePressure.of(1, 0, 0, 1), "base: width is 0.0; wanted: a number above 0"),
        mistake(() -> BasePressure.of(1, 0, 1, -1), "base: length is -1.0; wanted: a number"),
        mistake(() -> new BaseLoad(-1, 0, 0, 1, 1), "base: normal force is -1.0"),
        mistake(() -> new BaseLoad(1, Double.NaN, 0, 1, 1), "base: tangential force is NaN"),
        mistake(() -> new BaseLoad(1, 0, Double.NaN, 1, 1), "base: couple is NaN"),
        mistake(() -> new BaseLoad(1, 0, 0, 0, 1), "base: width is 0.0"),
        mistake(() -> new BaseLoad(1, 0, 0, 1, 0), "base: length is 0.0"),
        mistake(() -> new Presumptive(0, "a"), "presumptive bearing: pressure is 0.0"),
        mistake(() -> new Presumptive(1, " "), "presumptive bearing: source is \" \"; wanted: a t"),
        mistake(() -> new Presumptive(1, "a").times(0, "b"), "presumptive bearing: factor is 0.0"),
        mistake(() -> new Presumptive(1, "a").times(2, ""), "presumptive bearing: reason is \"\""),
        mistake(
            () -> new Drained(0, 1, 1, 1),
            "drained ground: friction angle is 0.0; wanted: an angle above 0; ground without"
                + " friction is undrained ground with a shear strength"),
        mistake(() -> new Drained(30, 1, 1, 1), "drained ground: friction angle is 30.0"),
        mistake(() -> new Drained(0.5, -1, 1, 1), "drained ground: cohesion is -1.0"),
        mistake(() -> new Drained(0.5, 1, -1, 1), "drained ground: unit weight is -1.0"),
        mistake(() -> new Drained(0.5, 1, 1, -1), "drained ground: overburden is -1.0"),
        mistake(() -> new Undrained(0, 1), "undrained ground: strength is 0.0"),
        mistake(() -> new Undrained(1, -1), "undrained ground: overburden is -1.0"),
        mistake(() -> new Cleat(0, 0.5, 0, 1), "cleat: depth is 0.0"),
        mistake(() -> new Cleat(1, -0.5, 0, 1), "cleat: friction angle is -0.5"),
        mistake(() -> new Cleat(1, 0.5, -1, 1), "cleat: cohesion is -1.0"),
        mistake(() -> new Cleat(1, 0.5, 0, -1), "cleat: unit weight is -1.0"),
        mistake(() -> new Cleat(1, 0.5, 0, 1).resistance(0), "cleat: length is 0.0"),
        mistake(() -> Foundation.of("", 1), "foundation: base is \"\""),
        mistake(() -> Foundation.of("sill ", 1), "foundation: base is \"sill \""),
        mistake(() -> Foundation.of("sill", 0), "sill: length is 0.0"),
        mistake(() -> Foundation.of("sill", 1).withAdhesion(-1), "sill: adhesion is -1.0"),
        mistake(
            () -> Foundation.of("sill", 1).slidingResistance(-1, new BaseLoad(1, 0, 0, 1, 1)),
            "sill: friction is -1.0"),
        mistake(() -> Span.of(2, 1), "span: high is 1.0; wanted: at least the lower bound, 2.0"),
        mistake(() -> Span.of(Double.NaN), "span: low is NaN"),
        mistake(() -> Span.of(1, Double.POSITIVE_INFINITY), "span: high is Infinity"),
        mistake(() -> soil("", "b", ONE, Optional.empty()), "soil: name is \"\""),
        mistake(() -> soil("a", "", ONE, Optional.empty()), "a: source is \"\""),
        mistake(() -> soil("a", "b", Span.of(0, 1), Optional.empty()), "a: pressure is 0.0"),
        mistake(() -> soil("a", "b", ONE, NEGATIVE), "a: lateral pressure is -1.0"),
        mistake(
            () ->
                new SoilRow(
                    "a", ONE, Optional.empty(), NEGATIVE, Optional.empty(), "b", Basis.PRINTED, ""),
            "a: friction is -1.0"),
        mistake(
            () ->
                new SoilRow(
                    "a", ONE, Optional.empty(), Optional.empty(), NEGATIVE, "b", Basis.PRINTED, ""),
            "a: cohesion is -1.0"),
        mistake(() -> pair("", "b", ONE, Optional.empty()), "friction: name is \"\""),
        mistake(() -> pair("a", "", ONE, Optional.empty()), "a: source is \"\""),
        mistake(() -> pair("a", "b", Span.of(-1, 1), Optional.empty()), "a: static friction is -1"),
        mistake(() -> pair("a", "b", ONE, NEGATIVE), "a: kinetic friction is -1.0"),
        mistake(() -> cited("", "b"), "cited value: name is \"\""),
        mistake(() -> cited("a", ""), "a: source is \"\""),
        mistake(() -> LadderRules.footDistance(0), "ladder: working length is 0.0"));
  }

  private static Arguments mistake(ThrowingCallable making, String message) {
    return Arguments.of(message, making);
  }

  private static SoilRow soil(String name, String source, Span pressure, Optional<Span> lateral) {
    return new SoilRow(
        name,
        pressure,
        lateral,
        Optional.empty(),
        Optional.empty(),
        source,
        Basis.COMMON_PRACTICE,
        "");
  }

  private static FrictionRow pair(String name, String source, Span fixed, Optional<Span> kinetic) {
    return new FrictionRow(name, fixed, kinetic, source, Basis.COMMON_PRACTICE, "");
  }

  private static CitedValue cited(String name, String source) {
    return new CitedValue(name, ONE, Dimension.NUMBER, source, Basis.COMMON_PRACTICE, "");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("mistakes")
  void aMistakeIsNamed(String message, ThrowingCallable making) {
    assertThatThrownBy(making).isInstanceOf(ModelException.class).hasMessageStartingWith(message);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0, -0.0})
  void zeroHasNoSign(double zero) {
    assertThat(new Drained(0.5, zero, zero, zero)).isEqualTo(new Drained(0.5, 0, 0, 0));
    assertThat(new Undrained(1, zero)).isEqualTo(new Undrained(1, 0));
    assertThat(new Cleat(1, zero, zero, zero)).isEqualTo(new Cleat(1, 0, 0, 0));
    assertThat(new BaseLoad(zero, zero, zero, 1, 1)).isEqualTo(new BaseLoad(0, 0, 0, 1, 1));
    assertThat(Foundation.of("sill", 1).withAdhesion(zero)).isEqualTo(Foundation.of("sill", 1));
    assertThat(Span.of(zero)).isEqualTo(Span.of(0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-300, 1e30})
  void theBoundsAreIncluded(double value) {
    assertThat(Span.of(-value, value).high()).isEqualTo(value);
    assertThat(new Drained(Math.PI / 3, value, value, value).cohesion()).isEqualTo(value);
    assertThat(new BaseLoad(value, value, value, 1e30, 1e30).normal()).isEqualTo(value);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-300, 1, 1e30})
  void noResistanceIsEverInfinite(double size) {
    for (Bearing ground : Grounds.ALL) {
      BaseLoad load = new BaseLoad(size, size / 10, size / 10, size, size);
      assertThat(ground.resistance(load)).isBetween(0.0, Double.MAX_VALUE);
    }
    Drained strong = new Drained(Math.PI / 3, size, size, size);
    assertThat(strong.resistance(new BaseLoad(size, 0, 0, size, size)))
        .isBetween(0.0, Double.MAX_VALUE);
  }
}
