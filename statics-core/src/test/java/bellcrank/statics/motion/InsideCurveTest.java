package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Forces inside members over a travel. */
class InsideCurveTest {

  /** An arm of 2 m with 100 N at its tip, turned by a couple at its pin: M = −200 cos θ. */
  @Test
  void anArmIsBentMostWhereItIsLevel() {
    Device arm =
        Device.named("arm")
            .gravity(Vector.of(0, -10))
            .point("O", 0, 0)
            .point("tip", 2, 0)
            .member("arm", "O", "tip")
            .pin("O", "O", "arm", "ground")
            .load(new Weight("log", "arm", Optional.of("tip"), 10))
            .load(new Sought("turn", Sought.Want.COUPLE, "arm", Optional.of("O"), Optional.empty()))
            .build();
    Course course = (Course) Travel.of(arm, Drive.turn("arm"), -0.5, 1.2);
    Curve moment = course.curve("arm.moment at 0 m of O–tip");
    assertThat(moment.least().orElseThrow().value()).isCloseTo(-200, within(1e-6));
    assertThat(moment.least().orElseThrow().drive()).isCloseTo(0, within(1e-3));
    assertThat(moment.greatest().orElseThrow().value())
        .isCloseTo(-200 * Math.cos(1.2), within(1e-6));
    Curve normal = course.curve("arm.normal at 1 m of O–tip");
    assertThat(normal.least().orElseThrow().value()).isCloseTo(-100 * Math.sin(1.2), within(1e-6));
  }
}
