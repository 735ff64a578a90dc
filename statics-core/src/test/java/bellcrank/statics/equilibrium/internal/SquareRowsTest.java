package bellcrank.statics.equilibrium.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import java.util.List;
import org.junit.jupiter.api.Test;

class SquareRowsTest {

  private static final boolean[] PIN_HELD = {true, true};

  private final Device lid =
      Device.named("trough lid")
          .point("hinge", 0, 0)
          .point("rim", 1, 0.2)
          .member("lid", "hinge", "rim")
          .pin("hinge pin", "hinge", "lid", Ground.NAME)
          .build();
  private final Assembly assembly = Assembly.of(lid);

  private double[] solve(double[] gaps, double[] more, double miss) {
    Actions actions = assembly.actions();
    assembly.evaluate(assembly.placements(), actions);
    return SquareRows.of(assembly, PIN_HELD).solve(actions, gaps, more, miss);
  }

  @Test
  void aDrivenLidTurnsAsFarAsItIsDriven() {
    double[] motion = solve(new double[2], new double[] {0, 0, 1}, 0.1);

    assertThat(motion).hasSize(3);
    assertThat(motion[2]).isCloseTo(0.1, within(1e-15));
    // the middle is right of and above the hinge, so it goes left and up
    assertThat(motion[0]).isNegative();
    assertThat(motion[1]).isPositive();
  }

  @Test
  void aGapIsClosedWhileTheDriveStaysWhereItIs() {
    double[] motion = solve(new double[] {0.02, 0}, new double[] {0, 0, 1}, 0);
    Closure closure = Closure.of(assembly, List.of());
    double[] along = closure.row(0);

    double closed = 0;
    for (int i = 0; i < 3; i++) {
      closed += along[i] * motion[i];
    }
    assertThat(closed).isCloseTo(-0.02, within(1e-15));
    assertThat(motion[2]).isCloseTo(0, within(1e-15));
  }

  @Test
  void aDriveThatThePinForbidsIsLeftToSingularValues() {
    Closure closure = Closure.of(assembly, List.of());
    double[] forbidden = closure.row(0);

    assertThat(solve(new double[2], forbidden, 0.1)).isEmpty();
    assertThat(closure.correction(forbidden, 0.1)).hasSize(3).doesNotContain(Double.NaN);
  }

  @Test
  void rowsMustBeAsManyAsTheVelocities() {
    assertThat(SquareRows.fits(assembly, PIN_HELD)).isTrue();
    assertThat(SquareRows.fits(assembly, new boolean[] {true, false})).isFalse();
  }
}
