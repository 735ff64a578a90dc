package bellcrank.statics.study.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Which number a search for a limit varies beside the forces. */
sealed interface Varied {

  /** None. */
  record Nothing() implements Varied {}

  /**
   * The multiple of loads.
   *
   * @param loads their names
   */
  record Loads(Set<String> loads) implements Varied {}

  /**
   * The place of a force or weight along a line, in m from its start.
   *
   * @param load name of the load
   * @param from name of the point where the line starts
   * @param to name of the point to which it leads
   */
  record Place(String load, String from, String to) implements Varied {}

  /** The factor on all coefficients of friction. */
  record Friction() implements Varied {}

  /** The loads at a number. */
  default List<DualAction> loads(DualDevice at, List<DualAction> given, Dual number) {
    List<DualAction> all = new ArrayList<>();
    for (DualAction action : given) {
      if (this instanceof Loads some && some.loads().contains(action.owner())) {
        all.add(action.times(number));
      } else if (this instanceof Place place && place.load().equals(action.owner())) {
        DualVector from = at.point(place.from());
        DualVector along = at.point(place.to()).minus(from).unit();
        all.add(
            new DualAction(
                action.owner(),
                -1,
                action.body(),
                action.other(),
                from.plus(along.times(number)),
                action.force(),
                action.couple()));
      } else {
        all.add(action);
      }
    }
    return all;
  }
}
