package bellcrank.statics.explain;

import bellcrank.statics.units.Dimension;
import java.util.OptionalDouble;

/**
 * A term of an equation: a coefficient times a force or couple.
 *
 * @param symbol symbol of the force or couple
 * @param name name of the load or part that it belongs to
 * @param coefficient moment arm in m with its sign, counter-clockwise positive; or the share of the
 *     force along the direction, −1 to 1, or beyond where a rope has several parts; or 1 or −1 for
 *     a couple
 * @param arm whether the coefficient is a moment arm in m
 * @param value the force in N or couple in N·m; empty if statics leaves it open
 * @param kind force or moment: what the value is
 * @param given whether it is a given load
 * @param sought whether this equation, alone or with others, finds it
 */
public record Term(
    Symbol symbol,
    String name,
    double coefficient,
    boolean arm,
    OptionalDouble value,
    Dimension kind,
    boolean given,
    boolean sought) {

  /**
   * What the term adds to the equation.
   *
   * @return in N, or in N·m for moments; 0 if its value is open
   */
  public double contribution() {
    return coefficient * value.orElse(0);
  }
}
