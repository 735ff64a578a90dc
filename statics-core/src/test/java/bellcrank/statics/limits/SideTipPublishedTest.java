package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Published problems of tipping, read as side views and checked at the printed digits. */
class SideTipPublishedTest {

  /**
   * Engineering Statics: Open and Interactive (Baker, Haynes), section 9.2, slip and tip loads: a
   * cabinet of 900 N, 0.6 m wide and 1.8 m high, friction 0.45, pushed low and pushed high.
   */
  @Test
  void aCabinetSlipsIfPushedLowAndTipsIfPushedHigh() {
    SideView cabinet = SideView.of("floor", 0.6, 0.45).withDown("weight", 0.9, 0, 900);
    SideTip low = SideTip.of(cabinet.withSidePull("push", 0.2, 1));
    assertThat(low.greatestForce("push").orElseThrow()).isCloseTo(405.0, within(0.05));
    assertThat(low.slidesFirst()).isTrue();
    SideTip high = SideTip.of(cabinet.withSidePull("push", 1.2, 1));
    assertThat(high.greatestForce("push").orElseThrow()).isCloseTo(225.0, within(0.05));
    assertThat(high.tippingEdge()).contains(SideEdge.RIGHT);
  }

  /**
   * Engineering Statics: Open and Interactive (Baker, Haynes), section 9 exercises, block on an
   * incline: 250 kN, 3 m wide, 5 m high, on 35° with 20 kN level into the slope, friction 0.70.
   */
  @Test
  void aBoxOnASlopeIsCloseToTippingDownhill() {
    SideView box =
        SideView.of("slope", 3, 0.70)
            .withSlope(Math.toRadians(-35))
            .withLoad(new SideLoad("box", 2.5, 0, 250e3, 20e3));
    SideTip tip = SideTip.of(box);
    assertThat(tip.limits().range("slope.friction").orElseThrow().greatest().orElseThrow())
        .isCloseTo(127.0e3, within(50.0));
    assertThat(tip.limits().range("slope.normal").orElseThrow().greatest().orElseThrow())
        .isCloseTo(216.3e3, within(50.0));
    assertThat(tip.limits().range("slope.offset").orElseThrow().greatest().orElseThrow())
        .isCloseTo(-1.468, within(0.0005));
    assertThat(tip.verdict()).isInstanceOf(Verdict.Holds.class);
    assertThat(tip.tippingEdge()).contains(SideEdge.LEFT);
    assertThat(tip.breadthNeeded(1).orElseThrow()).isCloseTo(2 * 1.468, within(0.001));
  }
}
