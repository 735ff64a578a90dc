package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Layers of rope on a drum: radius, length, pull and speed. */
class DrumTest {

  private static final Drum DRUM = new Drum(0.05, 0.01, 10);

  @Test
  void eachLayerRunsOneDiameterFartherOut() {
    assertThat(DRUM.radius(1)).isCloseTo(0.055, within(1e-15));
    assertThat(DRUM.radius(2)).isCloseTo(0.065, within(1e-15));
    assertThat(DRUM.radius(5)).isCloseTo(0.095, within(1e-15));
  }

  @Test
  void aLayerHoldsItsTurns() {
    assertThat(DRUM.lengthIn(1)).isCloseTo(10 * 2 * Math.PI * 0.055, within(1e-12));
    assertThat(DRUM.lengthIn(3)).isCloseTo(10 * 2 * Math.PI * 0.075, within(1e-12));
    assertThat(DRUM.lengthOf(0)).isZero();
    // 0.055 + 0.065 + 0.075 = 0.195
    assertThat(DRUM.lengthOf(3)).isCloseTo(10 * 2 * Math.PI * 0.195, within(1e-12));
  }

  @Test
  void aFullLayerIsStillTheTopOne() {
    assertThat(DRUM.layerAt(0)).isEqualTo(1);
    assertThat(DRUM.layerAt(DRUM.lengthOf(1))).isEqualTo(1);
    assertThat(DRUM.layerAt(DRUM.lengthOf(1) + 1e-9)).isEqualTo(2);
    assertThat(DRUM.layerAt(DRUM.lengthOf(4) - 1e-9)).isEqualTo(4);
    assertThat(DRUM.layerAt(DRUM.lengthOf(1000))).isEqualTo(1000);
  }

  @Test
  void turnsAreCountedThroughTheLayers() {
    assertThat(DRUM.turns(0)).isZero();
    assertThat(DRUM.turns(2 * Math.PI * 0.055)).isCloseTo(1, within(1e-12));
    assertThat(DRUM.turns(DRUM.lengthOf(2) + Math.PI * 0.075)).isCloseTo(20.5, within(1e-12));
    assertThat(DRUM.wound(0)).isZero();
    assertThat(DRUM.wound(20.5)).isCloseTo(DRUM.lengthOf(2) + Math.PI * 0.075, within(1e-12));
    assertThat(DRUM.wound(10_000)).isCloseTo(DRUM.lengthOf(1000), within(1e-6));
  }

  @Test
  void pullAndCoupleByTheRadius() {
    assertThat(DRUM.pull(2, 13)).isCloseTo(200, within(1e-10));
    assertThat(DRUM.pull(2, -13)).isCloseTo(-200, within(1e-10));
    assertThat(DRUM.couple(2, 200)).isCloseTo(13, within(1e-12));
  }

  @Test
  void speedGrowsWithTheLayer() {
    assertThat(DRUM.speed(1, 2)).isCloseTo(0.11, within(1e-15));
    assertThat(DRUM.speed(4, 2)).isCloseTo(0.17, within(1e-15));
    assertThat(DRUM.speed(4, -2)).isCloseTo(-0.17, within(1e-15));
  }

  /**
   * Source: TM 9-2320-279-10-2, Table 2-7: line pull of a 20 000 lb winch on layers 1 to 5, three
   * digits. The manual gives no sizes: the rope's share of the first radius is that which fits
   * layer 5.
   */
  @ParameterizedTest
  @CsvSource({"1, 20000", "2, 18173", "3, 16663", "4, 15361", "5, 14254"})
  void thePrintedPullsOfATruckWinchFollowTheRadius(int layer, double printed) {
    double rope = (20000.0 / 14254 - 1) / 4;
    Drum drum = new Drum(1 - rope / 2, rope, 10);
    assertThat(drum.pullFromFirst(layer, 20000)).isCloseTo(printed, within(50.0));
    assertThat(drum.pullFromFirst(layer, 20000) / printed).isCloseTo(1, within(0.0011));
  }

  /** Source: Off-road recovery safety guide, after army driver manuals: half the pull is left. */
  @Test
  void whereTheRadiusHasDoubledHalfThePullIsLeft() {
    Drum drum = new Drum(0.045, 0.01, 12);
    assertThat(drum.radius(6)).isCloseTo(2 * drum.radius(1), within(1e-15));
    double share =
        HaulingTable.named("line pull on a full drum, least share of the first layer's")
            .value()
            .low();
    assertThat(drum.pullFromFirst(6, 900)).isCloseTo(share * 900, within(1e-9));
  }

  @Test
  void asManyTurnsAsFitLieSideBySide() {
    assertThat(Drum.from(0.05, 0.01, 0.1)).isEqualTo(DRUM);
    assertThat(Drum.from(0.05, 0.01, 0.1099)).isEqualTo(DRUM);
    assertThat(Drum.from(0.05, 0.1, 0.3).turnsPerLayer()).isEqualTo(3);
    assertThat(Drum.from(0.05, 0.01, 0.01).turnsPerLayer()).isEqualTo(1);
    assertThat(Drum.from(0.05, 1e-6, 1).turnsPerLayer()).isEqualTo(1_000_000);
  }

  @Test
  void asManyLayersAsTheFlangesHold() {
    assertThat(DRUM.layersWithin(0.05)).isZero();
    assertThat(DRUM.layersWithin(0.059)).isZero();
    assertThat(DRUM.layersWithin(0.06)).isEqualTo(1);
    assertThat(DRUM.layersWithin(0.08)).isEqualTo(3);
    assertThat(DRUM.layersWithin(10.05)).isEqualTo(1000);
  }

  @Test
  void boundsAreIncluded() {
    assertThat(new Drum(1e15, 1e-15, 1_000_000).radius()).isEqualTo(1e15);
    assertThat(DRUM.couple(1, 1e15)).isCloseTo(5.5e13, within(1.0));
    assertThat(DRUM.couple(1, -1e15)).isCloseTo(-5.5e13, within(1.0));
    refused(() -> new Drum(1.1e15, 0.01, 1), "radius");
    refused(() -> new Drum(0.05, 0.9e-15, 1), "rope diameter");
  }

  @Test
  void mistakesAreTold() {
    refused(() -> new Drum(0, 0.01, 1), "radius");
    refused(() -> new Drum(Double.NaN, 0.01, 1), "radius");
    refused(() -> new Drum(0.05, -0.01, 1), "rope diameter");
    refused(() -> new Drum(0.05, Double.POSITIVE_INFINITY, 1), "rope diameter");
    refused(() -> new Drum(0.05, 0.01, 0), "turns per layer");
    refused(() -> new Drum(0.05, 0.01, 1_000_001), "turns per layer");
    refused(() -> Drum.from(0.05, 0.01, 0.009), "width");
    refused(() -> Drum.from(0.05, 1e-6, 2), "width");
    refused(() -> Drum.from(0.05, 0, 2), "rope diameter");
    refused(() -> Drum.from(0.05, 0.01, 0), "width");
    refused(() -> DRUM.layersWithin(0.04), "flange radius");
    refused(() -> DRUM.layersWithin(0.0499999), "flange radius");
    refused(() -> DRUM.layersWithin(10.07), "flange radius");
    refused(() -> DRUM.layersWithin(-1), "flange radius");
    refused(() -> DRUM.radius(0), "layer");
    refused(() -> DRUM.radius(1001), "layer");
    refused(() -> DRUM.lengthIn(0), "layer");
    refused(() -> DRUM.lengthOf(-1), "layers");
    refused(() -> DRUM.lengthOf(1001), "layers");
    refused(() -> DRUM.layerAt(-1e-9), "wound length");
    refused(() -> DRUM.layerAt(DRUM.lengthOf(1000) + 1e-6), "wound length");
    refused(() -> DRUM.turns(Double.NaN), "wound length");
    refused(() -> DRUM.wound(-1), "turns");
    refused(() -> DRUM.wound(10_001), "turns");
    refused(() -> DRUM.pull(1, Double.NaN), "couple");
    refused(() -> DRUM.couple(1, Double.NEGATIVE_INFINITY), "pull");
    refused(() -> DRUM.speed(1, 1e16), "turning speed");
  }

  private static void refused(ThrowingCallable call, String field) {
    assertThatExceptionOfType(ModelException.class)
        .isThrownBy(call)
        .satisfies(
            mistake -> {
              assertThat(mistake.problems().get(0).part()).isEqualTo("drum");
              assertThat(mistake.problems().get(0).field()).isEqualTo(field);
            });
  }
}
