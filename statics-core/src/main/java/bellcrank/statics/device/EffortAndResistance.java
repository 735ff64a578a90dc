package bellcrank.statics.device;

/**
 * The two forces between which the mechanical advantage is taken: resistance over effort.
 *
 * @param effort name of a load, a sought quantity, or a strut, line, reeving or screw, which is
 *     then let go
 * @param resistance name of another such part
 */
public record EffortAndResistance(String effort, String resistance) {

  /**
   * Checks that they differ.
   *
   * @param effort name of a load, a sought quantity, or a strut, line, reeving or screw, which is
   *     then let go
   * @param resistance name of another such part
   * @throws ModelException if both are the same part
   */
  public EffortAndResistance {
    if (effort.equals(resistance)) {
      throw new ModelException(
          "advantage", "resistance", Check.quote(resistance), "another part than the effort");
    }
  }
}
