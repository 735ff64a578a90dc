package bellcrank.statics.strength;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Buckling of a stretch of a member, from the greatest compression and moment along it. Where its
 * bars differ, the weakest of them is taken for the whole way.
 */
final class ColumnChecking extends Checking<ColumnDemand> {

  private final ColumnEnds ends;
  private final int[] bars;
  private final double length;
  private final List<Sized> sized;
  private final int count;

  ColumnChecking(
      ColumnEnds ends,
      List<Integer> bars,
      double length,
      List<Sized> sized,
      int count,
      Rule<ColumnDemand> rule) {
    super(ends.part(), what(ends, rule.check()), rule);
    this.ends = ends;
    this.bars = bars.stream().mapToInt(Integer::intValue).toArray();
    this.length = length;
    this.sized = List.copyOf(sized);
    this.count = count;
  }

  /** The check with the stretch that it is made for. */
  static String what(ColumnEnds ends, Check<?> check) {
    return check.name() + " from " + ends.from().orElseThrow() + " to " + ends.to().orElseThrow();
  }

  @Override
  Factor factor(ColumnDemand demand) {
    return rule().factor(demand.sized().material());
  }

  @Override
  void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple) {
    for (int bar : bars) {
      to.mixBar(bar, none, one, multiple);
    }
  }

  @Override
  Optional<String> open(CarriedForces state) {
    return Arrays.stream(bars).boxed().flatMap(bar -> state.barOpen(bar).stream()).findFirst();
  }

  @Override
  ColumnDemand worst(CarriedForces state) {
    double compression = 0;
    double moment = 0;
    for (int bar : bars) {
      BarLine line = state.bar(bar);
      for (int piece = 0; piece < line.pieces(); piece++) {
        for (int which = 0; which < (line.isEven(piece) ? 2 : 5); which++) {
          double at =
              switch (which) {
                case 0 -> line.start(piece);
                case 1 -> line.end(piece);
                case 2 -> line.stillNormal(piece);
                default -> line.still(piece, 0, which - 3);
              };
          compression = Math.max(compression, -line.normal(piece, at));
          moment = Math.max(moment, Math.abs(line.moment(piece, at)));
        }
      }
    }
    ColumnDemand worst = demand(compression, moment, sized.get(0));
    double most = sized.size() > 1 ? used(worst) : 0;
    for (int k = 1; k < sized.size(); k++) {
      ColumnDemand other = demand(compression, moment, sized.get(k));
      double share = used(other);
      if (share > most) {
        worst = other;
        most = share;
      }
    }
    return worst;
  }

  private ColumnDemand demand(double compression, double moment, Sized one) {
    return new ColumnDemand(compression / count, moment / count, length, ends, one);
  }
}
