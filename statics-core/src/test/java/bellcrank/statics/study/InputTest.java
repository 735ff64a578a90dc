package bellcrank.statics.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Weight;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.Cleat;
import bellcrank.statics.ground.Drained;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.ground.Presumptive;
import bellcrank.statics.ground.Undrained;
import bellcrank.statics.strength.Material;
import bellcrank.statics.strength.MaterialTable;
import bellcrank.statics.strength.Method;
import bellcrank.statics.strength.PinJoint;
import bellcrank.statics.strength.Profiles;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Sizing;
import bellcrank.statics.units.Dimension;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InputTest {

  /** One of everything; it need not be in balance. */
  static Device everything() {
    DeviceBuilder builder =
        Device.named("everything")
            .point("hinge", 0, 0)
            .point("ram", 0.25, 0)
            .point("grip", 1.6, 0.4)
            .point("crown", 0, 3)
            .point("foot", 2, -1)
            .member("lever", "hinge", "ram", "grip")
            .member("stand", "hinge", "foot")
            .pin("hinge", "hinge", "lever", "stand")
            .connect(new Contact("heel", "foot", "stand", "ground", Direction.UP, 0.4, 0.4))
            .connect(new Contact("toe", "ram", "stand", "ground", Direction.UP, 0.5, 0.3))
            .connect(
                new ContactBase("base", "grip", "stand", "ground", Direction.UP, 0.3, 0.4, 0.4))
            .connect(
                new ContactBase("plate", "grip", "stand", "ground", Direction.UP, 0.3, 0.4, 0.4))
            .connect(
                new bellcrank.statics.device.Pin(
                    "dry", "grip", List.of("lever", "stand"), 0.02, 0.1))
            .connect(
                new Screw(
                    "screw", End.of("lever", "grip"), End.of("ground", "crown"), 0.01, 0.02, 0.1))
            .connect(
                new Reeving(
                    "tackle",
                    List.of(
                        Stop.end("lever", "grip"),
                        Stop.sheave("ground", "crown", 0.1, Turn.CLOCKWISE),
                        Stop.end("stand", "foot")),
                    0.95,
                    Reeving.Hauling.RAISING))
            .connect(
                new Wrap(
                    "post",
                    Stop.end("lever", "ram"),
                    new Stop(Stop.Kind.POST, "ground", "crown", 0.05, Turn.CLOCKWISE),
                    Stop.end("stand", "foot"),
                    0.3,
                    0))
            .load(new Force("hand", "lever", "grip", Vector.of(30, -40)))
            .load(new Force("at rest", "lever", "grip", Vector.ZERO))
            .load(new Weight("barrel", "lever", Optional.of("ram"), 80))
            .load(new Couple("brake", "lever", 12))
            .load(
                new SpreadLoad(
                    "snow",
                    "lever",
                    "hinge",
                    "ram",
                    100,
                    200,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.LENGTH))
            .load(new Spring("spring", End.of("lever", "grip"), End.of("ground", "foot"), 900, 0.5))
            .load(new TorsionSpring("twist", "lever", "stand", 40, 0.2))
            .loadCase(new LoadCase("storm", Map.of("hand", 1.5), 1.2));
    return builder.build();
  }

  static Model model() {
    Material steel = MaterialTable.rows().get(0).at(0.01);
    Sizing sizing =
        Sizing.of(Method.ALLOWABLE)
            .with("lever", Profiles.rectangle(0.04, 0.08).section(), steel)
            .with(Rating.of("tackle", 2000, "tag"))
            .with(new PinJoint("hinge", 0.02, 2, steel, List.of(), 0.001));
    return Model.of(everything())
        .with(
            List.of(
                Foundation.of("base", 0.5)
                    .withBearing(new Presumptive(1e5, "stated"))
                    .withAdhesion(500)
                    .withCleat(new Cleat(0.1, 0.5, 0, 18000)),
                Foundation.of("plate", 0.5).withBearing(new Undrained(4e4, 0))))
        .with(sizing);
  }

  static final Map<String, Double> STATED = new LinkedHashMap<>();

  static {
    STATED.put("x of ram", 0.25);
    STATED.put("y of grip", 0.4);
    STATED.put("distance of ram from hinge", 0.25);
    STATED.put("turn of [ram, grip] about hinge", 0.0);
    STATED.put("turn of ram about hinge", 0.0);
    STATED.put("size of hand", 50.0);
    STATED.put("direction of hand", Math.atan2(-40, 30) + 2 * Math.PI);
    STATED.put("direction of snow", 1.5 * Math.PI);
    STATED.put("direction of heel", 0.5 * Math.PI);
    STATED.put("mass of barrel", 80.0);
    STATED.put("start of snow", 100.0);
    STATED.put("end of snow", 200.0);
    STATED.put("moment of brake", 12.0);
    STATED.put("stiffness of spring", 900.0);
    STATED.put("free length of spring", 0.5);
    STATED.put("torsion stiffness of twist", 40.0);
    STATED.put("turned angle of twist", 0.2);
    STATED.put("friction of heel", 0.4);
    STATED.put("friction of base", 0.4);
    STATED.put("friction of dry", 0.1);
    STATED.put("friction of post", 0.3);
    STATED.put("friction of screw", 0.1);
    STATED.put("kinetic friction of toe", 0.3);
    STATED.put("kinetic friction of base", 0.4);
    STATED.put("width of base", 0.3);
    STATED.put("radius of dry", 0.02);
    STATED.put("radius of post", 0.05);
    STATED.put("radius of tackle at crown", 0.1);
    STATED.put("mean radius of screw", 0.02);
    STATED.put("lead of screw", 0.01);
    STATED.put("efficiency of tackle", 0.95);
    STATED.put("gravity", 9.80665);
    STATED.put("slope", 0.0);
    STATED.put("factor of hand in storm", 1.5);
    STATED.put("factor of barrel in storm", 1.0);
    STATED.put("dynamic factor of storm", 1.2);
    STATED.put("length of base", 0.5);
    STATED.put("adhesion of base", 500.0);
    STATED.put("bearing of base", 1e5);
    STATED.put("undrained strength of plate", 4e4);
    STATED.put("overburden of plate", 0.0);
    STATED.put("cleat depth of base", 0.1);
    STATED.put("working load limit of tackle", 2000.0);
    STATED.put("leg angle of tackle", 0.0);
    STATED.put("diameter of hinge", 0.02);
    STATED.put("gap of hinge", 0.001);
  }

  @Test
  void everyNumberIsReadPutAndReadAgain() {
    Model model = model();
    STATED.forEach(
        (text, stated) -> {
          Input input = Input.parse(text);
          assertThat(input.text()).isEqualTo(text);
          assertThat(Input.parse(input.text())).isEqualTo(input).hasSameHashCodeAs(input);
          assertThat(input.value(model)).as(text).isCloseTo(stated, within(1e-12));
          double other = stated == 0 ? 0.01 : stated * 0.99;
          Model changed = input.put(model, other);
          if (!text.startsWith("turn of")) {
            assertThat(input.value(changed)).as(text).isCloseTo(other, within(1e-12 * 1e5));
          }
          assertThat(changed).as(text).isNotEqualTo(model);
          for (String same : STATED.keySet()) {
            if (untouched(text, same)) {
              assertThat(Input.parse(same).value(changed))
                  .as(same + " after " + text)
                  .isCloseTo(STATED.get(same), within(1e-12));
            }
          }
        });
  }

  private static boolean untouched(String changed, String other) {
    boolean places = changed.matches("[xy] of.*|distance.*|turn of.*");
    return !changed.equals(other)
        && !(places && other.matches("[xy] of.*|distance.*"))
        && !(changed.equals("friction of base") && other.equals("kinetic friction of base"));
  }

  @Test
  void stringsOfMaterialsAndOfDrainedGround() {
    Model model = model();
    Input yield = Input.strength(Material.Strength.YIELD, "lever");
    assertThat(yield.text()).isEqualTo("yield strength of lever");
    assertThat(Input.parse("yield strength of hinge").value(model)).isEqualTo(yield.value(model));
    assertThat(yield.value(yield.put(model, 2e8))).isEqualTo(2e8);
    Input stiff = Input.parse("elasticity of hinge");
    assertThat(stiff.value(stiff.put(model, 2e11))).isEqualTo(2e11);
    Model drained =
        model.with(
            List.of(Foundation.of("base", 1).withBearing(new Drained(0.5, 100, 18000, 200))));
    for (String text : List.of("friction angle", "cohesion", "unit weight", "overburden")) {
      Input input = Input.parse(text + " of base");
      double other = 1.01 * input.value(drained);
      assertThat(input.value(input.put(drained, other))).isEqualTo(other);
    }
  }

  @Test
  void severalArePutAtOnceInAnyOrder() {
    Model model = model();
    Input size = Input.size("hand");
    Input way = Input.direction("hand");
    Model one = Input.put(model, List.of(size, way), List.of(-7.0, 1.0));
    Model other = Input.put(model, List.of(way, size), List.of(1.0, -7.0));
    assertThat(one).isEqualTo(other);
    Vector hand = ((Force) one.device().load("hand").orElseThrow()).vector();
    assertThat(hand.x()).isCloseTo(-7 * Math.cos(1), within(1e-15));
    Model level = Input.put(model, List.of(Input.gravity(), Input.slope()), List.of(2.0, 0.1));
    assertThat(level.device().gravity().x()).isCloseTo(-2 * Math.sin(0.1), within(1e-15));
    assertThat(level.device().gravity().y()).isCloseTo(-2 * Math.cos(0.1), within(1e-15));
  }

  /** What is told of a model must be so: a number that another one moves is refused. */
  @Test
  void whatAnotherNumberWouldChangeIsRefused() {
    Model model = model();
    Input arm = Input.distance("ram", "hinge");
    Input hinge = Input.x("hinge");
    Model both = Input.put(model, List.of(hinge, arm), List.of(-0.1, 0.5));
    assertThat(arm.value(both)).isCloseTo(0.5, within(1e-15));
    assertThat(hinge.value(both)).isEqualTo(-0.1);
    assertThatThrownBy(() -> Input.put(model, List.of(arm, hinge), List.of(0.5, -0.1)))
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "distance of ram from hinge: value is 0.5; wanted: a number that x of hinge leaves as it"
                + " is: put x of hinge first, or leave one of the two as stated");
    List<Input> twoForOne = List.of(arm, Input.x("ram"));
    assertThatThrownBy(() -> Input.put(model, twoForOne, List.of(0.5, 0.4)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("distance of ram from hinge");
    // a direction may be told by any of its turns
    Input way = Input.direction("hand");
    Model turned = Input.put(model, List.of(way, Input.size("hand")), List.of(7.0, 5.0));
    assertThat(way.value(turned)).isCloseTo(7 - 2 * Math.PI, within(1e-12));
  }

  @Test
  void numbersOfOnesOwn() {
    Input own =
        Input.of(
            "count of snow",
            Dimension.NUMBER,
            one -> Input.start("snow").value(one) / 100,
            (one, value) -> Input.start("snow").put(one, 100 * value));
    assertThat(own.value(model())).isEqualTo(1);
    Model both =
        Input.put(model(), List.of(Input.end("snow"), own, Input.x("ram")), List.of(5.0, 3.0, 0.3));
    assertThat(Input.start("snow").value(both)).isEqualTo(300);
    assertThat(Input.end("snow").value(both)).isEqualTo(5);
    assertThat(Input.x("ram").value(both)).isEqualTo(0.3);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "friction of heal",
        "x of rum",
        "mass of baril",
        "size of at rest",
        "bearing of plate",
        "yield strength of stand",
        "factor of hnd in storm",
        "factor of hand in strom",
        "radius of tackle at foot",
        "turn of ram about hing",
        "direction of barrel"
      })
  void whatTheModelDoesNotHaveIsRefused(String text) {
    Input input = Input.parse(text);
    assertThatThrownBy(() -> input.value(model())).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> input.put(model(), 1)).isInstanceOf(ModelException.class);
  }

  @Test
  void theNearestNameIsOffered() {
    assertThatThrownBy(() -> Input.friction("heal").value(model()))
        .hasMessage(
            "everything: friction is \"heal\"; wanted: the name of a part with a stated friction; the"
                + " nearest is \"heel\"");
    assertThatThrownBy(() -> Input.parse("fricton of heel"))
        .hasMessageContaining("the nearest is \"friction of …\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "ram",
        "x of",
        "x of  ",
        "distance of ram",
        "turn of [ram about hinge",
        "factor of hand",
        "x of \"ram",
        "x of [ram",
        "size of a, b"
      })
  void whatIsNoInputIsRefused(String text) {
    assertThatThrownBy(() -> Input.parse(text)).isInstanceOf(ModelException.class);
  }

  @Test
  void namesWithWordsInsideAreQuoted() {
    Input input = Input.distance("end from here", "a, b");
    assertThat(input.text()).isEqualTo("distance of \"end from here\" from \"a, b\"");
    assertThat(Input.parse(input.text())).isEqualTo(input);
    Input turn = Input.turn(List.of("a, b", "c"), "d about e");
    assertThat(Input.parse(turn.text())).isEqualTo(turn);
  }

  @Test
  void whatCannotBeIsRefused() {
    Model model = model();
    assertThatThrownBy(() -> Input.friction("heel").put(model, -0.1))
        .hasMessageContaining("friction");
    assertThatThrownBy(() -> Input.x("ram").put(model, Double.NaN))
        .hasMessageContaining("x of ram");
    assertThatThrownBy(() -> Input.distance("ram", "hinge").put(model, 0))
        .hasMessageContaining("above 0");
    assertThatThrownBy(() -> Input.put(model, List.of(Input.x("ram")), List.of()))
        .isInstanceOf(ModelException.class);
  }
}
