package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Places of rest against values worked by hand. */
class RestTest {

  private static final double G = 9.80665;

  /** A bar of 2 m, hinged at the left end, drawn level. */
  private static DeviceBuilder lid() {
    return Device.named("trough lid")
        .point("hinge", 0, 0)
        .point("middle", 1, 0)
        .point("edge", 2, 0)
        .member("lid", "hinge", "middle", "edge")
        .pin("hinge", "hinge", "lid", "ground");
  }

  private static Course course(Device device, double least, double greatest) {
    return (Course) Travel.of(device, Drive.turn("lid"), least, greatest);
  }

  @Test
  void whatSwingsRestsPlumb() {
    Device device = lid().weight("own", "lid", "middle", 12).build();
    List<Rest.Place> places = Rest.over(course(device, -3, 3));
    assertThat(places).hasSize(3);
    assertThat(places.get(0).drive()).isCloseTo(-Math.PI / 2, within(1e-10));
    assertThat(places.get(0).kind()).isEqualTo(Rest.Kind.STABLE);
    assertThat(places.get(0).words()).contains("comes back");
    assertThat(places.get(1).drive()).isCloseTo(Math.PI / 2, within(1e-10));
    assertThat(places.get(1).kind()).isEqualTo(Rest.Kind.UNSTABLE);
    assertThat(places.get(1).words()).contains("goes off");
    // beyond the top it falls on to the stated end
    assertThat(places.get(2).kind()).isEqualTo(Rest.Kind.AGAINST_END);
    assertThat(places.get(2).drive()).isEqualTo(3);
    assertThat(places.get(2).words()).endsWith("stated limit");
  }

  @Test
  void anEndOfTheCourseMayBeAPlaceOfRest() {
    Device device =
        Device.named("hanging lid")
            .point("hinge", 0, 0)
            .point("edge", 0, -2)
            .member("lid", "hinge", "edge")
            .pin("hinge", "hinge", "lid", "ground")
            .weight("own", "lid", "edge", 12)
            .build();
    List<Rest.Place> places = Rest.over(course(device, 0, 1));
    assertThat(places).hasSize(1);
    assertThat(places.get(0).drive()).isCloseTo(0, within(1e-10));
    assertThat(places.get(0).kind()).isEqualTo(Rest.Kind.STABLE);
  }

  @Test
  void aLidLiesOnItsTrough() {
    Device device =
        lid()
            .point("rim", 1.9, -0.5)
            .point("far rim", 2.1, -0.5)
            .weight("own", "lid", "middle", 12)
            .build();
    Meeting meeting = new Meeting("lid", "edge", "ground", "rim", "far rim");
    Course course =
        (Course)
            Travel.of(device, device.cases().get(0), Drive.turn("lid"), -1, 1, List.of(meeting));
    List<Rest.Place> places = Rest.over(course);
    assertThat(places).hasSize(1);
    assertThat(places.get(0).kind()).isEqualTo(Rest.Kind.AGAINST_END);
    assertThat(places.get(0).drive()).isCloseTo(-Math.asin(0.25), within(1e-9));
    assertThat(places.get(0).words()).contains("meet");
  }

  @Test
  void evenlyWeightedItRestsAnywhere() {
    Device device =
        lid()
            .point("tail", -0.5, 0)
            .weight("own", "lid", "middle", 12)
            .weight("counterweight", "lid", "tail", 24)
            .build();
    List<Rest.Place> places = Rest.over(course(device, -1, 1.5));
    assertThat(places).hasSize(1);
    assertThat(places.get(0).kind()).isEqualTo(Rest.Kind.NEUTRAL);
    assertThat(places.get(0).from()).isEqualTo(-1);
    assertThat(places.get(0).to()).isEqualTo(1.5);
    assertThat(places.get(0).drive()).isEqualTo(0.25);
  }

  /** The counterweight is off the line: m g cos t = M g (0.5 cos t + 0.3 sin t). */
  @Test
  void aCounterweightOffTheLineHoldsTheLidOpen() {
    Device device =
        lid()
            .point("tail", -0.5, -0.3)
            .weight("own", "lid", "middle", 12)
            .weight("counterweight", "lid", "tail", 20)
            .build();
    List<Rest.Place> places = Rest.over(course(device, 0, 1.5));
    // moment about the hinge: −12 cos t + 20 (0.5 cos t − 0.3 sin t) = −2 cos t − 6 sin t
    assertThat(places).hasSize(1);
    assertThat(places.get(0).kind()).isEqualTo(Rest.Kind.AGAINST_END);
    List<Rest.Place> below = Rest.over(course(device, -1, 1.5));
    assertThat(below).hasSize(1);
    assertThat(below.get(0).kind()).isEqualTo(Rest.Kind.STABLE);
    assertThat(below.get(0).drive()).isCloseTo(-Math.atan(2.0 / 6), within(1e-10));
  }

  /**
   * A spring without free length from the edge to a post above the hinge balances: k h = m g / 2.
   */
  @Test
  void aSpringOfNoFreeLengthBalancesInEveryPlace() {
    double stiffness = 12 * G * 1 / (1.5 * 2);
    Device device =
        lid()
            .point("post", 0, 1.5)
            .weight("own", "lid", "middle", 12)
            .load(
                new Spring("spring", End.of("lid", "edge"), End.of("ground", "post"), stiffness, 0))
            .build();
    List<Rest.Place> places = Rest.over(course(device, -1, 1));
    assertThat(places).hasSize(1);
    assertThat(places.get(0).kind()).isEqualTo(Rest.Kind.NEUTRAL);
  }

  @Test
  void aTorsionSpringComesToRestWhereItIsRelaxed() {
    Device device = lid().load(new TorsionSpring("spring", "lid", "ground", 50, 0.4)).build();
    Course course = course(device, -1, 1);
    List<Rest.Place> places = Rest.over(course);
    assertThat(places).hasSize(1);
    assertThat(places.get(0).drive()).isCloseTo(-0.4, within(1e-11));
    assertThat(places.get(0).kind()).isEqualTo(Rest.Kind.STABLE);
    assertThat(Rest.drivingForce(course, 0.1).orElseThrow()).isCloseTo(-25, within(1e-9));
  }

  @Test
  void everyKindOfLoadDrives() {
    Device device =
        lid()
            .point("up", 0, 1)
            .force("hand", "lid", "edge", Vector.of(3, 40))
            .load(new Couple("twist", "lid", 7))
            .load(
                new SpreadLoad(
                    "wind",
                    "lid",
                    "hinge",
                    "edge",
                    10,
                    30,
                    Optional.empty(),
                    SpreadLoad.Per.LENGTH))
            .load(
                new SpreadLoad(
                    "snow",
                    "lid",
                    "hinge",
                    "edge",
                    60,
                    60,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.HORIZONTAL))
            .sought("hold", "lid", "edge", Direction.UP)
            .build();
    Course course = course(device, -1, 1);
    for (double t : new double[] {-0.9, 0, 0.7}) {
      double c = Math.cos(t);
      double s = Math.sin(t);
      // wind keeps square: total 40 N at 7/6 m; snow 120 N at 1 m keeps plumb
      double moment = 2 * (40 * c - 3 * s) + 7 + 40 * 7.0 / 6 - 120 * c;
      assertThat(Rest.drivingForce(course, t).orElseThrow()).isCloseTo(moment, within(1e-9));
    }
  }

  @Test
  void factorsOfTheCaseCount() {
    Device device =
        lid()
            .weight("own", "lid", "middle", 12)
            .force("hand", "lid", "edge", Vector.of(0, 10))
            .loadCase(new LoadCase("heavy", Map.of("own", 2.0), 1.5))
            .build();
    Course course =
        (Course) Travel.of(device, device.loadCase("heavy"), Drive.turn("lid"), -1, 1, List.of());
    assertThat(Rest.drivingForce(course, 0).orElseThrow())
        .isCloseTo(-12 * G * 3 + 2 * 10 * 1.5, within(1e-9));
  }

  /** A rafter and a weighted strut of equal length, whose shoe slides on the floor. */
  @Test
  void strutsWeighHalfAtEachEnd() {
    Device device =
        Device.named("propped rafter")
            .point("left", -1, 0)
            .point("right", 1, 0)
            .point("ridge", 0, 1)
            .member("lid", "left", "ridge")
            .joint("right")
            .pin("hinge", "left", "lid", "ground")
            .roller("floor", "right", "right", "ground", Direction.UP)
            .connect(new Strut("prop", End.of("lid", "ridge"), End.of("right", "right"), 6))
            .force("push", "right", "right", Vector.of(-20, 0))
            .build();
    Course course = course(device, -0.5, 0.5);
    double angle = Math.PI / 4 + 0.2;
    double root = Math.sqrt(2);
    assertThat(Rest.drivingForce(course, 0.2).orElseThrow())
        .isCloseTo(-3 * G * root * Math.cos(angle) + 40 * root * Math.sin(angle), within(1e-9));
  }

  /** The same with a member in place of the strut and a load on the pin between them. */
  @Test
  void pinsAreLoaded() {
    Device device =
        Device.named("propped rafter")
            .point("left", -1, 0)
            .point("right", 1, 0)
            .point("ridge", 0, 1)
            .member("lid", "left", "ridge")
            .member("prop", "ridge", "right")
            .pin("hinge", "left", "lid", "ground")
            .pin("top", "ridge", "lid", "prop")
            .roller("floor", "right", "prop", "ground", Direction.UP)
            .force("hand", "top", "ridge", Vector.of(5, -30))
            .force("kick", "hinge", "left", Vector.of(500, 500))
            .build();
    Course course = course(device, -0.5, 0.5);
    double angle = Math.PI / 4 + 0.2;
    assertThat(Rest.drivingForce(course, 0.2).orElseThrow())
        .isCloseTo(Math.sqrt(2) * (-5 * Math.sin(angle) - 30 * Math.cos(angle)), within(1e-9));
  }

  @Test
  void aTurnedScrewDrivesItsOwnLength() {
    DeviceBuilder builder =
        Device.named("screw jack")
            .point("low", 0, 0)
            .point("head", 0, 0.3)
            .joint("head")
            .roller("guide", "head", "head", "ground", Direction.RIGHT)
            .connect(
                new Screw(
                    "spindle", End.of("head", "head"), End.of("ground", "low"), 0.006, 0.012, 0))
            .weight("barrel", "head", "head", 80)
            .load(new Couple("crank", "spindle", 0.5));
    Course course = (Course) Travel.of(builder.build(), Drive.length("spindle"), -0.05, 0.05);
    assertThat(Rest.drivingForce(course, 0.01).orElseThrow())
        .isCloseTo(0.5 * 2 * Math.PI / 0.006 - 80 * G, within(1e-8));
  }

  @Test
  void aPlaceBeyondTheEndIsRefused() {
    Course course = course(lid().weight("own", "lid", "middle", 12).build(), -1, 1);
    assertThatThrownBy(() -> Rest.drivingForce(course, 1.2))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("drive");
  }

  @Test
  void aCourseWithoutLengthHasNoPlaces() {
    assertThat(Rest.over(course(lid().weight("own", "lid", "middle", 12).build(), 0, 0))).isEmpty();
  }
}
