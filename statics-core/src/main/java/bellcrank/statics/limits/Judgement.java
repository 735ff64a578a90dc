package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.equilibrium.Outcome;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.FrictionLevel;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.limits.internal.Squeeze;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the verdict. */
final class Judgement {

  /** A limit below this is at zero, where parts without load are all at their limit. */
  private static final double ROUNDING = 1e-9;

  private final Limits limits;
  private final Device device;
  private static final String LOST =
      "whether it holds is lost in rounding, since lengths or loads of very different sizes meet in"
          + " it";

  private final Admissible admissible;
  private final GivingWays givingWays;
  private final FrictionLevel friction;

  Judgement(Limits limits, Admissible admissible, GivingWays givingWays, FrictionLevel friction) {
    this.limits = limits;
    this.device = limits.device();
    this.admissible = admissible;
    this.givingWays = givingWays;
    this.friction = friction;
  }

  Verdict verdict() {
    Goal any = Goal.none(admissible.columns());
    Admissible.Found found = admissible.greatest(admissible.given(), friction, any);
    if (!found.states().balanced()) {
      return new Verdict.DoesNotHold(mechanism(), Verdict.After.MECHANISM);
    }
    if (found.extreme().kind() == Extreme.Kind.OPEN) {
      return new Verdict.NotDecided(Admissible.OPEN);
    }
    if (!found.extreme().isFound()) {
      return failing();
    }
    GivingWay impending = givingWays.at(found, any);
    if (impending.ways() > 0) {
      return new Verdict.Impending(impending);
    }
    Set<String> squeezed = squeezed(found);
    return squeezed.isEmpty()
        ? new Verdict.Holds()
        : new Verdict.HoldsOnceSeated(new ArrayList<>(squeezed));
  }

  private GivingWay mechanism() {
    Optional<Freedom> driven =
        limits.balance().outcome() instanceof Outcome.NoBalance none
            ? Optional.of(none.driven())
            : Optional.empty();
    return new GivingWay(List.of(), driven, driven.isPresent() ? 1 : 0);
  }

  /**
   * A device that holds without any friction, or that nothing can squeeze, holds however seated.
   */
  private Set<String> squeezed(Admissible.Found found) {
    Set<String> parts = new LinkedHashSet<>();
    Goal any = Goal.none(admissible.columns());
    if (admissible.greatest(admissible.given(), friction.times(0), any).extreme().isFound()) {
      return parts;
    }
    List<Integer> columns = LeastForces.columns(device, admissible.assembly());
    for (int column : Squeeze.needed(found.states(), columns)) {
      for (int i = 0; i < device.connections().size(); i++) {
        Connection connection = device.connections().get(i);
        if (LeastForces.columns(connection, admissible.assembly().firstColumn(i))
            .contains(column)) {
          parts.add(connection.name());
        }
      }
    }
    return parts;
  }

  /** Goes back to a state that just holds: by less load, by more friction, or by the least need. */
  private Verdict failing() {
    Variation.Multiple applied = new Variation.Multiple(List.of());
    if (!Travels.loads(device, applied).isEmpty()
        && limits.limit(applied) instanceof Limit.Between between) {
      Limit.End end = between.greatest();
      if (end instanceof Limit.End.At at && at.value() < 1 && at.value() > ROUNDING) {
        return new Verdict.DoesNotHold(at.how(), Verdict.After.LOADS);
      }
    }
    if (limits.frictionFactor() instanceof FrictionFactor.Least least) {
      return new Verdict.DoesNotHold(least.how(), Verdict.After.FRICTION);
    }
    return new LeastNeed(admissible, givingWays, friction)
        .find()
        .<Verdict>map(how -> new Verdict.DoesNotHold(how, Verdict.After.NEED))
        .orElse(new Verdict.NotDecided(LOST));
  }
}
