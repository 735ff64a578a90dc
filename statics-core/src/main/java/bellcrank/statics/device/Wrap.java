package bellcrank.statics.device;

import java.util.List;

/**
 * A rope or band that rubs round a drum or post: two tensions whose ratio lies between e^(−μβ) and
 * e^(μβ), β being the angle of wrap (Euler–Eytelwein).
 *
 * @param name name, unique among connections and loads
 * @param first where the rope starts
 * @param post what it rubs round
 * @param last where it ends
 * @param friction coefficient of friction μ, 0 or more
 * @param extraTurns whole turns round the post beyond what is drawn, 0 or more
 */
public record Wrap(String name, Stop first, Stop post, Stop last, double friction, int extraTurns)
    implements Connection {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param first where the rope starts
   * @param post what it rubs round
   * @param last where it ends
   * @param friction coefficient of friction μ, 0 or more
   * @param extraTurns whole turns round the post beyond what is drawn, 0 or more
   * @throws ModelException if a field is not acceptable
   */
  public Wrap {
    Check.name("wrap", name);
    if (post.kind() != Stop.Kind.POST) {
      throw new ModelException(name, "wrap", post.kind(), "a post in the middle");
    }
    if (first.kind() != Stop.Kind.END || last.kind() != Stop.Kind.END) {
      throw new ModelException(name, "wrap", first.kind() + ", " + last.kind(), "plain ends");
    }
    Check.positive(name, "radius", post.radius());
    Check.friction(name, "friction", friction);
    if (extraTurns < 0) {
      throw new ModelException(name, "extra turns", extraTurns, "0 or more");
    }
  }

  @Override
  public List<String> bodies() {
    return List.of(first.body(), post.body(), last.body());
  }

  @Override
  public List<String> places() {
    return List.of(first.at(), post.at(), last.at());
  }

  @Override
  public String kind() {
    return "wrap";
  }
}
