package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.explanation;
import static bellcrank.statics.equilibrium.Si.number;
import static bellcrank.statics.equilibrium.Si.reason;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every kind of ask on devices small enough to work out in the head. */
class AnswersTest {

  private static final double CLOSE = 1e-12;

  /** A beam of 4 m from A to B on a pin at A and a roller at B. */
  private static DeviceBuilder beam() {
    return Device.named("beam")
        .point("A", 0, 0)
        .point("M", 2, 0)
        .point("B", 4, 0)
        .point("T", 4, 3)
        .member("beam", "A", "M", "B")
        .pin("pin", "A", "beam", "ground")
        .roller("roller", "B", "beam", "ground", Direction.UP);
  }

  @Test
  void aPinTellsComponentsSizeDirectionAndMoment() {
    Balance balance = Balance.of(beam().force("load", "beam", "M", Vector.of(-30, -80)).build());
    assertThat(number(balance, "pin.x")).isCloseTo(30, within(CLOSE));
    assertThat(number(balance, "pin.y")).isCloseTo(40, within(CLOSE));
    assertThat(number(balance, "pin")).isCloseTo(50, within(CLOSE));
    assertThat(number(balance, "pin.size on ground")).isCloseTo(50, within(CLOSE));
    assertThat(number(balance, "pin.direction")).isCloseTo(Math.atan2(4, 3), within(CLOSE));
    assertThat(number(balance, "pin.direction on ground"))
        .isCloseTo(Math.PI + Math.atan2(4, 3), within(CLOSE));
    assertThat(number(balance, "pin.moment about B")).isCloseTo(-160, within(CLOSE));
    assertThat(number(balance, "pin.moment about B on ground")).isCloseTo(160, within(CLOSE));
    assertThat(number(balance, "roller.x")).isZero();
    assertThat(number(balance, "roller.size")).isCloseTo(40, within(CLOSE));
    assertThat(number(balance, "roller.y on ground")).isCloseTo(-40, within(CLOSE));
    assertThat(balance.answer("pin.x"))
        .isInstanceOfSatisfying(
            Answer.Value.class, value -> assertThat(value.dimension()).isEqualTo(Dimension.FORCE));
  }

  @Test
  void anAskForWhatTheDeviceDoesNotHaveIsAMistakeOfTheCaller() {
    Balance balance = Balance.of(beam().build());
    assertThatThrownBy(() -> balance.answer("pim.x"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("pin");
    assertThatThrownBy(() -> balance.number("roller.tension")).isInstanceOf(ModelException.class);
  }

  @Test
  void reactionsListEveryConnectionOnEveryBodyButTheGround() {
    Device device =
        beam()
            .member("post", "B", "T")
            .clamp("knee", "B", "post", "beam")
            .force("load", "post", "T", Vector.of(8, 0))
            .count("roller", 2)
            .build();
    List<Reaction> reactions = Balance.of(device).reactions();
    assertThat(reactions)
        .extracting(one -> one.connection() + " on " + one.body())
        .containsExactly("pin on beam", "roller on beam", "knee on post", "knee on beam");
    Reaction knee = reactions.get(3);
    assertThat(knee.kind()).isEqualTo("clamp");
    assertThat(knee.at()).isEqualTo(Point.of(4, 0));
    assertThat(knee.hasCouple()).isTrue();
    assertThat(((Answer.Value) knee.x()).si()).isCloseTo(8, within(CLOSE));
    assertThat(((Answer.Value) knee.couple()).si()).isCloseTo(-24, within(CLOSE));
    assertThat(((Answer.Value) knee.size()).si()).isCloseTo(8, within(CLOSE));
    assertThat(reactions.get(1).count()).isEqualTo(2);
    assertThat(reactions.get(1).hasCouple()).isFalse();
    assertThat(reactions.get(1).couple()).isEqualTo(new Answer.Value(0, Dimension.MOMENT));
    assertThat(reactions.get(0).count()).isEqualTo(1);
  }

  @Test
  void eachOfSeveralEqualPartsCarriesItsShare() {
    Device device =
        beam()
            .member(new Member("pair", List.of("B", "T"), List.of(), List.of(), 2))
            .clamp("knee", "B", "pair", "beam")
            .force("load", "beam", "M", Vector.of(0, -80))
            .count("roller", 2)
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "roller")).isCloseTo(40, within(CLOSE));
    assertThat(number(balance, "roller each")).isCloseTo(20, within(CLOSE));
    assertThat(number(balance, "roller.y each")).isCloseTo(20, within(CLOSE));
  }

  @Test
  void ratiosOfAnswersAreNumbers() {
    Balance balance = Balance.of(beam().force("load", "beam", "M", Vector.of(0, -80)).build());
    assertThat(number(balance, "load.size per roller")).isCloseTo(2, within(CLOSE));
    assertThat(reason(balance, "load.size per pin.x")).isEqualTo(Answer.Reason.NOT_DEFINED);
    assertThat(explanation(balance, "pin.moment about B per roller")).contains("different kinds");
    Balance redundant =
        Balance.of(
            beam()
                .force("load", "beam", "M", Vector.of(0, -80))
                .roller("prop", "M", "beam", "ground", Direction.UP)
                .build());
    assertThat(reason(redundant, "prop per load.size")).isEqualTo(Answer.Reason.UNDETERMINED);
    assertThat(reason(redundant, "load.size per prop")).isEqualTo(Answer.Reason.UNDETERMINED);
  }

  @Test
  void strutLineAndWeightOfAStrut() {
    Device device =
        Device.named("bracket")
            .point("A", 0, 0)
            .point("W", 0, 3)
            .point("B", 4, 0)
            .joint("B")
            .connect(new Strut("strut", End.of("B", "B"), End.of("ground", "A"), 10))
            .line("tie", End.of("B", "B"), End.of("ground", "W"))
            .gravity(Vector.of(0, -10))
            .force("load", "B", "B", Vector.of(0, -250))
            .build();
    Balance balance = Balance.of(device);
    // half of the strut's 100 N hangs on B
    assertThat(number(balance, "tie")).isCloseTo(500, within(1e-9));
    assertThat(number(balance, "strut.compression")).isCloseTo(400, within(1e-9));
    assertThat(number(balance, "strut.tension")).isCloseTo(-400, within(1e-9));
    assertThat(number(balance, "tie.x on B")).isCloseTo(-400, within(1e-9));
    assertThat(number(balance, "tie.y on ground")).isCloseTo(-300, within(1e-9));
    assertThat(number(balance, "resultant.y"))
        .as("its other half hangs on the ground")
        .isCloseTo(-300, within(1e-9));
  }

  @Test
  void givenLoadsTellThemselves() {
    Device device =
        beam()
            .gravity(Vector.of(0, -10))
            .force("push", "beam", "M", Vector.of(3, -4))
            .load(new Couple("twist", "beam", 7))
            .load(new Weight("barrel", "beam", Optional.of("B"), 5))
            .load(new Weight("own", "beam", Optional.empty(), 2))
            .load(
                new SpreadLoad(
                    "apples",
                    "beam",
                    "A",
                    "M",
                    0,
                    60,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.LENGTH))
            .load(new Spring("spring", End.of("beam", "B"), End.of("ground", "T"), 100, 2.5))
            .load(new TorsionSpring("coil", "beam", "ground", 20, 0.1))
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "push")).isCloseTo(5, within(CLOSE));
    assertThat(number(balance, "push.x")).isEqualTo(3);
    assertThat(number(balance, "push.y")).isEqualTo(-4);
    assertThat(number(balance, "push.direction"))
        .isCloseTo(2 * Math.PI - Math.atan2(4, 3), within(CLOSE));
    assertThat(number(balance, "push.moment about A")).isCloseTo(-8, within(CLOSE));
    assertThat(number(balance, "twist")).isCloseTo(7, within(CLOSE));
    assertThat(number(balance, "twist.moment about T")).isCloseTo(7, within(CLOSE));
    assertThat(number(balance, "barrel")).isCloseTo(50, within(CLOSE));
    assertThat(number(balance, "own.moment about A")).isCloseTo(-40, within(CLOSE));
    assertThat(number(balance, "apples.size")).isCloseTo(60, within(CLOSE));
    assertThat(number(balance, "apples.moment about A"))
        .as("two thirds along the triangle")
        .isCloseTo(-80, within(CLOSE));
    assertThat(number(balance, "spring.y")).as("on the first end").isCloseTo(50, within(CLOSE));
    assertThat(number(balance, "coil")).isCloseTo(-2, within(CLOSE));
    double loads = -4 - 50 - 20 - 60 + 50;
    assertThat(number(balance, "resultant.y")).isCloseTo(loads, within(CLOSE));
    assertThat(number(balance, "pin.y") + number(balance, "roller.y"))
        .isCloseTo(-loads, within(1e-10));
    double moments = -8 + 7 - 200 - 40 - 80 + 200 - 2;
    assertThat(number(balance, "resultant.moment about A")).isCloseTo(moments, within(1e-10));
    assertThat(number(balance, "roller")).isCloseTo(-moments / 4, within(1e-10));
  }

  @Test
  void spreadLoadsHaveADirectionAndAMeasure() {
    DeviceBuilder roof =
        Device.named("rafter")
            .point("A", 0, 0)
            .point("B", 4, 3)
            .member("rafter", "A", "B")
            .clamp("foot", "A", "rafter", "ground");
    Device device =
        roof.load(
                new SpreadLoad(
                    "tiles",
                    "rafter",
                    "A",
                    "B",
                    10,
                    10,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.LENGTH))
            .load(
                new SpreadLoad(
                    "snow",
                    "rafter",
                    "B",
                    "A",
                    10,
                    10,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.HORIZONTAL))
            .load(
                new SpreadLoad(
                    "wind", "rafter", "A", "B", -10, -20, Optional.empty(), SpreadLoad.Per.LENGTH))
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "tiles.y")).isCloseTo(-50, within(CLOSE));
    assertThat(number(balance, "snow.y")).isCloseTo(-40, within(CLOSE));
    assertThat(number(balance, "wind.x"))
        .as("to the right of the way up")
        .isCloseTo(75 * 0.6, within(CLOSE));
    assertThat(number(balance, "wind.y")).isCloseTo(-75 * 0.8, within(CLOSE));
    // 10·25/2 + 10/2·5·(2/3·5), counted clockwise
    assertThat(number(balance, "wind.moment about A"))
        .isCloseTo(-(125 + 25 * 10.0 / 3), within(1e-11));
  }

  @Test
  void theResultantHasALine() {
    Device device =
        beam()
            .force("one", "beam", "A", Vector.of(0, -10))
            .force("two", "beam", "B", Vector.of(0, -30))
            .build();
    Balance balance = Balance.of(device);
    assertThat(balance.answer("resultant.line"))
        .isInstanceOfSatisfying(
            Answer.LineOfAction.class,
            line -> {
              assertThat(line.size()).isCloseTo(40, within(CLOSE));
              assertThat(line.line().direction()).isEqualTo(Direction.DOWN);
              assertThat(line.line().point().x()).isCloseTo(3, within(CLOSE));
            });
    assertThat(number(balance, "resultant.distance along A–B")).isCloseTo(3, within(CLOSE));
    assertThat(number(balance, "resultant.distance along B–A")).isCloseTo(1, within(CLOSE));
    assertThat(number(balance, "resultant.arm about A")).isCloseTo(-3, within(CLOSE));
    assertThat(number(balance, "resultant.arm about B")).isCloseTo(1, within(CLOSE));
    assertThat(number(balance, "resultant(two).size")).isCloseTo(30, within(CLOSE));
    assertThat(number(balance, "resultant(one, two).direction"))
        .isCloseTo(1.5 * Math.PI, within(CLOSE));
    assertThat(explanation(balance, "resultant.distance along B–T")).contains("parallel to B–T");
  }

  @Test
  void aCoupleHasNoLineOfAction() {
    Balance balance =
        Balance.of(
            beam()
                .force("one", "beam", "A", Vector.of(0, -10))
                .force("two", "beam", "B", Vector.of(0, 10))
                .build());
    assertThat(reason(balance, "resultant.line")).isEqualTo(Answer.Reason.NOT_DEFINED);
    assertThat(reason(balance, "resultant.arm about A")).isEqualTo(Answer.Reason.NOT_DEFINED);
    assertThat(reason(balance, "resultant.distance along A–B"))
        .isEqualTo(Answer.Reason.NOT_DEFINED);
    assertThat(reason(balance, "resultant.direction")).isEqualTo(Answer.Reason.NOT_DEFINED);
    assertThat(number(balance, "resultant.moment about T")).isCloseTo(40, within(CLOSE));
  }

  @Test
  void theCentreOfGravityWeighsAllWeights() {
    Device device =
        beam()
            .load(new Weight("barrel", "beam", Optional.of("B"), 6))
            .load(new Weight("own", "beam", Optional.empty(), 2))
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "centre.x")).isCloseTo(3.5, within(CLOSE));
    assertThat(number(balance, "centre.y")).isZero();
    assertThat(number(balance, "centre(beam).x")).isCloseTo(3.5, within(CLOSE));
    assertThat(number(balance, "centre.distance along B–A")).isCloseTo(0.5, within(CLOSE));
    Pose turned = Pose.of(Map.of("beam", Frame.turnAbout(Point.ORIGIN, Math.PI / 2)));
    assertThat(number(Balance.of(device, LoadCase.ALL_LOADS, turned), "centre.y"))
        .isCloseTo(3.5, within(CLOSE));
    assertThat(explanation(Balance.of(beam().build()), "centre.x")).contains("no weight");
  }

  @Test
  void soughtQuantitiesOfEveryKind() {
    DeviceBuilder board =
        Device.named("board")
            .point("O", 0, 0)
            .point("P", 2, 0)
            .member("board", "O", "P")
            .gravity(Vector.of(0, -10))
            .force("load", "board", "P", Vector.of(30, 40));
    Device held =
        board
            .load(
                new Sought(
                    "hand", Sought.Want.COMPONENTS, "board", Optional.of("O"), Optional.empty()))
            .load(
                new Sought(
                    "twist", Sought.Want.COUPLE, "board", Optional.empty(), Optional.empty()))
            .build();
    Balance balance = Balance.of(held);
    assertThat(number(balance, "hand")).isCloseTo(50, within(CLOSE));
    assertThat(number(balance, "hand.x")).isCloseTo(-30, within(CLOSE));
    assertThat(number(balance, "hand.y")).isCloseTo(-40, within(CLOSE));
    assertThat(number(balance, "hand.direction"))
        .isCloseTo(Math.PI + Math.atan2(4, 3), within(CLOSE));
    assertThat(number(balance, "hand.moment about P")).isCloseTo(80, within(CLOSE));
    assertThat(number(balance, "twist")).isCloseTo(-80, within(CLOSE));
    assertThat(number(balance, "twist.couple")).isCloseTo(-80, within(CLOSE));
  }

  @Test
  void aSoughtMassIsItsWeightOverGravity() {
    DeviceBuilder plank =
        beamOnHinge().force("load", "beam", "A", Vector.of(0, -40)).gravity(Vector.of(0, -10));
    Device device =
        plank
            .load(new Sought("stone", Sought.Want.MASS, "beam", Optional.of("B"), Optional.empty()))
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "stone")).isCloseTo(4, within(CLOSE));
    assertThat(number(balance, "stone.mass")).isCloseTo(4, within(CLOSE));
    assertThat(number(balance, "stone.y")).isCloseTo(-40, within(CLOSE));
    assertThat(number(balance, "stone.moment about M")).isCloseTo(-80, within(CLOSE));
    assertThat(balance.answer("stone"))
        .isInstanceOfSatisfying(
            Answer.Value.class, value -> assertThat(value.dimension()).isEqualTo(Dimension.MASS));
  }

  private static DeviceBuilder beamOnHinge() {
    return Device.named("balance beam")
        .point("A", 0, 0)
        .point("M", 2, 0)
        .point("B", 4, 0)
        .member("beam", "A", "M", "B")
        .pin("pin", "M", "beam", "ground");
  }

  @Test
  void aMassHasNoWeightWithoutGravity() {
    Device device =
        beamOnHinge()
            .gravity(Vector.ZERO)
            .load(new Sought("stone", Sought.Want.MASS, "beam", Optional.of("B"), Optional.empty()))
            .build();
    assertThat(explanation(Balance.of(device), "stone")).contains("no gravity");
  }

  private static Device loadedPin() {
    return Device.named("two props")
        .point("L", -3, 0)
        .point("R", 3, 0)
        .point("H", 0, 4)
        .member("left", "L", "H")
        .member("right", "R", "H")
        .pin("l", "L", "left", "ground")
        .pin("r", "R", "right", "ground")
        .pin("head", "H", "left", "right")
        .force("load", "head", "H", Vector.of(0, -80))
        .build();
  }

  @Test
  void aLoadOnAPinIsSharedByItsBodies() {
    Balance balance = Balance.of(loadedPin());
    assertThat(number(balance, "head.y on left")).isCloseTo(-40, within(1e-10));
    assertThat(number(balance, "head.y on right")).isCloseTo(-40, within(1e-10));
    assertThat(number(balance, "head.x on left")).isCloseTo(-30, within(1e-10));
    assertThat(number(balance, "head.x on right")).isCloseTo(30, within(1e-10));
    assertThat(number(balance, "group(left).y"))
        .as("a lone body is in equilibrium")
        .isCloseTo(0, within(1e-10));
    assertThat(number(balance, "group(left, right).y"))
        .as("the pin belongs to the group then")
        .isCloseTo(80, within(1e-10));
    assertThat(number(balance, "group(left, right).y from ground")).isCloseTo(80, within(1e-10));
  }

  /** Found by random devices: action and reaction differed by the load on the pin. */
  @Test
  void aLoadOnAPinIsNotSharedOutBetweenGroups() {
    Balance balance = Balance.of(loadedPin());
    assertThat(explanation(balance, "group(left).y from group(right)"))
        .isEqualTo(
            "pin head carries a load of its own, which cannot be shared out between its bodies");
    assertThat(reason(balance, "group(right).y from group(left)"))
        .isEqualTo(Answer.Reason.NOT_DEFINED);
    assertThat(number(balance, "group(left).y from ground")).isCloseTo(40, within(1e-10));
  }

  @Test
  void aPinOfThreeBodiesIsNotSharedOutBetweenTwoOfThem() {
    Device device =
        Device.named("tripod head")
            .point("L", -3, 0)
            .point("R", 3, 0)
            .point("H", 0, 4)
            .point("hook", 0, 3)
            .member("left", "L", "H")
            .member("right", "R", "H")
            .member("hanger", "H", "hook")
            .pin("l", "L", "left", "ground")
            .pin("r", "R", "right", "ground")
            .pin("head", "H", "left", "right", "hanger")
            .force("load", "hanger", "hook", Vector.of(0, -80))
            .build();
    Balance balance = Balance.of(device);
    assertThat(explanation(balance, "group(left).y from group(right)"))
        .contains("pin head joins the group to bodies of both kinds");
    assertThat(number(balance, "group(left).y from group(right, hanger)"))
        .isCloseTo(-40, within(1e-10));
    assertThat(number(balance, "group(left, right).y from group(hanger)"))
        .isCloseTo(-80, within(1e-10));
    assertThat(number(balance, "group(hanger).couple about L")).isCloseTo(240, within(1e-9));
    assertThat(number(balance, "group(hanger).moment about L")).isCloseTo(240, within(1e-9));
    assertThat(number(balance, "group(left).direction from ground"))
        .isCloseTo(Math.atan2(4, 3), within(1e-10));
  }

  @Test
  void wholeAnswers() {
    Balance balance = Balance.of(beam().build());
    assertThat(balance.answer("outcome")).isEqualTo(new Answer.Words("in balance"));
    assertThat(number(balance, "freedoms")).isZero();
    assertThat(number(balance, "redundancy")).isZero();
    assertThat(balance.number("outcome")).isEmpty();
  }

  @Test
  void halfOfAStrutsWeightIsAtEitherEnd() {
    Device device =
        Device.named("jib and strut")
            .point("O", 0, 0)
            .point("P", 3, 4)
            .point("G", 6, 0)
            .member("jib", "O", "P")
            .pin("heel", "O", "jib", "ground")
            .connect(new Strut("prop", End.of("jib", "P"), End.of("ground", "G"), 8))
            .load(new Weight("own", "jib", Optional.of("O"), 4))
            .build();
    Balance balance = Balance.of(device);
    // 4 kg at O, 4 kg of the strut at P and 4 kg at G
    assertThat(number(balance, "centre.x")).isCloseTo((0 + 4 * 3 + 4 * 6) / 12.0, within(CLOSE));
    assertThat(number(balance, "centre.y")).isCloseTo(4 * 4 / 12.0, within(CLOSE));
    assertThat(number(balance, "centre(jib).x")).as("without parts that are no bodies").isZero();
    // along O–P: (3·0.6 + 4/3·0.8)
    assertThat(number(balance, "centre.distance along O–P"))
        .isCloseTo(3 * 0.6 + 4 / 3.0 * 0.8, within(CLOSE));
  }

  @Test
  void aSoughtIntensityIsPerMetre() {
    Device device =
        beamOnHinge()
            .force("load", "beam", "A", Vector.of(0, -60))
            .load(
                new Sought(
                    "sacks",
                    Sought.Want.INTENSITY,
                    "beam",
                    Optional.of("M"),
                    Optional.of(Direction.DOWN),
                    Optional.of("B")))
            .build();
    // 60·2 = q·2·1
    assertThat(number(device, "sacks")).isCloseTo(60, within(CLOSE));
    assertThat(number(device, "sacks.y")).isCloseTo(-120, within(CLOSE));
    assertThat(number(device, "pin.y")).isCloseTo(180, within(CLOSE));
    Prepared prepared = Prepared.of(device);
    Prepared.Buffer buffer = prepared.buffer();
    assertThat(buffer.solve(Pose.DRAWN, LoadCase.ALL_LOADS)).isTrue();
    assertThat(buffer.value(prepared.slot("sacks"))).isCloseTo(60, within(CLOSE));
    assertThatThrownBy(() -> prepared.slot("sacks.y")).isInstanceOf(ModelException.class);
  }

  /** A rope that pulls both ways has a sum of forces even where its tension is open. */
  @Test
  void aSumCanBeFixedThoughItsPartsAreNot() {
    Device device =
        Device.named("bucket on a rope and a guide")
            .point("left", -3, 0)
            .point("right", 3, 0)
            .point("hook", 0, -4)
            .member("bucket", "hook")
            .connect(new Guide("rail", "hook", "bucket", "ground", Direction.RIGHT))
            .roller("stop", "hook", "bucket", "ground", Direction.RIGHT)
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("ground", "left"),
                        Stop.sheave("bucket", "hook", 0, Turn.CLOCKWISE),
                        Stop.end("ground", "right")),
                    1,
                    Reeving.Hauling.IDEAL))
            .force("weight", "bucket", "hook", Vector.of(0, -50))
            .build();
    Balance balance = Balance.of(device);
    assertThat(balance.redundancy()).isEqualTo(1);
    assertThat(reason(balance, "rope")).isEqualTo(Answer.Reason.UNDETERMINED);
    assertThat(reason(balance, "rope.y on bucket")).isEqualTo(Answer.Reason.UNDETERMINED);
    assertThat(number(balance, "rope.x on bucket")).as("both parts pull alike").isZero();
    assertThat(number(balance, "rope.moment about hook on bucket")).isZero();
    assertThat(number(balance, "stop")).isCloseTo(0, within(1e-10));
    assertThat(balance.undetermined())
        .extracting(Object::toString)
        .containsExactlyInAnyOrder("rail.normal", "rope.tension");
  }

  /** Of so small a force the square is none. */
  @Test
  void theLeastForcesHaveALineOfActionAsWell() {
    Device device =
        Device.named("board")
            .point("A", 0, 0)
            .point("B", 4, 0)
            .member("board", "A", "B")
            .clamp("wall", "A", "board", "ground")
            .force("feather", "board", "B", Vector.of(0, -1e-200))
            .build();
    assertThat(number(Balance.of(device), "resultant.distance along A–B"))
        .isCloseTo(4, within(CLOSE));
  }
}
