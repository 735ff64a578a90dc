package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.units.Quantity;
import java.util.Optional;

/** What shall hold of a model that is searched for. */
public sealed interface Goal {

  /**
   * A figure is at most as much as a bound.
   *
   * @param figure the figure
   * @param bound what it may come to; kept if it is met to 1e-9 of it
   */
  record AtMost(Figure figure, Quantity bound) implements Goal {
    @Override
    public String text() {
      return figure.text() + " at most " + Goal.text(bound);
    }
  }

  /**
   * A figure is at least as much as a bound. What has no limit, such as a multiple of loads at
   * which nothing gives, is more than any bound.
   *
   * @param figure the figure
   * @param bound what it must come to; kept if it is met to 1e-9 of it
   */
  record AtLeast(Figure figure, Quantity bound) implements Goal {
    @Override
    public String text() {
      return figure.text() + " at least " + Goal.text(bound);
    }
  }

  /**
   * A figure lies between two bounds.
   *
   * @param figure the figure
   * @param least what it must come to at least
   * @param greatest what it may come to, the least or more
   */
  record Between(Figure figure, Quantity least, Quantity greatest) implements Goal {

    /**
     * Checks the order.
     *
     * @param figure the figure
     * @param least what it must come to at least
     * @param greatest what it may come to, the least or more
     * @throws ModelException if the bounds are of different kinds or not in order
     */
    public Between {
      if (least.dimension() != greatest.dimension()) {
        throw new ModelException(
            figure.text(),
            "bounds",
            least.dimension().noun() + " and " + greatest.dimension().noun(),
            "two of one kind");
      }
      if (least.si() > greatest.si()) {
        throw new ModelException(
            figure.text(),
            "bounds",
            Goal.text(least) + " to " + Goal.text(greatest),
            "the least one first");
      }
    }

    @Override
    public String text() {
      return figure.text() + " from " + Goal.text(least) + " to " + Goal.text(greatest);
    }
  }

  /**
   * A figure has one value. Angles count modulo a whole turn.
   *
   * @param figure the figure
   * @param value the value; kept if it is met to 1e-9 of it
   */
  record Equal(Figure figure, Quantity value) implements Goal {
    @Override
    public String text() {
      return figure.text() + " equal to " + Goal.text(value);
    }
  }

  /**
   * The device stands: it holds whatever of the possible states it is in, or is just about to give
   * way. One that can only hold once seated does not count.
   *
   * @param loadCase name of the case; empty for the first
   */
  record Stands(Optional<String> loadCase) implements Goal {
    @Override
    public String text() {
      return "the device stands" + loadCase.map(name -> " in " + name).orElse("");
    }
  }

  /**
   * At most.
   *
   * @param figure the figure
   * @param bound what it may come to
   * @return the goal
   */
  static Goal atMost(Figure figure, Quantity bound) {
    return new AtMost(figure, bound);
  }

  /**
   * At least.
   *
   * @param figure the figure
   * @param bound what it must come to
   * @return the goal
   */
  static Goal atLeast(Figure figure, Quantity bound) {
    return new AtLeast(figure, bound);
  }

  /**
   * Between two bounds.
   *
   * @param figure the figure
   * @param least what it must come to at least
   * @param greatest what it may come to
   * @return the goal
   * @throws ModelException if the bounds are of different kinds or not in order
   */
  static Goal between(Figure figure, Quantity least, Quantity greatest) {
    return new Between(figure, least, greatest);
  }

  /**
   * One value.
   *
   * @param figure the figure
   * @param value the value
   * @return the goal
   */
  static Goal equal(Figure figure, Quantity value) {
    return new Equal(figure, value);
  }

  /**
   * The device stands under its first case.
   *
   * @return the goal
   */
  static Goal stands() {
    return new Stands(Optional.empty());
  }

  /**
   * The device stands under a case.
   *
   * @param loadCase name of the case
   * @return the goal
   */
  static Goal stands(String loadCase) {
    return new Stands(Optional.of(loadCase));
  }

  /**
   * The goal in words, quantities in SI units.
   *
   * @return a clause
   */
  String text();

  /** A bound in words: as many digits as a slip would show in. */
  private static String text(Quantity quantity) {
    return quantity.format(quantity.dimension().si(), 6);
  }
}
