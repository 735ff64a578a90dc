package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Subject;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import java.util.List;

/** Centre of gravity of bodies in a pose, for what hangs. */
final class GravityCentre {

  /** Share of the device's size below which places are the same. */
  static final double SAME = 1e-12;

  private GravityCentre() {}

  static Point of(Device device, Pose pose, List<String> bodies) {
    Balance balance = Balance.of(device, LoadCase.ALL_LOADS, pose);
    Subject.Centre centre = new Subject.Centre(bodies);
    if (balance.answer(Ask.of(centre, Measure.X)) instanceof Answer.Value x
        && balance.answer(Ask.of(centre, Measure.Y)) instanceof Answer.Value y) {
      return Point.of(x.si(), y.si());
    }
    throw new ModelException(device.name(), "weight", "none", "a stated weight of what hangs");
  }

  static Direction down(Device device) {
    if (!(device.gravity().norm() > 0)) {
      throw new ModelException(
          device.name(), "gravity", device.gravity(), "gravity other than zero");
    }
    return Direction.from(device.gravity());
  }
}
