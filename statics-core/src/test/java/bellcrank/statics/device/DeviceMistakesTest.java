package bellcrank.statics.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Parts that are right on their own but do not fit one another. */
class DeviceMistakesTest {

  private static DeviceBuilder frame() {
    return Device.named("frame")
        .point("hinge", 0, 0)
        .point("knee", 1, 1)
        .point("top", 1, 3)
        .point("again", 1, 1)
        .member("lever", "hinge", "knee")
        .member("post", "knee", "top")
        .member(new Member("plate", List.of("top"), List.of(), List.of(), 1))
        .joint(new Joint("ring", "top"))
        .pin("hinge pin", "hinge", "lever", "ground")
        .pin("knee pin", "knee", "lever", "post");
  }

  /** One mistake in an else sound device. */
  private interface Change {
    DeviceBuilder in(DeviceBuilder device);
  }

  private static Arguments mistake(String sentence, Change change) {
    return Arguments.of(sentence, change);
  }

  static Stream<Arguments> mistakes() {
    Stop end = Stop.end("lever", "hinge");
    Stop post = new Stop(Stop.Kind.POST, "ring", "top", 0.1, Turn.CLOCKWISE);
    return Stream.of(
        mistake(
            "far: place is Point[x=2.0E9, y=0.0]; wanted: coordinates within 1.0E9 m",
            d -> d.point("far", 2e9, 0)),
        mistake(
            "frame: gravity is Vector[x=0.0, y=-1.0E31]; wanted: at most 1.0E30 m/s²",
            d -> d.gravity(Vector.of(0, -1e31))),
        mistake(
            "lever: name is \"lever\"; wanted: a name that no other body has (ground is reserved)",
            d -> d.member("lever", "hinge", "top")),
        mistake(
            "post: name is \"post\"; wanted: a name that no other body has (ground is reserved)",
            d -> d.joint(new Joint("post", "top"))),
        mistake(
            "ground: name is \"ground\"; wanted: a name that no other body has (ground is"
                + " reserved)",
            d -> d.member("ground", "hinge", "top")),
        mistake(
            "knee pin: name is \"knee pin\"; wanted: a name that no other connection, load or"
                + " sought has",
            d -> d.clamp("knee pin", "top", "post", "ground")),
        mistake(
            "knee pin: name is \"knee pin\"; wanted: a name that no other connection, load or"
                + " sought has",
            d -> d.force("knee pin", "post", "top", Vector.ZERO)),
        mistake(
            "hand: name is \"hand\"; wanted: a name that no other connection, load or sought has",
            d ->
                d.force("hand", "post", "top", Vector.ZERO)
                    .sought("hand", "post", "top", Direction.UP)),
        mistake(
            "arm: points is \"knees\"; wanted: the name of a point; the nearest is \"knee\"",
            d -> d.member(new Member("arm", List.of("knees"), List.of(), List.of(), 1))),
        mistake(
            "arm: outline is \"tops\"; wanted: the name of a point; the nearest is \"top\"",
            d -> d.member(new Member("arm", List.of(), List.of(), List.of("tops"), 1))),
        mistake(
            "arm: bars is knee and again at the same place; wanted: two places apart",
            d -> d.member("arm", "knee", "again")),
        mistake(
            "eye: at is \"tops\"; wanted: the name of a point; the nearest is \"top\"",
            d -> d.joint(new Joint("eye", "tops"))),
        mistake(
            "stop: body is \"levers\"; wanted: the name of a body; the nearest is \"lever\"",
            d -> d.clamp("stop", "top", "levers", "ground")),
        mistake(
            "stop: body is \"xyzzy\"; wanted: the name of a body: ground, lever, plate, post, ring",
            d -> d.clamp("stop", "top", "xyzzy", "ground")),
        mistake(
            "stay: at is \"knee\"; wanted: the place of joint ring, which is top",
            d -> d.strut("stay", End.of("ring", "knee"), End.of("ground", "hinge"))),
        mistake(
            "stop: joins is the joint ring; wanted: a member or the ground, which can turn or hold",
            d -> d.clamp("stop", "top", "ring", "ground")),
        mistake(
            "stop: joins is the joint ring; wanted: a member or the ground, which can turn or hold",
            d -> d.connect(new Guide("stop", "top", "ring", "ground", Direction.UP))),
        mistake(
            "stop: joins is the joint ring; wanted: a member or the ground, which can turn or hold",
            d ->
                d.connect(new ContactBase("stop", "top", "ring", "ground", Direction.UP, 1, 0, 0))),
        mistake(
            "stop: joins is the joint ring; wanted: a member or the ground, which can turn or hold",
            d -> d.roller("stop", "top", "post", "ring", Direction.UP)),
        mistake(
            "stop: joins is the joint ring; wanted: a member or the ground, which can turn or hold",
            d -> d.connect(new Slot("stop", "top", "post", "ring", Direction.UP, Sides.TWO))),
        mistake(
            "stop: joins is the joint ring; wanted: a member or the ground, which can turn or hold",
            d -> d.connect(new Contact("stop", "top", "post", "ring", Direction.UP, 0, 0))),
        mistake(
            "lid: push is against the one of floor at the same place; wanted: one of the two pushes; both make a slot with two sides: for that"
                + " a slot or a roller of two sides, or two places that are apart",
            d ->
                d.connect(new Contact("floor", "top", "post", "ground", Direction.UP, 0.3, 0.3))
                    .connect(new Contact("lid", "top", "post", "ground", Direction.DOWN, 0, 0))),
        mistake(
            "lid: push is against the one of floor at the same place; wanted: one of the two pushes; both make a slot with two sides: for that"
                + " a slot or a roller of two sides, or two places that are apart",
            d ->
                d.connect(new Roller("floor", "knee", "post", "ground", Direction.UP, Sides.ONE))
                    .connect(
                        new ContactBase("lid", "again", "ground", "post", Direction.UP, 1, 0, 0))),
        mistake(
            "lid: along is against the one of floor at the same place; wanted: one of the two pushes; both make a slot with two sides: for that"
                + " a slot or a roller of two sides, or two places that are apart",
            d ->
                d.connect(new Contact("floor", "top", "post", "plate", Direction.UP, 0, 0))
                    .connect(new Slot("lid", "top", "post", "plate", Direction.LEFT, Sides.ONE))),
        mistake(
            "turn: at is \"tpo\"; wanted: the name of a point; the nearest is \"top\"",
            d -> d.load(new Couple("turn", "post", 1, Optional.of("tpo")))),
        mistake(
            "turn: at is \"top\"; wanted: no place: a couple on a screw turns all of it",
            d ->
                d.connect(
                        new Screw(
                            "jack", End.of("post", "top"), End.of("ground", "hinge"), 1, 1, 0))
                    .load(new Couple("turn", "jack", 1, Optional.of("top")))),
        mistake(
            "turn: member is \"knee pin\"; wanted: the name of a member or screw: lever, plate, post",
            d -> d.load(new Couple("turn", "knee pin", 1))),
        mistake(
            "turn: member is \"jak\"; wanted: the name of a member or screw; the nearest is \"jack\"",
            d ->
                d.connect(
                        new Screw(
                            "jack", End.of("post", "top"), End.of("ground", "hinge"), 1, 1, 0))
                    .load(new Couple("turn", "jak", 1))),
        mistake(
            "turn: member is \"jak\"; wanted: the name of a member or screw; the nearest is \"jack\"",
            d ->
                d.connect(
                        new Screw(
                            "jack", End.of("post", "top"), End.of("ground", "hinge"), 1, 1, 0))
                    .load(
                        new Sought(
                            "turn",
                            Sought.Want.COUPLE,
                            "jak",
                            Optional.empty(),
                            Optional.empty()))),
        mistake(
            "push: body is \"jack\"; wanted: the name of a member, joint or pin: ground, hinge pin,"
                + " knee pin, lever, plate, post, ring",
            d ->
                d.connect(
                        new Screw(
                            "jack", End.of("post", "top"), End.of("ground", "hinge"), 1, 1, 0))
                    .force("push", "jack", "top", Vector.of(1, 0))),
        mistake(
            "stay: ends is knee and again at the same place; wanted: two places apart",
            d -> d.strut("stay", End.of("lever", "knee"), End.of("ground", "again"))),
        mistake(
            "stay: ends is knee and again at the same place; wanted: two places apart",
            d -> d.line("stay", End.of("lever", "knee"), End.of("ground", "again"))),
        mistake(
            "stay: ends is knee and again at the same place; wanted: two places apart",
            d ->
                d.connect(
                    new Screw(
                        "stay", End.of("lever", "knee"), End.of("ground", "again"), 1, 1, 0))),
        mistake(
            "rope: stops 1 and 2 is 2.0 m apart; wanted: more than 2.5 m, so that the rope has a"
                + " straight part between them",
            d ->
                d.connect(
                    new Reeving(
                        "rope",
                        List.of(
                            Stop.drum("lever", "knee", 2.5, Turn.CLOCKWISE),
                            Stop.end("post", "top")),
                        1,
                        Reeving.Hauling.IDEAL))),
        mistake(
            "rope: joins is [lever]; wanted: at least two bodies",
            d ->
                d.connect(
                    new Reeving(
                        "rope",
                        List.of(end, Stop.end("lever", "knee")),
                        1,
                        Reeving.Hauling.IDEAL))),
        mistake(
            "rope: drum is the joint ring; wanted: a member or the ground, which can turn or hold",
            d ->
                d.connect(
                    new Reeving(
                        "rope",
                        List.of(end, Stop.drum("ring", "top", 0.1, Turn.CLOCKWISE)),
                        1,
                        Reeving.Hauling.IDEAL))),
        mistake(
            "rope: post is the joint ring; wanted: a member or the ground, which can turn or hold",
            d -> d.connect(new Wrap("rope", end, post, Stop.end("ground", "knee"), 0.3, 0))),
        mistake(
            "rope: sheave is the joint ring; wanted: a member or the ground, which can turn or"
                + " hold",
            d ->
                d.connect(
                    new Reeving(
                        "rope",
                        List.of(
                            end,
                            Stop.sheave("ring", "top", 0.1, Turn.CLOCKWISE),
                            Stop.end("ground", "knee")),
                        0.9,
                        Reeving.Hauling.RAISING))),
        mistake(
            "hand: at is \"tops\"; wanted: the name of a point; the nearest is \"top\"",
            d -> d.force("hand", "post", "tops", Vector.ZERO)),
        mistake(
            "hand: at is \"top\"; wanted: the point of pin knee pin, knee",
            d -> d.force("hand", "knee pin", "top", Vector.ZERO)),
        mistake(
            "own: at is missing; wanted: the point where the weight acts",
            d -> d.load(new Weight("own", "knee pin", Optional.empty(), 1))),
        mistake(
            "hand: body is ground; wanted: a member, joint or pin: the ground takes any load",
            d -> d.force("hand", "ground", "top", Vector.ZERO)),
        mistake(
            "hand: body is \"posts\"; wanted: the name of a member, joint or pin; the nearest is"
                + " \"post\"",
            d -> d.force("hand", "posts", "top", Vector.ZERO)),
        mistake(
            "hand: at is \"knee\"; wanted: the place of joint ring, which is top",
            d -> d.force("hand", "ring", "knee", Vector.ZERO)),
        mistake(
            "own: at is missing; wanted: a point, since plate has no bars to spread the weight"
                + " over",
            d -> d.load(new Weight("own", "plate", Optional.empty(), 1))),
        mistake(
            "own: at is missing; wanted: a point, since ring has no bars to spread the weight over",
            d -> d.load(new Weight("own", "ring", Optional.empty(), 1))),
        mistake(
            "twist: member is \"ring\"; wanted: a member: only a member takes a couple",
            d -> d.load(new Couple("twist", "ring", 1))),
        mistake(
            "twist: member is \"ground\"; wanted: a member: only a member takes a couple",
            d ->
                d.load(
                    new Sought(
                        "twist",
                        Sought.Want.COUPLE,
                        "ground",
                        Optional.empty(),
                        Optional.empty()))),
        mistake(
            "hay: from is \"kneel\"; wanted: the name of a point; the nearest is \"knee\"",
            d -> d.load(spread("kneel", "top", SpreadLoad.Per.LENGTH))),
        mistake(
            "hay: to is \"tops\"; wanted: the name of a point; the nearest is \"top\"",
            d -> d.load(spread("knee", "tops", SpreadLoad.Per.LENGTH))),
        mistake(
            "hay: from and to is knee and again at the same place; wanted: two places apart",
            d -> d.load(spread("knee", "again", SpreadLoad.Per.LENGTH))),
        mistake(
            "hay: per is horizontal on the upright segment knee to top; wanted: length, or a"
                + " segment that covers some horizontal width",
            d -> d.load(spread("knee", "top", SpreadLoad.Per.HORIZONTAL))),
        mistake(
            "coil: body is \"posts\"; wanted: the name of a body; the nearest is \"post\"",
            d -> d.load(new Spring("coil", End.of("posts", "top"), End.of("lever", "knee"), 1, 1))),
        mistake(
            "coil: at is \"tops\"; wanted: the name of a point; the nearest is \"top\"",
            d -> d.load(new Spring("coil", End.of("post", "tops"), End.of("lever", "knee"), 1, 1))),
        mistake(
            "coil: at is \"knee\"; wanted: the place of joint ring, which is top",
            d ->
                d.load(new Spring("coil", End.of("ring", "knee"), End.of("lever", "hinge"), 1, 1))),
        mistake(
            "coil: ends is knee and again at the same place; wanted: two places apart",
            d ->
                d.load(new Spring("coil", End.of("post", "knee"), End.of("lever", "again"), 1, 1))),
        mistake(
            "coil: joins is \"ring\"; wanted: a member: only a member takes a couple",
            d -> d.load(new TorsionSpring("coil", "ring", "ground", 1, 0))),
        mistake(
            "coil: joins is the joint ring; wanted: a member or the ground, which can turn or hold",
            d -> d.load(new TorsionSpring("coil", "post", "ring", 1, 0))),
        mistake(
            "coil: body is \"posts\"; wanted: the name of a body; the nearest is \"post\"",
            d -> d.load(new TorsionSpring("coil", "lever", "posts", 1, 0))),
        mistake(
            "gust: name is \"gust\"; wanted: a name that no other case has",
            d ->
                d.loadCase(new LoadCase("gust", Map.of(), 1))
                    .loadCase(new LoadCase("gust", Map.of(), 2))),
        mistake(
            "gust: factors is \"hands\"; wanted: the name of a load (there is none)",
            d -> d.loadCase(new LoadCase("gust", Map.of("hands", 2.0), 1))),
        mistake(
            "ties: count is 2; wanted: the name of a connection: hinge pin, knee pin",
            d -> d.count("ties", 2)));
  }

  private static SpreadLoad spread(String from, String to, SpreadLoad.Per per) {
    return new SpreadLoad("hay", "post", from, to, 1, 1, Optional.of(Direction.DOWN), per);
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void aMistakeIsToldInOneSentence(String sentence, Change change) {
    DeviceBuilder device = change.in(frame());
    assertThat(device.problems()).extracting(Problem::sentence).containsExactly(sentence);
    assertThatThrownBy(device::build).isInstanceOf(ModelException.class).hasMessage(sentence);
  }

  @Test
  void theSoundDeviceHasNone() {
    assertThat(frame().problems()).isEmpty();
    assertThat(frame().build().members()).hasSize(3);
  }

  @Test
  void aDeviceOfNothingIsNone() {
    assertThatThrownBy(() -> Device.named("nothing").build())
        .hasMessage("nothing: members is none; wanted: at least one member or joint");
  }

  @Test
  void aSoughtQuantityHasNoFactor() {
    DeviceBuilder device =
        frame()
            .force("hand", "post", "top", Vector.ZERO)
            .sought("push", "post", "top", Direction.UP)
            .loadCase(new LoadCase("gust", Map.of("push", 2.0), 1));
    assertThat(device.problems())
        .extracting(Problem::sentence)
        .singleElement()
        .asString()
        .startsWith("gust: factors is \"push\"; wanted: the name of a load");
  }

  @Test
  void allMistakesAreToldAtOnce() {
    DeviceBuilder device =
        frame()
            .member("arm", "nowhere", "hinge")
            .clamp("stop", "top", "nobody", "ground")
            .force("hand", "no part", "top", Vector.ZERO);
    assertThat(device.problems()).extracting(Problem::part).containsExactly("arm", "stop", "hand");
    assertThatThrownBy(device::build)
        .isInstanceOfSatisfying(ModelException.class, e -> assertThat(e.problems()).hasSize(3));
  }

  @Test
  void whatIsAlmostAMistakeIsNone() {
    Device device =
        frame()
            .point("edge", 1e9, -1e9)
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("lever", "hinge"),
                        Stop.sheave("ring", "top", 0.1, Turn.CLOCKWISE),
                        Stop.end("ground", "knee")),
                    1,
                    Reeving.Hauling.RAISING))
            .connect(
                new Reeving(
                    "second",
                    List.of(
                        Stop.end("lever", "hinge"),
                        Stop.sheave("ring", "top", 0, Turn.CLOCKWISE),
                        Stop.end("ground", "knee")),
                    0.9,
                    Reeving.Hauling.RAISING))
            .roller("rail", "top", "ring", "ground", Direction.UP)
            .force("load", "knee pin", "knee", Vector.ZERO)
            .load(new Weight("own", "lever", Optional.empty(), 1))
            .build();
    assertThat(device.connections()).hasSize(5);
  }
}
