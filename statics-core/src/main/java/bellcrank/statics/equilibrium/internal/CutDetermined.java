package bellcrank.statics.equilibrium.internal;

import java.util.List;

/** Tells whether statics fixes what an edge carries. */
final class CutDetermined {

  private final MemberCut cut;
  private final CutShape shape;
  private final Solved solved;

  CutDetermined(MemberCut cut, CutShape shape, Solved solved) {
    this.cut = cut;
    this.shape = shape;
    this.solved = solved;
  }

  /** Whether normal force, shear and moment are fixed all over an edge. */
  List<Boolean> of(int edge, boolean near) {
    if (solved.isDeterminate()) {
      return List.of(true, true, true);
    }
    boolean normal = true;
    boolean shear = true;
    boolean moment = true;
    // the moment may be fixed at one end alone; an open shear opens it at the other
    for (boolean atStart : new boolean[] {true, false}) {
      double[][] multiples = multiples(edge, near, atStart);
      normal &= solved.determined(multiples[0]);
      shear &= solved.determined(multiples[1]);
      moment &= solved.determined(multiples[2]);
    }
    for (CutShape.Span span : shape.spans) {
      if (span.edge() == edge && span.entry() < cut.pulls.size()) {
        int action = cut.pulls.get(span.entry()).action();
        boolean fixed = solved.determined(solved.actions.column[action]);
        normal &= fixed;
        shear &= fixed;
        moment &= fixed;
      }
    }
    return List.of(normal, shear, moment);
  }

  /** Multiples of the unknowns in N, V and M about an end of the edge, of all on one side of it. */
  private double[][] multiples(int edge, boolean near, boolean atStart) {
    BarGraph.Edge one = shape.graph.edges().get(edge);
    BarGraph.Node from = shape.graph.nodes().get(one.from());
    BarGraph.Node to = shape.graph.nodes().get(one.to());
    BarGraph.Node about = atStart ? from : to;
    double x = solved.placements.x(cut.body, about.x(), about.y());
    double y = solved.placements.y(cut.body, about.x(), about.y());
    double length = one.length();
    double ux = solved.placements.turnedX(cut.body, to.x() - from.x(), to.y() - from.y()) / length;
    double uy = solved.placements.turnedY(cut.body, to.x() - from.x(), to.y() - from.y()) / length;
    double[][] multiples = new double[3][solved.assembly.columns()];
    Actions actions = solved.actions;
    for (int i = 0; i < cut.pulls.size(); i++) {
      int action = cut.pulls.get(i).action();
      int column = actions.column[action];
      double fx = actions.fx(action);
      double fy = actions.fy(action);
      if (shape.node[i] >= 0 && shape.before[edge][shape.node[i]] == near) {
        multiples[0][column] += fx * ux + fy * uy;
        multiples[1][column] += fy * ux - fx * uy;
        multiples[2][column] += actions.moment(action, x, y);
      } else if (shape.node[i] < 0) {
        for (CutShape.Span span : shape.spans) {
          boolean on = span.entry() == i && span.edge() != edge;
          BarGraph.Edge loaded = shape.graph.edges().get(span.edge());
          if (on && shape.before[edge][loaded.from()] == near) {
            BarGraph.Node a = shape.graph.nodes().get(loaded.from());
            BarGraph.Node b = shape.graph.nodes().get(loaded.to());
            double qx = (a.x() + b.x()) / 2;
            double qy = (a.y() + b.y()) / 2;
            double share = Math.abs(span.share());
            double armX = solved.placements.x(cut.body, qx, qy) - x;
            double armY = solved.placements.y(cut.body, qx, qy) - y;
            multiples[0][column] += share * (fx * ux + fy * uy);
            multiples[1][column] += share * (fy * ux - fx * uy);
            multiples[2][column] += share * (armX * fy - armY * fx);
          }
        }
      }
    }
    return multiples;
  }
}
