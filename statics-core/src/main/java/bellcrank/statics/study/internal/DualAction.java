package bellcrank.statics.study.internal;

/**
 * A force at a place and a couple on one body, for one unit of an unknown or of a given load as it
 * stands.
 *
 * @param owner name of the connection or load
 * @param column the unknown; −1 for a given load
 * @param body the body; −1 for the ground
 * @param other the body from which it comes; −1 for the ground, −2 for none
 * @param at where it acts
 * @param force the force
 * @param couple the couple
 * @param entry where it enters the bars of its body
 */
record DualAction(
    String owner,
    int column,
    int body,
    int other,
    DualVector at,
    DualVector force,
    Dual couple,
    DualEntry entry) {

  static final int NONE = -2;

  /** An action that enters where it acts. */
  DualAction(
      String owner, int column, int body, int other, DualVector at, DualVector force, Dual couple) {
    this(owner, column, body, other, at, force, couple, new DualEntry.At(at));
  }

  DualAction entering(DualEntry where) {
    return new DualAction(owner, column, body, other, at, force, couple, where);
  }

  Dual moment(DualVector about) {
    return at.minus(about).cross(force).plus(couple);
  }

  /** The action of so many units. */
  DualAction times(Dual size) {
    return new DualAction(
        owner, column, body, other, at, force.times(size), couple.times(size), entry.times(size));
  }
}
