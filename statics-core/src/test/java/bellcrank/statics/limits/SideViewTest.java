package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Map;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Side views that are read from a balance, and those that are refused. */
class SideViewTest {

  private static final Offset<Double> EXACT = within(1e-9);
  private static final double G = 9.80665;

  /** A post on a sill, a beam that swings on its head, a barrel on one arm. */
  private static DeviceBuilder derrick() {
    return Device.named("barrel derrick")
        .point("foot", 0, 0)
        .point("waist", 0, 1)
        .point("head", 0, 2)
        .point("hook", 1, 2)
        .point("tail", -1, 2)
        .point("peg", -1, 0)
        .point("far peg", -2, 0)
        .member("post", "foot", "head")
        .member("beam", "tail", "head", "hook")
        .connect(new ContactBase("sill", "foot", "post", Ground.NAME, Direction.UP, 0.6, 0.5, 0.4))
        .pin("pivot", "head", "beam", "post")
        .weight("own", "post", "waist", 200 / G)
        .weight("barrel", "beam", "hook", 800 / G);
  }

  private static Balance tied(String peg) {
    return Balance.of(
        derrick().line("tie", End.of("beam", "tail"), End.of(Ground.NAME, peg)).build());
  }

  private static SideView upright() {
    return SideView.from(tied("peg"), "sill", 0.4);
  }

  private static double pressing(SideView view) {
    return Balance.of(view.device()).number("sill.normal").orElseThrow();
  }

  @Test
  void loadsActAtTheirHeightsAndTheBaseBearsWhatItBearsInThePlane() {
    SideView view = upright();
    assertThat(view.loads())
        .extracting(SideLoad::name, SideLoad::height, SideLoad::offset)
        .containsExactly(tuple("own", 1.0, 0.0), tuple("barrel", 2.0, 0.0));
    assertThat(view.loads().get(1).down()).isCloseTo(800, EXACT);
    // the tie pulls 800 N straight down over 2 m
    assertThat(view.links()).hasSize(1);
    assertThat(view.links().get(0).pullPerLength()).isCloseTo(400, EXACT);
    assertThat(pressing(view)).isCloseTo(1800, EXACT);
    assertThat(view.friction()).isCloseTo(0.5, EXACT);
  }

  @Test
  void offsetsOfLoadAndAnchorAddUp() {
    SideTip barrel = SideTip.of(upright().withOffset("barrel", 0.2));
    assertThat(barrel.breadthNeeded(1).orElseThrow()).isCloseTo(2 * 160 / 1800.0, EXACT);
    SideTip both = SideTip.of(upright().withOffset("barrel", 0.2).withOffset("tie", 0.1));
    assertThat(both.breadthNeeded(1).orElseThrow()).isCloseTo(2 * 240 / 1800.0, EXACT);
    // the tie then pulls 800 × 0.1 / 2 sideways as well
    assertThat(Balance.of(both.device()).number("sill.friction").orElseThrow())
        .isCloseTo(-40, EXACT);
  }

  @Test
  void aTieInThePlaneDoesNotPullALeaningDeviceOver() {
    SideReach reach = SideTip.of(upright()).greatestLean(SideEdge.RIGHT);
    double sine = Math.sin(((SideReach.At) reach).angle());
    // the tie goes through its peg: 800 × 2 sin + 200 × 1 sin against (1000 + 800 cos²) × 0.2
    assertThat(1800 * sine).isCloseTo((1000 + 800 * (1 - sine * sine)) * 0.2, within(1e-6));
  }

  @Test
  void frictionAlongThePlaneLeavesLessSideways() {
    // the slanting tie pulls 400 N along, 800 N down
    SideView view = SideView.from(tied("far peg"), "sill", 0.4);
    double used = 400 / 1800.0;
    assertThat(view.friction()).isCloseTo(Math.sqrt(0.25 - used * used), EXACT);
    assertThat(pressing(view)).isCloseTo(1800, EXACT);
  }

  @Test
  void allKindsOfLoadsAndSupportsCloseOnTheBase() {
    Device device =
        derrick()
            .point("low", 0.5, 1)
            .load(
                new SpreadLoad(
                    "sacks",
                    "beam",
                    "head",
                    "hook",
                    0,
                    300,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.LENGTH))
            .load(
                new SpreadLoad(
                    "twist",
                    "beam",
                    "head",
                    "hook",
                    60,
                    -60,
                    Optional.empty(),
                    SpreadLoad.Per.LENGTH))
            .load(
                new Spring(
                    "spring", End.of(Ground.NAME, "far peg"), End.of("beam", "tail"), 100, 1))
            .load(new Spring("inner spring", End.of("post", "foot"), End.of("beam", "tail"), 50, 1))
            .force("wind", "post", "waist", Vector.of(30, 5))
            .sought("hand", "beam", "tail", Direction.DOWN)
            .point("rest", 3, 0)
            .point("prop head", 3, 2)
            .member("prop", "prop head", "rest")
            .connect(new Roller("rest", "rest", "prop", Ground.NAME, Direction.UP, Sides.ONE))
            .pin("joint", "prop head", "prop", "arm")
            .member("arm", "hook", "prop head")
            .pin("splice", "hook", "arm", "beam")
            .weight("sack on the arm", "arm", "prop head", 10)
            .connect(new Strut("brace", End.of("prop", "rest"), End.of("arm", "hook"), 8))
            .build();
    Balance balance = Balance.of(device);
    SideView view = SideView.from(balance, "sill", 0.4);
    double normal = balance.number("sill.normal").orElseThrow();
    assertThat(pressing(view)).isCloseTo(normal, within(1e-9 * normal));
    assertThat(view.supports()).extracting(SideSupport::name).containsExactly("rest");
    assertThat(view.links()).extracting(SideLink::name).containsExactly("spring");
    assertThat(view.loads())
        .extracting(SideLoad::name)
        .containsExactly(
            "own",
            "barrel",
            "sacks",
            "twist start",
            "twist end",
            "wind",
            "hand",
            "sack on the arm",
            "weight of brace");
    assertThat(view.without("rest").supports()).isEmpty();
    assertThat(view.withOffset("rest", 0.3).supports().get(0).offset()).isEqualTo(0.3);
  }

  @Test
  void forcesThatStaticsLeavesOpenHaveToBeDecidedFirst() {
    Device propped =
        derrick()
            .line("tie", End.of("beam", "tail"), End.of(Ground.NAME, "peg"))
            .line("second tie", End.of("post", "head"), End.of(Ground.NAME, "far peg"))
            .build();
    refused(() -> SideView.from(Balance.of(propped), "sill", 0.4), "sill: force is not known");
    Balance least = Limits.of(propped).withLeastForces().orElseThrow();
    assertThat(pressing(SideView.from(least, "sill", 0.4))).isCloseTo(1800, within(1e-6));
  }

  @Test
  void onlyABaseOnTheGroundHasASideView() {
    refused(() -> SideView.from(tied("peg"), "pivot", 0.4), "contact base on the ground");
    refused(() -> SideView.from(tied("peg"), "sole", 0.4), "\"sole\"");
    refused(() -> SideView.from(tied("peg"), "sill", 0), "sill: breadth is 0.0");
  }

  @Test
  void badFieldsAreRefusedByName() {
    SideView view = upright();
    refused(() -> view.withBreadth(-1), "sill: breadth is -1.0");
    refused(() -> view.withBreadth(Double.NaN), "breadth is NaN");
    refused(() -> view.withFriction(-0.1), "sill: friction is -0.1");
    refused(() -> view.withBaseOffset(Double.POSITIVE_INFINITY), "offset is Infinity");
    refused(() -> view.withLean(Math.PI / 2), "sill: lean is 1.57");
    refused(() -> view.withSlope(-2), "sill: slope is -2.0");
    refused(() -> view.withOffset("keg", 0.1), "one of own, barrel, tie");
    refused(() -> view.without("keg"), "\"keg\"");
    refused(() -> view.withSidePull("barrel", 1, 5), "one part of the side view only");
    refused(() -> view.withStay(new SideStay("sill", 2, 0, 1, 0)), "sill: name");
    refused(() -> new SideLoad("", 0, 0, 1, 0), "name");
    refused(() -> new SideLoad("keg", Double.NaN, 0, 1, 0), "keg: height is NaN");
    refused(() -> new SideSupport("keg", 0, Double.NaN), "keg: push is NaN");
    refused(() -> new SideLink("keg", 1, 0, 0, Double.NaN), "keg: pull per length is NaN");
    refused(() -> new SideStay("stay", 2, 1, 1, 2), "stay: anchor");
    SideTip tip = SideTip.of(view);
    refused(() -> tip.margin("barrel"), "a load with a level force");
    refused(() -> tip.breadthNeeded(-1), "factor is -1.0");
  }

  private static void refused(ThrowingCallable call, String part) {
    assertThatExceptionOfType(ModelException.class).isThrownBy(call).withMessageContaining(part);
  }

  @Test
  void aViewKnowsItsPartsAndIsEqualToItsLike() {
    SideView view =
        upright()
            .withStay(new SideStay("stay", 2, 0, 1, 0))
            .withSupport(new SideSupport("crutch", 0.1, 20))
            .withLink(new SideLink("chain", 1, 0, 0, 5))
            .withLean(0.1)
            .withSlope(-0.2)
            .withBaseOffset(0.01)
            .withFriction(0.3)
            .withBreadth(0.7);
    assertThat(view.base()).isEqualTo("sill");
    assertThat(view.breadth()).isEqualTo(0.7);
    assertThat(view.friction()).isEqualTo(0.3);
    assertThat(view.baseOffset()).isEqualTo(0.01);
    assertThat(view.lean()).isEqualTo(0.1);
    assertThat(view.slope()).isEqualTo(-0.2);
    assertThat(view.stays()).hasSize(1);
    assertThat(view.withoutStays().stays()).isEmpty();
    assertThat(view.links()).extracting(SideLink::name).containsExactly("tie", "chain");
    assertThat(view.without("chain").withBreadth(0.7).links()).hasSize(1);
    assertThat(view).isEqualTo(view.withBreadth(0.7)).isNotEqualTo(view.withBreadth(0.8));
    assertThat(view).hasSameHashCodeAs(view.withBreadth(0.7));
    assertThat(view.toString()).contains("sill", "crutch");
  }

  private static SideLoad load(SideView view, String name) {
    return view.loads().stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void eachLoadIsReadWithItsFactorAndItsHeight() {
    Device device =
        derrick()
            .line("tie", End.of("beam", "tail"), End.of(Ground.NAME, "peg"))
            .point("corner", 0.9, 0.3)
            .member("roof", "waist", "corner")
            .clamp("splice", "waist", "roof", "post")
            .load(
                new SpreadLoad(
                    "snow",
                    "roof",
                    "waist",
                    "corner",
                    100,
                    400,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.HORIZONTAL))
            .load(
                new SpreadLoad(
                    "wet",
                    "roof",
                    "waist",
                    "corner",
                    -30,
                    30,
                    Optional.empty(),
                    SpreadLoad.Per.LENGTH))
            .load(new Weight("tiles", "roof", Optional.empty(), 4))
            .force("lift", "pivot", "head", Vector.of(7, 11))
            .load(new Spring("spring", End.of("beam", "hook"), End.of(Ground.NAME, "foot"), 50, 1))
            .connect(new Strut("brace", End.of("roof", "corner"), End.of("post", "head"), 6))
            .loadCase(
                new LoadCase(
                    "gusts", Map.of("snow", 1.0, "wet", 1.5, "tiles", 0.75, "lift", 2.0), 2))
            .build();
    Balance balance = Limits.of(device).withLeastForces().orElseThrow();
    SideView view = SideView.from(balance, "sill", 0.4);
    SideLoad snow = load(view, "snow");
    // (100 + 400) / 2 × 0.9 × 2, at (100 + 800) / 1500 of the way down from 1 to 0.3
    assertThat(snow.down()).isCloseTo(450, EXACT);
    assertThat(snow.height()).isCloseTo(1 - 0.7 * 0.6, EXACT);
    double length = Math.hypot(0.9, 0.7);
    SideLoad start = load(view, "wet start");
    // left of the way down to the right is up: 30 / 2 × length × 3, upright share 0.9 / length
    assertThat(start.down()).isCloseTo(15 * length * 3 * 0.9 / length, EXACT);
    assertThat(start.height()).isCloseTo(1 - 0.7 / 3, EXACT);
    assertThat(load(view, "wet end").down()).isCloseTo(-start.down(), EXACT);
    assertThat(load(view, "wet end").height()).isCloseTo(1 - 1.4 / 3, EXACT);
    assertThat(load(view, "tiles").down()).isCloseTo(6 * G, EXACT);
    assertThat(load(view, "tiles").height()).isCloseTo(0.65, EXACT);
    assertThat(load(view, "lift").down()).isCloseTo(-44, EXACT);
    assertThat(load(view, "lift").height()).isCloseTo(2, EXACT);
    assertThat(load(view, "weight of brace").down()).isCloseTo(12 * G, EXACT);
    assertThat(load(view, "weight of brace").height()).isCloseTo(1.15, EXACT);
    SideLink spring =
        view.links().stream().filter(one -> one.name().equals("spring")).findFirst().orElseThrow();
    double stretched = Math.hypot(1, 2);
    assertThat(spring.pullPerLength()).isCloseTo(2 * 50 * (stretched - 1) / stretched, EXACT);
    assertThat(spring.height()).isCloseTo(2, EXACT);
    assertThat(spring.anchorHeight()).isCloseTo(0, EXACT);
    double normal = balance.number("sill.normal").orElseThrow();
    assertThat(pressing(view)).isCloseTo(normal, within(1e-9 * normal));
  }

  @Test
  void heightsAreThoseOfThePose() {
    Device device =
        derrick()
            .force("rope", "pivot", "head", Vector.of(0, -10))
            .line("tie", End.of(Ground.NAME, "peg"), End.of("beam", "tail"))
            .build();
    Pose raised = Pose.DRAWN.with("beam", Frame.turnAbout(Point.of(0, 2), Math.toRadians(30)));
    Balance balance = Balance.of(device, LoadCase.ALL_LOADS, raised);
    SideView view = SideView.from(balance, "sill", 0.4);
    assertThat(load(view, "barrel").height()).isCloseTo(2.5, EXACT);
    assertThat(load(view, "rope").height()).isCloseTo(2, EXACT);
    assertThat(view.links().get(0).height()).isCloseTo(1.5, EXACT);
    double normal = balance.number("sill.normal").orElseThrow();
    assertThat(pressing(view)).isCloseTo(normal, within(1e-9 * normal));
  }

  @Test
  void soughtSpreadsAndPinsOfSeveralMembersAreReadToo() {
    DeviceBuilder builder =
        derrick()
            .point("rest", 3, 0.5)
            .point("top", 3, 1.5)
            .member("arm", "hook", "rest")
            .member("kicker", "rest", "top")
            .pin("joint", "hook", "beam", "arm")
            .pin("rest", "rest", "arm", "kicker", Ground.NAME)
            .weight("keg", "kicker", "top", 30);
    Balance pinned = Balance.of(builder.build());
    double normal = pinned.number("sill.normal").orElseThrow();
    SideView view = SideView.from(pinned, "sill", 0.4);
    assertThat(pressing(view)).isCloseTo(normal, within(1e-9 * normal));
    assertThat(view.supports()).extracting(SideSupport::name).containsExactly("rest");
    assertThat(load(view, "keg").height()).isCloseTo(1.5, EXACT);

    Device sought =
        derrick()
            .load(
                new Sought(
                    "sacks",
                    Sought.Want.INTENSITY,
                    "beam",
                    Optional.of("tail"),
                    Optional.of(Direction.DOWN),
                    Optional.of("head")))
            .build();
    SideView laden = SideView.from(Balance.of(sought), "sill", 0.4);
    // the middle of the sacks is 0.5 m from the pivot, the barrel 1 m
    assertThat(load(laden, "sacks").down()).isCloseTo(1600, EXACT);
    assertThat(load(laden, "sacks").height()).isCloseTo(2, EXACT);
    assertThat(pressing(laden)).isCloseTo(2600, EXACT);
  }

  @Test
  void aBaseMayBeToldFromTheGroundsSide() {
    Device turned =
        Device.named("press house post")
            .point("foot", 1, 3)
            .point("top", 1, 5)
            .member("post", "foot", "top")
            .connect(
                new ContactBase("sole", "foot", Ground.NAME, "post", Direction.DOWN, 0.6, 0.4, 0.4))
            .weight("own", "post", "top", 50)
            .force("rope", "post", "top", Vector.of(20, 0))
            .build();
    SideView view = SideView.from(Balance.of(turned), "sole", 0.4);
    assertThat(load(view, "own").height()).isCloseTo(2, EXACT);
    assertThat(load(view, "own").down()).isCloseTo(50 * G, EXACT);
    double used = 20 / (50 * G);
    assertThat(view.friction()).isCloseTo(Math.sqrt(0.16 - used * used), EXACT);
    assertThat(view.without("own").loads()).extracting(SideLoad::name).containsExactly("rope");
  }

  @Test
  void onASlantingGroundDownIsSquareToIt() {
    Direction push = Direction.ofAngle(Math.toRadians(120));
    Device slanting =
        Device.named("ladder foot on a bank")
            .point("foot", 0, 0)
            .point("top", -1, Math.sqrt(3))
            .member("post", "foot", "top")
            .connect(new ContactBase("sole", "foot", "post", Ground.NAME, push, 3, 0.9, 0.9))
            .weight("own", "post", "top", 100 / G)
            .build();
    SideView view = SideView.from(Balance.of(slanting), "sole", 0.4);
    assertThat(load(view, "own").height()).isCloseTo(2, EXACT);
    assertThat(load(view, "own").down()).isCloseTo(100 * Math.cos(Math.PI / 6), EXACT);
    double used = Math.tan(Math.PI / 6);
    assertThat(view.friction()).isCloseTo(Math.sqrt(0.81 - used * used), EXACT);
  }
}
