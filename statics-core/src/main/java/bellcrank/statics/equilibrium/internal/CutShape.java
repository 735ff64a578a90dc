package bellcrank.statics.equilibrium.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The bars of a member split where forces enter, and which entry belongs to which node or edge. */
final class CutShape {

  /**
   * The share of a spread force that acts on an edge.
   *
   * @param entry number of the entry
   * @param edge number of the edge
   * @param start where on the segment the edge starts, as a share of it
   * @param end where on the segment the edge ends
   */
  record Span(int entry, int edge, double start, double end) {
    double share() {
      return end - start;
    }
  }

  final BarGraph graph;

  /** Node of each entry; −1 where it is spread or not on the bars. */
  final int[] node;

  /** Whether each entry is neither at a node nor wholly on edges. */
  final boolean[] astray;

  final List<Span> spans = new ArrayList<>();

  /** For each edge the nodes on its start's side; empty where it is part of a ring. */
  final boolean[][] before;

  /** For each node the number of the set of joined bars to which it belongs. */
  final int[] set;

  /**
   * A shape.
   *
   * @param entries where forces enter; those that slide are given at their places
   */
  CutShape(List<Segment> bars, List<BarGraph.Node> points, List<Entry> entries) {
    List<BarGraph.Node> all = new ArrayList<>(points);
    for (Entry entry : entries) {
      if (entry instanceof Entry.At at) {
        all.add(new BarGraph.Node(at.x(), at.y()));
      } else if (entry instanceof Entry.Along along) {
        all.add(new BarGraph.Node(along.ax(), along.ay()));
        all.add(new BarGraph.Node(along.bx(), along.by()));
      }
    }
    graph = BarGraph.of(bars, all);
    node = new int[entries.size()];
    astray = new boolean[entries.size()];
    for (int i = 0; i < entries.size(); i++) {
      node[i] = -1;
      place(i, entries.get(i));
    }
    before = new boolean[graph.edges().size()][];
    for (int edge = 0; edge < before.length; edge++) {
      BarGraph.Edge one = graph.edges().get(edge);
      boolean[] reached = graph.reached(one.from(), edge);
      before[edge] = reached[one.to()] ? new boolean[0] : reached;
    }
    set = new int[graph.nodes().size()];
    sets();
  }

  /** Whether the two ends of a bar are told apart; if not, the bar is but a node. */
  boolean hasEdge(int bar) {
    return graph.edges().stream().anyMatch(edge -> edge.bar() == bar);
  }

  private void sets() {
    Arrays.fill(set, -1);
    int count = 0;
    for (int start = 0; start < set.length; start++) {
      if (set[start] < 0) {
        boolean[] reached = graph.reached(start, -1);
        for (int i = 0; i < reached.length; i++) {
          set[i] = reached[i] ? count : set[i];
        }
        count++;
      }
    }
  }

  private void place(int number, Entry entry) {
    if (entry instanceof Entry.At at) {
      node[number] = graph.nodeAt(at.x(), at.y());
      astray[number] = node[number] < 0;
    } else if (entry instanceof Entry.Along along) {
      astray[number] = !along(number, along);
    } else if (entry instanceof Entry.OverBars) {
      double total = 0;
      for (BarGraph.Edge edge : graph.edges()) {
        total += edge.length();
      }
      for (int edge = 0; edge < graph.edges().size(); edge++) {
        spans.add(new Span(number, edge, 0, graph.edges().get(edge).length() / total));
      }
    } else {
      astray[number] = true;
    }
  }

  /** Whether the whole segment lies on edges; of two edges side by side the first one has it. */
  private boolean along(int number, Entry.Along along) {
    Segment line = new Segment(along.ax(), along.ay(), along.bx(), along.by());
    double length = line.length();
    List<Span> own = new ArrayList<>();
    double covered = 0;
    for (int edge = 0; edge < graph.edges().size(); edge++) {
      BarGraph.Edge one = graph.edges().get(edge);
      BarGraph.Node from = graph.nodes().get(one.from());
      BarGraph.Node to = graph.nodes().get(one.to());
      boolean on =
          line.distance(from.x(), from.y()) <= BarGraph.ON_BAR
              && line.distance(to.x(), to.y()) <= BarGraph.ON_BAR;
      double start = line.along(from.x(), from.y()) / length;
      double end = line.along(to.x(), to.y()) / length;
      boolean taken =
          own.stream()
              .anyMatch(
                  span ->
                      Math.min(start, end) < middle(span) && middle(span) < Math.max(start, end));
      if (on && !taken) {
        own.add(new Span(number, edge, start, end));
        covered += Math.abs(end - start) * length;
      }
    }
    spans.addAll(own);
    return Math.abs(covered - length) <= 2 * BarGraph.ON_BAR;
  }

  private static double middle(Span span) {
    return (span.start() + span.end()) / 2;
  }
}
