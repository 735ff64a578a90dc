package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Closed forms of tackles and the differential windlass against balance and course. */
class TackleCourseTest {

  private static final double LOAD = 1000;

  private static Course course(Travel travel) {
    if (travel instanceof Course course) {
      return course;
    }
    throw new AssertionError(travel);
  }

  private static double number(Device device, String ask) {
    return Balance.of(device).number(ask).orElseThrow(() -> new AssertionError(ask));
  }

  /** A tackle under the derrick's head: the rope comes from the foot over a fixed sheave. */
  private static Device tackle(int parts, double efficiency, Reeving.Hauling hauling) {
    List<Stop> stops = new ArrayList<>();
    stops.add(Stop.end("ground", "foot"));
    boolean top = true;
    for (int i = 0; i < parts; i++) {
      stops.add(Stop.sheave(top ? "ground" : "block", top ? "head" : "hook", 0, Turn.CLOCKWISE));
      top = !top;
    }
    stops.add(Stop.end(top ? "ground" : "block", top ? "head" : "hook"));
    return Device.named("tackle")
        .point("foot", 0, -1)
        .point("head", 0, 3)
        .point("hook", 0, 0)
        .member("block", "hook")
        .connect(new Reeving("rope", stops, efficiency, hauling))
        .connect(new Guide("bed", "hook", "block", "ground", Direction.UP))
        .force("barrel", "block", "hook", Vector.of(0, -LOAD))
        .build();
  }

  /** Parts of line: the load moves 1/n of the way of the rope and hangs on n tensions. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void theWayOfTheRopeIsThePartsTimesTheLift(int parts) {
    Device device = tackle(parts, 1, Reeving.Hauling.IDEAL);
    Course course = course(Travel.of(device, Drive.length("rope"), -1.5, 0.75));
    for (double drive : new double[] {-1.5, -0.4, 0, 0.75}) {
      assertThat(course.place(drive, "block", "hook").y()).isCloseTo(-drive / parts, within(1e-11));
    }
    // work of the haul = work on the load
    double tension = number(device, "rope.tension");
    assertThat(tension * 1.5)
        .isCloseTo(LOAD * course.place(-1.5, "block", "hook").y(), within(1e-8));
  }

  /** Tension at the haul with an efficiency e per sheave: W / (e + … + eⁿ), or with 1/e. */
  @ParameterizedTest
  @CsvSource({"1, 0.98", "2, 0.98", "4, 0.98", "3, 0.9", "5, 0.9"})
  void raisingAndLoweringOverTheWholeWay(int parts, double efficiency) {
    for (Reeving.Hauling hauling : List.of(Reeving.Hauling.RAISING, Reeving.Hauling.LOWERING)) {
      double e = hauling == Reeving.Hauling.RAISING ? efficiency : 1 / efficiency;
      double sum = e == 1 ? parts : e * (Math.pow(e, parts) - 1) / (e - 1);
      Course course =
          course(Travel.of(tackle(parts, efficiency, hauling), Drive.length("rope"), -1, 0));
      Curve tension = course.curve("rope.tension");
      assertThat(tension.samples()).hasSizeGreaterThan(10);
      assertThat(tension.least().orElseThrow().value()).isCloseTo(LOAD / sum, within(1e-8));
      assertThat(tension.greatest().orElseThrow().value()).isCloseTo(LOAD / sum, within(1e-8));
    }
  }

  /** A moving block whose parts hang a diameter apart stays at the ratio of 2 at every height. */
  @Test
  void sheavesWithARadiusKeepTheRatioOfParallelParts() {
    Device device =
        Device.named("trough lid hoist")
            .point("anchor", -0.1, 3)
            .point("hook", 0, 0)
            .point("head", 0.2, 3)
            .point("foot", 0.3, 0)
            .member("block", "hook")
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("ground", "foot"),
                        Stop.sheave("ground", "head", 0.1, Turn.COUNTER_CLOCKWISE),
                        Stop.sheave("block", "hook", 0.1, Turn.CLOCKWISE),
                        Stop.end("ground", "anchor")),
                    1,
                    Reeving.Hauling.IDEAL))
            .connect(new Guide("bed", "hook", "block", "ground", Direction.UP))
            .force("lid", "block", "hook", Vector.of(0, -LOAD))
            .build();
    Course course = course(Travel.of(device, Drive.length("rope"), -2, 1));
    assertThat(course.place(-2, "block", "hook").y()).isCloseTo(1, within(1e-11));
    assertThat(course.place(1, "block", "hook").y()).isCloseTo(-0.5, within(1e-11));
    assertThat(number(device, "rope.tension")).isCloseTo(LOAD / 2, within(1e-9));
  }

  /** The two halves of a stepped drum of radii R and r wind up and pay out the same rope. */
  private static Device windlass(double large, double small) {
    return Device.named("differential windlass")
        .point("axle", 0, 3)
        .point("hook", (small - large) / 2, 0)
        .member("drum", "axle")
        .member("block", "hook")
        .pin("bearing", "axle", "drum", "ground")
        .connect(
            new Reeving(
                "rope",
                List.of(
                    Stop.drum("drum", "axle", large, Turn.COUNTER_CLOCKWISE),
                    Stop.sheave("block", "hook", (large + small) / 2, Turn.COUNTER_CLOCKWISE),
                    Stop.drum("drum", "axle", small, Turn.COUNTER_CLOCKWISE)),
                1,
                Reeving.Hauling.IDEAL))
        .connect(new Guide("bed", "hook", "block", "ground", Direction.UP))
        .force("barrel", "block", "hook", Vector.of(0, -LOAD))
        .load(new Sought("crank", Sought.Want.COUPLE, "drum", Optional.empty(), Optional.empty()))
        .build();
  }

  /** Textbook closed form, from memory: couple W·(R − r)/2, lift per turn π·(R − r). */
  @ParameterizedTest
  @CsvSource({"0.12, 0.1", "0.2, 0.05", "0.05, 0.04"})
  void theDifferentialWindlass(double large, double small) {
    Device device = windlass(large, small);
    assertThat(Math.abs(number(device, "crank")))
        .isCloseTo(LOAD * (large - small) / 2, within(1e-9));
    assertThat(number(device, "rope.tension")).isCloseTo(LOAD / 2, within(1e-9));
    Course course = course(Travel.of(device, Drive.turn("drum"), -2 * Math.PI, 2 * Math.PI));
    assertThat(course.place(-2 * Math.PI, "block", "hook").y())
        .isCloseTo(Math.PI * (large - small), within(1e-11));
    assertThat(course.place(2 * Math.PI, "block", "hook").y())
        .isCloseTo(-Math.PI * (large - small), within(1e-11));
  }

  /**
   * The upper wheel of a differential pulley block is such a drum, the effort at its larger rim.
   * Source: Open question bank, lifting machines: diameters 100 and 80 mm, velocity ratio 10 (two
   * digits).
   */
  @Test
  void theVelocityRatioOfADifferentialPulleyBlock() {
    Device device = windlass(0.05, 0.04);
    double effort = Math.abs(number(device, "crank")) / 0.05;
    assertThat(LOAD / effort).isCloseTo(10, within(0.05));
    Course course = course(Travel.of(device, Drive.turn("drum"), -1, 0));
    double lift = course.place(-1, "block", "hook").y();
    assertThat(0.05 / lift).isCloseTo(10, within(0.05));
  }

  /**
   * Source: Open question bank, lifting machines: recesses in the ratio 9 to 10, efficiency 50 %,
   * effort 300 N: velocity ratio 20, load 3000 N (three digits).
   */
  @Test
  void theLoadOfADifferentialPulleyBlock() {
    double ratio = LOAD / (Math.abs(number(windlass(0.1, 0.09), "crank")) / 0.1);
    assertThat(ratio).isCloseTo(20, within(0.05));
    assertThat(0.5 * ratio * 300).isCloseTo(3000, within(5.0));
  }

  /** A drum in layers takes the same couple as a device with a drum of that layer's radius. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5})
  void aLayerIsADrumOfItsRadius(int layer) {
    Drum drum = new Drum(0.08, 0.012, 15);
    Device device =
        Device.named("well windlass")
            .point("axle", 0, 0)
            .point("bucket", drum.radius(layer), -3)
            .member("drum", "axle")
            .member("bucket", "bucket")
            .pin("bearing", "axle", "drum", "ground")
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.drum("drum", "axle", drum.radius(layer), Turn.CLOCKWISE),
                        Stop.end("bucket", "bucket")),
                    1,
                    Reeving.Hauling.IDEAL))
            .connect(new Guide("shaft", "bucket", "bucket", "ground", Direction.UP))
            .force("weight", "bucket", "bucket", Vector.of(0, -200))
            .load(
                new Sought("crank", Sought.Want.COUPLE, "drum", Optional.empty(), Optional.empty()))
            .build();
    assertThat(number(device, "crank")).isCloseTo(drum.couple(layer, 200), within(1e-10));
    Course course = course(Travel.of(device, Drive.turn("drum"), -1, 1));
    assertThat(course.place(1, "bucket", "bucket").y() + 3)
        .isCloseTo(drum.speed(layer, 1), within(1e-11));
  }
}
