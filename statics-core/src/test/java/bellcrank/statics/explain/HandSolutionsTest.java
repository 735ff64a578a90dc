package bellcrank.statics.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Strut;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Classic devices take no more equations than a person needs. Hand solutions are our own. */
class HandSolutionsTest {

  /** Solves for some answers and checks the values and the number of equations. */
  private static WorkedSolution solve(Device device, int byHand, Object... asksAndValues) {
    List<Ask> asks =
        java.util.stream.IntStream.range(0, asksAndValues.length / 2)
            .mapToObj(k -> Ask.parse((String) asksAndValues[2 * k]))
            .toList();
    WorkedSolution solution = WorkedSolution.of(Balance.of(device), asks);
    for (int k = 0; k < asks.size(); k++) {
      double expected = ((Number) asksAndValues[2 * k + 1]).doubleValue();
      Answer answer = solution.results().get(k).answer();
      assertThat(answer).as(asks.get(k).text()).isInstanceOf(Answer.Value.class);
      assertThat(((Answer.Value) answer).si())
          .as(asks.get(k).text())
          .isCloseTo(expected, within(1e-9 * (1 + Math.abs(expected))));
    }
    assertThat(solution.equations().size()).isLessThanOrEqualTo(byHand);
    return solution;
  }

  static Device lever() {
    return Device.named("press lever")
        .point("hinge", 0, 0)
        .point("ram", 0.25, 0)
        .point("grip", 1.6, 0)
        .member("lever", "hinge", "ram", "grip")
        .pin("hinge", "hinge", "lever", "ground")
        .force("hand", "lever", "grip", Vector.of(0, -220))
        .sought("ram", "lever", "ram", Direction.UP)
        .build();
  }

  @Test
  void leverTakesOneEquation() {
    // by hand: moments about the hinge; 220 · 1.6 / 0.25
    WorkedSolution solution = solve(lever(), 1, "ram", 1408);
    assertThat(solution.equations().get(0).condition())
        .isInstanceOfSatisfying(
            Condition.Moments.class, moments -> assertThat(moments.place()).isEqualTo("hinge"));
  }

  @Test
  void ladderAtASmoothWallTakesOneEquationForEachForce() {
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
    // by hand: moments about the foot give the wall, 800 · 0.5 / 4
    solve(ladder, 1, "wall.normal", 100);
    // forces up give the floor, forces to the right the friction
    solve(ladder, 3, "wall.normal", 100, "floor.normal", 800, "floor.friction", 100);
  }

  static Device jib() {
    return Device.named("jib")
        .point("heel", 0, 0)
        .point("tip", 3, 0)
        .point("head", 0, 4)
        .member("jib", "heel", "tip")
        .pin("heel", "heel", "jib", "ground")
        .connect(new Line("rope", End.of("jib", "tip"), End.of("ground", "head")))
        .force("barrel", "jib", "tip", Vector.of(0, -800))
        .force("own weight", "jib", "tip", Vector.of(0, -200))
        .build();
  }

  @Test
  void jibTakesOneEquationForTheRopeAndThreeForAll() {
    // by hand: moments about the heel; 1000 / (4/5)
    solve(jib(), 1, "rope", 1250);
    solve(jib(), 3, "rope", 1250, "heel.x", 750, "heel.y", 0);
    // moments about the head give the heel's level force alone: 1000 · 3 / 4
    solve(jib(), 1, "heel.x", 750);
  }

  @Test
  void tongsTakeTheWholeThenTheLogThenOneArm() {
    DeviceBuilder tongs =
        Device.named("log tongs")
            .point("ring", 0, 1)
            .point("left eye", -0.3, 0.6)
            .point("right eye", 0.3, 0.6)
            .point("crossing", 0, 0.4)
            .point("left tip", -0.15, 0)
            .point("right tip", 0.15, 0)
            .member("arm A", "left eye", "crossing", "right tip")
            .member("arm B", "right eye", "crossing", "left tip")
            .joint("ring")
            .pin("crossing", "crossing", "arm A", "arm B")
            .connect(new Line("left chain", End.of("ring", "ring"), End.of("arm A", "left eye")))
            .connect(new Line("right chain", End.of("ring", "ring"), End.of("arm B", "right eye")))
            .connect(new Line("hook", End.of("ring", "ring"), End.of("ground", "hook")))
            .point("hook", 0, 2)
            .force("half log A", "arm A", "right tip", Vector.of(0, -250))
            .force("half log B", "arm B", "left tip", Vector.of(0, -250))
            .connect(
                new Strut("log", End.of("arm A", "right tip"), End.of("arm B", "left tip"), 0));
    // by hand: the ring gives the chain (two chains, one equation each: the whole, then the ring);
    // then moments about the crossing of one arm give the squeeze
    WorkedSolution solution = solve(tongs.build(), 3, "log.compression", squeeze());
    assertThat(solution.equations()).hasSizeLessThanOrEqualTo(3);
  }

  /** Moments about the crossing of arm A: the chain pulls at the eye, the log pushes at the tip. */
  private static double squeeze() {
    double chain = 250 / 0.8;
    double chainMoment = -0.3 * (0.8 * chain) - 0.2 * (0.6 * chain);
    double loadMoment = 0.15 * -250;
    // compression pushes the right tip to the right, 0.4 m below the crossing
    return -(chainMoment + loadMoment) / 0.4;
  }

  @Test
  void toggleTakesThreeEquations() {
    Device toggle =
        Device.named("press toggle")
            .point("top", 0, 1.0)
            .point("knee", 0.25, 0.5)
            .point("head", 0, 0)
            .member("upper link", "top", "knee")
            .member("lower link", "knee", "head")
            .member("ram", "head")
            .pin("top", "top", "upper link", "ground")
            .pin("knee", "knee", "upper link", "lower link")
            .pin("head", "head", "lower link", "ram")
            .connect(new Guide("bush", "head", "ram", "ground", Direction.UP))
            .force("hand", "knee", "knee", Vector.of(-300, 0))
            .sought("cake", "ram", "head", Direction.UP)
            .build();
    // by hand: two-force links; the knee gives both (two equations), the ram the cake (one);
    // with the symmetry of the knee only one of its two is needed: square to the upper link
    WorkedSolution solution = solve(toggle, 2, "cake", 300);
    assertThat(solution.steps()).anyMatch(Step.TwoForceMember.class::isInstance);
  }

  /** A truss of three panels on a level line with two upper joints. */
  static Device truss() {
    DeviceBuilder builder = Device.named("press-house truss");
    String[] joints = {"A", "B", "C", "D", "E", "F"};
    double[][] places = {{0, 0}, {2, 0}, {4, 0}, {6, 0}, {2, 1.5}, {4, 1.5}};
    for (int k = 0; k < joints.length; k++) {
      builder.point(joints[k], places[k][0], places[k][1]).joint(joints[k]);
    }
    for (String bar : new String[] {"AB", "BC", "CD", "AE", "EF", "FD", "BE", "CF", "BF"}) {
      String first = bar.substring(0, 1);
      String second = bar.substring(1);
      builder.strut(bar, End.of(first, first), End.of(second, second));
    }
    return builder
        .pin("left", "A", "A", "ground")
        .roller("right", "D", "D", "ground", Direction.UP)
        .force("roof B", "B", "B", Vector.of(0, -900))
        .force("roof C", "C", "C", Vector.of(0, -1800))
        .build();
  }

  @Test
  void trussBySectionTakesAReactionAndOneEquation() {
    // by hand: moments about A for the right support: (900 · 2 + 1800 · 4) / 6 = 1500;
    // section through EF, BF, BC, moments about B: the right part, EF = (1800 · 2 − 1500 · 4) / 1.5
    WorkedSolution solution = solve(truss(), 2, "EF.tension", -1600);
    assertThat(solution.equations()).anyMatch(Equation::section);
    // the same section, forces up: BF pulls the right part down by 0.6 of it
    solve(truss(), 2, "BF.tension", (1500 - 1800) / 0.6);
  }

  @Test
  void trussByJointsTakesOneEquationForEachForce() {
    // nine bars and three reactions; no set of equations is needed
    WorkedSolution solution = WorkedSolution.of(Balance.of(truss()));
    assertThat(solution.equations()).hasSize(12);
    assertThat(solution.steps()).noneMatch(Step.Together.class::isInstance);
  }

  @Test
  void frameWithABraceTakesOneEquationForTheBrace() {
    Device frame =
        Device.named("wall frame")
            .point("low", 0, 0)
            .point("high", 0, 1.2)
            .point("prop", 0.9, 1.2)
            .point("end", 2.7, 1.2)
            .member("beam", "high", "prop", "end")
            .member("brace", "low", "prop")
            .pin("high", "high", "beam", "ground")
            .pin("low", "low", "brace", "ground")
            .pin("prop", "prop", "beam", "brace")
            .force("load", "beam", "end", Vector.of(0, -400))
            .build();
    // by hand: the brace is a two-force member; moments about high: 400 · 2.7 / (0.8 · 0.9) = 1500
    WorkedSolution solution = solve(frame, 1, "prop.size", 1500);
    assertThat(solution.steps().get(0))
        .isEqualTo(new Step.TwoForceMember("brace", "low", "prop", new Symbol("F", "brace")));
    // all of it: the brace, and two components at high
    assertThat(WorkedSolution.of(Balance.of(frame)).equations()).hasSize(3);
  }

  @Test
  void compoundBeamWithAHingeTakesOneEquationOnEachSide() {
    Device beam =
        Device.named("trough beam")
            .point("wall", 0, 0)
            .point("hinge", 3, 0)
            .point("load", 4, 0)
            .point("end", 5, 0)
            .member("left", "wall", "hinge")
            .member("right", "hinge", "load", "end")
            .clamp("wall", "wall", "left", "ground")
            .pin("hinge", "hinge", "left", "right")
            .roller("end", "end", "right", "ground", Direction.UP)
            .force("load", "right", "load", Vector.of(0, -600))
            .build();
    // by hand: the right part alone gives its end, moments about the hinge: 600 · 1 / 2;
    solve(beam, 1, "end", 300);
    // for the couple at the wall: the hinge from the right part, then moments about the wall
    solve(beam, 2, "wall.couple", 900);
    assertThat(WorkedSolution.of(Balance.of(beam)).equations()).hasSize(6);
  }

  @Test
  void archWithThreeHingesAtOneLevelNeedsNoSetOfEquations() {
    Device arch =
        Device.named("arch")
            .point("left", 0, 0)
            .point("crown", 2, 2)
            .point("right", 4, 0)
            .point("load", 1, 1.5)
            .member("A", "left", "load", "crown")
            .member("B", "crown", "right")
            .pin("left", "left", "A", "ground")
            .pin("crown", "crown", "A", "B")
            .pin("right", "right", "B", "ground")
            .force("load", "A", "load", Vector.of(0, -400))
            .build();
    // by hand: B is a two-force member under 45°; moments about left: 400 · 1 / (4 · sin 45°)
    WorkedSolution solution = solve(arch, 1, "crown.y on B", -100);
    assertThat(WorkedSolution.of(Balance.of(arch)).equations()).hasSize(3);
    assertThat(solution.equations().get(0).avoided()).isNotEmpty();
  }

  @Test
  void hingesAtTwoLevelsTakeTwoEquationsTogether() {
    Device arch =
        Device.named("arch on a slope")
            .point("left", 0, 0)
            .point("crown", 2, 2)
            .point("right", 4, 1)
            .point("load", 1, 1.5)
            .point("other load", 3, 1.75)
            .member("A", "left", "load", "crown")
            .member("B", "crown", "other load", "right")
            .pin("left", "left", "A", "ground")
            .pin("crown", "crown", "A", "B")
            .pin("right", "right", "B", "ground")
            .force("load", "A", "load", Vector.of(0, -400))
            .force("other load", "B", "other load", Vector.of(0, -300))
            .build();
    WorkedSolution solution = WorkedSolution.of(Balance.of(arch));
    // by hand: moments of the whole about one base and of a part about the crown, two unknowns
    assertThat(solution.steps())
        .filteredOn(Step.Together.class::isInstance)
        .singleElement()
        .satisfies(
            step -> assertThat(((Step.Together) step).equations()).hasSizeLessThanOrEqualTo(2));
    assertThat(solution.equations()).hasSize(6);
  }
}
