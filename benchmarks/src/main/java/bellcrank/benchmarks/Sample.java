package bellcrank.benchmarks;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A small device that is measured, with some poses of it. */
public enum Sample {
  /** Three members, nine unknowns, small blocks. */
  DERRICK {
    @Override
    public Device device() {
      return SampleDevices.derrick();
    }
  },
  /** One member, three unknowns. */
  PRESS_LEVER {
    @Override
    public Device device() {
      return SampleDevices.pressLever();
    }
  },
  /** Two members, six unknowns. */
  TOGGLE {
    @Override
    public Device device() {
      return SampleDevices.toggle();
    }
  },
  /** Three members, nine unknowns in one block. */
  ROOF_RING {
    @Override
    public Device device() {
      return SampleDevices.roofRing();
    }
  };

  /**
   * The device.
   *
   * @return a newly built one
   */
  public abstract Device device();

  /**
   * Poses a little away from the drawn one. Places and directions are all that a balance needs, so
   * a rope may be of another length and a roller on another ground in them; pins stay together.
   *
   * @param device the device
   * @param count how many, 1 or more
   * @return the poses
   */
  public static List<Pose> poses(Device device, int count) {
    List<Pose> poses = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double turn = 0.04 * Math.sin(1.0 + i);
      Map<String, Frame> frames = new HashMap<>();
      if (device.body("jib").isPresent()) {
        frames.put("jib", Frame.turnAbout(device.point("heel"), turn));
        frames.put("winch", Frame.turnAbout(device.point("axle"), 11 * turn));
      } else {
        Frame together = Frame.turnAbout(Point.ORIGIN, turn);
        device.members().forEach(member -> frames.put(member.name(), together));
      }
      poses.add(Pose.of(frames));
    }
    return List.copyOf(poses);
  }
}
