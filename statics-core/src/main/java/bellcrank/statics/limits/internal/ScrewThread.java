package bellcrank.statics.limits.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * The thread of a screw: the couple that turns it lies between P·r·tan(α − φ), where the load would
 * drive it, and P·r·tan(α + φ), where it drives the load; tan α = lead/(2πr), tan φ = μ, P the
 * axial force, pressing positive, and the couple positive where it drives the ends apart (the
 * inclined plane wound round a cylinder; see Engineering Statics: Open and Interactive, section on
 * screws). A screw that is pulled has the two ends exchanged, so a choice is the sense of P.
 */
final class ScrewThread implements Branch {

  private final int connection;
  private final int axial;
  private final List<Integer> sought;
  private final double given;
  private final double withLoad;
  private final double againstLoad;
  private final boolean binds;

  /**
   * A thread.
   *
   * @param axial unknown of the axial force, tension positive
   * @param sought unknowns of couples on it
   * @param given sum of the given couples on it, scaled
   * @param slope tan α
   * @param radius mean radius, scaled
   */
  ScrewThread(
      int connection,
      int axial,
      List<Integer> sought,
      double given,
      double slope,
      double radius,
      double friction) {
    this.connection = connection;
    this.axial = axial;
    this.sought = List.copyOf(sought);
    this.given = given;
    withLoad = radius * (slope - friction) / (1 + slope * friction);
    binds = slope * friction >= 1;
    againstLoad = binds ? 0 : radius * (slope + friction) / (1 - slope * friction);
  }

  @Override
  public boolean isProportional() {
    return given == 0;
  }

  @Override
  public Choice whole() {
    return new Choice(-1, 1);
  }

  @Override
  public List<Bound> outer(Choice choice) {
    List<Bound> bounds = new ArrayList<>();
    if (choice.from() * choice.to() >= 0) {
      // sense 1: pressed, so the axial force as a tension is below zero
      int sense = choice.to() > 0 ? 1 : -1;
      bounds.add(new Bound(connection, Bound.Kind.PART, 0, 0, new int[] {axial}, sense));
      bounds.add(couple(sense, -1, withLoad));
      if (!binds) {
        bounds.add(couple(sense, 1, againstLoad));
      }
    }
    return bounds;
  }

  /**
   * The couple in the sense of the load times {@code side} is at most that multiple of the load.
   */
  private Bound couple(int sense, int side, double perLoad) {
    int[] columns = new int[sought.size() + 1];
    double[] multiples = new double[sought.size() + 1];
    columns[0] = axial;
    // sense · P = −sense · tension
    multiples[0] = side * perLoad * sense;
    for (int k = 0; k < sought.size(); k++) {
      columns[k + 1] = sought.get(k);
      multiples[k + 1] = side * sense;
    }
    double limit = -side * sense * given;
    return new Bound(connection, Bound.Kind.SCREW, side * sense, limit, columns, multiples);
  }

  @Override
  public List<Bound> inner(Choice choice, double[] forces) {
    boolean divided = choice.from() * choice.to() >= 0;
    return outer(divided ? choice : forces[axial] > 0 ? new Choice(-1, 0) : new Choice(0, 1));
  }

  @Override
  public double miss(double[] forces) {
    int sense = forces[axial] > 0 ? -1 : 1;
    double worst = couple(sense, -1, withLoad).sum(forces) - couple(sense, -1, withLoad).limit;
    if (!binds) {
      Bound other = couple(sense, 1, againstLoad);
      worst = Math.max(worst, other.sum(forces) - other.limit);
    }
    return worst;
  }

  @Override
  public List<Choice> split(Choice choice, double[] forces) {
    return choice.from() * choice.to() >= 0
        ? List.of()
        : List.of(new Choice(-1, 0), new Choice(0, 1));
  }

  @Override
  public List<Bound> atLimit(double[] forces, double slack) {
    List<Bound> bounds = new ArrayList<>();
    int sense = forces[axial] > 0 ? -1 : 1;
    Bound with = couple(sense, -1, withLoad);
    if (with.sum(forces) >= with.limit - slack) {
      bounds.add(with);
    }
    Bound against = couple(sense, 1, againstLoad);
    if (!binds && against.sum(forces) >= against.limit - slack) {
      bounds.add(against);
    }
    return bounds;
  }

  @Override
  public double room(Bound bound, double[] forces) {
    return bound.limit - bound.sum(forces);
  }
}
