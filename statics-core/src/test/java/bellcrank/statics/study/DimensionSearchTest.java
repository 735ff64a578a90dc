package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.study.SearchAnswer.Found;
import bellcrank.statics.study.SearchAnswer.Infeasible;
import bellcrank.statics.study.SearchAnswer.NoAnswer;
import bellcrank.statics.study.SearchAnswer.Stop;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Searches with known ends: published dimensions, and optima worked by hand. */
class DimensionSearchTest {

  private static Quantity newtons(double size) {
    return new Quantity(size, Dimension.FORCE);
  }

  private static Quantity metres(double length) {
    return new Quantity(length, Dimension.LENGTH);
  }

  private static Free free(String input, double from, double to) {
    return new Free(Input.parse(input), from, to);
  }

  private static double value(Found found, int k) {
    return found.settings().get(k).value();
  }

  private static Device lever(double fulcrum) {
    return Device.named("lever over a fulcrum")
        .gravity(Vector.of(0, -9.80))
        .point("load", 0, 0)
        .point("fulcrum", fulcrum, 0)
        .point("hand", 2, 0)
        .member("lever", "load", "fulcrum", "hand")
        .pin("fulcrum", "fulcrum", "lever", "ground")
        .weight("stone", "lever", "load", 250)
        .sought("push", "lever", "hand", Direction.DOWN)
        .build();
  }

  /** College Physics 2e (OpenStax, 2022), chapter 9, Problems and Exercises 20: 0.22 m. */
  @Test
  void publishedPlaceOfAFulcrum() {
    DimensionSearch search =
        DimensionSearch.of(
            Model.of(lever(1)),
            List.of(free("x of fulcrum", 0.05, 1.95)),
            List.of(Goal.atMost(Figure.parse("push.value"), newtons(300))));
    Found found = (Found) search.greatest(Figure.parse("push.value"));
    assertThat(value(found, 0))
        .isCloseTo(0.22, within(0.005))
        .isCloseTo(600.0 / 2750, within(1e-11));
    assertThat(found.stops()).containsExactly("push at most 300.000 N");
    assertThat(((FigureAnswer.Is) found.wanted().orElseThrow().answer()).si())
        .isCloseTo(300, within(1e-7));
  }

  /** College Physics 2e (OpenStax, 2022), Example 9.1: 1.30 m. */
  @Test
  void publishedPlaceOnASeesaw() {
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
    Found found =
        (Found)
            DimensionSearch.of(
                    Model.of(seesaw),
                    List.of(free("distance of right from pivot", 0.1, 3)),
                    List.of(
                        Goal.equal(Figure.parse("rest.value"), new Quantity(0, Dimension.MOMENT))))
                .anyThat();
    assertThat(value(found, 0)).isCloseTo(1.30, within(0.005)).isCloseTo(1.3, within(1e-11));
  }

  private static Sought couple(String name, String member) {
    return new Sought(name, Sought.Want.COUPLE, member, Optional.empty(), Optional.empty());
  }

  /**
   * Engineering Statics: Open and Interactive (Baker, Haynes), chapter 4, exercise on the balance
   * of moments of a Z-shape: 5.965 and 100.3 degrees below the right. Of two solutions the one next
   * to what is stated is told.
   */
  @Test
  void ofTwoPublishedDirectionsTheNearer() {
    assertThat(Math.toDegrees(zShape(0))).isCloseTo(-5.965, within(0.0005));
    assertThat(Math.toDegrees(zShape(-90))).isCloseTo(-100.3, within(0.05));
  }

  private static double zShape(double statedDegrees) {
    double foot = 0.3048;
    Device bar =
        Device.named("bent bar")
            .point("A", -2 * foot, 0)
            .point("B", 0, 0)
            .point("C", 0, 1.5 * foot)
            .point("D", 2 * foot, 1.5 * foot)
            .member("bar", "A", "B", "C", "D")
            .pin("pivot", "B", "bar", "ground")
            .force("first", "bar", "A", polar(100, 255))
            .force("second", "bar", "C", polar(80, 200))
            .force("third", "bar", "D", polar(180, statedDegrees))
            .load(couple("rest", "bar"))
            .build();
    Found found =
        (Found)
            DimensionSearch.of(
                    Model.of(bar),
                    List.of(free("direction of third", -2, 0.5)),
                    List.of(
                        Goal.equal(Figure.parse("rest.value"), new Quantity(0, Dimension.MOMENT))))
                .anyThat();
    return value(found, 0);
  }

  private static Vector polar(double pounds, double degrees) {
    return Direction.ofAngle(Math.toRadians(degrees)).times(pounds * 4.4482216152605);
  }

  /** University Physics Volume 1 (OpenStax, 2016), chapter 6, Problem 55: 5.71 degrees. */
  @Test
  void publishedSlopeThatHolds() {
    Device parcel =
        Device.named("parcel on a ramp")
            .gravity(Vector.of(0, -9.80))
            .point("parcel", 0, 0)
            .joint("parcel")
            .connect(new Contact("ramp", "parcel", "parcel", "ground", Direction.UP, 0.1, 0.1))
            .weight("own", "parcel", "parcel", 5)
            .build();
    Found found =
        (Found)
            DimensionSearch.of(
                    Model.of(parcel), List.of(free("slope", 0, 0.5)), List.of(Goal.stands()))
                .greatest(Input.slope());
    assertThat(Math.toDegrees(value(found, 0))).isCloseTo(5.71, within(0.005));
    assertThat(value(found, 0)).isCloseTo(Math.atan(0.1), within(1e-8));
  }

  /** University Physics Volume 1 (OpenStax, 2016), chapter 12, Problem 70: 29.4 degrees. */
  @Test
  void publishedLeastAngleOfWhatLeans() {
    double drawn = Math.toRadians(60);
    Device stick =
        Device.named("stick on a wall")
            .point("foot", 0, 0)
            .point("centre", 0.09 * Math.cos(drawn), 0.09 * Math.sin(drawn))
            .point("tip", 0.2 * Math.cos(drawn), 0.2 * Math.sin(drawn))
            .member("stick", "foot", "centre", "tip")
            .connect(new Contact("floor", "foot", "stick", "ground", Direction.UP, 0.8, 0.8))
            .connect(new Contact("wall", "tip", "stick", "ground", Direction.LEFT, 0, 0))
            .weight("own", "stick", "centre", 0.01)
            .build();
    Input turn = Input.turn(List.of("centre", "tip"), "foot");
    Found found =
        (Found)
            DimensionSearch.of(
                    Model.of(stick), List.of(new Free(turn, -0.9, 0.3)), List.of(Goal.stands()))
                .least(turn);
    assertThat(Math.toDegrees(drawn + value(found, 0))).isCloseTo(29.4, within(0.05));
    assertThat(Math.tan(drawn + value(found, 0))).isCloseTo(9 / (20 * 0.8), within(1e-8));
  }

  /**
   * Engineering Statics: Open and Interactive (Baker, Haynes), section 7.9, mud on a concrete wall:
   * 1.99 m. The depth is a number of one's own.
   */
  @Test
  void publishedDepthThatAWallHolds() {
    double growth = 1760 * 9.80665;
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
            .load(
                new SpreadLoad(
                    "mud",
                    "wall",
                    "heel",
                    "surface",
                    growth,
                    0,
                    Optional.of(Direction.LEFT),
                    SpreadLoad.Per.LENGTH))
            .build();
    Input depth =
        Input.of(
            "depth",
            Dimension.LENGTH,
            model -> model.device().point("surface").y(),
            (model, deep) ->
                Input.put(
                    model,
                    List.of(Input.y("surface"), Input.start("mud")),
                    List.of(deep, growth * deep)));
    Found found =
        (Found)
            DimensionSearch.of(
                    Model.of(wall),
                    List.of(new Free(depth, 0.1, 3)),
                    List.of(Goal.atLeast(Figure.parse("bed.normal"), newtons(0))))
                .greatest(depth);
    assertThat(value(found, 0)).isCloseTo(1.99, within(0.005));
    assertThat(value(found, 0)).isCloseTo(Math.cbrt(6 * 2400 * 0.96 / 1760), within(1e-10));
  }

  /** A pole hinged at its foot, pulled at its head, stayed from a point of it to the ground. */
  private static Device pole() {
    return Device.named("pole with a stay")
        .point("foot", 0, 0)
        .point("eye", 0, 2)
        .point("head", 0, 3)
        .point("peg", -2.5, 0)
        .member("pole", "foot", "eye", "head")
        .pin("foot", "foot", "pole", "ground")
        .line("stay", End.of("pole", "eye"), End.of("ground", "peg"))
        .force("pull", "pole", "head", Vector.of(500, 0))
        .build();
  }

  /**
   * The shortest stay with at most 1500 N: moments about the foot ask x·y/ℓ ≥ 500·3/1500 = 1, and
   * ℓ² = x² + y² is then least at x = y (by Lagrange's multiplier or symmetry): x = y = √2, ℓ = 2.
   */
  @Test
  void shortestStay() {
    DimensionSearch search =
        DimensionSearch.of(
            Model.of(pole()),
            List.of(free("x of peg", -4, -0.5), free("y of eye", 0.5, 2.8)),
            List.of(Goal.atMost(Figure.parse("stay.tension"), newtons(1500))));
    Found found = (Found) search.least(Figure.parse("stay.length"));
    assertThat(((FigureAnswer.Is) found.wanted().orElseThrow().answer()).si())
        .isCloseTo(2, within(1e-9));
    assertThat(value(found, 0)).isCloseTo(-Math.sqrt(2), within(1e-4));
    assertThat(value(found, 1)).isCloseTo(Math.sqrt(2), within(1e-4));
    assertThat(found.stops()).containsExactly("stay.tension at most 1500.00 N");
    assertThat(found.isCutShort()).isFalse();
    assertThat(found.settings()).allMatch(one -> one.stop() == Stop.NONE);
  }

  /** As many goals as numbers: the stay is 2.5 m long and pulls 1400 N, met to rounding. */
  @Test
  void cornerOfTwoGoals() {
    DimensionSearch search =
        DimensionSearch.of(
            Model.of(pole()),
            List.of(free("x of peg", -4, -0.5), free("y of eye", 0.5, 2.8)),
            List.of(
                Goal.atMost(Figure.parse("stay.tension"), newtons(1400)),
                Goal.atMost(Figure.parse("stay.length"), metres(2.5))));
    Found found = (Found) search.greatest(Input.y("eye"));
    // x² + y² = 6.25 and x·y = 2.5·1500/1400
    double product = 2.5 * 1500 / 1400;
    double sum = Math.sqrt(6.25 + 2 * product);
    double difference = Math.sqrt(6.25 - 2 * product);
    assertThat(value(found, 0)).isCloseTo(-(sum - difference) / 2, within(1e-9));
    assertThat(value(found, 1)).isCloseTo((sum + difference) / 2, within(1e-9));
    assertThat(found.stops()).hasSize(2);
  }

  @Test
  void whatCannotBeIsTheNearestMiss() {
    Infeasible none =
        (Infeasible)
            DimensionSearch.of(
                    Model.of(lever(1)),
                    List.of(free("x of fulcrum", 0.5, 1.5)),
                    List.of(Goal.atMost(Figure.parse("push.value"), newtons(300))))
                .anyThat();
    // with the fulcrum at 0.5 m the push is 2450·0.5/1.5 N
    assertThat(none.settings().get(0).value()).isEqualTo(0.5);
    assertThat(none.settings().get(0).words()).contains("x of fulcrum at its least value");
    assertThat(none.missed()).hasSize(1);
    assertThat(none.missed().get(0).missedBy()).isCloseTo(2450 / 3.0 - 300, within(1e-8));
  }

  /**
   * A lever that is held at both ends bears any load: no number tells by how much that is too much.
   */
  @Test
  void whatHasNoEndMissesItsBoundWithoutEnd() {
    Device held =
        Device.named("held lever")
            .point("left", 0, 0)
            .point("load", 1, 0)
            .point("right", 2, 0)
            .member("lever", "left", "load", "right")
            .pin("left", "left", "lever", "ground")
            .roller("right", "right", "lever", "ground", Direction.UP)
            .force("stone", "lever", "load", Vector.of(0, -100))
            .build();
    Figure failure = Figure.firstFailure(Variation.of("stone"));
    Infeasible none =
        (Infeasible)
            DimensionSearch.of(
                    Model.of(held),
                    List.of(free("x of load", 0.5, 1.5)),
                    List.of(Goal.atMost(failure, new Quantity(3, Dimension.NUMBER))))
                .withMost(300)
                .anyThat();
    assertThat(none.missed().get(0).missedBy()).isInfinite().isPositive();
    assertThat(none.missed().get(0).isKept()).isFalse();
  }

  @Test
  void infeasibleWithTwoNumbers() {
    Infeasible none =
        (Infeasible)
            DimensionSearch.of(
                    Model.of(pole()),
                    List.of(free("x of peg", -2, -0.5), free("y of eye", 0.5, 2)),
                    List.of(Goal.atMost(Figure.parse("stay.tension"), newtons(900))))
                .least(Figure.parse("stay.length"));
    assertThat(none.missed().get(0).missedBy()).isCloseTo(1500 / Math.sqrt(2) - 900, within(1e-6));
  }

  /**
   * A ladder on rough ground against a smooth wall stands from tan θ = 1/(2μ) on (moments about the
   * foot; textbook knowledge, from memory).
   */
  @Test
  void leastSlopeOfALadder() {
    Device ladder =
        Device.named("picking ladder")
            .point("foot", -1, 0)
            .point("middle", -0.5, 2)
            .point("head", 0, 4)
            .member("ladder", "foot", "middle", "head")
            .connect(new Contact("ground", "foot", "ladder", "ground", Direction.UP, 0.4, 0.4))
            .connect(new Contact("wall", "head", "ladder", "ground", Direction.LEFT, 0, 0))
            .weight("own", "ladder", "middle", 12)
            .build();
    Input slant =
        Input.of(
            "slant",
            Dimension.LENGTH,
            model -> -model.device().point("foot").x(),
            (model, far) ->
                Input.put(
                    model, List.of(Input.x("foot"), Input.x("middle")), List.of(-far, -far / 2)));
    Found found =
        (Found)
            DimensionSearch.of(
                    Model.of(ladder), List.of(new Free(slant, 0.5, 4)), List.of(Goal.stands()))
                .greatest(slant);
    assertThat(4 / value(found, 0)).isCloseTo(1.25, within(1e-8));
    assertThat(found.stops()).containsExactly("the device stands");
  }

  /** A crate on a rough base: it tips from h = W·b/(2F) on and slides from F = μW on. */
  @Test
  void highestPushThatHolds() {
    Device crate =
        Device.named("crate")
            .gravity(Vector.of(0, -10))
            .point("base", 0, 0)
            .point("middle", 0, 0.5)
            .point("push", 0, 0.3)
            .member("crate", "base", "middle", "push")
            .connect(
                new ContactBase("base", "base", "crate", "ground", Direction.UP, 0.6, 0.5, 0.5))
            .weight("own", "crate", "middle", 50)
            .force("push", "crate", "push", Vector.of(100, 0))
            .build();
    DimensionSearch search =
        DimensionSearch.of(
            Model.of(crate),
            List.of(free("y of push", 0.1, 4), free("size of push", 50, 400)),
            List.of(Goal.stands(), Goal.atLeast(Figure.parse("push.size"), newtons(200))));
    Found found = (Found) search.greatest(Input.y("push"));
    assertThat(value(found, 0)).isCloseTo(500 * 0.3 / 200, within(1e-8));
    assertThat(value(found, 1)).isCloseTo(200, within(1e-6));
  }

  /** A rope that is rated for enough stays as it is; else it is what the tension asks for. */
  @Test
  void firstFailureAboveABound() {
    Device pole = pole();
    double tension = 500 * 3 * Math.hypot(2.5, 2) / (2.5 * 2);
    Sizing sizing =
        Sizing.of(Method.ALLOWABLE)
            .with(new Rating("rope", "stay", 5000, "stated", 1, 0, List.of()));
    Figure failure = Figure.firstFailure(Variation.of("pull"));
    Found found =
        (Found)
            DimensionSearch.of(
                    Model.of(pole).with(sizing),
                    List.of(free("working load limit of rope", 100, 20000)),
                    List.of(Goal.atLeast(failure, new Quantity(2, Dimension.NUMBER))))
                .anyThat();
    assertThat(value(found, 0)).isCloseTo(5000, within(1e-9));
    Found least =
        (Found)
            DimensionSearch.of(
                    Model.of(pole).with(sizing),
                    List.of(free("working load limit of rope", 100, 20000)),
                    List.of(Goal.atLeast(failure, new Quantity(6, Dimension.NUMBER))))
                .anyThat();
    assertThat(value(least, 0)).isCloseTo(6 * tension, within(1e-5));
  }

  /** How far a crank can be turned is what was looked at; a figure of a course can be a goal. */
  @Test
  void strokeAtLeast() {
    Device press =
        Device.named("slide and crank")
            .point("shaft", 0, 0)
            .point("crank pin", 0.1, 0)
            .point("ram", 0.1 + 1, 0)
            .member("crank", "shaft", "crank pin")
            .member("rod", "crank pin", "ram")
            .pin("shaft", "shaft", "crank", "ground")
            .pin("crank pin", "crank pin", "crank", "rod")
            .roller("ram", "ram", "rod", "ground", Direction.UP)
            .build();
    Figure stroke = new Figure.Stroke(Drive.turn("crank"), -0.5, 0.5, Optional.empty());
    assertThat(stroke.of(Model.of(press)).number().orElseThrow()).isCloseTo(1, within(1e-9));
  }

  @Test
  void withoutBalanceThereIsNoAnswer() {
    Device loose =
        Device.named("loose lever")
            .point("hinge", 0, 0)
            .point("tip", 1, 0)
            .member("lever", "hinge", "tip")
            .pin("hinge", "hinge", "lever", "ground")
            .force("push", "lever", "tip", Vector.of(0, -5))
            .build();
    NoAnswer none =
        (NoAnswer)
            DimensionSearch.of(Model.of(loose), List.of(free("x of tip", 0.5, 2)), List.of())
                .least(Figure.parse("hinge.y on lever"));
    assertThat(none.reasons()).hasSize(1);
    assertThat(none.reasons().get(0)).contains("hinge.y on lever").contains("not in balance");
    assertThat(none.looks()).isGreaterThan(200);
  }

  @Test
  void sameSearchSameEnd() {
    DimensionSearch search =
        DimensionSearch.of(
            Model.of(pole()),
            List.of(free("x of peg", -4, -0.5), free("y of eye", 0.5, 2.8)),
            List.of());
    assertThat(search.least(Figure.parse("stay.tension")))
        .isEqualTo(search.least(Figure.parse("stay.tension")));
    assertThat(search.withMost(50).least(Figure.parse("stay.tension")).isCutShort()).isTrue();
  }

  @Test
  void mistakesNameTheirKey() {
    Model model = Model.of(lever(1));
    Figure push = Figure.parse("push.value");
    assertThatThrownBy(() -> free("x of fulcrum", 2, 1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("x of fulcrum")
        .hasMessageContaining("the least one first");
    assertThatThrownBy(() -> free("x of fulcrum", 0, Double.POSITIVE_INFINITY))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("x of fulcrum")
        .hasMessageContaining("finite");
    assertThatThrownBy(
            () -> DimensionSearch.of(model, List.of(free("x of fulcrums", 0, 1)), List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("fulcrum");
    assertThatThrownBy(
            () ->
                DimensionSearch.of(
                    model,
                    List.of(free("x of fulcrum", 0.1, 1)),
                    List.of(Goal.atMost(push, metres(3)))))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("push: ")
        .hasMessageContaining("a force");
    assertThatThrownBy(
            () ->
                DimensionSearch.of(
                    model,
                    List.of(free("x of fulcrum", 0.1, 1)),
                    List.of(Goal.atMost(Figure.of(Ask.parse("pusch.value")), newtons(3)))))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("push");
    assertThatThrownBy(() -> Goal.between(push, newtons(3), newtons(2)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("push: ");
    assertThatThrownBy(() -> Goal.between(push, newtons(3), metres(5)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("a force and a length");
    assertThatThrownBy(() -> DimensionSearch.of(model, List.of(), List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("free numbers");
    List<Free> oneForAnother =
        List.of(free("distance of fulcrum from load", 0.1, 1), free("x of fulcrum", 0.1, 1));
    assertThatThrownBy(() -> DimensionSearch.of(model, oneForAnother, List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("distance of fulcrum from load: value");
    Free twice = free("x of fulcrum", 0.1, 1);
    assertThatThrownBy(() -> DimensionSearch.of(model, List.of(twice, twice), List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("twice");
  }
}
