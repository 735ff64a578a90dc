package bellcrank.statics.limits.internal;

/**
 * Which coefficients of friction hold.
 *
 * @param factor by which all are multiplied, 0 or more
 * @param kinetic whether parts slide already
 */
public record FrictionLevel(double factor, boolean kinetic) {

  /** The static coefficients as stated. */
  public static final FrictionLevel STATED = new FrictionLevel(1, false);

  /** The same times another factor. */
  public FrictionLevel times(double other) {
    return new FrictionLevel(factor * other, kinetic);
  }

  double of(double staticOne, double kineticOne) {
    return factor * (kinetic ? kineticOne : staticOne);
  }
}
