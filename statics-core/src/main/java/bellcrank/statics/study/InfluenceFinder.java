package bellcrank.statics.study;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Stretch;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Finds an influence line from balances with the load alone. A load on a rigid member acts on all
 * else through its force and its moment, which grows evenly along a straight leg; so an answer that
 * is a sum of forces can only bend or jump where the load passes a cut, a point of the member, or
 * on to another member. Two balances make a piece, a third one between them proves it.
 */
final class InfluenceFinder {

  /** Share of the largest ordinate by which a balance between may be off a straight piece. */
  private static final double STRAIGHT = 1e-9;

  /** Places of a piece at which a balance is made, in shares of it; its ends may be jumps. */
  private static final double NEAR = 0.2;

  private static final double FAR = 0.8;

  /** The place that proves a piece; not in the middle, where much would not show. */
  private static final double PROOF = 0.37;

  /** Pieces shorter than this share of the way are none. */
  private static final double SHORTEST = 1e-9;

  private static final int DEEPEST = 30;

  /** More pieces than this belong to no sum of forces: each unknown corner makes some 60. */
  private static final int MOST_PIECES = 2000;

  /**
   * An answer of a newton that is smaller, in N or in N times the length of the way, is rounding;
   * it is not looked at whether that is straight.
   */
  private static final double ROUNDING = 1e-13;

  private final MovingLoad moving;
  private final Ask ask;
  private final LoadCase alone;

  /** The force with which balances are made, so that rounding is the same as with the load. */
  private final double force;

  private final List<InfluenceLine.Piece> pieces = new ArrayList<>();
  private double largest;
  private double rounding;

  /** Part of a leg, by distances along the whole way in m. */
  private record Part(int leg, double from, double to) {

    double at(double share) {
      return from + share * (to - from);
    }
  }

  /** Why there is no line, on the way of the search. */
  private static final class NoLine extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Answer.Unanswered why;

    NoLine(Answer.Unanswered why) {
      super(why.explanation(), null, false, false);
      this.why = why;
    }
  }

  InfluenceFinder(MovingLoad moving, Ask ask) {
    this.moving = moving;
    this.ask = ask;
    alone = moving.alone();
    force = moving.size() == 0 ? 1 : Math.abs(moving.size());
  }

  Influence find() {
    try {
      Answer.Value without = value(Balance.of(moving.device(0), moving.without(), moving.pose()));
      rounding =
          without.dimension().equals(Dimension.MOMENT) ? ROUNDING * moving.length() : ROUNDING;
      List<Part> parts = parts();
      for (Part part : parts) {
        // a part on which the answer is nothing but rounding is measured by what it is elsewhere
        largest = Math.max(largest, Math.abs(unit(part.leg, part.at(PROOF))));
      }
      for (Part part : parts) {
        piece(part, 0);
      }
      InfluenceLine line =
          new InfluenceLine(ask, without.dimension(), pieces, without.si(), moving.size());
      prove(line);
      return line;
    } catch (NoLine none) {
      return new Influence.None(ask, none.why);
    }
  }

  private Answer.Value value(Balance balance) {
    Answer answer = balance.answer(ask);
    if (answer instanceof Answer.Value value) {
      return value;
    }
    throw new NoLine(
        answer instanceof Answer.Unanswered open ? open : noSum("it is answered by no number"));
  }

  private static Answer.Unanswered noSum(String why) {
    return new Answer.Unanswered(Answer.Reason.NOT_DEFINED, why);
  }

  /** The answer per newton with nothing else acting. */
  private double unit(int leg, double place) {
    Device device = moving.device(leg, place, force);
    return value(Balance.of(device, alone, moving.pose())).si() / force;
  }

  private void piece(Part part, int depth) {
    double near = part.at(NEAR);
    double far = part.at(FAR);
    double first = unit(part.leg, near);
    double last = unit(part.leg, far);
    double slope = (last - first) / (far - near);
    double between = part.at(PROOF);
    double there = unit(part.leg, between);
    largest =
        Math.max(largest, Math.max(Math.abs(first), Math.max(Math.abs(last), Math.abs(there))));
    double off = Math.abs(first + slope * (between - near) - there);
    if (off <= Math.max(STRAIGHT * largest, rounding)) {
      pieces.add(
          new InfluenceLine.Piece(
              part.from,
              part.to,
              first - slope * (near - part.from),
              last + slope * (part.to - far)));
    } else if (depth < DEEPEST && pieces.size() < MOST_PIECES) {
      double middle = part.at(0.5);
      piece(new Part(part.leg, part.from, middle), depth + 1);
      piece(new Part(part.leg, middle, part.to), depth + 1);
    } else if (part.to - part.from > SHORTEST * moving.length()) {
      throw new NoLine(noSum("it does not grow evenly with the place, so it is no sum of forces"));
    }
  }

  /** Parts of the way between places where the answer may bend or jump. */
  private List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    for (int leg = 0; leg < moving.way().size(); leg++) {
      double last = moving.stops().get(leg);
      for (double next : stops(leg)) {
        if (next - last > SHORTEST * moving.length()) {
          parts.add(new Part(leg, last, next));
          last = next;
        }
      }
    }
    return parts;
  }

  /** Places on a leg where the answer may bend or jump, with its end. */
  private SortedSet<Double> stops(int leg) {
    MovingLoad.Leg own = moving.way().get(leg);
    Device device = moving.device();
    double start = moving.stops().get(leg);
    double end = moving.stops().get(leg + 1);
    SortedSet<Double> stops = new TreeSet<>(List.of(end));
    Point from = device.point(own.from());
    Direction along = Direction.from(from, device.point(own.to()));
    Member member = (Member) device.body(own.member()).orElseThrow();
    List<Point> places = new ArrayList<>();
    for (Bar bar : member.bars()) {
      places.add(device.point(bar.start()));
      places.add(device.point(bar.end()));
    }
    for (String point : device.points().keySet()) {
      if (device.bodiesAt(point).contains(own.member())) {
        places.add(device.point(point));
      }
    }
    ask.stretch().ifPresent(one -> places.addAll(cut(device, one)));
    for (Point place : places) {
      double at = start + from.to(place).dot(along.times(1));
      if (at > start && at < end) {
        stops.add(at);
      }
    }
    return stops;
  }

  private static List<Point> cut(Device device, Stretch stretch) {
    OptionalDouble distance = stretch.distance();
    if (distance.isEmpty()) {
      return List.of();
    }
    Point start = device.point(stretch.start());
    Direction along = Direction.from(start, device.point(stretch.end()));
    return List.of(start.plus(along.times(distance.getAsDouble())));
  }

  /** Holds the line against balances with all loads; a size or a direction would not fit. */
  private void prove(InfluenceLine line) {
    for (InfluenceLine.Piece piece : line.pieces()) {
      double place = piece.from() + PROOF * (piece.to() - piece.from());
      double told = line.base() + line.load() * piece.at(place);
      double found = value(moving.balance(place)).si();
      double size = Math.abs(line.base()) + Math.abs(line.load()) * largest;
      if (Math.abs(told - found) > STRAIGHT * size) {
        throw new NoLine(noSum("it is no sum of forces, so the effects of loads do not add up"));
      }
    }
  }
}
