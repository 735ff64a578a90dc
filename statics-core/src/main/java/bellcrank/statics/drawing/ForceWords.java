package bellcrank.statics.drawing;

import bellcrank.statics.equilibrium.DirectionWords;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Tells in sentences what acts on a free body. */
record ForceWords(FreeBody body, Amount amount) {

  List<String> sentences(List<ActingForce> forces) {
    List<String> all = new ArrayList<>();
    for (ActingForce force : forces) {
      all.add(
          force.symbol()
              + onto(force.on(), force.at())
              + (body.isZero(force.size())
                  ? ": zero."
                  : ": " + amount.force(force.size()) + " " + way(force.vector()) + "."));
    }
    for (SpreadForce spread : body.spreads()) {
      all.add(spread.part() + " on " + spread.on() + ", spread: " + intensities(spread) + ".");
    }
    for (ActingCouple couple : body.couples()) {
      all.add("Couple of " + couple.part() + " on " + couple.on() + ": " + moment(couple) + ".");
    }
    for (OpenForce force : body.openForces()) {
      all.add(force.symbol() + onto(force.on(), force.at()) + ": not known.");
    }
    for (OpenCouple couple : body.openCouples()) {
      all.add("Couple of " + couple.part() + " on " + couple.on() + ": not known.");
    }
    return all.isEmpty() ? List.of("Nothing acts on it.") : all;
  }

  private String moment(ActingCouple couple) {
    return body.isZeroCouple(couple.moment())
        ? "zero"
        : amount.moment(Math.abs(couple.moment()))
            + (couple.moment() > 0 ? " counter-clockwise" : " clockwise");
  }

  private String intensities(SpreadForce spread) {
    Vector total = spread.total();
    String both =
        amount.intensity(spread.start().norm()) + " to " + amount.intensity(spread.end().norm());
    return body.isZero(total.norm())
        ? both + ", which add up to no force"
        : both + ", in all " + amount.force(total.norm()) + " " + way(total);
  }

  private static String way(Vector vector) {
    return DirectionWords.of(vector);
  }

  private String onto(String on, Point at) {
    Places places = new Places(body.device(), body.pose());
    for (Map.Entry<String, Point> point : body.device().points().entrySet()) {
      Point place = places.pose().frame(on).apply(point.getValue());
      if (place.distance(at) <= 1e-6 * body.device().size()) {
        return " on " + on + " at " + point.getKey();
      }
    }
    return " on " + on;
  }
}
