package bellcrank.statics.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Groups of bodies that hang together and are cut free as one. */
final class Cuts {

  /** Up to this many bodies all groups are tried. */
  static final int ALL_GROUPS = 14;

  /** A group is worth its while if it cuts no more unknowns than this. */
  static final int MOST_CUT = 6;

  /** Up to this many bodies sections from left to right and upwards are tried. */
  static final int SECTIONS = 400;

  /** Bodies are on one upright or level line if they are no farther off it, in sizes. */
  private static final double SAME_LINE = 1e-9;

  private final Picture picture;
  private final int count;
  private final BitSet[] neighbours;

  private Cuts(Picture picture) {
    this.picture = picture;
    count = picture.bodies().size();
    neighbours = new BitSet[count];
    for (int body = 0; body < count; body++) {
      neighbours[body] = new BitSet();
    }
    picture.links().forEach(links -> links.forEach(this::join));
    picture.loads().forEach(load -> join(load.link()));
  }

  private void join(Link link) {
    if (link.body() >= 0 && link.other() >= 0) {
      neighbours[link.body()].set(link.other());
      neighbours[link.other()].set(link.body());
    }
  }

  /** Single bodies, then groups by size, then by names. */
  static List<BitSet> of(Picture picture) {
    return new Cuts(picture).all();
  }

  private List<BitSet> all() {
    Set<BitSet> cuts = new LinkedHashSet<>();
    for (int body = 0; body < count; body++) {
      BitSet one = new BitSet();
      one.set(body);
      cuts.add(one);
    }
    if (count > 1 && count <= ALL_GROUPS) {
      groups(cuts);
    } else if (count > 1) {
      for (int body = 0; body < count; body++) {
        int first = body;
        neighbours[body].stream()
            .filter(next -> next > first)
            .forEach(next -> pair(first, next, cuts));
      }
      if (count <= SECTIONS) {
        sections(cuts, true);
        sections(cuts, false);
      }
    }
    if (count > 1) {
      BitSet whole = new BitSet();
      whole.set(0, count);
      components(whole).forEach(cuts::add);
    }
    return List.copyOf(cuts);
  }

  private void groups(Set<BitSet> cuts) {
    int[] near = new int[count];
    for (int body = 0; body < count; body++) {
      for (int next = 0; next < count; next++) {
        near[body] |= neighbours[body].get(next) ? 1 << next : 0;
      }
    }
    int[][] ends = ends();
    IntStream.range(1, 1 << count)
        .filter(mask -> Integer.bitCount(mask) > 1 && hangsTogether(mask, near))
        .filter(mask -> cutBy(mask, ends) <= MOST_CUT)
        .boxed()
        .sorted(Comparator.comparingInt(Integer::bitCount))
        .map(mask -> BitSet.valueOf(new long[] {mask}))
        .forEach(cuts::add);
  }

  /** The two bodies of each link of each unknown as masks; 0 for what is outside. */
  private int[][] ends() {
    return picture.links().stream()
        .map(
            links ->
                links.stream()
                    .flatMapToInt(link -> IntStream.of(bit(link.body()), bit(link.other())))
                    .toArray())
        .toArray(int[][]::new);
  }

  private static int bit(int body) {
    return body < 0 ? 0 : 1 << body;
  }

  private static int cutBy(int mask, int[][] ends) {
    int cut = 0;
    for (int[] of : ends) {
      for (int k = 0; k < of.length; k += 2) {
        if ((mask & of[k]) != 0 != ((mask & of[k + 1]) != 0)) {
          cut++;
          break;
        }
      }
    }
    return cut;
  }

  private static boolean hangsTogether(int mask, int[] near) {
    int reached = Integer.lowestOneBit(mask);
    int edge = reached;
    while (edge != 0) {
      int body = Integer.numberOfTrailingZeros(edge);
      edge &= edge - 1;
      int fresh = near[body] & mask & ~reached;
      reached |= fresh;
      edge |= fresh;
    }
    return reached == mask;
  }

  private boolean isWorthwhile(BitSet cut) {
    return picture.cutBy(cut).size() <= MOST_CUT;
  }

  private void pair(int first, int second, Set<BitSet> cuts) {
    BitSet pair = new BitSet();
    pair.set(first);
    pair.set(second);
    if (isWorthwhile(pair)) {
      cuts.add(pair);
    }
  }

  /** All bodies on one side of an upright or a level line. */
  private void sections(Set<BitSet> cuts, boolean upright) {
    double[] place = new double[count];
    int[] places = new int[count];
    picture
        .links()
        .forEach(
            links ->
                links.forEach(
                    link -> {
                      add(link.body(), upright ? link.at().x() : link.at().y(), place, places);
                      double end = upright ? link.otherAt().x() : link.otherAt().y();
                      add(link.other(), end, place, places);
                    }));
    List<Integer> order =
        IntStream.range(0, count)
            .boxed()
            .sorted(Comparator.comparingDouble(body -> mean(place, places, body)))
            .toList();
    BitSet side = new BitSet();
    for (int k = 0; k < count - 1; k++) {
      side.set(order.get(k));
      bothSides(side, cuts);
    }
    for (int from = 0; from < count; ) {
      int to = from + 1;
      while (to < count
          && mean(place, places, order.get(to)) - mean(place, places, order.get(from))
              <= SAME_LINE * picture.size()) {
        to++;
      }
      roundOne(order, from, to, cuts);
      from = to;
    }
  }

  /** Sections that leave a straight line to go round one of the bodies on it. */
  private void roundOne(List<Integer> order, int from, int to, Set<BitSet> cuts) {
    for (int left = from; to - from > 2 && left < to; left++) {
      BitSet side = new BitSet();
      order.subList(0, to).forEach(side::set);
      side.clear(order.get(left));
      bothSides(side, cuts);
    }
  }

  private void bothSides(BitSet side, Set<BitSet> cuts) {
    BitSet rest = new BitSet();
    rest.set(0, count);
    rest.andNot(side);
    components((BitSet) side.clone()).stream().filter(this::isWorthwhile).forEach(cuts::add);
    components(rest).stream().filter(this::isWorthwhile).forEach(cuts::add);
  }

  private static double mean(double[] place, int[] places, int body) {
    return place[body] / Math.max(1, places[body]);
  }

  private static void add(int body, double at, double[] place, int[] places) {
    if (body >= 0) {
      place[body] += at;
      places[body]++;
    }
  }

  /** Splits bodies into groups that hang together. */
  private List<BitSet> components(BitSet bodies) {
    List<BitSet> components = new ArrayList<>();
    BitSet left = (BitSet) bodies.clone();
    while (!left.isEmpty()) {
      BitSet one = new BitSet();
      BitSet edge = new BitSet();
      edge.set(left.nextSetBit(0));
      while (!edge.isEmpty()) {
        int body = edge.nextSetBit(0);
        edge.clear(body);
        one.set(body);
        BitSet fresh = (BitSet) neighbours[body].clone();
        fresh.and(left);
        fresh.andNot(one);
        edge.or(fresh);
      }
      left.andNot(one);
      components.add(one);
    }
    return components;
  }
}
