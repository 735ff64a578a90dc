package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Curve;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Meeting;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The greatest and the least of each answer over several cases, and over a travel if there is one,
 * with where it is so.
 *
 * @param rows one for each ask, in order
 * @param trips how far the device goes in each case; empty if it stays as drawn
 */
public record Envelope(List<Row> rows, List<Trip> trips) {

  /** Share of a value by which another has to stand out, so that rounding decides nothing. */
  private static final double ROUNDING = 1e-12;

  /**
   * Copies the lists.
   *
   * @param rows one for each ask, in order
   * @param trips how far the device goes in each case
   */
  public Envelope {
    rows = List.copyOf(rows);
    trips = List.copyOf(trips);
  }

  /**
   * The extremes of one answer.
   *
   * @param ask what was asked
   * @param dimension what kind of quantity it is; empty if there is no answer in any case
   * @param least the least value; empty as well then
   * @param greatest the greatest value
   * @param missing cases in which there is no answer, all along the travel
   */
  public record Row(
      Ask ask,
      Optional<Dimension> dimension,
      Optional<Extreme> least,
      Optional<Extreme> greatest,
      List<Missing> missing) {

    /**
     * Copies the list.
     *
     * @param ask what was asked
     * @param dimension what kind of quantity it is
     * @param least the least value
     * @param greatest the greatest value
     * @param missing cases in which there is no answer
     */
    public Row {
      missing = List.copyOf(missing);
    }
  }

  /**
   * An extreme.
   *
   * @param value in SI units
   * @param loadCase name of the case; of several with the same value the first
   * @param drive value of the drive there, in rad or m from the drawn pose; empty without a travel
   */
  public record Extreme(double value, String loadCase, OptionalDouble drive) {}

  /**
   * A case in which an ask has no answer.
   *
   * @param loadCase name of the case
   * @param why why not, as a clause
   */
  public record Missing(String loadCase, String why) {}

  /**
   * How far the device goes in a case.
   *
   * @param loadCase name of the case
   * @param travel the course with its ends, or why there is none
   */
  public record Trip(String loadCase, Travel travel) {}

  /**
   * What drives the device, and how far.
   *
   * @param drive what drives it
   * @param least least value of the drive, at most 0: rad or m from the drawn pose
   * @param greatest greatest value, at least 0
   * @param meetings parts that may meet on the way and stop it there
   */
  public record Way(Drive drive, double least, double greatest, List<Meeting> meetings) {

    /**
     * Copies the list.
     *
     * @param drive what drives it
     * @param least least value of the drive
     * @param greatest greatest value
     * @param meetings parts that may meet on the way
     */
    public Way {
      meetings = List.copyOf(meetings);
    }
  }

  /**
   * The envelope over cases, as drawn. Where parts are one-sided or rough, or an ask is about them,
   * limits answer, else balances do.
   *
   * @param model the model
   * @param cases the cases, at least one; they need not be stated in the model
   * @param asks what is asked, answered by numbers
   * @return the envelope
   * @throws ModelException if there is no case, two have one name, one has a factor of a load that
   *     the device does not have, or an ask names a case, is not answered by a number, or names
   *     what the device does not have
   */
  public static Envelope of(Model model, List<LoadCase> cases, List<Ask> asks) {
    check(model.device(), cases, asks);
    List<Row> rows = new ArrayList<>();
    for (Ask ask : asks) {
      EnvelopeRow row = new EnvelopeRow(ask, ROUNDING);
      for (LoadCase one : cases) {
        Answer answer = Limits.answer(model.device(), one, Pose.DRAWN, model.foundations(), ask);
        row.add(model.device(), one, answer);
      }
      rows.add(row.row());
    }
    return new Envelope(rows, List.of());
  }

  /**
   * The envelope over cases and a travel, which is followed for each case by itself: loads may end
   * it sooner. On the way forces are those of balances, since a course ends where a part would have
   * to give what it cannot; asks that only limits answer are answered by them. Extremes between the
   * samples of a course are searched; places without an answer are left out.
   *
   * @param model the model
   * @param cases the cases, at least one; they need not be stated in the model
   * @param asks what is asked, answered by numbers
   * @param way what drives the device, and how far
   * @return the envelope
   * @throws ModelException as for {@link #of(Model, List, List)}, or if the way names what the
   *     device does not have or its ends have the wrong sign
   */
  public static Envelope over(Model model, List<LoadCase> cases, List<Ask> asks, Way way) {
    check(model.device(), cases, asks);
    List<Trip> trips = new ArrayList<>();
    List<EnvelopeRow> rows = asks.stream().map(ask -> new EnvelopeRow(ask, ROUNDING)).toList();
    for (LoadCase one : cases) {
      Travel travel =
          Travel.of(model.device(), one, way.drive(), way.least(), way.greatest(), way.meetings());
      trips.add(new Trip(one.name(), travel));
      for (int k = 0; k < rows.size(); k++) {
        if (travel instanceof Course course) {
          Curve curve = course.curve(asks.get(k), model.foundations());
          rows.get(k).add(one, curve);
        } else {
          rows.get(k).miss(one, ((Travel.Standstill) travel).reason().words());
        }
      }
    }
    return new Envelope(rows.stream().map(EnvelopeRow::row).toList(), trips);
  }

  private static void check(Device device, List<LoadCase> cases, List<Ask> asks) {
    if (cases.isEmpty()) {
      throw new ModelException(device.name(), "cases", "none", "at least one");
    }
    List<String> names = cases.stream().map(LoadCase::name).toList();
    if (names.stream().distinct().count() < names.size()) {
      throw new ModelException(device.name(), "cases", names, "names that differ");
    }
    cases.forEach(one -> checkLoads(device, one));
    for (Ask ask : asks) {
      ask.check(device);
      if (ask.loadCase().isPresent()) {
        throw new ModelException(
            device.name(), "ask", ask.text(), "an ask without a case: all cases are looked at");
      }
    }
  }

  /** A case that the device does not state was not checked with it. */
  private static void checkLoads(Device device, LoadCase loadCase) {
    for (String load : loadCase.factors().keySet()) {
      boolean given = device.load(load).filter(one -> !(one instanceof Sought)).isPresent();
      // struts may have masses of their own
      if (!given && device.connection(load).isEmpty()) {
        List<String> names =
            device.loads().stream()
                .filter(one -> !(one instanceof Sought))
                .map(Load::name)
                .toList();
        throw MissingName.of(loadCase.name(), "factors", load, "a load", names);
      }
    }
  }
}
