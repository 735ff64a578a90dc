package bellcrank.statics.limits;

import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;

/**
 * One force that a part can give, in a sense that it can give: a cone of friction is the sum of
 * multiples of its two edges, a base is one such cone at either end, a wrapped rope the two
 * extremes of its tensions. So one-sidedness and friction are nothing but multiples of 0 or more.
 *
 * @param part name of the connection
 * @param anySign whether its multiple may be below 0
 * @param pushes what one unit does to bodies
 * @param reads what one unit adds to the part's answers, by their names
 */
record PlainForce(String part, boolean anySign, List<Push> pushes, Map<String, Double> reads) {

  /**
   * A force at a place on a body.
   *
   * @param body name of the body
   * @param at the place
   * @param force in N
   */
  record Push(String body, Point at, Vector force) {

    double momentAboutOrigin() {
      return at.x() * force.y() - at.y() * force.x();
    }
  }

  double reads(String what) {
    Double value = reads.get(what);
    return value == null ? 0 : value;
  }
}
