package bellcrank.statics.device;

import bellcrank.statics.geometry.Direction;
import java.util.List;

/**
 * A pin of one body that slides in a straight slot of the other: one force square to the slot.
 *
 * @param name name, unique among connections and loads
 * @param at name of its point
 * @param body name of the body on which its force is reported
 * @param other name of the other body
 * @param along direction of the slot, as drawn; the positive force on {@code body} is to its left
 * @param sides {@link Sides#ONE} if the slot has only the side that pushes to the left
 */
public record Slot(String name, String at, String body, String other, Direction along, Sides sides)
    implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param at name of its point
   * @param body name of the body on which its force is reported
   * @param other name of the other body
   * @param along direction of the slot, as drawn; the positive force on {@code body} is to its left
   * @param sides {@link Sides#ONE} if the slot has only the side that pushes to the left
   * @throws ModelException if a field is not acceptable
   */
  public Slot {
    Check.name("slot", name);
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
    return "slot";
  }
}
