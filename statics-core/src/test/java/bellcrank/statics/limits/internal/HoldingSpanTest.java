package bellcrank.statics.limits.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import org.junit.jupiter.api.Test;

/**
 * A cart on a pin in front and a wheel behind, 2 m apart, that only pushes. Its own 200 N in the
 * middle press the wheel by 100 N; what is loaded besides changes that in proportion.
 */
class HoldingSpanTest {

  private static final Device CART =
      Device.named("cart")
          .point("front", 1, 0)
          .point("back", -1, 0)
          .member("cart", "back", "front")
          .pin("front", "front", "cart", "ground")
          .connect(new Roller("back", "back", "cart", "ground", Direction.UP, Sides.ONE))
          .force("sack", "cart", "front", Vector.of(0, -100))
          .build();

  private final HoldingSpan span = HoldingSpan.of(CART, LoadCase.ALL_LOADS).orElseThrow();

  /** Forces by unknowns of which all but the push of the wheel are left out. */
  private static double[] wheel(double push) {
    Assembly assembly = Assembly.withDryPins(CART);
    double[] forces = new double[assembly.columns()];
    forces[assembly.firstColumn(1)] = push;
    return forces;
  }

  private boolean find(double without, double with) {
    return span.find(wheel(without), wheel(with), 50);
  }

  /** A sack beyond the pin takes 25 N off the wheel: it lifts at 4 sacks. */
  @Test
  void whatLiftsTheWheelHasAGreatestMultiple() {
    assertThat(find(100, 75)).isTrue();
    assertThat(span.greatest()).isCloseTo(4, within(1e-12));
    assertThat(span.least()).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  /** A sack behind the wheel adds 125 N: lifted by 0.8 of it the wheel is free. */
  @Test
  void whatPressesTheWheelHasALeastMultiple() {
    assertThat(find(100, 225)).isTrue();
    assertThat(span.least()).isCloseTo(-0.8, within(1e-12));
    assertThat(span.greatest()).isEqualTo(Double.POSITIVE_INFINITY);
  }

  /** What is lifted to begin with takes 1.6 such sacks to come down. */
  @Test
  void aLiftedWheelComesDown() {
    assertThat(find(-200, -75)).isTrue();
    assertThat(span.least()).isCloseTo(1.6, within(1e-12));
  }

  /** A sack over the pin changes nothing at the wheel: it holds at all multiples, or at none. */
  @Test
  void aSackOverThePinDoesNotMatter() {
    assertThat(find(100, 100)).isTrue();
    assertThat(span.least()).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(span.greatest()).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(find(-1, -1)).isFalse();
  }
}
