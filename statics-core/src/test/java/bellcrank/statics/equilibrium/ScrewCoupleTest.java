package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.explanation;
import static bellcrank.statics.equilibrium.Si.number;
import static bellcrank.statics.equilibrium.Si.reason;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Vector;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Couples about a screw's own axis, which the balance in the plane does not see. */
class ScrewCoupleTest {

  private static final double CLOSE = 1e-9;

  /** A press plate in an upright guide, carried by a screw from below. */
  private static DeviceBuilder press() {
    return Device.named("cider press")
        .point("sill", 0, 0)
        .point("plate", 0, 0.5)
        .member("plate", "plate")
        .connect(new Guide("rail", "plate", "plate", "ground", Direction.UP))
        .connect(
            new Screw("jack", End.of("plate", "plate"), End.of("ground", "sill"), 0.01, 0.02, 0.1))
        .force("cheese", "plate", "plate", Vector.of(30, -2000));
  }

  private static Couple crank() {
    return new Couple("crank", "jack", 40);
  }

  private static Sought turning() {
    return new Sought("turning", Sought.Want.COUPLE, "jack", Optional.empty(), Optional.empty());
  }

  @Test
  void aGivenCoupleOnAScrewChangesNoForceAndTellsItsOwnSize() {
    Device device =
        press()
            .load(crank())
            .loadCase(LoadCase.ALL_LOADS)
            .loadCase(new LoadCase("half", Map.of("crank", 0.5), 1))
            .build();
    Balance balance = Balance.of(device);
    assertThat(balance.outcome()).isEqualTo(new Outcome.InBalance());
    assertThat(number(balance, "jack.compression")).isCloseTo(2000, within(CLOSE));
    assertThat(number(balance, "rail.couple")).isCloseTo(0, within(CLOSE));
    assertThat(number(balance, "crank")).isEqualTo(40);
    assertThat(number(Balance.of(device, "half"), "crank.couple")).isEqualTo(20);
    assertThat(number(balance, "resultant.moment about plate")).isCloseTo(0, within(CLOSE));
    assertThat(balance.residual()).isLessThan(CLOSE);
  }

  @Test
  void aCoupleOnAMemberOfTheScrewsNameTurnsThatMember() {
    Device device = press().member("jack", "sill").clamp("c", "sill", "jack", "ground").build();
    Device turned =
        press().member("jack", "sill").clamp("c", "sill", "jack", "ground").load(crank()).build();
    assertThat(number(device, "c.couple")).isCloseTo(0, within(CLOSE));
    assertThat(number(turned, "c.couple")).isCloseTo(-40, within(CLOSE));
  }

  @Test
  void aSoughtCoupleOnAScrewIsNotFixedByTheBalance() {
    Device device = press().load(turning()).build();
    Balance balance = Balance.of(device);
    assertThat(reason(balance, "turning")).isEqualTo(Answer.Reason.UNDETERMINED);
    assertThat(reason(balance, "turning.couple")).isEqualTo(Answer.Reason.UNDETERMINED);
    assertThat(balance.undetermined()).extracting(Ask::text).containsExactly("turning");
    assertThat(number(balance, "jack.tension")).isCloseTo(-2000, within(CLOSE));
    assertThat(balance.freedoms()).isEmpty();
    Pose higher = Pose.DRAWN.with("plate", Frame.turnAbout(device.point("sill"), 0.3));
    Balance moved = Balance.of(device, device.cases().get(0), higher);
    assertThat(reason(moved, "turning")).isEqualTo(Answer.Reason.UNDETERMINED);
    Prepared prepared = Prepared.of(device);
    assertThat(prepared.isDeterminate()).isFalse();
    assertThat(prepared.buffer().solve(Pose.DRAWN, device.cases().get(0))).isFalse();
  }

  @Test
  void aPreparedDeviceSolvesUnderAGivenCoupleOnAScrew() {
    Device device = press().load(crank()).build();
    Prepared prepared = Prepared.of(device);
    Prepared.Buffer buffer = prepared.buffer();
    assertThat(buffer.solve(Pose.DRAWN, device.cases().get(0))).isTrue();
    assertThat(buffer.value(prepared.slot("jack.compression"))).isCloseTo(2000, within(CLOSE));
    assertThat(buffer.residual()).isLessThan(CLOSE);
  }

  @Test
  void aGivenCoupleOnAScrewIsNoEffortInThePlane() {
    assertThatThrownBy(() -> press().load(crank()).advantage("crank", "cheese").build())
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("couple on a member");
  }

  @Test
  void aSoughtCoupleOnAScrewWorksByItsLead() {
    Device device = press().load(turning()).advantage("turning", "cheese").build();
    Screw screw = (Screw) device.connection("jack").orElseThrow();
    assertThat(Balance.of(device).ratioOfEqualWork()).isInstanceOf(Answer.Value.class);
    double ratio = ((Answer.Value) Balance.of(device).ratioOfEqualWork()).si();
    assertThat(Math.abs(ratio))
        .isCloseTo(2 * Math.PI / screw.lead() * Math.hypot(30, 2000) / 2000, within(1e-6));
    assertThat(Balance.of(device).answer("advantage")).isInstanceOf(Answer.Unanswered.class);
  }

  @Test
  void whatTheLimitsAnswerIsLeftToThem() {
    Balance balance = Balance.of(press().load(crank()).build());
    for (String ask :
        new String[] {
          "verdict",
          "friction factor",
          "greatest jack",
          "least multiple(cheese)",
          "greatest distance(cheese) along sill–plate"
        }) {
      assertThat(reason(balance, ask)).as(ask).isEqualTo(Answer.Reason.NOT_DECIDED);
      assertThat(explanation(balance, ask))
          .isEqualTo(ask + " is worked out by the limits, not by the balance alone");
    }
  }
}
