package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Joint;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What acts on a body that is cut free. */
final class FreeBodyTest {

  private static ActingForce one(FreeBody body, String symbol) {
    List<ActingForce> found =
        body.forces().stream().filter(force -> force.symbol().equals(symbol)).toList();
    assertThat(found).as(symbol + " in " + body.forces()).hasSize(1);
    return found.get(0);
  }

  private static void isForce(ActingForce force, double x, double y) {
    assertThat(force.vector().x()).as(force.symbol()).isCloseTo(x, within(1e-9));
    assertThat(force.vector().y()).as(force.symbol()).isCloseTo(y, within(1e-9));
  }

  private static Sought couple(String name, String member) {
    return new Sought(name, Sought.Want.COUPLE, member, Optional.empty(), Optional.empty());
  }

  private static void closes(FreeBody body) {
    assertThat(body.openForces()).isEmpty();
    double fx = 0;
    double fy = 0;
    double moment = 0;
    for (ActingForce force : body.forces()) {
      fx += force.vector().x();
      fy += force.vector().y();
      moment += Point.ORIGIN.to(force.at()).cross(force.vector());
    }
    for (SpreadForce spread : body.spreads()) {
      fx += spread.total().x();
      fy += spread.total().y();
      moment += Point.ORIGIN.to(spread.middle()).cross(spread.total()) + spread.couple();
    }
    for (ActingCouple couple : body.couples()) {
      moment += couple.moment();
    }
    double close = 1e-9 * (1 + body.scale());
    assertThat(fx).isCloseTo(0, within(close));
    assertThat(fy).isCloseTo(0, within(close));
    assertThat(moment).isCloseTo(0, within(close));
  }

  @Test
  void aLeverHasItsLoadsItsEffortAndItsPin() {
    FreeBody body = FreeBody.of(Balance.of(Yard.press()), List.of("lever"));
    isForce(one(body, "hand"), 0, -220);
    isForce(one(body, "ram"), 0, 1408);
    isForce(one(body, "hinge"), 0, -1188);
    assertThat(one(body, "ram").origin()).isEqualTo(Origin.SOUGHT);
    assertThat(one(body, "hinge").origin()).isEqualTo(Origin.CONNECTION);
    assertThat(body.whole()).isTrue();
    closes(body);
  }

  @Test
  void theForcesOfTwoNeighboursAreOpposite() {
    Balance balance = Balance.of(Yard.tongs());
    FreeBody left = FreeBody.of(balance, List.of("left half"));
    FreeBody right = FreeBody.of(balance, List.of("right half"));
    Vector on = one(left, "crown").vector();
    isForce(one(right, "crown"), -on.x(), -on.y());
    closes(left);
    closes(right);
    FreeBody both = FreeBody.of(balance);
    assertThat(both.forces()).extracting(ActingForce::symbol).doesNotContain("crown");
    closes(both);
  }

  @Test
  void aRopeIsCutWhereItLeavesAndEachFallPulls() {
    Device hoist =
        Device.named("hoist")
            .point("beam", 0, 3)
            .point("block", 0, 1)
            .member("block", "block")
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("ground", "beam"),
                        Stop.sheave("block", "block", 0.1, Turn.COUNTER_CLOCKWISE),
                        Stop.end("ground", "beam")),
                    0.9,
                    Reeving.Hauling.RAISING))
            .connect(new Guide("shaft", "block", "block", "ground", Direction.UP))
            .force("crate", "block", "block", Vector.of(0, -190))
            .build();
    FreeBody block = FreeBody.of(Balance.of(hoist), List.of("block"));
    List<ActingForce> falls =
        block.forces().stream().filter(force -> force.part().equals("rope")).toList();
    assertThat(falls).hasSize(2);
    assertThat(falls.get(1).size() / falls.get(0).size()).isCloseTo(0.9, within(1e-12));
    assertThat(falls.get(0).at().x()).isCloseTo(-falls.get(1).at().x(), within(1e-12));
    // the rope touches the sheave square to its run
    assertThat(falls.get(0).at().distance(Point.of(0, 1))).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void aWrapHasTwoTensions() {
    Device post =
        Device.named("post")
            .point("post", 0, 0)
            .point("left", -0.1, -1)
            .point("right", 0.1, -1)
            .joint(new Joint("tub", "left"))
            .joint(new Joint("hand", "right"))
            .connect(
                new Wrap(
                    "rope",
                    Stop.end("tub", "left"),
                    new Stop(Stop.Kind.POST, "ground", "post", 0.1, Turn.CLOCKWISE),
                    Stop.end("hand", "right"),
                    0.3,
                    0))
            .force("tub", "tub", "left", Vector.of(0, -100))
            .force("pull", "hand", "right", Vector.of(0, -60))
            .build();
    Balance balance = Balance.of(post);
    isForce(one(FreeBody.of(balance, List.of("tub")), "rope"), 0, 100);
    isForce(one(FreeBody.of(balance, List.of("hand")), "rope"), 0, 60);
  }

  @Test
  void aLoadOnAPinGoesWithThePinWhereAllItsBodiesAreInside() {
    Device frame =
        Device.named("frame")
            .point("a", 0, 0)
            .point("top", 1, 1)
            .point("b", 2, 0)
            .member("left", "a", "top")
            .member("right", "top", "b")
            .pin("a", "a", "left", "ground")
            .pin("top", "top", "left", "right")
            .pin("b", "b", "right", "ground")
            .force("crate", "top", "top", Vector.of(0, -100))
            .build();
    Balance balance = Balance.of(frame);
    FreeBody left = FreeBody.of(balance, List.of("left"));
    assertThat(left.forces()).extracting(ActingForce::symbol).containsExactly("a", "top");
    closes(left);
    FreeBody whole = FreeBody.of(balance);
    isForce(one(whole, "crate"), 0, -100);
    closes(whole);
  }

  @Test
  void aPinThroughThreeBodiesIsCutFromTheGroundOnly() {
    Device frame =
        Device.named("frame")
            .point("a", 0, 0)
            .point("top", 1, 1)
            .point("b", 2, 0)
            .member("left", "a", "top")
            .member("right", "top", "b")
            .member("tie", "a", "b")
            .pin("a", "a", "left", "tie", "ground")
            .pin("top", "top", "left", "right")
            .pin("b", "b", "right", "tie")
            .connect(new Roller("wheel", "b", "right", "ground", Direction.UP, Sides.ONE))
            .force("crate", "left", "top", Vector.of(0, -100))
            .build();
    Balance balance = Balance.of(frame);
    FreeBody whole = FreeBody.of(balance);
    isForce(one(whole, "a"), 0, 50);
    isForce(one(whole, "wheel"), 0, 50);
    closes(whole);
    for (String body : List.of("left", "right", "tie")) {
      closes(FreeBody.of(balance, List.of(body)));
    }
  }

  @Test
  void clampGuideSlotBaseStrutAndSpreadLoadAreCut() {
    Device shed =
        Device.named("shed")
            .point("wall", 0, 0)
            .point("end", 2, 0)
            .point("low", 2, -1)
            .member("beam", "wall", "end")
            .member("block", "low")
            .connect(new Clamp("wall", "wall", "beam", "ground"))
            .connect(new Guide("guide", "low", "block", "ground", Direction.UP))
            .connect(new Strut("rod", End.of("beam", "end"), End.of("block", "low"), 2))
            .load(
                new SpreadLoad(
                    "snow",
                    "beam",
                    "wall",
                    "end",
                    100,
                    40,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.LENGTH))
            .sought("jack", "block", "low", Direction.UP)
            .load(new Couple("twist", "beam", 7))
            .load(new TorsionSpring("coil", "beam", "ground", 10, 0.2))
            .build();
    Balance balance = Balance.of(shed);
    for (String body : List.of("beam", "block")) {
      FreeBody cut = FreeBody.of(balance, List.of(body));
      assertThat(cut.forces()).anyMatch(force -> force.symbol().equals("half of rod"));
    }
  }

  @Test
  void aBasePushesWhereItsPressureHasItsMiddle() {
    Device crate =
        Device.named("crate")
            .point("floor", 0, 0)
            .point("edge", -0.2, 0.9)
            .member("crate", "floor", "edge")
            .connect(new ContactBase("floor", "floor", "crate", "ground", Direction.UP, 0.4, 1, 1))
            .force("weight", "crate", "floor", Vector.of(0, -540))
            .force("lean", "crate", "edge", Vector.of(50, 0))
            .build();
    FreeBody body = FreeBody.of(Balance.of(crate));
    // 50 · 0.9 / 540 to the right
    assertThat(one(body, "floor").at().x()).isCloseTo(1.0 / 12, within(1e-12));
    assertThat(body.couples()).isEmpty();
    closes(body);
    List<ActingForce> parts = one(body, "floor").components();
    assertThat(parts)
        .extracting(ActingForce::symbol)
        .containsExactly("floor.normal", "floor.friction");
    isForce(parts.get(0), 0, 540);
    isForce(parts.get(1), -50, 0);
  }

  @Test
  void otherBodyOfASlotAndASpringTakeTheOpposite() {
    Device pair =
        Device.named("pair")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .point("c", 1, 1)
            .member("link", "a", "b")
            .member("arm", "c", "b")
            .pin("a", "a", "link", "ground")
            .pin("c", "c", "arm", "ground")
            .connect(new Slot("slot", "b", "link", "arm", Direction.UP, Sides.TWO))
            .load(new Spring("spring", End.of("arm", "b"), End.of("link", "a"), 50, 0.4))
            .load(couple("hold", "link"))
            .build();
    Balance balance = Balance.of(pair);
    FreeBody link = FreeBody.of(balance, List.of("link"));
    FreeBody arm = FreeBody.of(balance, List.of("arm"));
    isForce(one(link, "spring"), 30, 0);
    isForce(one(arm, "spring"), -30, 0);
    closes(link);
    closes(arm);
    assertThat(FreeBody.of(balance).forces())
        .extracting(ActingForce::symbol)
        .doesNotContain("spring", "slot");
  }

  @Test
  void soughtComponentsMassAndIntensityAreForces() {
    Device plank =
        Device.named("plank")
            .point("a", 0, 0)
            .point("b", 2, 0)
            .member("plank", "a", "b")
            .load(
                new Sought(
                    "hold", Sought.Want.COMPONENTS, "plank", Optional.of("a"), Optional.empty()))
            .load(
                new Sought(
                    "sand",
                    Sought.Want.INTENSITY,
                    "plank",
                    Optional.of("a"),
                    Optional.of(Direction.DOWN),
                    Optional.of("b")))
            .force("lift", "plank", "b", Vector.of(10, 60))
            .build();
    FreeBody body = FreeBody.of(Balance.of(plank));
    assertThat(body.spreads()).hasSize(1);
    assertThat(body.spreads().get(0).total().y()).isCloseTo(-120, within(1e-9));
    isForce(one(body, "hold"), -10, 60);
    assertThat(one(body, "hold").components()).hasSize(2);
    closes(body);
  }

  @Test
  void openForcesKeepTheirLine() {
    FreeBody body = FreeBody.of(Balance.of(Yard.bench()));
    assertThat(body.openForces()).extracting(OpenForce::symbol).contains("a.y", "b", "c");
    isForce(one(body, "a.x"), 0, 0);
    assertThat(body.isZero(one(body, "a.x").size())).isTrue();
  }

  @Test
  void aDryPinWithoutADecisionIsOpen() {
    Device lever =
        Yard.pressLever()
            .point("far", 2, 0)
            .member("link", "grip", "far")
            .connect(new Pin("dry", "grip", List.of("lever", "link"), 0.01, 0.2))
            .build();
    FreeBody body = FreeBody.of(Balance.of(lever), List.of("lever"));
    assertThat(body.openCouples()).extracting(OpenCouple::part).containsExactly("dry");
  }

  @Test
  void theCaseCounts() {
    Device press =
        Yard.pressLever()
            .loadCase(new LoadCase("half", Map.of("hand", 0.5), 1))
            .loadCase(new LoadCase("jerk", Map.of(), 2))
            .build();
    isForce(one(FreeBody.of(Balance.of(press, "half")), "hand"), 0, -110);
    isForce(one(FreeBody.of(Balance.of(press, "jerk")), "ram"), 0, 2816);
  }

  @Test
  void aHorizontalLoadIsPerLevelMetre() {
    Device roof =
        Device.named("roof")
            .point("eaves", 0, 0)
            .point("ridge", 3, 4)
            .member("rafter", "eaves", "ridge")
            .pin("eaves", "eaves", "rafter", "ground")
            .load(
                new SpreadLoad(
                    "snow",
                    "rafter",
                    "eaves",
                    "ridge",
                    200,
                    200,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.HORIZONTAL))
            .sought("prop", "rafter", "ridge", Direction.UP)
            .build();
    FreeBody body = FreeBody.of(Balance.of(roof));
    assertThat(body.spreads().get(0).total().y()).isCloseTo(-600, within(1e-9));
    closes(body);
  }

  @Test
  void mistakesAreToldWithWhatThereIs() {
    Balance balance = Balance.of(Yard.tongs());
    assertThatThrownBy(() -> FreeBody.of(balance, List.of("leaf")))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("leaf")
        .hasMessageContaining("left half, right half");
    assertThatThrownBy(() -> FreeBody.of(balance, List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("at least one");
    assertThatThrownBy(() -> FreeBody.of(balance, List.of("ground")))
        .isInstanceOf(ModelException.class);
  }
}
