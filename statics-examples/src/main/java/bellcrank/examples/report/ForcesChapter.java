package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Outcome;
import java.util.List;

/** What pins, supports, struts and ropes carry, and what is left over. */
final class ForcesChapter implements CaseChapter {

  @Override
  public String id() {
    return "forces";
  }

  @Override
  public String title() {
    return "Forces of the connections";
  }

  @Override
  public List<Part> parts(CaseFacts facts) {
    Balance balance = facts.balance();
    return PageParts.of(
        title(),
        page -> {
          if (!(balance.outcome() instanceof Outcome.NoBalance)) {
            boolean ranges =
                balance.outcome() instanceof Outcome.NotDecided
                    && facts.limits().filter(one -> !one.open().isEmpty()).isPresent();
            if (!ranges) {
              ReactionsSection.write(page, balance, facts.amounts());
              AxialSection.write(page, balance, facts.amounts());
            }
            facts
                .limits()
                .ifPresent(one -> OpenForcesSection.write(page, one.open(), facts.amounts()));
          }
          ResidualSection.write(page, balance);
        });
  }
}
