package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Hand force, turns and strokes of the barrel derrick's winch. */
class HandWinchTest {

  private static final Drum DRUM = new Drum(0.04, 0.02, 5);
  private static final HandWinch CRANK = new HandWinch(new Handle.Crank(0.3), 4, 0.8, DRUM);
  private static final HandWinch LEVER =
      new HandWinch(new Handle.Lever(0.6, Math.PI / 3), 1, 0.9, DRUM);

  @Test
  void theHandForceOfACrank() {
    // by hand: 960 × 0.05 / (0.3 × 4 × 0.8) = 50
    assertThat(CRANK.handForce(1, 960)).isCloseTo(50, within(1e-12));
    assertThat(CRANK.linePull(1, 50)).isCloseTo(960, within(1e-10));
    // by hand: second layer, 960 × 0.07 / 0.96 = 70
    assertThat(CRANK.handForce(2, 960)).isCloseTo(70, within(1e-12));
  }

  @Test
  void theHandForceOfALever() {
    // by hand: 540 × 0.05 / (0.6 × 0.9) = 50
    assertThat(LEVER.handForce(1, 540)).isCloseTo(50, within(1e-12));
    assertThat(LEVER.linePull(1, 50)).isCloseTo(540, within(1e-10));
  }

  @Test
  void whatATurnOrAStrokeHaulsIn() {
    assertThat(CRANK.lengthPerCycle(1)).isCloseTo(2 * Math.PI * 0.05 / 4, within(1e-15));
    assertThat(LEVER.lengthPerCycle(1)).isCloseTo(0.05 * Math.PI / 3, within(1e-15));
    assertThat(LEVER.lengthPerCycle(3)).isCloseTo(0.09 * Math.PI / 3, within(1e-15));
  }

  @Test
  void aFullLayerTakesItsTurns() {
    // 5 turns of the drum: 20 of the crank, 30 strokes of a sixth of a turn
    assertThat(CRANK.cycles(0, DRUM.lengthOf(1))).isCloseTo(20, within(1e-10));
    assertThat(LEVER.cycles(0, DRUM.lengthOf(1))).isCloseTo(30, within(1e-10));
    assertThat(LEVER.cycles(DRUM.lengthOf(1), DRUM.lengthIn(2))).isCloseTo(30, within(1e-10));
    assertThat(LEVER.lengthHauled(DRUM.lengthOf(1), 30)).isCloseTo(DRUM.lengthIn(2), within(1e-10));
    assertThat(CRANK.cycles(0.7, 0)).isZero();
    assertThat(CRANK.lengthHauled(0.7, 0)).isCloseTo(0, within(1e-14));
  }

  @Test
  void aHaulThroughTwoLayers() {
    double length = DRUM.lengthOf(2);
    HandWinch.Haul haul = CRANK.haul(960, 0, length);
    // by hand: 40 turns of 2π × 0.3, half of them at 50 N and half at 70 N
    assertThat(haul.cycles()).isCloseTo(40, within(1e-10));
    assertThat(haul.handWay()).isCloseTo(40 * 2 * Math.PI * 0.3, within(1e-10));
    assertThat(haul.greatestForce()).isCloseTo(70, within(1e-12));
    assertThat(haul.handWork()).isCloseTo(20 * 2 * Math.PI * 0.3 * (50 + 70), within(1e-8));
    assertThat(haul.lineWork()).isCloseTo(960 * length, within(1e-9));
  }

  @Test
  void aHaulFromTheMiddleOfALayer() {
    double wound = DRUM.lengthIn(1) / 2;
    double length = DRUM.lengthIn(1) / 2 + DRUM.lengthIn(2) / 2;
    HandWinch.Haul haul = CRANK.haul(960, wound, length);
    // by hand: 10 turns at 50 N and 10 at 70 N
    assertThat(haul.cycles()).isCloseTo(20, within(1e-10));
    assertThat(haul.handWork()).isCloseTo(10 * 2 * Math.PI * 0.3 * (50 + 70), within(1e-8));
    assertThat(haul.handWork() * 0.8).isCloseTo(haul.lineWork(), within(1e-8));
    assertThat(CRANK.cycles(wound, length)).isCloseTo(20, within(1e-10));
    assertThat(CRANK.lengthHauled(wound, 20)).isCloseTo(length, within(1e-10));
    assertThat(CRANK.haul(0, wound, 0)).isEqualTo(new HandWinch.Haul(0, 0, 0, 0, 0));
  }

  @Test
  void aHaulStillEndsOnALayerThatIsJustFull() {
    assertThat(CRANK.haul(960, 0, DRUM.lengthOf(1)).greatestForce()).isCloseTo(50, within(1e-12));
    assertThat(CRANK.haul(960, 0, DRUM.lengthOf(1) + 1e-6).greatestForce())
        .isCloseTo(70, within(1e-12));
  }

  @Test
  void mistakesAreTold() {
    refused(() -> new Handle.Crank(0), "crank", "radius");
    refused(() -> new Handle.Lever(-1, 1), "lever", "length");
    refused(() -> new Handle.Lever(1, 0), "lever", "swing");
    refused(() -> new Handle.Lever(1, 60), "lever", "swing");
    assertThat(new Handle.Lever(1, Math.PI).angle()).isEqualTo(Math.PI);
    Handle handle = new Handle.Crank(0.3);
    refused(() -> new HandWinch(handle, 0, 1, DRUM), "hand winch", "gear ratio");
    refused(() -> new HandWinch(handle, 1, 0, DRUM), "hand winch", "efficiency");
    refused(() -> new HandWinch(handle, 1, 1.01, DRUM), "hand winch", "efficiency");
    assertThat(new HandWinch(handle, 1, 1, DRUM).efficiency()).isEqualTo(1);
    refused(() -> CRANK.handForce(1, -1), "hand winch", "line pull");
    refused(() -> CRANK.linePull(1, Double.NaN), "hand winch", "hand force");
    refused(() -> CRANK.handForce(0, 1), "drum", "layer");
    refused(() -> CRANK.cycles(0, -1), "hand winch", "length");
    refused(() -> CRANK.cycles(-1, 1), "drum", "wound length");
    refused(() -> CRANK.lengthHauled(0, -1), "hand winch", "turns or strokes");
    refused(() -> CRANK.lengthHauled(0, 1e9), "drum", "turns");
    refused(() -> CRANK.haul(-1, 0, 1), "hand winch", "line pull");
    refused(() -> CRANK.haul(1, 0, -1), "hand winch", "length");
    refused(() -> CRANK.haul(1, -1, 1), "drum", "wound length");
    refused(() -> CRANK.haul(1, 0, 1e12), "drum", "wound length");
  }

  private static void refused(ThrowingCallable call, String part, String field) {
    assertThatExceptionOfType(ModelException.class)
        .isThrownBy(call)
        .satisfies(
            mistake -> {
              assertThat(mistake.problems().get(0).part()).isEqualTo(part);
              assertThat(mistake.problems().get(0).field()).isEqualTo(field);
            });
  }
}
