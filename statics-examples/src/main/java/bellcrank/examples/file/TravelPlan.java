package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Meeting;
import bellcrank.statics.units.Dimension;
import java.util.List;

/**
 * How a device is to be driven, how far, and what is asked on the way.
 *
 * @param drive what drives it
 * @param from least value of the drive, at most 0: rad or m from the drawn pose
 * @param to greatest value of the drive, at least 0 and above the least
 * @param steps number of even steps between the two in a table, 1 to 1000
 * @param meetings parts that may meet on the way and end it there
 * @param curves what is asked on the way, answered by numbers; empty for the usual
 */
public record TravelPlan(
    Drive drive, double from, double to, int steps, List<Meeting> meetings, List<Ask> curves) {

  /** Number of steps unless stated. */
  static final int USUAL_STEPS = 10;

  /** Most steps. */
  static final int MOST_STEPS = 1000;

  /**
   * Checks the numbers and copies the lists.
   *
   * @param drive what drives it
   * @param from least value of the drive, at most 0: rad or m from the drawn pose
   * @param to greatest value of the drive, at least 0 and above the least
   * @param steps number of even steps between the two in a table, 1 to 1000
   * @param meetings parts that may meet on the way and end it there
   * @param curves what is asked on the way, answered by numbers; empty for the usual
   * @throws ModelException if a number is out of its range
   */
  public TravelPlan {
    from = from + 0.0; // no negative zero, which no file can state
    to = to + 0.0;
    meetings = List.copyOf(meetings);
    curves = List.copyOf(curves);
    if (!(from <= 0) || !Double.isFinite(from)) {
      throw new ModelException("travel", "from", from, "a number of at most 0, which is as drawn");
    }
    if (!(to >= 0 && to > from) || !Double.isFinite(to)) {
      throw new ModelException("travel", "to", to, "a number of at least 0, above from");
    }
    if (steps < 1 || steps > MOST_STEPS) {
      throw new ModelException("travel", "steps", steps, "a whole number from 1 to " + MOST_STEPS);
    }
  }

  /**
   * In what the drive is measured.
   *
   * @return angle or length
   */
  public Dimension dimension() {
    return drive instanceof Drive.Turn ? Dimension.ANGLE : Dimension.LENGTH;
  }

  /** This plan with other asks. */
  TravelPlan withCurves(List<Ask> asks) {
    return new TravelPlan(drive, from, to, steps, meetings, asks);
  }
}
