package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Strut;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * One slider crank driven by turns, shifts and lengths: crank r = 0.1 m, rod l = 0.3 m, so the rod
 * leans by −asin(r·sin θ / l) and the slider is at r·cos θ + √(l² − r²·sin² θ).
 */
class DrivesTest {

  private static final double CRANK = 0.1;
  private static final double ROD = 0.3;
  private static final double START = 0.7;

  private static Device sliderCrank() {
    return Device.named("slider crank")
        .point("O", 0, 0)
        .point("A", CRANK * Math.cos(START), CRANK * Math.sin(START))
        .point("B", slider(START), 0)
        .member("crank", "O", "A")
        .joint("A")
        .member("slider", "B")
        .pin("O", "O", "crank", "ground")
        .pin("A", "A", "crank", "A")
        .connect(new Strut("rod", End.of("A", "A"), End.of("slider", "B"), 0))
        .connect(new Guide("guide", "B", "slider", "ground", Direction.RIGHT))
        .build();
  }

  private static Device withRodOfItsOwn() {
    return Device.named("slider crank")
        .point("O", 0, 0)
        .point("A", CRANK * Math.cos(START), CRANK * Math.sin(START))
        .point("B", slider(START), 0)
        .member("crank", "O", "A")
        .member("rod", "A", "B")
        .member("slider", "B")
        .pin("O", "O", "crank", "ground")
        .pin("A", "A", "crank", "rod")
        .pin("B", "B", "rod", "slider")
        .connect(new Guide("guide", "B", "slider", "ground", Direction.RIGHT))
        .build();
  }

  private static double lean(double theta) {
    return -Math.asin(CRANK * Math.sin(theta) / ROD);
  }

  private static double slider(double theta) {
    return CRANK * Math.cos(theta) + ROD * Math.cos(lean(theta));
  }

  private static Course course(Device device, Drive drive, double from, double to) {
    Travel travel = Travel.of(device, drive, from, to);
    assertThat(travel).isInstanceOf(Course.class);
    return (Course) travel;
  }

  private static void assertAt(Course course, double drive, double theta) {
    assertThat(course.place(drive, "crank", "A").x())
        .isCloseTo(CRANK * Math.cos(theta), within(1e-12));
    assertThat(course.place(drive, "crank", "A").y())
        .isCloseTo(CRANK * Math.sin(theta), within(1e-12));
    assertThat(course.place(drive, "slider", "B").x()).isCloseTo(slider(theta), within(1e-12));
  }

  /** The angle between rod and crank, which both turn. */
  @Test
  void aTurnOfOneMemberAgainstAnother() {
    Course course = course(withRodOfItsOwn(), new Drive.Turn("rod", "crank"), -2.5, 2.5);

    for (double turn = -1.8; turn <= 1.8; turn += 0.3) {
      double against = lean(START + turn) - lean(START) - turn;
      assertAt(course, against, START + turn);
    }
  }

  /** How far the crank's end has risen, on a member and on a joint at the same place. */
  @Test
  void aShiftUpwards() {
    for (String body : new String[] {"crank", "A"}) {
      Course course = course(sliderCrank(), Drive.slide(body, "A", Direction.UP), -0.16, 0.03);

      for (double theta = -1.2; theta <= 1.2; theta += 0.3) {
        assertAt(course, CRANK * (Math.sin(theta) - Math.sin(START)), theta);
      }
    }
  }

  /** Along a line at 30 degrees the crank's end has moved by r·cos(θ − 30°) less that before. */
  @Test
  void aShiftAlongASlant() {
    double slant = Math.PI / 6;
    Drive drive = Drive.slide("crank", "A", Direction.ofAngle(slant));
    Course course = course(withRodOfItsOwn(), drive, -0.05, 0.0013);

    for (double theta = 0.6; theta <= 1.4; theta += 0.1) {
      assertAt(course, CRANK * (Math.cos(theta - slant) - Math.cos(START - slant)), theta);
    }
  }

  /** 6 kg of rod count with their weight, whatever the sense of their factor. */
  @Test
  void theSizeOfLoadsTakesInTheWeightOfStruts() {
    Device device =
        Device.named("jib")
            .gravity(Vector.of(0, -10))
            .point("foot", 0, 0)
            .point("tip", 3, 4)
            .joint("tip")
            .connect(new Strut("jib", End.of("tip", "tip"), End.of("ground", "foot"), 6))
            .force("sack", "tip", "tip", Vector.of(30, -40))
            .build();

    assertThat(LoadSizes.sum(device, LoadCase.ALL_LOADS)).isCloseTo(110, within(1e-12));
    assertThat(LoadSizes.sum(device, new LoadCase("lifted", Map.of("jib", -2.0, "sack", 0.5), 1)))
        .isCloseTo(145, within(1e-12));
  }

  /** What hangs already stays as it is; the other way up is half a turn on, not back. */
  @Test
  void whatHangsPlumbDoesNotTurn() {
    Device bucket =
        Device.named("bucket")
            .point("bail", 0, 2)
            .point("middle", 0, 0.5)
            .member("bucket", "bail", "middle")
            .weight("own", "bucket", "middle", 3)
            .build();

    assertThat(Hang.of(bucket, "bail")).isEqualTo(new Hang.Turned(0, Math.PI, 1.5));
  }
}
