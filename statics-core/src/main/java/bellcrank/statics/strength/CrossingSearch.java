package bellcrank.statics.strength;

import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.internal.FirstCrossing;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds the multiple at which one check reaches its limit in one pose. */
final class CrossingSearch {

  /** A multiple so small that only directions matter, if nothing else loads the device. */
  private static final double SMALLEST = 1e-9;

  /** How far beyond a multiple one looks, as a share of it. */
  private static final double BEYOND = 1e-9;

  private final Checking<?> checking;
  private final PoseForces forces;
  private final CarriedForces mixed;

  /** Whether all that is demanded grows in proportion to the driving loads. */
  private final boolean proportional;

  /** Share that is used under the loads as they are stated; below 0 until it is asked for. */
  private double stated = -1;

  /**
   * A search.
   *
   * @param mixed room for a state of the same needs
   */
  CrossingSearch(Checking<?> checking, PoseForces forces, CarriedForces mixed) {
    this.checking = checking;
    this.forces = forces;
    this.mixed = mixed;
    proportional = forces.isAlone() && checking.rule().law().isProportional();
  }

  private double stated() {
    if (stated < 0) {
      stated = checking.utilisation(forces.one());
    }
    return stated;
  }

  /** Why the check cannot be made here. */
  Optional<String> whyNot() {
    return checking.whyNot(forces.one()).or(() -> checking.whyNot(forces.none()));
  }

  /**
   * Why the check cannot be made just beyond a multiple, such as a strength that is needed only
   * from there on.
   */
  Optional<String> whyNotBeyond(double multiple) {
    checking.mix(mixed, forces.none(), forces.one(), multiple * (1 + BEYOND) + SMALLEST);
    return checking.whyNot(mixed);
  }

  /** Share that is used at a multiple. */
  double used(double multiple) {
    checking.mix(mixed, forces.none(), forces.one(), multiple);
    return checking.utilisation(mixed);
  }

  /**
   * Whether all that it needs is known and the limit is not reached up to a multiple, as far as one
   * look there and one without the driving loads can tell.
   */
  boolean isKeptUpTo(double multiple) {
    if (isUntold()) {
      return false;
    }
    double last =
        isPassedOnce() ? Math.min(multiple, Math.min(end(), FirstCrossing.FARTHEST)) : multiple;
    if (proportional) {
      return last * stated() < 1;
    }
    if (isGrowing()) {
      return used(last) < 1;
    }
    // between two places at which it is not reached, a convex function does not reach it
    return last < Double.POSITIVE_INFINITY
        && stated() < Double.POSITIVE_INFINITY
        && used(last) < 1
        && checking.utilisation(forces.none()) < 1;
  }

  /** Whether something that it needs may be open, or not known beyond all bounds. */
  boolean isOpen() {
    return isUntold() || stated() == Double.POSITIVE_INFINITY;
  }

  private boolean isUntold() {
    return forces.isTold()
        && (checking.open(forces.one()).isPresent() || checking.open(forces.none()).isPresent());
  }

  /** Whether the share that is used never falls as the driving loads grow. */
  private boolean isGrowing() {
    return forces.isAlone() && checking.rule().law().isGrowing();
  }

  /**
   * No multiple beyond this is looked at: just short of where the device gives way, so that what
   * happens only there, such as a chain whose push turns as it goes slack, is not told as well.
   */
  private double end() {
    return forces.farthest() * (1 - BEYOND);
  }

  /** Whether the limit is one of directions, and passed as soon as the loads act. */
  private boolean isAtOnce() {
    return forces.isAlone()
        && !checking.rule().law().isProportional()
        && end() > SMALLEST
        && used(SMALLEST) >= 1;
  }

  /** Whether the limit, once it is passed, is passed at all greater multiples too. */
  private boolean isPassedOnce() {
    return checking.isConvex() || isGrowing();
  }

  /** The multiple; empty where it is not reached before the device gives way. */
  OptionalDouble multiple() {
    return multiple(Double.POSITIVE_INFINITY);
  }

  /**
   * The multiple, where it is known to be reached at another.
   *
   * @param reached a multiple at which the limit is reached; infinite if none is known
   */
  OptionalDouble multiple(double reached) {
    if (checking.utilisation(forces.none()) >= 1) {
      return OptionalDouble.of(0);
    }
    if (isAtOnce()) {
      return OptionalDouble.of(0);
    }
    if (end() <= SMALLEST) {
      return OptionalDouble.empty();
    }
    if (proportional) {
      double multiple = 1 / stated();
      // what is left of zero by rounding would reach its limit beyond all bounds
      return multiple <= end() && multiple <= FirstCrossing.FARTHEST
          ? OptionalDouble.of(multiple)
          : OptionalDouble.empty();
    }
    if (reached <= end() && reached < Double.POSITIVE_INFINITY) {
      return OptionalDouble.of(
          isPassedOnce()
              ? FirstCrossing.root(this::used, 0, reached)
              : FirstCrossing.below(this::used, reached));
    }
    return isPassedOnce()
        ? FirstCrossing.ofConvex(this::used, end())
        : FirstCrossing.of(this::used, end());
  }

  private Crossing.Certainty certainty(double multiple) {
    if (multiple == 0) {
      return forces.isAlone() ? Crossing.Certainty.AT_ONCE : Crossing.Certainty.ALREADY;
    }
    return proportional ? Crossing.Certainty.PROPORTIONAL : Crossing.Certainty.BRACKETED;
  }

  /** What is to be told of it. */
  Optional<Crossing> crossing(double multiple) {
    double at = multiple == 0 && forces.isAlone() ? SMALLEST : multiple;
    checking.mix(mixed, forces.none(), forces.one(), at);
    return checking.result(forces.one()) instanceof Checked stated
            && checking.result(mixed) instanceof Checked reached
        ? Optional.of(new Crossing.Used(multiple, certainty(multiple), stated, reached))
        : Optional.empty();
  }
}
