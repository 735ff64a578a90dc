package bellcrank.statics.motion;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.BodyMotion;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where a device with one freedom rests by itself: places at which the given loads have no power
 * along its motion (virtual work). Efforts that are sought count as absent, and friction and losses
 * are left out. The drive is free: a strut or rope whose length drives the device is let go. A dead
 * centre at an end of the course is not looked at; a drive that passes it shows what happens there.
 */
public final class Rest {

  private Rest() {}

  /**
   * A place at which it rests, or neighbouring places at all of which it rests.
   *
   * @param from value of the drive, in rad or m from the drawn pose
   * @param to the same as {@code from}; the greatest value, if it rests anywhere between
   * @param kind how it rests there
   * @param words such as {@code rests, and comes back to it}
   */
  public record Place(double from, double to, Kind kind, String words) {

    /**
     * Value of the drive.
     *
     * @return the place, or the middle of the places, in rad or m from the drawn pose
     */
    public double drive() {
      return from == to ? from : (from + to) / 2;
    }
  }

  /** How a device rests. */
  public enum Kind {
    /** Moved a little either way, it comes back: the energy of the loads is least. */
    STABLE("rests, and comes back when it is moved a little"),
    /** Moved a little one way or either way, it goes off. */
    UNSTABLE("rests only if nothing disturbs it: moved a little, it goes off"),
    /** It rests wherever it is put. */
    NEUTRAL("rests wherever it is put"),
    /** The loads drive it against the end of its travel. */
    AGAINST_END("is driven by its loads against the end of its travel");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /**
     * The kind in words.
     *
     * @return a clause without a subject
     */
    public String words() {
      return words;
    }
  }

  /**
   * All places of rest over a course, found to 1e-12 of its length. An end of the course counts as
   * a stop where a limit is stated or parts meet; at other ends the device does not lie.
   *
   * @param course the course
   * @return in ascending order of the drive; empty if it rests nowhere
   */
  public static List<Place> over(Course course) {
    return new RestFinder(course).places();
  }

  /**
   * The force or couple with which the given loads drive the device along its course: their power
   * for a rate of the drive of one. An effort at the drive that holds the device is its opposite.
   *
   * @param course the course
   * @param at value of the drive, between the ends
   * @return in N·m for a turn, in N for a length or a way, positive if the drive is to grow; empty
   *     at a dead centre, where it has no bound
   * @throws ModelException if the value lies beyond an end
   */
  public static OptionalDouble drivingForce(Course course, double at) {
    List<BodyMotion> moving = course.velocities(at);
    return moving.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(new LoadPowers(course, at, moving).sum());
  }
}
