package bellcrank.statics.harness;

import static bellcrank.statics.harness.StaticsAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.strength.Capacity;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.strength.TravelCapacity;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What is asserted about what gives first, of devices that do not hold or give in two places. */
class HeldCapacityTest {

  private static final Sizing NOTHING = Sizing.of(Method.ALLOWABLE);

  /** A seat on two ropes, 800 N in its middle; a push leaves it no place to rest. */
  private static Device swing(double push) {
    return Device.named("swing")
        .point("left hook", -1, 2)
        .point("right hook", 1, 2)
        .point("left", -1, 0)
        .point("middle", 0, 0)
        .point("right", 1, 0)
        .member("seat", "left", "middle", "right")
        .connect(new Line("left rope", End.of("ground", "left hook"), End.of("seat", "left")))
        .connect(new Line("right rope", End.of("ground", "right hook"), End.of("seat", "right")))
        .force("sitter", "seat", "middle", Vector.of(0, -800))
        .force("push", "seat", "middle", Vector.of(push, 0))
        .build();
  }

  /** A plank on a pivot and a one-sided rest: 50 N at the far end want half of 100 N here. */
  private static Device plank(double cask) {
    return Device.named("plank")
        .point("a", 0, 0)
        .point("b", 1, 0)
        .point("c", 2, 0)
        .member("plank", "a", "b", "c")
        .pin("pivot", "b", "plank", "ground")
        .connect(new Roller("rest", "a", "plank", "ground", Direction.UP, Sides.ONE))
        .force("cask", "plank", "a", Vector.of(0, -cask))
        .force("boy", "plank", "c", Vector.of(0, -50))
        .build();
  }

  private static void fails(String words, ThrowingCallable assertion) {
    assertThatThrownBy(assertion).isInstanceOf(AssertionError.class).hasMessageContaining(words);
  }

  @Test
  void whatHoldsAtNoMultipleIsNotHeld() {
    Variation.Multiple sitter = Variation.of("sitter");
    assertThat(Capacity.of(swing(0), NOTHING, sitter)).holdsUntilAtLeast(2);
    fails(
        "swing is expected to hold with up to 2 times sitter, but the device does not hold at any"
            + " multiple",
        () -> assertThat(Capacity.of(swing(100), NOTHING, sitter)).holdsUntilAtLeast(2));
    fails(
        "does not hold even without the driving loads",
        () ->
            assertThat(Capacity.of(plank(-50), NOTHING, Variation.of("cask")))
                .holdsUntilAtLeast(0));
  }

  @Test
  void whatHoldsOnlyFromSomeMultipleOnIsHeldFromThere() {
    Variation.Multiple cask = Variation.of("cask");
    assertThat(Capacity.of(plank(100), NOTHING, cask)).holdsUntilAtLeast(3);
    fails(
        "the device holds only from 2.500 times the driving loads on",
        () -> assertThat(Capacity.of(plank(20), NOTHING, cask)).holdsUntilAtLeast(3));
    fails(
        "the device holds only from 0.5000 times the driving loads on",
        () -> assertThat(Capacity.of(plank(100), NOTHING, cask)).holdsUntilAtLeast(0.4));
  }

  @Test
  void overACourseItMustHoldInEveryPose() {
    DeviceBuilder jib =
        Rigs.jib().toBuilder()
            .point("toe", 10, 0)
            .member("chest", "toe")
            .connect(new ContactBase("floor", "toe", "chest", "ground", Direction.UP, 1, 0.1, 0.1))
            .weight("chest weight", "chest", "toe", 10);
    Variation.Multiple barrel = Variation.of("barrel");
    assertThat(TravelCapacity.of(luffing(jib.build()), Rigs.jibSizing(), barrel))
        .holdsUntilAtLeast(1.25);
    Course pushed = luffing(jib.force("push", "chest", "toe", Vector.of(50, 0)).build());
    fails(
        "in some poses the device does not hold at any multiple",
        () ->
            assertThat(TravelCapacity.of(pushed, Rigs.jibSizing(), barrel))
                .holdsUntilAtLeast(1.25));
  }

  private static Course luffing(Device jib) {
    return (Course) Travel.of(jib, Drive.length("rope"), -1, 1);
  }

  @Test
  void ofTwoThatGiveTogetherEitherIsTheFirst() {
    Device swing = swing(0);
    Sizing ropes =
        NOTHING
            .with(Rating.of("left rope", 1000, "tag"))
            .with(Rating.of("right rope", 1000, "tag"));
    for (String rope : new String[] {"left rope", "right rope"}) {
      assertThat(swing)
          .sizedBy(ropes)
          .asLoadsGrow("sitter")
          .firstToGiveWayIs(rope)
          .firstToGiveWayIs(rope, "working load limit");
    }
    Sizing weaker =
        ropes.withDetails(
            List.of(Rating.of("left rope", 1000, "tag"), Rating.of("right rope", 999, "tag")));
    fails(
        "left rope follows at 2.500 times sitter",
        () ->
            assertThat(swing).sizedBy(weaker).asLoadsGrow("sitter").firstToGiveWayIs("left rope"));
  }
}
