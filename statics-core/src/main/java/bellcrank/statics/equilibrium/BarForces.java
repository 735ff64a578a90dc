package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Side;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The forces inside one bar of a member: normal force N, shear force V and bending moment M at each
 * distance s from the bar's start. Immutable.
 *
 * <pre>
 *   left          V ↑        M stretches
 *   start ●━━━━━━━━━┥ → N    the right-hand
 *   right    s                side
 * </pre>
 *
 * <p>Cut the bar and look at the part before the cut, on the side of the bar's start. N is positive
 * if the bar is pulled. V is the sum of what acts on that part, square to the bar and to the left
 * of its direction. M is positive where it stretches the right-hand side of the bar. For a bar
 * drawn from left to right these are the usual signs: V is positive where the left part is pushed
 * up, M where the bar sags. So dM/ds = V and dV/ds = −w, with the spread load w to the right of the
 * bar, which is down for a bar drawn from left to right.
 *
 * <p>Values are for all equal parts of the member together. A connection acts at its point: the
 * width of a base or the length of a clamp is not regarded. A sheave hands the forces of its rope
 * on at its centre.
 *
 * <p>Signs are shown in figures on <a
 * href="{@docRoot}/bellcrank.statics/bellcrank/statics/device/doc-files/signs.html#inside">the page
 * of signs</a>.
 */
public final class BarForces {

  /** Share of the largest force (times the size, for a moment) below which a value is none. */
  private static final double ROUNDING = 1e-10;

  /** Part of the bar's length within which two places are one. */
  private static final double SAME_PLACE = 1e-9;

  private final Bar bar;
  private final Point start;
  private final Point end;
  private final List<Piece> pieces;
  private final List<Place> places;
  private final double forceScale;
  private final double momentScale;

  /**
   * Forces.
   *
   * @param start place of the start in the pose
   * @param end place of the end in the pose
   * @param forceScale the largest force, in N
   * @param size of the device, in m
   */
  BarForces(
      Bar bar,
      Point start,
      Point end,
      List<Piece> pieces,
      List<Place> places,
      double forceScale,
      double size) {
    this.bar = bar;
    this.start = start;
    this.end = end;
    this.pieces = List.copyOf(pieces);
    this.places = List.copyOf(places);
    this.forceScale = forceScale;
    momentScale = forceScale * size;
  }

  /**
   * The bar.
   *
   * @return names of its ends
   */
  public Bar bar() {
    return bar;
  }

  /**
   * Where it starts.
   *
   * @return in the pose, world coordinates
   */
  public Point start() {
    return start;
  }

  /**
   * Where it ends.
   *
   * @return in the pose, world coordinates
   */
  public Point end() {
    return end;
  }

  /**
   * Its length.
   *
   * @return in m
   */
  public double length() {
    return pieces.get(pieces.size() - 1).end();
  }

  /**
   * Its pieces in order; they cover it without gaps.
   *
   * @return one or more
   */
  public List<Piece> pieces() {
    return pieces;
  }

  /**
   * Where forces enter the bar, in order.
   *
   * @return may be empty
   */
  public List<Place> places() {
    return places;
  }

  /**
   * Why nothing at all can be told.
   *
   * @return a sentence; empty if something is told somewhere
   */
  public Optional<String> unresolved() {
    for (Piece piece : pieces) {
      for (InsideForce force : InsideForce.values()) {
        if (piece.whyNot(force).isEmpty()) {
          return Optional.empty();
        }
      }
    }
    return unresolved(InsideForce.MOMENT);
  }

  /**
   * Why a force cannot be told all along the bar.
   *
   * @param force which force
   * @return a sentence about the first piece that is open; empty if it is told all along
   */
  public Optional<String> unresolved(InsideForce force) {
    return whyNot(force).map(Answer.Unanswered::explanation);
  }

  Optional<Answer.Unanswered> whyNot(InsideForce force) {
    return pieces.stream().flatMap(piece -> piece.whyNot(force).stream()).findFirst();
  }

  /**
   * The normal force at a place.
   *
   * @param at distance from the bar's start in m, 0 to its length
   * @param side on which side of that place; at an end of the bar always the one within
   * @return in N, tension positive
   * @throws ModelException if the place is beyond the bar or the force cannot be told there
   */
  public double normal(double at, Side side) {
    return value(InsideForce.NORMAL, at, side);
  }

  /**
   * The shear force at a place.
   *
   * @param at distance from the bar's start in m, 0 to its length
   * @param side on which side of that place; at an end of the bar always the one within
   * @return in N
   * @throws ModelException if the place is beyond the bar or the force cannot be told there
   */
  public double shear(double at, Side side) {
    return value(InsideForce.SHEAR, at, side);
  }

  /**
   * The bending moment at a place.
   *
   * @param at distance from the bar's start in m, 0 to its length
   * @param side on which side of that place; at an end of the bar always the one within
   * @return in N·m
   * @throws ModelException if the place is beyond the bar or the moment cannot be told there
   */
  public double moment(double at, Side side) {
    return value(InsideForce.MOMENT, at, side);
  }

  /**
   * A force at a place.
   *
   * @param force which force
   * @param at distance from the bar's start in m, 0 to its length
   * @param side on which side of that place; at an end of the bar always the one within
   * @return in N, or in N·m for a moment
   * @throws ModelException if the place is beyond the bar or the force cannot be told there
   */
  public double value(InsideForce force, double at, Side side) {
    return piece(at, side).curve(force).at(at);
  }

  /** The piece at a place, on a side of it. */
  Piece piece(double at, Side side) {
    double near = SAME_PLACE * length();
    if (!(at >= -near && at <= length() + near)) {
      throw new ModelException(
          InternalForces.name(bar), "place in m", at, "0 to " + length() + ", the bar's length");
    }
    for (Piece piece : pieces) {
      if (side == Side.BEFORE ? at <= piece.end() + near : at < piece.end() - near) {
        return piece;
      }
    }
    return pieces.get(pieces.size() - 1);
  }

  /** Whether a force jumps at a place. */
  boolean jumps(InsideForce force, double at) {
    double before = value(force, at, Side.BEFORE);
    return Math.abs(value(force, at, Side.AFTER) - before) > zero(force);
  }

  private double zero(InsideForce force) {
    return ROUNDING * (force == InsideForce.MOMENT ? momentScale : forceScale);
  }

  /**
   * Where a force is greatest and least along the bar: at an end of a piece or where its slope is
   * zero, so nothing is missed.
   *
   * @param force which force
   * @return both
   * @throws ModelException if it cannot be told all along the bar
   */
  public Extremes extremes(InsideForce force) {
    List<Peak> candidates = new ArrayList<>();
    for (Piece piece : pieces) {
      Polynomial curve = piece.curve(force);
      candidates.add(new Peak(piece.start(), Side.AFTER, curve.at(piece.start())));
      for (double place : curve.stationary(piece.start(), piece.end())) {
        candidates.add(new Peak(place, Side.BEFORE, curve.at(place)));
      }
      candidates.add(new Peak(piece.end(), Side.BEFORE, curve.at(piece.end())));
    }
    Peak least = candidates.get(0);
    Peak greatest = candidates.get(0);
    for (Peak one : candidates) {
      least = one.value() < least.value() - zero(force) ? one : least;
      greatest = one.value() > greatest.value() + zero(force) ? one : greatest;
    }
    return new Extremes(least, greatest);
  }

  /**
   * Where a force is zero, or jumps from one sign to the other, in order. Where it is zero over a
   * whole piece, the two ends of the piece are told.
   *
   * @param force which force
   * @return distances from the bar's start in m
   * @throws ModelException if it cannot be told all along the bar
   */
  public List<Double> zeros(InsideForce force) {
    double zero = zero(force);
    List<Double> zeros = new ArrayList<>();
    double last = 0;
    for (Piece piece : pieces) {
      Polynomial curve = piece.curve(force);
      double first = curve.at(piece.start());
      if (Math.abs(last) > zero && Math.abs(first) > zero && last * first < 0) {
        add(zeros, piece.start());
      }
      List<Double> stops = new ArrayList<>(List.of(piece.start()));
      stops.addAll(curve.stationary(piece.start(), piece.end()));
      stops.add(piece.end());
      boolean flat = stops.stream().allMatch(place -> Math.abs(curve.at(place)) <= zero);
      for (int i = 0; i < stops.size(); i++) {
        double place = stops.get(i);
        boolean end = i == 0 || i == stops.size() - 1;
        if (Math.abs(curve.at(place)) <= zero && (end || !flat)) {
          add(zeros, place);
        } else if (i > 0) {
          crossing(curve, stops.get(i - 1), place, zero, zeros);
        }
      }
      last = curve.at(piece.end());
    }
    return List.copyOf(zeros);
  }

  private void add(List<Double> zeros, double place) {
    if (zeros.isEmpty() || place - zeros.get(zeros.size() - 1) > SAME_PLACE * length()) {
      zeros.add(place);
    }
  }

  /** Halves between two places where the curve rises or falls all the way. */
  private void crossing(Polynomial curve, double from, double to, double zero, List<Double> zeros) {
    double first = curve.at(from);
    if (Math.abs(first) <= zero || first * curve.at(to) > 0) {
      return;
    }
    double low = from;
    double high = to;
    for (double middle = (low + high) / 2;
        middle > low && middle < high;
        middle = (low + high) / 2) {
      if (curve.at(middle) * first > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    add(zeros, high);
  }
}
