package bellcrank.statics.study.internal;

import bellcrank.statics.geometry.Vector;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How fast the numbers of a model change with an input: the places of points, gravity, forces, and
 * single numbers of parts by their words. What is not named does not change.
 *
 * @param points rate of the places of points by name
 * @param gravity rate of gravity
 * @param forces rate of given forces by name
 * @param numbers rate of numbers of parts
 */
public record Rates(
    Map<String, Vector> points,
    Vector gravity,
    Map<String, Vector> forces,
    Map<PartNumber, Double> numbers) {

  /** Nothing changes. */
  public static final Rates NONE = new Rates(Map.of(), Vector.ZERO, Map.of(), Map.of());

  /**
   * A number of a part.
   *
   * @param words what it is, as in the text of an input
   * @param part name of the part
   */
  public record PartNumber(String words, String part) {}

  /**
   * Only the places of points change.
   *
   * @param points rate by name
   */
  public static Rates ofPoints(Map<String, Vector> points) {
    return new Rates(Map.copyOf(points), Vector.ZERO, Map.of(), Map.of());
  }

  /**
   * Only gravity changes.
   *
   * @param rate its rate
   */
  public static Rates ofGravity(Vector rate) {
    return new Rates(Map.of(), rate, Map.of(), Map.of());
  }

  /**
   * Only a force changes.
   *
   * @param force its name
   * @param rate its rate
   */
  public static Rates ofForce(String force, Vector rate) {
    return new Rates(Map.of(), Vector.ZERO, Map.of(force, rate), Map.of());
  }

  /**
   * Only one number changes, at a rate of one.
   *
   * @param words what it is
   * @param part name of the part
   */
  public static Rates ofNumber(String words, String part) {
    return new Rates(Map.of(), Vector.ZERO, Map.of(), Map.of(new PartNumber(words, part), 1.0));
  }

  /**
   * Several numbers change at once.
   *
   * @param all their rates
   */
  public static Rates sum(List<Rates> all) {
    Map<String, Vector> points = new HashMap<>();
    Map<String, Vector> forces = new HashMap<>();
    Map<PartNumber, Double> numbers = new HashMap<>();
    Vector gravity = Vector.ZERO;
    for (Rates one : all) {
      one.points().forEach((point, rate) -> points.merge(point, rate, Vector::plus));
      one.forces().forEach((force, rate) -> forces.merge(force, rate, Vector::plus));
      one.numbers().forEach((number, rate) -> numbers.merge(number, rate, Double::sum));
      gravity = gravity.plus(one.gravity());
    }
    return new Rates(Map.copyOf(points), gravity, Map.copyOf(forces), Map.copyOf(numbers));
  }

  double number(String words, String part) {
    return numbers.isEmpty() ? 0 : numbers.getOrDefault(new PartNumber(words, part), 0.0);
  }
}
