package bellcrank.statics.device;

import java.util.List;

/**
 * A two-force link: one axial force, tension positive.
 *
 * @param name name, unique among connections and loads
 * @param first end on the body on which its force is reported
 * @param second the other end
 * @param mass its mass in kg, 0 or more, taken half at each end
 */
public record Strut(String name, End first, End second, double mass) implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param first end on the body on which its force is reported
   * @param second the other end
   * @param mass its mass in kg, 0 or more, taken half at each end
   * @throws ModelException if a field is not acceptable
   */
  public Strut {
    Check.name("strut", name);
    Check.different(name, "joins", List.of(first.body(), second.body()), 2);
    Check.notNegative(name, "weight", mass);
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
    return "strut";
  }
}
