package bellcrank.statics.study.internal;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;

/**
 * Climbs from a place to where a function is greatest near by: by quadratic models (Powell, The
 * BOBYQA algorithm for bound constrained optimization without derivatives, 2009, by the library),
 * then by steps along the axes and along directions drawn at random, which kinks do not stop.
 */
final class Climb {

  /** Reach of the first quadratic model, in widths of the box. */
  static final double REACH = 0.1;

  /** Steps below this end the climb. */
  static final double SHORTEST = 1e-8;

  private static final long SEED = 23;

  private final Looking looking;
  private final int sense;
  private final int end;
  private final Draws draws = Draws.of(SEED);
  private double[] place;
  private double value;

  private Climb(Looking looking, int sense, int looks, double[] start) {
    this.looking = looking;
    this.sense = sense;
    end = looking.asked() + looks;
    place = start;
    value = height(start);
  }

  /** Climbs for the greatest (sense 1) or the least (sense −1) value; the places are remembered. */
  static void from(double[] start, int sense, int looks, Looking looking) {
    Climb climb = new Climb(looking, sense, looks, start);
    if (start.length > 1) {
      climb.byModels(looks / 2);
    }
    climb.bySteps();
  }

  /** Height of a place; where the function has no value, that is below all others. */
  private double height(double[] at) {
    return looking.asked() < end
        ? looking.at(at).stream().map(v -> sense * v).findFirst().orElse(Double.NEGATIVE_INFINITY)
        : Double.NEGATIVE_INFINITY;
  }

  private void byModels(int looks) {
    int inputs = place.length;
    // a model needs finite heights: a place without a value lies as low as the whole range is wide
    double low = sense * looking.best(-sense).value() - looking.largest();
    double[] zeros = new double[inputs];
    double[] ones = new double[inputs];
    java.util.Arrays.fill(ones, 1);
    try {
      new BOBYQAOptimizer(2 * inputs + 1, REACH, SHORTEST)
          .optimize(
              GoalType.MAXIMIZE,
              new MaxEval(Math.max(1, looks)),
              new ObjectiveFunction(at -> Math.max(low, offer(at.clone()))),
              new SimpleBounds(zeros, ones),
              new InitialGuess(place));
    } catch (MathRuntimeException ended) {
      // out of looks, or the function has no model: the best place so far is kept
      return;
    }
  }

  /** Looks at a place and keeps it if it is higher. */
  private double offer(double[] at) {
    for (int i = 0; i < at.length; i++) {
      at[i] = Math.max(0, Math.min(1, at[i]));
    }
    double height = height(at);
    if (height > value) {
      value = height;
      place = at;
    }
    return height;
  }

  private void bySteps() {
    double step = BoxSearch.BESIDE;
    while (step > SHORTEST && looking.asked() < end) {
      boolean higher = false;
      for (double[] way : ways()) {
        higher |= step(way, step) || step(way, -step);
      }
      if (!higher) {
        step /= 2;
      }
    }
  }

  private boolean step(double[] way, double length) {
    double before = value;
    double[] at = place.clone();
    for (int i = 0; i < at.length; i++) {
      at[i] += length * way[i];
    }
    offer(at);
    return value > before;
  }

  /** The axes, and as many other directions. */
  private double[][] ways() {
    int inputs = place.length;
    double[][] ways = new double[inputs == 1 ? 1 : 2 * inputs][inputs];
    for (int k = 0; k < ways.length; k++) {
      if (k < inputs) {
        ways[k][k] = 1;
      } else {
        for (int i = 0; i < inputs; i++) {
          ways[k][i] = 2 * draws.share() - 1;
        }
      }
    }
    return ways;
  }
}
