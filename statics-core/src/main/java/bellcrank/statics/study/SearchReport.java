package bellcrank.statics.study;

import bellcrank.statics.study.SearchAnswer.Outcome;
import bellcrank.statics.study.SearchAnswer.Reading;
import bellcrank.statics.study.SearchAnswer.Setting;
import bellcrank.statics.study.SearchAnswer.Stop;
import bellcrank.statics.study.internal.Best;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells the end of a search in terms of the model. */
final class SearchReport {

  /** Share of its range within which a number is at a bound. */
  private static final double AT_BOUND = 1e-9;

  private final SearchView view;
  private final Best best;
  private final Model model;
  private final SearchView.Answers answers;

  SearchReport(SearchView view, Best best) {
    this.view = view;
    this.best = best;
    model = view.search().at(best.place());
    answers = view.answers(model);
  }

  SearchAnswer answer() {
    if (!best.keeps()) {
      return new SearchAnswer.Infeasible(
          settings(), model, outcomes(), best.looks(), best.isCutShort());
    }
    Optional<Reading> wanted =
        view.wanted().figure().map(figure -> new Reading(figure, answers.of(figure)));
    return new SearchAnswer.Found(
        settings(), model, wanted, outcomes(), best.looks(), best.isCutShort());
  }

  private List<Setting> settings() {
    List<Setting> settings = new ArrayList<>();
    double[] place = best.place();
    for (int k = 0; k < place.length; k++) {
      Free free = view.search().free().get(k);
      Stop stop =
          place[k] <= AT_BOUND ? Stop.LEAST : place[k] >= 1 - AT_BOUND ? Stop.GREATEST : Stop.NONE;
      settings.add(new Setting(free, free.at(place[k]), stop));
    }
    return settings;
  }

  private List<Outcome> outcomes() {
    List<Outcome> outcomes = new ArrayList<>();
    int bound = 0;
    for (Goal goal : view.search().goals()) {
      List<Double> misses = answers.misses(goal).orElseThrow();
      double missed = 0;
      boolean used = false;
      for (double miss : misses) {
        used |= best.isUsedUp(bound);
        // what the search counts as kept is kept
        if (!best.isKept(bound)) {
          missed = Math.max(missed, goal instanceof Goal.Equal ? Math.abs(miss) : miss);
          // a search reckons with a number for what has no end
          missed = isEndless(goal) ? Double.POSITIVE_INFINITY : missed;
        }
        bound++;
      }
      outcomes.add(new Outcome(goal, figure(goal).map(answers::of), missed, used));
    }
    return outcomes;
  }

  private boolean isEndless(Goal goal) {
    return figure(goal).map(answers::of).filter(FigureAnswer::isUnlimited).isPresent();
  }

  private static Optional<Figure> figure(Goal goal) {
    if (goal instanceof Goal.AtMost one) {
      return Optional.of(one.figure());
    }
    if (goal instanceof Goal.AtLeast one) {
      return Optional.of(one.figure());
    }
    if (goal instanceof Goal.Between one) {
      return Optional.of(one.figure());
    }
    return goal instanceof Goal.Equal one ? Optional.of(one.figure()) : Optional.empty();
  }
}
