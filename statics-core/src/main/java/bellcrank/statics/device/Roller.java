package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import java.util.List;

/**
 * A roller or smooth surface: one force along a direction that is fixed in the other body.
 *
 * @param name name, unique among connections and loads
 * @param at name of its point
 * @param body name of the body on which its force is reported
 * @param other name of the other body
 * @param push direction of the positive force on {@code body}, as drawn
 * @param sides {@link Sides#ONE} if it can only push
 */
public record Roller(String name, String at, String body, String other, Direction push, Sides sides)
    implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param at name of its point
   * @param body name of the body on which its force is reported
   * @param other name of the other body
   * @param push direction of the positive force on {@code body}, as drawn
   * @param sides {@link Sides#ONE} if it can only push
   * @throws ModelException if a field is not acceptable
   */
  public Roller {
    Check.name("roller", name);
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
    return "roller";
  }
}
