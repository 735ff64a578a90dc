package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Closed forms by hand. Textbook statics: a body tips when the moments about an edge of its base
 * turn over, and slides when the sideways force passes μN.
 */
class SideTipTest {

  private static final Offset<Double> EXACT = within(1e-9);

  /** A cider press of 1000 N whose centre of gravity is 1 m up, on a base 0.5 m broad. */
  private static SideView press(double friction) {
    return SideView.of("sill", 0.5, friction).withDown("press", 1, 0, 1000);
  }

  private static double greatest(Limit limit) {
    return ((Limit.End.At) ((Limit.Between) limit).greatest()).value();
  }

  private static double least(Limit limit) {
    return ((Limit.End.At) ((Limit.Between) limit).least()).value();
  }

  private static double angle(SideReach reach) {
    return ((SideReach.At) reach).angle();
  }

  @Test
  void aLoadBesideThePlaneTipsAboutTheNearEdge() {
    SideTip tip = SideTip.of(press(0.5).withOffset("press", 0.1));
    // 1000 × 0.25 / (1000 × 0.1)
    assertThat(greatest(tip.margin())).isCloseTo(2.5, EXACT);
    assertThat(least(tip.margin())).isCloseTo(-2.5, EXACT);
    assertThat(tip.verdict()).isInstanceOf(Verdict.Holds.class);
    assertThat(tip.tippingEdge()).contains(SideEdge.RIGHT);
    assertThat(tip.slidesFirst()).isFalse();
    // b = 2 ΣM / W
    assertThat(tip.breadthNeeded(1).orElseThrow()).isCloseTo(0.2, EXACT);
    assertThat(tip.breadthNeeded(1.5).orElseThrow()).isCloseTo(0.3, EXACT);
  }

  @Test
  void aPullToTheLeftTipsAboutTheLeftEdge() {
    SideTip tip = SideTip.of(press(0.5).withSidePull("rope", 2, -100));
    // 1000 × 0.25 / 2
    assertThat(tip.greatestForce("rope").orElseThrow()).isCloseTo(-125, EXACT);
    assertThat(greatest(tip.margin("rope"))).isCloseTo(1.25, EXACT);
    assertThat(tip.tippingEdge()).contains(SideEdge.LEFT);
    assertThat(tip.breadthNeeded(1).orElseThrow()).isCloseTo(0.4, EXACT);
  }

  @Test
  void offsetAndPullAddUp() {
    SideTip tip = SideTip.of(press(0.5).withOffset("press", 0.05).withSidePull("rope", 2, 60));
    // 50 + 120 of 250
    assertThat(greatest(tip.margin())).isCloseTo(250 / 170.0, EXACT);
    // (250 − 50) / 2
    assertThat(tip.greatestForce("rope").orElseThrow()).isCloseTo(100, EXACT);
  }

  @Test
  void whatTipsDoesNotHold() {
    SideTip tip = SideTip.of(press(0.5).withSidePull("rope", 2, 200));
    assertThat(tip.verdict())
        .isInstanceOfSatisfying(
            Verdict.DoesNotHold.class,
            not -> {
              assertThat(not.after()).isEqualTo(Verdict.After.LOADS);
              assertThat(not.how().events())
                  .containsExactly(new Event("sill", Event.Kind.TIPS, "tips about its right edge"));
            });
    assertThat(greatest(tip.margin())).isCloseTo(0.625, EXACT);
    assertThat(tip.tippingEdge()).contains(SideEdge.RIGHT);
  }

  @Test
  void onASmoothFloorItSlidesFirst() {
    SideTip tip = SideTip.of(press(0.1).withSidePull("rope", 2, 80));
    // 0.1 × 1000
    assertThat(tip.greatestForce("rope").orElseThrow()).isCloseTo(100, EXACT);
    assertThat(tip.slidesFirst()).isTrue();
    assertThat(tip.tippingEdge()).isEmpty();
    // tipping alone asks for 2 × 160 / 1000
    assertThat(tip.breadthNeeded(1).orElseThrow()).isCloseTo(0.32, EXACT);
    assertThat(tip.breadthNeeded(1.3)).as("104 N slide").isEmpty();
  }

  @Test
  void whereItTipsAndSlidesAtOnceItIsAboutToGiveWay() {
    SideTip tip = SideTip.of(press(0.125).withSidePull("rope", 2, 125));
    assertThat(greatest(tip.margin())).isCloseTo(1, EXACT);
    assertThat(tip.tippingEdge()).contains(SideEdge.RIGHT);
    assertThat(tip.slidesFirst()).isFalse();
  }

  @Test
  void allInThePlaneHasNoLimitAndNeedsNoBreadth() {
    SideTip tip = SideTip.of(press(0.3));
    assertThat(tip.margin())
        .isInstanceOfSatisfying(
            Limit.Between.class,
            between -> assertThat(between.greatest()).isInstanceOf(Limit.End.Unlimited.class));
    assertThat(tip.givingWay()).isEmpty();
    assertThat(tip.tippingEdge()).isEmpty();
    assertThat(tip.slidesFirst()).isFalse();
    assertThat(tip.breadthNeeded(1)).hasValue(0);
    assertThat(SideTip.of(press(0.3).withSidePull("rope", 2, 80)).breadthNeeded(0)).hasValue(0);
  }

  @Test
  void aBaseThatLiesBesideItsLoadDoesNotStandAtAll() {
    SideTip tip = SideTip.of(press(0.3).withBaseOffset(0.3));
    assertThat(tip.margin()).isInstanceOf(Limit.Never.class);
    assertThat(tip.verdict()).isInstanceOf(Verdict.DoesNotHold.class);
    assertThat(tip.tippingEdge()).contains(SideEdge.LEFT);
    assertThat(tip.greatestLean(SideEdge.RIGHT)).isInstanceOf(SideReach.Never.class);
    assertThat(tip.breadthNeeded(1).orElseThrow()).isCloseTo(0.6, EXACT);
  }

  @Test
  void aBaseOffTheMiddleBearsMoreToItsOwnSide() {
    SideView view = press(0.5).withBaseOffset(0.1).withSidePull("rope", 2, 50);
    // right edge at 0.35, left one at −0.15
    assertThat(SideTip.of(view).greatestForce("rope").orElseThrow()).isCloseTo(175, EXACT);
    assertThat(50 * least(SideTip.of(view).margin("rope"))).isCloseTo(-75, EXACT);
  }

  @Test
  void leaningOnItsFlatBaseItTipsWhereTheWeightPassesTheEdge() {
    SideTip tip = SideTip.of(press(0.01));
    // 1 × sin θ = 0.25, and nothing slides
    SideReach right = tip.greatestLean(SideEdge.RIGHT);
    assertThat(angle(right)).isCloseTo(Math.asin(0.25), EXACT);
    assertThat(((SideReach.At) right).how().events())
        .extracting(Event::kind)
        .containsExactly(Event.Kind.TIPS);
    assertThat(angle(tip.greatestLean(SideEdge.LEFT))).isCloseTo(Math.asin(0.25), EXACT);
    // a load beside the plane leans with the device: sin θ + 0.05 cos θ = 0.25
    double leaned =
        angle(SideTip.of(press(0.01).withOffset("press", 0.05)).greatestLean(SideEdge.RIGHT));
    assertThat(Math.sin(leaned) + 0.05 * Math.cos(leaned)).isCloseTo(0.25, EXACT);
  }

  @Test
  void aLowBodyOnABroadBaseLeansWithoutLimit() {
    SideView low = SideView.of("sill", 2.5, 0.3).withDown("trough", 1, 0, 300);
    assertThat(SideTip.of(low).greatestLean(SideEdge.LEFT)).isInstanceOf(SideReach.Unlimited.class);
  }

  @Test
  void onASlopeItTipsOrSlidesWhicheverComesFirst() {
    // tan θ = b / 2h
    assertThat(angle(SideTip.of(press(0.5)).greatestSlope(SideEdge.RIGHT)))
        .isCloseTo(Math.atan(0.25), EXACT);
    // tan θ = μ
    SideReach slides = SideTip.of(press(0.2)).greatestSlope(SideEdge.LEFT);
    assertThat(angle(slides)).isCloseTo(Math.atan(0.2), EXACT);
    assertThat(((SideReach.At) slides).how().events())
        .containsExactly(new Event("sill", Event.Kind.SLIDES, "slides left"));
  }

  @Test
  void aLevelPullOnASlopeKeepsLevel() {
    double slope = 0.1;
    SideTip tip = SideTip.of(press(0.9).withSlope(slope).withSidePull("rope", 2, 40));
    // moments about the right edge, parts along and square to the ground
    double weight = 1000 * (0.25 * Math.cos(slope) - Math.sin(slope));
    double lever = 2 * Math.cos(slope) + 0.25 * Math.sin(slope);
    assertThat(tip.greatestForce("rope").orElseThrow()).isCloseTo(weight / lever, EXACT);
  }

  @Test
  void aStayOnTheFarSideHoldsUntilTheBaseSlides() {
    SideView view = press(0.1).withSidePull("rope", 3, 900);
    assertThat(SideTip.of(view).greatestForce("rope").orElseThrow()).isCloseTo(250 / 3.0, EXACT);
    SideTip stayed = SideTip.of(view.withStay(new SideStay("stay", 2, 0, -2, 0)));
    // with k = T/√2: 3F − 2k = 0.25 (1000 + k) and k − F = 0.1 (1000 + k)
    assertThat(stayed.greatestForce("rope").orElseThrow()).isCloseTo(1000, within(1e-6));
    // F = 900: k = 10000/9, b = 2 (2700 − 2k) / (1000 + k)
    assertThat(stayed.breadthNeeded(1).orElseThrow()).isCloseTo(8600 / 19000.0, EXACT);
  }

  @Test
  void aStayOnTheNearSideOnlyGoesSlack() {
    SideView view = press(0.5).withSidePull("rope", 2, 100);
    SideTip stayed = SideTip.of(view.withStay(new SideStay("stay", 2, 0, 1, 0)));
    assertThat(stayed.greatestForce("rope").orElseThrow()).isCloseTo(125, EXACT);
  }

  @Test
  void aStayAtTheHeightOfThePullLocksIt() {
    SideView view = press(0.5).withSidePull("rope", 2, 100);
    SideTip stayed = SideTip.of(view.withStay(new SideStay("stay", 2, 0, -3, 0)));
    assertThat(stayed.greatestForce("rope")).isEmpty();
    assertThat(stayed.givingWay()).isEqualTo(Optional.empty());
  }

  @Test
  void whatIsLiftedStandsOnNoBreadth() {
    SideView lifted = press(0.5).withDown("hoist", 2, 0, -1200).withSidePull("rope", 2, 10);
    SideTip tip = SideTip.of(lifted);
    assertThat(tip.verdict()).isInstanceOf(Verdict.DoesNotHold.class);
    assertThat(tip.breadthNeeded(1)).isEmpty();
    assertThat(tip.greatestSlope(SideEdge.LEFT)).isInstanceOf(SideReach.Never.class);
  }

  @Test
  void theSideViewIsAnOrdinaryDevice() {
    SideTip tip = SideTip.of(press(0.5).withSidePull("rope", 2, 100));
    assertThat(tip.device()).isEqualTo(tip.view().device());
    assertThat(tip.limits().range("sill.normal").orElseThrow().greatest().orElseThrow())
        .isCloseTo(1000, EXACT);
    assertThat(tip.limits().range("sill.offset").orElseThrow().greatest().orElseThrow())
        .isCloseTo(0.2, EXACT);
  }

  @Test
  void namesOfLoadsMayBeThoseThatTheDeviceUsesItself() {
    SideView view =
        SideView.of("sill", 0.5, 0.5)
            .withDown("pressing down", 1, 0.1, 1000)
            .withLoad(new SideLoad("moment of an offset", 2, 0.05, 0, 10))
            .withSidePull("extra couple", 1, 5);
    // 100 + 20 + 5 of 250
    assertThat(greatest(SideTip.of(view).margin())).isCloseTo(2, EXACT);
    assertThat(SideTip.of(view).breadthNeeded(1).orElseThrow()).isCloseTo(0.25, EXACT);
  }

  @Test
  void whatStandsOnlyBecauseItIsPulledTipsWhereItIsPulledTooFar() {
    SideView view = press(5).withBaseOffset(0.3).withSidePull("rope", 2, 200);
    assertThat(SideTip.of(view).verdict()).isInstanceOf(Verdict.Holds.class);
    SideReach right = SideTip.of(view).greatestLean(SideEdge.RIGHT);
    double angle = angle(right);
    // the right edge is at 0.55, the left one at 0.05
    assertThat(1000 * Math.sin(angle) + 400 * Math.cos(angle)).isCloseTo(550, within(1e-6));
    double back = angle(SideTip.of(view).greatestLean(SideEdge.LEFT));
    assertThat(400 * Math.cos(back) - 1000 * Math.sin(back)).isCloseTo(50, within(1e-6));
  }

  @Test
  void aLeaningArmLowersItsPull() {
    double lean = 0.2;
    SideView view =
        press(0.9).withBreadth(2).withLean(lean).withLoad(new SideLoad("rope", 2, 0.6, 0, 100));
    double lever = 2 * Math.cos(lean) - 0.6 * Math.sin(lean);
    // the pull is level where the device leans: only its height counts
    assertThat(SideTip.of(view).greatestForce("rope").orElseThrow())
        .isCloseTo((1000 - 1000 * Math.sin(lean)) / lever, within(1e-6));
  }

  @Test
  void aLinkPullsTowardsItsAnchorHoweverLowThatIs() {
    double lean = 0.1;
    SideView view =
        press(0.9)
            .withLean(lean)
            .withLink(new SideLink("tie", 2, -0.5, 0.2, 300))
            .withSidePull("rope", 1, 1);
    double q = 300 * Math.cos(lean);
    double down = q * (2 * Math.cos(lean) + 0.5);
    double across = q * (0.2 - 2 * Math.sin(lean));
    // at its anchor, 0.5 m below the base
    double moment = 1000 * Math.sin(lean) + 0.2 * down - 0.5 * across;
    double lever = Math.cos(lean);
    assertThat(SideTip.of(view.withBreadth(1.5)).greatestForce("rope").orElseThrow())
        .isCloseTo((0.75 * (1000 + down) - moment) / lever, within(1e-6));
  }

  @Test
  void onASlopeTheGroundBearsTheCosineOfWhatItBears() {
    double slope = 0.3;
    SideView view =
        press(0.9)
            .withBreadth(1)
            .withSlope(slope)
            .withSupport(new SideSupport("crutch", 0.2, 400))
            .withLink(new SideLink("tie", 2, 0, 0.1, 100));
    Limits limits = SideTip.of(view).limits();
    double normal = limits.range("sill.normal").orElseThrow().greatest().orElseThrow();
    assertThat(normal).isCloseTo((1000 - 400 + 200) * Math.cos(slope), within(1e-6));
    double offset = limits.range("sill.offset").orElseThrow().greatest().orElseThrow();
    double moment = 1000 * Math.sin(slope) + (0.1 * 200 - 0.2 * 400) * Math.cos(slope);
    assertThat(normal * offset).isCloseTo(moment, within(1e-6));
    double friction = limits.range("sill.friction").orElseThrow().greatest().orElseThrow();
    assertThat(friction).isCloseTo(-1000 * Math.sin(slope) - 10 * Math.cos(slope), within(1e-6));
  }

  @Test
  void aStayLeansWithTheDeviceAndItsAnchorStays() {
    double lean = 0.1;
    SideView view =
        press(0.9)
            .withLean(lean)
            .withSidePull("rope", 2, 600)
            .withStay(new SideStay("moment of an offset", 2, 0.1, -1, 0.5));
    Limits limits = SideTip.of(view).limits();
    double z = 2 * Math.sin(lean) + 0.1 * Math.cos(lean);
    double y = 2 * Math.cos(lean) - 0.1 * Math.sin(lean);
    double length = Math.hypot(z + 1, y - 0.5);
    double across = (z + 1) / length;
    double down = (y - 0.5) / length;
    // least pull: the moments about the right edge just vanish
    double over = 1000 * (Math.sin(lean) - 0.25) + 600 * 2 * Math.cos(lean);
    double lever = across * y - down * (z - 0.25);
    assertThat(limits.range("moment of an offset").orElseThrow().least().orElseThrow())
        .isCloseTo(over / lever, within(1e-6));
  }
}
