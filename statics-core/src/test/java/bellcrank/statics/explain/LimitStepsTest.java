package bellcrank.statics.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Verdict;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a solution says of parts with limits, against closed forms (from memory). */
class LimitStepsTest {

  private static <T extends Step> T only(WorkedSolution solution, Class<T> kind) {
    List<T> found = solution.steps().stream().filter(kind::isInstance).map(kind::cast).toList();
    assertThat(found).as(solution.steps().toString()).hasSize(1);
    return found.get(0);
  }

  /** The text in full, each printed equation worked out again in two systems of units. */
  private static String checked(WorkedSolution solution) {
    for (UnitSystem units : List.of(UnitSystem.US, UnitSystem.SI)) {
      String text = SolutionWriter.of(Detail.FULL, units).text(solution);
      assertThat(PrintedEquations.check(text)).isGreaterThanOrEqualTo(solution.equations().size());
    }
    assertThat(SolutionWriter.of(Detail.FULL, UnitSystem.SI).latex(solution))
        .doesNotContain("φ")
        .doesNotContain("α");
    return SolutionWriter.of(Detail.FULL, UnitSystem.SI).text(solution);
  }

  private static double first(WorkedSolution solution) {
    return ((Answer.Value) solution.results().get(0).answer()).si();
  }

  private static WorkedSolution atLimit(Device device, String sought, boolean greatest) {
    return WorkedSolution.atLimit(Limits.of(device), sought, greatest, List.of()).orElseThrow();
  }

  private static List<Condition.Rule> rules(WorkedSolution solution) {
    return solution.equations().stream()
        .map(Equation::condition)
        .filter(Condition.Law.class::isInstance)
        .map(one -> ((Condition.Law) one).rule())
        .toList();
  }

  /** A crate on a slope that rises to the right. */
  private static DeviceBuilder slope(double angle, double friction) {
    return Device.named("crate on a ramp")
        .point("crate", 0, 0)
        .joint("crate")
        .connect(
            new Contact(
                "ramp",
                "crate",
                "crate",
                "ground",
                Direction.ofAngle(Math.PI / 2 + angle),
                friction,
                friction))
        .force("weight", "crate", "crate", Vector.of(0, -500));
  }

  @Test
  void aCrateThatSticksHasItsMarginTold() {
    WorkedSolution solution = WorkedSolution.of(Limits.of(slope(0.3, 0.5).build()));
    Step.Margin margin = only(solution, Step.Margin.class);
    assertThat(margin.ratio()).isCloseTo(Math.tan(0.3), within(1e-9));
    assertThat(margin.coefficient()).isEqualTo(0.5);
    Step.Judged judged = only(solution, Step.Judged.class);
    assertThat(judged.verdict()).isInstanceOf(Verdict.Holds.class);
    assertThat(((FrictionFactor.Least) judged.friction()).factor())
        .isCloseTo(Math.tan(0.3) / 0.5, within(1e-9));
    assertThat(checked(solution))
        .contains(
            "ramp sticks as long as friction over normal force is at most μ = 0.5. Here it is")
        .contains("it is less, so it sticks: it can give μ · N = 0.5 · ")
        .contains("f_ramp / N_ramp = ")
        .contains("Verdict: it holds.")
        .contains("All coefficients of friction could be 0.6187 times what they are.");
    assertThat(solution.steps()).noneMatch(Step.Moves.class::isInstance);
  }

  @Test
  void aCrateThatSlipsHasItsMotionAndWhatItLacksTold() {
    WorkedSolution solution = WorkedSolution.of(Limits.of(slope(0.6, 0.5).build()));
    assertThat(only(solution, Step.Margin.class).ratio()).isCloseTo(Math.tan(0.6), within(1e-9));
    assertThat(only(solution, Step.Judged.class).verdict()).isInstanceOf(Verdict.DoesNotHold.class);
    Step.Moves moves = only(solution, Step.Moves.class);
    assertThat(moves.way().x()).isCloseTo(-Math.cos(0.6), within(1e-7));
    assertThat(checked(solution))
        .contains("it is more, so it would slip: it can give μ · N = 0.5 · 412.668 N = 206.334 N")
        .contains("Verdict: it does not hold: ramp slides left and down")
        .contains("would have to be 1.368 times what they are.")
        .contains("would hold this motion.");
  }

  @Test
  void aCrateWithNothingToSpareIsJustHeld() {
    WorkedSolution solution = WorkedSolution.of(Limits.of(slope(Math.atan(0.5), 0.5).build()));
    assertThat(only(solution, Step.Judged.class).verdict()).isInstanceOf(Verdict.Impending.class);
    assertThat(checked(solution))
        .contains("Here it is just that, so nothing is to spare")
        .contains("it is about to give way, with nothing to spare: ramp slides left and down");
  }

  @Test
  void thePullUpARampTakesTheLawAndTwoEquations() {
    Device device =
        slope(0.3, 0.2).sought("pull", "crate", "crate", Direction.ofAngle(0.3)).build();
    WorkedSolution up = atLimit(device, "pull", true);
    // W (sin α + μ cos α)
    assertThat(first(up)).isCloseTo(500 * (Math.sin(0.3) + 0.2 * Math.cos(0.3)), within(1e-6));
    assertThat(up.equations()).hasSizeLessThanOrEqualTo(3);
    assertThat(rules(up)).containsExactly(Condition.Rule.FRICTION);
    assertThat(up.results().get(0).ask().text()).isEqualTo("greatest pull");
    assertThat(checked(up))
        .contains("At the greatest pull the device is about to give way: ramp slides right and up")
        .contains("ramp is about to slip, so its friction is μ = 0.2 times its normal force")
        .contains("0.2 · N_ramp");
    WorkedSolution down = atLimit(device, "pull", false);
    assertThat(first(down)).isCloseTo(500 * (Math.sin(0.3) - 0.2 * Math.cos(0.3)), within(1e-6));
  }

  private static Device ladder(double floor, double wall, double load) {
    return Device.named("picking ladder")
        .point("foot", 0, 0)
        .point("rung", 1.5, 3)
        .point("top", 2, 4)
        .member("ladder", "foot", "rung", "top")
        .connect(new Contact("floor", "foot", "ladder", "ground", Direction.UP, floor, floor))
        .connect(new Contact("wall", "top", "ladder", "ground", Direction.LEFT, wall, wall))
        .force("picker", "ladder", "rung", Vector.of(0, -load))
        .build();
  }

  @Test
  void aLadderAtASmoothWallNeedsOverFourOfItsFriction() {
    // T = W · 1.5 / 4, N = W
    WorkedSolution solution = WorkedSolution.of(Limits.of(ladder(0.5, 0, 800)));
    assertThat(only(solution, Step.Margin.class).ratio()).isCloseTo(0.375, within(1e-9));
    assertThat(checked(solution)).contains("could be 0.75");
    WorkedSolution slips = WorkedSolution.of(Limits.of(ladder(0.3, 0, 800)));
    assertThat(checked(slips))
        .contains("floor slides left")
        .contains("would have to be 1.25")
        .contains("ladder turns");
  }

  @Test
  void aLadderAtARoughWallIsJudgedThoughStaticsLeavesForcesOpen() {
    WorkedSolution solution = WorkedSolution.of(Limits.of(ladder(0.4, 0.3, 800)));
    assertThat(solution.steps()).anyMatch(Step.Open.class::isInstance);
    assertThat(only(solution, Step.Judged.class).verdict()).isInstanceOf(Verdict.Holds.class);
    assertThat(SolutionWriter.of(Detail.ANSWER, UnitSystem.SI).text(solution))
        .contains("Statics alone leaves open")
        .contains("Verdict: it holds.");
    WorkedSolution asked =
        WorkedSolution.of(
            Limits.of(ladder(0.4, 0.3, 800)),
            List.of(Ask.parse("verdict"), Ask.parse("friction factor")));
    assertThat(asked.results()).hasSize(2);
    assertThat(asked.equations()).isEmpty();
  }

  @Test
  void aLadderThatSlipsAtBothEndsIsWorkedWithTheFrictionItLacks() {
    // N₁ + T₂ = W, T₁ = N₂, 1.5 W = 4 N₂ + 2 T₂; with m at both: m = T₁/N₁ = T₂/N₂
    WorkedSolution solution = WorkedSolution.of(Limits.of(ladder(0.2, 0.2, 800)));
    Step.JustHeld held = only(solution, Step.JustHeld.class);
    double m = 0.2 * held.friction();
    double wall = 1.5 * 800 / (4 + 2 * m);
    assertThat(wall).isCloseTo(m * (800 - m * wall), within(1e-6));
    assertThat(rules(solution)).containsOnly(Condition.Rule.FRICTION).hasSize(2);
    assertThat(solution.equations()).hasSizeLessThanOrEqualTo(5);
    assertThat(solution.steps()).anyMatch(Step.Moves.class::isInstance);
    assertThat(checked(solution))
        .contains("Statics alone leaves forces open. Here are those with which it just holds, with")
        .contains("it is more, so it would slip")
        // said once
        .doesNotContain("floor would need more friction than μN");
  }

  @Test
  void aNegativeFactorOnFrictionIsRefused() {
    Limits limits = Limits.of(slope(0.3, 0.5).build());
    assertThatThrownBy(() -> limits.withFriction(-1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("0 or more");
  }

  @Test
  void aWedgeTakesItsFrictionAtBothFaces() {
    double slope = Math.toRadians(12);
    Direction face = Direction.ofAngle(Math.PI / 2 - slope);
    Device wedge =
        Device.named("press wedge")
            .point("floor", 0, 0)
            .point("face", 0, 0.1)
            .point("heel", -0.3, 0.05)
            .member("wedge", "floor", "face", "heel")
            .member("beam", "face")
            .connect(
                new ContactBase("bed", "floor", "wedge", "ground", Direction.UP, 0.5, 0.2, 0.2))
            .connect(new ContactBase("flank", "face", "beam", "wedge", face, 0.2, 0.2, 0.2))
            .connect(new Guide("cheek", "face", "beam", "ground", Direction.UP))
            .force("beam load", "beam", "face", Vector.of(0, -1000))
            .sought("mallet", "wedge", "heel", Direction.RIGHT)
            .build();
    double phi = Math.atan(0.2);
    WorkedSolution drive = atLimit(wedge, "mallet", true);
    // the flank rises away from the heel: W (tan(α + φ) + tan φ)
    assertThat(Math.abs(first(drive)))
        .isCloseTo(1000 * (Math.tan(slope + phi) + Math.tan(phi)), within(1e-5));
    assertThat(rules(drive)).containsOnly(Condition.Rule.FRICTION).hasSize(2);
    // by hand: the block upwards, the wedge upwards and along, friction at two faces
    assertThat(drive.equations()).hasSizeLessThanOrEqualTo(5);
    checked(drive);
    WorkedSolution draw = atLimit(wedge, "mallet", false);
    assertThat(first(draw)).isCloseTo(1000 * (Math.tan(slope - phi) - Math.tan(phi)), within(1e-5));
    checked(draw);
  }

  /**
   * A barrel of 200 N on a rope round a post, half a turn and whole ones, held at the other end.
   */
  private static Device capstan(double friction, int turns) {
    return Device.named("post")
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
                friction,
                turns))
        .force("load", "barrel", "barrel", Vector.of(0, -200))
        .sought("pull", "hand", "hand", Direction.DOWN)
        .build();
  }

  @Test
  void aPostGivesTheRatioOfTensions() {
    WorkedSolution solution = atLimit(capstan(0.3, 1), "pull", false);
    assertThat(first(solution)).isCloseTo(200 * Math.exp(-0.3 * 3 * Math.PI), within(1e-7));
    assertThat(rules(solution)).containsExactly(Condition.Rule.POST);
    assertThat(solution.steps()).noneMatch(Step.PostLaw.class::isInstance);
    assertThat(checked(solution)).contains("e^(μβ) = e^(0.3 · 9.42478)");
  }

  /** What so many turns could hold is beyond all numbers. */
  @Test
  void aPostWithThousandsOfTurnsNeedsNoPull() {
    WorkedSolution solution = atLimit(capstan(0.3, 2000), "pull", false);
    assertThat(first(solution)).isZero();
    assertThat(rules(solution)).containsExactly(Condition.Rule.NOTHING);
  }

  /** A cap on a screw jack of slope α, loaded by 900 N. */
  private static DeviceBuilder jack() {
    return Device.named("jack")
        .point("foot", 0, 0)
        .point("head", 0, 0.4)
        .member("cap", "head")
        .connect(
            new Screw("jack", End.of("cap", "head"), End.of("ground", "foot"), 0.008, 0.02, 0.15))
        .connect(new Guide("stem", "head", "cap", "ground", Direction.UP))
        .force("beam", "cap", "head", Vector.of(0, -900));
  }

  @Test
  void aScrewTakesItsLawAsAnEquation() {
    Device device =
        jack()
            .load(
                new Sought(
                    "crank",
                    Sought.Want.COUPLE,
                    "jack",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()))
            .build();
    double slope = Math.atan(0.008 / (2 * Math.PI * 0.02));
    double phi = Math.atan(0.15);
    WorkedSolution raise = atLimit(device, "crank", true);
    assertThat(first(raise)).isCloseTo(900 * 0.02 * Math.tan(slope + phi), within(1e-8));
    assertThat(rules(raise)).containsExactly(Condition.Rule.THREAD);
    assertThat(raise.equations()).hasSize(2);
    assertThat(checked(raise))
        .contains("r tan(α + φ) = 0.02 m · tan(")
        .contains("M_crank + 0.00431444 m · F_jack = 0");
    WorkedSolution lower = atLimit(device, "crank", false);
    assertThat(first(lower)).isCloseTo(900 * 0.02 * Math.tan(slope - phi), within(1e-8));
    assertThat(checked(lower)).contains("r tan(α − φ) = ");
  }

  @Test
  void aScrewThatIsOnlyLoadedTellsBothCouples() {
    Device device = jack().load(new Couple("crank", "jack", 2)).build();
    WorkedSolution solution = WorkedSolution.of(Limits.of(device));
    Step.ThreadLaw law = only(solution, Step.ThreadLaw.class);
    assertThat(law.force()).isCloseTo(-900, within(1e-9));
    assertThat(checked(solution))
        .contains("turning against its force takes r tan(α + φ) = 0.02 m")
        .contains("900 N · 0.00431444 m = 3.883 N·m")
        .contains("it holds by itself");
  }

  @Test
  void aGivenCoupleStandsInTheLawOfTheScrew() {
    Device device =
        Device.named("jack")
            .point("foot", 0, 0)
            .point("head", 0, 0.4)
            .member("cap", "head")
            .connect(
                new Screw(
                    "jack", End.of("cap", "head"), End.of("ground", "foot"), 0.008, 0.02, 0.02))
            .connect(new Guide("stem", "head", "cap", "ground", Direction.UP))
            .load(new Couple("crank", "jack", 2))
            .sought("load", "cap", "head", Direction.DOWN)
            .build();
    double slope = Math.atan(0.008 / (2 * Math.PI * 0.02));
    WorkedSolution solution = atLimit(device, "load", false);
    assertThat(first(solution))
        .isCloseTo(2 / (0.02 * Math.tan(slope + Math.atan(0.02))), within(1e-6));
    assertThat(checked(solution)).contains(" · F_jack + M_crank = 0");
  }

  private static Device dryLever(double radius) {
    return Device.named("stiff lever")
        .point("hinge", 0, 0)
        .point("grip", 1, 0)
        .point("ram", 0.2, 0)
        .member("lever", "hinge", "ram", "grip")
        .connect(new Pin("hinge", "hinge", List.of("lever", "ground"), radius, 0.2))
        .force("hand", "lever", "grip", Vector.of(0, -100))
        .sought("ram", "lever", "ram", Direction.UP)
        .build();
  }

  @Test
  void aDryPinTakesItsFrictionCircle() {
    double circle = 0.01 * Math.sin(Math.atan(0.2));
    WorkedSolution most = atLimit(dryLever(0.01), "ram", true);
    // forces are parallel, R = ram − 100; moments: 0.2 ram = 100 + circle · R
    double ram = (100 - circle * 100) / (0.2 - circle);
    assertThat(first(most)).isCloseTo(ram, within(1e-5));
    assertThat(rules(most)).contains(Condition.Rule.PIN, Condition.Rule.SIZE);
    assertThat(checked(most)).contains("r sin φ = 0.01 m · sin(0.1973956) = 0.001961161 m");
    WorkedSolution least = atLimit(dryLever(0.01), "ram", false);
    assertThat(first(least)).isCloseTo((100 + circle * 100) / (0.2 + circle), within(1e-5));
    checked(least);
  }

  @Test
  void aDryPinWithoutALimitIsBracketed() {
    Limits limits = Limits.of(dryLever(0.01));
    WorkedSolution solution = WorkedSolution.of(limits, List.of(Ask.parse("ram")));
    assertThat(only(solution, Step.PinFriction.class).radius()).isEqualTo(0.01);
    assertThat(checked(solution))
        .contains("Friction in hinge leaves a range of forces")
        .contains("The friction couple in hinge is at most r sin φ = 0.01 m · sin(0.197396)");
    assertThat(solution.results()).hasSize(1);
  }

  @Test
  void aDryShaftUnderALoadTakesThreeEquations() {
    Device shaft =
        Device.named("roller")
            .point("middle", 0, 0)
            .member("shaft", "middle")
            .connect(new Pin("bearing", "middle", List.of("shaft", "ground"), 0.03, 0.2))
            .force("load", "shaft", "middle", Vector.of(300, -400))
            .load(
                new Sought(
                    "couple",
                    Sought.Want.COUPLE,
                    "shaft",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()))
            .build();
    WorkedSolution solution = atLimit(shaft, "couple", true);
    assertThat(first(solution)).isCloseTo(500 * 0.03 * Math.sin(Math.atan(0.2)), within(1e-7));
    assertThat(solution.equations()).hasSize(3);
    assertThat(rules(solution)).containsExactly(Condition.Rule.LOADS, Condition.Rule.PIN);
    checked(solution);
  }

  @Test
  void aBaseThatTipsTakesMomentsAboutItsEdge() {
    Device cabinet =
        Device.named("crate")
            .point("foot", 0, 0)
            .point("middle", 0, 0.5)
            .point("hand", 0, 1)
            .member("crate", "foot", "middle", "hand")
            .connect(
                new ContactBase("floor", "foot", "crate", "ground", Direction.UP, 0.4, 0.9, 0.9))
            .force("weight", "crate", "middle", Vector.of(0, -600))
            .sought("push", "crate", "hand", Direction.RIGHT)
            .build();
    WorkedSolution solution = atLimit(cabinet, "push", true);
    assertThat(first(solution)).isCloseTo(600 * 0.2, within(1e-7));
    assertThat(solution.equations()).hasSize(1);
    assertThat(checked(solution)).contains("The normal force of what tips acts at its edge.");
    WorkedSolution more =
        WorkedSolution.atLimit(Limits.of(cabinet), "push", true, List.of(Ask.parse("floor.couple")))
            .orElseThrow();
    assertThat(rules(more)).containsExactly(Condition.Rule.EDGE);
    checked(more);
  }

  @Test
  void whatIsNotSoughtHasNoLimit() {
    Limits limits = Limits.of(slope(0.3, 0.5).build());
    assertThatThrownBy(() -> WorkedSolution.atLimit(limits, "weight", true, List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("weight");
    Device free =
        slope(0.3, 0.2)
            .sought("press", "crate", "crate", Direction.ofAngle(0.3 - Math.PI / 2))
            .build();
    // pressed square to the ramp it locks: there is no greatest press
    assertThat(WorkedSolution.atLimit(Limits.of(free), "press", true, List.of())).isEmpty();
  }
}
