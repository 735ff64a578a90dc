package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.KN;
import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.MPA;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.arm;
import static bellcrank.statics.strength.Tried.prop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.Crossing.Certainty;
import bellcrank.statics.strength.Crossing.Used;
import bellcrank.statics.strength.Material.Kind;
import bellcrank.statics.strength.Material.Strength;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What gives first, with multiples by hand. */
class CapacityTest {

  private static final String TOP = "stress at the top face of foot–tip";

  private static Used used(Capacity capacity, String part, String what) {
    return capacity.ranked().stream()
        .filter(Used.class::isInstance)
        .map(Used.class::cast)
        .filter(one -> one.stated().part().equals(part) && one.stated().what().equals(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError(what + " in " + capacity.ranked()));
  }

  /** 40 × 40 mm, 1.5 m under 10 kN: 133.668 kN by curve c, 196.515 by Euler, 376 by stress. */
  @Test
  void inProportionTheMultipleIsOneOverTheUtilisation() {
    Sizing sizing =
        Sizing.of(Method.RESISTANCE)
            .with("prop", Profiles.rectangle(40 * MM, 40 * MM).section(), STEEL)
            .with(ColumnEnds.pinned("prop"));
    Capacity capacity = Capacity.of(prop(10 * KN).build(), sizing, Variation.of("barrel"));

    assertThat(used(capacity, "prop", "column").multiple()).isCloseTo(13.36683, within(1e-5));
    assertThat(used(capacity, "prop", "column by Euler").multiple())
        .isCloseTo(19.65148, within(1e-5));
    assertThat(used(capacity, "prop", "axial stress").multiple()).isCloseTo(37.6, within(1e-9));
    assertThat(capacity.ranked()).hasSize(3);
    assertThat(capacity.first()).contains(used(capacity, "prop", "column"));
    Used first = used(capacity, "prop", "column");
    assertThat(first.certainty()).isEqualTo(Certainty.PROPORTIONAL);
    assertThat(first.stated().utilisation()).isCloseTo(1 / 13.36683, within(1e-7));
    assertThat(first.reached().utilisation()).isCloseTo(1, within(1e-12));
    assertThat(capacity.remarks()).isEmpty();
    assertThat(capacity.driving()).isEqualTo(Variation.of("barrel"));
    assertThat(capacity.loads()).hasSize(2);
  }

  /** The pull in the prop when it buckles is the buckling load. */
  @Test
  void answersAtTheMultiple() {
    Sizing sizing =
        Sizing.of(Method.RESISTANCE)
            .with("prop", Profiles.rectangle(40 * MM, 40 * MM).section(), STEEL)
            .with(ColumnEnds.pinned("prop"));
    Capacity capacity = Capacity.of(prop(10 * KN).build(), sizing, Variation.of("barrel"));
    Answer answer =
        capacity.at(Ask.of("prop", Measure.TENSION), capacity.first().orElseThrow().multiple());

    assertThat(((Answer.Value) answer).si()).isCloseTo(-133668.3, within(0.1));
  }

  /**
   * 40 kg at the tip stay, the load of the arm grows: top 2.5·λ + (500·λ + 392.27)/5.3333 = 96.25·λ
   * + 73.550 = 235 MPa at λ = 1.67740.
   */
  @Test
  void besideLoadsThatStay() {
    Device device = arm().weight("sack", "arm", "tip", 40).build();
    Capacity capacity =
        Capacity.of(
            device, Sizing.of(Method.RESISTANCE).with("arm", BAR, STEEL), Variation.of("load"));
    double expected = (235 - 40 * 9.80665 / (16.0 / 3)) / 96.25;

    Used top = used(capacity, "arm", TOP);
    assertThat(top.multiple()).isCloseTo(expected, within(1e-10));
    assertThat(top.certainty()).isEqualTo(Certainty.BRACKETED);
    assertThat(top.certainty().words()).contains("looked for in steps");
    assertThat(top.reached().utilisation()).isCloseTo(1, within(1e-10));
  }

  /** 140 kg alone bend the foot by 1373 N·m, more than 235 MPa · 5333 mm³ = 1253. */
  @Test
  void reachedAlready() {
    Device device = arm().weight("sack", "arm", "tip", 140).build();
    Capacity capacity =
        Capacity.of(
            device, Sizing.of(Method.RESISTANCE).with("arm", BAR, STEEL), Variation.of("load"));

    Used top = used(capacity, "arm", TOP);
    assertThat(top.multiple()).isZero();
    assertThat(top.certainty()).isEqualTo(Certainty.ALREADY);
    assertThat(top.reached().utilisation()).isGreaterThan(1);
  }

  /** A load that bends back: 600 N down stay, the push up grows: they cancel at 1, break at 3.1. */
  @Test
  void whatFirstRelievesMayBreakLater() {
    Device device =
        Device.named("arm")
            .point("foot", 0, 0)
            .point("tip", 1, 0)
            .member("arm", "foot", "tip")
            .clamp("wall", "foot", "arm", "ground")
            .force("sack", "arm", "tip", Vector.of(0, -600))
            .force("push", "arm", "tip", Vector.of(0, 600))
            .build();
    Capacity capacity =
        Capacity.of(
            device, Sizing.of(Method.RESISTANCE).with("arm", BAR, STEEL), Variation.of("push"));

    // |600·λ − 600| N·m = 235 · 5333.3
    assertThat(used(capacity, "arm", TOP).multiple())
        .isCloseTo(1 + 235 * 16.0 / 3 / 600, within(1e-9));
  }

  /** A block of 50 kg on a floor with μ = 0.4, pulled by 100 N low down, on a chain of 150 N. */
  private static DeviceBuilder block() {
    return Device.named("block")
        .point("toe", 0, 0)
        .point("ring", 0.2, 0)
        .point("peg", 1, 0)
        .member("block", "toe", "ring")
        .connect(new ContactBase("floor", "toe", "block", "ground", Direction.UP, 0.6, 0.4, 0.3))
        .weight("stone", "block", "toe", 50)
        .force("pull", "block", "toe", Vector.of(-100, 0));
  }

  /** It slips at 0.4·50·g/100 = 1.9613 times the pull. */
  @Test
  void theDeviceMayGiveWayBeforeAnythingBreaks() {
    Sizing weak =
        Sizing.of(Method.ALLOWABLE)
            .with(new Rating("eye", "floor", 510, "tag", 1, 0, java.util.List.of()));
    Sizing strong =
        Sizing.of(Method.ALLOWABLE)
            .with(new Rating("eye", "floor", 600, "tag", 1, 0, java.util.List.of()));
    double slips = 0.4 * 50 * 9.80665 / 100;

    Capacity second = Capacity.of(block().build(), strong, Variation.of("pull"));
    assertThat(second.first().orElseThrow()).isInstanceOf(Crossing.GivesWay.class);
    assertThat(second.first().orElseThrow().multiple()).isCloseTo(slips, within(1e-9));
    assertThat(second.never()).hasSize(1);

    // √(490.33² + (100·λ)²) = 510 at λ = 1.4029, before it slips
    Capacity first = Capacity.of(block().build(), weak, Variation.of("pull"));
    assertThat(first.ranked()).hasSize(2);
    assertThat(first.ranked().get(0).multiple())
        .isCloseTo(Math.sqrt(510 * 510 - 490.3325 * 490.3325) / 100, within(1e-9));
    assertThat(first.ranked().get(1).multiple()).isCloseTo(slips, within(1e-9));
  }

  /** Of 100 N only 98.0665 can be held: the stated load is too much, which is told as it is. */
  @Test
  void aDeviceThatDoesNotHoldEvenWithoutThem() {
    Device device = block().force("gale", "block", "toe", Vector.of(-300, 0)).build();
    Capacity capacity =
        Capacity.of(
            device,
            Sizing.of(Method.ALLOWABLE).with(Rating.of("floor", 9000, "tag")),
            Variation.of("pull"));

    assertThat(capacity.first().orElseThrow().multiple()).isZero();
    assertThat(capacity.remarks())
        .containsExactly("the device does not hold even without the driving loads");
  }

  /** A see-saw plank that lies on one-sided rests needs some of the load to stay down. */
  @Test
  void aDeviceThatHoldsOnlyFromSomeMultipleOn() {
    Device device =
        Device.named("plank")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .point("c", 2, 0)
            .member("plank", "a", "b", "c")
            .pin("pivot", "b", "plank", "ground")
            .connect(new Roller("rest", "a", "plank", "ground", Direction.UP, Sides.ONE))
            .force("cask", "plank", "a", Vector.of(0, -100))
            .force("boy", "plank", "c", Vector.of(0, -50))
            .build();
    Capacity capacity =
        Capacity.of(
            device,
            Sizing.of(Method.ALLOWABLE).with(Rating.of("rest", 150, "tag")),
            Variation.of("cask"));

    assertThat(capacity.remarks())
        .containsExactly(
            "the device holds only from 0.5000 times the driving loads on; the checks are of its"
                + " balance alone below that");
    // 100·λ − 50 = 150
    assertThat(capacity.first().orElseThrow().multiple()).isCloseTo(2, within(1e-9));
  }

  /** The chain leads 45° past the depth of a notch that bears no angle: it slips at any load. */
  @Test
  void aLimitOfDirectionsIsPassedAtOnce() {
    Device device =
        Device.named("boom")
            .point("hinge", 0, 0)
            .point("head", 2, 0)
            .point("hook", 0, 2)
            .member("boom", "hinge", "head")
            .pin("hinge", "hinge", "boom", "ground")
            .line("chain", new End("boom", "head"), new End("ground", "hook"))
            .force("cask", "boom", "head", Vector.of(0, -1000))
            .build();
    ChainSeat shallow =
        new ChainSeat("notch", "chain", "boom", Direction.UP, Math.toRadians(120), 0.1);
    ChainSeat deep = new ChainSeat("slot", "chain", "boom", Direction.UP, Math.toRadians(40), 0.1);
    Capacity capacity =
        Capacity.of(
            device, Sizing.of(Method.ALLOWABLE).with(shallow).with(deep), Variation.of("cask"));

    Used slip = used(capacity, "chain", "notch: seat in the notch");
    assertThat(slip.multiple()).isZero();
    assertThat(slip.certainty()).isEqualTo(Certainty.AT_ONCE);
    assertThat(slip.certainty().words()).isEqualTo("however small it is");
    assertThat(Math.toDegrees(slip.reached().demand())).isCloseTo(45, within(1e-6));
    assertThat(capacity.never())
        .extracting(CheckResult.Checked::what)
        .containsExactly("slot: seat in the notch");
  }

  /** Hung up it is in tension; pushed up hard enough it would be pressed, which is not stated. */
  @Test
  void aStrengthThatIsMissingOnlyLater() {
    Material lath =
        new Material(
            "lath",
            Kind.OTHER,
            1e9,
            OptionalDouble.empty(),
            Map.of(Strength.TENSION, 20 * MPA, Strength.BENDING, 20 * MPA),
            "ours");
    Device device =
        Device.named("hanger")
            .point("top", 0, 1)
            .point("foot", 0, 0)
            .member("hanger", "top", "foot")
            .clamp("beam", "top", "hanger", "ground")
            .force("cask", "hanger", "foot", Vector.of(0, -500))
            .force("push", "hanger", "foot", Vector.of(0, 200))
            .build();
    Capacity capacity =
        Capacity.of(
            device, Sizing.of(Method.ALLOWABLE).with("hanger", BAR, lath), Variation.of("push"));

    assertThat(capacity.ranked()).isEmpty();
    assertThat(capacity.notChecked())
        .contains(
            new NotChecked(
                "hanger",
                "stress at the top face of top–foot",
                "neither compression nor yield strength of lath is stated"));
  }

  @Test
  void partsThatTheLoadsDoNotReachNeverGive() {
    Capacity capacity =
        Capacity.of(
            prop(10 * KN).build(),
            Sizing.of(Method.ALLOWABLE).with("lever", BAR, STEEL),
            Variation.of("barrel"));

    assertThat(capacity.ranked()).isEmpty();
    assertThat(capacity.first()).isEmpty();
    assertThat(capacity.never()).hasSize(3);
    assertThat(capacity.notChecked())
        .containsExactly(
            new NotChecked("prop", "axial stress", "no section and material are stated"));
  }
}
