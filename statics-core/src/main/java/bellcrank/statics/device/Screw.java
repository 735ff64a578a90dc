package bellcrank.statics.device;

import java.util.List;

/**
 * A power screw or turnbuckle between two points: one axial force, tension positive, and the couple
 * that turns it against it. A {@link Couple} or a sought couple on the screw is named by the screw
 * in place of a member.
 *
 * @param name name, unique among connections and loads
 * @param first end on the body on which its force is reported
 * @param second the other end
 * @param lead advance in m for one turn, above 0
 * @param meanRadius mean radius of the thread in m, above 0
 * @param friction coefficient of friction of the thread, 0 or more
 */
public record Screw(
    String name, End first, End second, double lead, double meanRadius, double friction)
    implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param first end on the body on which its force is reported
   * @param second the other end
   * @param lead advance in m for one turn, above 0
   * @param meanRadius mean radius of the thread in m, above 0
   * @param friction coefficient of friction of the thread, 0 or more
   * @throws ModelException if a field is not acceptable
   */
  public Screw {
    Check.name("screw", name);
    Check.different(name, "joins", List.of(first.body(), second.body()), 2);
    Check.positive(name, "lead", lead);
    Check.positive(name, "mean radius", meanRadius);
    Check.friction(name, "friction", friction);
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
    return "screw";
  }
}
