package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** Published problems in which a place, an angle, a length or a depth is sought. */
class FindReferenceTest {

  private static final double FOOT = 0.3048;
  private static final double POUND = 4.4482216152605;

  private static List<Double> values(Find found) {
    return ((Find.At) found).values();
  }

  private static double one(Find found) {
    assertThat(values(found)).hasSize(1);
    return values(found).get(0);
  }

  private static Sought couple(String name, String member) {
    return new Sought(name, Sought.Want.COUPLE, member, Optional.empty(), Optional.empty());
  }

  /** College Physics 2e (OpenStax, 2022), chapter 9, Problems and Exercises 20. */
  @Test
  void placeOfAFulcrum() {
    Device lever =
        Device.named("lever over a fulcrum")
            .gravity(Vector.of(0, -9.80))
            .point("load", 0, 0)
            .point("fulcrum", 1, 0)
            .point("hand", 2, 0)
            .member("lever", "load", "fulcrum", "hand")
            .pin("fulcrum", "fulcrum", "lever", "ground")
            .weight("stone", "lever", "load", 250)
            .sought("push", "lever", "hand", Direction.DOWN)
            .build();
    Find found =
        Find.of(
            Unknown.pointAlong(lever, "fulcrum", Direction.RIGHT), -0.95, 0.95, "push.value", 300);
    // two digits are published: 0.22; in full 600 / 2750
    assertThat(1 + one(found))
        .isCloseTo(0.22, within(0.005))
        .isCloseTo(600.0 / 2750, within(1e-12));
  }

  /** College Physics 2e (OpenStax, 2022), Example 9.1. */
  @Test
  void placeOfAWeightOnASeesaw() {
    Device seesaw =
        Device.named("seesaw")
            .gravity(Vector.of(0, -9.80))
            .point("left", -1.6, 0)
            .point("pivot", 0, 0)
            .point("right", 1, 0)
            .member("plank", "left", "pivot", "right")
            .pin("pivot", "pivot", "plank", "ground")
            .weight("first", "plank", "left", 26)
            .weight("second", "plank", "right", 32)
            .load(couple("rest", "plank"))
            .build();
    Find found =
        Find.of(Unknown.pointAlong(seesaw, "right", Direction.RIGHT), -0.9, 2, "rest.value", 0);
    assertThat(1 + one(found)).isCloseTo(1.30, within(0.005)).isCloseTo(1.3, within(1e-12));
  }

  /**
   * Engineering Statics: Open and Interactive (Baker, Haynes), chapter 4, exercise on the balance
   * of moments of a Z-shape: two solutions.
   */
  @Test
  void twoDirectionsOfAForce() {
    DeviceBuilder builder =
        Device.named("bent bar")
            .point("A", -2 * FOOT, 0)
            .point("B", 0, 0)
            .point("C", 0, 1.5 * FOOT)
            .point("D", 2 * FOOT, 1.5 * FOOT)
            .member("bar", "A", "B", "C", "D")
            .pin("pivot", "B", "bar", "ground")
            .force("first", "bar", "A", polar(100, 255))
            .force("second", "bar", "C", polar(80, 200))
            .force("third", "bar", "D", polar(180, 0))
            .load(couple("rest", "bar"));
    Find found =
        Find.of(Unknown.direction(builder.build(), "third"), -2 * Math.PI, 0, "rest.value", 0);
    assertThat(values(found)).hasSize(2);
    assertThat(-Math.toDegrees(values(found).get(1))).isCloseTo(5.965, within(0.0005));
    assertThat(-Math.toDegrees(values(found).get(0))).isCloseTo(100.3, within(0.05));
  }

  private static Vector polar(double pounds, double degrees) {
    return Direction.ofAngle(Math.toRadians(degrees)).times(pounds * POUND);
  }

  /**
   * University Physics Volume 1 (OpenStax, 2016), chapter 12, Challenge Problem 77. The printed
   * angles, 42.2 and 17.8 degrees, belong to the wheels changed over; as drawn it is 13.9 and 46.1.
   */
  @Test
  void angleOfARodOverAWedge() {
    assertThat(Math.toDegrees(restingTurn(1, 2))).isCloseTo(-13.9, within(0.05));
    assertThat(60 + Math.toDegrees(restingTurn(1, 2))).isCloseTo(46.1, within(0.05));
    assertThat(Math.toDegrees(restingTurn(2, 1))).isCloseTo(-42.2, within(0.05));
    assertThat(60 + Math.toDegrees(restingTurn(2, 1))).isCloseTo(17.8, within(0.05));
  }

  /** Turn from level at which it rests, found by search and by following the motion. */
  private static double restingTurn(double rightWeight, double leftWeight) {
    double third = Math.toRadians(30);
    double right = 1 / Math.tan(2 * third);
    double left = -1 / Math.tan(third);
    DeviceBuilder builder =
        Device.named("rod over a wedge")
            .gravity(Vector.of(0, -1))
            .point("A", right, -1)
            .point("B", left, -1)
            .point("M", (right + left) / 2, -1)
            .member("rod", "B", "M", "A")
            .roller("right face", "A", "rod", "ground", Direction.ofAngle(third))
            .roller("left face", "B", "rod", "ground", Direction.ofAngle(4 * third))
            .weight("right wheel", "rod", "A", rightWeight)
            .weight("left wheel", "rod", "B", leftWeight)
            .weight("own", "rod", "M", 0.5);
    Device free = builder.build();
    Device held = free.toBuilder().load(couple("rest", "rod")).build();
    DoubleFunction<Device> turned = Unknown.turnOf(held, List.of("A", "M"), "B");
    double bySearch = one(Find.of(turned, -1.5, 1.5, "rest.value", 0));
    Course course = (Course) Travel.of(free, Drive.turn("rod"), -1, 0.5);
    List<Rest.Place> places =
        Rest.over(course).stream().filter(one -> one.kind() != Rest.Kind.AGAINST_END).toList();
    assertThat(places).hasSize(1);
    assertThat(places.get(0).kind()).isEqualTo(Rest.Kind.STABLE);
    assertThat(places.get(0).drive()).isCloseTo(bySearch, within(1e-10));
    return bySearch;
  }

  /**
   * Engineering Statics: Open and Interactive (Baker, Haynes), chapter 6, exercise on a crossed
   * frame with a cylinder in its upper V: how far from the crossing the cylinder touches.
   */
  @Test
  void whereACylinderTouches() {
    DoubleFunction<Device> family = FindReferenceTest::crossedFrame;
    double touches = one(Find.of(family, 1 * FOOT, 2.9 * FOOT, "level.value", 0));
    assertThat(touches / FOOT).isCloseTo(2.078, within(0.0005));
    Balance balance = Balance.of(family.apply(touches));
    assertThat(balance.number("rope.tension").orElseThrow() / POUND).isCloseTo(192.2, within(0.05));
    assertThat(balance.number("right touch.normal").orElseThrow() / POUND)
        .isCloseTo(150, within(0.05));
    assertThat(balance.number("left foot.y on rising").orElseThrow() / POUND)
        .isCloseTo(75, within(0.005));
  }

  /** The frame with a cylinder that touches both pieces at a distance from the crossing. */
  private static Device crossedFrame(double distance) {
    double c = Math.cos(Math.PI / 6);
    double s = 0.5;
    double radius = 1.2 * FOOT;
    return Device.named("crossed frame")
        .point("B", 0, 0)
        .point("left foot", -5 * FOOT * s, -5 * FOOT * c)
        .point("right foot", 5 * FOOT * s, -5 * FOOT * c)
        .point("left top", -3 * FOOT * s, 3 * FOOT * c)
        .point("right top", 3 * FOOT * s, 3 * FOOT * c)
        .point("D", distance * s, distance * c)
        .point("E", -distance * s, distance * c)
        .point("centre", distance * s - radius * c, distance * c + radius * s)
        .member("rising", "left foot", "B", "D", "right top")
        .member("falling", "right foot", "B", "E", "left top")
        .member(new Member("cylinder", List.of("centre"), List.of(), List.of(), 1))
        .pin("crossing", "B", "rising", "falling")
        .pin("left foot", "left foot", "rising", "ground")
        .roller("right foot", "right foot", "falling", "ground", Direction.UP)
        .line("rope", End.of("rising", "right top"), End.of("falling", "left top"))
        .roller("right touch", "D", "cylinder", "rising", Direction.from(-c, s))
        .roller("left touch", "E", "cylinder", "falling", Direction.from(c, s))
        .weight("own", "cylinder", "centre", 150 * POUND / 9.80665)
        .load(couple("level", "cylinder"))
        .build();
  }

  /** University Physics Volume 1 (OpenStax, 2016), chapter 6, Problem 55. */
  @Test
  void slopeOnWhichAParcelKeepsSliding() {
    Device parcel =
        Device.named("parcel on a ramp")
            .gravity(Vector.of(0, -9.80))
            .point("parcel", 0, 0)
            .joint("parcel")
            .connect(new Contact("ramp", "parcel", "parcel", "ground", Direction.UP, 0.1, 0.1))
            .weight("own", "parcel", "parcel", 5)
            .build();
    Find found =
        Find.of(Unknown.slope(parcel), Math.toRadians(1), Math.toRadians(30), "friction factor", 1);
    assertThat(Math.toDegrees(one(found))).isCloseTo(5.71, within(0.005));
    assertThat(one(found)).isCloseTo(Math.atan(0.1), within(1e-8));
  }

  /** University Physics Volume 1 (OpenStax, 2016), chapter 12, Additional Problem 70. */
  @Test
  void leastAngleOfWhatLeansOnAWall() {
    double drawn = Math.toRadians(60);
    Device pencil =
        Device.named("stick on a wall")
            .point("foot", 0, 0)
            .point("centre", 0.09 * Math.cos(drawn), 0.09 * Math.sin(drawn))
            .point("tip", 0.2 * Math.cos(drawn), 0.2 * Math.sin(drawn))
            .member("stick", "foot", "centre", "tip")
            .connect(new Contact("floor", "foot", "stick", "ground", Direction.UP, 0.8, 0.8))
            .connect(new Contact("wall", "tip", "stick", "ground", Direction.LEFT, 0, 0))
            .weight("own", "stick", "centre", 0.01)
            .build();
    DoubleFunction<Device> turned = Unknown.turnOf(pencil, List.of("centre", "tip"), "foot");
    Find found = Find.of(turned, Math.toRadians(-50), Math.toRadians(20), "friction factor", 1);
    assertThat(Math.toDegrees(drawn + one(found))).isCloseTo(29.4, within(0.05));
    assertThat(Math.tan(drawn + one(found))).isCloseTo(9 / (20 * 0.8), within(1e-8));
  }

  /**
   * Engineering Statics: Open and Interactive (Baker, Haynes), section 7.9, mud on a concrete wall.
   * It prints 1.99 m and 1.98 m; in full it is 1.988 m.
   */
  @Test
  void depthAtWhichAWallTips() {
    Device wall =
        Device.named("wall that holds mud")
            .point("toe", 0, 0)
            .point("heel", 0.8, 0)
            .point("top", 0.8, 3)
            .point("middle", 0.4, 1.5)
            .point("surface", 0.8, 1)
            .member("wall", "toe", "heel", "top")
            .pin("stop", "toe", "wall", "ground")
            .roller("bed", "heel", "wall", "ground", Direction.UP)
            .weight("own", "wall", "middle", 2400 * 0.8 * 3)
            .load(mud())
            .build();
    double depth = one(Find.of(Unknown.depth(wall, "mud"), 0.1, 3, "bed.normal", 0));
    assertThat(depth).isCloseTo(1.99, within(0.005)).isCloseTo(1.988, within(0.0005));
    assertThat(depth).isCloseTo(Math.cbrt(6 * 2400 * 0.96 / 1760), within(1e-11));
    Device onBase =
        Device.named("wall on its base")
            .point("toe", 0, 0)
            .point("foot", 0.4, 0)
            .point("heel", 0.8, 0)
            .point("middle", 0.4, 1.5)
            .point("surface", 0.8, 1)
            .member("wall", "toe", "foot", "heel")
            .connect(new ContactBase("base", "foot", "wall", "ground", Direction.UP, 0.8, 5, 5))
            .weight("own", "wall", "middle", 2400 * 0.8 * 3)
            .load(mud())
            .build();
    Find atLimit = Find.of(Unknown.depth(onBase, "mud"), 0.5, 3, "greatest multiple(mud)", 1);
    assertThat(one(atLimit)).isCloseTo(depth, within(1e-7));
  }

  private static SpreadLoad mud() {
    return new SpreadLoad(
        "mud",
        "wall",
        "heel",
        "surface",
        1760 * 9.80665,
        0,
        Optional.of(Direction.LEFT),
        SpreadLoad.Per.LENGTH);
  }
}
