package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Looks for the least and the greatest value of a function over a box. Where each number, the
 * others being anything, only raises or only lowers the function at all places looked at, both lie
 * at corners that are known; otherwise a search is made from several starts.
 */
public final class BoxSearch {

  /** Places are looked at up to this many times unless another bound is stated. */
  public static final int LOOKS = 18000;

  /** Share of the looks that may go into corners: enough for all corners of ten numbers. */
  public static final double FOR_CORNERS = 2.0 / 3;

  /** Looks of a search for both ends. */
  public static final int SEARCH = 6000;

  /** How far beside a place one looks to see whether the function rises, in widths of the box. */
  public static final double BESIDE = 0.0625;

  /** Differences below this share of the largest value are none. */
  public static final double NOISE = 1e-9;

  /** Places within the box at which the sense of each number is looked at. */
  public static final int INNER = 32;

  /** Corners at which the sense is looked at where there are too many for all of them. */
  public static final int SOME_CORNERS = 64;

  /** Starts of a search for each end. */
  public static final int STARTS = 4;

  /** A start is at least this far from any other, in widths of the box. */
  public static final double APART = 0.25;

  private final Looking looking;
  private final int inputs;
  private final double[] stated;
  private final double[] falls;
  private final double[] rises;
  private boolean allCorners;
  private boolean monotone;
  private int exactPlaces;
  private int otherPlaces;
  private List<Looking.Seen> ends = List.of();

  private BoxSearch(Looking looking, double[] stated) {
    this.looking = looking;
    this.stated = stated;
    inputs = stated.length;
    falls = new double[inputs];
    rises = new double[inputs];
  }

  /** The function: a number, or none. */
  @FunctionalInterface
  public interface Function {
    /**
     * The number at a place.
     *
     * @param place the numbers put in; not to be kept
     * @return empty if there is none
     */
    OptionalDouble at(double[] place);

    /**
     * The exact rates at a place, if they are known.
     *
     * @param place the numbers put in; not to be kept
     * @return how fast the function rises with each number; none if one of them is not known
     */
    default double[] rates(double[] place) {
      return new double[0];
    }
  }

  /**
   * Looks.
   *
   * @param low least value of each number
   * @param high greatest value of each, above the least
   * @param stated stated value of each; taken to the nearer end where it is outside
   * @param most how often the function may be asked, 100 or more
   * @param function the function
   * @return what was found
   */
  public static BoxSearch of(
      double[] low, double[] high, double[] stated, int most, Function function) {
    double[] shares = new double[stated.length];
    for (int i = 0; i < shares.length; i++) {
      double share = (stated[i] - low[i]) / (high[i] - low[i]);
      shares[i] = Math.max(0, Math.min(1, share));
    }
    BoxSearch search = new BoxSearch(new Looking(low, high, most, function), shares);
    search.run(most);
    return search;
  }

  private void run(int most) {
    looking.at(stated);
    lookAtCorners((int) (FOR_CORNERS * most));
    for (double[] place : Spot.inner(inputs, INNER)) {
      lookBeside(place);
    }
    ends = ends();
    monotone = isMonotone();
    if (monotone || looking.seen().isEmpty()) {
      return;
    }
    if (inputs == 1) {
      Spot.even(Math.min(looking.left(), SEARCH) / 4).forEach(looking::at);
    }
    int share = Math.min(looking.left(), SEARCH) / 2;
    climb(1, share);
    climb(-1, share);
  }

  private void lookAtCorners(int most) {
    allCorners = inputs < Integer.SIZE - 2 && (long) (inputs + 1) << inputs <= most;
    List<double[]> corners =
        allCorners ? Spot.corners(inputs) : Spot.someCorners(inputs, SOME_CORNERS);
    corners.forEach(this::lookBeside);
  }

  /**
   * Looks at a place and in which sense each number changes the function there: by exact rates, or
   * by a step towards the middle of the box.
   */
  private void lookBeside(double[] place) {
    OptionalDouble here = looking.at(place);
    if (here.isEmpty()) {
      return;
    }
    double[] rates = looking.rates(place);
    if (rates.length == inputs) {
      exactPlaces++;
      for (int i = 0; i < inputs; i++) {
        note(i, BESIDE * rates[i]);
      }
      return;
    }
    otherPlaces++;
    for (int i = 0; i < inputs; i++) {
      double step = place[i] < 0.5 ? BESIDE : -BESIDE;
      double[] beside = place.clone();
      beside[i] += step;
      OptionalDouble there = looking.at(beside);
      if (there.isPresent()) {
        note(i, (there.getAsDouble() - here.getAsDouble()) * Math.signum(step));
      }
    }
  }

  private void note(int input, double rise) {
    falls[input] = Math.min(falls[input], rise);
    rises[input] = Math.max(rises[input], rise);
  }

  private boolean isMonotone() {
    if (looking.missing() > 0 || ends.isEmpty()) {
      return false;
    }
    double noise = noise();
    for (int i = 0; i < inputs; i++) {
      if (falls[i] < -noise && rises[i] > noise) {
        return false;
      }
    }
    double least = looking.best(-1).value();
    double greatest = looking.best(1).value();
    return least >= ends.get(0).value() - noise && greatest <= ends.get(1).value() + noise;
  }

  /** The two corners to which the senses point. A number without effect stays as it is stated. */
  private List<Looking.Seen> ends() {
    double noise = noise();
    double[] least = stated.clone();
    double[] greatest = stated.clone();
    for (int i = 0; i < inputs; i++) {
      if (Math.max(rises[i], -falls[i]) > noise) {
        boolean rising = rises[i] > -falls[i];
        least[i] = rising ? 0 : 1;
        greatest[i] = rising ? 1 : 0;
      }
    }
    if (!allCorners) {
      lookBeside(least);
      lookBeside(greatest);
    }
    OptionalDouble low = looking.at(least);
    OptionalDouble high = looking.at(greatest);
    return low.isPresent() && high.isPresent()
        ? List.of(
            new Looking.Seen(least, low.getAsDouble()),
            new Looking.Seen(greatest, high.getAsDouble()))
        : List.of();
  }

  private double noise() {
    return NOISE * looking.largest();
  }

  private void climb(int sense, int looks) {
    int end = looking.asked() + looks;
    List<double[]> starts = starts(sense);
    for (int k = 0; k < starts.size(); k++) {
      int share = (end - looking.asked()) / (starts.size() - k);
      Climb.from(starts.get(k), sense, share, looking);
    }
  }

  private List<double[]> starts(int sense) {
    List<Looking.Seen> best = new ArrayList<>(looking.seen());
    best.sort(Comparator.comparingDouble(seen -> -sense * seen.value()));
    List<double[]> starts = new ArrayList<>();
    for (Looking.Seen seen : best) {
      boolean apart = starts.stream().allMatch(other -> Spot.distance(other, seen.place()) > APART);
      if (apart && starts.size() < STARTS) {
        starts.add(seen.place());
      }
    }
    return starts;
  }

  /**
   * The place with the least or greatest value and that value.
   *
   * @param greatest which of both
   * @return the numbers, and as the last one the value; empty if nowhere was a value
   */
  public double[] end(boolean greatest) {
    if (looking.seen().isEmpty()) {
      return new double[0];
    }
    Looking.Seen end = monotone ? ends.get(greatest ? 1 : 0) : looking.best(greatest ? 1 : -1);
    double[] place = looking.numbers(end.place());
    double[] all = java.util.Arrays.copyOf(place, place.length + 1);
    all[place.length] = end.value();
    return all;
  }

  /**
   * Whether each number only raises or only lowers the function at all places looked at, and none
   * of them was beyond the two corners to which that points.
   *
   * @return true if so
   */
  public boolean isMonotoneThroughout() {
    return monotone;
  }

  /**
   * In which sense a number changes the function.
   *
   * @param input which number
   * @return 1 if it raises it wherever looked at, −1 if it lowers it, 0 if it does both or neither
   */
  public int sense(int input) {
    double noise = noise();
    boolean rising = rises[input] > noise;
    boolean falling = falls[input] < -noise;
    return rising == falling ? 0 : rising ? 1 : -1;
  }

  /**
   * Whether a number changes the function at all.
   *
   * @param input which number
   * @return false if it did not wherever looked at
   */
  public boolean matters(int input) {
    return Math.max(rises[input], -falls[input]) > noise();
  }

  /**
   * Whether senses were looked at in all corners.
   *
   * @return false if in some only
   */
  public boolean sawAllCorners() {
    return allCorners;
  }

  /**
   * At how many places the senses are those of exact rates.
   *
   * @return 0 or more
   */
  public int exactPlaces() {
    return exactPlaces;
  }

  /**
   * At how many places the senses were looked at by a step.
   *
   * @return 0 or more
   */
  public int otherPlaces() {
    return otherPlaces;
  }

  /**
   * How often the function was asked.
   *
   * @return 1 or more
   */
  public int looks() {
    return looking.asked();
  }
}
