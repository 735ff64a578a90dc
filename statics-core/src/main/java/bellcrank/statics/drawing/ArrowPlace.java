package bellcrank.statics.drawing;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;

/**
 * Decides whether an arrow starts or ends at the place where its force acts, whichever lies less on
 * the rest of the picture; arrows that would still lie on one another are moved aside a little.
 */
record ArrowPlace(Scene scene) {

  /** What it costs not to have the end that is usual. */
  private static final double OTHER_END = 4;

  /** The same for ropes and links, which a push would misread. */
  private static final double FIRM = 14;

  /** What it costs to be moved aside. */
  private static final double ASIDE = 9;

  private static final double[] SHIFTS = {0, 10, -10, 20, -20};

  /**
   * Finds the arrow.
   *
   * @param at where the force acts, on the sheet
   * @param unit its direction, on the sheet
   * @param pulls whether it usually starts at its place
   * @param firm whether that matters much
   */
  Arrow find(Point at, Vector unit, double length, boolean pulls, boolean firm) {
    Vector shaft = unit.times(length);
    Arrow best = new Arrow(at, at.plus(shaft));
    double least = Double.POSITIVE_INFINITY;
    for (int side = 0; side < 2; side++) {
      boolean starts = pulls == (side == 0);
      for (int i = 0; i < SHIFTS.length; i++) {
        Point place = at.plus(unit.perpendicular().times(SHIFTS[i]));
        Point free = place.plus(starts ? shaft : shaft.times(-1));
        double cost =
            scene.crowding(place, free)
                + side * (firm ? FIRM : OTHER_END)
                + (i == 0 ? 0 : ASIDE + 0.05 * Math.abs(SHIFTS[i]));
        if (cost < least) {
          least = cost;
          best = starts ? new Arrow(place, free) : new Arrow(free, place);
        }
      }
    }
    return best;
  }
}
