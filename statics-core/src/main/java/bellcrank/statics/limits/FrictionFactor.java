package bellcrank.statics.limits;

/** The one common factor on all coefficients of friction at which a device just holds. */
public sealed interface FrictionFactor {

  /**
   * The least factor.
   *
   * @param factor above 0; below 1 the device holds with friction to spare
   * @param how how it gives way at that factor
   */
  record Least(double factor, GivingWay how) implements FrictionFactor {

    /**
     * Friction to spare, as a share of the stated one.
     *
     * @return 0.3 if 70 % of the friction would do; negative if more is needed than there is
     */
    public double margin() {
      return 1 - factor;
    }
  }

  /** It holds without any friction. */
  record NotNeeded() implements FrictionFactor {}

  /**
   * Any friction above none is enough, if only the parts are squeezed together hard enough
   * beforehand.
   */
  record AnyIsEnough() implements FrictionFactor {}

  /** However rough, it does not hold: it tips, lifts or moves. */
  record NotEnough() implements FrictionFactor {}

  /** The device has no rough part. */
  record NoFriction() implements FrictionFactor {}

  /**
   * The search ended without a decision.
   *
   * @param why what was tried
   */
  record NotDecided(String why) implements FrictionFactor {}
}
