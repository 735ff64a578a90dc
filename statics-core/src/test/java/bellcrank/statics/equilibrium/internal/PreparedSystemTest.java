package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Solving again with a kept order must give what solving from nothing gives. */
class PreparedSystemTest {

  /** Every kind of law: world-fixed and turning points, couples, struts, a rope, sought forces. */
  private static Device everyLaw(Random numbers) {
    DeviceBuilder device = Device.named("every law");
    for (int i = 0; i < 9; i++) {
      device.point("p" + i, 4 * numbers.nextDouble(), 3 * numbers.nextDouble());
    }
    return device
        .member("base", "p0", "p1")
        .member("arm", "p2", "p3")
        .member("sled", "p4", "p5")
        .clamp("root", "p0", "base", "ground")
        .pin("elbow", "p2", "arm", "base")
        .roller("shoe", "p4", "sled", "base", Direction.ofAngle(1.1))
        .strut("link", End.of("sled", "p5"), End.of("arm", "p3"))
        .connect(
            new Reeving(
                "rope",
                java.util.List.of(
                    Stop.end("sled", "p6"),
                    Stop.sheave("base", "p7", 0.05, Turn.CLOCKWISE),
                    Stop.end("arm", "p8")),
                0.9,
                Reeving.Hauling.RAISING))
        .sought("effort", "arm", "p3", Direction.ofAngle(2.2))
        .force("load", "sled", "p5", Vector.of(20, -70))
        .weight("mass", "arm", "p8", 12)
        .build();
  }

  private static Pose pose(Device device, Random numbers) {
    Map<String, Frame> frames = new HashMap<>();
    device
        .members()
        .forEach(
            member ->
                frames.put(
                    member.name(),
                    Frame.turnAbout(
                        Point.of(numbers.nextDouble(), numbers.nextDouble()),
                        numbers.nextDouble() - 0.5)));
    return Pose.of(frames);
  }

  @Test
  void solvingAgainGivesWhatSolvingFromNothingGives() {
    Random numbers = new Random(3);
    LoadCase half = new LoadCase("half", Map.of("mass", 0.5), 1);
    for (int round = 0; round < 20; round++) {
      Device device = everyLaw(numbers);
      PreparedSystem.Storage storage = new PreparedSystem(device).storage();
      for (int turn = 0; turn < 6; turn++) {
        Pose pose = turn == 3 ? Pose.DRAWN : pose(device, numbers);
        Solved solved = Solved.of(device, half, pose);
        assertThat(storage.solve(pose, half)).isTrue();
        assertThat(storage.residual()).isLessThan(1e-12);
        for (int k = 0; k < solved.assembly().columns(); k++) {
          assertThat(storage.unknown(k))
              .isCloseTo(
                  solved.unknown(k),
                  within(1e-13 * solved.condition() * Math.max(1, solved.forceScale())));
        }
      }
    }
  }

  @Test
  void poseThatLeavesAMotionFreeIsNotSolved() {
    Device device =
        Device.named("stayed post")
            .point("foot", 0, 0)
            .point("head", 0, 2)
            .point("peg", 1.3, 0)
            .member("post", "foot", "head")
            .pin("hinge", "foot", "post", "ground")
            .strut("stay", End.of("post", "head"), End.of("ground", "peg"))
            .force("push", "post", "head", Vector.of(40, 0))
            .build();
    PreparedSystem.Storage storage = new PreparedSystem(device).storage();
    LoadCase loads = device.cases().get(0);

    // lying down, the post and its stay are in one line
    Pose lying = Pose.DRAWN.with("post", Frame.turnAbout(Point.ORIGIN, -Math.PI / 2));

    assertThat(storage.solve(lying, loads)).isFalse();
    assertThat(storage.solve(Pose.DRAWN, loads)).isTrue();
    assertThat(storage.residual()).isLessThan(1e-15);
  }
}
