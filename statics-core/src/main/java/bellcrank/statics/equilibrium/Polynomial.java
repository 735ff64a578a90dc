package bellcrank.statics.equilibrium;

import java.util.ArrayList;
import java.util.List;

/**
 * A sum of powers of the distance from an origin on a bar: c₀ + c₁·(s − origin) + c₂·(s − origin)²
 * + ….
 *
 * @param origin where the distance is counted from, in m from the bar's start
 * @param coefficients c₀, c₁, … in SI units; one or more
 */
public record Polynomial(double origin, List<Double> coefficients) {

  /**
   * Copies the list.
   *
   * @param origin where the distance is counted from, in m from the bar's start
   * @param coefficients c₀, c₁, … in SI units; one or more
   */
  public Polynomial {
    coefficients = List.copyOf(coefficients);
  }

  /**
   * The value at a place.
   *
   * @param s distance from the bar's start in m
   * @return in SI units
   */
  public double at(double s) {
    double value = 0;
    for (int power = coefficients.size() - 1; power >= 0; power--) {
      value = value * (s - origin) + coefficients.get(power);
    }
    return value;
  }

  /**
   * The slope.
   *
   * @return the derivative with respect to the distance
   */
  public Polynomial slope() {
    List<Double> slopes = new ArrayList<>();
    for (int power = 1; power < coefficients.size(); power++) {
      slopes.add(power * coefficients.get(power));
    }
    return new Polynomial(origin, slopes.isEmpty() ? List.of(0.0) : slopes);
  }

  /** Coefficient of a power; 0 beyond the last. */
  double coefficient(int power) {
    return power < coefficients.size() ? coefficients.get(power) : 0;
  }

  /**
   * Places between two others where the slope is zero, in order: exact, since the slope is of
   * second degree at most. None where it is zero all over.
   */
  List<Double> stationary(double from, double to) {
    Polynomial slope = slope();
    double c = slope.coefficient(0);
    double b = slope.coefficient(1);
    double a = slope.coefficient(2);
    double root = b * b - 4 * a * c;
    if (root < 0) {
      return List.of();
    }
    // of the two usual forms each has one root without cancellation
    double q = -(b + Math.copySign(Math.sqrt(root), b)) / 2;
    List<Double> places = new ArrayList<>();
    for (double place : new double[] {origin + c / q, origin + q / a}) {
      if (place > from && place < to && !places.contains(place)) {
        places.add(place);
      }
    }
    places.sort(Double::compare);
    return places;
  }
}
