package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.LoadCase;
import java.util.function.Predicate;

/**
 * Some of the loads of a case, added up pose after pose in storage of their own. For one thread at
 * a time.
 */
public final class LoadGroup {

  private final Assembly assembly;
  private final Placements placements;
  private final LoadLaw[] laws;
  private final double[] factors;
  private final Wrenches sum;
  private final double[] centre;
  private final double[] right;

  LoadGroup(
      Assembly assembly,
      Placements placements,
      int rows,
      double[] centre,
      LoadCase loadCase,
      Predicate<String> which) {
    this.assembly = assembly;
    this.placements = placements;
    this.centre = centre;
    laws = assembly.loadLaws();
    factors = new double[laws.length];
    for (int k = 0; k < laws.length; k++) {
      factors[k] = which.test(laws[k].owner) ? loadCase.factor(laws[k].owner) : 0;
    }
    sum = new Wrenches(assembly.bodyCount());
    right = new double[rows];
  }

  /**
   * Right side of the loads where the bodies are now.
   *
   * @return by equations, scaled; storage that the next call uses again, and may be changed
   */
  public double[] rightSide() {
    sum.clear();
    for (int k = 0; k < laws.length; k++) {
      if (factors[k] != 0) {
        laws[k].add(placements, factors[k], sum);
      }
    }
    sum.rightSide(assembly.memberCount(), centre, right);
    return right;
  }

  /**
   * Sum of the sizes of the loads when they were added up last.
   *
   * @return in N
   */
  public double scale() {
    return sum.scale;
  }
}
