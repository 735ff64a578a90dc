package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.SideStatement;
import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.SideTip;
import bellcrank.statics.limits.Verdict;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/**
 * How a case stands as seen from the side.
 *
 * @param statement what the file says
 * @param tip how it stands; empty if the forces in the plane are not known
 * @param assumed whether those forces are the least ones, since statics leaves them open
 * @param why it is not told; empty text if it is
 */
record SideAnswer(SideStatement statement, Optional<SideTip> tip, boolean assumed, String why) {

  /** That of a case; empty if the file does not ask. */
  static Optional<SideAnswer> of(CaseSolution solution, DeviceFile file) {
    return file.side().map(side -> of(solution, side));
  }

  private static SideAnswer of(CaseSolution solution, SideStatement side) {
    Balance balance = solution.balance();
    boolean falls =
        solution.limits().filter(one -> one.verdict() instanceof Verdict.DoesNotHold).isPresent();
    if (falls || balance.outcome() instanceof Outcome.NoBalance) {
      return untold(side, "the device does not hold in its own plane, so no forces are known");
    }
    try {
      return told(side, balance, false);
    } catch (ModelException open) {
      // what the balance leaves open, the state with the least forces may fix
      Optional<Balance> least = solution.limits().flatMap(Limits::withLeastForces);
      return least.isPresent() ? assumed(side, least.get()) : untold(side, words(open));
    }
  }

  private static SideAnswer assumed(SideStatement side, Balance least) {
    if (least.answer(Ask.of(side.base(), Measure.NORMAL)) instanceof Answer.Value normal
        && Amounts.of(UnitSystem.SI, least).isZero(normal.si(), Dimension.FORCE)) {
      return untold(
          side,
          "statics leaves open what the base carries, and with the least pushes and pulls that is"
              + " nothing");
    }
    try {
      return told(side, least, true);
    } catch (ModelException open) {
      return untold(side, words(open));
    }
  }

  private static SideAnswer told(SideStatement side, Balance balance, boolean assumed) {
    return new SideAnswer(side, Optional.of(SideTip.of(side.view(balance))), assumed, "");
  }

  private static SideAnswer untold(SideStatement side, String why) {
    return new SideAnswer(side, Optional.empty(), false, why);
  }

  private static String words(ModelException open) {
    return open.problems().stream()
        .findFirst()
        .map(one -> "the " + one.field() + " of " + one.part() + " is " + one.value())
        .orElse("the forces are not known");
  }
}
