package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import java.util.List;

/**
 * A straight guide in which a body slides without turning: a force square to it and a couple.
 *
 * @param name name, unique among connections and loads
 * @param at name of its point
 * @param body name of the body on which its force is reported
 * @param other name of the other body
 * @param along direction of sliding, as drawn, fixed in the other body; the positive force on
 *     {@code body} is to its left
 */
public record Guide(String name, String at, String body, String other, Direction along)
    implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param at name of its point
   * @param body name of the body on which its force is reported
   * @param other name of the other body
   * @param along direction of sliding, as drawn, fixed in the other body; the positive force on
   *     {@code body} is to its left
   * @throws ModelException if a field is not acceptable
   */
  public Guide {
    Check.name("guide", name);
    Check.different(name, "joins", List.of(body, other), 2);
  }

  @Override
  public List<String> bodies() {
    return List.of(body, other);
  }

  @Override
  public List<String> places() {
    return List.of(at, at);
  }

  @Override
  public String kind() {
    return "guide";
  }
}
