package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * What a one-sided or rough part can give: a function of some forces that is at most zero.
 *
 * @param columns the unknowns on which it depends
 * @param size what it is divided by to be a force: 1, or a length in m where it is a moment
 * @param law the function
 */
record Condition(List<Integer> columns, double size, Law law) {

  /** The function, with rates. */
  interface Law {
    /**
     * Its value.
     *
     * @param forces the unknowns in N and N·m
     * @param friction by what all coefficients of friction are multiplied
     */
    Dual of(List<Dual> forces, Dual friction);
  }

  /** Its value and its rate, the forces staying what they are. */
  Dual at(List<Dual> forces, double friction) {
    return law.of(own(forces), Dual.of(friction));
  }

  private List<Dual> own(List<Dual> forces) {
    List<Dual> own = new ArrayList<>();
    columns.forEach(column -> own.add(forces.get(column)));
    return own;
  }

  /** Its slope with one of its unknowns, by the place of that in the list. */
  double slope(List<Dual> forces, double friction, int which) {
    List<Dual> own = own(forces);
    own.set(which, new Dual(own.get(which).value(), 1));
    return law.of(own, Dual.of(friction)).rate();
  }

  /** Its slope with the factor on friction. */
  double slopeOfFriction(List<Dual> forces, double friction) {
    return law.of(own(forces), new Dual(friction, 1)).rate();
  }
}
