package bellcrank.statics.motion.internal;

import bellcrank.statics.equilibrium.internal.Closure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;

/**
 * Follows the one free motion of a device in one sense by small steps: along the tangent, then back
 * to where all connections fit by Newton's method, square to the tangent. A step that turns the
 * tangent too far, or is corrected too much, is halved, so that no other branch is reached.
 */
public final class Tracer {

  /** A gap that rounding may leave over where Newton's method no longer gains. */
  private static final double FITS_NEARLY = 1e-12;

  private static final int MOST_CORRECTIONS = 12;

  /** Longest step, in rad or sizes of the device, of the body that moves most. */
  private static final double LARGEST_STEP = 0.04;

  private static final double SMALLEST_STEP = 1e-9;
  private static final int MOST_NODES = 20_000;

  /** Cosine of the largest turn of the tangent within a step. */
  private static final double STRAIGHT = 0.99;

  /** Share of a step by which it may be corrected. */
  private static final double CORRECTED = 0.3;

  /** Rates of the drive below this count as none. */
  static final double STILL = 1e-9;

  /** Least singular value, relative to the largest, at which a second motion opens. */
  private static final double CHANGE = 1e-6;

  /** Least singular value below which the way between places is searched for a change point. */
  private static final double NEAR_CHANGE = 0.1;

  /** Shortest step, in rad or sizes of the device, towards what may be a change point. */
  private static final double CROSSING_STEP = 1e-4;

  /** How near a change point is found by signs, in rad or sizes: rounding moves it by more. */
  private static final double CROSSED = 1e-10;

  /** Change points that are nearer to one another are one. */
  private static final double SAME_CHANGE = 1e-6;

  /** How a run of steps ends. */
  public enum End {
    /** The drive has come to the stated value. */
    STATED,
    /** The drive cannot go further: the device turns back. */
    DEAD_CENTRE,
    /** What is watched has happened. */
    WATCHED,
    /** No step fits: the freedom is one of first order only. */
    STUCK,
    /** Too many steps. */
    TOO_LONG
  }

  private final Closure closure;
  private final Driver driver;
  private final Seat seat;
  private final List<Node> nodes = new ArrayList<>();
  private final List<Double> changes = new ArrayList<>();
  private End end = End.STUCK;
  private boolean several;

  private Tracer(Closure closure, Driver driver) {
    this.closure = closure;
    this.driver = driver;
    seat = new Seat(closure, driver);
  }

  /**
   * Follows the motion from the present configuration.
   *
   * @param tangent the free motion there, in the sense in which to go
   * @param limit value of the drive at which to stop
   * @param sense 1 if the drive grows, −1 if it falls
   * @param fine whether a drive value, at which the closure stands, has not yet what ends the way
   */
  public static Tracer follow(
      Closure closure,
      Driver driver,
      double[] tangent,
      double limit,
      int sense,
      DoublePredicate fine) {
    Tracer tracer = new Tracer(closure, driver);
    tracer.run(tangent, limit, sense, fine);
    return tracer;
  }

  private void run(double[] start, double limit, int sense, DoublePredicate fine) {
    double[] tangent = start.clone();
    if (closure.isLarge()) {
      closure.along(driver.row(closure));
    } else {
      closure.free();
    }
    nodes.add(Node.at(closure, driver, tangent, least()));
    double step = LARGEST_STEP / 8 / largest(tangent);
    while (nodes.size() < MOST_NODES) {
      Node from = nodes.get(nodes.size() - 1);
      closure.restore(from.configuration);
      if (step < SMALLEST_STEP) {
        end = End.STUCK;
        return;
      }
      Node to = step(from, step);
      if (to == null) {
        step /= 2;
        continue;
      }
      double gone = step;
      boolean back = to.rate * sense < STILL && nodes.size() > 0;
      if (back) {
        addTurningPoint(from, step, sense);
        end = End.DEAD_CENTRE;
        if ((nodes.get(nodes.size() - 1).drive - limit) * sense >= 0) {
          end = stopAt(limit, sense);
        }
        lookForEnd(fine, sense);
        // the dead centre itself may be one too, but there the way cannot be led over it
        if (!closure.isLarge()) {
          lookForChange(false);
        }
        return;
      }
      if ((to.drive - limit) * sense >= 0) {
        nodes.add(to);
        end = stopAt(limit, sense);
        lookForEnd(fine, sense);
        lookForChange(true);
        return;
      }
      nodes.add(to);
      if (!fine.test(to.drive) && lookForEnd(fine, sense)) {
        lookForChange(true);
        return;
      }
      lookForChange(false);
      step = Math.min(LARGEST_STEP / largest(to.tangent), step * 1.4);
      step = Math.min(step, stepBeforeCrossing(from, to, gone));
    }
    end = End.TOO_LONG;
  }

  /**
   * Half the way to where the least singular value, falling as it does, would vanish. There two
   * ways cross, or all but cross and turn away from one another: a long step would leap over to the
   * other one. Ways that come as near as the shortest such step are taken as crossing.
   */
  private static double stepBeforeCrossing(Node from, Node to, double gone) {
    double fall = from.least - to.least;
    return to.least < NEAR_CHANGE && fall > 0
        ? Math.max(CROSSING_STEP, to.least / fall * gone / 2)
        : Double.POSITIVE_INFINITY;
  }

  /** The node one step further; null if the step is too long. */
  private @org.jspecify.annotations.Nullable Node step(Node from, double step) {
    closure.restore(from.configuration);
    closure.move(from.tangent, step);
    // many velocities are corrected at the drive's value: that keeps the rows sparse
    double[] row = closure.isLarge() ? driver.row(closure) : from.tangent;
    if (!fit(row, 0, step * CORRECTED)) {
      return null;
    }
    double[] tangent = tangent(closure, from.tangent);
    if (dot(tangent, from.tangent) < STRAIGHT) {
      return null;
    }
    return Node.at(closure, driver, tangent, least());
  }

  /** The free motion that continues another: the nearest of several, where several are free. */
  private double[] tangent(Closure closure, double[] before) {
    double[] along = new double[before.length];
    double[] driven = closure.isLarge() ? closure.along(driver.row(closure)) : new double[0];
    List<double[]> motions = driven.length > 0 ? List.of(driven) : closure.free();
    several = motions.size() > 1;
    for (double[] free : motions) {
      double share = dot(free, before);
      for (int i = 0; i < along.length; i++) {
        along[i] += share * free[i];
      }
    }
    double length = Math.sqrt(dot(along, along));
    for (int i = 0; i < along.length; i++) {
      along[i] = length > 0 ? along[i] / length : before[i];
    }
    return along;
  }

  /** Least singular value at the last tangent: none where several motions are free. */
  private double least() {
    return several ? 0 : closure.least();
  }

  /** Closes the gaps, keeping to a further row; false if that takes more than a given way. */
  private boolean fit(double[] row, double miss, double most) {
    double gone = 0;
    double before = Double.POSITIVE_INFINITY;
    for (int round = 0; round < MOST_CORRECTIONS; round++) {
      double error = closure.error();
      if (error <= Seat.FITS && round > 0) {
        return true;
      }
      if (round > 3 && error > before / 2) {
        return error <= FITS_NEARLY;
      }
      before = error;
      double[] correction = closure.correction(row, round == 0 ? miss : 0);
      gone += Math.sqrt(dot(correction, correction));
      if (!(gone <= most)) {
        return false;
      }
      closure.move(correction, 1);
    }
    return closure.error() <= FITS_NEARLY;
  }

  /** Where the drive turns back, between the last node and one step on. */
  private void addTurningPoint(Node from, double step, int sense) {
    double low = 0;
    double high = step;
    Node best = from;
    for (int round = 0; round < 100 && high - low > 1e-15; round++) {
      double middle = (low + high) / 2;
      Node there = step(from, middle);
      if (there == null) {
        high = middle;
        continue;
      }
      if (there.rate * sense > 0) {
        low = middle;
        best = there;
      } else {
        high = middle;
      }
    }
    if (best != from) {
      nodes.add(best);
    }
  }

  private End stopAt(double limit, int sense) {
    Node last = nodes.remove(nodes.size() - 1);
    Node from = nodes.isEmpty() ? last : nodes.get(nodes.size() - 1);
    Node at = between(from, last, limit);
    if (nodes.isEmpty() || (at.drive - from.drive) * sense > 0) {
      nodes.add(at);
    }
    return End.STATED;
  }

  /** Goes back to where what is watched begins, if it has; whether it has. */
  private boolean lookForEnd(DoublePredicate fine, int sense) {
    Node last = nodes.get(nodes.size() - 1);
    closure.restore(last.configuration);
    if (nodes.size() < 2 || fine.test(last.drive)) {
      return false;
    }
    Node from = nodes.get(nodes.size() - 2);
    double low = from.drive;
    double high = last.drive;
    double close = 1e-13 * Math.max(1, Math.abs(high));
    while (Math.abs(high - low) > close && low != (low + high) / 2 && high != (low + high) / 2) {
      double middle = (low + high) / 2;
      between(from, last, middle);
      if (fine.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    closure.restore(last.configuration);
    if (fine.test(last.drive)) {
      // seen closer, the end of an edge was only grazed
      return false;
    }
    Node at = between(from, last, low);
    nodes.set(nodes.size() - 1, at);
    if (at.drive * sense <= from.drive * sense && nodes.size() > 1) {
      nodes.remove(nodes.size() - 1);
    }
    end = End.WATCHED;
    return true;
  }

  /** Looks for change points in the last steps, and in the very last one if the way has ended. */
  private void lookForChange(boolean ended) {
    int n = nodes.size();
    if (n < 2) {
      return;
    }
    Node c = nodes.get(n - 1);
    Node b = nodes.get(n - 2);
    if (closure.isLarge()) {
      lookForCrossings(b, c);
    } else {
      lookForLeast(b, c, ended);
    }
    closure.restore(c.configuration);
  }

  private void lookForLeast(Node b, Node c, boolean ended) {
    int n = nodes.size();
    if (n == 2 && b.least < Math.min(NEAR_CHANGE, c.least)) {
      lookForLeast(b, c);
    }
    if (n > 2 && b.least < NEAR_CHANGE && b.least <= nodes.get(n - 3).least && b.least <= c.least) {
      lookForLeast(nodes.get(n - 3), c);
    }
    if (ended && c.least < Math.min(NEAR_CHANGE, b.least)) {
      lookForLeast(b, c);
    }
  }

  /** By the least singular value, which vanishes there. */
  private void lookForLeast(Node a, Node c) {
    double low = a.drive;
    double high = c.drive;
    double best = low;
    double least = a.least;
    for (int round = 0; round < 80 && least > 0; round++) {
      double third = (high - low) / 3;
      double left = between(a, c, low + third).least;
      double right = between(a, c, high - third).least;
      if (Math.min(left, right) < least) {
        least = Math.min(left, right);
        best = left < right ? low + third : high - third;
      }
      if (left < right) {
        high -= third;
      } else {
        low += third;
      }
    }
    double found = best;
    if (least < CHANGE && changes.stream().noneMatch(one -> Math.abs(one - found) < SAME_CHANGE)) {
      changes.add(found);
    }
  }

  /** By the signs of determinants; the drive does not stand still before the end of a way. */
  private void lookForCrossings(Node a, Node b) {
    int block = a.senses.firstOther(b.senses, 0);
    while (block >= 0) {
      double low = a.drive;
      double high = b.drive;
      while (Math.abs(high - low) > CROSSED && low != (low + high) / 2) {
        double middle = (low + high) / 2;
        if (between(a, b, middle).senses.isOther(a.senses, block)) {
          high = middle;
        } else {
          low = middle;
        }
      }
      double there = (low + high) / 2;
      // several motions that open together are one place
      if (changes.stream().noneMatch(one -> Math.abs(one - there) < SAME_CHANGE)) {
        changes.add(there);
      }
      block = a.senses.firstOther(b.senses, block + 1);
    }
  }

  /** The place between two nodes at a value of the drive. */
  private Node between(Node a, Node b, double drive) {
    seat.put(a, b, drive);
    double[] tangent = tangent(closure, a.tangent);
    return Node.at(closure, driver, tangent, least());
  }

  private static double largest(double[] vector) {
    double largest = 0;
    for (double value : vector) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest > 0 ? largest : 1;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** How it ends. */
  public End end() {
    return end;
  }

  /** How far it was driven. */
  public double reached() {
    return nodes.get(nodes.size() - 1).drive;
  }

  /** Drive values at which a second motion opens. */
  public List<Double> changes() {
    return changes;
  }

  /** Number of places on the way. */
  public int size() {
    return nodes.size();
  }

  /** Drive value of a place on the way. */
  public double drive(int node) {
    return nodes.get(node).drive;
  }

  /** Something that can be put to places of this way: a closure of the same device. */
  public Seat seat(Closure other) {
    return new Seat(other, driver);
  }

  /** Puts a seat of the same device to a value of the drive between the ends of the way. */
  public void put(Seat other, double drive) {
    Optional<Bridge> bridge = bridge(drive);
    if (bridge.isEmpty()) {
      settle(other, drive);
    } else {
      other.put(
          bridge
              .get()
              .value(
                  pier -> {
                    settle(other, pier);
                    return other.configuration();
                  }));
    }
  }

  private Optional<Bridge> bridge(double drive) {
    return changes.isEmpty()
        ? Optional.empty()
        : Bridge.at(changes, drive, nodes.get(0).drive, reached());
  }

  private void settle(Seat other, double drive) {
    Node last = nodes.get(nodes.size() - 1);
    // the end may be a dead centre, which is found better by steps than by the drive
    if (nodes.size() == 1 || Math.abs(drive - last.drive) <= 2 * Math.ulp(last.drive)) {
      other.put(last);
      return;
    }
    boolean up = reached() >= nodes.get(0).drive;
    int low = 0;
    int high = nodes.size() - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      double there = nodes.get(middle).drive;
      if (up ? there < drive : there > drive) {
        low = middle;
      } else {
        high = middle;
      }
    }
    other.put(nodes.get(low), nodes.get(high), drive);
  }

  /** Configurations of the places whose drive lies between two values, in ascending order of it. */
  public List<double[]> configurations(double from, double to) {
    List<double[]> between = new ArrayList<>();
    for (Node node : nodes) {
      if (node.drive > from && node.drive < to) {
        between.add(node.configuration.clone());
      }
    }
    if (reached() < nodes.get(0).drive) {
      Collections.reverse(between);
    }
    return between;
  }

  /** How fast the drive goes where a closure stands, at given velocities. */
  public double rate(Closure other, double[] velocities) {
    return dot(driver.row(other), velocities);
  }

  /**
   * Free motion where a closure stands, for a rate of one of the drive; empty if that stands still.
   */
  public double[] velocities(Closure other) {
    Optional<Bridge> bridge = bridge(driver.value(other));
    if (bridge.isEmpty()) {
      return velocities(other, driver);
    }
    double[] here = other.configuration();
    Seat there = seat(other);
    double[] velocities =
        bridge
            .get()
            .value(
                pier -> {
                  settle(there, pier);
                  return velocities(other, driver);
                });
    other.restore(here);
    return velocities;
  }

  /** The same for a rate of one of any driver. */
  public static double[] velocities(Closure closure, Driver driver) {
    double[] row = driver.row(closure);
    double[] along = closure.along(row);
    if (along.length > 0) {
      return along;
    }
    for (double[] free : closure.free()) {
      double rate = dot(row, free);
      if (Math.abs(rate) > STILL) {
        double[] velocities = free.clone();
        for (int i = 0; i < velocities.length; i++) {
          velocities[i] /= rate;
        }
        return velocities;
      }
    }
    return new double[0];
  }
}
