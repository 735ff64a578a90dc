package bellcrank.statics.harness;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.equilibrium.Violation;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Verdict;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.stream.Collectors;

/** How a device stands, in a clause: what slips or tips, what moves, what is left open. */
record StandingWords(Device device, UnitSystem units, Numbers numbers) {

  static StandingWords of(Setup.Shown shown) {
    return new StandingWords(shown.balance().device(), shown.units(), Numbers.of(shown));
  }

  String of(Verdict verdict) {
    if (verdict instanceof Verdict.HoldsOnceSeated seated) {
      return "it can hold only once seated, with a squeeze on "
          + String.join(" and ", seated.parts())
          + " from before, which statics does not know";
    }
    if (verdict instanceof Verdict.Impending impending) {
      return "it is about to give way, with nothing to spare: " + of(impending.how());
    }
    if (verdict instanceof Verdict.DoesNotHold failing) {
      return "it does not hold: " + of(failing.how());
    }
    return verdict instanceof Verdict.NotDecided open
        ? "that was not decided: " + open.why()
        : "it holds";
  }

  /** How it gives way, also where no forces at all would do. */
  String of(GivingWay how) {
    return how.events().isEmpty() && how.motion().isEmpty()
        ? "no forces of its parts balance the loads"
        : how.words(device, units);
  }

  String of(Outcome outcome, List<Freedom> freedoms) {
    if (outcome instanceof Outcome.InBalanceForTheseLoads) {
      return "it is in balance for these loads only: " + motions(freedoms);
    }
    if (outcome instanceof Outcome.ConditionsBroken broken) {
      return "it does not hold: "
          + broken.violations().stream().map(this::of).collect(Collectors.joining("; "));
    }
    if (outcome instanceof Outcome.NoBalance none) {
      return "it is not in balance: " + none.driven().words(device, units);
    }
    return outcome instanceof Outcome.NotDecided open
        ? "that is not decided by balance alone, for friction in "
            + String.join(" and ", open.parts())
            + " leaves a range of forces"
        : "it is in balance";
  }

  private String motions(List<Freedom> freedoms) {
    return freedoms.stream()
        .map(freedom -> freedom.words(device, units))
        .collect(Collectors.joining("; "));
  }

  private String of(Violation violation) {
    String broken = violation.part() + " " + violation.words();
    return Math.abs(violation.needed()) == Double.MAX_VALUE
        ? broken + ", and no ratio of tensions is enough"
        : broken
            + ", "
            + numbers.text(Math.abs(violation.needed()), violation.dimension())
            + " where "
            + numbers.text(Math.abs(violation.limit()), violation.dimension())
            + " is the limit";
  }
}
