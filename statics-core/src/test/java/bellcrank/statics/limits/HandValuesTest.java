package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Ranges, states and limits whose values follow by hand from Coulomb's law, the rope formula of
 * Euler and Eytelwein and the balance of one body.
 */
class HandValuesTest {

  private static double value(Limits limits, String ask) {
    Answer answer = limits.answer(ask);
    assertThat(answer).as(ask).isInstanceOf(Answer.Value.class);
    return ((Answer.Value) answer).si();
  }

  private static Limit.Between between(Limits limits, Variation variation) {
    assertThat(limits.limit(variation)).isInstanceOf(Limit.Between.class);
    return (Limit.Between) limits.limit(variation);
  }

  private static DeviceBuilder mast() {
    return Yard.named("mast")
        .point("foot", 0, 0)
        .point("top", 0, 3)
        .point("east", 3, 0)
        .member("mast", "foot", "top")
        .pin("foot", "foot", "mast", "ground")
        .load(new Force("sail", "mast", "top", Vector.of(0, -100)));
  }

  /** A plumb mast under a plumb load leaves nothing for its stay: any tension would turn it. */
  @Test
  void theOnlyStayOfAPlumbMastIsSlack() {
    Device mast =
        mast().connect(new Line("stay", End.of("mast", "top"), End.of("ground", "east"))).build();
    Limits limits = Limits.of(mast);

    assertThat(limits.verdict().words()).isNotEqualTo("does not hold");
    assertThat(limits.states()).extracting(PartState::state).containsExactly(PartState.State.SLACK);
    assertThat(limits.states().get(0).force().greatest().orElseThrow()).isCloseTo(0, within(1e-9));
  }

  /** The same with a wall behind its top: they touch, and that is all. */
  @Test
  void theWallBehindAPlumbMastIsOpen() {
    Device mast =
        mast()
            .connect(new Contact("wall", "top", "mast", "ground", Direction.LEFT, 0.3, 0.2))
            .build();

    assertThat(Limits.of(mast).states())
        .extracting(PartState::state)
        .containsExactly(PartState.State.OPEN);
  }

  /** What tips at 1.5 times its push to either side holds at just that, and not a little beyond. */
  @Test
  void theEndsOfALimitBelongToIt() {
    Limit.Between push =
        between(Limits.of(Yard.pushedChest(0.45, 150)), Variation.ofAppliedLoads());

    assertThat(push.contains(1.5)).isTrue();
    assertThat(push.contains(-1.5)).isTrue();
    assertThat(push.contains(1.500_001)).isFalse();
    assertThat(push.contains(-1.500_001)).isFalse();
  }

  /** 900 N on the floor and 0.2 of it to the side. */
  @Test
  void theStateAtALimitHasTheForcesOfTheLimit() {
    Device chest = Yard.chest(0.2).sought("push", "chest", "hand", Direction.RIGHT).build();
    LimitState most = Limits.of(chest).stateAt("push", true).orElseThrow();
    LimitState least = Limits.of(chest).stateAt("push", false).orElseThrow();

    assertThat(most.balance().number("floor.normal").orElseThrow()).isCloseTo(900, within(1e-7));
    assertThat(most.balance().number("push").orElseThrow()).isCloseTo(180, within(1e-7));
    assertThat(least.balance().number("push").orElseThrow()).isCloseTo(-180, within(1e-7));
    assertThat(most.how().events()).containsExactly(slides("slides right"));
    assertThat(least.how().events()).containsExactly(slides("slides left"));
    assertThat(most.friction()).isEqualTo(1);
  }

  private static Event slides(String words) {
    return new Event("floor", Event.Kind.SLIDES, words);
  }

  /** Stuck between two walls the push of either grows without end, so nothing is greatest. */
  @Test
  void noEndOfAStateWithoutEnd() {
    Device log =
        Yard.named("log")
            .point("left", 0, 0)
            .point("right", 0.1, 0)
            .member("log", "left", "right")
            .connect(new Contact("left", "left", "log", "ground", Direction.RIGHT, 0.5, 0.4))
            .connect(new Contact("right", "right", "log", "ground", Direction.LEFT, 0.5, 0.4))
            .sought("lift", "log", "right", Direction.UP)
            .build();

    assertThat(Limits.of(log).stateAt("lift", true)).isEmpty();
    assertThat(Limits.of(log).givingWay("lift", true)).isEmpty();
  }

  /** A screw that is to be turned is held by friction alone; one that only stands is not asked. */
  @Test
  void aScrewWithASoughtCoupleConcernsLimits() {
    Sought crank =
        new Sought("crank", Sought.Want.COUPLE, "screw", Optional.empty(), Optional.empty());

    assertThat(Limits.concern(Yard.jack(0.1).load(crank).build())).isTrue();
    assertThat(
            Limits.concern(Yard.jack(0.1).sought("hand", "head", "head", Direction.DOWN).build()))
        .isFalse();
  }

  /**
   * 10 N between two rough walls of μ = 0.5: each pushes at least 10 N and then bears 5 N. Pressed
   * harder, it may bear less, but the squares of 10 + d and 5 − d/2 grow together.
   */
  @Test
  void theLeastForceOfASqueezeWithoutEnd() {
    Limits book = Limits.of(Yard.bookBetweenWalls());

    assertThat(value(book, "least left.size")).isCloseTo(Math.sqrt(125), within(1e-7));
    assertThat(value(book, "least right.size")).isCloseTo(Math.sqrt(125), within(1e-7));
    assertThat(book.answer("greatest left.size")).isInstanceOf(Answer.Unanswered.class);
    assertThat(book.answer("greatest left.direction")).isInstanceOf(Answer.Unanswered.class);
  }

  private static ContactBase floor(String name, String body, double friction) {
    return new ContactBase(name, "base", body, "ground", Direction.UP, 1, friction, friction);
  }

  /**
   * Two slabs of 100 N on one spot, pinned together: the pin may lift one by 100 N, or push it
   * aside by 0.6 of what then still rests on the floor. So |y| ≤ 100 N and |x| ≤ 0.6·(100 N − |y|).
   */
  @Test
  void aForceThatMayBeZeroHasADiamondOfValues() {
    Device slabs =
        Yard.named("two slabs")
            .point("base", 0, 0)
            .member("one", "base")
            .member("other", "base")
            .connect(floor("first", "one", 0.6))
            .connect(floor("second", "other", 0.6))
            .pin("bolt", "base", "one", "other")
            .load(Yard.weight("own", "one", "base", 10))
            .load(Yard.weight("too", "other", "base", 10))
            .build();
    Limits limits = Limits.of(slabs);

    assertThat(value(limits, "greatest bolt.size")).isCloseTo(100, within(1e-6));
    assertThat(value(limits, "least bolt.size")).isCloseTo(0, within(1e-6));
    assertThat(value(limits, "greatest bolt.x")).isCloseTo(60, within(1e-6));
    assertThat(value(limits, "least bolt.y")).isCloseTo(-100, within(1e-6));
    assertThat(limits.answer("greatest bolt.direction")).isInstanceOf(Answer.Unanswered.class);
  }

  /** Walls push to the left, so what is divided by their x is divided by less than zero. */
  @Test
  void aQuotientByANegativeForceKeepsItsOrder() {
    Limits limits = Limits.of(Yard.ladder(0.5, 0.2));
    // with T = t·H at the wall: H = 630/(4 + 3·t) and N = 900 − t·H

    assertThat(value(limits, "greatest wall.y per wall.x")).isCloseTo(0.2, within(1e-9));
    assertThat(value(limits, "least wall.y per wall.x")).isCloseTo(-0.2, within(1e-9));
    assertThat(value(limits, "greatest foot.normal per wall.x"))
        .isCloseTo(-900 * 3.4 / 630 - 0.2, within(1e-9));
    assertThat(value(limits, "least foot.normal per wall.x"))
        .isCloseTo(-900 * 4.6 / 630 + 0.2, within(1e-9));
    assertThat(limits.answer("greatest wall.x per wall.y")).isInstanceOf(Answer.Unanswered.class);
  }

  /** A rope slips at e^(μπ) over half a turn; a hand of 100·√e N would need μ = 1/(2π). */
  @Test
  void howMuchRougherAPostWouldHaveToBe() {
    Limits limits = Limits.of(post(0.1, 100 * Math.exp(0.5)));

    assertThat(limits.frictionFactor())
        .isInstanceOfSatisfying(
            FrictionFactor.Least.class,
            least -> {
              assertThat(least.factor()).isCloseTo(0.5 / (0.1 * Math.PI), within(1e-7));
              assertThat(least.how().events())
                  .containsExactly(
                      new Event(
                          "rope", Event.Kind.SLIPS_ROUND, "slips round its post towards hand"));
            });
  }

  /** A rope over a post, half a turn: 100 N on one side, a pull on the other. */
  private static Device post(double friction, double pull) {
    return Yard.overPost(friction, 0)
        .load(new Force("barrel", "load", "load", Vector.of(0, -100)))
        .load(new Force("pull", "hand", "hand", Vector.of(0, -pull)))
        .build();
  }

  private static DeviceBuilder cart() {
    return Yard.named("cart")
        .point("front", 1, 0)
        .point("back", -1, 0)
        .point("middle", 0, 0)
        .member("cart", "back", "middle", "front")
        .connect(new Roller("front", "front", "cart", "ground", Direction.UP, Sides.ONE))
        .connect(new Roller("back", "back", "cart", "ground", Direction.UP, Sides.ONE))
        .load(Yard.weight("own", "cart", "middle", 20));
  }

  /** On wheels a cart stands only where its brake rope of 5 N is just what is pulled with. */
  @Test
  void aCartIsHeldByOneMultipleOfAPull() {
    Device cart =
        cart()
            .load(new Force("brake", "cart", "front", Vector.of(-5, 0)))
            .load(new Force("pull", "cart", "front", Vector.of(20, 0)))
            .build();
    LimitSweep sweep = Limits.of(cart).sweep(Variation.of("pull"));

    assertThat(Limits.of(cart).greatest(Variation.of("pull")).orElseThrow())
        .isCloseTo(0.25, within(1e-9));
    assertThat(sweep.greatest()).isCloseTo(0.25, within(1e-9));
  }

  /** No load on its bed stops a cart that is pushed. */
  @Test
  void aPushedCartIsHeldByNoLoadOnIt() {
    Device cart = cart().load(new Force("push", "cart", "front", Vector.of(5, 0))).build();

    assertThat(Limits.of(cart).greatest(Variation.of("own"))).isEmpty();
    assertThat(Limits.of(cart).sweep(Variation.of("own")).isTold()).isFalse();
    assertThat(Limits.of(cart).limit(Variation.of("own")))
        .isEqualTo(new Limit.Never(Variation.of("own")));
  }

  /**
   * A cart of 200 N on wheels 2 m apart, loaded 0.5 m beyond the front one: it tips over it at 400
   * N.
   */
  @Test
  void aCartTipsOverItsFrontWheel() {
    Device cart =
        Yard.named("cart")
            .point("front", 1, 0)
            .point("back", -1, 0)
            .point("middle", 0, 0)
            .point("tail", 1.5, 0)
            .member("cart", "back", "middle", "front", "tail")
            .pin("front", "front", "cart", "ground")
            .connect(new Roller("back", "back", "cart", "ground", Direction.UP, Sides.ONE))
            .load(Yard.weight("own", "cart", "middle", 20))
            .load(new Force("sack", "cart", "tail", Vector.of(0, -100)))
            .build();
    Limit.End.At end = (Limit.End.At) between(Limits.of(cart), Variation.of("sack")).greatest();

    assertThat(end.value()).isCloseTo(4, within(1e-9));
    assertThat(end.gap()).isZero();
    assertThat(end.how().events()).extracting(Event::part).containsExactly("back");
    assertThat(value(Limits.of(cart), "back.normal")).isCloseTo(75, within(1e-9));
  }

  /** A rough wall leaves a free force, which each pose takes part in anew. */
  @Test
  void aLadderOnTwoRoughWallsIsFollowedFromPoseToPose() {
    Limits limits = Limits.of(Yard.ladder(0.3, 0.2));
    for (Variation climb :
        List.of(Variation.place("picker", "foot", "top"), Variation.of("picker"))) {
      LimitSweep sweep = limits.sweep(climb);
      for (double turn : new double[] {0.15, -0.1, 0.3, -0.2, 0}) {
        Pose leaning = Pose.DRAWN.with("ladder", Frame.turnAbout(Point.ORIGIN, turn));
        sweep.moveTo(leaning);
        assertThat(sweep.isTold()).isEqualTo(limits.at(leaning).greatest(climb).isPresent());
        if (sweep.isTold()) {
          double expected = limits.at(leaning).greatest(climb).orElseThrow();
          assertThat(sweep.greatest()).isCloseTo(expected, within(1e-9 * Math.max(1, expected)));
        }
      }
    }
  }

  /**
   * Both ends rough: N = 900/(1 + 0.3·0.2) at the floor, H = 0.3·N and T = 0.2·H at the wall, so
   * 100·1.5 + 800·x = 4·H + 3·T.
   */
  @Test
  void howFarUpOneMayClimbWithARoughWall() {
    Limits limits = Limits.of(Yard.ladder(0.3, 0.2));
    double push = 0.3 * 900 / 1.06;
    double along = (4 * push + 3 * 0.2 * push - 150) / 800;
    Variation climb = Variation.place("picker", "foot", "top");

    assertThat(limits.greatest(climb).orElseThrow()).isCloseTo(along / 0.6, within(1e-9));
    assertThat(limits.sweep(climb).greatest()).isCloseTo(along / 0.6, within(1e-9));
  }

  /**
   * A broader base on soft ground: N·(R − N) = 2|M|·R/B with N = 10 kN, R = 100 kPa·0.4 m·0.8 m =
   * 32 kN and B = 0.8 m: M = 2750 N·m, to either side.
   */
  @Test
  void aBroadBaseSinksToEitherSide() {
    Device post =
        Yard.named("post")
            .point("base", 0, 0)
            .point("top", 0, 1)
            .member("post", "base", "top")
            .connect(new ContactBase("base", "base", "post", "ground", Direction.UP, 0.8, 0.9, 0.9))
            .load(new Force("down", "post", "top", Vector.of(0, -10_000)))
            .load(new Force("side", "post", "top", Vector.of(500, 0)))
            .build();
    Foundation soil = Foundation.of("base", 0.4).withBearing(new Presumptive(1e5, "invented"));
    Limits limits = Limits.of(post, LoadCase.ALL_LOADS, Pose.DRAWN, List.of(soil));
    Limit.Between side = between(limits, Variation.of("side"));
    Limit.End.At most = (Limit.End.At) side.greatest();
    Limit.End.At least = (Limit.End.At) side.least();

    assertThat(most.value()).isCloseTo(5.5, within(1e-7));
    assertThat(least.value()).isCloseTo(-5.5, within(1e-7));
    assertThat(most.how().events())
        .extracting(Event::words)
        .containsExactly("sinks into the ground");
    assertThat(least.how().events())
        .extracting(Event::words)
        .containsExactly("sinks into the ground");
    assertThat(value(limits, "base.normal")).isCloseTo(10_000, within(1e-6));
  }

  /** 1000 N on a pin with friction circle c: the load 1 m off is 1000 N for hands between two. */
  @Test
  void theAdvantageOfADryLeverLiesBetweenItsFrictionCircles() {
    Device lever = Yard.dryLever(0.2).toBuilder().advantage("hand", "load").build();
    double circle = 0.03 * Math.sin(Math.atan(0.2));
    Limits limits = Limits.of(lever);

    assertThat(value(limits, "least advantage"))
        .isCloseTo((2 - circle) / (1 + circle), within(1e-6));
    assertThat(value(limits, "greatest advantage"))
        .isCloseTo((2 + circle) / (1 - circle), within(1e-6));
  }

  /** A rope that is pulled with just e^(μπ) times its load neither runs nor holds any more. */
  @Test
  void aRopeAtItsVeryLimitIsAboutToSlip() {
    Limits limits = Limits.of(post(0.25, 100 * Math.exp(0.25 * Math.PI)));

    assertThat(limits.verdict().words()).isEqualTo("about to give way");
    assertThat(limits.states())
        .extracting(PartState::state)
        .containsExactly(PartState.State.ABOUT_TO_SLIP);
    assertThat(Limits.of(post(0.25, 150)).states())
        .extracting(PartState::state)
        .containsExactly(PartState.State.CARRIES);
  }

  /** Its weight 2.8 m beside the edge: no friction and no part of the weight would do. */
  @Test
  void whatLeansFarBesideItsBaseTurnsAboutTheEdge() {
    Device stool =
        Yard.named("stool")
            .point("base", 0, 0)
            .point("seat", 3, 1)
            .member("stool", "base", "seat")
            .connect(
                new ContactBase("foot", "base", "stool", "ground", Direction.UP, 0.4, 0.5, 0.5))
            .load(Yard.weight("own", "stool", "seat", 10))
            .build();
    Verdict.DoesNotHold verdict = (Verdict.DoesNotHold) Limits.of(stool).verdict();

    assertThat(verdict.after()).isEqualTo(Verdict.After.NEED);
    assertThat(verdict.how().words(stool, UnitSystem.SI))
        .contains("foot tips about its right edge");
    assertThat(value(Limits.of(stool), "greatest multiple(own)")).isCloseTo(0, within(1e-9));
  }

  /** Two loose blocks may each be about to slide; then there is no one motion to tell. */
  @Test
  void twoWaysAtOnceAreCounted() {
    DeviceBuilder blocks = Yard.named("two blocks");
    for (String name : List.of("left", "right")) {
      String at = name + " base";
      blocks
          .point(at, name.equals("left") ? -1 : 1, 0)
          .member(name, at)
          .connect(
              new ContactBase(name + " floor", at, name, "ground", Direction.UP, 0.5, 0.4, 0.3))
          .load(Yard.weight(name + " own", name, at, 10))
          .load(new Force(name + " push", name, at, Vector.of(20, 0)));
    }
    Device device = blocks.build();
    Limit.End.At end =
        (Limit.End.At) between(Limits.of(device), Variation.ofAppliedLoads()).greatest();

    assertThat(end.value()).isCloseTo(2, within(1e-9));
    assertThat(end.how().ways()).isEqualTo(2);
    assertThat(end.how().words(device, UnitSystem.SI))
        .isEqualTo(
            "left floor slides right, right floor slides right: 2 independent motions are possible,"
                + " statics does not tell which");
  }

  /** A coefficient of zero is no friction: what a lever loses then is nothing. */
  @Test
  void aSmoothPinLosesNothing() {
    Device lever = Yard.dryLever(0).toBuilder().advantage("hand", "load").build();
    Efficiency efficiency = Limits.of(lever).efficiency().orElseThrow();

    assertThat(efficiency.frictionless()).isTrue();
    assertThat(number(efficiency.forward())).isCloseTo(1, within(1e-9));
    assertThat(number(efficiency.back())).isCloseTo(1, within(1e-9));
    assertThat(Limits.of(lever).frictionFactor()).isEqualTo(new FrictionFactor.NoFriction());
    assertThat(
            Limits.of(Yard.dryLever(0.2).toBuilder().advantage("hand", "load").build())
                .efficiency()
                .orElseThrow()
                .frictionless())
        .isFalse();
  }

  private static double number(Answer answer) {
    assertThat(answer).isInstanceOf(Answer.Value.class);
    return ((Answer.Value) answer).si();
  }

  /**
   * A rope that loses nothing needs no way of hauling to be told: two parts bear twice the pull.
   */
  @Test
  void aRopeWithoutLossesIsTheSameBothWays() {
    for (Reeving.Hauling way : List.of(Reeving.Hauling.RAISING, Reeving.Hauling.LOWERING)) {
      Device tackle =
          Device.named("tackle")
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
                      1,
                      way))
              .force("weight", "block", "block", Vector.of(0, -90))
              .sought("pull", "hand", "hand", Direction.DOWN)
              .advantage("pull", "weight")
              .build();
      Efficiency efficiency = Limits.of(tackle).efficiency().orElseThrow();

      assertThat(number(efficiency.forward())).isCloseTo(1, within(1e-9));
      assertThat(number(efficiency.back())).isCloseTo(1, within(1e-9));
      assertThat(efficiency.frictionless()).isTrue();
    }
  }
}
