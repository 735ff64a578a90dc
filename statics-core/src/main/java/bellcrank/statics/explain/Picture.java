package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;

/**
 * A device as one draws it for a solution by hand: bodies that can be cut free, what is unknown
 * between them, and given loads. Two-force members are no bodies in it but lines of one unknown.
 * Everything is in the order of names, so the order of parts in the device does not matter.
 *
 * @param bodies names of the bodies; of a pin that is one, {@code pin NAME}
 * @param particles bodies that have no moments: joints and pins
 * @param unknowns what is sought
 * @param links for each unknown what one unit of it does
 * @param loads given loads
 * @param twoForce two-force members
 * @param shares each component of the balance as a multiple of an unknown
 * @param places named places in the pose
 * @param middle middle of the device
 * @param size size of the device in m
 */
record Picture(
    List<String> bodies,
    BitSet particles,
    List<Unknown> unknowns,
    List<List<Link>> links,
    List<KnownLoad> loads,
    List<Step.TwoForceMember> twoForce,
    Map<Ask, Share> shares,
    Map<String, List<Point>> places,
    Point middle,
    double size) {

  /** Number of what is no body that can be cut free. */
  static final int OUTSIDE = -1;

  /** Share of the size of the device within which two places are one. */
  private static final double SAME_PLACE = 1e-9;

  /**
   * A component as a multiple of an unknown.
   *
   * @param unknown number of the unknown
   * @param factor the multiple
   */
  record Share(int unknown, double factor) {}

  /** The same with an unknown that acts on no body. */
  Picture with(Unknown unknown) {
    List<Unknown> more = new ArrayList<>(unknowns);
    more.add(unknown);
    List<List<Link>> all = new ArrayList<>(links);
    all.add(List.of());
    return with(more, all);
  }

  /** The same with an unknown that acts elsewhere. */
  Picture moved(int unknown, Vector by) {
    return with(unknown, links.get(unknown).stream().map(link -> link.moved(by)).toList());
  }

  /** The same with an unknown that acts on no body any more. */
  Picture without(int unknown) {
    return with(unknown, List.of());
  }

  private Picture with(int unknown, List<Link> own) {
    List<List<Link>> all = new ArrayList<>(links);
    all.set(unknown, own);
    return with(unknowns, all);
  }

  private Picture with(List<Unknown> other, List<List<Link>> all) {
    return new Picture(
        bodies,
        particles,
        List.copyOf(other),
        List.copyOf(all),
        loads,
        twoForce,
        shares,
        places,
        middle,
        size);
  }

  /** Unknowns of which something is left on a cut. */
  List<Integer> cutBy(BitSet cut) {
    List<Integer> all = new ArrayList<>();
    for (int k = 0; k < links.size(); k++) {
      for (Link link : links.get(k)) {
        boolean first = link.body() >= 0 && cut.get(link.body());
        boolean second = link.other() >= 0 && cut.get(link.other());
        if (first != second) {
          all.add(k);
          break;
        }
      }
    }
    return all;
  }

  Wrench wrench(int unknown, BitSet cut) {
    return Wrench.of(links.get(unknown), cut, middle, size);
  }

  Wrench loadOn(KnownLoad load, BitSet cut) {
    return Wrench.of(load.link(), cut, middle, size);
  }

  /** Name of a place; empty if no point of the device is there. */
  String placeName(Point at) {
    for (Map.Entry<String, List<Point>> place : places.entrySet()) {
      for (Point known : place.getValue()) {
        if (known.distance(at) <= SAME_PLACE * size) {
          return place.getKey();
        }
      }
    }
    return "";
  }

  List<String> names(BitSet cut) {
    return cut.stream().mapToObj(bodies::get).toList();
  }
}
