package bellcrank.examples;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;

/**
 * The shortest useful program: one lever on one pin. It is the first example of the readme, and the
 * device of {@code shared/devices/cider-press-lever.yaml}.
 */
public final class CiderPress {

  private CiderPress() {}

  /**
   * Prints how the press comes out.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    Device press =
        Device.named("cider press lever")
            .point("hinge", 0, 0) // metres, x to the right, y up
            .point("ram", 0.25, 0)
            .point("middle", 0.8, 0.05)
            .point("grip", 1.6, 0.1)
            .member("lever", "hinge", "ram", "grip")
            .pin("hinge", "hinge", "lever", "ground")
            .force("hand", "lever", "grip", Vector.of(0, -220)) // newtons
            .force("own weight", "lever", "middle", Vector.of(0, -60))
            .sought("ram", "lever", "ram", Direction.UP)
            .advantage("hand", "ram")
            .build();
    Balance balance = Balance.of(press);
    System.out.println(balance.outcome().words());
    for (String ask : new String[] {"ram", "hinge.y", "advantage"}) {
      Dimension kind = ask.equals("advantage") ? Dimension.NUMBER : Dimension.FORCE;
      double value = balance.number(ask).orElseThrow();
      System.out.println(ask + ": " + UnitSystem.SI.format(value, kind, 4));
    }
  }
}
