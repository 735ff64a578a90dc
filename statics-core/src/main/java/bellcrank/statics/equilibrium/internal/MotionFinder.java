package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * First-order motions that the connections leave free: the velocities to which every motion row is
 * zero. Velocities are kept by rows of the equations: of a body's moment centre in m/s, and its
 * turning speed times the device's size.
 */
public final class MotionFinder {

  private final Assembly assembly;
  private final Actions actions;
  private final double[] centre;
  private final List<double[]> basis;

  private MotionFinder(
      Assembly assembly, Actions actions, double[] centre, List<double[]> orthonormal) {
    this.assembly = assembly;
    this.actions = actions;
    this.centre = centre;
    basis = orthonormal;
  }

  /**
   * Motions free at a pose.
   *
   * @param device the device
   * @param pose where its bodies are
   * @param held whether sought efforts hold as restraints would
   * @param released names of connections that are let go
   * @return the motions
   */
  public static MotionFinder of(Device device, Pose pose, boolean held, Set<String> released) {
    Assembly assembly = Assembly.of(device);
    Placements placements = assembly.placements();
    Actions actions = assembly.actions();
    assembly.place(placements, pose);
    assembly.evaluate(placements, actions);
    double[] centre = new double[2 * assembly.memberCount()];
    MomentCentres.choose(assembly, actions, centre);
    Equations equations = new Equations(assembly, actions);
    equations.fillMotions(actions, centre);
    for (ForceLaw law : assembly.laws()) {
      if (released.contains(law.owner)) {
        int from = equations.start[law.firstColumn];
        int to = equations.start[law.firstColumn + law.columns()];
        Arrays.fill(equations.value, from, to, 0);
      }
    }
    LinearSolution solution =
        LinearAnalysis.solve(
            equations,
            new double[equations.rows],
            1,
            assembly.scale().zero(),
            held ? equations.columns : assembly.firstSoughtColumn());
    return new MotionFinder(assembly, actions, centre, solution.motions());
  }

  /**
   * Motions that only some restraints forbid. Each is a sum of multiples of the motions that the
   * single forces forbid, the friction couples of pins among them.
   *
   * @param device the device
   * @param pose where its bodies are
   * @param restraints multiples by unknowns of {@link Assembly#withDryPins}
   * @return the motions that are free, velocities being those at the device's middle
   */
  public static MotionFinder restrained(Device device, Pose pose, List<double[]> restraints) {
    Assembly assembly = Assembly.withDryPins(device);
    Placements placements = assembly.placements();
    Actions actions = assembly.actions();
    assembly.place(placements, pose);
    assembly.evaluate(placements, actions);
    double[] centre = new double[2 * assembly.memberCount()];
    List<double[]> forbidden = new ArrayList<>(restraints.size());
    for (double[] restraint : restraints) {
      double[] row = forbidden(assembly, actions, centre, restraint);
      double length = 0;
      for (double value : row) {
        length = Math.max(length, Math.abs(value));
      }
      for (int i = 0; i < row.length && length > 0; i++) {
        row[i] /= length;
      }
      forbidden.add(row);
    }
    return new MotionFinder(
        assembly, actions, centre, FreeMotions.basis(assembly, actions, forbidden));
  }

  /** The motion that a sum of multiples of forces forbids, by equations. */
  private static double[] forbidden(
      Assembly assembly, Actions actions, double[] centre, double[] multiples) {
    double[] row = new double[assembly.rows()];
    for (int action = 0; action < actions.count(); action++) {
      double multiple = multiples[actions.column[action]];
      int body = actions.body[action];
      if (multiple == 0 || body < 0) {
        continue;
      }
      int first = assembly.firstRow(body);
      row[first] += multiple * actions.motionX(action);
      row[first + 1] += multiple * actions.motionY(action);
      if (body < assembly.memberCount()) {
        row[first + 2] +=
            multiple * actions.motionMoment(action, centre[2 * body], centre[2 * body + 1]);
      }
    }
    return row;
  }

  /**
   * Power of a sum of multiples of forces on a motion.
   *
   * @param motion velocities by rows
   * @param multiples by unknowns
   * @return in W for forces in N; couples are divided by the size
   */
  public double power(double[] motion, double[] multiples) {
    double[] row = forbidden(assembly, actions, centre, multiples);
    double sum = 0;
    for (int i = 0; i < row.length; i++) {
      sum += row[i] * motion[i];
    }
    return sum;
  }

  /** Orthonormal basis of the motions, velocities by rows. */
  public List<double[]> basis() {
    return basis;
  }

  /** Number of independent motions. */
  public int count() {
    return basis.size();
  }

  /** The assembly whose bodies move. */
  public Assembly assembly() {
    return assembly;
  }

  /**
   * Independent motions, each as local as can be: a reduced basis in which each has a coordinate of
   * its own, scaled so that the fastest point speed among bodies is about 1.
   *
   * @return velocities by rows
   */
  public List<double[]> localMotions() {
    List<double[]> reduced = new ArrayList<>();
    for (double[] vector : basis) {
      reduced.add(vector.clone());
    }
    boolean[] taken = new boolean[assembly.rows()];
    for (int k = 0; k < reduced.size(); k++) {
      int bestRow = 0;
      int best = k;
      double largest = 0;
      for (int i = k; i < reduced.size(); i++) {
        for (int row = 0; row < taken.length; row++) {
          if (!taken[row] && Math.abs(reduced.get(i)[row]) > largest * (1 + 1e-9)) {
            largest = Math.abs(reduced.get(i)[row]);
            bestRow = row;
            best = i;
          }
        }
      }
      java.util.Collections.swap(reduced, k, best);
      taken[bestRow] = true;
      double[] pivot = reduced.get(k);
      scale(pivot, 1 / pivot[bestRow]);
      for (int i = 0; i < reduced.size(); i++) {
        if (i != k) {
          double factor = reduced.get(i)[bestRow];
          for (int row = 0; row < pivot.length; row++) {
            reduced.get(i)[row] -= factor * pivot[row];
          }
        }
      }
    }
    for (double[] vector : reduced) {
      double largest = 0;
      for (double value : vector) {
        largest = Math.max(largest, Math.abs(value));
      }
      scale(vector, 1 / largest);
      for (int row = 0; row < vector.length; row++) {
        vector[row] = Math.abs(vector[row]) < 1e-9 ? 0 : vector[row];
      }
    }
    return reduced;
  }

  /**
   * The motion in which the loads do most work for their size: the sum of the basis motions, each
   * times the power of the loads on it.
   *
   * @param solved the same device solved with its loads
   * @return velocities by rows; all zero if the loads do no work
   */
  public double[] driven(Solved solved) {
    Wrenches loads = new Wrenches(assembly.bodyCount());
    assembly.load(solved.placements, solved.loadCase, loads);
    double[] b = new double[assembly.rows()];
    loads.rightSide(assembly.memberCount(), centre, b);
    double[] sum = new double[assembly.rows()];
    for (double[] vector : basis) {
      double power = 0;
      for (int row = 0; row < b.length; row++) {
        power -= vector[row] * b[row];
      }
      for (int row = 0; row < b.length; row++) {
        sum[row] += power * vector[row];
      }
    }
    double largest = 0;
    for (double value : sum) {
      largest = Math.max(largest, Math.abs(value));
    }
    for (int row = 0; row < sum.length; row++) {
      // divided, since the reciprocal of the least numbers is none
      double share = largest > 0 ? sum[row] / largest : 0;
      sum[row] = Math.abs(share) < 1e-9 ? 0 : share;
    }
    return sum;
  }

  private static void scale(double[] vector, double factor) {
    for (int row = 0; row < vector.length; row++) {
      vector[row] *= factor;
    }
  }

  /** Velocity of a body at its moment centre and its turning: vx, vy in m/s, turning in rad/s. */
  public double[] bodyVelocity(double[] motion, int body) {
    int row = assembly.firstRow(body);
    boolean member = body < assembly.memberCount();
    return new double[] {
      motion[row], motion[row + 1], member ? motion[row + 2] / assembly.size() : 0
    };
  }

  /** Point of a body at which {@link #bodyVelocity} holds, in world coordinates. */
  public bellcrank.statics.geometry.Point reference(int body) {
    if (body < assembly.memberCount()) {
      return assembly.world(centre[2 * body], centre[2 * body + 1]);
    }
    for (int action = 0; action < actions.body.length; action++) {
      if (actions.body[action] == body) {
        return assembly.world(actions.x(action), actions.y(action));
      }
    }
    return assembly.world(0, 0);
  }

  /**
   * Power of one unit of an unknown force of a connection or sought effort on each basis motion.
   *
   * @param owner name of the connection or sought effort
   * @return one value for each basis motion
   */
  public double[] powers(String owner) {
    double[] powers = new double[basis.size()];
    for (ForceLaw law : assembly.laws()) {
      if (law.owner.equals(owner)) {
        for (int k = 0; k < law.actions(); k++) {
          int action = law.firstAction + k;
          for (int m = 0; m < powers.length; m++) {
            powers[m] += power(basis.get(m), action);
          }
        }
      }
    }
    return powers;
  }

  /**
   * Power of a given load at unit size on each basis motion.
   *
   * @param owner name of the load
   * @param solved the same device solved
   * @return one value for each basis motion, for the load's full size
   */
  public double[] loadPowers(String owner, Solved solved) {
    Wrenches loads = new Wrenches(assembly.bodyCount());
    for (LoadLaw law : assembly.loadLaws()) {
      if (law.owner.equals(owner)) {
        law.add(solved.placements, 1, loads);
      }
    }
    double[] b = new double[assembly.rows()];
    loads.rightSide(assembly.memberCount(), centre, b);
    double[] powers = new double[basis.size()];
    for (int m = 0; m < powers.length; m++) {
      for (int row = 0; row < b.length; row++) {
        powers[m] -= basis.get(m)[row] * b[row];
      }
    }
    return powers;
  }

  private double power(double[] motion, int action) {
    int body = actions.body[action];
    if (body < 0) {
      return 0;
    }
    int row = assembly.firstRow(body);
    double sum = motion[row] * actions.motionX(action) + motion[row + 1] * actions.motionY(action);
    if (body < assembly.memberCount()) {
      sum += motion[row + 2] * actions.motionMoment(action, centre[2 * body], centre[2 * body + 1]);
    }
    return sum;
  }
}
