package bellcrank.statics.device;

/**
 * An end of a strut, line, screw or spring: a point of a body.
 *
 * @param body name of a member, a joint or {@code ground}
 * @param at name of the point
 */
public record End(String body, String at) {

  /**
   * An end.
   *
   * @param body name of a member, a joint or {@code ground}
   * @param at name of the point
   * @return the end
   */
  public static End of(String body, String at) {
    return new End(body, at);
  }
}
