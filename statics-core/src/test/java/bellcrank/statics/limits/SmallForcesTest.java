package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import org.junit.jupiter.api.Test;

/** Statics knows no unit of force: what holds a thousand tonnes holds a speck of dust. */
class SmallForcesTest {

  private static final double[] SIZES = {1e9, 1, 1e-6, 1e-12, 1e-18};

  /** Two newtons in the middle of 2 m, a sack of any size half a metre beyond the front wheel. */
  private static Limits cart(double size, double sack) {
    Device cart =
        Device.named("cart")
            .point("front", 1, 0)
            .point("back", -1, 0)
            .point("middle", 0, 0)
            .point("tail", 1.5, 0)
            .member("cart", "back", "middle", "front", "tail")
            .pin("front", "front", "cart", "ground")
            .connect(new Roller("back", "back", "cart", "ground", Direction.UP, Sides.ONE))
            .load(new Force("own", "cart", "middle", Vector.of(0, -2 * size)))
            .load(new Force("sack", "cart", "tail", Vector.of(0, -sack * size)))
            .build();
    return Limits.of(cart);
  }

  @Test
  void howManySacksTipACart() {
    Variation sacks = Variation.of("sack");
    for (double size : SIZES) {
      for (double sack : new double[] {0.5, 1, 20}) {
        Limits limits = cart(size, sack);

        assertThat(limits.greatest(sacks).orElseThrow()).isCloseTo(4 / sack, within(1e-9));
        assertThat(limits.sweep(sacks).greatest()).isCloseTo(4 / sack, within(1e-9));
        assertThat(limits.verdict().words()).isEqualTo(sack < 4 ? "holds" : "does not hold");
      }
    }
  }

  /** A book between two walls needs to be squeezed, a feather too. */
  @Test
  void whatHasToBeSqueezed() {
    for (double size : SIZES) {
      Device book =
          Device.named("book")
              .point("left", 0, 0)
              .point("right", 0.1, 0)
              .point("middle", 0.05, 0)
              .member("book", "left", "middle", "right")
              .connect(new Contact("left", "left", "book", "ground", Direction.RIGHT, 0.5, 0.4))
              .connect(new Contact("right", "right", "book", "ground", Direction.LEFT, 0.5, 0.4))
              .load(new Force("own", "book", "middle", Vector.of(0, -10 * size)))
              .build();

      assertThat(Limits.of(book).verdict())
          .isInstanceOfSatisfying(
              Verdict.HoldsOnceSeated.class,
              seated -> assertThat(seated.parts()).containsExactly("left", "right"));
    }
  }
}
