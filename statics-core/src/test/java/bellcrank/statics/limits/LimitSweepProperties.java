package bellcrank.statics.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A sweep finds in each pose what new limits find there, whatever poses came before. */
class LimitSweepProperties {

  private static final Variation PUSH = Variation.of("push");

  @Provide
  Arbitrary<Device> any() {
    return RandomContacts.any();
  }

  @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
  void aSweepFindsWhatNewLimitsFind(@ForAll("any") Device device) {
    LimitSweep sweep = Limits.of(device).sweep(PUSH);
    same(sweep, Limits.of(device).greatest(PUSH));
    for (double turn : new double[] {0.01, 0.03, -0.2, 1.5, 0.02, 0}) {
      Pose pose = turned(device, turn);
      sweep.moveTo(pose);
      same(sweep, Limits.of(device, device.cases().get(0), pose, List.of()).greatest(PUSH));
    }
  }

  /** Each member turns by an angle of its own. */
  private static Pose turned(Device device, double turn) {
    Map<String, Frame> frames = new HashMap<>();
    for (int k = 0; k < device.members().size(); k++) {
      frames.put(
          device.members().get(k).name(), Frame.turnAbout(Point.ORIGIN, turn * (1 + 0.1 * k)));
    }
    return turn == 0 ? Pose.DRAWN : Pose.of(frames);
  }

  private static void same(LimitSweep sweep, OptionalDouble anew) {
    assertThat(sweep.isTold()).isEqualTo(anew.isPresent());
    if (anew.isPresent() && anew.getAsDouble() == Double.POSITIVE_INFINITY) {
      assertThat(sweep.greatest()).isInfinite();
    } else if (anew.isPresent()) {
      double size = Math.max(1, Math.abs(anew.getAsDouble()));
      assertThat(sweep.greatest()).isCloseTo(anew.getAsDouble(), within(1e-9 * size));
    }
  }
}
