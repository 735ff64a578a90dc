package bellcrank.statics.strength;

import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.CheckResult.NotChecked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds everything that gives in one pose. */
final class CapacitySearch {

  private final List<Crossing> crossings = new ArrayList<>();
  private final List<Checked> never = new ArrayList<>();
  private final List<NotChecked> notChecked = new ArrayList<>();
  private final Holding holding = Holding.inOnePose();

  CapacitySearch(Plan plan, PoseForces forces) {
    notChecked.addAll(plan.missing());
    holding.add(forces.limit());
    forces.end().ifPresent(at -> crossings.add(new Crossing.GivesWay(at)));
    CarriedForces mixed = forces.none().empty(plan.needs());
    for (Checking<?> checking : plan.checkings()) {
      cross(checking, new CrossingSearch(checking, forces, mixed), forces);
    }
  }

  List<Crossing> crossings() {
    return crossings;
  }

  List<Checked> never() {
    return never;
  }

  List<NotChecked> notChecked() {
    return notChecked;
  }

  Holding holding() {
    return holding;
  }

  private void cross(Checking<?> checking, CrossingSearch search, PoseForces forces) {
    Optional<String> whyNot = search.whyNot();
    if (whyNot.isPresent()) {
      notChecked.add(new NotChecked(checking.part(), checking.what(), whyNot.get()));
      return;
    }
    OptionalDouble multiple = search.multiple();
    if (multiple.isPresent()) {
      Optional<String> beyond = search.whyNotBeyond(multiple.getAsDouble());
      if (beyond.isPresent()) {
        notChecked.add(new NotChecked(checking.part(), checking.what(), beyond.get()));
        return;
      }
    }
    Optional<Crossing> found =
        multiple.isPresent() ? search.crossing(multiple.getAsDouble()) : Optional.empty();
    if (found.isPresent()) {
      crossings.add(found.get());
    } else if (checking.result(forces.one()) instanceof Checked stated) {
      never.add(stated);
    }
  }
}
