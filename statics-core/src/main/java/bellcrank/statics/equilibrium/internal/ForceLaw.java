package bellcrank.statics.equilibrium.internal;

/**
 * How a connection or sought quantity turns its unknowns into actions on bodies at a placement.
 * Each law owns a run of columns (unknowns) and a run of actions, which come column by column.
 */
abstract sealed class ForceLaw permits PointLaw, AxialLaw, RopeLaw, SoughtLaw {

  final String owner;
  private final int columns;
  private final int actions;
  int firstColumn;
  int firstAction;

  ForceLaw(String owner, int columns, int actions) {
    this.owner = owner;
    this.columns = columns;
    this.actions = actions;
  }

  final int columns() {
    return columns;
  }

  final int actions() {
    return actions;
  }

  /**
   * Writes the unknown and the body of each of its actions.
   *
   * @param column unknowns by actions
   * @param body bodies by actions; −1 is the ground
   */
  abstract void wire(int[] column, int[] body);

  /** Whether the column, relative to the first one, is a couple (its unknown is couple / size). */
  boolean isCouple(int column) {
    return false;
  }

  /**
   * Whether it is fixed: its forces in the world, the places where they act in the bodies. Then
   * only their moments change, as the bodies turn.
   */
  boolean isFixed() {
    return false;
  }

  /**
   * Where an action enters its body.
   *
   * @param action number of the action among those of the law
   */
  abstract Entry entry(int action);

  /** Writes its actions at a placement. */
  abstract void evaluate(Placements at, Actions out);

  /**
   * Writes by how much the motion that each of its unknowns forbids has gone on since the drawn
   * pose, scaled: the power of a unit force is the rate of its gap. Zero where the connection fits.
   *
   * @param at where the bodies are
   * @param gaps by unknowns
   */
  abstract void gaps(Placements at, double[] gaps);
}
