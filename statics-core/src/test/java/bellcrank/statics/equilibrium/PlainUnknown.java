package bellcrank.statics.equilibrium;

import java.util.List;

/**
 * One unknown of the plain assembly: what one unit of it does to bodies, the motion that goes with
 * it, and how the library is asked for it.
 *
 * @param ask text of the ask
 * @param part name of the connection or sought effort
 * @param sought whether it is a sought effort
 * @param unit SI value of one unit
 * @param forces what one unit does
 * @param motions what it forbids, as forces that would do no work; the same unless it is lossy
 */
record PlainUnknown(
    String ask, String part, boolean sought, double unit, List<Push> forces, List<Push> motions) {

  boolean isCouple() {
    return forces.stream().allMatch(push -> push.fx() == 0 && push.fy() == 0);
  }

  /**
   * A force at a place and a couple, on a body.
   *
   * @param body name of the body
   * @param x abscissa in m
   * @param y ordinate in m
   * @param fx component to the right
   * @param fy component up
   * @param couple counter-clockwise positive
   */
  record Push(String body, double x, double y, double fx, double fy, double couple) {

    double momentAboutOrigin() {
      return x * fy - y * fx + couple;
    }
  }
}
