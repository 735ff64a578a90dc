package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import org.junit.jupiter.api.Test;

class LongTrussTest {

  /** A cantilever of panels of 1 m by {@code height}, with 1 N down at its tip. */
  private static Device cantilever(int panels, double height) {
    DeviceBuilder truss = Device.named("cantilever truss");
    for (int i = 0; i <= panels; i++) {
      truss.point("low " + i, i, 0).point("high " + i, i, height);
      truss.joint("low " + i).joint("high " + i);
    }
    for (int i = 0; i < panels; i++) {
      bar(truss, "low " + i, "low " + (i + 1));
      bar(truss, "high " + i, "high " + (i + 1));
      bar(truss, "low " + i, "high " + (i + 1));
      bar(truss, "low " + (i + 1), "high " + (i + 1));
    }
    return truss
        .pin("low wall", "low 0", "low 0", "ground")
        .roller("wall", "high 0", "high 0", "ground", Direction.RIGHT)
        .roller("sill", "high 0", "high 0", "ground", Direction.UP)
        .force("tip", "high " + panels, "high " + panels, Vector.of(0, -1))
        .build();
  }

  private static void bar(DeviceBuilder truss, String from, String to) {
    truss.strut(from + "–" + to, End.of(from, from), End.of(to, to));
  }

  /** Its condition is far beyond what singular values of the whole would be trusted with. */
  @Test
  void aVerySlenderTrussOfThousandsOfBarsIsSolvedBlockByBlock() {
    int panels = 1500;
    double height = 1e-6;
    Balance balance = Balance.of(cantilever(panels, height));

    assertThat(balance.outcome()).isEqualTo(new Outcome.InBalance());
    assertThat(balance.condition()).isGreaterThan(1e10);
    assertThat(balance.residual()).isLessThan(1e-12);
    // moments about the lower wall joint: 1 N at 1500 m against the height
    assertThat(balance.number("wall").orElseThrow())
        .isCloseTo(-panels / height, within(1e-6 * panels / height));
  }
}
