package bellcrank.examples.report;

import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.units.UnitSystem;
import java.util.List;

/** Says in one sentence how a balance comes out. */
final class OutcomeWords {

  private OutcomeWords() {}

  static String of(Balance balance, UnitSystem units) {
    Outcome outcome = balance.outcome();
    if (outcome instanceof Outcome.ConditionsBroken) {
      return "Conditions broken: balance would need from a part what it cannot give.";
    }
    if (outcome instanceof Outcome.InBalance) {
      return "In balance: " + holders(balance) + " it.";
    }
    if (outcome instanceof Outcome.InBalanceForTheseLoads) {
      return "In balance for just these loads. " + free(balance, "they", units);
    }
    if (outcome instanceof Outcome.NoBalance none) {
      return "No balance: "
          + none.driven().words(balance.device(), units)
          + ". There are no reactions to tell.";
    }
    List<String> parts = ((Outcome.NotDecided) outcome).parts();
    return "Not decided by balance alone: friction in "
        + Listing.ofNames(parts)
        + " lets the forces lie anywhere within a range.";
  }

  /** How it can still move though the loads do not drive it. */
  static String free(Balance balance, String loads, UnitSystem units) {
    List<String> ways =
        balance.freedoms().stream().map(one -> one.words(balance.device(), units)).toList();
    return "It can still move freely, since "
        + loads
        + " do not drive it: "
        + String.join("; ", ways)
        + ".";
  }

  private static String holders(Balance balance) {
    List<String> sought = balance.device().sought().stream().map(Sought::name).toList();
    boolean connected = !balance.device().connections().isEmpty();
    if (sought.isEmpty()) {
      return connected ? "the connections hold" : "nothing needs to hold";
    }
    String efforts = "the sought " + Listing.ofNames(sought);
    if (connected) {
      return "the connections and " + efforts + " hold";
    }
    return efforts + (sought.size() == 1 ? " holds" : " hold");
  }
}
