package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is told exactly at μN, exactly at an edge or an end, and where there is no load at all. */
class ExactlyAtLimitTest {

  private static Limit.Between between(Limits limits, Variation variation) {
    assertThat(limits.limit(variation)).isInstanceOf(Limit.Between.class);
    return (Limit.Between) limits.limit(variation);
  }

  /** The ends of what holds belong to it, and what differs from them by rounding does too. */
  @Test
  void endsBelongToALimit() {
    GivingWay none = new GivingWay(List.of(), Optional.empty(), 0);
    Limit.Between half =
        new Limit.Between(
            Variation.of("push"),
            new Limit.End.At(0, 0, () -> none),
            new Limit.End.At(2, 0, () -> none));

    assertThat(half.holdsAtZero()).isTrue();
    assertThat(half.contains(-1e-9)).isTrue();
    assertThat(half.contains(-2e-9)).isFalse();
    assertThat(half.contains(2)).isTrue();
    assertThat(half.contains(2 + 1e-9)).isTrue();
    assertThat(half.contains(2 + 2e-9)).isFalse();
    assertThat(new SideSearch.Span(0, 2).contains(0)).isTrue();
    assertThat(new SideSearch.Span(0, 2).contains(2)).isTrue();
    assertThat(new SideSearch.Span(0, 2).contains(Math.nextDown(0.0))).isFalse();
    assertThat(new SideSearch.Span(0, 2).contains(Math.nextUp(2.0))).isFalse();
  }

  @Test
  void oneBillionthIsStillOneValue() {
    assertThat(range(0, 1e-9).isOne()).isTrue();
    assertThat(range(0, 1.001e-9).isOne()).isFalse();
  }

  private static Range range(double least, double greatest) {
    return new Range(Dimension.FORCE, OptionalDouble.of(least), OptionalDouble.of(greatest), 0);
  }

  @Test
  void statesAreToldInWords() {
    assertThat(PartState.State.values())
        .extracting(PartState.State::words)
        .containsExactly("carries", "about to slip", "may carry or not", "open", "slack");
  }

  /** What is held from both sides always carries what it has to; only of the rest is it asked. */
  @Test
  void onlyPartsOfOneSideHaveAState() {
    for (Sides front : Sides.values()) {
      for (Sides back : Sides.values()) {
        Device beam =
            Yard.named("beam")
                .point("front", 1, 0)
                .point("back", -1, 0)
                .member("beam", "back", "front")
                .connect(new Roller("roller", "front", "beam", "ground", Direction.UP, front))
                .connect(new Slot("slot", "back", "beam", "ground", Direction.RIGHT, back))
                .load(new Force("sack", "beam", "front", Vector.of(0, -30)))
                .load(new Force("stone", "beam", "back", Vector.of(0, -70)))
                .build();
        List<String> oneSided = new ArrayList<>();
        if (front == Sides.ONE) {
          oneSided.add("roller");
        }
        if (back == Sides.ONE) {
          oneSided.add("slot");
        }

        assertThat(Limits.of(beam).states())
            .extracting(PartState::part)
            .containsExactlyElementsOf(oneSided);
        assertThat(Limits.concern(beam)).isEqualTo(!oneSided.isEmpty());
      }
    }
  }

  private static DeviceBuilder block(double friction) {
    return Device.named("block")
        .point("base", 0, 0)
        .member("block", "base")
        .connect(
            new ContactBase(
                "floor", "base", "block", "ground", Direction.UP, 1, friction, friction))
        .load(new Force("press", "block", "base", Vector.of(0, -128)))
        .load(new Force("effort", "block", "base", Vector.of(64, 0)));
  }

  /**
   * 64 N are just what half of 128 N holds: nothing at all need draw back, and up to twice the
   * effort may. So nothing is sure to be overcome, and half of what draws back drives it back.
   */
  @Test
  void anEffortThatFrictionJustHolds() {
    Limits limits =
        Limits.of(
            block(0.5)
                .sought("resistance", "block", "base", Direction.LEFT)
                .advantage("effort", "resistance")
                .build());
    Range resistance = limits.range("resistance").orElseThrow();
    Efficiency efficiency = limits.efficiency().orElseThrow();

    assertThat(resistance.least()).hasValue(0);
    assertThat(resistance.greatest().orElseThrow()).isCloseTo(128, within(1e-9));
    assertThat(efficiency.forward())
        .isEqualTo(
            new Answer.Unanswered(
                Answer.Reason.NOT_DEFINED,
                "no effort is enough: the device locks itself against it"));
    assertThat(((Answer.Value) efficiency.back()).si()).isCloseTo(0.5, within(1e-9));
    assertThat(efficiency.gap()).isZero();
  }

  /** On ice only no push at all is held, and any sets off in its own sense. */
  @Test
  void onIceTheLoadAloneTellsTheSense() {
    for (int sense = -1; sense <= 1; sense += 2) {
      Device block =
          Yard.named("block")
              .point("base", 0, 0)
              .point("post", 5, 0)
              .point("top", 5, 2)
              .member("block", "base")
              .member("post", "post", "top")
              .pin("foot", "post", "post", "ground")
              .pin("head", "top", "post", "ground")
              .connect(new ContactBase("ice", "base", "block", "ground", Direction.UP, 1, 0, 0))
              .load(Yard.weight("own", "block", "base", 10))
              .load(new Force("push", "block", "base", Vector.of(sense * 30, 0)))
              .build();
      Limit.Between push = between(Limits.of(block), Variation.of("push"));
      Limit.End.At most = (Limit.End.At) push.greatest();
      Limit.End.At least = (Limit.End.At) push.least();

      assertThat(most.value()).isCloseTo(0, within(1e-9));
      assertThat(least.value()).isCloseTo(0, within(1e-9));
      assertThat(most.how().ways()).isEqualTo(1);
      assertThat(speeds(most.how())).containsExactly((double) sense);
      assertThat(speeds(least.how())).containsExactly((double) -sense);
      assertThat(most.how().motion().orElseThrow().motions())
          .extracting(BodyMotion::body)
          .containsExactly("block");
    }
  }

  private static List<Double> speeds(GivingWay how) {
    List<BodyMotion> motions = how.motion().map(Freedom::motions).orElse(List.of());
    return motions.stream().map(one -> one.velocity().x()).toList();
  }

  /** A cart whose sack is on the line from one point to the other, measured from the front. */
  private static Limits cart(double own, double from, double to) {
    return Limits.of(
        Yard.named("cart")
            .point("front", 0, 0)
            .point("back", -50, 0)
            .point("near", from, 0)
            .point("far", to, 0)
            .member("cart", "back", "front", "near", "far")
            .pin("front", "front", "cart", "ground")
            .connect(new Roller("back", "back", "cart", "ground", Direction.UP, Sides.ONE))
            .load(new Force("own", "cart", "back", Vector.of(0, -own)))
            .load(new Force("sack", "cart", "near", Vector.of(0, -100)))
            .build());
  }

  /** 200 N at 50 m behind the wheel balance 100 N at 100 m before it. */
  @Test
  void aSackThatIsTooFarOutAnywhereIsNotHeld() {
    Variation along = Variation.place("sack", "near", "far");

    assertThat(cart(200, 80, 120).greatest(along).orElseThrow()).isCloseTo(20, within(1e-9));
    assertThat(cart(200, 99, 120).greatest(along).orElseThrow()).isCloseTo(1, within(1e-9));
    assertThat(cart(200, 101, 120).greatest(along)).isEmpty();
    assertThat(cart(200, 101, 120).limit(along)).isEqualTo(new Limit.Never(along));
    assertThat(cart(200, 101, 120).sweep(along).isTold()).isFalse();
    assertThat(cart(200, 120, 101).limit(along)).isEqualTo(new Limit.Never(along));
    assertThat(cart(200, 120, 99).greatest(along).orElseThrow()).isCloseTo(21, within(1e-9));
  }

  /** On a line of 100 m a twentieth of a micrometre is rounding, half a micrometre is not. */
  @Test
  void anEndOfALongLineIsReachedToRounding() {
    Variation along = Variation.place("sack", "near", "far");

    assertThat(between(cart(2 * (120 - 5e-8), 20, 120), along).greatest())
        .isEqualTo(new Limit.End.EndOfLine(100));
    assertThat(between(cart(2 * (120 - 5e-7), 20, 120), along).greatest())
        .isInstanceOfSatisfying(
            Limit.End.At.class, at -> assertThat(at.value()).isCloseTo(100 - 5e-7, within(1e-8)));
  }

  /** No number of times nothing is too much. */
  @Test
  void nothingMayBeMultipliedAtWill() {
    Device cart =
        Yard.named("cart")
            .point("front", 1, 0)
            .point("back", -1, 0)
            .member("cart", "back", "front")
            .pin("front", "front", "cart", "ground")
            .connect(new Roller("back", "back", "cart", "ground", Direction.UP, Sides.ONE))
            .load(new Force("sack", "cart", "front", Vector.ZERO))
            .build();
    Limits limits = Limits.of(cart);

    assertThat(limits.greatest(Variation.of("sack"))).hasValue(Double.POSITIVE_INFINITY);
    assertThat(limits.sweep(Variation.of("sack")).greatest()).isInfinite();
    assertThat(between(limits, Variation.of("sack")).greatest())
        .isEqualTo(new Limit.End.Unlimited());
  }

  /** What is drawn as minus nothing is nothing, and what does not press is no load. */
  @Test
  void nothingInASideViewIsNothing() {
    assertThat(new SideLoad("sack", -0.0, -0.0, -0.0, -0.0))
        .isEqualTo(new SideLoad("sack", 0, 0, 0, 0));
    assertThat(SideView.of("feet", 1, 0.5).withLean(-0.0)).isEqualTo(SideView.of("feet", 1, 0.5));
    SideView pulled = SideView.of("feet", 1, 0.5).withSidePull("pull", 1, 20);

    assertThat(pulled.device().loads()).extracting(load -> load.name()).containsExactly("pull");
    assertThat(pulled.withDown("own", 1, 0, -20).device().loads())
        .extracting(load -> load.name())
        .containsExactlyInAnyOrder("pull", "lifting");
  }
}
