package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.Expectation;
import bellcrank.examples.file.Expected;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Holds answers against what a device file expects. A value must hold to half a unit of its last
 * significant digit, bound included, in the unit in which it is written. An expected zero is held
 * to half a unit in the same digit of the loads' size (for a moment, times the device's size; for
 * an angle in rad or a plain number, of 1; for a length, of the device's size). Angles are compared
 * modulo a full turn, words as they are.
 */
public final class ExpectationCheck {

  /** Room for the rounding of a difference that meets the bound, relative to the bound. */
  private static final double SLACK = 1e-9;

  /** Room for the rounding of the value itself, in units of its last binary place. */
  private static final int LAST_PLACES = 8;

  /** Decimal digits that a double holds for certain. */
  private static final MathContext CERTAIN = new MathContext(15);

  private final CaseSolution solution;

  private ExpectationCheck(CaseSolution solution) {
    this.solution = solution;
  }

  /**
   * Checks all expectations of a file, each in its own case, or in the first one if it names none.
   *
   * @param file the file
   * @return one result for each expectation, in order
   */
  public static List<Checked> all(DeviceFile file) {
    Map<String, CaseSolution> solutions = new HashMap<>();
    List<Checked> all = new ArrayList<>();
    for (Expectation expectation : file.expectations()) {
      CaseSolution solution =
          solutions.computeIfAbsent(
              caseName(file, expectation), name -> CaseSolution.of(file, name));
      all.add(of(expectation, solution));
    }
    return List.copyOf(all);
  }

  /**
   * Checks one expectation of a file.
   *
   * @param expectation the expectation
   * @param solution the file's device in the expectation's case
   * @return the result
   */
  public static Checked of(Expectation expectation, CaseSolution solution) {
    return new ExpectationCheck(solution).check(expectation);
  }

  /** Name of the case to which an expectation belongs. */
  static String caseName(DeviceFile file, Expectation expectation) {
    return expectation.ask().loadCase().orElseGet(() -> file.device().cases().get(0).name());
  }

  private Checked check(Expectation expectation) {
    Answer found = solution.answer(expectation.ask());
    if (expectation.value() instanceof Expected.Words words) {
      boolean equal = found instanceof Answer.Words answer && answer.text().equals(words.text());
      return new Checked(expectation, found, 0, equal);
    }
    Expected.Amount amount = (Expected.Amount) expectation.value();
    Quantity wanted = amount.quantity();
    double allowed = allowed(wanted, amount.unit(), expectation.digits());
    boolean holds =
        found instanceof Answer.Value value
            && value.dimension() == wanted.dimension()
            && difference(wanted, value.si()) <= withRoom(allowed, wanted.si());
    return new Checked(expectation, found, allowed, holds);
  }

  static double withRoom(double allowed, double value) {
    return allowed * (1 + SLACK) + LAST_PLACES * Math.ulp(value);
  }

  private static double difference(Quantity wanted, double found) {
    double difference = Math.abs(found - wanted.si());
    if (wanted.dimension() != Dimension.ANGLE) {
      return difference;
    }
    double turn = 2 * Math.PI;
    double rest = difference % turn;
    return Math.min(rest, turn - rest);
  }

  private double allowed(Quantity wanted, Unit unit, int digits) {
    double size = wanted.si() == 0 ? LoadScale.of(solution.balance()).of(wanted.dimension()) : 0;
    return allowed(wanted, unit, digits, size);
  }

  /** Half a unit of the last digit; for a zero in the digits of a size. */
  static double allowed(Quantity wanted, Unit unit, int digits, double size) {
    if (wanted.si() == 0) {
      return 0.5 * Math.pow(10, -digits) * size;
    }
    BigDecimal written = BigDecimal.valueOf(unit.fromSi(wanted.si())).round(CERTAIN);
    int exponent = written.precision() - written.scale() - 1;
    return unit.toSi(BigDecimal.valueOf(5, digits - exponent).doubleValue());
  }
}
