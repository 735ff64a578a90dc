package bellcrank.statics.strength;

import java.util.List;
import java.util.Optional;

/** Buckling of a stretch of a member, from the greatest compression and moment along it. */
final class ColumnChecking extends Checking<ColumnDemand> {

  private final ColumnEnds ends;
  private final List<Integer> bars;
  private final double length;
  private final Sized sized;
  private final int count;

  ColumnChecking(
      ColumnEnds ends,
      List<Integer> bars,
      double length,
      Sized sized,
      int count,
      Rule<ColumnDemand> rule) {
    super(ends.part(), rule.check().name(), rule);
    this.ends = ends;
    this.bars = List.copyOf(bars);
    this.length = length;
    this.sized = sized;
    this.count = count;
  }

  @Override
  Optional<String> open(Carried state) {
    return bars.stream().flatMap(bar -> state.barOpen(bar).stream()).findFirst();
  }

  @Override
  ColumnDemand worst(Carried state) {
    double compression = 0;
    double moment = 0;
    for (int bar : bars) {
      BarLine line = state.bar(bar);
      for (int piece = 0; piece < line.pieces(); piece++) {
        for (int which = 0; which < 4; which++) {
          double at =
              switch (which) {
                case 0 -> line.start(piece);
                case 1 -> line.end(piece);
                default -> line.still(piece, 0, which - 2);
              };
          compression = Math.max(compression, -line.normal(piece, at));
          moment = Math.max(moment, Math.abs(line.moment(piece, at)));
        }
      }
    }
    return new ColumnDemand(compression / count, moment / count, length, ends, sized);
  }
}
