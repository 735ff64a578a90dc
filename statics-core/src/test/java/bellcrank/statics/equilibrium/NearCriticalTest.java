package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import org.junit.jupiter.api.Test;

/** Which point matters where a shape is close to a critical one. */
class NearCriticalTest {

  @Test
  void aKnotBetweenAlmostStraightStruts() {
    Device device =
        Device.named("rope walk")
            .point("A", -1, 0)
            .point("K", 0, -1e-8)
            .point("B", 1, 0)
            .joint("K")
            .strut("left", End.of("K", "K"), End.of("ground", "A"))
            .strut("right", End.of("K", "K"), End.of("ground", "B"))
            .force("load", "K", "K", Vector.of(0, -2))
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "left")).isCloseTo(1e8, within(10.0));
    NearCritical warning = balance.nearCritical().orElseThrow();
    assertThat(warning.point()).isIn("A", "K", "B");
    assertThat(warning.move()).isCloseTo(2e-3, within(1e-9));
    // by a small move the large force all but vanishes
    assertThat(warning.change()).isBetween(0.99, 1.01);
  }

  @Test
  void theGuiltyPointIsNamed() {
    // the roller's line passes the hinge by 1e-8: only these two points matter, and not along it
    Device device =
        Device.named("door on a bad stay")
            .point("far", 4, 0)
            .point("hinge", 0, 0)
            .point("stay", 1, 1e-8)
            .point("knob", 2, 1)
            .member("door", "hinge", "stay", "knob", "far")
            .pin("hinge", "hinge", "door", "ground")
            .roller("stay", "stay", "door", "ground", Direction.RIGHT)
            .force("push", "door", "knob", Vector.of(0, -1))
            .build();
    Balance balance = Balance.of(device);
    assertThat(number(balance, "stay")).isCloseTo(-2e8, within(20.0));
    NearCritical warning = balance.nearCritical().orElseThrow();
    assertThat(warning.point()).isIn("hinge", "stay");
    assertThat(warning.change()).isBetween(0.99, 1.01);
  }
}
