package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.equilibrium.internal.LoadLaw.Spread;
import java.util.Arrays;

/**
 * Adds up what acts on one side of each piece of a member's bars, in storage that is used again;
 * what is spread over a piece itself makes its curves.
 */
final class CutSums {

  private static final int WIDTH = 3;

  /** Coefficients of the curves of one edge: three of N, three of V, four of M. */
  static final int CURVES = 10;

  private final MemberCut cut;
  private final CutShape shape;
  private final double size;

  /** Force to the right, up, and moment about the device's middle, by nodes; scaled. */
  private final double[] atNode;

  /** The same of what is spread over each edge. */
  private final double[] onEdge;

  /** Intensity at both ends of each edge: x, y at its start, x, y at its end. */
  private final double[] intensity;

  private final boolean[] loadedNode;
  private final boolean[] loadedEdge;
  private final double[] ends = new double[4];
  private final double[] own = new double[4];
  private final Wrenches one;
  private int astray = -1;

  CutSums(MemberCut cut, CutShape shape) {
    this.cut = cut;
    this.shape = shape;
    size = cut.assembly.size();
    int edges = shape.graph.edges().size();
    atNode = new double[WIDTH * shape.graph.nodes().size()];
    onEdge = new double[WIDTH * edges];
    intensity = new double[4 * edges];
    loadedNode = new boolean[shape.graph.nodes().size()];
    loadedEdge = new boolean[edges];
    one = new Wrenches(cut.assembly.bodyCount());
  }

  /** Adds up what acts in a state. */
  void fill(SolvedForces state) {
    Arrays.fill(atNode, 0);
    Arrays.fill(onEdge, 0);
    Arrays.fill(intensity, 0);
    Arrays.fill(loadedNode, false);
    Arrays.fill(loadedEdge, false);
    astray = -1;
    pulls(state);
    givens(state);
  }

  /**
   * An entry that is neither at a node nor on the bars but carries something; −1 if there is none.
   */
  int astray() {
    return astray;
  }

  /** Whether a connection acts beside the bars, whatever it carries. */
  boolean isPulledAstray() {
    for (int i = 0; i < cut.pulls.size(); i++) {
      if (shape.astray[i]) {
        return true;
      }
    }
    return false;
  }

  boolean isLoadedNode(int node) {
    return loadedNode[node];
  }

  boolean isLoadedEdge(int edge) {
    return loadedEdge[edge];
  }

  private void goesAstray(int entry) {
    astray = astray < 0 ? entry : astray;
  }

  private void pulls(SolvedForces state) {
    Actions actions = state.actions();
    for (int i = 0; i < cut.pulls.size(); i++) {
      int action = cut.pulls.get(i).action();
      double value = state.unknown(actions.column[action]);
      if (shape.astray[i]) {
        goesAstray(i);
      } else if (shape.node[i] >= 0) {
        add(
            shape.node[i],
            value * actions.fx(action),
            value * actions.fy(action),
            value * actions.moment(action, 0, 0));
      } else {
        double fx = value * actions.fx(action);
        double fy = value * actions.fy(action);
        evenly(fx, fy);
        spread(i, state);
      }
    }
  }

  private void givens(SolvedForces state) {
    for (int k = 0; k < cut.givens.size(); k++) {
      int entry = cut.pulls.size() + k;
      LoadLaw law = cut.givens.get(k).law();
      double factor = state.loadCase().factor(law.owner);
      if (law instanceof Spread along) {
        along.intensities(state.placements(), factor, ends);
        boolean none = ends[0] == 0 && ends[1] == 0 && ends[2] == 0 && ends[3] == 0;
        if (!none && shape.astray[entry]) {
          goesAstray(entry);
        } else if (!none) {
          spread(entry, state);
        }
        continue;
      }
      one.clear(cut.body);
      law.add(state.placements(), factor, one);
      double fx = one.fx(cut.body);
      double fy = one.fy(cut.body);
      double moment = one.moment(cut.body);
      if (fx == 0 && fy == 0 && moment == 0) {
        continue;
      }
      if (shape.astray[entry]) {
        goesAstray(entry);
      } else if (shape.node[entry] >= 0) {
        add(shape.node[entry], fx, fy, moment);
      } else {
        evenly(fx, fy);
        spread(entry, state);
      }
    }
  }

  private void add(int node, double fx, double fy, double moment) {
    atNode[WIDTH * node] += fx;
    atNode[WIDTH * node + 1] += fy;
    atNode[WIDTH * node + 2] += moment;
    loadedNode[node] = true;
  }

  private void evenly(double fx, double fy) {
    ends[0] = fx;
    ends[1] = fy;
    ends[2] = fx;
    ends[3] = fy;
  }

  /** Spreads a force over edges; the intensities at both ends are forces per whole segment. */
  private void spread(int entry, SolvedForces state) {
    for (int k = 0; k < shape.spans.size(); k++) {
      CutShape.Span span = shape.spans.get(k);
      if (span.entry() == entry) {
        double length = shape.graph.edges().get(span.edge()).length();
        double perLength = Math.abs(span.share()) / length;
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
        addResultant(edge, state.placements());
      }
    }
  }

  /** Adds force and moment about the middle of what is spread linearly over an edge. */
  private void addResultant(int edge, Placements at) {
    double length = shape.graph.edges().get(edge).length();
    double fx = (own[0] + own[2]) / 2 * length;
    double fy = (own[1] + own[3]) / 2 * length;
    // first moments of the intensity about the edge's start
    double gx = length * length * (own[0] / 6 + own[2] / 3);
    double gy = length * length * (own[1] / 6 + own[3] / 3);
    onEdge[WIDTH * edge] += fx;
    onEdge[WIDTH * edge + 1] += fy;
    onEdge[WIDTH * edge + 2] +=
        startX(edge, at) * fy
            - startY(edge, at) * fx
            + directionX(edge, at) * gy
            - directionY(edge, at) * gx;
  }

  private double startX(int edge, Placements at) {
    BarGraph.Node node = shape.graph.nodes().get(shape.graph.edges().get(edge).from());
    return at.x(cut.body, node.x(), node.y());
  }

  private double startY(int edge, Placements at) {
    BarGraph.Node node = shape.graph.nodes().get(shape.graph.edges().get(edge).from());
    return at.y(cut.body, node.x(), node.y());
  }

  private double endX(int edge, Placements at) {
    BarGraph.Node node = shape.graph.nodes().get(shape.graph.edges().get(edge).to());
    return at.x(cut.body, node.x(), node.y());
  }

  private double endY(int edge, Placements at) {
    BarGraph.Node node = shape.graph.nodes().get(shape.graph.edges().get(edge).to());
    return at.y(cut.body, node.x(), node.y());
  }

  private double directionX(int edge, Placements at) {
    Segment bar = shape.graph.bar(shape.graph.edges().get(edge).bar());
    return at.turnedX(cut.body, bar.bx() - bar.ax(), bar.by() - bar.ay()) / bar.length();
  }

  private double directionY(int edge, Placements at) {
    Segment bar = shape.graph.bar(shape.graph.edges().get(edge).bar());
    return at.turnedY(cut.body, bar.bx() - bar.ax(), bar.by() - bar.ay()) / bar.length();
  }

  /** Whether the side before the start of an edge is added up, not that beyond its end. */
  boolean isNear(int edge) {
    boolean[] before = shape.before[edge];
    int many = 0;
    for (boolean node : before) {
      many += node ? 1 : 0;
    }
    // the smaller side: beyond the last load nothing is then nothing to the last digit
    return 2 * many <= before.length;
  }

  /** Writes the coefficients of N, V and M over an edge that is no part of a ring, in SI units. */
  void curves(int edge, SolvedForces state, double[] to, int first) {
    boolean[] before = shape.before[edge];
    boolean near = isNear(edge);
    double fx = 0;
    double fy = 0;
    double about = 0;
    for (int node = 0; node < before.length; node++) {
      if (before[node] == near) {
        fx += atNode[WIDTH * node];
        fy += atNode[WIDTH * node + 1];
        about += atNode[WIDTH * node + 2];
      }
    }
    for (int other = 0; other < loadedEdge.length; other++) {
      if (other != edge && before[shape.graph.edges().get(other).from()] == near) {
        fx += onEdge[WIDTH * other];
        fy += onEdge[WIDTH * other + 1];
        about += onEdge[WIDTH * other + 2];
      }
    }
    Placements at = state.placements();
    double x = near ? startX(edge, at) : endX(edge, at);
    double y = near ? startY(edge, at) : endY(edge, at);
    write(edge, at, to, first, fx, fy, about - x * fy + y * fx, near);
  }

  private void write(
      int edge,
      Placements at,
      double[] to,
      int first,
      double fx,
      double fy,
      double about,
      boolean near) {
    double ux = directionX(edge, at);
    double uy = directionY(edge, at);
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
    double normal = -sign * (fx * ux + fy * uy);
    double shear = sign * (fy * ux - fx * uy);
    double bending = -sign * about;
    if (!near) {
      // from the far end back to the start
      normal += length * (along + length * alongSlope / 2);
      shear -= length * (left + length * leftSlope / 2);
      bending -= length * (shear + length * (left / 2 + length * leftSlope / 6));
    }
    to[first] = normal;
    to[first + 1] = -along / size;
    to[first + 2] = -alongSlope / (2 * size * size);
    to[first + 3] = shear;
    to[first + 4] = left / size;
    to[first + 5] = leftSlope / (2 * size * size);
    to[first + 6] = bending * size;
    to[first + 7] = shear;
    to[first + 8] = left / (2 * size);
    to[first + 9] = leftSlope / (6 * size * size);
  }
}
