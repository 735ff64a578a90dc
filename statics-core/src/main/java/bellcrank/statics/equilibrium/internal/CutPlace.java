package bellcrank.statics.equilibrium.internal;

import java.util.List;

/**
 * A place on a bar where something enters it.
 *
 * @param bar number of the bar
 * @param at distance from the bar's start in m
 * @param points names of the member's points there
 * @param parts names of the connections and loads that enter there
 * @param joins whether another bar joins it there
 */
public record CutPlace(int bar, double at, List<String> points, List<String> parts, boolean joins) {

  /**
   * Copies the lists.
   *
   * @param bar number of the bar
   * @param at distance from the bar's start in m
   * @param points names of the member's points there
   * @param parts names of the connections and loads that enter there
   * @param joins whether another bar joins it there
   */
  public CutPlace {
    points = List.copyOf(points);
    parts = List.copyOf(parts);
  }
}
