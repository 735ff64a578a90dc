package bellcrank.statics.equilibrium.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What the bars of a member carry, piece by piece. All that acts on one side of a piece is added
 * up; what is spread over the piece itself makes its curves.
 */
public final class CutForces {

  private static final int WIDTH = 3;

  private final MemberCut cut;
  private final CutShape shape;
  private final Solved solved;
  private final double size;

  /** Force to the right, up, and moment about the device's middle, by nodes; scaled. */
  private final double[] atNode;

  /** The same of what is spread over each edge. */
  private final double[] onEdge;

  /** Intensity at both ends of each edge: x, y at its start, x, y at its end. */
  private final double[] intensity;

  private final boolean[] loadedNode;
  private final boolean[] loadedEdge;
  private final List<Integer> astray = new ArrayList<>();
  private final CutWords words;

  CutForces(MemberCut cut, CutShape shape, Solved solved) {
    this.cut = cut;
    this.shape = shape;
    this.solved = solved;
    size = cut.assembly.size();
    int edges = shape.graph.edges().size();
    atNode = new double[WIDTH * shape.graph.nodes().size()];
    onEdge = new double[WIDTH * edges];
    intensity = new double[4 * edges];
    loadedNode = new boolean[shape.graph.nodes().size()];
    loadedEdge = new boolean[edges];
    pulls();
    givens();
    words = new CutWords(cut, shape);
  }

  private void pulls() {
    Actions actions = solved.actions;
    for (int i = 0; i < cut.pulls.size(); i++) {
      int action = cut.pulls.get(i).action();
      double value = solved.unknown(actions.column[action]);
      if (shape.astray[i]) {
        astray.add(i);
      } else if (shape.node[i] >= 0) {
        add(
            shape.node[i],
            value * actions.fx(action),
            value * actions.fy(action),
            value * actions.moment(action, 0, 0));
      } else {
        double fx = value * actions.fx(action);
        double fy = value * actions.fy(action);
        spread(i, new double[] {fx, fy, fx, fy});
      }
    }
  }

  private void givens() {
    Wrenches one = new Wrenches(solved.assembly.bodyCount());
    for (int k = 0; k < cut.givens.size(); k++) {
      int entry = cut.pulls.size() + k;
      LoadLaw law = cut.givens.get(k).law();
      double factor = solved.loadCase.factor(law.owner);
      if (law instanceof LoadLaw.Spread along) {
        double[] ends = new double[4];
        along.intensities(solved.placements, factor, ends);
        boolean none = ends[0] == 0 && ends[1] == 0 && ends[2] == 0 && ends[3] == 0;
        if (!none && shape.astray[entry]) {
          astray.add(entry);
        } else if (!none) {
          spread(entry, ends);
        }
        continue;
      }
      one.clear(cut.body);
      law.add(solved.placements, factor, one);
      double fx = one.fx(cut.body);
      double fy = one.fy(cut.body);
      double moment = one.moment(cut.body);
      if (fx == 0 && fy == 0 && moment == 0) {
        continue;
      }
      if (shape.astray[entry]) {
        astray.add(entry);
      } else if (shape.node[entry] >= 0) {
        add(shape.node[entry], fx, fy, moment);
      } else {
        spread(entry, new double[] {fx, fy, fx, fy});
      }
    }
  }

  private void add(int node, double fx, double fy, double moment) {
    atNode[WIDTH * node] += fx;
    atNode[WIDTH * node + 1] += fy;
    atNode[WIDTH * node + 2] += moment;
    loadedNode[node] = true;
  }

  /** Spreads a force over edges; the intensities are forces per whole segment. */
  private void spread(int entry, double[] ends) {
    for (CutShape.Span span : shape.spans) {
      if (span.entry() == entry) {
        double length = shape.graph.edges().get(span.edge()).length();
        double perLength = Math.abs(span.share()) / length;
        double[] own = new double[4];
        for (int axis = 0; axis < 2; axis++) {
          double slope = ends[axis + 2] - ends[axis];
          own[axis] = perLength * (ends[axis] + slope * span.start());
          own[axis + 2] = perLength * (ends[axis] + slope * span.end());
        }
        int edge = span.edge();
        loadedEdge[edge] = true;
        for (int i = 0; i < own.length; i++) {
          intensity[4 * edge + i] += own[i];
        }
        double[] sum = resultant(edge, own);
        for (int i = 0; i < WIDTH; i++) {
          onEdge[WIDTH * edge + i] += sum[i];
        }
      }
    }
  }

  /** Force and moment about the middle of what is spread linearly over an edge. */
  private double[] resultant(int edge, double[] ends) {
    double length = shape.graph.edges().get(edge).length();
    double fx = (ends[0] + ends[2]) / 2 * length;
    double fy = (ends[1] + ends[3]) / 2 * length;
    // first moments of the intensity about the edge's start
    double gx = length * length * (ends[0] / 6 + ends[2] / 3);
    double gy = length * length * (ends[1] / 6 + ends[3] / 3);
    double moment =
        startX(edge) * fy - startY(edge) * fx + directionX(edge) * gy - directionY(edge) * gx;
    return new double[] {fx, fy, moment};
  }

  private double startX(int edge) {
    BarGraph.Node node = shape.graph.nodes().get(shape.graph.edges().get(edge).from());
    return solved.placements.x(cut.body, node.x(), node.y());
  }

  private double startY(int edge) {
    BarGraph.Node node = shape.graph.nodes().get(shape.graph.edges().get(edge).from());
    return solved.placements.y(cut.body, node.x(), node.y());
  }

  private double endX(int edge) {
    BarGraph.Node node = shape.graph.nodes().get(shape.graph.edges().get(edge).to());
    return solved.placements.x(cut.body, node.x(), node.y());
  }

  private double endY(int edge) {
    BarGraph.Node node = shape.graph.nodes().get(shape.graph.edges().get(edge).to());
    return solved.placements.y(cut.body, node.x(), node.y());
  }

  private double directionX(int edge) {
    Segment bar = shape.graph.bar(shape.graph.edges().get(edge).bar());
    return solved.placements.turnedX(cut.body, bar.bx() - bar.ax(), bar.by() - bar.ay())
        / bar.length();
  }

  private double directionY(int edge) {
    Segment bar = shape.graph.bar(shape.graph.edges().get(edge).bar());
    return solved.placements.turnedY(cut.body, bar.bx() - bar.ax(), bar.by() - bar.ay())
        / bar.length();
  }

  /** The pieces, bar after bar, each from its start to its end. */
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
    return pieces;
  }

  /** Why it is not known where the forces go; empty if it is. */
  private String unclear() {
    if (!astray.isEmpty()) {
      return words.astray(astray.get(0));
    }
    TreeSet<Integer> sets = new TreeSet<>();
    for (int node = 0; node < loadedNode.length; node++) {
      if (loadedNode[node]) {
        sets.add(shape.set[node]);
      }
    }
    for (int edge = 0; edge < loadedEdge.length; edge++) {
      if (loadedEdge[edge]) {
        sets.add(shape.set[shape.graph.edges().get(edge).from()]);
      }
    }
    return sets.size() > 1 ? words.apart() : "";
  }

  private CutPiece piece(int edge, int bar, double start, double end) {
    boolean[] before = shape.before[edge];
    int many = 0;
    for (boolean one : before) {
      many += one ? 1 : 0;
    }
    // the smaller side: beyond the last load nothing is then nothing to the last digit
    boolean near = 2 * many <= before.length;
    double[] sum = new double[WIDTH];
    for (int node = 0; node < before.length; node++) {
      if (before[node] == near) {
        for (int i = 0; i < WIDTH; i++) {
          sum[i] += atNode[WIDTH * node + i];
        }
      }
    }
    for (int other = 0; other < loadedEdge.length; other++) {
      if (other != edge && before[shape.graph.edges().get(other).from()] == near) {
        for (int i = 0; i < WIDTH; i++) {
          sum[i] += onEdge[WIDTH * other + i];
        }
      }
    }
    double x = near ? startX(edge) : endX(edge);
    double y = near ? startY(edge) : endY(edge);
    double moment = sum[2] - x * sum[1] + y * sum[0];
    return curves(edge, bar, start, end, new double[] {sum[0], sum[1], moment}, near);
  }

  /** Curves over an edge from the force before its start, or from that beyond its end. */
  private CutPiece curves(int edge, int bar, double start, double end, double[] sum, boolean near) {
    double ux = directionX(edge);
    double uy = directionY(edge);
    double length = shape.graph.edges().get(edge).length();
    double q0x = intensity[4 * edge];
    double q0y = intensity[4 * edge + 1];
    double slopeX = (intensity[4 * edge + 2] - q0x) / length;
    double slopeY = (intensity[4 * edge + 3] - q0y) / length;
    double along = q0x * ux + q0y * uy;
    double alongSlope = slopeX * ux + slopeY * uy;
    double left = q0y * ux - q0x * uy;
    double leftSlope = slopeY * ux - slopeX * uy;
    double sign = near ? 1 : -1;
    double normal = -sign * (sum[0] * ux + sum[1] * uy);
    double shear = sign * (sum[1] * ux - sum[0] * uy);
    double bending = -sign * sum[2];
    if (!near) {
      // from the far end back to the start
      normal += length * (along + length * alongSlope / 2);
      shear -= length * (left + length * leftSlope / 2);
      bending -= length * (shear + length * (left / 2 + length * leftSlope / 6));
    }
    return CutPiece.of(
        bar,
        start,
        end,
        List.of(normal, -along / size, -alongSlope / (2 * size * size)),
        List.of(shear, left / size, leftSlope / (2 * size * size)),
        List.of(bending * size, shear, left / (2 * size), leftSlope / (6 * size * size)),
        new CutDetermined(cut, shape, solved).of(edge, near));
  }

  /** Names of what enters at each node of a bar, by distance from the bar's start in m. */
  public List<CutPlace> places(int bar) {
    return words.places(bar, size);
  }
}
