package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.limits.Event;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.UnitSystem;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** What may happen in a sample, and whose chance is wanted. */
public sealed interface Happening {

  /**
   * A figure is above a bound. What has no end is above any; where it has no number otherwise this
   * is left open.
   *
   * @param figure the figure
   * @param bound the bound; what equals it is not above
   */
  record Above(Figure figure, Quantity bound) implements Happening {}

  /**
   * A figure is below a bound. What has no end is below none; where it has no number otherwise this
   * is left open.
   *
   * @param figure the figure
   * @param bound the bound; what equals it is not below
   */
  record Below(Figure figure, Quantity bound) implements Happening {}

  /** The device does not hold, or has no balance at all. */
  record GivesWay() implements Happening {}

  /**
   * The device does not hold, and one of some things happens at a part.
   *
   * @param kinds what may happen, at least one
   * @param part name of the connection; empty for any
   */
  record AtPart(Set<Event.Kind> kinds, Optional<String> part) implements Happening {

    /**
     * Copies the kinds.
     *
     * @param kinds what may happen, at least one
     * @param part name of the connection; empty for any
     * @throws ModelException if there is no kind
     */
    public AtPart {
      if (kinds.isEmpty()) {
        throw new ModelException("happening", "kinds", "none", "at least one");
      }
      kinds = Set.copyOf(EnumSet.copyOf(kinds));
    }

    boolean isOf(Event event) {
      return kinds.contains(event.kind()) && part.map(event.part()::equals).orElse(true);
    }
  }

  /**
   * A figure is above a bound.
   *
   * @param figure the figure
   * @param bound the bound
   * @return that it happens
   */
  static Happening above(Figure figure, Quantity bound) {
    return new Above(figure, bound);
  }

  /**
   * A figure is below a bound.
   *
   * @param figure the figure
   * @param bound the bound
   * @return that it happens
   */
  static Happening below(Figure figure, Quantity bound) {
    return new Below(figure, bound);
  }

  /**
   * The device gives way.
   *
   * @return that it happens
   */
  static Happening givesWay() {
    return new GivesWay();
  }

  /**
   * A contact, base or rope slips anywhere.
   *
   * @return that it happens
   */
  static Happening slips() {
    return new AtPart(EnumSet.of(Event.Kind.SLIDES, Event.Kind.SLIPS_ROUND), Optional.empty());
  }

  /**
   * A contact, base or rope slips.
   *
   * @param part name of the connection
   * @return that it happens
   */
  static Happening slips(String part) {
    return new AtPart(EnumSet.of(Event.Kind.SLIDES, Event.Kind.SLIPS_ROUND), Optional.of(part));
  }

  /**
   * A base tips, or a contact, base or roller lifts, anywhere.
   *
   * @return that it happens
   */
  static Happening tips() {
    return new AtPart(EnumSet.of(Event.Kind.TIPS, Event.Kind.LIFTS), Optional.empty());
  }

  /**
   * A base tips, or a contact, base or roller lifts.
   *
   * @param part name of the connection
   * @return that it happens
   */
  static Happening tips(String part) {
    return new AtPart(EnumSet.of(Event.Kind.TIPS, Event.Kind.LIFTS), Optional.of(part));
  }

  /**
   * Something happens at a part.
   *
   * @param kind what
   * @param part name of the connection
   * @return that it happens
   */
  static Happening of(Event.Kind kind, String part) {
    return new AtPart(EnumSet.of(kind), Optional.of(part));
  }

  /**
   * What happens, as a clause.
   *
   * @param units units of the bounds
   * @return such as {@code hand is above 90.00 N} or {@code heel slips}
   */
  default String words(UnitSystem units) {
    return HappeningWords.of(this, units);
  }
}
