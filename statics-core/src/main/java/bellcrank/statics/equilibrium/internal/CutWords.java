package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Names what enters the bars of a member where, and says why forces inside cannot be told. */
final class CutWords {

  private final MemberCut cut;
  private final CutShape shape;

  CutWords(MemberCut cut, CutShape shape) {
    this.cut = cut;
    this.shape = shape;
  }

  private String owner(int entry) {
    int pulls = cut.pulls.size();
    return entry < pulls ? cut.pulls.get(entry).owner() : cut.givens.get(entry - pulls).law().owner;
  }

  private Entry entry(int entry) {
    int pulls = cut.pulls.size();
    return entry < pulls ? cut.pulls.get(entry).entry() : cut.givens.get(entry - pulls).entry();
  }

  /** Why an entry keeps the forces inside from being told. */
  String astray(int entry) {
    String member = cut.member.name();
    String part = owner(entry);
    Entry one = entry(entry);
    if (one instanceof Entry.At at) {
      return part
          + " acts on "
          + member
          + " at "
          + pointAt(at.x(), at.y())
          + ", which is on none"
          + " of its bars: how its force gets into them is not stated";
    }
    if (one instanceof Entry.Along along) {
      return part
          + " is spread from "
          + pointAt(along.ax(), along.ay())
          + " to "
          + pointAt(along.bx(), along.by())
          + ", which is not all on bars of "
          + member
          + ": how its force gets into them is not stated";
    }
    return one instanceof Entry.Sliding
        ? part
            + " slides on "
            + member
            + " at a place that is on none of its bars: how its force"
            + " gets into them is not stated"
        : part + " is a couple on " + member + " whose place is not stated";
  }

  /** Why bars that are not joined keep the forces inside from being told. */
  String apart() {
    return "not all bars of "
        + cut.member.name()
        + " are joined, and more than one set of them is loaded: how forces get from one to the"
        + " other is not stated";
  }

  String ring(int bar) {
    Bar one = cut.member.bars().get(bar);
    return "bar "
        + one.start()
        + "–"
        + one.end()
        + " is part of a closed ring within "
        + cut.member.name()
        + ", in which statics alone does not tell the forces";
  }

  String tooShort(int bar) {
    Bar one = cut.member.bars().get(bar);
    return "bar "
        + one.start()
        + "–"
        + one.end()
        + " of "
        + cut.member.name()
        + " is too short beside the whole device to tell its ends apart";
  }

  private String pointAt(double x, double y) {
    List<String> names = new ArrayList<>();
    names(x, y, false, names);
    return names.isEmpty() ? "a place without a name" : names.get(0);
  }

  private void names(double x, double y, boolean ofMember, List<String> names) {
    Device device = cut.assembly.device();
    for (var named : device.points().entrySet()) {
      Point point = named.getValue();
      double apart =
          Math.hypot(cut.assembly.scale().x(point) - x, cut.assembly.scale().y(point) - y);
      if (apart <= BarGraph.ON_BAR
          && (!ofMember || device.bodiesAt(named.getKey()).contains(cut.member.name()))) {
        names.add(named.getKey());
      }
    }
  }

  /** Where something enters a bar. */
  List<CutPlace> places(int bar, double size) {
    List<CutPlace> places = new ArrayList<>();
    Set<Integer> done = new LinkedHashSet<>();
    for (BarGraph.Edge edge : shape.graph.edges()) {
      if (edge.bar() == bar) {
        if (done.add(edge.from())) {
          add(places, bar, edge.from(), edge.start() * size);
        }
        if (done.add(edge.to())) {
          add(places, bar, edge.to(), edge.end() * size);
        }
      }
    }
    return places;
  }

  private void add(List<CutPlace> places, int bar, int node, double at) {
    Set<String> parts = new LinkedHashSet<>();
    for (int i = 0; i < shape.node.length; i++) {
      if (shape.node[i] == node) {
        parts.add(owner(i));
      }
    }
    boolean joins =
        shape.graph.edges().stream()
            .anyMatch(edge -> edge.bar() != bar && (edge.from() == node || edge.to() == node));
    if (!parts.isEmpty() || joins) {
      List<String> names = new ArrayList<>();
      BarGraph.Node place = shape.graph.nodes().get(node);
      names(place.x(), place.y(), true, names);
      places.add(new CutPlace(bar, at, names, List.copyOf(parts), joins));
    }
  }
}
