package bellcrank.statics.device;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The name of any answer that a device can give, such as {@code heel.x on lever} or {@code
 * group(lever, jib).couple about hinge}. It knows no device; {@link #check(Device)} tells whether a
 * device has such an answer.
 *
 * <p>{@code point(tip).x on jib} is the abscissa of a point of a body in the pose that is answered;
 * the body is named where several have the point. Otherwise the text is {@code NAME[.measure] [from
 * …] [on BODY] [about POINT] [at LENGTH of A–B | just before LENGTH of A–B | just after LENGTH of
 * A–B | along A–B] [each] [in CASE]}; {@code A per B} is the ratio of two asks, and {@code
 * greatest} or {@code least} before an ask is an end of the range of its answers. Endings may come
 * in any order. {@code A to B} is read as {@code A–B}. A name stands in double quotes where it
 * could be taken for something else: if it contains an ending's first word behind other words, a
 * comma or bracket, a point before the word of a measure, or equals a word with a meaning of its
 * own.
 *
 * @param subject what is asked about
 * @param measure which quantity of it; in place of {@link Measure#VALUE} it is {@link
 *     Measure#ACTUAL} for an advantage and {@link Measure#DISTANCE} for a place
 * @param on name of the body on which the force acts, or to which the point belongs; empty for the
 *     one on which it is reported, or the only one that has the point
 * @param about name of the point for a moment, couple or arm; empty if none is needed
 * @param stretch a place on a bar, for internal forces, or a line that is to be met
 * @param each whether the answer is for one of several equal parts
 * @param loadCase name of the case; empty if the ask does not choose one
 */
public record Ask(
    Subject subject,
    Measure measure,
    Optional<String> on,
    Optional<String> about,
    Optional<Stretch> stretch,
    boolean each,
    Optional<String> loadCase) {

  /**
   * Checks the names and that subject and measure have a text together.
   *
   * @param subject what is asked about
   * @param measure which quantity of it
   * @param on name of a body, or empty
   * @param about name of a point, or empty
   * @param stretch a place on a bar or a line, or empty
   * @param each whether the answer is for one of several equal parts
   * @param loadCase name of a case, or empty
   * @throws ModelException if a name is not acceptable, or if the device as a whole, a ratio, an
   *     extreme, a multiple or a place is asked for what only a part has
   */
  public Ask {
    on.ifPresent(name -> Check.name("ask", name));
    about.ifPresent(name -> Check.name("ask", name));
    loadCase.ifPresent(name -> Check.name("ask", name));
    if (subject instanceof Subject.Advantage && measure == Measure.VALUE) {
      measure = Measure.ACTUAL;
    }
    if (subject instanceof Subject.Whole && !PartMeasures.WHOLE.contains(measure)) {
      throw new ModelException(
          "ask", "measure", measure.word(), PartMeasures.words(PartMeasures.WHOLE));
    }
    if (subject instanceof Subject.Place && measure == Measure.VALUE) {
      measure = Measure.DISTANCE;
    }
    if ((subject instanceof Subject.Place && measure != Measure.DISTANCE)
        || (subject instanceof Subject.Multiple && measure != Measure.VALUE)) {
      throw new ModelException(
          "ask", "measure", measure.word(), "no measure: a multiple and a distance have none");
    }
    boolean bare =
        measure == Measure.VALUE && on.isEmpty() && about.isEmpty() && stretch.isEmpty() && !each;
    if (subject instanceof Subject.Ratio && !bare) {
      throw new ModelException(
          "ask", "ratio", "with more than a case", "measures and endings at its two sides");
    }
    if (subject instanceof Subject.Extreme extreme && !bare) {
      throw new ModelException(
          "ask", extreme.word(), "with more than a case", "measures and endings in the ask within");
    }
  }

  /**
   * Reads an ask.
   *
   * @param text such as {@code heel.x on lever}
   * @return the ask
   * @throws ModelException with part {@code ask}, the offending piece as field and the whole text
   *     as value, if the text is no ask
   */
  public static Ask parse(String text) {
    return AskParser.parse(text);
  }

  /**
   * Asks about any subject.
   *
   * @param subject what is asked about
   * @param measure which quantity of it
   * @return the ask without endings
   * @throws ModelException if subject and measure do not fit
   */
  public static Ask of(Subject subject, Measure measure) {
    return new Ask(
        subject,
        measure,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty());
  }

  /**
   * Asks about a part.
   *
   * @param part name of a connection, load, sought quantity or member
   * @param measure which quantity of it
   * @return the ask without endings
   * @throws ModelException if the name is not acceptable
   */
  public static Ask of(String part, Measure measure) {
    return of(new Subject.Part(part), measure);
  }

  /**
   * Asks for the natural value of a part.
   *
   * @param part name of a connection, load or sought quantity
   * @return the ask without endings
   * @throws ModelException if the name is not acceptable
   */
  public static Ask of(String part) {
    return of(part, Measure.VALUE);
  }

  /**
   * This ask for the force on a certain body.
   *
   * @param body its name
   * @return the changed ask
   * @throws ModelException if the name is not acceptable, or this is a ratio or extreme
   */
  public Ask onBody(String body) {
    return new Ask(subject, measure, Optional.of(body), about, stretch, each, loadCase);
  }

  /**
   * This ask about a point.
   *
   * @param point its name
   * @return the changed ask
   * @throws ModelException if the name is not acceptable, or this is a ratio or extreme
   */
  public Ask aboutPoint(String point) {
    return new Ask(subject, measure, on, Optional.of(point), stretch, each, loadCase);
  }

  /**
   * This ask at a place on a bar.
   *
   * @param distance from the start in m, 0 or more
   * @param start name of the point where the bar starts
   * @param end name of the point where it ends
   * @return the changed ask
   * @throws ModelException if a name or the distance is not acceptable, or this is a ratio or
   *     extreme
   */
  public Ask atDistance(double distance, String start, String end) {
    return stretched(new Stretch(start, end, OptionalDouble.of(distance)));
  }

  /**
   * This ask just before or just after a place on a bar, where what is asked jumps.
   *
   * @param side on which side of the place
   * @param distance from the start in m, 0 or more
   * @param start name of the point where the bar starts
   * @param end name of the point where it ends
   * @return the changed ask
   * @throws ModelException if a name or the distance is not acceptable, or this is a ratio or
   *     extreme
   */
  public Ask beside(Side side, double distance, String start, String end) {
    return stretched(new Stretch(start, end, OptionalDouble.of(distance), Optional.of(side)));
  }

  /**
   * This ask along a line.
   *
   * @param start name of the point from which it is measured
   * @param end name of a point towards which it is positive
   * @return the changed ask
   * @throws ModelException if a name is not acceptable, or this is a ratio or extreme
   */
  public Ask alongLine(String start, String end) {
    return stretched(new Stretch(start, end, OptionalDouble.empty()));
  }

  Ask stretched(Stretch place) {
    return new Ask(subject, measure, on, about, Optional.of(place), each, loadCase);
  }

  /**
   * This ask for one of several equal parts.
   *
   * @return the changed ask
   * @throws ModelException if this is a ratio or extreme
   */
  public Ask eachPart() {
    return new Ask(subject, measure, on, about, stretch, true, loadCase);
  }

  /**
   * This ask in a case.
   *
   * @param name name of the case
   * @return the changed ask
   * @throws ModelException if the name is not acceptable
   */
  public Ask inCase(String name) {
    return new Ask(subject, measure, on, about, stretch, each, Optional.of(name));
  }

  /**
   * The ratio of this answer to another one.
   *
   * @param denominator the other one
   * @return the ratio
   * @throws ModelException if either is a ratio or extreme itself or names a case
   */
  public Ask per(Ask denominator) {
    return of(new Subject.Ratio(this, denominator), Measure.VALUE);
  }

  /**
   * The upper end of the range of this answer over all states in which the device can hold.
   *
   * @return the ask for the end
   * @throws ModelException if this is an end itself or names a case
   */
  public Ask greatest() {
    return of(new Subject.Extreme(true, this), Measure.VALUE);
  }

  /**
   * The lower end of the range of this answer over all states in which the device can hold.
   *
   * @return the ask for the end
   * @throws ModelException if this is an end itself or names a case
   */
  public Ask least() {
    return of(new Subject.Extreme(false, this), Measure.VALUE);
  }

  /** This ask without its case. */
  Ask inNoCase() {
    return new Ask(subject, measure, on, about, stretch, each, Optional.empty());
  }

  /**
   * The text of this ask, with names quoted where needed and lengths in m.
   *
   * @return a text that {@link #parse(String)} reads as an equal ask
   */
  public String text() {
    return AskText.of(this);
  }

  /**
   * Checks that a device has this answer: that every name in the ask exists, that the part has the
   * measure, and that each ending is needed and fits.
   *
   * @param device the device
   * @return this
   * @throws ModelException with every problem found, part {@code ask}, the offending piece as field
   *     and the whole text as value
   */
  public Ask check(Device device) {
    AskCheck.check(this, device);
    return this;
  }

  /**
   * All asks of a device that need no further word than a measure; their extremes are not listed.
   *
   * @param device the device
   * @return asks that the device can be asked, without endings, in the order of its parts
   */
  public static List<Ask> all(Device device) {
    return PartMeasures.all(device);
  }

  @Override
  public String toString() {
    return text();
  }
}
