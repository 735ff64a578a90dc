package bellcrank.statics.device;

/**
 * A straight piece of a member between two of its points; it carries N, V and M.
 *
 * @param start name of the point where it starts
 * @param end name of the point where it ends, another one
 */
public record Bar(String start, String end) {

  /**
   * Checks that the ends differ.
   *
   * @param start name of the point where it starts
   * @param end name of the point where it ends, another one
   * @throws ModelException if they are the same point
   */
  public Bar {
    if (start.equals(end)) {
      throw new ModelException("bar", "ends", Check.quote(start), "two different points");
    }
  }
}
