package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.number;
import static bellcrank.statics.equilibrium.Si.reason;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one-sided and rough parts cannot give. */
class ConditionsTest {

  /** A flap on a hinge, pulled up or down at its tip and held there. */
  private static DeviceBuilder flap(double pull) {
    return Device.named("flap")
        .point("hinge", 0, 0)
        .point("tip", 2, 0)
        .point("above", 2, 3)
        .point("beside", 5, 3)
        .member("flap", "hinge", "tip")
        .pin("hinge", "hinge", "flap", "ground")
        .force("pull", "flap", "tip", Vector.of(0, pull));
  }

  @ParameterizedTest
  @CsvSource({"-10, 0", "10, 1"})
  void aLineHoldsWhatHangsButWouldHaveToPushAgainstALift(double pull, int broken) {
    Device device =
        flap(pull).line("rope", End.of("flap", "tip"), End.of("ground", "above")).build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "rope")).isCloseTo(-pull, within(1e-12));
    assertThat(balance.violations()).hasSize(broken);
    if (broken > 0) {
      Violation violation = balance.violations().get(0);
      assertThat(violation.part()).isEqualTo("rope");
      assertThat(violation.words()).isEqualTo("would have to push");
      assertThat(violation.needed()).isCloseTo(-10, within(1e-12));
      assertThat(violation.limit()).isZero();
      assertThat(violation.dimension()).isEqualTo(Dimension.FORCE);
    }
  }

  @Test
  void aStrutPushesWithoutComplaint() {
    Device device =
        flap(10).strut("prop", End.of("flap", "tip"), End.of("ground", "above")).build();
    assertThat(Balance.of(device).violations()).isEmpty();
    assertThat(number(device, "prop.compression")).isCloseTo(10, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"-10, 0, ONE", "10, 1, ONE", "10, 0, TWO"})
  void aRollerOfOneSideWouldHaveToPull(double pull, int broken, Sides sides) {
    Device device =
        flap(pull)
            .connect(new Roller("stop", "tip", "flap", "ground", Direction.UP, sides))
            .build();
    List<Violation> violations = Balance.of(device).violations();
    assertThat(violations)
        .extracting(Violation::words)
        .hasSize(broken)
        .allMatch("would have to pull"::equals);
  }

  @ParameterizedTest
  @CsvSource({"-10, 0, ONE", "10, 1, ONE", "10, 0, TWO"})
  void aSlotOfOneSideWouldHaveToPull(double pull, int broken, Sides sides) {
    Device device =
        flap(pull)
            .connect(new Slot("slot", "tip", "flap", "ground", Direction.RIGHT, sides))
            .build();
    assertThat(Balance.of(device).violations()).hasSize(broken);
    assertThat(number(device, "slot.normal")).isCloseTo(-pull, within(1e-12));
  }

  @Test
  void aReevedRopeWouldHaveToPush() {
    Device device =
        flap(10)
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("flap", "tip"),
                        Stop.sheave("ground", "above", 0, Turn.CLOCKWISE),
                        Stop.end("ground", "beside")),
                    1,
                    Reeving.Hauling.IDEAL))
            .build();
    assertThat(Balance.of(device).violations()).extracting(Violation::part).containsExactly("rope");
  }

  private static Device block(double push, double friction) {
    return Device.named("barrel on a sledge")
        .point("P", 0, 0)
        .point("Q", 1, 0)
        .member("block", "P", "Q")
        .connect(new Contact("front", "Q", "block", "ground", Direction.UP, friction, friction))
        .connect(new Contact("back", "P", "block", "ground", Direction.UP, 0, 0))
        .force("weight", "block", "Q", Vector.of(push, -100))
        .build();
  }

  @Test
  void frictionUpToMuTimesTheNormalForceHolds() {
    Balance balance = Balance.of(block(-29.9, 0.3));
    assertThat(balance.violations()).isEmpty();
    assertThat(number(balance, "front.friction")).isCloseTo(29.9, within(1e-12));
    assertThat(number(balance, "front.normal")).isCloseTo(100, within(1e-12));
    assertThat(number(balance, "back.friction")).as("a smooth contact has none").isZero();
  }

  @Test
  void frictionJustAtTheLimitIsNoViolation() {
    assertThat(Balance.of(block(30, 0.3)).violations()).isEmpty();
  }

  @Test
  void moreFrictionThanMuTimesTheNormalForceIsTold() {
    Violation violation = Balance.of(block(31, 0.3)).violations().get(0);
    assertThat(violation.part()).isEqualTo("front");
    assertThat(violation.words()).isEqualTo("would need more friction than μN");
    assertThat(violation.needed()).isCloseTo(31, within(1e-12));
    assertThat(violation.limit()).isCloseTo(30, within(1e-12));
  }

  @Test
  void aContactThatWouldPullHasNoFrictionEither() {
    Device device =
        Device.named("lifted")
            .point("P", 0, 0)
            .point("Q", 1, 0)
            .member("block", "P", "Q")
            .connect(new Contact("front", "Q", "block", "ground", Direction.UP, 0.3, 0.3))
            .connect(new Contact("back", "P", "block", "ground", Direction.UP, 0, 0))
            .force("lift", "block", "Q", Vector.of(1, 100))
            .build();
    assertThat(Balance.of(device).violations())
        .extracting(one -> one.part() + " " + one.words())
        .containsExactly("front would have to pull", "front would need more friction than μN");
  }

  private static Device post(double offset) {
    return Device.named("post on a foot")
        .point("foot", 0, 0)
        .point("top", offset, 2)
        .member("post", "foot", "top")
        .connect(new ContactBase("base", "foot", "post", "ground", Direction.UP, 0.4, 0.5, 0.4))
        .force("load", "post", "top", Vector.of(0, -100))
        .build();
  }

  @Test
  void aNormalForceWithinTheBaseHolds() {
    Balance balance = Balance.of(post(0.19));
    assertThat(balance.violations()).isEmpty();
    assertThat(number(balance, "base.offset")).isCloseTo(0.19, within(1e-12));
    assertThat(number(balance, "base.couple")).isCloseTo(19, within(1e-12));
    assertThat(number(balance, "base")).isCloseTo(100, within(1e-12));
  }

  @Test
  void aNormalForceAtTheEdgeIsNoViolation() {
    assertThat(Balance.of(post(0.2)).violations()).isEmpty();
    assertThat(Balance.of(post(-0.2)).violations()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"0.21", "-0.21"})
  void aNormalForceOutsideTheBaseIsTold(double offset) {
    Balance balance = Balance.of(post(offset));
    assertThat(number(balance, "base.offset")).isCloseTo(offset, within(1e-12));
    Violation violation = balance.violations().get(0);
    assertThat(violation.words()).isEqualTo("would need its normal force outside the base");
    assertThat(violation.needed()).isCloseTo(0.21, within(1e-12));
    assertThat(violation.limit()).isEqualTo(0.2);
    assertThat(violation.dimension()).isEqualTo(Dimension.LENGTH);
  }

  @Test
  void aBaseWithoutNormalForceHasNoOffset() {
    Device device =
        Device.named("couple on a foot")
            .point("foot", 0, 0)
            .member("post", "foot")
            .connect(new ContactBase("base", "foot", "post", "ground", Direction.UP, 0.4, 0.5, 0.4))
            .force("push", "post", "foot", Vector.of(1, 0))
            .build();
    assertThat(reason(Balance.of(device), "base.offset")).isEqualTo(Answer.Reason.NOT_DEFINED);
  }

  /** A bucket on a rope that rubs half round a post, held at the other end. */
  private static Device wrapped(double friction, int turns, double hold) {
    return Device.named("bucket over a beam")
        .point("post", 0, 0)
        .point("bucket", -0.1, -2)
        .point("grip", 0.1, -1)
        .member("bucket", "bucket")
        .member("handle", "grip")
        .connect(
            new Wrap(
                "rope",
                Stop.end("bucket", "bucket"),
                new Stop(Stop.Kind.POST, "ground", "post", 0.1, Turn.CLOCKWISE),
                Stop.end("handle", "grip"),
                friction,
                turns))
        .force("weight", "bucket", "bucket", Vector.of(0, -100))
        .force("hold", "handle", "grip", Vector.of(0, -hold))
        .build();
  }

  // Euler–Eytelwein: e^(0.3 π) = 2.566, from memory
  @ParameterizedTest
  @CsvSource({
    "0.3, 0, 39, 0",
    "0.3, 0, 38.9, 1",
    "0.3, 0, 256, 0",
    "0.3, 0, 257, 1",
    "0.3, 1, 6, 0",
    "0.3, 1, 5.9, 1",
    "0, 0, 100, 0",
    "0, 0, 99, 1"
  })
  void aWrappedRopeHoldsWithinTheRatioOfItsAngle(
      double friction, int turns, double hold, int broken) {
    Balance balance = Balance.of(wrapped(friction, turns, hold));
    assertThat(number(balance, "rope.tension")).isCloseTo(100, within(1e-9));
    assertThat(number(balance, "rope.end tension")).isCloseTo(hold, within(1e-9));
    assertThat(number(balance, "rope.ratio")).isCloseTo(100 / hold, within(1e-9));
    assertThat(balance.violations()).hasSize(broken);
    if (broken > 0) {
      Violation violation = balance.violations().get(0);
      assertThat(violation.words())
          .isEqualTo("would need more friction round the post than there is");
      assertThat(violation.needed()).isCloseTo(Math.max(100 / hold, hold / 100), within(1e-9));
      assertThat(violation.limit())
          .isCloseTo(Math.exp(friction * Math.PI * (1 + 2 * turns)), within(1e-9));
      assertThat(violation.dimension()).isEqualTo(Dimension.NUMBER);
    }
  }

  @Test
  void aSlackEndCannotBeHeldByFriction() {
    Balance balance = Balance.of(wrapped(0.3, 0, 0));
    assertThat(balance.violations()).hasSize(1);
    assertThat(balance.violations().get(0).needed()).isGreaterThan(1e300);
    assertThat(reason(balance, "rope.ratio")).isEqualTo(Answer.Reason.NOT_DEFINED);
  }

  @Test
  void aWrappedRopeWouldHaveToPush() {
    assertThat(Balance.of(wrapped(0.3, 0, -50)).violations())
        .extracting(Violation::words)
        .contains("would have to push");
  }

  @Test
  void anUndeterminedForceBreaksNoCondition() {
    Device device =
        flap(10)
            .line("rope", End.of("flap", "tip"), End.of("ground", "above"))
            .line("second", End.of("flap", "tip"), End.of("ground", "beside"))
            .build();
    Balance balance = Balance.of(device);
    assertThat(balance.redundancy()).isEqualTo(1);
    assertThat(balance.violations()).isEmpty();
  }

  @Test
  void theMostThatManyTurnsHoldIsANumber() {
    assertThat(Balance.of(wrapped(0.3, 2000, 0)).violations())
        .singleElement()
        .satisfies(one -> assertThat(one.limit()).isEqualTo(Double.MAX_VALUE));
    assertThat(Balance.of(wrapped(0.3, 2000, 1e-3)).violations()).isEmpty();
  }
}
