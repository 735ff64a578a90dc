package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.number;
import static bellcrank.statics.equilibrium.Si.reason;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
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
import org.junit.jupiter.api.Test;

/** Ropes through blocks, with and without losses, and screws. */
class TackleTest {

  /**
   * A tackle whose moving block hangs on a number of parts of rope; the first part comes from the
   * hand over a fixed sheave. All parts are vertical, so sheaves may be points.
   */
  private static Device tackle(int parts, double efficiency, Reeving.Hauling hauling) {
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
        .connect(
            new bellcrank.statics.device.Guide("bed", "bottom", "block", "ground", Direction.UP))
        .connect(
            new bellcrank.statics.device.Roller(
                "rail",
                "hand",
                "hand",
                "ground",
                Direction.RIGHT,
                bellcrank.statics.device.Sides.TWO))
        .force("load", "block", "bottom", Vector.of(0, -1000))
        .sought("pull", "hand", "hand", Direction.DOWN)
        .advantage("pull", "load")
        .build();
  }

  @Property
  void withoutLossesEachPartCarriesTheSame(@ForAll @IntRange(min = 1, max = 8) int parts) {
    Device device = tackle(parts, 1, Reeving.Hauling.IDEAL);
    assertThat(number(device, "pull")).isCloseTo(1000.0 / parts, within(1e-9));
    assertThat(number(device, "rope.tension")).isCloseTo(1000.0 / parts, within(1e-9));
    assertThat(number(device, "advantage")).isCloseTo(parts, within(1e-9));
    assertThat(number(device, "advantage.ideal")).isCloseTo(parts, within(1e-9));
  }

  @Property
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

  @Property
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

  @Test
  void aRopeIsLetGoWhenItIsTheEffortItself() {
    Device device =
        Device.named("hoist")
            .point("top", 0, 3)
            .point("hook", 0, 0)
            .point("winch", 1, 0)
            .member("block", "hook")
            .connect(
                new bellcrank.statics.device.Guide("bed", "hook", "block", "ground", Direction.UP))
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.drum("ground", "winch", 0.1, Turn.CLOCKWISE),
                        Stop.sheave("ground", "top", 0.05, Turn.COUNTER_CLOCKWISE),
                        Stop.sheave("block", "hook", 0, Turn.COUNTER_CLOCKWISE),
                        Stop.end("ground", "top")),
                    1,
                    Reeving.Hauling.IDEAL))
            .force("load", "block", "hook", Vector.of(0, -1000))
            .advantage("rope", "load")
            .build();
    Balance balance = Balance.of(device);
    double ideal = number(balance, "advantage.ideal");
    assertThat(number(balance, "advantage")).isCloseTo(ideal, within(1e-9));
    assertThat(ideal).isCloseTo(1000 / number(balance, "rope"), within(1e-9)).isBetween(1.99, 2.0);
  }

  @Test
  void aDrumIsTurnedByItsRadius() {
    Device device =
        Device.named("windlass")
            .point("axle", 0, 0)
            .point("bucket", 0.1, -3)
            .member("drum", "axle")
            .member("bucket", "bucket")
            .pin("axle", "axle", "drum", "ground")
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.drum("drum", "axle", 0.1, Turn.CLOCKWISE),
                        Stop.end("bucket", "bucket")),
                    1,
                    Reeving.Hauling.IDEAL))
            .force("weight", "bucket", "bucket", Vector.of(0, -200))
            .load(
                new bellcrank.statics.device.Sought(
                    "crank",
                    bellcrank.statics.device.Sought.Want.COUPLE,
                    "drum",
                    java.util.Optional.empty(),
                    java.util.Optional.empty()))
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "rope")).isCloseTo(200, within(1e-12));
    assertThat(number(balance, "crank")).isCloseTo(20, within(1e-12));
    assertThat(number(balance, "crank.moment about axle")).isCloseTo(20, within(1e-12));
    assertThat(number(balance, "rope.moment about axle on drum")).isCloseTo(-20, within(1e-12));
    assertThat(number(balance, "rope.y on bucket")).isCloseTo(200, within(1e-12));
  }

  private static Device jack(double lead, double friction, double load) {
    return Device.named("press screw")
        .point("foot", 0, 0)
        .point("head", 0, 0.5)
        .member("plate", "head")
        .connect(new bellcrank.statics.device.Guide("bed", "head", "plate", "ground", Direction.UP))
        .connect(
            new Screw(
                "screw", End.of("plate", "head"), End.of("ground", "foot"), lead, 0.02, friction))
        .force("load", "plate", "head", Vector.of(0, -load))
        .build();
  }

  // F·r·tan(φ ± α) with tan φ = μ, tan α = lead / 2πr: textbook formula, from memory
  @Test
  void aScrewIsTurnedAgainstSlopeAndFriction() {
    Device device = jack(0.006, 0.15, 5000);
    double alpha = Math.atan(0.006 / (2 * Math.PI * 0.02));
    double phi = Math.atan(0.15);
    assertThat(number(device, "screw.compression")).isCloseTo(5000, within(1e-9));
    assertThat(number(device, "screw.raising"))
        .isCloseTo(5000 * 0.02 * Math.tan(phi + alpha), within(1e-9));
    assertThat(number(device, "screw.lowering"))
        .isCloseTo(5000 * 0.02 * Math.tan(phi - alpha), within(1e-9));
  }

  @Test
  void aSteepSmoothScrewRunsDownByItself() {
    assertThat(number(jack(0.06, 0.02, 100), "screw.lowering")).isNegative();
  }

  @Test
  void aPulledScrewIsTurnedAsHardAsAPushedOne() {
    assertThat(number(jack(0.006, 0.15, -5000), "screw.raising"))
        .isCloseTo(number(jack(0.006, 0.15, 5000), "screw.raising"), within(1e-9));
  }

  @Test
  void aRoughSteepScrewBinds() {
    Balance balance = Balance.of(jack(0.13, 1.0, 100));
    assertThat(reason(balance, "screw.raising")).isEqualTo(Answer.Reason.NOT_DEFINED);
    assertThat(number(balance, "screw.lowering")).isFinite();
  }
}
