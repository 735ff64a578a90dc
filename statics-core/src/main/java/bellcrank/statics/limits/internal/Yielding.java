package bellcrank.statics.limits.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.MotionFinder;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The motion with which a device gives way: parts at their limit slide against their friction, open
 * or tip; all others stick. It is not the motion of the dual program, in which sliding contacts
 * would part.
 */
public final class Yielding {

  /** Speeds below this, of motions of order one, count as none. */
  private static final double STILL = 1e-7;

  /** What happens at one part. */
  public record At(int connection, Bound.Kind kind, int side) {}

  private final Assembly assembly;
  private final List<At> events = new ArrayList<>();
  private final List<double[]> restraints = new ArrayList<>();

  /** Speeds that must not be below zero: powers of sums of unit forces on the motion. */
  private final List<double[]> senses = new ArrayList<>();

  private final MotionFinder finder;
  private double[] motion = {};
  private int ways;

  private Yielding(
      Device device,
      Pose pose,
      Assembly assembly,
      List<Bound> atLimit,
      double[] drive,
      double[] loads) {
    this.assembly = assembly;
    for (int i = 0; i < device.connections().size(); i++) {
      Set<Bound.Kind> kinds = EnumSet.noneOf(Bound.Kind.class);
      List<Bound> own = new ArrayList<>();
      for (Bound bound : atLimit) {
        if (bound.connection == i) {
          kinds.add(bound.kind);
          own.add(bound);
        }
      }
      restrain(device.connections().get(i), i, kinds, own);
    }
    for (int column = assembly.firstSoughtColumn(); column < assembly.columns(); column++) {
      if (drive.length == 0 || drive[column] == 0) {
        restraints.add(unit(column, 1));
      }
    }
    finder = MotionFinder.restrained(device, pose, restraints);
    choose(drive, loads);
  }

  /**
   * Finds the motion.
   *
   * @param device the device
   * @param pose where its bodies are
   * @param assembly its assembly, with dry pins
   * @param atLimit the conditions that are at their limit
   * @param drive multiples of sought forces that drive it; empty if loads do
   * @param loads power of the loads that drive it, by velocities; empty if sought forces do
   */
  public static Yielding of(
      Device device,
      Pose pose,
      Assembly assembly,
      List<Bound> atLimit,
      double[] drive,
      double[] loads) {
    return new Yielding(device, pose, assembly, atLimit, drive, loads);
  }

  private double[] unit(int column, double multiple) {
    double[] unit = new double[assembly.columns()];
    unit[column] = multiple;
    return unit;
  }

  private double[] pair(int first, double a, int second, double b) {
    double[] pair = unit(first, a);
    pair[second] += b;
    return pair;
  }

  private void restrain(Connection connection, int i, Set<Bound.Kind> kinds, List<Bound> own) {
    int column = assembly.firstColumn(i);
    int count = assembly.columnCount(i);
    if (kinds.contains(Bound.Kind.PUSH) || bothEdges(own)) {
      events.add(new At(i, Bound.Kind.PUSH, 1));
      lifts(connection, column, count);
    } else if (connection instanceof Contact) {
      restraints.add(unit(column, 1));
      if (count > 1) {
        tangent(i, column + 1, own);
      }
    } else if (connection instanceof ContactBase base) {
      base(base, i, own);
    } else if (connection instanceof Wrap) {
      wrap(i, column, kinds, own);
    } else if (kinds.contains(Bound.Kind.PULL)) {
      events.add(new At(i, Bound.Kind.PULL, 1));
      senses.add(unit(column, 1));
    } else if (connection instanceof Pin pin && pin.friction() > 0) {
      pin(pin, i, own);
    } else if (kinds.contains(Bound.Kind.SCREW)) {
      // without friction it turns either way at once
      int sides = own.stream().filter(b -> b.kind == Bound.Kind.SCREW).mapToInt(b -> b.side).sum();
      events.add(new At(i, Bound.Kind.SCREW, sides));
    } else {
      for (int k = 0; k < count; k++) {
        restraints.add(unit(column + k, 1));
      }
    }
  }

  private static boolean bothEdges(List<Bound> own) {
    int sides = 0;
    for (Bound bound : own) {
      sides |= bound.kind == Bound.Kind.EDGE ? (bound.side > 0 ? 1 : 2) : 0;
    }
    return sides == 3;
  }

  private void lifts(Connection connection, int column, int count) {
    if (connection instanceof ContactBase base) {
      double half = base.width() / 2 / assembly.size();
      senses.add(pair(column, 1, column + count - 1, half));
      senses.add(pair(column, 1, column + count - 1, -half));
    } else {
      senses.add(unit(column, 1));
    }
  }

  /** Friction: at its limit it opposes the motion, else it holds. */
  private void tangent(int i, int column, List<Bound> own) {
    int sides = 0;
    for (Bound bound : own) {
      sides += bound.kind == Bound.Kind.SLIDE ? bound.side : 0;
    }
    boolean free = own.stream().anyMatch(bound -> bound.kind == Bound.Kind.SLIDE);
    if (!free) {
      restraints.add(unit(column, 1));
      return;
    }
    events.add(new At(i, Bound.Kind.SLIDE, sides));
    if (sides != 0) {
      senses.add(unit(column, -sides));
    }
  }

  private void base(ContactBase base, int i, List<Bound> own) {
    int normal = assembly.firstColumn(i);
    int couple = normal + assembly.columnCount(i) - 1;
    double half = base.width() / 2 / assembly.size();
    Bound.Kind state = Bound.Kind.PART;
    Bound at = own.isEmpty() ? new Bound(i, state, 0, 0, new int[0]) : own.get(0);
    for (Bound bound : own) {
      if (bound.kind == Bound.Kind.EDGE || bound.kind == Bound.Kind.SINK) {
        state = bound.kind;
        at = bound;
      }
    }
    if (state == Bound.Kind.EDGE) {
      events.add(new At(i, state, at.side));
      restraints.add(pair(normal, 1, couple, at.side * half));
      senses.add(pair(normal, 1, couple, -at.side * half));
    } else if (state == Bound.Kind.SINK) {
      // the ground flows square to the surface of its limit: only across that it still holds
      events.add(new At(i, state, at.side));
      restraints.add(pair(normal, at.multiples[1], couple, -at.multiples[0]));
      senses.add(pair(normal, -at.multiples[0], couple, -at.multiples[1]));
    } else {
      restraints.add(unit(normal, 1));
      restraints.add(unit(couple, 1));
    }
    if (couple > normal + 1) {
      tangent(i, normal + 1, own);
    }
  }

  private void wrap(int i, int column, Set<Bound.Kind> kinds, List<Bound> own) {
    if (kinds.contains(Bound.Kind.PULL)) {
      events.add(new At(i, Bound.Kind.PULL, 1));
      senses.add(pair(column, 1, column + 1, 1));
    } else if (kinds.contains(Bound.Kind.WRAP)) {
      int sides = own.stream().filter(b -> b.kind == Bound.Kind.WRAP).mapToInt(b -> b.side).sum();
      events.add(new At(i, Bound.Kind.WRAP, sides));
      restraints.add(pair(column, 1, column + 1, 1));
      if (sides != 0) {
        // it slips to the side that pulls more: that straight part grows
        senses.add(unit(column, -sides));
      }
    } else {
      restraints.add(unit(column, 1));
      restraints.add(unit(column + 1, 1));
    }
  }

  private void pin(Pin pin, int i, List<Bound> own) {
    boolean shaft = assembly.pinBody(pin.name()) >= 0;
    int bodies = shaft ? pin.bodies().size() : 1;
    int sticking = -1;
    for (int body = 0; body < bodies; body++) {
      int couple = assembly.coupleColumn(i, body);
      restraints.add(unit(couple - 2, 1));
      restraints.add(unit(couple - 1, 1));
      Bound at = null;
      for (Bound bound : own) {
        at = bound.columns[0] == couple ? bound : at;
      }
      if (at != null) {
        events.add(new At(i, Bound.Kind.PIN, at.side));
        if (!shaft) {
          senses.add(unit(couple, -at.side));
        }
      } else if (!shaft) {
        restraints.add(unit(couple, 1));
      } else if (sticking < 0) {
        sticking = couple;
      } else {
        // bodies that stick to the shaft turn with one another
        restraints.add(pair(sticking, 1, couple, -1));
      }
    }
  }

  /**
   * Chooses the motion. Motions at which nothing happens, such as the swing of what hangs, are left
   * out: of all that fit, the one that has least of them is told.
   */
  private void choose(double[] drive, double[] loads) {
    List<double[]> basis = finder.basis();
    List<double[]> rows = new ArrayList<>();
    for (double[] sense : senses) {
      addRow(rows, basis, sense);
    }
    if (drive.length > 0) {
      addRow(rows, basis, drive);
    }
    if (rows.isEmpty() && loads.length > 0) {
      // nothing tells the sense of the motion but the loads themselves
      double[] powers = new double[basis.size()];
      for (int k = 0; k < powers.length; k++) {
        for (int i = 0; i < basis.get(k).length; i++) {
          powers[k] += loads[i] * basis.get(k)[i];
        }
      }
      addUnit(rows, powers);
    }
    if (rows.isEmpty()) {
      ways = basis.size();
      return;
    }
    ways = rank(rows);
    double[] total = new double[basis.size()];
    Program program = new Program(basis.size());
    for (double[] row : rows) {
      double[] negative = new double[row.length];
      for (int k = 0; k < row.length; k++) {
        negative[k] = -row[k];
        total[k] += row[k];
      }
      program.atMost(negative, 0);
    }
    for (int k = 0; k < basis.size(); k++) {
      double[] up = new double[basis.size()];
      double[] down = new double[basis.size()];
      up[k] = 1;
      down[k] = -1;
      program.atMost(up, 1);
      program.atMost(down, 1);
    }
    Optimum fastest = Simplex.maximize(program, total);
    if (fastest.isFound() && fastest.value > STILL) {
      // all rows are multiples of one where there is one way: it has nothing of the idle motions
      motion = combined(basis, ways == 1 ? along(rows.get(0), fastest.x) : fastest.x);
    }
  }

  private void addRow(List<double[]> rows, List<double[]> basis, double[] multiples) {
    double[] row = new double[basis.size()];
    for (int k = 0; k < row.length; k++) {
      row[k] = finder.power(basis.get(k), multiples);
    }
    addUnit(rows, row);
  }

  private static void addUnit(List<double[]> rows, double[] row) {
    double length = 0;
    for (int k = 0; k < row.length; k++) {
      row[k] = Math.abs(row[k]) < STILL ? 0 : row[k];
      length = Math.hypot(length, row[k]);
    }
    if (length > 0) {
      for (int k = 0; k < row.length; k++) {
        row[k] /= length;
      }
      rows.add(row);
    }
  }

  /** Number of independent rows, counted by taking out of each what earlier ones have of it. */
  private static int rank(List<double[]> rows) {
    List<double[]> independent = new ArrayList<>();
    for (double[] row : rows) {
      double[] rest = row.clone();
      for (double[] one : independent) {
        subtract(rest, one, dot(rest, one));
      }
      double length = Math.sqrt(dot(rest, rest));
      if (length > STILL) {
        double[] unit = new double[rest.length];
        subtract(unit, rest, -1 / length);
        independent.add(unit);
      }
    }
    return independent.size();
  }

  private static double[] along(double[] row, double[] x) {
    double[] part = new double[x.length];
    subtract(part, row, -dot(row, x));
    return part;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += a[k] * b[k];
    }
    return sum;
  }

  private static void subtract(double[] from, double[] vector, double multiple) {
    for (int k = 0; k < from.length; k++) {
      from[k] -= multiple * vector[k];
    }
  }

  private static double[] combined(List<double[]> basis, double[] x) {
    double[] sum = new double[basis.get(0).length];
    double largest = 0;
    for (int row = 0; row < sum.length; row++) {
      for (int k = 0; k < x.length; k++) {
        sum[row] += x[k] * basis.get(k)[row];
      }
      largest = Math.max(largest, Math.abs(sum[row]));
    }
    for (int row = 0; row < sum.length; row++) {
      sum[row] = Math.abs(sum[row]) < 1e-9 * largest ? 0 : sum[row] / largest;
    }
    return sum;
  }

  /** What happens at the parts that are at their limit. */
  public List<At> events() {
    return events;
  }

  /** Number of independent motions in which something happens at the parts at their limit. */
  public int ways() {
    return ways;
  }

  /** Whether some motion fits the senses in which the parts can give way. */
  public boolean moves() {
    return motion.length > 0;
  }

  /** The motion, velocities by rows; of several ones the one in which most happens. */
  public double[] motion() {
    return motion.clone();
  }

  /** Reads velocities. */
  public MotionFinder finder() {
    return finder;
  }

  /** Speed of the first unknown of a kind at a part: its power on the motion. */
  public double speed(int column) {
    return finder.power(motion, unit(column, 1));
  }
}
