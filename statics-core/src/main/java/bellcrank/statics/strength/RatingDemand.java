package bellcrank.statics.strength;

/**
 * What a rated fitting carries.
 *
 * @param force force of the part in N, 0 or more
 * @param rating the working load limit
 */
public record RatingDemand(double force, Rating rating) {

  /**
   * Force in one leg.
   *
   * @return in N, 0 or more
   */
  public double perLeg() {
    return force / (rating.legs() * Math.cos(rating.legAngle()));
  }
}
