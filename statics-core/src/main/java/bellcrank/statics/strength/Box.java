package bellcrank.statics.strength;

import java.util.List;

/** The box round what is left of an area, with the parts left out that holes have taken away. */
record Box(double left, double bottom, double right, double top) {

  /** Material narrower than this share of the height is rounding. */
  private static final double NOTHING = 1e-9;

  static Box of(Shape shape) {
    Shape turned = shape.turned();
    Shape upsideDown = turned.turned();
    return new Box(
        -highest(upsideDown.turned()), -highest(upsideDown), highest(turned), highest(shape));
  }

  double width() {
    return right - left;
  }

  double height() {
    return top - bottom;
  }

  private static double highest(Shape shape) {
    List<Double> levels = shape.levels();
    double lowest = levels.get(0);
    double size = levels.get(levels.size() - 1) - lowest;
    for (int i = levels.size() - 1; i > 0; i--) {
      double high = levels.get(i);
      double low = levels.get(i - 1);
      if (high - low > NOTHING * size && shape.width((high + low) / 2) > NOTHING * size) {
        return high;
      }
    }
    return lowest;
  }
}
