package bellcrank.statics.equilibrium.internal;

/**
 * How a connection or sought quantity turns its unknowns into actions on bodies at a placement.
 * Each law owns a run of columns (unknowns) and a run of actions.
 */
abstract sealed class ForceLaw permits PointLaw, AxialLaw, RopeLaw, SoughtLaw {

  final String owner;
  int firstColumn;
  int firstAction;

  ForceLaw(String owner) {
    this.owner = owner;
  }

  abstract int columns();

  abstract int actions();

  /** Body of an action, relative to the law's first one; −1 is the ground. */
  abstract int bodyOf(int action);

  /** Column of an action, relative to the law's first one. */
  abstract int columnOf(int action);

  /** Whether the column is a couple (its unknown is then couple / size). */
  boolean isCouple(int column) {
    return false;
  }

  abstract void evaluate(Placements at, Actions out);
}
