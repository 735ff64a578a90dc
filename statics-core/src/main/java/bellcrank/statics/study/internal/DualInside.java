package bellcrank.statics.study.internal;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Side;
import bellcrank.statics.device.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads forces inside a member, with rates: at a place, or where they are largest. */
final class DualInside {

  private static final double SAME = 1e-9;
  private static final Optional<Dual> UNCLEAR = Optional.of(new Dual(Double.NaN, Double.NaN));

  private final DualBars bars;
  private final Member member;

  DualInside(DualBars bars, Member member) {
    this.bars = bars;
    this.member = member;
  }

  Optional<Dual> read(Ask ask) {
    Measure force = force(ask.measure());
    if (ask.stretch().isEmpty()) {
      return isPeak(ask.measure()) ? peak(member.bars(), force) : Optional.empty();
    }
    Stretch stretch = ask.stretch().get();
    Bar along = new Bar(stretch.start(), stretch.end());
    boolean reversed = !member.bars().contains(along);
    Bar bar = reversed ? new Bar(stretch.end(), stretch.start()) : along;
    if (!member.bars().contains(bar)) {
      return Optional.empty();
    }
    double sign = reversed && force == Measure.MOMENT ? -1 : 1;
    if (stretch.distance().isPresent()) {
      return at(bar, force, stretch, reversed).map(value -> value.times(sign));
    }
    return isPeak(ask.measure())
        ? peak(List.of(bar), force).map(value -> value.times(sign))
        : Optional.empty();
  }

  private static boolean isPeak(Measure measure) {
    return measure == Measure.PEAK_NORMAL
        || measure == Measure.PEAK_SHEAR
        || measure == Measure.PEAK_MOMENT;
  }

  private static Measure force(Measure measure) {
    return switch (measure) {
      case NORMAL, PEAK_NORMAL, PLACE_OF_PEAK_NORMAL -> Measure.NORMAL;
      case SHEAR, PEAK_SHEAR, PLACE_OF_PEAK_SHEAR -> Measure.SHEAR;
      default -> Measure.MOMENT;
    };
  }

  private Optional<Dual> at(Bar bar, Measure force, Stretch stretch, boolean reversed) {
    Dual length = bars.length(bar);
    double stated = stretch.distance().orElseThrow();
    double distance = Math.min(length.value(), stated);
    if (stated >= length.value() * (1 - SAME) && length.rate() != 0) {
      // a place at the end stays at the end of a bar that becomes shorter, but not of a longer one
      return UNCLEAR;
    }
    Dual way = reversed ? length.minus(Dual.of(distance)) : Dual.of(distance);
    DualVector cut = place(bar, way);
    Optional<Side> side = stretch.side().map(one -> reversed ? one.opposite() : one);
    DualBars.Piece before = bars.piece(bar, way.value(), side.orElse(Side.BEFORE));
    DualBars.Piece after = bars.piece(bar, way.value(), side.orElse(Side.AFTER));
    Optional<Dual> one = value(before, cut, force);
    Optional<Dual> other = value(after, cut, force);
    if (one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    return alike(one.get(), other.get()) ? one : UNCLEAR;
  }

  private static boolean alike(Dual one, Dual other) {
    double size = Math.max(Math.abs(one.rate()), Math.abs(other.rate()));
    return Math.abs(one.rate() - other.rate()) <= SAME * size;
  }

  private DualVector place(Bar bar, Dual way) {
    DualBars.Piece first = bars.pieces(bar).get(0);
    return bars.place(first.from()).plus(bars.along(bar).times(way));
  }

  private Optional<Dual> value(DualBars.Piece piece, DualVector cut, Measure force) {
    DualVector along = bars.along(piece.bar());
    return bars.before(piece, cut)
        .map(
            sum ->
                switch (force) {
                  case NORMAL -> sum.force().dot(along).negative();
                  case SHEAR -> along.cross(sum.force());
                  default -> sum.moment().negative();
                });
  }

  /**
   * The largest in size; ends of pieces move with their nodes, and at the top a shift is nothing.
   */
  private Optional<Dual> peak(List<Bar> among, Measure force) {
    List<Dual> candidates = new ArrayList<>();
    for (Bar bar : among) {
      for (DualBars.Piece piece : bars.pieces(bar)) {
        if (!candidates(piece, force, candidates)) {
          return Optional.empty();
        }
      }
    }
    Dual largest = Dual.ZERO;
    for (Dual one : candidates) {
      largest = Math.abs(one.value()) > Math.abs(largest.value()) ? one : largest;
    }
    for (Dual one : candidates) {
      boolean tie = Math.abs(one.value()) >= Math.abs(largest.value()) * (1 - SAME);
      boolean same = one.value() * largest.value() >= 0 && alike(one, largest);
      if (tie && !same) {
        return UNCLEAR;
      }
    }
    return candidates.isEmpty() ? UNCLEAR : Optional.of(largest);
  }

  private boolean candidates(DualBars.Piece piece, Measure force, List<Dual> to) {
    Bar bar = piece.bar();
    Optional<Dual> first = value(piece, bars.place(piece.from()), force);
    Optional<Dual> last = value(piece, bars.place(piece.to()), force);
    if (first.isEmpty() || last.isEmpty()) {
      return false;
    }
    to.add(first.get());
    to.add(last.get());
    double start = bars.way(bar, bars.place(piece.from())).value();
    double length = bars.way(bar, bars.place(piece.to())).value() - start;
    double[] at = new double[4];
    for (int k = 0; k < at.length; k++) {
      at[k] =
          value(piece, place(bar, Dual.of(start + length * k / 3)), force).orElseThrow().value();
    }
    for (double share : tops(at)) {
      to.add(value(piece, place(bar, Dual.of(start + length * share)), force).orElseThrow());
    }
    return true;
  }

  /** Where a cubic through four values at even distances is level, as shares of the way. */
  private static List<Double> tops(double[] at) {
    double first = at[1] - at[0];
    double second = at[2] - 2 * at[1] + at[0];
    double third = at[3] - 3 * at[2] + 3 * at[1] - at[0];
    // Newton's form in t = 3·share: slope first + second·(2t − 1)/2 + third·(3t² − 6t + 2)/6
    double a = third / 2;
    double b = second - third;
    double c = first - second / 2 + third / 3;
    double size = Math.max(Math.abs(at[0]), Math.max(Math.abs(at[1]), Math.abs(at[2])));
    double nothing = 1e-12 * Math.max(size, Math.abs(at[3]));
    List<Double> all = new ArrayList<>();
    if (Math.abs(a) <= nothing) {
      if (Math.abs(b) > nothing) {
        within(all, -c / b);
      }
      return all;
    }
    double root = b * b - 4 * a * c;
    if (root >= 0) {
      double sum = -(b + Math.copySign(Math.sqrt(root), b)) / 2;
      within(all, sum / a);
      if (sum != 0) {
        within(all, c / sum);
      }
    }
    return all;
  }

  private static void within(List<Double> all, double t) {
    if (t > 0 && t < 3) {
      all.add(t / 3);
    }
  }
}
