package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The multiple at which something gives, with and without strengths. */
class FirstFailureTest {

  private static final Sizing STAY =
      Sizing.of(Method.ALLOWABLE).with(Rating.of("stay", 5000, "tag"));

  /** The stay pulls 600 · 2.5 / 1.5 = 1000 N; a chest beside it bears a push of 40 N. */
  private static Device jib(double push) {
    return StudyYard.jib().toBuilder()
        .gravity(Vector.of(0, -10))
        .point("toe", 5, 0)
        .member("chest", "toe")
        .connect(new ContactBase("floor", "toe", "chest", "ground", Direction.UP, 1, 0.4, 0.4))
        .weight("chest weight", "chest", "toe", 10)
        .force("push", "chest", "toe", Vector.of(push, 0))
        .build();
  }

  @Test
  void aCheckMayBeTheFirst() {
    Figure failure = Figure.firstFailure(Variation.of("barrel"));
    assertThat(failure.of(Model.of(jib(30)).with(STAY)).number().orElseThrow())
        .isCloseTo(5, within(1e-9));
  }

  /** With or without strengths: what does not hold whatever the load has no first failure. */
  @Test
  void whatHoldsAtNoMultipleHasNone() {
    Figure failure = Figure.firstFailure(Variation.of("barrel"));
    FigureAnswer.None plain = (FigureAnswer.None) failure.of(Model.of(jib(50)));
    assertThat(plain.reason()).isEqualTo(FigureAnswer.Reason.NO_BALANCE);
    assertThat(failure.of(Model.of(jib(50)).with(STAY))).isEqualTo(plain);
  }

  /** An ask for a limit has no end where a first failure has none, but only upwards. */
  @Test
  void anAskForALimitHasNoEndEither() {
    Model jib = Model.of(jib(30));
    FigureAnswer.None failure =
        (FigureAnswer.None) Figure.firstFailure(Variation.of("barrel")).of(jib);
    assertThat(failure.reason()).isEqualTo(FigureAnswer.Reason.UNLIMITED);
    Figure greatest = Figure.parse("greatest multiple(barrel)");
    assertThat(((FigureAnswer.None) greatest.of(jib)).reason())
        .isEqualTo(FigureAnswer.Reason.UNLIMITED);
    Figure least = Figure.parse("least multiple(push)");
    Model light =
        Model.of(jib(30).toBuilder().force("lid", "chest", "toe", Vector.of(0, -1)).build());
    assertThat(least.of(light).number().orElseThrow()).isCloseTo(-40.4 / 30, within(1e-9));
    Figure down = Figure.parse("least multiple(lid)");
    assertThat(((FigureAnswer.None) Figure.parse("greatest multiple(lid)").of(light)).reason())
        .isEqualTo(FigureAnswer.Reason.UNLIMITED);
    assertThat(down.of(light).number().orElseThrow()).isCloseTo(75 - 100, within(1e-9));
    Figure noEnd = Figure.parse("least multiple(barrel)");
    Model strutted =
        Model.of(StudyYard.jib().toBuilder().clamp("wall", "heel", "jib", "ground").build());
    assertThat(((FigureAnswer.None) noEnd.of(strutted)).reason())
        .isEqualTo(FigureAnswer.Reason.NOT_DEFINED);
    Goal goal = Goal.atLeast(greatest, new Quantity(3, Dimension.NUMBER));
    SearchAnswer found =
        DimensionSearch.of(jib, List.of(new Free(Input.y("eye"), 1, 2)), List.of(goal))
            .withMost(300)
            .anyThat();
    assertThat(found).isInstanceOf(SearchAnswer.Found.class);
  }

  /** A push that is too much already gives way at no more than nothing of the other. */
  @Test
  void whatDoesNotHoldWithoutTheLoadsFailsAtNothing() {
    Device pulled = jib(50).toBuilder().force("pull", "chest", "toe", Vector.of(20, 0)).build();
    Figure failure = Figure.firstFailure(Variation.of("pull"));
    assertThat(failure.of(Model.of(pulled))).isEqualTo(failure.of(Model.of(pulled).with(STAY)));
    assertThat(failure.of(Model.of(pulled)).number().orElseThrow()).isZero();
  }

  /**
   * A steep push jams the crate: from tan = 1/μ = 1 on no size of it moves it, 45° below the level.
   */
  @Test
  void whatNothingMovesIsAboveAnyBoundInSamples() {
    Device crate =
        Device.named("crate")
            .gravity(Vector.of(0, -10))
            .point("foot", 0, 0)
            .member("crate", "foot")
            .connect(new ContactBase("floor", "foot", "crate", "ground", Direction.UP, 1, 1, 1))
            .weight("own weight", "crate", "foot", 10)
            .force("push", "crate", "foot", Vector.of(1, -1))
            .build();
    Figure failure = Figure.firstFailure(Variation.of("push"));
    double level = -Math.PI / 4;
    Samples samples =
        Sampling.of(
                Model.of(crate),
                List.of(Uncertain.uniform(Input.direction("push"), level - 0.3, level + 0.3)),
                List.of(failure))
            .with(Happening.above(failure, new Quantity(1, Dimension.NUMBER)))
            .with(Happening.below(failure, new Quantity(1, Dimension.NUMBER)))
            .run(400, 1);
    assertThat(samples.figure(failure).missing())
        .singleElement()
        .matches(one -> one.what().startsWith("unlimited") && one.count() > 150);
    // the push is √2 N, the friction at least 100 N, so nothing moves at once
    assertThat(samples.chances().get(0).count()).isEqualTo(400);
    assertThat(samples.chances().get(0).open()).isZero();
    assertThat(samples.chances().get(1).count()).isZero();
    assertThat(samples.chances().get(1).open()).isZero();
  }
}
