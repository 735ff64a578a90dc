package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What devices lack that do not hold by far or by a hair, and what is lost where nothing rubs. */
class NeedAndLossTest {

  /** A rope 1 cm beside the hinge would have to push with a hundred times what hangs 1 m out. */
  @Test
  void whatIsLackingMayBeAHundredTimesTheLoads() {
    Device bar =
        Yard.named("bar")
            .point("hinge", 0, 0)
            .point("near", -0.01, 0)
            .point("above", -0.01, 1)
            .point("out", 1, 0)
            .member("bar", "near", "hinge", "out")
            .pin("hinge", "hinge", "bar", "ground")
            .connect(new Line("rope", End.of("bar", "near"), End.of("ground", "above")))
            .load(Yard.weight("own", "bar", "out", 10))
            .build();

    assertThat(Limits.of(bar).verdict())
        .isInstanceOfSatisfying(
            Verdict.DoesNotHold.class,
            not -> {
              assertThat(not.after()).isEqualTo(Verdict.After.NEED);
              assertThat(not.how().events())
                  .containsExactly(new Event("rope", Event.Kind.GOES_SLACK, "goes slack"));
              assertThat(not.how().ways()).isEqualTo(1);
            });
  }

  /** A chest whose weight stands a hundredth of a millimetre beyond the edge of its base. */
  @Test
  void whatIsLackingMayBeAHair() {
    for (double beyond : new double[] {1e-5, 1e-3}) {
      Device chest =
          Yard.named("chest")
              .point("base", 0, 0)
              .point("middle", 0.5 + beyond, 1)
              .member("chest", "base", "middle")
              .connect(
                  new ContactBase("floor", "base", "chest", "ground", Direction.UP, 1, 0.4, 0.4))
              .load(Yard.weight("own", "chest", "middle", 10))
              .build();

      assertThat(Limits.of(chest).verdict())
          .isInstanceOfSatisfying(
              Verdict.DoesNotHold.class,
              not -> {
                assertThat(not.after()).isEqualTo(Verdict.After.NEED);
                assertThat(not.how().events())
                    .containsExactly(
                        new Event("floor", Event.Kind.TIPS, "tips about its right edge"));
              });
    }
  }

  /** What statics refuses is refused in its words. */
  @Test
  void aDeviceThatCannotBalanceIsToldAsByItsBalance() {
    Device cart = Yard.cart().load(new Force("push", "cart", "front", Vector.of(5, 0))).build();
    Limits limits = Limits.of(cart);

    assertThat(limits.balance().answer("front.normal")).isInstanceOf(Answer.Unanswered.class);
    assertThat(limits.answer("front.normal")).isEqualTo(limits.balance().answer("front.normal"));
  }

  private static DeviceBuilder sledge(double friction) {
    return Yard.named("sledge")
        .point("base", 0, 0)
        .member("sledge", "base")
        .connect(
            new ContactBase("ice", "base", "sledge", "ground", Direction.UP, 1, friction, friction))
        .load(Yard.weight("own", "sledge", "base", 10))
        .load(new Force("drag", "sledge", "base", Vector.of(-20, 0)))
        .sought("pull", "sledge", "base", Direction.RIGHT)
        .advantage("pull", "drag");
  }

  private static DeviceBuilder runner(double friction) {
    return Yard.named("runner")
        .point("base", 0, 0)
        .point("side", 0, 0.2)
        .member("runner", "base", "side")
        .connect(new ContactBase("floor", "base", "runner", "ground", Direction.UP, 1, 0, 0))
        .connect(
            new Contact("wall", "side", "runner", "ground", Direction.LEFT, friction, friction))
        .load(new Force("push", "runner", "side", Vector.of(5, 0)))
        .load(Yard.weight("own", "runner", "base", 10));
  }

  /** With μ = 0 all comes out that goes in, with any friction less; 20/(20 + 0.1·100) here. */
  @Test
  void onlyWhatRubsLoses() {
    Efficiency smooth = Limits.of(sledge(0).build()).efficiency().orElseThrow();
    Efficiency rough = Limits.of(sledge(0.1).build()).efficiency().orElseThrow();
    Efficiency post =
        Limits.of(Yard.capstan(0, 0).toBuilder().advantage("pull", "barrel").build())
            .efficiency()
            .orElseThrow();

    assertThat(smooth.frictionless()).isTrue();
    assertThat(number(smooth.forward())).isCloseTo(1, within(1e-9));
    assertThat(rough.frictionless()).isFalse();
    assertThat(number(rough.forward())).isCloseTo(20.0 / 30, within(1e-9));
    assertThat(number(rough.back())).isCloseTo(10.0 / 20, within(1e-9));
    assertThat(post.frictionless()).isTrue();
    assertThat(number(post.forward())).isCloseTo(1, within(1e-9));
  }

  /** Nobody pulls, so there is nothing of which a share could come out. */
  @Test
  void noShareOfNoEffort() {
    Device sledge =
        Yard.named("sledge")
            .point("base", 0, 0)
            .member("sledge", "base")
            .connect(new ContactBase("ice", "base", "sledge", "ground", Direction.UP, 1, 0.1, 0.1))
            .load(Yard.weight("own", "sledge", "base", 10))
            .load(new Force("pull", "sledge", "base", Vector.ZERO))
            .sought("drag", "sledge", "base", Direction.LEFT)
            .advantage("pull", "drag")
            .build();
    Efficiency efficiency = Limits.of(sledge).efficiency().orElseThrow();

    assertThat(efficiency.forward())
        .isEqualTo(
            new Answer.Unanswered(
                Answer.Reason.NOT_DEFINED, "the effort does no work on what can move"));
    assertThat(efficiency.back()).isEqualTo(efficiency.forward());
  }

  /** What does not hold at all has no share either, and says so. */
  @Test
  void noShareOfWhatDoesNotHold() {
    Device loose =
        sledge(0.1)
            .point("sack", 5, 1)
            .point("floor", 5, 0)
            .joint("sack")
            .connect(new Line("rope", End.of("sack", "sack"), End.of("ground", "floor")))
            .load(new Force("hung", "sack", "sack", Vector.of(0, -50)))
            .build();
    Answer none =
        new Answer.Unanswered(
            Answer.Reason.NO_BALANCE, "the device does not hold, so it has no state of rest");

    assertThat(Limits.of(loose).efficiency().orElseThrow())
        .isEqualTo(new Efficiency(none, none, 0, false));
  }

  /** Parts with μ = 0 are not rough: no factor on friction makes a difference. */
  @Test
  void smoothPartsAreNotRough() {
    assertThat(Limits.of(runner(0).build()).frictionFactor())
        .isEqualTo(new FrictionFactor.NoFriction());
    assertThat(Limits.of(runner(0.1).build()).frictionFactor())
        .isEqualTo(new FrictionFactor.NotNeeded());
    assertThat(Limits.of(sledge(0).build()).frictionFactor())
        .isEqualTo(new FrictionFactor.NoFriction());
    assertThat(Limits.of(Yard.capstan(0, 0)).frictionFactor())
        .isEqualTo(new FrictionFactor.NoFriction());
    assertThat(Limits.of(Yard.dryLever(0)).frictionFactor())
        .isEqualTo(new FrictionFactor.NoFriction());
    assertThat(Limits.of(crankedJack(0)).frictionFactor())
        .isEqualTo(new FrictionFactor.NoFriction());
    assertThat(Limits.of(crankedJack(0.1)).frictionFactor())
        .isInstanceOf(FrictionFactor.Least.class);
  }

  private static Device crankedJack(double friction) {
    return Yard.jack(friction).load(new Couple("crank", "screw", 0)).build();
  }

  private static double number(Answer answer) {
    assertThat(answer).isInstanceOf(Answer.Value.class);
    return ((Answer.Value) answer).si();
  }

  /**
   * A block on a wedge holds however high its weight is put; beside a height of 2,000 km the widths
   * of its bases cannot be told any more, and that is said.
   */
  @Test
  void whatIsLostInRoundingIsNotDecided() {
    DeviceBuilder block =
        Yard.named("block on a wedge")
            .point("floor", 2, 0)
            .point("face", 2, 0.35265)
            .point("heel", 0, 0.3)
            .point("high", 2, 2e6)
            .point("wall", 3, 2)
            .member("wedge", "floor", "face", "heel")
            .member("block", "face", "wall", "high")
            .connect(base("floor", "wedge", "ground", Direction.UP, 4))
            .connect(base("face", "block", "wedge", Direction.ofAngle(Math.toRadians(80)), 2.0309))
            .connect(base("wall", "block", "ground", Direction.LEFT, 3))
            .load(Yard.weight("own", "block", "high", 400))
            .load(
                new Sought(
                    "P",
                    Sought.Want.FORCE,
                    "wedge",
                    Optional.of("heel"),
                    Optional.of(Direction.RIGHT)));

    Verdict verdict = Limits.of(block.build()).verdict();

    assertThat(verdict).isNotInstanceOf(Verdict.DoesNotHold.class);
  }

  private static ContactBase base(
      String point, String body, String other, Direction push, double width) {
    return new ContactBase(point, point, body, other, push, width, 0.25, 0.25);
  }

  /** No multiple of nothing is too much, nor too little, where all that touches may let go too. */
  @Test
  void anyMultipleOfNothingIsHeld() {
    Device block =
        Yard.named("block under a weightless lever")
            .point("hinge", 0, 1)
            .point("out", 1, 1)
            .point("sole", 0.25, 0)
            .point("top", 0.25, 1)
            .point("middle", 0.25, 0.25)
            .point("hook", 0.25, 0.5)
            .point("wall", -0.75, 0.25)
            .point("touch", 0.263, 0.267)
            .member("lever", "hinge", "out")
            .member("block", "sole", "top")
            .pin("hinge", "hinge", "lever", "ground")
            .connect(
                new ContactBase("sole", "sole", "block", "ground", Direction.UP, 0.275, 0.1, 0.05))
            .connect(new Contact("bite", "top", "block", "lever", Direction.DOWN, 0.1, 0.05))
            .connect(new Line("tail", End.of("block", "hook"), End.of("ground", "wall")))
            .connect(
                new Contact("more", "touch", "block", "ground", Direction.ofAngle(1.93), 0.5, 0.5))
            .force("push", "block", "middle", Vector.of(0, 0))
            .build();

    Variation push = Variation.of("push");
    assertThat(Limits.of(block).limit(push))
        .isEqualTo(new Limit.Between(push, new Limit.End.Unlimited(), new Limit.End.Unlimited()));
    assertThat(Limits.of(block).greatest(push)).hasValue(Double.POSITIVE_INFINITY);
  }
}
