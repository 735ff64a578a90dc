package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.SameBits;
import bellcrank.statics.SameBits.Question;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Direction;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** All forces of a large device, shared by threads that ask for the effects of different loads. */
class ForceSpaceOnThreadsTest {

  private static final int TRESTLES = 30;
  private static final int TIMES = 500;

  /** Two legs each, pinned in a loop with the ground, so that their forces follow from a block. */
  private static Device trestles() {
    DeviceBuilder row = Device.named("trestles");
    for (int k = 0; k < TRESTLES; k++) {
      double x = 3.0 * k;
      row.point("a" + k, x, 0)
          .point("b" + k, x + 2, 0.3 * Math.sin(k))
          .point("c" + k, x + 1.1, 2)
          .point("m" + k, x + 0.5, 1)
          .member("left " + k, "a" + k, "c" + k, "m" + k)
          .member("right " + k, "b" + k, "c" + k)
          .pin("foot " + k, "a" + k, "left " + k, "ground")
          .pin("toe " + k, "b" + k, "right " + k, "ground")
          .pin("top " + k, "c" + k, "left " + k, "right " + k)
          .connect(
              new Contact(
                  "prop " + k, "m" + k, "left " + k, "ground", Direction.ofAngle(2.2), 0.4, 0.3))
          .weight("sack " + k, "left " + k, "m" + k, 10 + k);
    }
    return row.build();
  }

  @Test
  void eachThreadGetsTheForcesOfItsOwnLoads() {
    Device device = trestles();
    List<Question<ForceSpace>> questions = new ArrayList<>();
    for (int part = 0; part < 8; part++) {
      int which = part;
      questions.add(
          (space, seen) -> {
            double[] loads =
                space.turned(
                    space.loads(device.cases().get(0), name -> name.hashCode() % 8 != which));
            for (int time = 0; time < TIMES; time++) {
              for (double force : space.responseTo(loads)) {
                seen.number(force);
              }
            }
          });
    }
    SameBits.hold(() -> ForceSpace.of(device, Pose.DRAWN), questions);
  }
}
