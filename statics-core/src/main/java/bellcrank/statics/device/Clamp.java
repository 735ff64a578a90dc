package bellcrank.statics.device;

import java.util.List;

/**
 * A built-in support or a rigid splice: two force components and a couple.
 *
 * @param name name, unique among connections and loads
 * @param at name of its point
 * @param body name of the body on which its force is reported
 * @param other name of the other body
 */
public record Clamp(String name, String at, String body, String other) implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param at name of its point
   * @param body name of the body on which its force is reported
   * @param other name of the other body
   * @throws ModelException if a field is not acceptable
   */
  public Clamp {
    Check.name("clamp", name);
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
    return "clamp";
  }
}
