package bellcrank.statics.strength;

import bellcrank.statics.limits.Limit;
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
  private final List<String> remarks = new ArrayList<>();

  CapacitySearch(Plan plan, PoseForces forces) {
    notChecked.addAll(plan.missing());
    forces.limit().ifPresent(this::holding);
    forces.end().ifPresent(at -> crossings.add(new Crossing.GivesWay(at)));
    Carried mixed = forces.none().empty(plan.needs());
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

  List<String> remarks() {
    return remarks;
  }

  private void holding(Limit limit) {
    if (limit instanceof Limit.Never) {
      remarks.add("the device does not hold at any multiple; the checks are of its balance alone");
    } else if (limit instanceof Limit.NotDecided open) {
      remarks.add("how far the device holds is not decided: " + open.why());
    }
  }

  private void cross(Checking<?> checking, CrossingSearch search, PoseForces forces) {
    Optional<String> whyNot = search.whyNot();
    if (whyNot.isPresent()) {
      notChecked.add(new NotChecked(checking.part(), checking.what(), whyNot.get()));
      return;
    }
    OptionalDouble multiple = search.multiple();
    Optional<Crossing> found =
        multiple.isPresent() ? search.crossing(multiple.getAsDouble()) : Optional.empty();
    if (found.isPresent()) {
      crossings.add(found.get());
    } else if (checking.result(forces.one()) instanceof Checked stated) {
      never.add(stated);
    }
  }
}
