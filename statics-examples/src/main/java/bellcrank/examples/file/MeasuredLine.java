package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.motion.Deflection;
import java.util.Optional;

/**
 * A line whose tension is estimated from how far a sideways force deflects it.
 *
 * @param name name of the estimate
 * @param deflection what was measured
 * @param errors errors of measuring; none of them if all are 0
 * @param stiffness force per stretch of the line between its ends in N/m, 0 or more; empty if it is
 *     not known
 * @param beside the ask whose answer is put beside the estimate
 */
public record MeasuredLine(
    String name,
    Deflection deflection,
    Deflection.Errors errors,
    Optional<Double> stiffness,
    Optional<Ask> beside) {

  /**
   * Checks the name, the stiffness, and that the errors are less than what was measured.
   *
   * @param name name of the estimate
   * @param deflection what was measured
   * @param errors errors of measuring
   * @param stiffness force per stretch of the line between its ends in N/m, 0 or more
   * @param beside the ask whose answer is put beside the estimate
   * @throws ModelException if a value is out of its range
   */
  public MeasuredLine {
    Ask.of(name);
    // these refuse what they cannot work with
    deflection.estimate(errors);
    stiffness.ifPresent(deflection::tensionBefore);
  }

  void check(Device device) {
    beside.ifPresent(ask -> ask.check(device));
  }
}
