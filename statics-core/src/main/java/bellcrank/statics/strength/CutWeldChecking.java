package bellcrank.statics.strength;

import java.util.Optional;

/** A check of welds that carry what goes through a cut of a bar; both sides of a jump count. */
final class CutWeldChecking extends Checking<WeldDemand> {

  private final FilletWeld weld;
  private final int bar;
  private final double at;
  private final int count;
  private final WeldGroup group;

  CutWeldChecking(FilletWeld weld, double at, int bar, int count, Rule<WeldDemand> rule) {
    super(weld.part(), weld.name(), rule);
    this.weld = weld;
    this.bar = bar;
    this.at = at;
    this.count = count;
    group = WeldGroup.of(weld.lines());
  }

  @Override
  void mix(CarriedForces to, CarriedForces none, CarriedForces one, double multiple) {
    to.mixBar(bar, none, one, multiple);
  }

  @Override
  Optional<String> open(CarriedForces state) {
    return state.barOpen(bar);
  }

  @Override
  WeldDemand worst(CarriedForces state) {
    BarLine line = state.bar(bar);
    WeldDemand before = side(line, line.piece(at, false));
    if (line.piece(at, false) == line.piece(at, true)) {
      return before;
    }
    WeldDemand after = side(line, line.piece(at, true));
    return after.size() > before.size() ? after : before;
  }

  private WeldDemand side(BarLine line, int piece) {
    double normal = line.normal(piece, at) / count;
    double shear = line.shear(piece, at) / count;
    double moment = line.moment(piece, at) / count;
    WeldForces forces = new WeldForces(weld, group);
    if (weld.plane() == FilletWeld.Plane.ACROSS) {
      return forces.ofCut(normal, shear, moment);
    }
    // x along the bar, y to its left: the part beyond the cut pulls with N, pushes with −V
    double couple = moment + normal * group.y() + shear * group.x();
    return forces.inPlane(normal, -shear, couple);
  }
}
