package bellcrank.statics.equilibrium;

import java.util.List;

/**
 * A place on a bar where something enters it, so that a force inside may jump.
 *
 * @param at distance from the bar's start in m
 * @param points names of the member's points there
 * @param parts names of the connections, loads and sought quantities that act there
 * @param joins whether another bar of the member joins it there
 */
public record Place(double at, List<String> points, List<String> parts, boolean joins) {

  /**
   * Copies the lists.
   *
   * @param at distance from the bar's start in m
   * @param points names of the member's points there
   * @param parts names of the connections, loads and sought quantities that act there
   * @param joins whether another bar of the member joins it there
   */
  public Place {
    points = List.copyOf(points);
    parts = List.copyOf(parts);
  }
}
