package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits a program into parts that have no variable in common, as those of pieces that touch
 * without pressing on one another's free forces. Each part is solved for itself: the time that a
 * program takes grows with the cube of its size.
 */
final class IndependentParts {

  private final Program program;
  private final int[] of;

  private IndependentParts(Program program) {
    this.program = program;
    of = new int[program.variables()];
    for (int j = 0; j < of.length; j++) {
      of[j] = j;
    }
    for (int k = 0; k < program.size(); k++) {
      join(program.row(k));
    }
    for (int k = 0; k < program.equalSize(); k++) {
      join(program.equalRow(k));
    }
  }

  /**
   * Makes a sum greatest, part by part.
   *
   * @return how it comes out; what is found is a point of the whole program
   */
  static Optimum maximize(Program program, double[] objective) {
    return new IndependentParts(program).greatest(objective);
  }

  /** The first variable of the part that a variable is in. */
  private int first(int variable) {
    int first = variable;
    while (of[first] != first) {
      of[first] = of[of[first]];
      first = of[first];
    }
    return first;
  }

  private void join(double[] row) {
    int known = firstIn(row);
    for (int j = known + 1; known >= 0 && j < row.length; j++) {
      if (row[j] != 0) {
        int a = first(known);
        int b = first(j);
        of[Math.max(a, b)] = Math.min(a, b);
      }
    }
  }

  private static int firstIn(double[] row) {
    for (int j = 0; j < row.length; j++) {
      if (row[j] != 0) {
        return j;
      }
    }
    return -1;
  }

  private Optimum greatest(double[] objective) {
    List<List<Integer>> parts = new ArrayList<>();
    int[] index = new int[of.length];
    for (int j = 0; j < of.length; j++) {
      int first = first(j);
      if (first == j) {
        index[j] = parts.size();
        parts.add(new ArrayList<>());
      }
      parts.get(index[first]).add(j);
    }
    if (parts.size() < 2) {
      return new Simplex().greatest(program, objective);
    }
    List<Program> programs = new ArrayList<>();
    for (List<Integer> part : parts) {
      programs.add(new Program(part.size()));
    }
    for (int k = 0; k < program.size(); k++) {
      int part = index[first(Math.max(0, firstIn(program.row(k))))];
      programs.get(part).atMost(narrowed(program.row(k), parts.get(part)), program.limit(k));
    }
    for (int k = 0; k < program.equalSize(); k++) {
      int part = index[first(Math.max(0, firstIn(program.equalRow(k))))];
      programs
          .get(part)
          .equal(narrowed(program.equalRow(k), parts.get(part)), program.equalValue(k));
    }
    return together(parts, programs, objective);
  }

  private static double[] narrowed(double[] row, List<Integer> part) {
    double[] narrow = new double[part.size()];
    for (int k = 0; k < narrow.length; k++) {
      narrow[k] = row[part.get(k)];
    }
    return narrow;
  }

  private static Optimum together(
      List<List<Integer>> parts, List<Program> programs, double[] objective) {
    double[] x = new double[objective.length];
    double value = 0;
    boolean endless = false;
    boolean failed = false;
    for (int p = 0; p < programs.size(); p++) {
      List<Integer> part = parts.get(p);
      Optimum best = new Simplex().greatest(programs.get(p), narrowed(objective, part));
      if (best.kind == Optimum.Kind.INFEASIBLE) {
        return best;
      }
      endless |= best.kind == Optimum.Kind.UNBOUNDED;
      failed |= best.kind == Optimum.Kind.FAILED;
      if (best.isFound()) {
        value += best.value;
        for (int k = 0; k < part.size(); k++) {
          x[part.get(k)] = best.x[k];
        }
      }
    }
    if (failed) {
      return Optimum.failed();
    }
    return endless ? Optimum.unbounded() : Optimum.found(value, x);
  }
}
