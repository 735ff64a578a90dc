package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;

/** Reads asks from the numbers of a plan, and tells on which unknowns an ask depends. */
final class Readings {

  /** Share of the numbers below which a change of an answer is rounding. */
  private static final double SAME = 1e-12;

  private final Balance balance;
  private final Picture picture;
  private final List<Ask> components;

  Readings(Balance balance, Picture picture) {
    this.balance = balance;
    this.picture = picture;
    components = balance.components();
  }

  /** Value that the balance itself has for an unknown. */
  OptionalDouble given(int unknown) {
    for (Ask ask : components) {
      Picture.Share share = picture.shares().get(ask);
      if (share != null && share.unknown() == unknown && Math.abs(share.factor()) > 0.5) {
        OptionalDouble value = value(ask);
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() / share.factor()) : value;
      }
    }
    return OptionalDouble.empty();
  }

  /**
   * Whether statics fixes an unknown, as the balance sees it: equations that only rounding parts
   * must not be taken as independent. What is no component of the balance follows from those.
   */
  boolean fixes(int unknown) {
    return given(unknown).isPresent()
        || picture.shares().values().stream().noneMatch(share -> share.unknown() == unknown);
  }

  private OptionalDouble value(Ask ask) {
    return balance.answer(ask) instanceof Answer.Value value
        ? OptionalDouble.of(value.si())
        : OptionalDouble.empty();
  }

  /** The balance with the numbers of a plan; the balance itself if some are missing. */
  Balance of(Plan plan) {
    BitSet known = plan.known();
    List<Double> forces = new ArrayList<>();
    for (Ask ask : components) {
      Picture.Share share = picture.shares().get(ask);
      if (share == null || !known.get(share.unknown())) {
        return balance;
      }
      forces.add(share.factor() * plan.value(share.unknown()));
    }
    return balance.withForces(forces);
  }

  /** Unknowns without which an ask cannot be answered. */
  BitSet needs(Ask ask, Plan all) {
    double largest = 1;
    List<Double> forces = new ArrayList<>();
    for (Ask component : components) {
      Picture.Share share = picture.shares().get(component);
      double value = share == null ? 0 : share.factor() * all.value(share.unknown());
      largest = Math.max(largest, Math.abs(value));
      forces.add(value);
    }
    Answer before = balance.withForces(forces).answer(ask);
    BitSet needs = new BitSet();
    for (int k = 0; k < forces.size(); k++) {
      Picture.Share share = picture.shares().get(components.get(k));
      if (share != null && share.factor() != 0 && !needs.get(share.unknown())) {
        List<Double> changed = new ArrayList<>(forces);
        changed.set(k, forces.get(k) + 0.618 * largest);
        if (differ(before, balance.withForces(changed).answer(ask))) {
          needs.set(share.unknown());
        }
      }
    }
    return needs;
  }

  private static boolean differ(Answer before, Answer after) {
    if (before instanceof Answer.Value a && after instanceof Answer.Value b) {
      return Math.abs(a.si() - b.si()) > SAME * Math.max(Math.abs(a.si()), Math.abs(b.si()));
    }
    return !before.equals(after);
  }
}
