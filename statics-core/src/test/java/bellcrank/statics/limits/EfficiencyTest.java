package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Efficiencies against closed forms worked by hand. */
final class EfficiencyTest {

  private static final double CLOSE = 1e-9;

  private static Efficiency of(DeviceBuilder device) {
    return Limits.of(device.build()).efficiency().orElseThrow();
  }

  private static double number(Answer answer) {
    assertThat(answer).isInstanceOf(Answer.Value.class);
    return ((Answer.Value) answer).si();
  }

  private static String why(Answer answer) {
    assertThat(answer).isInstanceOf(Answer.Unanswered.class);
    return ((Answer.Unanswered) answer).explanation();
  }

  private static Screw screw(double lead, double friction) {
    End foot = new End("ground", "foot");
    return new Screw("screw", foot, new End("plate", "head"), lead, 0.015, friction);
  }

  /** A head that only goes up and down stands on a screw, which a couple turns. */
  private static DeviceBuilder jack(double lead, double friction) {
    return Device.named("screw jack")
        .point("foot", 0, 0)
        .point("head", 0, 1)
        .member("plate", "head")
        .connect(new Guide("guide", "head", "plate", "ground", Direction.UP))
        .connect(screw(lead, friction))
        .force("load", "plate", "head", Vector.of(0, -6000))
        .load(new Sought("crank", Sought.Want.COUPLE, "screw", Optional.empty(), Optional.empty()))
        .advantage("crank", "load");
  }

  @Test
  void aScrewHasTheRatioOfTheTangentsOfLeadAndLeadWithFriction() {
    double lead = Math.atan(0.006 / (2 * Math.PI * 0.015));
    double friction = Math.atan(0.15);
    Efficiency jack = of(jack(0.006, 0.15));
    assertThat(number(jack.forward()))
        .isCloseTo(Math.tan(lead) / Math.tan(lead + friction), within(CLOSE));
    assertThat(number(jack.back()))
        .isCloseTo(Math.tan(lead - friction) / Math.tan(lead), within(CLOSE))
        .isNegative();
    assertThat(jack.frictionless()).isFalse();
  }

  @Test
  void aSteepScrewGivesWorkBack() {
    double lead = Math.atan(0.06 / (2 * Math.PI * 0.015));
    double friction = Math.atan(0.15);
    assertThat(number(of(jack(0.06, 0.15)).back()))
        .isCloseTo(Math.tan(lead - friction) / Math.tan(lead), within(CLOSE))
        .isPositive();
  }

  @Test
  void aScrewWithoutFrictionLosesNothing() {
    Efficiency jack = of(jack(0.006, 0));
    assertThat(number(jack.forward())).isCloseTo(1, within(CLOSE));
    assertThat(number(jack.back())).isCloseTo(1, within(CLOSE));
    assertThat(jack.frictionless()).isTrue();
  }

  /** A rope runs half a turn round a post; one hand hauls a weight at the other end. */
  private static DeviceBuilder capstan(boolean given) {
    DeviceBuilder device =
        Device.named("post and rope")
            .point("post", 0, 0)
            .point("barrel", 0.1, -1)
            .point("hand", -0.1, -1)
            .joint("barrel")
            .joint("hand")
            .connect(
                new Wrap(
                    "rope",
                    Stop.end("barrel", "barrel"),
                    new Stop(Stop.Kind.POST, "ground", "post", 0.1, Turn.COUNTER_CLOCKWISE),
                    Stop.end("hand", "hand"),
                    0.3,
                    0))
            .force("weight", "barrel", "barrel", Vector.of(0, -800))
            .advantage("pull", "weight");
    return given
        ? device.force("pull", "hand", "hand", Vector.of(0, -700))
        : device.sought("pull", "hand", "hand", Direction.DOWN);
  }

  @Test
  void aRopeRoundAPostHasTheRatioOfItsTensions() {
    double ratio = Math.exp(-0.3 * Math.PI);
    for (boolean given : new boolean[] {false, true}) {
      assertThat(number(of(capstan(given)).forward())).isCloseTo(ratio, within(CLOSE));
      assertThat(number(of(capstan(given)).back())).isCloseTo(ratio, within(CLOSE));
    }
  }

  @Test
  void aWedgeLosesOnBothFaces() {
    double slope = Math.toRadians(8);
    double friction = Math.atan(0.25);
    Direction push = Direction.ofAngle(Math.toRadians(82));
    Efficiency wedge =
        of(
            Device.named("wedge")
                .point("below", 0, 0)
                .point("face", 0, 0.05)
                .point("sleeve", 0, 0.4)
                .member("wedge", "below", "face")
                .member("leg", "face", "sleeve")
                .connect(new Guide("floor", "below", "wedge", "ground", Direction.RIGHT))
                .connect(new Contact("slope", "face", "leg", "wedge", push, 0.25, 0.25))
                .connect(new Guide("sleeve", "sleeve", "leg", "ground", Direction.UP))
                .force("press", "leg", "face", Vector.of(0, -2000))
                .sought("blow", "wedge", "below", Direction.RIGHT)
                .advantage("blow", "press"));
    assertThat(number(wedge.forward()))
        .isCloseTo(Math.tan(slope) / Math.tan(slope + friction), within(CLOSE));
    assertThat(number(wedge.back()))
        .isCloseTo(Math.tan(slope - friction) / Math.tan(slope), within(CLOSE));
  }

  /** A level lever on a dry pin, its arms 0.2 m and 1 m long. */
  private static DeviceBuilder lever(boolean handGiven) {
    DeviceBuilder device =
        Device.named("lever")
            .point("stone end", -0.2, 0)
            .point("pin", 0, 0)
            .point("grip", 1, 0)
            .member("lever", "stone end", "pin", "grip")
            .connect(new Pin("pin", "pin", List.of("lever", "ground"), 0.02, 0.3))
            .advantage("hand", "stone");
    return handGiven
        ? device
            .force("hand", "lever", "grip", Vector.of(0, -100))
            .sought("stone", "lever", "stone end", Direction.DOWN)
        : device
            .force("stone", "lever", "stone end", Vector.of(0, -500))
            .sought("hand", "lever", "grip", Direction.DOWN);
  }

  @Test
  void aDryPinTakesItsFrictionCircleFromTheArms() {
    // the force of the pin is upright and touches the circle: 500 (0.2 ± c) = hand (1 ∓ c)
    double circle = 0.02 * Math.sin(Math.atan(0.3));
    for (boolean handGiven : new boolean[] {false, true}) {
      Efficiency lever = of(lever(handGiven));
      assertThat(number(lever.forward()))
          .isCloseTo((1 - circle) / (0.2 + circle) * 0.2, within(1e-7 + lever.gap()));
      assertThat(number(lever.back()))
          .isCloseTo((0.2 - circle) / (1 + circle) / 0.2, within(1e-7 + lever.gap()));
      assertThat(lever.gap()).isLessThan(1e-6);
    }
  }

  @Test
  void withoutFrictionOnlyOtherLoadsAreMissing() {
    DeviceBuilder device =
        Device.named("lever")
            .point("stone end", -0.2, 0)
            .point("pin", 0, 0)
            .point("grip", 1, 0)
            .member("lever", "stone end", "pin", "grip")
            .pin("pin", "pin", "lever", "ground")
            .force("stone", "lever", "stone end", Vector.of(0, -500))
            .force("own", "lever", "stone end", Vector.of(0, -100))
            .sought("hand", "lever", "grip", Direction.DOWN)
            .advantage("hand", "stone");
    Efficiency lever = of(device);
    assertThat(number(lever.forward())).isCloseTo(5.0 / 6, within(CLOSE));
    assertThat(number(lever.back())).isCloseTo(6.0 / 5, within(CLOSE));
    assertThat(lever.frictionless()).isTrue();
    assertThat(lever.gap()).isZero();
  }

  @Test
  void whatOtherLoadsOvercomeNeedsNoEffort() {
    DeviceBuilder device =
        Device.named("lever")
            .point("stone end", -0.2, 0)
            .point("pin", 0, 0)
            .point("grip", 1, 0)
            .member("lever", "stone end", "pin", "grip")
            .pin("pin", "pin", "lever", "ground")
            .force("stone", "lever", "stone end", Vector.of(0, -500))
            .force("own", "lever", "grip", Vector.of(0, -200))
            .sought("hand", "lever", "grip", Direction.DOWN)
            .advantage("hand", "stone");
    assertThat(why(of(device).forward())).contains("without any effort");
  }

  private static DeviceBuilder tackle(Reeving.Hauling hauling) {
    return Device.named("tackle")
        .point("top", 0, 2)
        .point("block", 0, 0)
        .point("hand", 0, 1)
        .joint("block")
        .joint("hand")
        .connect(
            new Reeving(
                "rope",
                List.of(
                    Stop.end("hand", "hand"),
                    Stop.sheave("ground", "top", 0, Turn.CLOCKWISE),
                    Stop.end("block", "block")),
                0.9,
                hauling))
        .force("weight", "block", "block", Vector.of(0, -90))
        .sought("pull", "hand", "hand", Direction.DOWN)
        .advantage("pull", "weight");
  }

  @Test
  void aSheaveCountsTheWayThatIsStated() {
    Efficiency up = of(tackle(Reeving.Hauling.RAISING));
    assertThat(number(up.forward())).isCloseTo(0.9, within(CLOSE));
    assertThat(why(up.back())).contains("stated as raising");
    Efficiency down = of(tackle(Reeving.Hauling.LOWERING));
    assertThat(number(down.back())).isCloseTo(0.9, within(CLOSE));
    assertThat(why(down.forward())).contains("stated as lowering");
  }

  @Test
  void asksAnswerThemByLimitsOnly() {
    Device device = jack(0.006, 0.15).build();
    Ask ask = Ask.parse("advantage.efficiency");
    Ask back = Ask.parse("advantage.return efficiency");
    assertThat(ask).isEqualTo(Ask.of(new Subject.Advantage(), Measure.EFFICIENCY));
    assertThat(ask.text()).isEqualTo("advantage.efficiency");
    assertThat(back.text()).isEqualTo("advantage.return efficiency");
    Efficiency told = Limits.of(device).efficiency().orElseThrow();
    assertThat(Limits.of(device).answer(ask)).isEqualTo(told.forward());
    assertThat(Limits.of(device).answer(back)).isEqualTo(told.back());
    assertThat(Limits.decide(ask)).isTrue();
    assertThat(Limits.decide(Ask.parse("advantage"))).isFalse();
    assertThat(why(Balance.of(device).answer(ask))).contains("by the limits");
  }
}
