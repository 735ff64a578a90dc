package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.StrengthAsk;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.Limits;
import java.util.Optional;

/**
 * One case of a device file, solved: its balance, and its limits where it has parts of one side or
 * with friction. A device without any does not pay for limits.
 *
 * @param balance the balance
 * @param limits the limits; empty if the balance alone decides the device
 * @param strength what its sizing says; empty if the file has none
 */
public record CaseSolution(
    Balance balance, Optional<Limits> limits, Optional<StrengthAnswer> strength) {

  /**
   * Solves a case of a file, as drawn, on the file's ground.
   *
   * @param file the file
   * @param caseName name of the case
   * @return the solution
   * @throws bellcrank.statics.device.ModelException if the device has no such case
   */
  public static CaseSolution of(DeviceFile file, String caseName) {
    Device device = file.device();
    LoadCase loadCase = device.loadCase(caseName);
    if (!Limits.concern(device) && file.limits().isEmpty()) {
      Balance balance = Balance.of(device, loadCase, Pose.DRAWN);
      return new CaseSolution(balance, Optional.empty(), StrengthAnswer.of(file, balance));
    }
    Limits limits = Limits.of(device, loadCase, Pose.DRAWN, file.foundations());
    // the ground may hold back a smooth base, which then has a force of its own
    Balance balance = Balance.of(limits.device(), loadCase, Pose.DRAWN);
    return new CaseSolution(balance, Optional.of(limits), StrengthAnswer.of(file, balance));
  }

  /**
   * The answer to an ask, from the limits where there are any or where only they can tell.
   *
   * @param ask what is asked
   * @return the answer, or why there is none
   * @throws bellcrank.statics.device.ModelException if the ask names what the device does not have
   */
  public Answer answer(Ask ask) {
    Optional<StrengthAsk> ofStrength = StrengthAsk.of(ask);
    if (strength.isPresent() && ofStrength.isPresent()) {
      return strength.get().answer(ofStrength.get());
    }
    if (limits.isPresent()) {
      return limits.get().answer(ask);
    }
    return Limits.decide(ask)
        ? Limits.of(balance.device(), balance.loadCase().name()).answer(ask)
        : balance.answer(ask);
  }
}
