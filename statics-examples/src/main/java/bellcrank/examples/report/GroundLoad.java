package bellcrank.examples.report;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.ground.BaseLoad;
import bellcrank.statics.ground.Bearing;
import bellcrank.statics.ground.Foundation;
import bellcrank.statics.limits.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What a base sends into the ground, and what the ground gives.
 *
 * @param base the base
 * @param foundation the ground under it
 * @param load what it sends into the ground
 * @param assumed whether that is the state with the least forces, since statics leaves it open
 */
record GroundLoad(ContactBase base, Foundation foundation, BaseLoad load, boolean assumed) {

  /** Those whose forces are known, or can be assumed. */
  static List<GroundLoad> of(Limits limits, Optional<Balance> least) {
    List<GroundLoad> loads = new ArrayList<>();
    for (Foundation foundation : limits.foundations()) {
      if (limits.device().connection(foundation.base()).orElse(null) instanceof ContactBase base) {
        Optional<GroundLoad> known = load(base, foundation, limits::answer, false);
        known
            .or(() -> least.flatMap(state -> load(base, foundation, state::answer, true)))
            .ifPresent(loads::add);
      }
    }
    return List.copyOf(loads);
  }

  private static Optional<GroundLoad> load(
      ContactBase base, Foundation foundation, Function<Ask, Answer> answers, boolean assumed) {
    OptionalDouble normal = number(answers, base, Measure.NORMAL);
    OptionalDouble friction = number(answers, base, Measure.FRICTION);
    OptionalDouble offset = number(answers, base, Measure.OFFSET);
    if (normal.isEmpty() || normal.getAsDouble() < 0) {
      return Optional.empty();
    }
    double push = normal.getAsDouble();
    boolean open = (friction.isEmpty() && base.friction() > 0) || (offset.isEmpty() && push > 0);
    if (open) {
      return Optional.empty();
    }
    return Optional.of(
        new GroundLoad(
            base,
            foundation,
            foundation.load(push, friction.orElse(0), push * offset.orElse(0), base.width()),
            assumed));
  }

  private static OptionalDouble number(
      Function<Ask, Answer> answers, ContactBase base, Measure measure) {
    return answers.apply(Ask.of(base.name(), measure)) instanceof Answer.Value value
        ? OptionalDouble.of(value.si())
        : OptionalDouble.empty();
  }

  /** The normal force at which it sinks, at this place and inclination; empty if it never does. */
  OptionalDouble bears() {
    Optional<Bearing> bearing = foundation.bearing();
    return bearing.isPresent()
        ? OptionalDouble.of(bearing.get().resistance(load))
        : OptionalDouble.empty();
  }

  /** The tangential force at which it slides. */
  double holds() {
    return foundation.slidingResistance(base.friction(), load);
  }
}
