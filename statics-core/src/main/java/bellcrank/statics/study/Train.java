package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Side;
import bellcrank.statics.study.InfluenceLine.Extreme;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Several loads at fixed distances that move together, such as the wheels of a cart. They act in
 * the direction of the moving load whose influence line they go over. What is not yet or no longer
 * on the way does not count.
 *
 * @param wheels the loads, the leading one first
 */
public record Train(List<Wheel> wheels) {

  /**
   * One of the loads.
   *
   * @param force its size in N, any sign, with all factors
   * @param behind how far it is behind the leading one in m, 0 or more
   */
  public record Wheel(double force, double behind) {}

  /**
   * Copies the list.
   *
   * @param wheels the loads, the leading one first
   * @throws ModelException if there is none, a number is not finite, the first is behind itself, or
   *     one is before the one that it follows
   */
  public Train {
    wheels = List.copyOf(wheels);
    if (wheels.isEmpty()) {
      throw new ModelException("train", "wheels", "none", "at least one");
    }
    double last = 0;
    for (int k = 0; k < wheels.size(); k++) {
      double force = wheels.get(k).force();
      double behind = wheels.get(k).behind();
      if (!Double.isFinite(force)) {
        throw new ModelException("train", "force of a wheel", force, "a finite number");
      }
      boolean fits = k == 0 ? behind == 0 : behind >= last;
      if (!fits || !Double.isFinite(behind)) {
        throw new ModelException(
            "train",
            "distance behind",
            behind,
            k == 0 ? "0 for the leading wheel" : "a finite number of " + last + " or more");
      }
      last = behind;
    }
  }

  /**
   * Equal loads at equal distances.
   *
   * @param count how many, 1 or more
   * @param force size of each in N
   * @param spacing distance from each to the next in m, 0 or more
   * @return the train
   * @throws ModelException if a number is out of its range
   */
  public static Train of(int count, double force, double spacing) {
    List<Wheel> wheels = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      wheels.add(new Wheel(force, k * spacing));
    }
    return new Train(wheels);
  }

  static Train single(double force) {
    return of(1, force, 0);
  }

  /**
   * The same train going the other way: its last wheel leads.
   *
   * @return the turned train
   */
  public Train turned() {
    List<Wheel> turned = new ArrayList<>();
    for (int k = wheels.size() - 1; k >= 0; k--) {
      turned.add(new Wheel(wheels.get(k).force(), length() - wheels.get(k).behind()));
    }
    return new Train(turned);
  }

  /**
   * How far the last wheel is behind the first.
   *
   * @return in m
   */
  public double length() {
    return wheels.get(wheels.size() - 1).behind();
  }

  /**
   * How an answer comes out where the train makes it greatest or least.
   *
   * @param at value of the answer with all other loads, place of the leading wheel in m from the
   *     start of the way, beyond its end where that wheel has gone off, and the side of it where
   *     the answer jumps
   * @param wheels places of the wheels in m from the start of the way, the leading one first; those
   *     below 0 or beyond the length are off it
   */
  public record Passage(Extreme at, List<Double> wheels) {

    /**
     * Copies the list.
     *
     * @param at value, place of the leading wheel, and side
     * @param wheels places of the wheels
     */
    public Passage {
      wheels = List.copyOf(wheels);
    }
  }

  /**
   * Where an answer is greatest while the train goes the whole way, in place of the moving load.
   * Places where none of its wheels is on the way do not count.
   *
   * @param line influence line of the answer
   * @return the first place if there are several
   */
  public Passage greatest(InfluenceLine line) {
    return over(line, 1);
  }

  /**
   * Where an answer is least while the train goes the whole way, in place of the moving load.
   * Places where none of its wheels is on the way do not count.
   *
   * @param line influence line of the answer
   * @return the first place if there are several
   */
  public Passage least(InfluenceLine line) {
    return over(line, -1);
  }

  /**
   * The answer with the leading wheel at a place and all other loads.
   *
   * @param line influence line of the answer
   * @param lead place of the leading wheel in m from the start of the way; wheels that are not on
   *     the way do not count
   * @param side whether it is just before or just after that place, the others with it
   * @return in SI units
   */
  public double value(InfluenceLine line, double lead, Side side) {
    double sum = line.base();
    for (Wheel wheel : wheels) {
      double place = line.nearCorner(lead - wheel.behind());
      if (isOn(line, place, side)) {
        sum += wheel.force() * line.unit(place, side);
      }
    }
    return sum;
  }

  private static boolean isOn(InfluenceLine line, double place, Side side) {
    return side == Side.BEFORE
        ? place > 0 && place <= line.length()
        : place >= 0 && place < line.length();
  }

  private boolean someAreOn(InfluenceLine line, double lead, Side side) {
    return wheels.stream()
        .anyMatch(wheel -> isOn(line, line.nearCorner(lead - wheel.behind()), side));
  }

  /** The sum is made of straight pieces too: it is extreme where some wheel is at some corner. */
  Passage over(InfluenceLine line, int sense) {
    double rounding = rounding(line);
    double best = Double.NEGATIVE_INFINITY;
    double place = 0;
    Side side = Side.AFTER;
    for (double corner : line.corners()) {
      for (Wheel wheel : wheels) {
        double lead = corner + wheel.behind();
        for (Side one : List.of(Side.BEFORE, Side.AFTER)) {
          double value = sense * value(line, lead, one);
          boolean better = value > best + rounding || (value >= best - rounding && lead < place);
          if (better && someAreOn(line, lead, one)) {
            best = Math.max(value, best);
            place = lead;
            side = one;
          }
        }
      }
    }
    Side other = side == Side.BEFORE ? Side.AFTER : Side.BEFORE;
    double value = value(line, place, side);
    boolean jumps =
        someAreOn(line, place, other) && Math.abs(value - value(line, place, other)) > rounding;
    double lead = place;
    return new Passage(
        new Extreme(value, place, jumps ? Optional.of(side) : Optional.empty()),
        wheels.stream().map(wheel -> line.nearCorner(lead - wheel.behind())).toList());
  }

  /** What is none among answers of this size. */
  private double rounding(InfluenceLine line) {
    double force = wheels.stream().mapToDouble(wheel -> Math.abs(wheel.force())).sum();
    return InfluenceLine.ROUNDING * (Math.abs(line.base()) + force * line.largest());
  }
}
