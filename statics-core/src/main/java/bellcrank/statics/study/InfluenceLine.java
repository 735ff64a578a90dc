package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Side;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The influence line of an answer: what one newton of a moving load adds to it, by the place of the
 * load. Members are rigid and answers of this kind are sums of forces, so it is made of straight
 * pieces and is exact. It may jump, where the load passes a cut or goes over to another bar.
 *
 * @param ask what was asked
 * @param dimension what kind of quantity the answer is; the line is that per newton
 * @param pieces straight pieces in order; they cover the way of the load without gaps
 * @param base the answer without the moving load, in SI units
 * @param load size of the moving load with its factor, in N
 */
public record InfluenceLine(
    Ask ask, Dimension dimension, List<Piece> pieces, double base, double load)
    implements Influence {

  /** Share of the largest ordinate below which a jump is none. */
  static final double ROUNDING = 1e-9;

  /**
   * Copies the list.
   *
   * @param ask what was asked
   * @param dimension what kind of quantity the answer is
   * @param pieces straight pieces in order
   * @param base the answer without the moving load, in SI units
   * @param load size of the moving load, in N
   */
  public InfluenceLine {
    pieces = List.copyOf(pieces);
  }

  /**
   * A straight piece.
   *
   * @param from place where it starts, in m from the start of the way
   * @param to place where it ends, in m
   * @param first value just after its start, in SI units per newton
   * @param last value just before its end
   */
  public record Piece(double from, double to, double first, double last) {

    double at(double place) {
      return to > from ? first + (last - first) * (place - from) / (to - from) : first;
    }
  }

  /**
   * An extreme.
   *
   * @param value the answer there in SI units, all other loads in it
   * @param place place of the load, in m from the start of the way
   * @param side where the answer jumps, whether it is reached just before or just after the place;
   *     else empty
   */
  public record Extreme(double value, double place, Optional<Side> side) {}

  /**
   * Length of the way.
   *
   * @return in m
   */
  public double length() {
    return pieces.get(pieces.size() - 1).to();
  }

  /**
   * The ordinate of the line.
   *
   * @param place place of the load in m, 0 to the length of the way
   * @param side whether the load is just before or just after the place, which matters where the
   *     line jumps
   * @return the answer per newton, in SI units
   * @throws ModelException if the place is beyond the way
   */
  public double unit(double place, Side side) {
    double room = ROUNDING * length();
    if (!(place >= -room && place <= length() + room)) {
      throw new ModelException(
          ask.text(), "place in m", place, "0 to " + length() + ", the length of the way");
    }
    for (Piece piece : pieces) {
      if (side == Side.BEFORE ? place <= piece.to() : place < piece.to()) {
        return piece.at(Math.max(piece.from(), place));
      }
    }
    return pieces.get(pieces.size() - 1).last();
  }

  /**
   * The answer with the load at a place and all other loads.
   *
   * @param place place of the load in m, 0 to the length of the way
   * @param side whether the load is just before or just after the place
   * @return in SI units
   * @throws ModelException if the place is beyond the way
   */
  public double value(double place, Side side) {
    return base + load * unit(place, side);
  }

  /**
   * The greatest value of the answer while the load goes its way.
   *
   * @return where and how much; the first place if there are several
   */
  public Extreme greatest() {
    return extreme(1);
  }

  /**
   * The least value of the answer while the load goes its way.
   *
   * @return where and how much; the first place if there are several
   */
  public Extreme least() {
    return extreme(-1);
  }

  private Extreme extreme(int sense) {
    return Train.single(load).over(this, sense).at();
  }

  /**
   * Places where pieces meet, and both ends of the way.
   *
   * @return in m, in ascending order
   */
  public List<Double> corners() {
    List<Double> corners = new ArrayList<>();
    pieces.forEach(piece -> corners.add(piece.from()));
    corners.add(length());
    return List.copyOf(corners);
  }

  /**
   * Whether the line jumps at a place.
   *
   * @param place place in m, 0 to the length of the way
   * @return true if its values just before and just after differ by more than rounding
   * @throws ModelException if the place is beyond the way
   */
  public boolean jumpsAt(double place) {
    return Math.abs(unit(place, Side.AFTER) - unit(place, Side.BEFORE)) > ROUNDING * largest();
  }

  /** The largest ordinate in size. */
  double largest() {
    double largest = 0;
    for (Piece piece : pieces) {
      largest = Math.max(largest, Math.max(Math.abs(piece.first()), Math.abs(piece.last())));
    }
    return largest;
  }

  /** The corner that a place is at but for rounding, else the place. */
  double nearCorner(double place) {
    for (double corner : corners()) {
      if (Math.abs(corner - place) <= ROUNDING * length()) {
        return corner;
      }
    }
    return place;
  }

  /**
   * The area of the line where it is above zero: times the intensity of a spread load, what that
   * adds to the answer at most, wherever it lies.
   *
   * @return in SI units per newton times m, 0 or more
   */
  public double areaAbove() {
    return area(1);
  }

  /**
   * The area of the line where it is below zero.
   *
   * @return in SI units per newton times m, 0 or less
   */
  public double areaBelow() {
    return -area(-1) + 0.0;
  }

  private double area(int sense) {
    double sum = 0;
    for (Piece piece : pieces) {
      double first = sense * piece.first();
      double last = sense * piece.last();
      double length = piece.to() - piece.from();
      if (first * last < 0) {
        // only the part of the triangle on this side of zero
        double above = Math.max(first, last);
        sum += above * above / (Math.abs(first) + Math.abs(last)) * length / 2;
      } else {
        sum += Math.max(0, first + last) * length / 2;
      }
    }
    return sum;
  }
}
