package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What the bars of a member carry, piece by piece. All that acts on one side of a piece is added
 * up; what is spread over the piece itself makes its curves.
 */
public final class CutForces {

  private final MemberCut cut;
  private final CutShape shape;
  private final Solved solved;
  private final double size;
  private final CutSums sums;
  private final CutWords words;

  CutForces(MemberCut cut, CutShape shape, Solved solved) {
    this.cut = cut;
    this.shape = shape;
    this.solved = solved;
    size = cut.assembly.size();
    sums = new CutSums(cut, shape);
    sums.fill(solved);
    words = new CutWords(cut, shape);
  }

  /** The pieces, those of each bar from its start to its end; one or more of each. */
  public List<CutPiece> pieces() {
    String unclear = unclear();
    List<CutPiece> pieces = new ArrayList<>();
    for (int edge = 0; edge < shape.graph.edges().size(); edge++) {
      BarGraph.Edge one = shape.graph.edges().get(edge);
      double start = one.start() * size;
      double end = one.end() * size;
      if (!unclear.isEmpty()) {
        pieces.add(CutPiece.unclear(one.bar(), start, end, unclear));
      } else if (shape.before[edge].length == 0) {
        pieces.add(CutPiece.ring(one.bar(), start, end, words.ring(one.bar())));
      } else {
        pieces.add(piece(edge, one.bar(), start, end));
      }
    }
    for (int bar = 0; bar < cut.member.bars().size(); bar++) {
      if (!shape.hasEdge(bar)) {
        pieces.add(CutPiece.unclear(bar, 0, length(bar), words.tooShort(bar)));
      }
    }
    return pieces;
  }

  private double length(int bar) {
    Device device = cut.assembly.device();
    Bar one = cut.member.bars().get(bar);
    return device.point(one.start()).distance(device.point(one.end()));
  }

  /** Why it is not known where the forces go; empty if it is. */
  private String unclear() {
    if (sums.astray() >= 0) {
      return words.astray(sums.astray());
    }
    TreeSet<Integer> sets = new TreeSet<>();
    for (int node = 0; node < shape.set.length; node++) {
      if (sums.isLoadedNode(node)) {
        sets.add(shape.set[node]);
      }
    }
    for (int edge = 0; edge < shape.graph.edges().size(); edge++) {
      if (sums.isLoadedEdge(edge)) {
        sets.add(shape.set[shape.graph.edges().get(edge).from()]);
      }
    }
    return sets.size() > 1 ? words.apart() : "";
  }

  private CutPiece piece(int edge, int bar, double start, double end) {
    double[] curves = new double[CutSums.CURVES];
    sums.curves(edge, solved, curves, 0);
    return CutPiece.of(
        bar,
        start,
        end,
        List.of(curves[0], curves[1], curves[2]),
        List.of(curves[3], curves[4], curves[5]),
        List.of(curves[6], curves[7], curves[8], curves[9]),
        new CutDetermined(cut, shape, solved).of(edge, sums.isNear(edge)));
  }

  /** Names of what enters at each node of a bar, by distance from the bar's start in m. */
  public List<CutPlace> places(int bar) {
    return words.places(bar, size);
  }
}
