package bellcrank.statics.strength;

import bellcrank.statics.device.Bar;
import java.util.Locale;
import java.util.Optional;

/**
 * A check at every cut of a bar; the cut that is used most counts.
 *
 * <p>Candidates are the ends of the pieces, where the stress of either face has no slope, and where
 * the shear force has none. For the stresses of the rules that come with the library nothing worse
 * lies between them.
 */
final class BarChecking extends Checking<BarDemand> {

  private final Bar bar;
  private final int index;
  private final Sized sized;
  private final int count;
  private final double topWeight;
  private final double bottomWeight;

  BarChecking(String member, Bar bar, int index, Sized sized, int count, Rule<BarDemand> rule) {
    super(member, rule.check().name() + " of " + bar.start() + "–" + bar.end(), rule);
    this.bar = bar;
    this.index = index;
    this.sized = sized;
    this.count = count;
    Section section = sized.section();
    topWeight = -section.inertia() / (section.area() * section.top());
    bottomWeight = section.inertia() / (section.area() * section.bottom());
  }

  @Override
  Optional<String> open(Carried state) {
    return state.barOpen(index);
  }

  private BarDemand at(BarLine line, int piece, double at) {
    return new BarDemand(
        line.normal(piece, at) / count,
        line.shear(piece, at) / count,
        line.moment(piece, at) / count,
        sized);
  }

  /** Goes over the candidates; the place of the worst one and what it carries. */
  private Spot search(Carried state) {
    BarLine line = state.bar(index);
    Spot worst = new Spot(line.start(0), at(line, 0, line.start(0)), -1);
    for (int piece = 0; piece < line.pieces(); piece++) {
      worst = worse(worst, line, piece, line.start(piece));
      worst = worse(worst, line, piece, line.end(piece));
      worst = worse(worst, line, piece, line.stillShear(piece));
      for (int which = 0; which < 2; which++) {
        worst = worse(worst, line, piece, line.still(piece, topWeight, which));
        worst = worse(worst, line, piece, line.still(piece, bottomWeight, which));
      }
    }
    return worst;
  }

  private Spot worse(Spot best, BarLine line, int piece, double at) {
    BarDemand demand = at(line, piece, at);
    double share = rule().law().lacks(demand).isPresent() ? 0 : used(demand);
    return share > best.share() ? new Spot(at, demand, share) : best;
  }

  /** A place on the bar. */
  private record Spot(double at, BarDemand demand, double share) {}

  @Override
  BarDemand worst(Carried state) {
    return search(state).demand();
  }

  @Override
  String place(Carried state) {
    double at = search(state).at();
    BarLine line = state.bar(index);
    if (at <= line.start(0)) {
      return "at " + bar.start();
    }
    if (at >= line.end(line.pieces() - 1)) {
      return "at " + bar.end();
    }
    return String.format(Locale.ROOT, "%.3g m from %s towards %s", at, bar.start(), bar.end());
  }
}
