package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;

/**
 * Slings of several equal legs under a load in their middle. Angles are those of the legs from the
 * horizontal, in rad; many charts mean the angle from the vertical, which is the commonest slip
 * with slings.
 */
public final class Sling {

  private static final double FLATTEST = Math.PI / 6;
  private static final double UPRIGHT = Math.PI / 2;
  private static final double ROUNDING = 1e-12;

  private Sling() {}

  /**
   * The pull in a leg per share of the load, 1/sin of the angle.
   *
   * @param angle angle of the leg from the horizontal in rad, π/6 to π/2, bounds included
   * @return 1 or more
   * @throws ModelException if the angle is out of its range; flatter legs are for one who has
   *     worked them out
   */
  public static double tensionFactor(double angle) {
    if (!(angle >= FLATTEST * (1 - ROUNDING) && angle <= UPRIGHT * (1 + ROUNDING))) {
      throw new ModelException(
          "sling", "angle", angle, "an angle from the horizontal in rad, π/6 to π/2");
    }
    return 1 / Math.sin(angle);
  }

  /**
   * The pull in each leg. With more than three legs a stiff load hangs on fewer, so three are
   * counted.
   *
   * @param load the load in N, 0 or more
   * @param legs how many, 1 or more
   * @param angle angle of the legs from the horizontal in rad, π/6 to π/2
   * @return in N
   * @throws ModelException if a number is out of its range
   */
  public static double legTension(double load, int legs, double angle) {
    if (!(load >= 0 && Double.isFinite(load))) {
      throw new ModelException("sling", "load", load, "0 or more");
    }
    return load * tensionFactor(angle) / counted(legs);
  }

  /**
   * The load that a sling carries when each leg pulls with its working load. Tables round this,
   * most of them down.
   *
   * @param single working load of one leg in N, above 0
   * @param legs how many, 1 or more; more than three count as three
   * @param angle angle of the legs from the horizontal in rad, π/6 to π/2
   * @return in N
   * @throws ModelException if a number is out of its range
   */
  public static double load(double single, int legs, double angle) {
    if (!(single > 0 && Double.isFinite(single))) {
      throw new ModelException("sling", "working load of a leg", single, "above 0");
    }
    return single * counted(legs) / tensionFactor(angle);
  }

  private static int counted(int legs) {
    if (legs < 1) {
      throw new ModelException("sling", "legs", legs, "1 or more");
    }
    return Math.min(legs, 3);
  }
}
