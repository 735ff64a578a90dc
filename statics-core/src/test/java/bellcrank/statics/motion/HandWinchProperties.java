package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Work in times efficiency is work out, on any hand winch. */
class HandWinchProperties {

  private static final Drum DRUM = new Drum(0.04, 0.02, 5);
  private static final HandWinch CRANK = new HandWinch(new Handle.Crank(0.3), 4, 0.8, DRUM);

  @Property(tries = 300)
  void workOfTheHandTimesEfficiencyIsWorkOnTheLine(
      @ForAll @DoubleRange(min = 0.1, max = 1) double arm,
      @ForAll @DoubleRange(min = 0.05, max = 3.1) double swing,
      @ForAll @DoubleRange(min = 0.5, max = 20) double ratio,
      @ForAll @DoubleRange(min = 0.3, max = 1) double efficiency,
      @ForAll @DoubleRange(min = 10, max = 5000) double pull,
      @ForAll @DoubleRange(min = 0, max = 10) double wound,
      @ForAll @DoubleRange(min = 0.01, max = 30) double length) {
    for (Handle handle : new Handle[] {new Handle.Crank(arm), new Handle.Lever(arm, swing)}) {
      HandWinch winch = new HandWinch(handle, ratio, efficiency, DRUM);
      HandWinch.Haul haul = winch.haul(pull, wound, length);
      assertThat(haul.handWork() * efficiency)
          .isCloseTo(haul.lineWork(), within(1e-9 * haul.lineWork()));
      assertThat(haul.cycles())
          .isCloseTo(winch.cycles(wound, length), within(1e-9 * (1 + haul.cycles())));
      assertThat(winch.lengthHauled(wound, haul.cycles())).isCloseTo(length, within(1e-9));
      assertThat(haul.handWay())
          .isCloseTo(haul.cycles() * handle.angle() * handle.arm(), within(1e-9 * haul.handWay()));
    }
  }

  @Property(tries = 100)
  void forceAndPullGoThereAndBack(
      @ForAll @IntRange(min = 1, max = 12) int layer,
      @ForAll @DoubleRange(min = 0, max = 400) double hand) {
    assertThat(CRANK.handForce(layer, CRANK.linePull(layer, hand))).isCloseTo(hand, within(1e-10));
    // the power of one turn: what goes in times the efficiency comes out
    assertThat(CRANK.linePull(layer, hand) * CRANK.lengthPerCycle(layer))
        .isCloseTo(hand * 2 * Math.PI * 0.3 * 0.8, within(1e-9));
  }
}
