package bellcrank.statics.equilibrium.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The bars of a member as a graph: nodes are where bars end, meet at a point, or are loaded; edges
 * are the pieces of bars between them. Drawn and scaled coordinates.
 */
final class BarGraph {

  /** A point nearer to a bar than this many sizes lies on it. */
  static final double ON_BAR = 1e-6;

  /** A place. */
  record Node(double x, double y) {}

  /**
   * A piece of a bar.
   *
   * @param bar number of the bar
   * @param from node nearer to the bar's start
   * @param to node nearer to the bar's end
   * @param start distance of {@code from} from the bar's start, scaled
   * @param end distance of {@code to} from the bar's start, scaled
   */
  record Edge(int bar, int from, int to, double start, double end) {
    double length() {
      return end - start;
    }
  }

  private final List<Segment> bars;
  private final List<Node> nodes = new ArrayList<>();
  private final List<Edge> edges = new ArrayList<>();
  private final List<List<Integer>> edgesAt = new ArrayList<>();

  private BarGraph(List<Segment> bars, List<Node> points) {
    this.bars = bars;
    for (Segment bar : bars) {
      addNode(bar.ax(), bar.ay());
      addNode(bar.bx(), bar.by());
    }
    for (Node point : points) {
      if (bars.stream().anyMatch(bar -> bar.distance(point.x(), point.y()) <= ON_BAR)) {
        addNode(point.x(), point.y());
      }
    }
    nodes.forEach(node -> edgesAt.add(new ArrayList<>()));
    for (int bar = 0; bar < bars.size(); bar++) {
      addEdges(bar);
    }
  }

  /** The graph of some bars, split at those of the points that lie on them. */
  static BarGraph of(List<Segment> bars, List<Node> points) {
    return new BarGraph(bars, points);
  }

  private void addNode(double x, double y) {
    if (nodeAt(x, y) < 0) {
      nodes.add(new Node(x, y));
    }
  }

  private void addEdges(int bar) {
    Segment line = bars.get(bar);
    List<Integer> along = new ArrayList<>();
    for (int node = 0; node < nodes.size(); node++) {
      if (line.distance(nodes.get(node).x(), nodes.get(node).y()) <= ON_BAR) {
        along.add(node);
      }
    }
    along.sort(Comparator.comparingDouble(node -> way(line, node)));
    for (int i = 1; i < along.size(); i++) {
      int from = along.get(i - 1);
      int to = along.get(i);
      // the bar's own ends are where the bar begins and ends, to the last digit
      double start = i == 1 ? 0 : way(line, from);
      double end = i == along.size() - 1 ? line.length() : way(line, to);
      edgesAt.get(from).add(edges.size());
      edgesAt.get(to).add(edges.size());
      edges.add(new Edge(bar, from, to, start, end));
    }
  }

  private double way(Segment line, int node) {
    return line.along(nodes.get(node).x(), nodes.get(node).y());
  }

  /** The node at a place; −1 if there is none. */
  int nodeAt(double x, double y) {
    for (int node = 0; node < nodes.size(); node++) {
      if (Math.hypot(nodes.get(node).x() - x, nodes.get(node).y() - y) <= ON_BAR) {
        return node;
      }
    }
    return -1;
  }

  List<Node> nodes() {
    return nodes;
  }

  List<Edge> edges() {
    return edges;
  }

  Segment bar(int bar) {
    return bars.get(bar);
  }

  /** The nodes that can be reached from one without a certain edge; −1 leaves out none. */
  boolean[] reached(int node, int without) {
    boolean[] reached = new boolean[nodes.size()];
    int[] stack = new int[nodes.size()];
    int count = 0;
    reached[node] = true;
    stack[count++] = node;
    while (count > 0) {
      int next = stack[--count];
      for (int edge : edgesAt.get(next)) {
        Edge one = edges.get(edge);
        int other = one.from() == next ? one.to() : one.from();
        if (edge != without && !reached[other]) {
          reached[other] = true;
          stack[count++] = other;
        }
      }
    }
    return reached;
  }
}
