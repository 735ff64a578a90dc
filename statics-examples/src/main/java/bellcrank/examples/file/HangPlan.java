package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.motion.BalancePoint;
import bellcrank.statics.motion.Hang;
import java.util.List;
import java.util.Optional;

/**
 * How bodies, taken as one rigid piece, are carried: from a point, or by a handle somewhere on a
 * line.
 *
 * @param name name of the carrying
 * @param from name of the point, or of the line's first point
 * @param to name of the line's second point; empty if they hang from the one point
 * @param bodies names of the bodies that are carried; empty for all
 */
public record HangPlan(String name, String from, Optional<String> to, List<String> bodies) {

  /**
   * Checks the name and copies the list.
   *
   * @param name name of the carrying
   * @param from name of the point, or of the line's first point
   * @param to name of the line's second point
   * @param bodies names of the bodies that are carried; empty for all
   * @throws ModelException if the name is none
   */
  public HangPlan {
    Ask.of(name);
    bodies = List.copyOf(bodies);
  }

  /**
   * How the bodies hang from the point.
   *
   * @param device the device
   * @return the turn that they make
   * @throws ModelException if the device has no such point or body, no weight or no gravity
   */
  public Hang hang(Device device) {
    return Hang.of(device, Pose.DRAWN, bodies, device.point(from));
  }

  /**
   * Where on the line the handle must be.
   *
   * @param device the device
   * @return the place; empty if the line is plumb
   * @throws ModelException if the device has no such point or body, no weight or no gravity
   */
  public Optional<BalancePoint> handle(Device device) {
    return BalancePoint.on(
        device, Pose.DRAWN, bodies, device.point(from), device.point(to.orElse(from)));
  }

  void check(Device device) {
    if (to.isPresent()) {
      handle(device);
    } else {
      hang(device);
    }
  }
}
