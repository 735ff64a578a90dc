package bellcrank.statics.strength;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A check of a rated line or fitting. */
final class RatingChecking extends Checking<RatingDemand> {

  private final Rating rating;
  private final int tension;
  private final int[] forces;

  private RatingChecking(
      Rating rating, int tension, List<Integer> forces, Rule<RatingDemand> rule) {
    super(rating.part(), what(rating), rule);
    this.rating = rating;
    this.tension = tension;
    this.forces = forces.stream().mapToInt(Integer::intValue).toArray();
  }

  static String what(Rating rating) {
    String check = Check.WORKING_LOAD.name();
    return rating.name().equals(rating.part()) ? check : rating.name() + ": " + check;
  }

  /** What carries a tension. */
  static RatingChecking ofTension(Rating rating, int tension, Rule<RatingDemand> rule) {
    return new RatingChecking(rating, tension, List.of(), rule);
  }

  /** What carries the force of a connection; of several bodies the one that pulls most counts. */
  static RatingChecking ofForces(Rating rating, List<Integer> forces, Rule<RatingDemand> rule) {
    return new RatingChecking(rating, -1, forces, rule);
  }

  @Override
  void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple) {
    if (tension >= 0) {
      to.mixTension(tension, none, one, multiple);
    }
    for (int force : forces) {
      to.mixForce(force, none, one, multiple);
    }
  }

  @Override
  Optional<String> open(CarriedForces state) {
    return tension >= 0
        ? state.tensionOpen(tension)
        : Arrays.stream(forces)
            .boxed()
            .flatMap(force -> state.forceOpen(force).stream())
            .findFirst();
  }

  @Override
  RatingDemand worst(CarriedForces state) {
    double greatest = 0;
    if (tension >= 0) {
      greatest = Math.max(Math.abs(state.tension(tension)), Math.abs(state.endTension(tension)));
    }
    for (int force : forces) {
      greatest = Math.max(greatest, state.size(force));
    }
    return new RatingDemand(greatest, rating);
  }
}
