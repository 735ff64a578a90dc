package bellcrank.statics.study.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * How the forces of a balance change with an input: with A·f + b = 0 they change by −A⁻¹·(A'·f +
 * b'), where the right side is the rate at which the known forces fall out of balance. The
 * equations are solved once; each input costs their evaluation with rates and one more solution.
 */
public final class BalanceRates {

  /** Share of the rates above which what no force can take is no rounding. */
  private static final double LEFT_OVER = 1e-9;

  private final DualDevice stated;
  private final Factored factored;
  private final double[] forces;
  private final boolean balanced;
  private final double scale;

  private BalanceRates(DualDevice stated) {
    this.stated = stated;
    DualEquations equations = new DualEquations(stated, false);
    factored = Factored.of(equations.matrix());
    DMatrixRMaj loads = equations.loads();
    CommonOps_DDRM.changeSign(loads);
    scale = Math.max(CommonOps_DDRM.elementMaxAbs(loads), 1e-300);
    balanced = factored.leftOver(loads) <= LEFT_OVER * scale * Math.sqrt(loads.numRows + 1);
    forces = factored.solve(loads).data;
  }

  private BalanceRates(BalanceRates of, double[] forces) {
    stated = of.stated;
    factored = of.factored;
    balanced = of.balanced;
    scale = of.scale;
    this.forces = forces;
  }

  /**
   * The same loads balanced by other forces, where statics does not fix them all. What is fixed now
   * may be so in this very pose only; then its rate is another one here.
   *
   * @return empty if statics fixes all forces
   */
  public Optional<BalanceRates> otherwiseShared() {
    List<double[]> free = factored.free();
    double[] others = forces.clone();
    double share = scale();
    for (double[] change : free) {
      for (int k = 0; k < others.length; k++) {
        others[k] += share * change[k];
      }
      // not all alike, so that two of them do not cancel
      share *= 0.7;
    }
    return free.isEmpty() ? Optional.empty() : Optional.of(new BalanceRates(this, others));
  }

  /**
   * The balance of a device as drawn.
   *
   * @param device the device
   * @param loadCase its loads
   */
  public static BalanceRates of(Device device, LoadCase loadCase) {
    return new BalanceRates(new DualDevice(device, loadCase, Rates.NONE));
  }

  /** The largest of loads and forces, in N. */
  public double scale() {
    double largest = scale;
    for (double force : forces) {
      largest = Math.max(largest, Math.abs(force));
    }
    return largest;
  }

  /**
   * The forces with their rates.
   *
   * @param rates how fast the numbers of the device change with an input
   * @return empty if there is no balance that lasts: if a change of the input takes it away, or
   *     makes forces statically determined that were not
   */
  public Optional<DualReader> at(Rates rates) {
    if (!balanced) {
      return Optional.empty();
    }
    DualDevice moving = stated.with(rates);
    DualEquations equations = new DualEquations(moving, false);
    DMatrixRMaj right = equations.imbalance(forces);
    CommonOps_DDRM.changeSign(right);
    double size = equations.sizeOfRates(forces);
    boolean lasting =
        factored.leftOver(right) <= LEFT_OVER * size && factored.keepsRank(equations.matrixRates());
    if (!lasting) {
      return Optional.empty();
    }
    double[] changes = factored.solve(right).data;
    return Optional.of(new DualReader(moving, equations, duals(forces, changes)));
  }

  /**
   * What does not depend on forces, with its rates; all else is not a number.
   *
   * @param rates how fast the numbers of the device change with an input
   */
  public DualReader withoutForces(Rates rates) {
    DualDevice moving = stated.with(rates);
    List<Dual> none = Collections.nCopies(forces.length, new Dual(Double.NaN, Double.NaN));
    return new DualReader(moving, new DualEquations(moving, false), none);
  }

  private static List<Dual> duals(double[] values, double[] rates) {
    List<Dual> all = new ArrayList<>();
    for (int k = 0; k < values.length; k++) {
      all.add(new Dual(values[k], rates[k]));
    }
    return all;
  }
}
