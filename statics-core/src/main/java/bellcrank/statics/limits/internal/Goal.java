package bellcrank.statics.limits.internal;

/** What is made greatest: a sum of multiples of the forces and of the varied number. */
public final class Goal {

  final double[] forces;
  final double number;

  private final boolean drives;

  private Goal(double[] forces, double number, boolean drives) {
    this.forces = forces;
    this.drives = drives;
    this.number = number;
  }

  /** A sum of multiples of the forces. */
  public static Goal forces(double[] multiples) {
    return new Goal(multiples.clone(), 0, false);
  }

  /** One force. */
  public static Goal force(int column, double multiple, int columns) {
    double[] multiples = new double[columns];
    multiples[column] = multiple;
    return new Goal(multiples, 0, false);
  }

  /** The number by which loads are multiplied, or its negative. */
  public static Goal number(double sign, int columns) {
    return new Goal(new double[columns], sign, false);
  }

  /** Any state will do. */
  public static Goal none(int columns) {
    return new Goal(new double[columns], 0, false);
  }

  /** The same goal, its forces being efforts that drive what gives way. */
  public Goal driven() {
    return new Goal(forces, number, true);
  }

  /** Multiples of the forces that drive what gives way; empty if loads do. */
  public double[] soughtForces() {
    return drives ? forces.clone() : new double[0];
  }

  /** This goal times a number. */
  public Goal times(double multiple) {
    double[] sum = forces.clone();
    for (int j = 0; j < sum.length; j++) {
      sum[j] *= multiple;
    }
    return new Goal(sum, number * multiple, drives);
  }

  /** This goal and a multiple of another. */
  public Goal plus(Goal other, double multiple) {
    double[] sum = forces.clone();
    for (int j = 0; j < sum.length; j++) {
      sum[j] += multiple * other.forces[j];
    }
    return new Goal(sum, number + multiple * other.number, drives);
  }

  /** The sum of multiples at given forces. */
  public double at(double[] values) {
    double sum = 0;
    for (int j = 0; j < forces.length; j++) {
      sum += forces[j] * values[j];
    }
    return sum;
  }

  /** The opposite. */
  public Goal negative() {
    return times(-1);
  }
}
