package bellcrank.statics.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What each kind of step tells, on the smallest device that has it. */
class StepsTest {

  private static <T extends Step> T only(WorkedSolution solution, Class<T> kind) {
    List<Step> found = solution.steps().stream().filter(kind::isInstance).toList();
    assertThat(found).as(solution.steps().toString()).hasSize(1);
    return kind.cast(found.get(0));
  }

  private static String full(WorkedSolution solution) {
    return SolutionWriter.of(Detail.FULL, UnitSystem.SI).text(solution);
  }

  private static double found(WorkedSolution solution, String symbol) {
    return solution.found().stream()
        .filter(one -> one.unknown().symbol().text().equals(symbol))
        .findFirst()
        .orElseThrow()
        .si();
  }

  @Test
  void anEquationTellsCutPointTermsAndWhatItLeavesOut() {
    WorkedSolution solution =
        WorkedSolution.of(Balance.of(HandSolutionsTest.lever()), List.of(Ask.of("ram")));
    Step.Single step = only(solution, Step.Single.class);
    Equation equation = step.equation();
    assertThat(equation.cut()).containsExactly("lever");
    assertThat(equation.section()).isFalse();
    assertThat(equation.condition()).isEqualTo(new Condition.Moments("hinge", Point.ORIGIN));
    assertThat(equation.avoided())
        .extracting(one -> one.symbol().text())
        .containsExactly("hinge_x", "hinge_y");
    Term ram = equation.terms().get(0);
    assertThat(ram.symbol()).isEqualTo(new Symbol("P", "ram"));
    assertThat(ram.sought()).isTrue();
    assertThat(ram.given()).isFalse();
    assertThat(ram.arm()).isTrue();
    assertThat(ram.coefficient()).isEqualTo(0.25);
    Term hand = equation.terms().get(1);
    assertThat(hand.name()).isEqualTo("hand");
    assertThat(hand.given()).isTrue();
    assertThat(hand.coefficient()).isEqualTo(-1.6);
    assertThat(hand.value()).hasValue(220);
    assertThat(hand.contribution()).isEqualTo(-352);
    assertThat(equation.sum()).isCloseTo(0, within(1e-12));
    assertThat(step.found().si()).isCloseTo(1408, within(1e-9));
    assertThat(step.found().unknown().words(1)).isEqualTo("up on lever");
    assertThat(step.found().unknown().meaning()).isEqualTo("sought ram on lever, positive up");
    assertThat(solution.given())
        .singleElement()
        .satisfies(one -> assertThat(one.words()).isEqualTo("down"));
  }

  @Test
  void fullTextReadsLikeAHandSolution() {
    WorkedSolution solution =
        WorkedSolution.of(Balance.of(HandSolutionsTest.lever()), List.of(Ask.of("ram")));
    assertThat(full(solution))
        .contains(
            """
            1. Cut lever free. Moments about hinge: hinge_x and hinge_y have no arm there, so only P_ram is unknown.
               0.25 m · P_ram − 1.6 m · F_hand = 0
               0.25 m · P_ram − 1.6 m · 220 N = 0
               P_ram = 1408 N (up on lever)

            Answers
              ram: 1408 N
            """);
  }

  @Test
  void lossyRopeTellsItsTensions() {
    Device hoist =
        Device.named("hoist")
            .point("beam", 0, 3)
            .point("block", 0, 1)
            .point("hand", 0, 2.5)
            .joint("block")
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("ground", "beam"),
                        Stop.sheave("block", "block", 0, Turn.COUNTER_CLOCKWISE),
                        Stop.end("ground", "hand")),
                    0.9,
                    Reeving.Hauling.RAISING))
            .force("barrel", "block", "block", Vector.of(0, -190))
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(hoist));
    Step.RopeLaw law = only(solution, Step.RopeLaw.class);
    assertThat(law.multiples()).containsExactly(1.0, 0.9);
    assertThat(found(solution, "T_rope")).isCloseTo(100, within(1e-9));
    assertThat(full(solution)).contains("carry T_rope times 1 and 0.9.");
  }

  @Test
  void ropeRoundAPostTellsItsLaw() {
    Device capstan =
        Device.named("post")
            .point("post", 0, 2)
            .point("barrel", -0.1, 0)
            .point("hand", 0.1, 0)
            .joint("barrel")
            .joint("hand")
            .connect(
                new Wrap(
                    "rope",
                    Stop.end("barrel", "barrel"),
                    new Stop(Stop.Kind.POST, "ground", "post", 0.1, Turn.CLOCKWISE),
                    Stop.end("hand", "hand"),
                    0.3,
                    0))
            .force("load", "barrel", "barrel", Vector.of(0, -200))
            .force("pull", "hand", "hand", Vector.of(0, -100))
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(capstan));
    Step.PostLaw law = only(solution, Step.PostLaw.class);
    assertThat(law.angle()).isCloseTo(Math.PI, within(1e-9));
    assertThat(law.friction()).isEqualTo(0.3);
    assertThat(full(solution)).contains("Round the post, the greater of T_rope_1 and T_rope_2");
  }

  @Test
  void whatStaticsLeavesOpenIsToldWithWhatWouldSettleIt() {
    Device beam =
        Device.named("beam on three props")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .point("c", 2, 0)
            .member("beam", "a", "b", "c")
            .pin("a", "a", "beam", "ground")
            .roller("b", "b", "beam", "ground", Direction.UP)
            .roller("c", "c", "beam", "ground", Direction.UP)
            .force("load", "beam", "b", Vector.of(0, -90))
            .build();
    Balance balance = Balance.of(beam);
    Step.Open open = only(WorkedSolution.of(balance), Step.Open.class);
    assertThat(open.open())
        .extracting(one -> one.symbol().text())
        .containsExactlyInAnyOrder("N_b", "N_c", "a_y");
    assertThat(open.released()).hasSize(1);
    assertThat(open.equations()).hasSize(2);
    assertThat(open.equations().get(0).terms())
        .anySatisfy(term -> assertThat(term.value()).isEmpty());
    String text = full(WorkedSolution.of(balance));
    assertThat(text)
        .contains("Statics alone leaves open")
        .contains("released or known from elsewhere, statics would settle the rest.")
        .contains("c.normal: none: ");
    // an answer that is fixed all the same does not speak of it
    WorkedSolution level = WorkedSolution.of(balance, List.of(Ask.parse("a.x")));
    assertThat(level.steps()).noneMatch(Step.Open.class::isInstance);
  }

  @Test
  void forcesKnownFromElsewhereAreTaken() {
    Device beam =
        Device.named("beam on three props")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .point("c", 2, 0)
            .member("beam", "a", "b", "c")
            .pin("a", "a", "beam", "ground")
            .roller("b", "b", "beam", "ground", Direction.UP)
            .roller("c", "c", "beam", "ground", Direction.UP)
            .force("load", "beam", "b", Vector.of(0, -90))
            .build();
    Balance known = Balance.of(beam).withForces(List.of(0.0, 15.0, 60.0, 15.0));
    WorkedSolution solution = WorkedSolution.of(known);
    assertThat(only(solution, Step.Taken.class).found().si()).isIn(15.0, 60.0);
    assertThat(found(solution, "N_b")).isCloseTo(60, within(1e-9));
    assertThat(full(solution)).contains("It is taken as known: ");
  }

  @Test
  void whereThereIsNoBalanceTheEquationThatFailsIsShown() {
    Device flap =
        Device.named("flap")
            .point("hinge", 0, 0)
            .point("edge", 2, 0)
            .member("flap", "hinge", "edge")
            .pin("hinge", "hinge", "flap", "ground")
            .force("stone", "flap", "edge", Vector.of(0, -100))
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(flap), List.of(Ask.parse("hinge.x")));
    Step.NotMet unmet = only(solution, Step.NotMet.class);
    assertThat(unmet.equation().sum()).isEqualTo(-200);
    Step.Moves moves = only(solution, Step.Moves.class);
    assertThat(moves.point()).contains("edge");
    assertThat(moves.way().y()).isCloseTo(-1, within(1e-9));
    assertThat(full(solution))
        .contains("−2 m · 100 N = −200 N·m, and not 0")
        .contains("A strut from the ground to edge of flap")
        .contains("hinge.x: none: the device is not in balance");
  }

  @Test
  void freeMotionsAndBrokenConditionsAreTold() {
    Device hanging =
        Device.named("hook")
            .point("beam", 0, 1)
            .point("hook", 0, 0)
            .joint("hook")
            .connect(new Line("rope", End.of("hook", "hook"), End.of("ground", "beam")))
            .force("lift", "hook", "hook", Vector.of(0, 50))
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(hanging));
    assertThat(only(solution, Step.Broken.class).violation().part()).isEqualTo("rope");
    assertThat(full(solution))
        .contains("F_rope = −50 N (it would have to push)")
        .contains("rope would have to push: balance needs -50.00 N, it can give 0 N.")
        .contains("Still free: hook moves");
  }

  @Test
  void dryPinsGiveNoNumbers() {
    Device lever =
        Device.named("stiff lever")
            .point("hinge", 0, 0)
            .point("grip", 1, 0)
            .point("ram", 0.2, 0)
            .member("lever", "hinge", "ram", "grip")
            .connect(new Pin("hinge", "hinge", List.of("lever", "ground"), 0.01, 0.2))
            .force("hand", "lever", "grip", Vector.of(0, -100))
            .sought("ram", "lever", "ram", Direction.UP)
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(lever));
    assertThat(only(solution, Step.Finding.class).sentence())
        .contains("Friction in hinge leaves a range of forces");
    assertThat(solution.equations()).isEmpty();
    assertThat(SolutionWriter.of(Detail.ANSWER, UnitSystem.SI).text(solution))
        .contains("Friction in hinge");
  }

  @Test
  void threeForcesMeetInAPoint() {
    Step.ThreeForces check =
        only(WorkedSolution.of(Balance.of(HandSolutionsTest.lever())), Step.ThreeForces.class);
    assertThat(check.body()).isEqualTo("lever");
    assertThat(check.forces()).containsExactlyInAnyOrder("hinge", "ram", "hand");
    assertThat(check.meeting()).isEmpty();
    Device ladder =
        Device.named("ladder")
            .point("foot", 0, 0)
            .point("rung", 0.5, 2)
            .point("top", 1, 4)
            .member("ladder", "foot", "rung", "top")
            .connect(new Contact("floor", "foot", "ladder", "ground", Direction.UP, 0.5, 0.5))
            .connect(new Contact("wall", "top", "ladder", "ground", Direction.LEFT, 0, 0))
            .force("picker", "ladder", "rung", Vector.of(0, -800))
            .build();
    Step.ThreeForces meeting = only(WorkedSolution.of(Balance.of(ladder)), Step.ThreeForces.class);
    assertThat(meeting.meeting().orElseThrow().x()).isCloseTo(0.5, within(1e-9));
    assertThat(meeting.meeting().orElseThrow().y()).isCloseTo(4, within(1e-9));
  }

  @Test
  void spreadLoadsCouplesAndSpringsAreGivenLoads() {
    Device shelf =
        Device.named("shelf")
            .point("wall", 0, 0)
            .point("end", 3, 0)
            .point("above", 3, 2)
            .member("shelf", "wall", "end")
            .clamp("wall", "wall", "shelf", "ground")
            .load(
                new SpreadLoad(
                    "apples",
                    "shelf",
                    "wall",
                    "end",
                    0,
                    200,
                    Optional.of(Direction.DOWN),
                    SpreadLoad.Per.LENGTH))
            .load(new Couple("twist", "shelf", 30))
            .load(new Spring("spring", End.of("shelf", "end"), End.of("ground", "above"), 100, 1.5))
            .load(new TorsionSpring("coil", "shelf", "ground", 40, 0.5))
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(shelf));
    // 300 N down at 2 m, 30 N·m, 50 N up at 3 m, −20 N·m
    assertThat(found(solution, "wall_y")).isCloseTo(250, within(1e-9));
    assertThat(found(solution, "M_wall")).isCloseTo(600 - 30 - 150 + 20, within(1e-9));
    assertThat(full(solution))
        .contains("F_apples: apples, 300 N down")
        .contains("M_twist: twist, 30 N·m counter-clockwise")
        .contains("M_coil: coil, 20 N·m clockwise");
  }

  @Test
  void soughtQuantitiesOfAllKindsAreFound() {
    for (Sought.Want want : Sought.Want.values()) {
      boolean couple = want == Sought.Want.COUPLE;
      boolean directed = want == Sought.Want.FORCE || want == Sought.Want.INTENSITY;
      Device lever =
          Device.named("lever")
              .point("hinge", 0, 0)
              .point("arm", -1, 0)
              .point("tail", -2, 0)
              .point("grip", 2, 0)
              .member("lever", "tail", "arm", "hinge", "grip")
              .connect(
                  want == Sought.Want.COMPONENTS
                      ? new Roller("hinge", "hinge", "lever", "ground", Direction.UP, Sides.TWO)
                      : Pin.smooth("hinge", "hinge", List.of("lever", "ground")))
              .force("hand", "lever", "grip", Vector.of(0, -60))
              .load(
                  new Sought(
                      "wanted",
                      want,
                      "lever",
                      couple ? Optional.empty() : Optional.of("arm"),
                      directed ? Optional.of(Direction.DOWN) : Optional.empty(),
                      want == Sought.Want.INTENSITY ? Optional.of("tail") : Optional.empty()))
              .build();
      Balance balance = Balance.of(lever);
      WorkedSolution solution = WorkedSolution.of(balance, List.of(Ask.of("wanted")));
      assertThat(solution.equations()).as(want.name()).hasSizeBetween(1, 2);
      double expected = ((Answer.Value) balance.answer("wanted")).si();
      assertThat(((Answer.Value) solution.results().get(0).answer()).si())
          .as(want.name())
          .isCloseTo(expected, within(1e-9 * Math.abs(expected)));
    }
  }

  @Test
  void aPoseOtherThanTheDrawnOneIsSolvedWhereItIs() {
    Device lever = HandSolutionsTest.lever();
    Pose turned = Pose.DRAWN.with("lever", Frame.turnAbout(Point.ORIGIN, 0.5));
    Balance balance = Balance.of(lever, lever.cases().get(0), turned);
    WorkedSolution solution = WorkedSolution.of(balance);
    assertThat(found(solution, "P_ram")).isCloseTo(1408, within(1e-9));
    assertThat(solution.equations())
        .extracting(Equation::condition)
        .anySatisfy(
            condition ->
                assertThat(condition)
                    .isInstanceOfSatisfying(
                        Condition.Moments.class,
                        moments -> assertThat(moments.place()).isEqualTo("hinge")));
  }

  @Test
  void aStrutsOwnWeightActsHalfAtEachEnd() {
    Device prop =
        Device.named("prop")
            .point("a", 0, 0)
            .point("b", 0, 2)
            .joint("b")
            .connect(new Strut("prop", End.of("b", "b"), End.of("ground", "a"), 10))
            .roller("side", "b", "b", "ground", Direction.RIGHT)
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(prop));
    assertThat(found(solution, "F_prop")).isCloseTo(-5 * 9.80665, within(1e-9));
    assertThat(solution.given())
        .singleElement()
        .satisfies(one -> assertThat(one.name()).isEqualTo("half weight of prop"));
  }

  @Test
  void aPinThroughThreeBodiesIsABodyOfItsOwn() {
    Device fork =
        Device.named("fork")
            .point("a", -1, 0)
            .point("b", 1, 0)
            .point("top", 0, 1)
            .member("left", "a", "top")
            .member("right", "b", "top")
            .pin("a", "a", "left", "ground")
            .pin("b", "b", "right", "ground")
            .pin("top", "top", "left", "right")
            .force("load", "top", "top", Vector.of(0, -100))
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(fork));
    assertThat(solution.equations()).hasSize(2);
    assertThat(solution.equations())
        .allSatisfy(one -> assertThat(one.cut()).containsExactly("pin top"));
    assertThat(found(solution, "F_left")).isCloseTo(-50 * Math.sqrt(2), within(1e-9));
    assertThat(solution.steps()).filteredOn(Step.TwoForceMember.class::isInstance).hasSize(2);
  }

  @Test
  void longDevicesSayHowTheyAreLookedThrough() {
    DeviceBuilder builder = Device.named("long truss");
    int panels = 30;
    for (int k = 0; k <= panels; k++) {
      builder.point("L" + k, k, 0).joint("L" + k).point("U" + k, k, 1).joint("U" + k);
      builder.strut("post" + k, End.of("L" + k, "L" + k), End.of("U" + k, "U" + k));
    }
    for (int k = 0; k < panels; k++) {
      int next = k + 1;
      builder.strut("low" + k, End.of("L" + k, "L" + k), End.of("L" + next, "L" + next));
      builder.strut("high" + k, End.of("U" + k, "U" + k), End.of("U" + next, "U" + next));
      builder.strut("slope" + k, End.of("L" + k, "L" + k), End.of("U" + next, "U" + next));
    }
    Device truss =
        builder
            .pin("left", "L0", "L0", "ground")
            .roller("right", "L" + panels, "L" + panels, "ground", Direction.UP)
            .force("load", "L10", "L10", Vector.of(0, -300))
            .build();
    WorkedSolution all = WorkedSolution.of(Balance.of(truss));
    assertThat(all.equations()).hasSize(124);
    assertThat(only(all, Step.Finding.class).sentence()).contains("The device has 62 bodies.");
    // a section still gives one bar in the middle: the support, then moments
    WorkedSolution one = WorkedSolution.of(Balance.of(truss), List.of(Ask.parse("high20.tension")));
    assertThat(one.equations()).hasSizeLessThanOrEqualTo(2);
    List<Double> values = new ArrayList<>();
    one.found().forEach(found -> values.add(found.si()));
    // moments about L20 of the right part: the support of 100 N 10 m off, over the height of 1 m
    assertThat(values.get(values.size() - 1)).isCloseTo(-1000, within(1e-6));
  }

  @Test
  void anAskThatTheDeviceDoesNotHaveIsRefused() {
    Balance balance = Balance.of(HandSolutionsTest.lever());
    List<Ask> asks = List.of(Ask.parse("nobody.x"));
    assertThatThrownBy(() -> WorkedSolution.of(balance, asks))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("nobody");
  }

  @Test
  void anAskThatNeedsNoForceTakesNoEquation() {
    WorkedSolution solution =
        WorkedSolution.of(
            Balance.of(HandSolutionsTest.lever()), List.of(Ask.parse("point(grip).x")));
    assertThat(solution.equations()).isEmpty();
    assertThat(full(solution)).contains("point(grip).x: 1.600 m");
  }
}
