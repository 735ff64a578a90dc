package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Branch and bound over the choices of parts whose condition is not convex. Each choice is solved
 * with conditions that let through too much, which gives a bound, and with others that let through
 * too little, which gives a state that is possible. The two close in on the true value.
 */
final class BranchSearch {

  /** Share of the loads by which a state may miss the condition of a branching part. */
  private static final double MISS = 1e-10;

  private final States states;
  private final List<Branch> branches;
  private final double[] objective;
  private final double slack;
  private final int most;
  private final double relativeGap;
  private int programs;

  private double best = Double.NEGATIVE_INFINITY;
  private double[] bestX = {};
  private boolean unbounded;
  private boolean failed;

  /** A choice for each part, with the bound that its relaxed program gives. */
  private record Node(List<Branch.Choice> choices, double bound, List<Double> x) {}

  BranchSearch(States states, Goal goal, double slack, int most, double relativeGap) {
    this.states = states;
    this.slack = slack;
    this.most = most;
    this.relativeGap = relativeGap;
    branches = states.parts().branches();
    objective = states.objective(goal);
  }

  Extreme run() {
    PriorityQueue<Node> open = new PriorityQueue<>((a, b) -> Double.compare(b.bound(), a.bound()));
    visit(branches.stream().map(Branch::whole).toList(), open);
    while (!open.isEmpty() && !unbounded && programs < most) {
      Node node = open.peek();
      if (node.bound() <= best + gapAllowed()) {
        break;
      }
      open.poll();
      int worst = worst(node);
      double[] forces = node.x().isEmpty() ? new double[0] : forces(node);
      for (Branch.Choice choice : branches.get(worst).split(node.choices().get(worst), forces)) {
        List<Branch.Choice> choices = new ArrayList<>(node.choices());
        choices.set(worst, choice);
        visit(choices, open);
      }
    }
    if (unbounded) {
      return Extreme.without(Extreme.Kind.UNBOUNDED);
    }
    if (failed) {
      return Extreme.open();
    }
    double bound = open.isEmpty() ? best : Math.max(best, open.peek().bound());
    if (bestX.length == 0 && best == Double.NEGATIVE_INFINITY) {
      return Extreme.without(open.isEmpty() ? Extreme.Kind.NONE : Extreme.Kind.OPEN);
    }
    if (bound == Double.POSITIVE_INFINITY) {
      return Extreme.without(Extreme.Kind.OPEN);
    }
    double constant = objective[objective.length - 1];
    double gap = bound - best <= gapAllowed() ? 0 : bound - best;
    return Extreme.found(
        (best + constant) * states.scale(),
        gap * states.scale(),
        states.unscaled(states.forces(bestX)),
        states.number(bestX));
  }

  private double gapAllowed() {
    return best == Double.NEGATIVE_INFINITY ? 0 : relativeGap * Math.max(1, Math.abs(best));
  }

  private double[] forces(Node node) {
    return states.unscaled(
        states.forces(node.x().stream().mapToDouble(Double::doubleValue).toArray()));
  }

  /**
   * The part whose condition the node's state misses most; the first undivided one if unbounded.
   */
  private int worst(Node node) {
    if (node.x().isEmpty() && states.variables() > 0) {
      for (int k = 0; k < branches.size(); k++) {
        if (branches.get(k).outer(node.choices().get(k)).isEmpty()) {
          return k;
        }
      }
      return 0;
    }
    double[] forces = forces(node);
    int worst = 0;
    for (int k = 1; k < branches.size(); k++) {
      if (branches.get(k).miss(forces) > branches.get(worst).miss(forces)) {
        worst = k;
      }
    }
    return worst;
  }

  private void visit(List<Branch.Choice> choices, PriorityQueue<Node> open) {
    Program program = states.program(slack);
    for (int k = 0; k < branches.size(); k++) {
      states.addTo(program, branches.get(k).outer(choices.get(k)), slack);
    }
    programs++;
    double[] goal = Arrays.copyOf(objective, objective.length - 1);
    Optimum relaxed = states.solve(program, goal);
    failed |= relaxed.kind == Optimum.Kind.FAILED;
    if (relaxed.kind == Optimum.Kind.INFEASIBLE || relaxed.kind == Optimum.Kind.FAILED) {
      return;
    }
    if (relaxed.kind == Optimum.Kind.UNBOUNDED) {
      if (exact(choices)) {
        unbounded = true;
      } else {
        open.add(new Node(choices, Double.POSITIVE_INFINITY, List.of()));
      }
      return;
    }
    if (relaxed.value <= best + gapAllowed() && best > Double.NEGATIVE_INFINITY) {
      return;
    }
    double[] forces = states.unscaled(states.forces(relaxed.x));
    if (fulfilled(forces)) {
      keep(relaxed);
      return;
    }
    tryInside(choices, forces, goal);
    open.add(new Node(choices, relaxed.value, Arrays.stream(relaxed.x).boxed().toList()));
  }

  private boolean fulfilled(double[] forces) {
    for (Branch branch : branches) {
      if (branch.miss(forces) > (MISS + slack) * states.scale()) {
        return false;
      }
    }
    return true;
  }

  /** Whether what the choices let through is possible: then a value without end is real. */
  private boolean exact(List<Branch.Choice> choices) {
    Program program = states.program(slack);
    for (int k = 0; k < branches.size(); k++) {
      states.addTo(
          program, branches.get(k).inner(choices.get(k), new double[states.columns()]), slack);
    }
    programs++;
    double[] goal = Arrays.copyOf(objective, objective.length - 1);
    return states.solve(program, goal).kind == Optimum.Kind.UNBOUNDED;
  }

  private void tryInside(List<Branch.Choice> choices, double[] near, double[] goal) {
    Program program = states.program(slack);
    for (int k = 0; k < branches.size(); k++) {
      states.addTo(program, branches.get(k).inner(choices.get(k), near), slack);
    }
    programs++;
    Optimum inside = states.solve(program, goal);
    if (inside.isFound() && fulfilled(states.unscaled(states.forces(inside.x)))) {
      keep(inside);
    } else if (inside.kind == Optimum.Kind.UNBOUNDED) {
      unbounded = true;
    }
  }

  private void keep(Optimum optimum) {
    if (optimum.value > best) {
      best = optimum.value;
      bestX = optimum.x;
    }
  }
}
