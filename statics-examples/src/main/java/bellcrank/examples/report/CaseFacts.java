package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * All that is known of one case, worked out once for the chapters that tell it.
 *
 * @param file the file
 * @param answer what the file asks, answered for this case
 * @param limits what friction and one-sided parts decide; empty if the balance alone does
 * @param side the device as seen along its plane, if that is asked
 * @param travel what happens over the travel; empty if no drive is stated
 * @param units units of the values
 */
record CaseFacts(
    DeviceFile file,
    CaseAnswer answer,
    Optional<LimitsAnswer> limits,
    Optional<SideAnswer> side,
    Optional<TravelAnswer> travel,
    UnitSystem units) {

  static CaseFacts of(DeviceFile file, CaseAnswer answer, UnitSystem units) {
    return new CaseFacts(
        file,
        answer,
        LimitsAnswer.of(answer.solution(), file),
        SideAnswer.of(answer.solution(), file),
        TravelAnswer.of(file, answer.balance().loadCase()),
        units);
  }

  Balance balance() {
    return answer.balance();
  }

  Amounts amounts() {
    return Amounts.of(units, balance());
  }
}
