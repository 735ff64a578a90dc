package bellcrank.statics.device;

import java.util.List;

/**
 * A straight rope, chain or rod that can only pull: one axial force, tension positive.
 *
 * @param name name, unique among connections and loads
 * @param first end on the body on which its force is reported
 * @param second the other end
 */
public record Line(String name, End first, End second) implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param first end on the body on which its force is reported
   * @param second the other end
   * @throws ModelException if a field is not acceptable
   */
  public Line {
    Check.name("line", name);
    Check.different(name, "joins", List.of(first.body(), second.body()), 2);
  }

  @Override
  public List<String> bodies() {
    return List.of(first.body(), second.body());
  }

  @Override
  public List<String> places() {
    return List.of(first.at(), second.at());
  }

  @Override
  public String kind() {
    return "line";
  }
}
