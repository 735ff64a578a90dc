package bellcrank.statics.equilibrium;

import bellcrank.statics.units.Dimension;

/** One of the forces inside a bar. */
public enum InsideForce {
  /** Along the bar, in N, tension positive. */
  NORMAL(0, "normal force", Dimension.FORCE),
  /** Square to the bar, in N: positive where the part before the cut is pushed to the left. */
  SHEAR(1, "shear force", Dimension.FORCE),
  /** Bending moment in N·m, positive where the right-hand side of the bar is stretched. */
  MOMENT(2, "moment", Dimension.MOMENT);

  private final int index;
  private final String words;
  private final Dimension dimension;

  InsideForce(int index, String words, Dimension dimension) {
    this.index = index;
    this.words = words;
    this.dimension = dimension;
  }

  /** Its place in lists of all three. */
  int index() {
    return index;
  }

  /**
   * Its name in a sentence.
   *
   * @return such as {@code shear force}
   */
  public String words() {
    return words;
  }

  /**
   * What kind of quantity it is.
   *
   * @return force or moment
   */
  public Dimension dimension() {
    return dimension;
  }
}
