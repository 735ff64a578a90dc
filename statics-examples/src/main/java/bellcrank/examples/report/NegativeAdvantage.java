package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.EffortAndResistance;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Sought;
import bellcrank.statics.equilibrium.Advantage;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Says what the minus sign of a mechanical advantage means. */
final class NegativeAdvantage {

  private NegativeAdvantage() {}

  /** The sentence; empty if no ratio is negative. */
  static Optional<String> words(Balance balance, EffortAndResistance pair, Advantage advantage) {
    if (!isNegative(advantage.idealAnswer()) && !isNegative(advantage.actualAnswer())) {
      return Optional.empty();
    }
    List<String> reasons = new ArrayList<>();
    for (String name : List.of(pair.effort(), pair.resistance())) {
      if (isNegative(balance.answer(Ask.of(name, Measure.VALUE)))) {
        reasons.add(Listing.quoted(name) + " " + reason(balance, name));
      }
    }
    // two minus signs make a plus, so they do not explain a minus
    return Optional.of(
        "(negative: " + (reasons.size() == 1 ? reasons.get(0) : inGeneral(balance, pair)) + ")");
  }

  private static String inGeneral(Balance balance, EffortAndResistance pair) {
    boolean axial =
        Stream.of(pair.effort(), pair.resistance())
            .allMatch(name -> balance.device().connection(name).isPresent());
    return axial
        ? "where the one is pulled the other is pressed, and tension counts positive"
        : "one of the two acts against the sense in which it counts positive";
  }

  private static boolean isNegative(Answer answer) {
    return answer instanceof Answer.Value value && value.si() < 0;
  }

  private static String reason(Balance balance, String name) {
    if (balance.device().connection(name).isPresent()) {
      return "is pressed, and tension counts positive";
    }
    Load load = balance.device().load(name).orElse(null);
    boolean couple = !(load instanceof Sought sought) || sought.want() == Sought.Want.COUPLE;
    return couple
        ? "turns clockwise, and counter-clockwise counts positive"
        : "acts against the direction that was stated";
  }
}
