package bellcrank.statics.study;

import bellcrank.statics.units.Dimension;
import java.util.List;

/**
 * A number of a figure and where it was found.
 *
 * @param si the number, SI
 * @param dimension what kind of quantity it is
 * @param inputs values of the uncertain numbers there, in their order, SI
 */
public record FigureAt(double si, Dimension dimension, List<Double> inputs) {

  /**
   * Copies the values.
   *
   * @param si the number, SI
   * @param dimension what kind of quantity it is
   * @param inputs values of the uncertain numbers there, in their order, SI
   */
  public FigureAt {
    inputs = List.copyOf(inputs);
  }
}
