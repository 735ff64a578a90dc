package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What limits say of a device, as steps of its solution. */
final class Decision {

  private final Limits limits;
  private final Pose pose;
  private final Verdict verdict;
  private final FrictionFactor friction;

  Decision(Limits limits, Pose pose, Verdict verdict) {
    this.limits = limits;
    this.pose = pose;
    this.verdict = verdict;
    friction = limits.frictionFactor();
  }

  Step.Judged judged() {
    return new Step.Judged(verdict, friction);
  }

  /** Rough parts one by one, the verdict, and the motion with which the device gives way. */
  List<Step> steps(Picture picture, Plan plan) {
    Device device = limits.device();
    List<Step> steps = new ArrayList<>(RoughParts.margins(limits, picture, plan));
    steps.add(judged());
    how()
        .flatMap(GivingWay::motion)
        .map(freedom -> Motions.step(device, pose, freedom))
        .ifPresent(steps::add);
    return steps;
  }

  private Optional<GivingWay> how() {
    return verdict instanceof Verdict.Impending impending
        ? Optional.of(impending.how())
        : verdict instanceof Verdict.DoesNotHold failing
            ? Optional.of(failing.how())
            : Optional.empty();
  }

  /** Answers where there are no equations. */
  List<Step.Result> results(List<Ask> asks) {
    return asks.stream().map(ask -> new Step.Result(ask, limits.answer(ask), List.of())).toList();
  }
}
