package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** The search for one unknown number: each kind of result, each unknown, each mistake. */
class FindTest {

  private static final double G = 9.80665;

  /** A press lever: the hand presses at 1.6 m, the must pushes back at 0.25 m. */
  private static DeviceBuilder press() {
    return Device.named("press lever")
        .point("hinge", 0, 0)
        .point("ram", 0.25, 0)
        .point("middle", 0.8, 0)
        .point("grip", 1.6, 0)
        .member("lever", "hinge", "ram", "middle", "grip")
        .pin("hinge", "hinge", "lever", "ground")
        .force("hand", "lever", "grip", Vector.of(0, -200))
        .weight("own", "lever", "middle", 5)
        .load(new Couple("twist", "lever", 0))
        .load(spread())
        .sought("must", "lever", "ram", Direction.UP);
  }

  private static SpreadLoad spread() {
    return new SpreadLoad(
        "sacks",
        "lever",
        "hinge",
        "middle",
        0,
        0,
        Optional.of(Direction.DOWN),
        SpreadLoad.Per.LENGTH);
  }

  private static double one(Find found) {
    Find.At at = (Find.At) found;
    assertThat(at.values()).hasSize(1);
    assertThat(at.intervals()).isEmpty();
    return at.values().get(0);
  }

  /** 0.25 must = 1.6 hand + 0.8 · 5 g. */
  @Test
  void eachUnknownNumber() {
    Device press = press().build();
    double target = (1.6 * 300 + 0.8 * 5 * G) / 0.25;
    assertThat(one(Find.of(Unknown.force(press, "hand"), 0, 1000, "must.value", target)))
        .isCloseTo(300, within(1e-8));
    double mass = 5 + 1.6 * 100 / (0.8 * G);
    assertThat(one(Find.of(Unknown.mass(press, "own"), 0, 100, "must.value", target)))
        .isCloseTo(mass, within(1e-9));
    assertThat(one(Find.of(Unknown.couple(press, "twist"), -900, 900, "must.value", target)))
        .isCloseTo(-160, within(1e-9));
    assertThat(
            one(
                Find.of(
                    Unknown.pointAlong(press, "grip", Direction.RIGHT),
                    0,
                    3,
                    "must.value",
                    target)))
        .isCloseTo(0.8, within(1e-11));
  }

  @Test
  void theDirectionOfALoadOrOfASoughtEffort() {
    Device press = press().build();
    Find found =
        Find.of(
            Unknown.direction(press, "hand"),
            -Math.PI,
            0,
            "must.value",
            (160 + 0.8 * 5 * G) / 0.25);
    List<Double> angles = ((Find.At) found).values();
    // half the moment: the hand is turned by 60 degrees either way
    assertThat(angles).hasSize(2);
    assertThat(Math.toDegrees(angles.get(0))).isCloseTo(-150, within(1e-9));
    assertThat(Math.toDegrees(angles.get(1))).isCloseTo(-30, within(1e-9));
    double straight = Balance.of(press).number("must.value").orElseThrow();
    Find slanted =
        Find.of(
            Unknown.direction(press, "must"), 0.1, Math.PI / 2 - 0.1, "must.value", 2 * straight);
    assertThat(Math.toDegrees(one(slanted))).isCloseTo(30, within(1e-9));
  }

  @Test
  void theReachAndTheDepthOfASpreadLoad() {
    Device press =
        Device.named("gate that holds water")
            .point("sill", 0, 0)
            .point("surface", 0, 1)
            .point("top", 0, 2)
            .member("gate", "sill", "top")
            .pin("sill", "sill", "gate", "ground")
            .load(
                new SpreadLoad(
                    "water",
                    "gate",
                    "sill",
                    "surface",
                    9810,
                    0,
                    Optional.empty(),
                    SpreadLoad.Per.LENGTH))
            .sought("prop", "gate", "top", Direction.RIGHT)
            .build();
    // the thrust is to the left of the way up; depth: 9810 h³ / 6 = 2 P, reach: 9810 h² / 6 = 2 P
    assertThat(one(Find.of(Unknown.depth(press, "water"), 0.01, 2, "prop.value", 2000)))
        .isCloseTo(Math.cbrt(6 * 4000 / 9810.0), within(1e-11));
    assertThat(one(Find.of(Unknown.reach(press, "water"), 0.01, 2, "prop.value", 2000)))
        .isCloseTo(Math.sqrt(6 * 4000 / 9810.0), within(1e-11));
    assertThat(one(Find.of(Unknown.depth(press, "water"), -1, 2, "prop.value", 2000)))
        .as("values without a device have no answer")
        .isCloseTo(Math.cbrt(6 * 4000 / 9810.0), within(1e-11));
    assertThatThrownBy(() -> Find.of(Unknown.depth(press, "water"), -2, -1, "prop.value", 2000))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("water")
        .hasMessageContaining("a number above 0");
  }

  @Test
  void theDirectionOfASpreadLoad() {
    Device press =
        press().build().toBuilder()
            .load(
                new SpreadLoad(
                    "rain",
                    "lever",
                    "hinge",
                    "grip",
                    10,
                    10,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.LENGTH))
            .build();
    double upright = Balance.of(press).number("must.value").orElseThrow();
    double rain = 16 * 0.8 / 0.25;
    Find found =
        Find.of(Unknown.direction(press, "rain"), -1.5, -0.1, "must.value", upright - rain / 2);
    assertThat(Math.toDegrees(one(found))).isCloseTo(-30, within(1e-9));
  }

  @Test
  void noSolutionTellsTheNearest() {
    Device press = press().build();
    double drawn = Balance.of(press).number("must.value").orElseThrow();
    Find found = Find.of(Unknown.direction(press, "hand"), -Math.PI, 0, "must.value", drawn + 8);
    assertThat(found)
        .isInstanceOfSatisfying(
            Find.None.class,
            none -> {
              Find.Miss miss = none.nearest().orElseThrow();
              assertThat(miss.value()).isCloseTo(-Math.PI / 2, within(1e-6));
              assertThat(miss.answer()).isCloseTo(drawn, within(1e-8));
            });
  }

  @Test
  void theTargetMayJustBeReached() {
    Device press = press().build();
    double drawn = Balance.of(press).number("must.value").orElseThrow();
    assertThat(one(Find.of(Unknown.direction(press, "hand"), -3, 0, "must.value", drawn)))
        .isCloseTo(-Math.PI / 2, within(1e-6));
  }

  @Test
  void whatDoesNotMatterIsAlwaysRight() {
    Device press = press().build();
    assertThat(Find.of(Unknown.force(press, "hand"), -50, 50, "hinge.x on lever", 0))
        .isEqualTo(new Find.Always());
    assertThat(Find.of(Unknown.force(press, "hand"), -1, 0.1, "hinge.x on lever", 0))
        .isEqualTo(new Find.Always());
  }

  @Test
  void aSizeThatComesToZeroIsFound() {
    Device press = press().build();
    // the pin carries nothing where all moments about the ram cancel
    Find found = Find.of(Unknown.force(press, "hand"), -500, 100, "hinge.size", 0);
    assertThat(one(found)).isCloseTo(-0.55 * 5 * G / 1.35, within(1e-8));
  }

  @Test
  void aPoleIsNoSolution() {
    Device press = press().build();
    // the ram passes the hinge: the force changes sign through infinity
    Find found =
        Find.of(Unknown.pointAlong(press, "ram", Direction.RIGHT), -0.4, 0.1, "must.value", 0);
    assertThat(found).isInstanceOf(Find.None.class);
  }

  @Test
  void anAngleThatPassesZeroIsNoJump() {
    Device press = press().build();
    // the resultant of the hand alone points right where its direction is 0
    Find found =
        Find.of(Unknown.direction(press, "hand"), -0.5, 0.7, "resultant(hand).direction", 0);
    assertThat(one(found)).isCloseTo(0, within(1e-11));
  }

  @Test
  void withoutAnyAnswerThereIsNoNearest() {
    Device loose =
        Device.named("loose lever")
            .point("hinge", 0, 0)
            .point("grip", 1, 0)
            .member("lever", "hinge", "grip")
            .pin("hinge", "hinge", "lever", "ground")
            .force("hand", "lever", "grip", Vector.of(0, -20))
            .build();
    Find found = Find.of(Unknown.force(loose, "hand"), 1, 2, "hinge.y on lever", 5);
    assertThat(found).isEqualTo(new Find.None(Optional.empty()));
  }

  /** A crate on a level floor takes no push at all as long as the rope does not pull. */
  @Test
  void manyNeighboursMayBeRight() {
    Device crate =
        Device.named("crate on a floor")
            .point("crate", 0, 0)
            .joint("crate")
            .connect(new Contact("floor", "crate", "crate", "ground", Direction.UP, 0.5, 0.4))
            .weight("own", "crate", "crate", 20)
            .force("rope", "crate", "crate", Vector.of(-60, 0))
            .build();
    DoubleFunction<Device> rope = Unknown.force(crate, "rope");
    Find found = Find.of(size -> rope.apply(Math.max(0, size)), -1, 100, "friction factor", 0);
    assertThat(found)
        .isInstanceOfSatisfying(
            Find.At.class,
            at -> {
              assertThat(at.values()).isEmpty();
              assertThat(at.intervals()).hasSize(1);
              assertThat(at.intervals().get(0).from()).isEqualTo(-1);
              // below this factor the search for it takes any friction as enough
              assertThat(at.intervals().get(0).to()).isBetween(0.0, 0.01 * 20 * G);
            });
  }

  @Test
  void theCaseOfTheAskCounts() {
    Device press =
        press()
            .loadCase(new LoadCase("plain", Map.of(), 1))
            .loadCase(new LoadCase("jerk", Map.of("hand", 2.0), 1))
            .build();
    double target = (1.6 * 300 + 0.8 * 5 * G) / 0.25;
    assertThat(one(Find.of(Unknown.force(press, "hand"), 0, 900, "must.value in jerk", target)))
        .isCloseTo(150, within(1e-8));
    assertThatThrownBy(() -> Find.of(Unknown.force(press, "hand"), 0, 900, "must.value in hail", 1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("hail");
  }

  @Test
  void overACourse() {
    Device press =
        Device.named("press lever")
            .point("hinge", 0, 0)
            .point("ram", 0.25, 0)
            .point("grip", 1.6, 0)
            .member("lever", "hinge", "ram", "grip")
            .pin("hinge", "hinge", "lever", "ground")
            .force("hand", "lever", "grip", Vector.of(0, -200))
            .load(
                new Sought("hold", Sought.Want.COUPLE, "lever", Optional.empty(), Optional.empty()))
            .build();
    Course course = (Course) Travel.of(press, Drive.turn("lever"), -1.5, 1.5);
    Find found = Find.over(course, Ask.parse("hold.value"), 160);
    List<Double> turns = ((Find.At) found).values();
    assertThat(turns).hasSize(2);
    assertThat(turns.get(0)).isCloseTo(-Math.PI / 3, within(1e-10));
    assertThat(turns.get(1)).isCloseTo(Math.PI / 3, within(1e-10));
    assertThat(Find.over(course, "hold.value", 400)).isInstanceOf(Find.None.class);
    assertThat(Find.over(course, "hinge.y on lever", 200)).isEqualTo(new Find.Always());
  }

  @Test
  void mistakesAreTold() {
    Device press = press().build();
    DoubleFunction<Device> hand = Unknown.force(press, "hand");
    assertThatThrownBy(() -> Find.of(hand, 2, 2, "must.value", 0))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("range")
        .hasMessageContaining("2.0 to 2.0");
    assertThatThrownBy(() -> Find.of(hand, 2, Double.POSITIVE_INFINITY, "must.value", 0))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("finite");
    assertThatThrownBy(() -> Find.of(hand, 0, 1, "must.value", Double.NaN))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("target");
    assertThatThrownBy(() -> Find.of(hand, 0, 1, "outcome", 1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("answered by a number");
    assertThatThrownBy(() -> Find.of(hand, 0, 1, "nobody.x", 1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("nobody");
  }

  @Test
  void unknownsNameWhatTheyWant() {
    Device press = press().force("nothing", "lever", "ram", Vector.ZERO).build();
    assertThatThrownBy(() -> Unknown.mass(press, "hand")).hasMessageContaining("a weight");
    assertThatThrownBy(() -> Unknown.force(press, "nothing")).hasMessageContaining("than zero");
    assertThatThrownBy(() -> Unknown.direction(press, "own")).hasMessageContaining("a direction");
    assertThatThrownBy(() -> Unknown.couple(press, "own")).hasMessageContaining("a couple");
    assertThatThrownBy(() -> Unknown.depth(press, "own")).hasMessageContaining("a spread load");
    assertThatThrownBy(() -> Unknown.pointAlong(press, "toe", Direction.UP))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("toe");
    assertThatThrownBy(() -> Unknown.mass(press, "own").apply(Double.NaN))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("a finite number");
  }

  @Test
  void allElseIsKept() {
    Device press =
        press()
            .gravity(Vector.of(1, -9))
            .count("hinge", 2)
            .advantage("hand", "must")
            .loadCase(new LoadCase("jerk", Map.of("hand", 2.0), 1))
            .build();
    assertThat(Unknown.mass(press, "own").apply(5)).isEqualTo(press);
    assertThat(Unknown.pointAlong(press, "ram", Direction.UP).apply(0)).isEqualTo(press);
    assertThat(Unknown.slope(press).apply(0)).isEqualTo(press);
    Device plain = press().build();
    assertThat(Unknown.couple(plain, "twist").apply(0)).isEqualTo(plain);
  }

  /** A road that rises to the right is like gravity that leans to the left. */
  @Test
  void aSlopeTurnsGravity() {
    Device sloped = Unknown.slope(press().build()).apply(Math.PI / 6);
    assertThat(sloped.gravity().x()).isCloseTo(-G / 2, within(1e-12));
    assertThat(sloped.gravity().y()).isCloseTo(-G * Math.sqrt(3) / 2, within(1e-12));
  }
}
