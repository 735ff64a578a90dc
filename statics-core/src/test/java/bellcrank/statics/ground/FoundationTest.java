package bellcrank.statics.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import org.junit.jupiter.api.Test;

class FoundationTest {

  private static final Foundation SILL = Foundation.of("derrick sill", 2);

  /** K_p is 3 at 30° (Rankine, from memory): by hand ½ · 3 · 18 · 0.04 = 1.08 kN for each metre. */
  @Test
  void aCleatInSandLeansOnAWedge() {
    Cleat cleat = new Cleat(0.2, Math.toRadians(30), 0, 18e3);
    assertThat(cleat.resistance(1)).isCloseTo(1080, within(1e-9));
    assertThat(cleat.resistance(2.5)).isCloseTo(2700, within(1e-9));
  }

  @Test
  void aCleatInClayLeansOnItsCohesion() {
    // by hand: K_p = 1; ½ · 18 · 0.04 + 2 · 20 · 0.2 = 8.36 kN for each metre
    assertThat(new Cleat(0.2, 0, 20e3, 18e3).resistance(1)).isCloseTo(8360, within(1e-9));
  }

  @Test
  void aCleatInMixedGroundHasBoth() {
    // by hand: ½ · 3 · 18 · 0.04 + 2 · 5 · 1.7321 · 0.2 = 1.08 + 3.4641 kN for each metre
    double resistance = new Cleat(0.2, Math.toRadians(30), 5e3, 18e3).resistance(1);
    assertThat(resistance).isCloseTo(4544.1, Si.printed(1));
  }

  @Test
  void frictionAloneHoldsABareBase() {
    assertThat(SILL.slidingResistance(0.35, SILL.load(10e3, 0, 0, 0.5)))
        .isCloseTo(3500, within(1e-9));
    assertThat(SILL.slidingResistance(0, SILL.load(10e3, 0, 0, 0.5))).isZero();
  }

  @Test
  void adhesionHoldsOnTheEffectiveArea() {
    // by hand: e = 0.1, B' = 0.3; 0.35 · 10 + 6 · 0.3 · 2 = 3.5 + 3.6 kN
    Foundation sticky = SILL.withAdhesion(6e3);
    assertThat(sticky.slidingResistance(0.35, sticky.load(10e3, 900, 1e3, 0.5)))
        .isCloseTo(7100, within(1e-8));
    // over the edge the area is gone, but the friction is not
    assertThat(sticky.slidingResistance(0.35, sticky.load(10e3, 0, 4e3, 0.5)))
        .isCloseTo(3500, within(1e-9));
  }

  @Test
  void aCleatAddsItsWedge() {
    Foundation held = SILL.withCleat(new Cleat(0.2, Math.toRadians(30), 0, 18e3));
    assertThat(held.slidingResistance(0.35, held.load(10e3, 0, 0, 0.5)))
        .isCloseTo(3500 + 2160, within(1e-8));
    assertThat(held.slidingResistance(0.35, held.load(0, 0, 0, 0.5))).isCloseTo(2160, within(1e-8));
  }

  @Test
  void copiesKeepTheRest() {
    Cleat cleat = new Cleat(0.2, 0.5, 0, 18e3);
    Bearing clay = new Undrained(40e3, 0);
    Foundation all = SILL.withBearing(clay).withAdhesion(5).withCleat(cleat);
    assertThat(all).isEqualTo(SILL.withCleat(cleat).withAdhesion(5).withBearing(clay));
    assertThat(all.base()).isEqualTo("derrick sill");
    assertThat(all.length()).isEqualTo(2);
    assertThat(all.bearing()).contains(clay);
    assertThat(all.adhesion()).isEqualTo(5);
    assertThat(all.cleat()).contains(cleat);
    assertThat(SILL.bearing()).isEmpty();
    assertThat(SILL.cleat()).isEmpty();
    assertThat(SILL.adhesion()).isZero();
  }

  @Test
  void aLoadHasTheLengthOfItsFoundation() {
    assertThat(SILL.load(1, 2, 3, 4)).isEqualTo(new BaseLoad(1, 2, 3, 4, 2));
    assertThatThrownBy(() -> SILL.slidingResistance(0.3, new BaseLoad(1, 0, 0, 1, 3)))
        .isInstanceOf(ModelException.class)
        .hasMessage("derrick sill: length of the load is 3.0; wanted: that of the foundation, 2.0");
  }
}
