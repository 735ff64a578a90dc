package bellcrank.statics.motion;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.equilibrium.Freedom;
import java.util.List;

/** Whether a device can be driven, and if so its course. */
public sealed interface Travel permits Course, Travel.Standstill {

  /**
   * It cannot be driven, or not in one way only.
   *
   * @param reason why
   * @param freedoms the motions that are free to first order, the drive being let go
   */
  record Standstill(Reason reason, List<Freedom> freedoms) implements Travel {

    /**
     * Copies the list.
     *
     * @param reason why
     * @param freedoms the motions that are free to first order
     */
    public Standstill {
      freedoms = List.copyOf(freedoms);
    }
  }

  /** Why a device cannot be driven. */
  enum Reason {
    /** Nothing moves: its connections hold it. */
    HELD("nothing can move"),
    /** More than one motion is free, so the drive does not say how it goes. */
    SEVERAL_FREEDOMS("more than one motion is free"),
    /** The free motion does not move what is to drive it. */
    NOT_DRIVEN("the free motion does not move what is to drive it"),
    /** The motion is free to first order only: no step of it fits the connections. */
    FIRST_ORDER_ONLY("the motion is free for a first instant only, no step of it fits");

    private final String words;

    Reason(String words) {
      this.words = words;
    }

    /**
     * The reason in words.
     *
     * @return a clause
     */
    public String words() {
      return words;
    }
  }

  /**
   * Follows a device both ways from the drawn pose, under its first case of loads.
   *
   * @param device the device; what it seeks does not restrain it
   * @param drive what drives it
   * @param least least value of the drive, at most 0: rad or m from the drawn pose
   * @param greatest greatest value of the drive, at least 0
   * @return the course, or why there is none
   * @throws bellcrank.statics.device.ModelException if the drive names what the device does not
   *     have, or a limit has the wrong sign or is not finite
   */
  static Travel of(Device device, Drive drive, double least, double greatest) {
    return of(device, device.cases().get(0), drive, least, greatest, List.of());
  }

  /**
   * Follows a device both ways from the drawn pose.
   *
   * @param device the device; what it seeks does not restrain it
   * @param loadCase the loads under which lines go slack and contacts lift
   * @param drive what drives it
   * @param least least value of the drive, at most 0: rad or m from the drawn pose
   * @param greatest greatest value of the drive, at least 0
   * @param meetings parts that may meet on the way and stop it there
   * @return the course, or why there is none
   * @throws bellcrank.statics.device.ModelException if the drive or a meeting names what the device
   *     does not have, or a limit has the wrong sign or is not finite
   */
  static Travel of(
      Device device,
      LoadCase loadCase,
      Drive drive,
      double least,
      double greatest,
      List<Meeting> meetings) {
    return CourseFinder.find(device, loadCase, drive, least, greatest, meetings);
  }
}
