package bellcrank.statics.motion;

/**
 * Work over a part of a course, in J, positive where it is done on the device. What the loads do
 * and what is stored follows from the two ends alone; what the effort does is added up on the way.
 * So the three close only if forces and motion agree everywhere between.
 *
 * @param effort work of the sought efforts and of the driven line, strut or screw
 * @param loads work of forces, couples, spread loads and weights
 * @param stored energy that springs have taken up
 */
public record Work(double effort, double loads, double stored) {

  /**
   * What went in and was neither stored nor done on loads: losses in sheaves. Without lossy sheaves
   * it is zero to rounding.
   *
   * @return in J
   */
  public double lost() {
    return effort + loads - stored;
  }

  /**
   * What is left over, relative to the largest of the three.
   *
   * @return 0 or more; for a device without losses it measures how well the account closes
   */
  public double share() {
    double largest = Math.max(Math.abs(effort), Math.max(Math.abs(loads), Math.abs(stored)));
    return largest > 0 ? Math.abs(lost()) / largest : 0;
  }
}
