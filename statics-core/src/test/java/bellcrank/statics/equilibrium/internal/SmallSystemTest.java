package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The two ways to solve, straight through and in order, must agree. */
class SmallSystemTest {

  private record Problem(Assembly assembly, Actions actions, Wrenches loads) {

    static Problem of(Device device) {
      Assembly assembly = Assembly.of(device);
      Placements placements = assembly.placements();
      assembly.place(placements, Pose.DRAWN);
      Actions actions = assembly.actions();
      assembly.evaluate(placements, actions);
      Wrenches loads = new Wrenches(assembly.bodyCount());
      assembly.load(placements, LoadCase.ALL_LOADS, loads);
      return new Problem(assembly, actions, loads);
    }

    Optional<LinearSolution> small() {
      return SmallSystem.solve(assembly, actions, loads);
    }

    LinearSolution inOrder() {
      double[] centre = new double[2 * assembly.memberCount()];
      MomentCentres.choose(assembly, actions, centre);
      Equations equations = new Equations(assembly, actions);
      equations.fillForces(actions, centre);
      double[] b = new double[equations.rows];
      loads.rightSide(assembly.memberCount(), centre, b);
      return LinearAnalysis.solve(
          equations, b, loads.scale, assembly.scale().zero(), equations.columns);
    }
  }

  /** Frames in a row, each braced to the one before or to the ground by three struts. */
  private static Device bracedFrames(int frames, Random numbers) {
    DeviceBuilder device = Device.named("braced frames");
    for (int k = 0; k < frames; k++) {
      String own = "frame" + k;
      String other = k == 0 ? "ground" : "frame" + (k - 1);
      for (int i = 0; i < 6; i++) {
        device.point(own + i, 3 * k + 2 * numbers.nextDouble(), 2 * numbers.nextDouble());
      }
      device.member(own, own + "0", own + "1");
      for (int i = 0; i < 3; i++) {
        device.strut(own + "brace" + i, End.of(own, own + i), End.of(other, own + (i + 3)));
      }
      device.force(own + "load", own, own + "0", Vector.of(numbers.nextInt(90), -50));
    }
    return device.build();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void bothWaysAgree(int frames) {
    Random numbers = new Random(frames);
    for (int round = 0; round < 50; round++) {
      Problem problem = Problem.of(bracedFrames(frames, numbers));
      assertThat(SmallSystem.fits(problem.assembly())).isTrue();

      double[] straight = problem.small().orElseThrow().x();
      double[] ordered = problem.inOrder().x();

      double largest = 1;
      for (double value : ordered) {
        largest = Math.max(largest, Math.abs(value));
      }
      for (int k = 0; k < ordered.length; k++) {
        assertThat(straight[k]).isCloseTo(ordered[k], within(1e-9 * largest));
      }
    }
  }

  @Test
  void moreThanTwelveUnknownsAreSolvedInOrder() {
    Assembly five = Assembly.of(bracedFrames(5, new Random(1)));

    assertThat(five.columns()).isEqualTo(15);
    assertThat(SmallSystem.fits(five)).isFalse();
  }

  @Test
  void conditionsOfBothWaysAreOfOneSize() {
    Problem problem = Problem.of(bracedFrames(3, new Random(5)));

    double ratio = problem.small().orElseThrow().condition() / problem.inOrder().condition();

    assertThat(ratio).isBetween(0.05, 20.0);
  }

  /** Three parallel struts leave sliding free: singular, whatever rounding makes of it. */
  @Test
  void parallelStrutsAreLeftToTheFullAnalysis() {
    DeviceBuilder device = Device.named("parallel struts").member("deck", "a", "b", "c");
    String[] names = {"a", "b", "c"};
    for (int i = 0; i < 3; i++) {
      double x = 0.3 + 1.1 * i;
      device.point(names[i], x, 0.7).point(names[i] + "'", x + 0.37, 0.1);
      device.strut("s" + i, End.of("deck", names[i]), End.of("ground", names[i] + "'"));
    }
    Problem problem = Problem.of(device.force("push", "deck", "a", Vector.of(5, 0)).build());

    assertThat(problem.small()).isEmpty();
    assertThat(problem.inOrder().motions()).hasSize(1);
    assertThat(problem.inOrder().balanced()).isFalse();
  }

  @Test
  void membersThatSlideTogetherAreSeen() {
    Device device =
        Device.named("two on rollers")
            .point("a", 0, 0)
            .point("b", 1, 0.3)
            .point("c", 2, 0)
            .member("left", "a", "b")
            .member("right", "b", "c")
            .pin("joint", "b", "left", "right")
            .roller("left roller", "a", "left", "ground", Direction.UP)
            .roller("right roller", "c", "right", "ground", Direction.UP)
            .strut("tie", End.of("left", "a"), End.of("right", "c"))
            .roller("spare", "b", "left", "ground", Direction.UP)
            .force("push", "left", "b", Vector.of(10, -20))
            .build();
    Solved solved = Solved.of(device, LoadCase.ALL_LOADS, Pose.DRAWN);

    assertThat(solved.balanced()).isFalse();
    assertThat(solved.motions()).hasSize(1);
    assertThat(solved.redundancy()).isEqualTo(1);
  }
}
