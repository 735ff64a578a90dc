package bellcrank.statics.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The device as a value: what it holds, when two are equal, that nothing changes it. */
class DeviceTest {

  private static DeviceBuilder press() {
    return Device.named("cider press")
        .point("hinge", 0, 0)
        .point("ram", 3, 4)
        .point("head", 0, 4)
        .member("lever", "hinge", "ram")
        .joint("head")
        .pin("hinge", "hinge", "lever", "ground")
        .strut("tie", End.of("head", "head"), End.of("lever", "ram"))
        .roller("rail", "head", "head", "ground", Direction.UP)
        .force("hand", "lever", "ram", Vector.of(1, 2))
        .weight("barrel", "head", "head", 20)
        .sought("push", "lever", "ram", Direction.LEFT)
        .count("tie", 2)
        .loadCase(new LoadCase("calm", Map.of(), 1))
        .loadCase(new LoadCase("gust", Map.of("hand", 1.5), 1.2))
        .advantage("hand", "push");
  }

  @Test
  void itTellsItsParts() {
    Device device = press().build();
    assertThat(device.name()).isEqualTo("cider press");
    assertThat(device.gravity()).isEqualTo(Vector.of(0, -9.80665));
    assertThat(device.points()).containsOnlyKeys("hinge", "ram", "head");
    assertThat(device.point("ram")).isEqualTo(Point.of(3, 4));
    assertThat(device.members()).extracting(Member::name).containsExactly("lever");
    assertThat(device.joints()).containsExactly(new Joint("head", "head"));
    assertThat(device.connections())
        .extracting(Connection::kind)
        .containsExactly("pin", "strut", "roller");
    assertThat(device.loads()).extracting(Load::name).containsExactly("hand", "barrel", "push");
    assertThat(device.sought()).extracting(Sought::name).containsExactly("push");
    assertThat(device.cases()).extracting(LoadCase::name).containsExactly("calm", "gust");
    assertThat(device.loadCase("gust").factor("hand")).isEqualTo(1.5 * 1.2);
    assertThat(device.loadCase("gust").factor("barrel")).isEqualTo(1.2);
    assertThat(device.counts()).containsExactly(Map.entry("tie", 2));
    assertThat(device.advantage()).contains(new EffortAndResistance("hand", "push"));
    assertThat(device.size()).isEqualTo(5);
    assertThat(device.body("lever")).contains(device.members().get(0));
    assertThat(device.body("head")).contains(new Joint("head", "head"));
    assertThat(device.body("ground")).contains(Ground.GROUND);
    assertThat(device.body("nobody")).isEmpty();
    assertThat(device.bodyIndex("lever")).isZero();
    assertThat(device.bodyIndex("head")).isEqualTo(1);
    assertThat(device.bodyIndex("ground")).isEqualTo(-1);
    assertThat(device.connection("tie")).map(Connection::kind).contains("strut");
    assertThat(device.connection("hand")).isEmpty();
    assertThat(device.load("hand")).map(Load::name).contains("hand");
    assertThat(device.load("tie")).isEmpty();
    assertThat(device)
        .hasToString("Device cider press (1 members, 1 joints, 3 connections, 3 loads)");
  }

  @Test
  void unknownPointsAndCasesAreToldWithTheNearestName() {
    Device device = press().build();
    assertThatThrownBy(() -> device.point("hinges"))
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "cider press: point is \"hinges\"; wanted: the name of a point; the nearest is"
                + " \"hinge\"");
    assertThatThrownBy(() -> device.loadCase("gusts"))
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "cider press: case is \"gusts\"; wanted: the name of a case; the nearest is \"gust\"");
  }

  @Test
  void equalPartsMakeEqualDevices() {
    assertThat(press().build()).isEqualTo(press().build()).hasSameHashCodeAs(press().build());
    assertThat(press().build()).isNotEqualTo(press().gravity(Vector.ZERO).build());
    assertThat(press().build()).isNotEqualTo(press().count("tie", 3).build());
    assertThat(press().build()).isNotEqualTo(press().point("more", 1, 1).build());
    assertThat(press().build()).isNotEqualTo("cider press");
  }

  @Test
  void aBuilderFromADeviceMakesAnEqualOne() {
    assertThat(press().build().toBuilder().build()).isEqualTo(press().build());
    Device plain = Device.named("plain").point("P", 0, 0).joint("P").build();
    assertThat(plain.toBuilder().build()).isEqualTo(plain);
    assertThat(plain.cases()).containsExactly(LoadCase.ALL_LOADS);
    assertThat(plain.size()).as("a device of one point").isEqualTo(1);
  }

  /** The case of all loads was lost where it was stated among others. */
  @Test
  void aStatedCaseOfAllLoadsIsKeptAmongOthers() {
    Device device = press().loadCase(new LoadCase("all loads", Map.of(), 1)).build();
    assertThat(device.toBuilder().build()).isEqualTo(device);
    assertThat(device.cases()).hasSize(3);
  }

  @Test
  void nothingChangesADeviceAfterwards() {
    DeviceBuilder builder = press();
    Device device = builder.build();
    builder.point("later", 9, 9).member("later", "later", "hinge");
    assertThat(device).isEqualTo(press().build());
    assertThatThrownBy(() -> device.members().clear())
        .isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> device.points().clear())
        .isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> device.counts().clear())
        .isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> device.loads().clear())
        .isInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  void partsCopyWhatTheyAreGiven() {
    List<String> points = new ArrayList<>(List.of("A", "B"));
    Member member = new Member("m", points, List.of(), List.of(), 1);
    points.add("C");
    assertThat(member.points()).containsExactly("A", "B");
    Map<String, Double> factors = new HashMap<>(Map.of("hand", 2.0));
    LoadCase loadCase = new LoadCase("case", factors, 1);
    factors.put("hand", 3.0);
    assertThat(loadCase.factor("hand")).isEqualTo(2);
    List<Stop> stops = new ArrayList<>(List.of(Stop.end("a", "A"), Stop.end("b", "B")));
    Reeving reeving = new Reeving("rope", stops, 1, Reeving.Hauling.IDEAL);
    stops.clear();
    assertThat(reeving.stops()).hasSize(2);
    List<String> bodies = new ArrayList<>(List.of("a", "b"));
    Pin pin = Pin.smooth("pin", "P", bodies);
    bodies.add("c");
    assertThat(pin.bodies()).containsExactly("a", "b");
    assertThat(pin.places()).containsExactly("P", "P");
  }

  @Test
  void aMemberOfAChainHasABarBetweenNeighbours() {
    Member member = Member.of("m", List.of("A", "B", "C"));
    assertThat(member.bars()).containsExactly(new Bar("A", "B"), new Bar("B", "C"));
    Member more = new Member("m", List.of("D"), List.of(new Bar("A", "B")), List.of("A"), 2);
    assertThat(more.points()).as("ends of bars belong to it").containsExactly("D", "A", "B");
    assertThat(Member.of("point mass", List.of("A")).bars()).isEmpty();
  }

  @Test
  void aCountOfOneIsNone() {
    assertThat(press().count("tie", 1).build().counts()).isEmpty();
  }

  @Test
  void everyKindOfConnectionTellsItsBodiesAndPlaces() {
    Stop drum = Stop.drum("a", "A", 0.1, Turn.CLOCKWISE);
    Stop post = new Stop(Stop.Kind.POST, "b", "B", 0.1, Turn.COUNTER_CLOCKWISE);
    End a = End.of("a", "A");
    End b = End.of("b", "B");
    assertThat(
            List.of(
                new Clamp("c", "P", "a", "b"),
                new Roller("c", "P", "a", "b", Direction.UP, Sides.ONE),
                new Slot("c", "P", "a", "b", Direction.UP, Sides.TWO),
                new Guide("c", "P", "a", "b", Direction.UP),
                new Contact("c", "P", "a", "b", Direction.UP, 0.3, 0.2),
                new ContactBase("c", "P", "a", "b", Direction.UP, 0.5, 0.3, 0.2)))
        .allSatisfy(
            one -> {
              assertThat(one.bodies()).containsExactly("a", "b");
              assertThat(one.places()).containsExactly("P", "P");
            })
        .extracting(Connection::kind)
        .containsExactly("clamp", "roller", "slot", "guide", "contact", "contact base");
    assertThat(
            List.of(
                new Strut("c", a, b, 3), new Line("c", a, b), new Screw("c", a, b, 0.01, 0.02, 0)))
        .allSatisfy(
            one -> {
              assertThat(one.bodies()).containsExactly("a", "b");
              assertThat(one.places()).containsExactly("A", "B");
            })
        .extracting(Connection::kind)
        .containsExactly("strut", "line", "screw");
    Reeving reeving =
        new Reeving("c", List.of(drum, Stop.end("b", "B")), 0.9, Reeving.Hauling.RAISING);
    assertThat(reeving.bodies()).containsExactly("a", "b");
    assertThat(reeving.places()).containsExactly("A", "B");
    assertThat(reeving.kind()).isEqualTo("reeving");
    Wrap wrap = new Wrap("c", Stop.end("a", "A"), post, Stop.end("a", "C"), 0.3, 1);
    assertThat(wrap.bodies()).containsExactly("a", "b", "a");
    assertThat(wrap.places()).containsExactly("A", "B", "C");
    assertThat(wrap.kind()).isEqualTo("wrap");
    assertThat(Turn.CLOCKWISE.sign()).isEqualTo(-1);
    assertThat(Turn.COUNTER_CLOCKWISE.sign()).isEqualTo(1);
  }

  @Test
  void aPoseIsAValueToo() {
    Frame frame = Frame.of(Vector.of(1, 2), 0.3);
    Pose pose = Pose.DRAWN.with("lever", frame);
    assertThat(Pose.DRAWN.isDrawn()).isTrue();
    assertThat(pose.isDrawn()).isFalse();
    assertThat(pose.frame("lever")).isEqualTo(frame);
    assertThat(pose.frame("other")).isEqualTo(Frame.IDENTITY);
    assertThat(pose).isEqualTo(Pose.of(Map.of("lever", frame)));
    assertThat(pose).hasSameHashCodeAs(Pose.of(Map.of("lever", frame)));
    assertThat(pose).isNotEqualTo(Pose.DRAWN).isNotEqualTo(frame);
    assertThat(pose.toString()).contains("lever");
    assertThat(pose.with("lever", Frame.IDENTITY).frame("lever")).isEqualTo(Frame.IDENTITY);
    assertThat(pose.frame("lever")).as("with makes a copy").isEqualTo(frame);
  }

  @Test
  void aNegativeZeroEqualsZero() {
    assertThat(new Couple("c", "m", -0.0)).isEqualTo(new Couple("c", "m", 0.0));
    assertThat(new TorsionSpring("c", "m", "n", 1, -0.0))
        .isEqualTo(new TorsionSpring("c", "m", "n", 1, 0.0));
    assertThat(
            new SpreadLoad("s", "m", "A", "B", -0.0, -0.0, Optional.empty(), SpreadLoad.Per.LENGTH))
        .isEqualTo(
            new SpreadLoad("s", "m", "A", "B", 0, 0, Optional.empty(), SpreadLoad.Per.LENGTH));
  }
}
