package bellcrank.statics.device;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A rigid body with three equations of balance.
 *
 * @param name name, unique among the bodies
 * @param points names of points that belong to it; points used with the member by connections,
 *     loads or bars belong to it as well
 * @param bars its straight pieces; may be empty
 * @param outline points of its outline in order, for contact and drawing; may be empty
 * @param count number of equal parts in planes behind one another that together are this member, 1
 *     or more; answers are for all of them together
 */
public record Member(
    String name, List<String> points, List<Bar> bars, List<String> outline, int count)
    implements Body {

  /**
   * Checks name and count and copies the lists.
   *
   * @param name name, unique among the bodies
   * @param points names of points that belong to it; points used with the member by connections,
   *     loads or bars belong to it as well
   * @param bars its straight pieces; may be empty
   * @param outline points of its outline in order, for contact and drawing; may be empty
   * @param count number of equal parts in planes behind one another that together are this member,
   *     1 or more; answers are for all of them together
   * @throws ModelException if the name is not acceptable or the count is below 1
   */
  public Member {
    Check.name("member", name);
    if (count < 1) {
      throw new ModelException(name, "count", count, "a whole number of 1 or more");
    }
    bars = List.copyOf(bars);
    outline = List.copyOf(outline);
    Set<String> all = new LinkedHashSet<>(points);
    for (Bar bar : bars) {
      all.add(bar.start());
      all.add(bar.end());
    }
    points = List.copyOf(all);
  }

  /**
   * A single member whose bars join neighbouring points.
   *
   * @param name name
   * @param chain names of its points in order
   * @return the member
   * @throws ModelException if the name is not acceptable
   */
  public static Member of(String name, List<String> chain) {
    java.util.ArrayList<Bar> bars = new java.util.ArrayList<>();
    for (int i = 1; i < chain.size(); i++) {
      bars.add(new Bar(chain.get(i - 1), chain.get(i)));
    }
    return new Member(name, chain, bars, List.of(), 1);
  }
}
