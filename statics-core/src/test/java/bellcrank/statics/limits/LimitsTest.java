package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Cleat;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.ground.Undrained;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Verdicts and limits of devices that can be worked by hand. */
class LimitsTest {

  private static String words(Device device, GivingWay how) {
    return how.words(device, UnitSystem.SI);
  }

  private static Limit.Between between(Limits limits, Variation variation) {
    assertThat(limits.limit(variation)).isInstanceOf(Limit.Between.class);
    return (Limit.Between) limits.limit(variation);
  }

  private static Limit.End.At at(Limit.End end) {
    assertThat(end).isInstanceOf(Limit.End.At.class);
    return (Limit.End.At) end;
  }

  private static double value(Answer answer) {
    assertThat(answer).isInstanceOf(Answer.Value.class);
    return ((Answer.Value) answer).si();
  }

  /** Smooth wall: H = (100·1.5 + 800·0.6)/4 = 157.5 N, N = 900 N, so μ = 0.175. */
  @Test
  void aLadderOnASmoothWallNeedsFrictionAtItsFoot() {
    Device ladder = Yard.ladder(0.35, 0);
    Limits limits = Limits.of(ladder);

    assertThat(limits.verdict()).isEqualTo(new Verdict.Holds());
    FrictionFactor.Least least = (FrictionFactor.Least) limits.frictionFactor();
    assertThat(least.factor()).isCloseTo(0.5, within(1e-9));
    assertThat(least.margin()).isCloseTo(0.5, within(1e-9));
    assertThat(words(ladder, least.how()))
        .isEqualTo("foot slides left: ladder turns clockwise about a point at (0 m, 4.000 m)");
    assertThat(value(limits.answer("friction factor"))).isCloseTo(0.5, within(1e-9));
  }

  @Test
  void aLadderAtItsVeryLimitIsAboutToGiveWay() {
    Device ladder = Yard.ladder(0.175, 0);
    Verdict verdict = Limits.of(ladder).verdict();

    assertThat(verdict.words()).isEqualTo("about to give way");
    assertThat(((Verdict.Impending) verdict).how().events())
        .containsExactly(new Event("foot", Event.Kind.SLIDES, "slides left"));
    assertThat(Limits.of(ladder).states())
        .extracting(PartState::state)
        .containsExactly(PartState.State.ABOUT_TO_SLIP, PartState.State.CARRIES);
  }

  @Test
  void aLadderWithTooLittleFrictionSlidesOut() {
    Device ladder = Yard.ladder(0.1, 0);
    Limits limits = Limits.of(ladder);
    Verdict.DoesNotHold verdict = (Verdict.DoesNotHold) limits.verdict();

    assertThat(verdict.words()).isEqualTo("does not hold");
    assertThat(verdict.after()).isEqualTo(Verdict.After.FRICTION);
    assertThat(verdict.how().events())
        .containsExactly(new Event("foot", Event.Kind.SLIDES, "slides left"));
    assertThat(limits.states()).isEmpty();
    assertThat(limits.range("foot.normal")).isEmpty();
    assertThat(limits.answer("greatest foot.normal"))
        .isInstanceOfSatisfying(
            Answer.Unanswered.class,
            none -> assertThat(none.reason()).isEqualTo(Answer.Reason.NO_BALANCE));
    assertThat(limits.withLeastForces()).isEmpty();
  }

  /**
   * Smooth wall, μ = 0.35 at the foot: 0.35·900·4 = 100·1.5 + 800·x, so x = 1.3875 m along the
   * floor, and 5/3 of that up the ladder.
   */
  @Test
  void howFarUpOneMayClimb() {
    Device ladder = Yard.ladder(0.35, 0);
    Limits limits = Limits.of(ladder);
    Limit.Between climb = between(limits, Variation.place("picker", "foot", "top"));

    assertThat(at(climb.greatest()).value()).isCloseTo(1.3875 / 0.6, within(1e-9));
    assertThat(at(climb.greatest()).how().events())
        .containsExactly(new Event("foot", Event.Kind.SLIDES, "slides left"));
    assertThat(climb.least()).isEqualTo(new Limit.End.EndOfLine(0));
    assertThat(climb.margin()).isEmpty();
    assertThat(value(limits.answer("greatest distance(picker) along foot–top")))
        .isCloseTo(2.3125, within(1e-9));
    assertThat(value(limits.answer("least distance(picker) along foot–top"))).isZero();
  }

  /** The greatest value alone is that of the limit, and ends where the line does. */
  @Test
  void theGreatestValueAloneIsThatOfTheLimit() {
    Limits limits = Limits.of(Yard.ladder(0.35, 0));
    Variation climb = Variation.place("picker", "foot", "top");
    Variation load = Variation.of("own");

    assertThat(limits.greatest(climb).orElseThrow()).isCloseTo(2.3125, within(1e-9));
    assertThat(limits.greatest(load).orElseThrow())
        .isCloseTo(at(between(limits, load).greatest()).value(), within(1e-9));
    assertThat(limits.moving().greatest(load).orElseThrow())
        .isCloseTo(limits.greatest(load).orElseThrow(), within(1e-9));
    assertThat(limits.greatest(Variation.of("picker"))).hasValue(Double.POSITIVE_INFINITY);
    assertThat(Limits.of(Yard.ladder(1.5, 0)).greatest(climb).orElseThrow())
        .isCloseTo(5, within(1e-9));
  }

  @Test
  void endsAreEqualIfTheirValuesAndWaysAre() {
    Variation climb = Variation.place("picker", "foot", "top");
    Limit.End.At end = at(between(Limits.of(Yard.ladder(0.35, 0)), climb).greatest());
    Limit.End.At same = at(between(Limits.of(Yard.ladder(0.35, 0)), climb).greatest());
    Limit.End.At other = at(between(Limits.of(Yard.ladder(0.4, 0)), climb).greatest());

    assertThat(end).isEqualTo(same).hasSameHashCodeAs(same).hasToString(same.toString());
    assertThat(end).isNotEqualTo(other).isNotEqualTo(new Limit.End.Unlimited());
    assertThat(end.how()).isSameAs(end.how());
    assertThat(end.toString()).contains("value=2.31", "gap=0.0", "slides left");
    GivingWay none = new GivingWay(List.of(), Optional.empty(), 0);
    assertThat(new Limit.End.At(end.value(), 0, () -> none)).isNotEqualTo(end);
    assertThat(new Limit.End.At(end.value(), 1, end::how)).isNotEqualTo(end);
  }

  /** With two rough feet the normal forces lie in a range, whose ends are where the wall slips. */
  @Test
  void twoRoughFeetLeaveARange() {
    Limits limits = Limits.of(Yard.ladder(0.5, 0.2));
    // moments about the foot: H·4 + T·3 = 630, |T| ≤ 0.2·H
    Range wall = limits.range("wall.normal").orElseThrow();

    assertThat(wall.least().orElseThrow()).isCloseTo(630 / 4.6, within(1e-9));
    assertThat(wall.greatest().orElseThrow()).isCloseTo(630 / 3.4, within(1e-9));
    assertThat(wall.isOne()).isFalse();
    double low = 630 / 4.6;
    assertThat(limits.range("foot.y").orElseThrow().least().orElseThrow())
        .isCloseTo(900 - 0.2 * low, within(1e-9));
    assertThat(limits.range("wall.size").orElseThrow().least().orElseThrow())
        .isCloseTo(low * Math.hypot(1, 0.2), within(1e-9));
    Range direction = limits.range("wall.direction").orElseThrow();
    assertThat(direction.least().orElseThrow()).isCloseTo(Math.PI - Math.atan(0.2), within(1e-9));
    assertThat(direction.greatest().orElseThrow())
        .isCloseTo(Math.PI + Math.atan(0.2), within(1e-9));
    assertThat(limits.answer("wall.normal")).isInstanceOf(Answer.Unanswered.class);
    assertThat(value(limits.answer("greatest wall.normal per own")))
        .isCloseTo(630 / 3.4 / 100, within(1e-9));
    Balance least = limits.withLeastForces().orElseThrow();
    assertThat(least.residual()).isLessThan(1e-12);
    assertThat(
            least.number("wall.normal").orElseThrow() + least.number("foot.normal").orElseThrow())
        .isCloseTo(900 + 0.8 * low, within(1e-9));
  }

  /** μ = 0.45 would let it slide at 405 N, but it tips at 900·0.3/1.2 = 225 N. */
  @Test
  void aTallChestTipsBeforeItSlides() {
    Device chest = Yard.pushedChest(0.45, 150);
    Limits limits = Limits.of(chest);
    Limit.Between push = between(limits, Variation.ofAppliedLoads());

    assertThat(at(push.greatest()).value()).isCloseTo(1.5, within(1e-9));
    assertThat(push.margin().orElseThrow()).isCloseTo(0.5, within(1e-9));
    assertThat(push.holdsAtZero()).isTrue();
    assertThat(push.contains(1)).isTrue();
    assertThat(push.contains(1.6)).isFalse();
    assertThat(words(chest, at(push.greatest()).how()))
        .isEqualTo(
            "floor tips about its right edge:"
                + " chest turns clockwise about a point at (0.3000 m, 0 m)");
    assertThat(words(chest, at(push.least()).how())).startsWith("floor tips about its left edge");
    assertThat(value(limits.answer("greatest multiple(push)"))).isCloseTo(1.5, within(1e-9));
    assertThat(value(limits.answer("least multiple"))).isCloseTo(-1.5, within(1e-9));
    assertThat(limits.greatest(Variation.of("push")).orElseThrow()).isCloseTo(1.5, within(1e-9));
  }

  /** μ = 0.2 lets it slide at 180 N. */
  @Test
  void aSmoothChestSlidesBeforeItTips() {
    Device chest = Yard.chest(0.2).sought("push", "chest", "hand", Direction.RIGHT).build();
    Limits limits = Limits.of(chest);

    assertThat(value(limits.answer("greatest push"))).isCloseTo(180, within(1e-7));
    assertThat(value(limits.answer("least push"))).isCloseTo(-180, within(1e-7));
    assertThat(words(chest, limits.givingWay("push", true).orElseThrow()))
        .isEqualTo("floor slides right: chest slides right");
    assertThat(words(chest, limits.givingWay("push", false).orElseThrow()))
        .isEqualTo("floor slides left: chest slides left");
    assertThat(limits.range("floor.offset").orElseThrow().greatest().orElseThrow())
        .isCloseTo(180 * 1.2 / 900, within(1e-9));
  }

  @Test
  void tooMuchPushIsToldByTheLoadThatItWouldBear() {
    Limits limits = Limits.of(Yard.pushedChest(0.45, 300));
    Verdict.DoesNotHold verdict = (Verdict.DoesNotHold) limits.verdict();

    assertThat(verdict.after()).isEqualTo(Verdict.After.LOADS);
    assertThat(verdict.how().events())
        .containsExactly(new Event("floor", Event.Kind.TIPS, "tips about its right edge"));
    assertThat(limits.frictionFactor()).isEqualTo(new FrictionFactor.NotEnough());
    assertThat(between(limits, Variation.of("push")).margin().orElseThrow())
        .isCloseTo(-0.25, within(1e-9));
  }

  /** Its weight beside the base: neither less load nor more friction would do. */
  @Test
  void whatTipsByItsOwnWeightIsToldByTheLeastNeed() {
    Device stool =
        Yard.named("leaning stool")
            .point("base", 0, 0)
            .point("seat", 0.5, 1)
            .member("stool", "base", "seat")
            .connect(
                new bellcrank.statics.device.ContactBase(
                    "foot", "base", "stool", "ground", Direction.UP, 0.4, 0.5, 0.5))
            .load(Yard.weight("own", "stool", "seat", 10))
            .build();
    Verdict.DoesNotHold verdict = (Verdict.DoesNotHold) Limits.of(stool).verdict();

    assertThat(verdict.after()).isEqualTo(Verdict.After.NEED);
    assertThat(verdict.how().events()).extracting(Event::kind).contains(Event.Kind.TIPS);
    assertThat(Limits.of(stool).limit(Variation.of("own")))
        .isInstanceOfSatisfying(
            Limit.Between.class, only -> assertThat(only.contains(1)).isFalse());
  }

  @Test
  void aMechanismIsToldFromWhatSlips() {
    Device cart = Yard.cart().load(new Force("pull", "cart", "front", Vector.of(10, -100))).build();
    Verdict.DoesNotHold verdict = (Verdict.DoesNotHold) Limits.of(cart).verdict();

    assertThat(verdict.after()).isEqualTo(Verdict.After.MECHANISM);
    assertThat(words(cart, verdict.how())).isEqualTo("cart slides right");
    assertThat(Limits.of(cart).frictionFactor()).isEqualTo(new FrictionFactor.NoFriction());
    assertThat(Limits.of(cart).answer("friction factor")).isInstanceOf(Answer.Unanswered.class);
  }

  @Test
  void aBookBetweenWallsCanHoldOnceSqueezed() {
    Limits limits = Limits.of(Yard.bookBetweenWalls());

    assertThat(limits.verdict()).isEqualTo(new Verdict.HoldsOnceSeated(List.of("left", "right")));
    assertThat(limits.verdict().words()).isEqualTo("can hold once seated");
    assertThat(limits.frictionFactor()).isEqualTo(new FrictionFactor.AnyIsEnough());
    // both together 10 N of friction at most 0.5 of each push
    Range push = limits.range("left.normal").orElseThrow();
    assertThat(push.least().orElseThrow()).isCloseTo(10, within(1e-9));
    assertThat(push.greatest()).isEmpty();
    assertThat(limits.answer("greatest left.normal")).isInstanceOf(Answer.Unanswered.class);
  }

  /** Steep walls squeeze a log as well, but it would lie between them without any friction. */
  @Test
  void aLogInANotchHoldsHoweverSeated() {
    Direction left = Direction.ofAngle(Math.toRadians(10));
    Direction right = Direction.ofAngle(Math.toRadians(170));
    Device log =
        Yard.named("log in a notch")
            .point("left", -0.1, 0)
            .point("right", 0.1, 0)
            .point("middle", 0, 0)
            .member("log", "left", "middle", "right")
            .connect(new Contact("left", "left", "log", "ground", left, 0.6, 0.5))
            .connect(new Contact("right", "right", "log", "ground", right, 0.6, 0.5))
            .load(Yard.weight("own", "log", "middle", 50))
            .build();

    assertThat(Limits.of(log).verdict()).isEqualTo(new Verdict.Holds());
    assertThat(Limits.of(log).frictionFactor()).isEqualTo(new FrictionFactor.NotNeeded());
  }

  /** Two stays on a mast: the wind decides which one is slack. */
  @Test
  void theSlackStayIsFound() {
    Device mast =
        Yard.named("mast")
            .point("foot", 0, 0)
            .point("top", 0, 3)
            .point("west", -3, 0)
            .point("east", 3, 0)
            .member("mast", "foot", "top")
            .pin("foot", "foot", "mast", "ground")
            .connect(new Line("west", End.of("mast", "top"), End.of("ground", "west")))
            .connect(new Line("east", End.of("mast", "top"), End.of("ground", "east")))
            .load(new Force("wind", "mast", "top", Vector.of(100, 0)))
            .build();
    Limits limits = Limits.of(mast);

    assertThat(limits.verdict()).isEqualTo(new Verdict.Holds());
    assertThat(limits.states())
        .extracting(PartState::part, PartState::state)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("west", PartState.State.CARRIES),
            org.assertj.core.groups.Tuple.tuple("east", PartState.State.MAY_CARRY));
    Balance loose = limits.withLeastForces().orElseThrow();
    assertThat(loose.number("east.tension").orElseThrow()).isCloseTo(0, within(1e-9));
    assertThat(loose.number("west.tension").orElseThrow())
        .isCloseTo(100 * Math.sqrt(2), within(1e-9));
    assertThat(limits.limit(Variation.of("wind")))
        .isEqualTo(
            new Limit.Between(
                Variation.of("wind"), new Limit.End.Unlimited(), new Limit.End.Unlimited()));
  }

  /** Euler–Eytelwein: 100 N over half a turn and four whole ones with μ = 0.23. */
  @Test
  void aRopeRoundAPost() {
    Device capstan = Yard.capstan(0.23, 4);
    Limits limits = Limits.of(capstan);
    double ratio = Math.exp(0.23 * 9 * Math.PI);

    assertThat(value(limits.answer("least pull"))).isCloseTo(100 / ratio, within(1e-9));
    assertThat(value(limits.answer("greatest pull"))).isCloseTo(100 * ratio, within(1e-4));
    assertThat(limits.givingWay("pull", false).orElseThrow().events())
        .containsExactly(
            new Event("rope", Event.Kind.SLIPS_ROUND, "slips round its post towards load"));
    assertThat(limits.givingWay("pull", true).orElseThrow().events())
        .containsExactly(
            new Event("rope", Event.Kind.SLIPS_ROUND, "slips round its post towards hand"));
    assertThat(value(limits.answer("greatest rope.ratio"))).isCloseTo(ratio, within(1e-6));
  }

  /** Friction circle r·sin φ: at the limit the reaction passes it at that distance. */
  /** The couple at the screw has room both ways, so no part is at its limit in every state. */
  @Test
  void aPressOnADryPinHoldsWithinTheRangeOfItsScrew() {
    Device press =
        Device.named("press")
            .point("hinge", 0, 0)
            .point("ram", 0.5, 0)
            .point("cap", 1.5, 0)
            .point("nut", 1.5, 0.8)
            .member("beam", "hinge", "ram", "cap")
            .connect(new Pin("hinge", "hinge", List.of("beam", "ground"), 0.025, 0.2))
            .connect(
                new Screw(
                    "screw", End.of("beam", "cap"), End.of("ground", "nut"), 0.008, 0.018, 0.12))
            .force("cake", "beam", "ram", Vector.of(0, 9000))
            .load(
                new Sought(
                    "crank", Sought.Want.COUPLE, "screw", Optional.empty(), Optional.empty()))
            .build();
    assertThat(Limits.of(press).verdict()).isEqualTo(new Verdict.Holds());
  }

  @Test
  void aLeverOnADryPin() {
    Device lever = Yard.dryLever(0.2);
    Limits limits = Limits.of(lever);
    double circle = 0.03 * Math.sin(Math.atan(0.2));
    // 1000·(1 ± c) = hand·(2 ∓ c)
    double most = 1000 * (1 + circle) / (2 - circle);
    double least = 1000 * (1 - circle) / (2 + circle);

    assertThat(value(limits.answer("greatest hand"))).isCloseTo(most, within(1e-6));
    assertThat(value(limits.answer("least hand"))).isCloseTo(least, within(1e-6));
    assertThat(words(lever, limits.givingWay("hand", true).orElseThrow()))
        .isEqualTo("hinge turns against its friction: lever turns clockwise about hinge");
    assertThat(value(limits.answer("greatest hinge.couple")))
        .isCloseTo(circle * (1000 + most), within(1e-5));
    assertThat(limits.verdict()).isEqualTo(new Verdict.Holds());
    assertThat(limits.answer("hand")).isInstanceOf(Answer.Unanswered.class);
  }

  /** Raising 43.14 N·m and lowering 17.10 N·m: W·r·tan(φ ± α), Engineering Statics, section 9.4. */
  @Test
  void aScrewJackLocksItself() {
    Limits limits = Limits.of(cranked(Yard.jack(0.15)));

    assertThat(value(limits.answer("greatest crank"))).isCloseTo(43.14, within(0.005));
    assertThat(value(limits.answer("least crank"))).isCloseTo(-17.10, within(0.005));
    assertThat(limits.givingWay("crank", true).orElseThrow().events())
        .containsExactly(
            new Event("screw", Event.Kind.RUNS, "turns in its thread, raising its load"));
    assertThat(limits.givingWay("crank", false).orElseThrow().events())
        .containsExactly(
            new Event("screw", Event.Kind.RUNS, "turns in its thread, lowering its load"));
    assertThat(value(limits.answer("greatest screw.raising"))).isCloseTo(43.14, within(0.005));
  }

  @Test
  void aTurnedScrewHoldsOrRuns() {
    assertThat(Limits.of(turned(0.15, 40)).verdict()).isEqualTo(new Verdict.Holds());
    assertThat(Limits.of(turned(0.15, 44)).verdict().words()).isEqualTo("does not hold");
    assertThat(Limits.of(turned(0.15, 0)).verdict()).isEqualTo(new Verdict.Holds());
    // without friction the load drives the screw down unless just 10 kN · 8 mm / 2π holds it
    assertThat(Limits.of(turned(0, 0)).verdict().words()).isEqualTo("does not hold");
  }

  /** A jack upside down: what pulls on the screw is lowered where its ends are driven apart. */
  @Test
  void aScrewThatIsPulledRaisesTheOtherWay() {
    Limits limits = Limits.of(cranked(Yard.jack(0.15).load(force("hoist", 0, 30_000))));

    assertThat(value(limits.answer("least crank"))).isCloseTo(-2 * 43.14, within(0.01));
    assertThat(limits.givingWay("crank", true).orElseThrow().events().get(0).words())
        .isEqualTo("turns in its thread, lowering its load");
    assertThat(limits.givingWay("crank", false).orElseThrow().events().get(0).words())
        .isEqualTo("turns in its thread, raising its load");
  }

  /** Without friction one couple holds it, and either way is open. */
  @Test
  void aSmoothScrewTurnsEitherWay() {
    Limits limits = Limits.of(cranked(Yard.jack(0)));

    assertThat(limits.givingWay("crank", true).orElseThrow().events().get(0).words())
        .isEqualTo("turns in its thread");
  }

  private static Force force(String name, double x, double y) {
    return new Force(name, "head", "head", Vector.of(x, y));
  }

  private static Device cranked(DeviceBuilder jack) {
    return jack.load(
            new Sought("crank", Sought.Want.COUPLE, "screw", Optional.empty(), Optional.empty()))
        .build();
  }

  private static Device turned(double friction, double couple) {
    return Yard.jack(friction).load(new Couple("crank", "screw", couple)).build();
  }

  /** N·(R − N) = 2|M|·R/B with R = 16 kN and M = 0.5 kN·m: N = 12.899 kN. */
  @Test
  void aBaseSinksBeforeItTips() {
    Device post = Yard.post(500);
    Foundation soil = Foundation.of("base", 0.4).withBearing(new Presumptive(1e5, "invented"));
    Limits limits = on(post, soil);
    double all = 16_000;
    double most = (all + Math.sqrt(all * all - 8 * 500 * all / 0.4)) / 2;
    Limit.Between down = between(limits, Variation.of("down"));

    assertThat(at(down.greatest()).value()).isCloseTo(most / 10_000, within(1e-8));
    assertThat(at(down.greatest()).how().events())
        .containsExactly(new Event("base", Event.Kind.SINKS, "sinks into the ground"));
    // the side force alone: 10000·6000 = 2|M|·16000/0.4, so M = 750 N·m
    assertThat(at(between(limits, Variation.of("side")).greatest()).value())
        .isCloseTo(1.5, within(1e-8));
    assertThat(at(between(Limits.of(post), Variation.of("side")).greatest()).value())
        .as("on rock it tips at 10000·0.2 N·m")
        .isCloseTo(4, within(1e-9));
  }

  private static Limits on(Device device, Foundation foundation) {
    return Limits.of(device, device.cases().get(0), Pose.DRAWN, List.of(foundation));
  }

  /** Adhesion on the effective width, 10 kPa · 0.4 m · (0.4 m − 2·0.2 m·…), and a cleat. */
  @Test
  void adhesionAndACleatHoldASmoothBaseBack() {
    Device sledge =
        Yard.named("sledge")
            .point("base", 0, 0)
            .member("sledge", "base")
            .connect(
                new bellcrank.statics.device.ContactBase(
                    "base", "base", "sledge", "ground", Direction.UP, 0.4, 0, 0))
            .load(new Force("down", "sledge", "base", Vector.of(0, -1000)))
            .sought("pull", "sledge", "base", Direction.RIGHT)
            .build();
    Foundation clay = Foundation.of("base", 0.5).withAdhesion(10_000);
    assertThat(value(on(sledge, clay).answer("greatest pull"))).isCloseTo(2000, within(1e-5));
    Cleat cleat = new Cleat(0.1, Math.toRadians(30), 0, 18_000);
    assertThat(value(on(sledge, clay.withCleat(cleat)).answer("greatest pull")))
        .as("K_p = 3: 0.5·3·18 kN/m³·0.01 m²·0.5 m = 135 N more")
        .isCloseTo(2135, within(1e-5));
    assertThat(Limits.of(sledge).answer("greatest pull"))
        .as("without them nothing holds it")
        .isInstanceOf(Answer.Value.class);
  }

  /** The resistance depends on the inclination of the force, which is found at the limit itself. */
  @Test
  void undrainedGroundIsAskedAtTheLimit() {
    Device post = Yard.post(500);
    Foundation clay = Foundation.of("base", 0.4).withBearing(new Undrained(30_000, 0));
    Limits limits = on(post, clay);
    Limit.Between down = between(limits, Variation.of("down"));
    double normal = 10_000 * at(down.greatest()).value();
    double resistance = clay.bearing().orElseThrow().resistance(clay.load(normal, -500, 500, 0.4));

    assertThat(normal).isCloseTo(resistance, within(1e-4));
  }

  @Test
  void kineticFrictionTellsWhatKeepsItMoving() {
    Device block =
        Yard.named("block")
            .point("base", 0, 0)
            .member("block", "base")
            .connect(
                new bellcrank.statics.device.ContactBase(
                    "floor", "base", "block", "ground", Direction.UP, 1, 0.5, 0.3))
            .load(Yard.weight("own", "block", "base", 10))
            .sought("push", "block", "base", Direction.RIGHT)
            .build();

    assertThat(value(Limits.of(block).answer("greatest push"))).isCloseTo(50, within(1e-9));
    assertThat(value(Limits.of(block).moving().answer("greatest push")))
        .isCloseTo(30, within(1e-9));
  }

  @Test
  void infeasibleAtZeroIsToldFromInfeasibleUnderLoad() {
    Device hook =
        Yard.named("hook")
            .point("A", 0, 0)
            .point("top", 0, 1)
            .joint("A")
            .connect(new Line("rope", End.of("A", "A"), End.of("ground", "top")))
            .load(new Force("up", "A", "A", Vector.of(0, 30)))
            .load(new Force("down", "A", "A", Vector.of(0, -60)))
            .build();
    Limit.Between down = between(Limits.of(hook), Variation.of("down"));

    assertThat(down.holdsAtZero()).isFalse();
    assertThat(at(down.least()).value()).isCloseTo(0.5, within(1e-9));
    assertThat(at(down.least()).how().events())
        .containsExactly(new Event("rope", Event.Kind.GOES_SLACK, "goes slack"));
    assertThat(down.greatest()).isEqualTo(new Limit.End.Unlimited());
    assertThat(Limits.of(Yard.ladder(0.1, 0)).limit(Variation.of("own")))
        .isInstanceOf(Limit.Between.class);
  }

  /**
   * A drawer with play that is pulled 0.3 m off its middle, its corners 0.2 m apart in depth: N·0.2
   * = P·0.3 and P ≤ 2μN, so it jams from μ = 0.2/(2·0.3) on.
   */
  @Test
  void aDrawerJams() {
    assertThat(drawer(0.34).limit(Variation.of("pull")))
        .isInstanceOfSatisfying(
            Limit.Between.class,
            jams -> assertThat(jams.greatest()).isEqualTo(new Limit.End.SelfLocking()));
    assertThat(drawer(0.33).limit(Variation.of("pull")))
        .isInstanceOfSatisfying(
            Limit.Between.class,
            moves -> assertThat(at(moves.greatest()).value()).isCloseTo(0, within(1e-9)));
  }

  private static Limits drawer(double friction) {
    Device drawer =
        Yard.named("drawer")
            .point("left back", -0.25, 0)
            .point("right front", 0.25, -0.2)
            .point("right back", 0.25, 0)
            .point("left front", -0.25, -0.2)
            .point("knob", 0.3, -0.2)
            .member("drawer", "left back", "left front", "right front", "right back", "knob")
            .connect(rail("left", "left front", Direction.RIGHT, friction))
            .connect(rail("right", "right back", Direction.LEFT, friction))
            .load(new Force("pull", "drawer", "knob", Vector.of(0, -100)))
            .build();
    return Limits.of(drawer);
  }

  private static Contact rail(String name, String at, Direction push, double friction) {
    return new Contact(name, at, "drawer", "ground", push, friction, friction);
  }

  @Test
  void badVariationsAreRefused() {
    Limits limits = Limits.of(Yard.ladder(0.35, 0));
    assertThatThrownBy(() -> limits.limit(Variation.of("rain")))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("rain")
        .hasMessageContaining("given load");
    assertThatThrownBy(() -> limits.limit(Variation.place("rain", "foot", "top")))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("force or weight");
    assertThatThrownBy(() -> limits.limit(Variation.place("picker", "foot", "foot")))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("two points apart");
    assertThatThrownBy(() -> limits.givingWay("picker", true))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("sought");
    assertThatThrownBy(() -> on(Yard.post(1), Foundation.of("top", 1)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("contact base");
    assertThatThrownBy(
            () ->
                Limits.of(
                    Yard.post(1),
                    LoadCase.ALL_LOADS,
                    Pose.DRAWN,
                    List.of(Foundation.of("base", 1), Foundation.of("base", 2))))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("one foundation");
    assertThatThrownBy(() -> Limits.of(turned(0.1, 5)).limit(Variation.of("crank")))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("couple on a screw");
  }

  @Test
  void whatHasNoOneSidedPartIsNoConcernOfLimits() {
    Device lever =
        Yard.named("lever")
            .point("hinge", 0, 0)
            .point("end", 1, 0)
            .member("lever", "hinge", "end")
            .pin("hinge", "hinge", "lever", "ground")
            .sought("hand", "lever", "end", Direction.UP)
            .build();

    assertThat(Limits.concern(lever)).isFalse();
    assertThat(Limits.of(lever).verdict()).isEqualTo(new Verdict.Holds());
    assertThat(Limits.concern(Yard.ladder(0.1, 0))).isTrue();
    assertThat(Limits.concern(Yard.dryLever(0.1))).isTrue();
    assertThat(Limits.concern(Yard.jack(0.1).build())).isFalse();
    assertThat(Limits.concern(turned(0.1, 1))).isTrue();
  }
}
