package bellcrank.statics.strength;

/**
 * What a weld carries at its most loaded point, as force per length of weld.
 *
 * @param across component square to the seam in N/m, 0 or more
 * @param along component along the seam in N/m, 0 or more
 * @param weld the group of welds
 */
public record WeldDemand(double across, double along, FilletWeld weld) {

  /**
   * Size of the force per length.
   *
   * @return in N/m, 0 or more
   */
  public double size() {
    return Math.hypot(across, along);
  }
}
