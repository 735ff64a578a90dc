package bellcrank.statics.ground;

import bellcrank.statics.device.ModelException;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The pressure between a rigid flat base and the ground, which pushes and never pulls: linear over
 * the part of the width that is pressed.
 *
 * <p>Inside the middle third, the kern, the whole width is pressed. Outside it, the pressure is a
 * triangle whose resultant lies a third of the pressed width from the edge. Source: equilibrium of
 * a linear pressure without tension, in any textbook of foundations; from memory.
 *
 * <p>Left and right are seen with the push upwards.
 *
 * @param normal normal force in N, pushing, 0 or more
 * @param couple couple of the normal force about the middle of the base in N·m, counter-clockwise
 *     positive; a force to the right of the middle has a positive one
 * @param width width B of the base in m, above 0
 * @param length length L of the base out of the plane in m, above 0
 */
public record BasePressure(double normal, double couple, double width, double length) {

  private static final String PART = "base";

  /** How the pressure is spread over the width. */
  public enum Shape {
    /** Neither a normal force nor a couple: nothing is pressed. */
    NONE,
    /** The whole width is pressed, |e| at most B/6; evenly if e is 0. */
    TRAPEZOID,
    /** A part of the width is pressed, |e| above B/6 and below B/2. */
    TRIANGLE,
    /**
     * The resultant is at an edge or beyond it, |e| at least B/2, or there is a couple without a
     * normal force: no finite pressure balances it.
     */
    EDGE
  }

  /** An edge of the base, seen with the push upwards. */
  public enum Edge {
    /** The edge on the left. */
    LEFT,
    /** The edge on the right. */
    RIGHT
  }

  /**
   * Checks the fields.
   *
   * @param normal normal force in N, pushing, 0 or more
   * @param couple couple of the normal force about the middle of the base in N·m, counter-clockwise
   *     positive; a force to the right of the middle has a positive one
   * @param width width B of the base in m, above 0
   * @param length length L of the base out of the plane in m, above 0
   * @throws ModelException if a field is out of its range or not finite
   */
  public BasePressure {
    normal = Check.notNegative(PART, "normal force", normal);
    couple = Check.finite(PART, "couple", couple);
    Check.positive(PART, "width", width);
    Check.positive(PART, "length", length);
  }

  /**
   * The pressure of a normal force and a couple.
   *
   * @param normal normal force in N, pushing, 0 or more
   * @param couple couple of the normal force about the middle of the base in N·m, counter-clockwise
   *     positive
   * @param width width B of the base in m, above 0
   * @param length length L of the base out of the plane in m, above 0
   * @return the pressure
   * @throws ModelException if a value is out of its range or not finite
   */
  public static BasePressure of(double normal, double couple, double width, double length) {
    return new BasePressure(normal, couple, width, length);
  }

  /**
   * Where the resultant is: the offset e = M/N from the middle.
   *
   * @return in m, positive to the right; empty without a normal force
   */
  public OptionalDouble offset() {
    return normal == 0 ? OptionalDouble.empty() : finite(couple / normal);
  }

  /**
   * How the pressure is spread.
   *
   * @return the shape
   */
  public Shape shape() {
    if (normal == 0 && couple == 0) {
      return Shape.NONE;
    }
    if (room() <= 0) {
      return Shape.EDGE;
    }
    return eccentricity() <= kern() ? Shape.TRAPEZOID : Shape.TRIANGLE;
  }

  /**
   * Half the width of the kern, B/6: with the resultant within it the whole base is pressed.
   *
   * @return in m, above 0
   */
  public double kern() {
    return width / 6;
  }

  /**
   * Pressure at the left edge.
   *
   * @return in Pa, 0 or more; empty for {@link Shape#EDGE} and where it is too large for a number
   */
  public OptionalDouble left() {
    return couple > 0 ? smallest() : largest();
  }

  /**
   * Pressure at the right edge.
   *
   * @return in Pa, 0 or more; empty for {@link Shape#EDGE} and where it is too large for a number
   */
  public OptionalDouble right() {
    return couple > 0 ? largest() : smallest();
  }

  /**
   * Largest pressure: N/(BL)·(1 + 6|e|/B) for the trapezoid, 2N/(3(B/2 − |e|)L) for the triangle.
   *
   * @return in Pa, 0 or more; empty for {@link Shape#EDGE} and where it is too large for a number
   */
  public OptionalDouble largest() {
    if (!isPressed()) {
      return unpressed();
    }
    double e = eccentricity();
    return e <= kern()
        ? finite(normal / width / length * (1 + e / kern()))
        : finite(2 * normal / contactWidth() / length);
  }

  /**
   * Smallest pressure over the base: N/(BL)·(1 − 6|e|/B) for the trapezoid, 0 for the triangle.
   *
   * @return in Pa, 0 or more; empty for {@link Shape#EDGE} and where it is too large for a number
   */
  public OptionalDouble smallest() {
    return isPressed()
        ? finite(normal / width / length * Math.max(0, 1 - eccentricity() / kern()))
        : unpressed();
  }

  /**
   * The edge that is pressed more, or over which the base tips.
   *
   * @return the edge on the side of the resultant; empty if there is no couple
   */
  public Optional<Edge> pressedEdge() {
    if (couple == 0) {
      return Optional.empty();
    }
    return Optional.of(couple > 0 ? Edge.RIGHT : Edge.LEFT);
  }

  /**
   * Width that is pressed: B for the trapezoid, 3(B/2 − |e|) for the triangle, measured from the
   * more pressed edge.
   *
   * @return in m, 0 to B; 0 for {@link Shape#NONE} and {@link Shape#EDGE}
   */
  public double contactWidth() {
    return isPressed() ? Math.min(width, 3 * room()) : 0;
  }

  /**
   * Effective width B' = B − 2|e|: the width of the strip that has the resultant in its middle.
   *
   * @return in m, 0 to B; 0 for {@link Shape#NONE} and {@link Shape#EDGE}
   */
  public double effectiveWidth() {
    return isPressed() ? 2 * room() : 0;
  }

  /**
   * Mean pressure on the effective area, N/(B'L).
   *
   * @return in Pa, 0 or more; empty for {@link Shape#EDGE} and where it is too large for a number
   */
  public OptionalDouble effectivePressure() {
    return isPressed() ? finite(normal / effectiveWidth() / length) : unpressed();
  }

  /** |e|; infinite for a couple without a normal force. */
  private double eccentricity() {
    return couple == 0 ? 0 : Math.abs(couple) / normal;
  }

  /** Distance of the resultant from the nearer edge; 0 or less at the edge and beyond. */
  private double room() {
    return width / 2 - eccentricity();
  }

  private boolean isPressed() {
    return normal > 0 && room() > 0;
  }

  /** The pressure where there is nothing to press, or no width to press on. */
  private OptionalDouble unpressed() {
    return couple == 0 ? OptionalDouble.of(0) : OptionalDouble.empty();
  }

  private static OptionalDouble finite(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
