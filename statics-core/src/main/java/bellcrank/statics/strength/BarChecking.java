package bellcrank.statics.strength;

import bellcrank.statics.device.Bar;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A check at every cut of a bar; the cut that is used most counts, and one that cannot be checked
 * before all others.
 *
 * <p>Candidates are the ends of the pieces, where the stress of either face has no slope, where the
 * shear force has none and where the normal force changes its sign. For the stresses of the rules
 * that come with the library nothing worse lies between them.
 */
final class BarChecking extends Checking<BarDemand> {

  private final Bar bar;
  private final int index;
  private final Sized sized;
  private final int count;

  /** How much the normal force weighs against the moment in the stress of a face. */
  private final double[] weights;

  BarChecking(String member, Bar bar, int index, Sized sized, int count, Rule<BarDemand> rule) {
    super(member, what(rule.check(), bar), rule);
    this.bar = bar;
    this.index = index;
    this.sized = sized;
    this.count = count;
    Section section = sized.section();
    double top = -section.inertia() / (section.area() * section.top());
    double bottom = section.inertia() / (section.area() * section.bottom());
    weights =
        FaceLaw.axialWeights(sized.material()).stream()
            .flatMap(weight -> Stream.of(top * weight, bottom * weight))
            .mapToDouble(Double::doubleValue)
            .toArray();
  }

  @Override
  void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple) {
    to.mixBar(index, none, one, multiple);
  }

  @Override
  Optional<String> open(CarriedForces state) {
    return state.barOpen(index);
  }

  /** The check with the bar that it is made for. */
  static String what(Check<BarDemand> check, Bar bar) {
    return check.name() + " of " + bar.start() + "–" + bar.end();
  }

  /** Where axial strengths differ, as along the grain of timber, the weighted stress has bends. */
  @Override
  boolean isConvex() {
    return super.isConvex() && weights.length == 2;
  }

  @Override
  Factor factor(BarDemand demand) {
    return rule().factor(sized.material());
  }

  private BarDemand at(BarLine line, int piece, double at) {
    return new BarDemand(
        line.normal(piece, at) / count,
        line.shear(piece, at) / count,
        line.moment(piece, at) / count,
        sized);
  }

  /** Goes over the candidates; the place of the worst one and what it carries. */
  private Spot search(CarriedForces state) {
    BarLine line = state.bar(index);
    Spot worst = new Spot(line.start(0), at(line, 0, line.start(0)), -1);
    for (int piece = 0; piece < line.pieces(); piece++) {
      worst = worse(worst, line, piece, line.start(piece));
      worst = worse(worst, line, piece, line.end(piece));
      if (line.isEven(piece)) {
        continue;
      }
      worst = worseWithin(worst, line, piece, line.stillShear(piece));
      for (int which = 0; which < 2; which++) {
        worst = worseWithin(worst, line, piece, line.noNormal(piece, which));
        for (double weight : weights) {
          worst = worseWithin(worst, line, piece, line.still(piece, weight, which));
        }
      }
    }
    return worst;
  }

  /** The piece's start stands for no such place within it. */
  private Spot worseWithin(Spot best, BarLine line, int piece, double at) {
    return at == line.start(piece) ? best : worse(best, line, piece, at);
  }

  private Spot worse(Spot best, BarLine line, int piece, double at) {
    BarDemand demand = at(line, piece, at);
    double share = used(demand);
    return share > best.share() ? new Spot(at, demand, share) : best;
  }

  /** A place on the bar. */
  private record Spot(double at, BarDemand demand, double share) {}

  @Override
  BarDemand worst(CarriedForces state) {
    return search(state).demand();
  }

  @Override
  double utilisation(CarriedForces state) {
    Spot worst = search(state);
    return worst.share() < 0 ? used(worst.demand()) : worst.share();
  }

  @Override
  String place(CarriedForces state) {
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
