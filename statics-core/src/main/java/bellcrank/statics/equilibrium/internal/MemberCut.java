package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Member;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a member is cut: which forces enter its bars where, and what lies on either side of each
 * piece. Found once for a device; a pose changes it only where something slides along the member.
 */
public final class MemberCut {

  /** A load on the member. */
  record Given(LoadLaw law, Entry entry) {}

  /** An action of a connection or sought quantity on the member. */
  record Pull(int action, Entry entry, String owner) {}

  final Assembly assembly;
  final Member member;
  final int body;
  final List<Pull> pulls = new ArrayList<>();
  final List<Given> givens = new ArrayList<>();
  private final List<Segment> bars = new ArrayList<>();
  private final List<BarGraph.Node> points = new ArrayList<>();
  private final Optional<CutShape> fixed;

  private MemberCut(Assembly assembly, Member member) {
    this.assembly = assembly;
    this.member = member;
    Device device = assembly.device();
    body = device.bodyIndex(member.name());
    for (Bar bar : member.bars()) {
      BarGraph.Node a = node(bar.start());
      BarGraph.Node b = node(bar.end());
      bars.add(new Segment(a.x(), a.y(), b.x(), b.y()));
    }
    member.points().forEach(point -> points.add(node(point)));
    int[] bodies = assembly.actions().body;
    boolean slides = false;
    for (ForceLaw law : assembly.laws()) {
      for (int k = 0; k < law.actions(); k++) {
        if (bodies[law.firstAction + k] == body) {
          Entry entry = law.entry(k);
          slides |= entry instanceof Entry.Sliding;
          pulls.add(new Pull(law.firstAction + k, entry, law.owner));
        }
      }
    }
    for (LoadLaw law : assembly.loadLaws()) {
      if (law.actsOn(body)) {
        givens.add(new Given(law, law.entry(body)));
      }
    }
    fixed = slides ? Optional.empty() : Optional.of(new CutShape(bars, points, entries(Map.of())));
  }

  /**
   * The cut of a member.
   *
   * @param assembly the assembly of its device
   * @param member the member
   */
  public static MemberCut of(Assembly assembly, Member member) {
    return new MemberCut(assembly, member);
  }

  private BarGraph.Node node(String point) {
    Device device = assembly.device();
    return new BarGraph.Node(
        assembly.scale().x(device.point(point)), assembly.scale().y(device.point(point)));
  }

  /** How it is split, if that is the same in all poses. */
  Optional<CutShape> shape() {
    return fixed;
  }

  /**
   * What the bars carry.
   *
   * @param solved the device, solved; its assembly has the same numbers as that of this cut
   */
  public CutForces forces(Solved solved) {
    CutShape shape = fixed.isPresent() ? fixed.get() : new CutShape(bars, points, entries(solved));
    return new CutForces(this, shape, solved);
  }

  private List<Entry> entries(Solved solved) {
    Placements at = solved.placements;
    double c = at.cosine(body);
    double s = at.sine(body);
    double shiftX = at.x(body, 0, 0);
    double shiftY = at.y(body, 0, 0);
    Map<Integer, Entry> slid = new java.util.HashMap<>();
    for (int i = 0; i < pulls.size(); i++) {
      if (pulls.get(i).entry() instanceof Entry.Sliding) {
        // back from the pose into the drawn member
        double x = solved.actions.x(pulls.get(i).action()) - shiftX;
        double y = solved.actions.y(pulls.get(i).action()) - shiftY;
        slid.put(i, new Entry.At(c * x + s * y, c * y - s * x));
      }
    }
    return entries(slid);
  }

  private List<Entry> entries(Map<Integer, Entry> slid) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < pulls.size(); i++) {
      entries.add(slid.getOrDefault(i, pulls.get(i).entry()));
    }
    givens.forEach(given -> entries.add(given.entry()));
    return entries;
  }
}
