package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Looks along many levels whether an area lies anywhere twice, or is taken away where there is
 * none. A slip of a dimension shows on several levels, and pieces that only touch do so on none.
 */
final class Layers {

  /** Between two neighbouring corners this many levels are looked at. */
  private static final int LEVELS = 7;

  /** Overlaps below this share of the height or width are rounding. */
  private static final double ROUNDING = 1e-9;

  private Layers() {}

  static Shape single(Shape shape, String part, String wanted) {
    List<Double> levels = shape.levels();
    double height = levels.get(levels.size() - 1) - levels.get(0);
    for (int i = 1; i < levels.size(); i++) {
      double low = levels.get(i - 1);
      double step = levels.get(i) - low;
      if (step > ROUNDING * height) {
        for (int k = 0; k < LEVELS; k++) {
          double level = low + step * (k + 0.5) / LEVELS;
          if (!single(shape.crossing(level), level, ROUNDING * height)) {
            throw new ModelException(part, "overlap at height", level, wanted);
          }
        }
      }
    }
    return shape;
  }

  private static boolean single(List<Edge> crossing, double level, double rounding) {
    List<Edge> sorted = new ArrayList<>(crossing);
    sorted.sort(Comparator.comparingDouble(edge -> edge.at(level)));
    int depth = 0;
    double since = 0;
    for (Edge edge : sorted) {
      double place = edge.at(level);
      if (place - since > rounding && (depth < 0 || depth > 1)) {
        return false;
      }
      depth += edge.enters() ? 1 : -1;
      since = place;
    }
    return true;
  }
}
