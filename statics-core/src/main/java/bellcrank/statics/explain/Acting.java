package bellcrank.statics.explain;

import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** What acts on a cut: unknowns with what one unit does, and given loads. */
record Acting(
    BitSet cut,
    List<Force> unknowns,
    List<Wrench> loads,
    List<Point> places,
    boolean isParticle,
    String key) {

  /** One unknown on the cut. */
  record Force(int number, Wrench wrench) {}

  Acting(Picture picture, BitSet cut) {
    this(
        cut,
        new ArrayList<>(),
        new ArrayList<>(),
        new ArrayList<>(),
        cut.cardinality() == 1 && picture.particles().get(cut.nextSetBit(0)),
        String.join("+", picture.names(cut)));
    for (int number : picture.cutBy(cut)) {
      Wrench wrench = picture.wrench(number, cut);
      if (!wrench.isNothing(Candidates.ZERO, picture.size())) {
        unknowns.add(new Force(number, wrench));
        picture.links().get(number).forEach(this::addPlaces);
      }
    }
    for (KnownLoad load : picture.loads()) {
      Wrench wrench = picture.loadOn(load, cut);
      if (wrench.size() > 0) {
        loads.add(wrench);
      }
    }
  }

  private void addPlaces(Link link) {
    boolean first = link.body() >= 0 && cut.get(link.body());
    boolean second = link.other() >= 0 && cut.get(link.other());
    if (first != second) {
      Point at = first ? link.at() : link.otherAt();
      if (!places.contains(at)) {
        places.add(at);
      }
    }
  }
}
