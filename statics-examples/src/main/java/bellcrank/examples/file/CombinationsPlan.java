package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.Combinations;
import bellcrank.statics.study.Combinations.Combination;
import bellcrank.statics.study.Combinations.Group;
import bellcrank.statics.study.Envelope;
import bellcrank.statics.study.Model;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Cases made of groups of loads, and of what the extremes over them are wanted.
 *
 * @param groups the groups, at least one
 * @param asks what is asked, at least one number, in no case
 * @param overTravel whether extremes are looked for over the travel, too
 */
public record CombinationsPlan(List<Group> groups, List<Ask> asks, boolean overTravel) {

  /**
   * Copies the lists.
   *
   * @param groups the groups
   * @param asks what is asked
   * @param overTravel whether extremes are looked for over the travel, too
   * @throws ModelException if nothing is asked, something twice, or in a case
   */
  public CombinationsPlan {
    groups = List.copyOf(groups);
    asks = List.copyOf(asks);
    if (asks.isEmpty()) {
      throw new ModelException("combinations", "asks", "none", "at least one ask");
    }
    Set<String> seen = new HashSet<>();
    for (Ask ask : asks) {
      if (!seen.add(ask.text()) || ask.loadCase().isPresent()) {
        throw new ModelException(
            "combinations", "asks", '"' + ask.text() + '"', "each ask once, and in no case");
      }
    }
  }

  /**
   * The combinations.
   *
   * @param device the device
   * @return all of them
   * @throws ModelException if a group does not fit the device
   */
  public List<Combination> of(Device device) {
    return Combinations.of(device, groups);
  }

  /**
   * The extremes.
   *
   * @param model the device with its ground
   * @param travel how it is driven
   * @return the envelope
   */
  public Envelope envelope(Model model, Optional<TravelPlan> travel) {
    List<LoadCase> cases = of(model.device()).stream().map(Combination::loadCase).toList();
    if (!overTravel || travel.isEmpty()) {
      return Envelope.of(model, cases, asks);
    }
    TravelPlan plan = travel.get();
    return Envelope.over(
        model,
        cases,
        asks,
        new Envelope.Way(plan.drive(), plan.from(), plan.to(), plan.meetings()));
  }

  /** Checks that a file has what is combined and asked. */
  void check(FileParts file) {
    of(file.model().device());
    asks.forEach(ask -> ask.check(file.model().device()));
    if (overTravel && file.travel().isEmpty()) {
      throw new ModelException("combinations", "over", "travel", "a file with a travel");
    }
  }
}
