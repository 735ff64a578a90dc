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
 */
record DualAction(
    String owner,
    int column,
    int body,
    int other,
    DualVector at,
    DualVector force,
    Dual couple) {

  static final int NONE = -2;

  Dual moment(DualVector about) {
    return at.minus(about).cross(force).plus(couple);
  }

  /** The action of so many units. */
  DualAction times(Dual size) {
    return new DualAction(owner, column, body, other, at, force.times(size), couple.times(size));
  }
}
