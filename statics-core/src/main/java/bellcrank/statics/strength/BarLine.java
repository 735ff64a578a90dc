package bellcrank.statics.strength;

import bellcrank.statics.equilibrium.BarForces;
import bellcrank.statics.equilibrium.InsideForce;
import bellcrank.statics.equilibrium.Piece;
import java.util.List;

/**
 * N, V and M along a bar as polynomials of the distance from the start of each piece; in storage of
 * its own, so that states can be mixed without making anything.
 */
final class BarLine {

  /** Coefficients of N, of V, of M. */
  private static final int NORMAL = 0;

  private static final int SHEAR = 3;
  private static final int MOMENT = 6;
  private static final int ALL = 10;

  /** Part of the bar's length within which two places are one. */
  private static final double SAME_PLACE = 1e-9;

  private final double[] starts;
  private final double[] ends;
  private final double[] numbers;

  private BarLine(double[] starts, double[] ends) {
    this.starts = starts;
    this.ends = ends;
    numbers = new double[ALL * starts.length];
  }

  static BarLine of(BarForces forces) {
    List<Piece> pieces = forces.pieces();
    BarLine line =
        new BarLine(
            pieces.stream().mapToDouble(Piece::start).toArray(),
            pieces.stream().mapToDouble(Piece::end).toArray());
    for (int k = 0; k < pieces.size(); k++) {
      line.put(k, NORMAL, pieces.get(k).curve(InsideForce.NORMAL).coefficients());
      line.put(k, SHEAR, pieces.get(k).curve(InsideForce.SHEAR).coefficients());
      line.put(k, MOMENT, pieces.get(k).curve(InsideForce.MOMENT).coefficients());
    }
    return line;
  }

  /** A line with pieces at some places, to be filled. */
  static BarLine of(double[] starts, double[] ends) {
    return new BarLine(starts.clone(), ends.clone());
  }

  /** The coefficients of all pieces, ten each, to be written to. */
  double[] numbers() {
    return numbers;
  }

  /** A line that carries nothing, for a bar whose forces are open. */
  static BarLine none() {
    return new BarLine(new double[] {0}, new double[] {0});
  }

  /** Room for a mixture with a line of the same bar. */
  BarLine empty() {
    return new BarLine(starts, ends);
  }

  private void put(int piece, int first, List<Double> coefficients) {
    for (int power = 0; power < coefficients.size(); power++) {
      numbers[ALL * piece + first + power] = coefficients.get(power);
    }
  }

  /** Becomes {@code none + multiple · (one − none)}. */
  void mix(BarLine none, BarLine one, double multiple) {
    for (int k = 0; k < numbers.length; k++) {
      numbers[k] = none.numbers[k] + multiple * (one.numbers[k] - none.numbers[k]);
    }
  }

  int pieces() {
    return starts.length;
  }

  double start(int piece) {
    return starts[piece];
  }

  double end(int piece) {
    return ends[piece];
  }

  double normal(int piece, double at) {
    int k = ALL * piece + NORMAL;
    double s = at - starts[piece];
    return numbers[k] + s * (numbers[k + 1] + s * numbers[k + 2]);
  }

  double shear(int piece, double at) {
    int k = ALL * piece + SHEAR;
    double s = at - starts[piece];
    return numbers[k] + s * (numbers[k + 1] + s * numbers[k + 2]);
  }

  double moment(int piece, double at) {
    int k = ALL * piece + MOMENT;
    double s = at - starts[piece];
    return numbers[k] + s * (numbers[k + 1] + s * (numbers[k + 2] + s * numbers[k + 3]));
  }

  /** Coefficient of a power of the slope of {@code weight · N + M}. */
  private double slope(int piece, double weight, int power) {
    int k = ALL * piece;
    double ofNormal = power < 2 ? (power + 1) * numbers[k + NORMAL + power + 1] : 0;
    return weight * ofNormal + (power + 1) * numbers[k + MOMENT + power + 1];
  }

  /**
   * Where {@code weight · N + M} has no slope within a piece.
   *
   * @param which 0 or 1: the first or second root
   * @return distance from the bar's start, or the piece's start where there is no such place
   */
  double still(int piece, double weight, int which) {
    double c = slope(piece, weight, 0);
    double b = slope(piece, weight, 1);
    double a = slope(piece, weight, 2);
    return root(piece, a, b, c, which);
  }

  /** A root of a·s² + b·s + c within a piece, or the piece's start. */
  private double root(int piece, double a, double b, double c, int which) {
    double root = b * b - 4 * a * c;
    double q = root < 0 ? 0 : -(b + Math.copySign(Math.sqrt(root), b)) / 2;
    double s = which == 0 ? c / q : q / a;
    // a quotient that is no number fails the comparison
    return s > 0 && s < ends[piece] - starts[piece] ? starts[piece] + s : starts[piece];
  }

  /** Whether N and V do not change within a piece, nor the slope of M: its worst is at an end. */
  boolean isEven(int piece) {
    int k = ALL * piece;
    return numbers[k + NORMAL + 1] == 0
        && numbers[k + NORMAL + 2] == 0
        && numbers[k + SHEAR + 1] == 0
        && numbers[k + SHEAR + 2] == 0
        && numbers[k + MOMENT + 2] == 0
        && numbers[k + MOMENT + 3] == 0;
  }

  /** Where N is zero within a piece; the piece's start where it is nowhere. */
  double noNormal(int piece, int which) {
    int k = ALL * piece + NORMAL;
    return root(piece, numbers[k + 2], numbers[k + 1], numbers[k], which);
  }

  /** Where N has no slope within a piece; the piece's start where there is no such place. */
  double stillNormal(int piece) {
    return still(piece, ALL * piece + NORMAL);
  }

  /** Where V has no slope within a piece; the piece's start where there is no such place. */
  double stillShear(int piece) {
    return still(piece, ALL * piece + SHEAR);
  }

  private double still(int piece, int first) {
    double s = -numbers[first + 1] / (2 * numbers[first + 2]);
    return s > 0 && s < ends[piece] - starts[piece] ? starts[piece] + s : starts[piece];
  }

  /** The piece on the near or far side of a place; a place within rounding of a jump is on it. */
  int piece(double at, boolean after) {
    double near = SAME_PLACE * ends[ends.length - 1];
    for (int k = 0; k < starts.length - 1; k++) {
      if (after ? at < ends[k] - near : at <= ends[k] + near) {
        return k;
      }
    }
    return starts.length - 1;
  }

  boolean isZero() {
    for (double number : numbers) {
      if (number != 0) {
        return false;
      }
    }
    return true;
  }
}
