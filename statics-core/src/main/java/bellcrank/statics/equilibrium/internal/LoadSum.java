package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.geometry.Point;
import java.util.function.Predicate;

/** Given loads of a case, added up about a point: components in N, moment in N·m. */
public final class LoadSum {

  private final double fx;
  private final double fy;
  private final double moment;
  private final double scale;

  private LoadSum(double fx, double fy, double moment, double scale) {
    this.fx = fx;
    this.fy = fy;
    this.moment = moment;
    this.scale = scale;
  }

  /**
   * Adds up loads.
   *
   * @param solved the solved device
   * @param loads which loads, by name
   * @param body only what acts on this body; {@link Integer#MIN_VALUE} for all
   * @param about point of the moment, in world coordinates
   * @return the sum
   */
  public static LoadSum of(Solved solved, Predicate<String> loads, int body, Point about) {
    Assembly assembly = solved.assembly;
    Wrenches sum =
        new Wrenches(assembly.bodyCount(), assembly.scale().x(about), assembly.scale().y(about));
    for (LoadLaw law : assembly.loadLaws()) {
      if (loads.test(law.owner)) {
        law.add(solved.placements, solved.loadCase.factor(law.owner), sum);
      }
    }
    double fx = 0;
    double fy = 0;
    double moment = 0;
    for (int b = 0; b < sum.bodies(); b++) {
      if (body == Integer.MIN_VALUE || body == b) {
        fx += sum.fx(b);
        fy += sum.fy(b);
        moment += sum.moment(b);
      }
    }
    return new LoadSum(fx, fy, moment * assembly.size(), sum.scale);
  }

  /** Component to the right, in N. */
  public double fx() {
    return fx;
  }

  /** Component up, in N. */
  public double fy() {
    return fy;
  }

  /** Moment about the point, in N·m, counter-clockwise positive. */
  public double moment() {
    return moment;
  }

  /** Sum of the sizes of all that was added, in N. */
  public double scale() {
    return scale;
  }
}
