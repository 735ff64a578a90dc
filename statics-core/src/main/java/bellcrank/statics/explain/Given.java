package bellcrank.statics.explain;

import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;

/**
 * A given load that an equation uses.
 *
 * @param symbol its symbol
 * @param name name of the load
 * @param si size in N, or for a couple its moment in N·m, counter-clockwise positive
 * @param kind force or moment
 * @param sense unit vector of the force on the body that it acts on; zero for a couple
 */
public record Given(Symbol symbol, String name, double si, Dimension kind, Vector sense) {

  /**
   * Which way it acts, in words.
   *
   * @return such as {@code down}, or {@code clockwise}
   */
  public String words() {
    if (kind == Dimension.MOMENT) {
      return si > 0 ? "counter-clockwise" : "clockwise";
    }
    return UnknownWords.direction(sense);
  }
}
