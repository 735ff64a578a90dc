package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.Expected;
import bellcrank.examples.file.FindPlan;
import bellcrank.examples.file.FindUnknown;
import bellcrank.examples.file.TravelPlan;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.harness.ExpectedAnswer;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Find;
import bellcrank.statics.motion.Travel;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was found for one search of a file.
 *
 * @param plan the search
 * @param dimension in what the unknown is measured
 * @param found where the answer equals the target; empty if the device cannot be driven
 * @param holds whether it is as the file expects; true if the file expects nothing
 */
public record FindAnswer(FindPlan plan, Dimension dimension, Optional<Find> found, boolean holds) {

  /** All searches that belong to a case: to the one that their ask names, else to the first. */
  static List<FindAnswer> all(DeviceFile file, LoadCase loadCase) {
    List<FindAnswer> all = new ArrayList<>();
    for (FindPlan plan : file.inquiries().finds()) {
      String first = file.device().cases().get(0).name();
      if (plan.ask().loadCase().orElse(first).equals(loadCase.name())) {
        all.add(of(file, plan, loadCase));
      }
    }
    return List.copyOf(all);
  }

  private static FindAnswer of(DeviceFile file, FindPlan plan, LoadCase loadCase) {
    Dimension dimension = plan.unknown().dimension(file.travel());
    Optional<Find> found =
        plan.unknown() instanceof FindUnknown.Driven
            ? file.travel().flatMap(travel -> over(file, plan, travel, loadCase))
            : plan.range()
                .map(
                    range ->
                        Find.of(
                            plan.unknown().family(file.device()),
                            range.from(),
                            range.to(),
                            plan.ask(),
                            plan.target().si(),
                            file.foundations()));
    return new FindAnswer(plan, dimension, found, holds(plan, found));
  }

  private static Optional<Find> over(
      DeviceFile file, FindPlan plan, TravelPlan travel, LoadCase loadCase) {
    Travel driven =
        Travel.of(
            file.device(), loadCase, travel.drive(), travel.from(), travel.to(), travel.meetings());
    return driven instanceof Course course
        ? Optional.of(Find.over(course, plan.ask(), plan.target().si()))
        : Optional.empty();
  }

  private static boolean holds(FindPlan plan, Optional<Find> found) {
    if (plan.expected().isEmpty()) {
      return true;
    }
    List<Expected.Amount> wanted = plan.expected().get().values();
    List<Double> values = List.of();
    if (found.isPresent() && found.get() instanceof Find.At at && at.intervals().isEmpty()) {
      values = at.values();
    } else if (!(found.isPresent() && found.get() instanceof Find.None)) {
      return false;
    }
    if (values.size() != wanted.size()) {
      return false;
    }
    double size = plan.range().map(range -> range.to() - range.from()).orElse(1.0);
    for (int i = 0; i < values.size(); i++) {
      Quantity value = wanted.get(i).quantity();
      ExpectedAnswer.Amount amount =
          new ExpectedAnswer.Amount(value, wanted.get(i).unit(), plan.expected().get().digits());
      double room = amount.withRoom(amount.allowed(size));
      if (Math.abs(values.get(i) - value.si()) > room) {
        return false;
      }
    }
    return true;
  }
}
