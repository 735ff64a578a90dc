package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Tackles with and without losses: power in = power out + loss. */
class TackleProperties {

  /**
   * A tackle whose moving block hangs on a number of parts of rope; the first part comes from the
   * hand over a fixed sheave. All parts are vertical, so sheaves may be points.
   */
  static Device tackle(int parts, double efficiency, Reeving.Hauling hauling) {
    List<Stop> stops = new ArrayList<>();
    stops.add(Stop.end("hand", "hand"));
    boolean top = true;
    for (int i = 0; i < parts; i++) {
      stops.add(Stop.sheave(top ? "ground" : "block", top ? "top" : "bottom", 0, Turn.CLOCKWISE));
      top = !top;
    }
    stops.add(Stop.end(top ? "ground" : "block", top ? "top" : "bottom"));
    return Device.named("tackle")
        .point("hand", 0, 1)
        .point("top", 0, 3)
        .point("bottom", 0, 0)
        .joint("hand")
        .member("block", "bottom")
        .connect(new Reeving("rope", stops, efficiency, hauling))
        .connect(new Guide("bed", "bottom", "block", "ground", Direction.UP))
        .connect(new Roller("rail", "hand", "hand", "ground", Direction.RIGHT, Sides.TWO))
        .force("load", "block", "bottom", Vector.of(0, -1000))
        .sought("pull", "hand", "hand", Direction.DOWN)
        .advantage("pull", "load")
        .build();
  }

  @Property(tries = 200)
  void withoutLossesEachPartCarriesTheSame(@ForAll @IntRange(min = 1, max = 8) int parts) {
    Device device = tackle(parts, 1, Reeving.Hauling.IDEAL);
    assertThat(number(device, "pull")).isCloseTo(1000.0 / parts, within(1e-9));
    assertThat(number(device, "rope.tension")).isCloseTo(1000.0 / parts, within(1e-9));
    assertThat(number(device, "advantage")).isCloseTo(parts, within(1e-9));
    assertThat(number(device, "advantage.ideal")).isCloseTo(parts, within(1e-9));
  }

  @Property(tries = 200)
  void raisingLosesAtEverySheave(
      @ForAll @IntRange(min = 1, max = 8) int parts,
      @ForAll @DoubleRange(min = 0.8, max = 1) double efficiency) {
    Device device = tackle(parts, efficiency, Reeving.Hauling.RAISING);
    // after k sheaves the tension is the pull times efficiency^k; these parts carry the load
    double carried = 0;
    for (int k = 1; k <= parts; k++) {
      carried += Math.pow(efficiency, k);
    }
    double pull = number(device, "pull");
    assertThat(pull).isCloseTo(1000 / carried, within(1e-8));
    assertThat(number(device, "rope.end tension"))
        .isCloseTo(pull * Math.pow(efficiency, parts), within(1e-8));
    assertThat(number(device, "advantage.ideal")).isCloseTo(parts, within(1e-9));
    assertThat(number(device, "advantage")).isCloseTo(carried, within(1e-9));
    // power in = power out + loss for a unit speed of the load
    double loss = pull * parts - 1000;
    assertThat(loss).isGreaterThanOrEqualTo(-1e-8);
    assertThat(loss).isCloseTo(sheaveLosses(pull, efficiency, parts), within(1e-7));
  }

  /** Each sheave eats the difference of its tensions times the speed of the rope over it. */
  private static double sheaveLosses(double pull, double efficiency, int parts) {
    double sum = 0;
    double tension = pull;
    // the rope runs over the first sheave at the hand's speed, over each next one a part slower
    for (int k = 0; k < parts; k++) {
      sum += tension * (1 - efficiency) * (parts - k);
      tension *= efficiency;
    }
    return sum;
  }

  @Property(tries = 200)
  void loweringHoldsWithLess(
      @ForAll @IntRange(min = 1, max = 8) int parts,
      @ForAll @DoubleRange(min = 0.8, max = 0.99) double efficiency) {
    Device device = tackle(parts, efficiency, Reeving.Hauling.LOWERING);
    double carried = 0;
    for (int k = 1; k <= parts; k++) {
      carried += Math.pow(efficiency, -k);
    }
    double pull = number(device, "pull");
    assertThat(pull).isCloseTo(1000 / carried, within(1e-8));
    // the load does the work now: what the hand takes is less
    assertThat(1000 - pull * parts).isPositive();
  }
}
