package bellcrank.statics.study;

import bellcrank.statics.units.Dimension;
import java.util.OptionalDouble;

/** What a figure comes to, or why it comes to nothing. */
public sealed interface FigureAnswer {

  /**
   * A number.
   *
   * @param si in SI units
   * @param dimension what kind of quantity it is
   */
  record Is(double si, Dimension dimension) implements FigureAnswer {}

  /**
   * There is no such number.
   *
   * @param reason what kind of reason there is
   * @param why the reason in words, part of a sentence
   */
  record None(Reason reason, String why) implements FigureAnswer {}

  /** Why there is no number. */
  enum Reason {
    /** The device is not in balance, or does not hold. */
    NO_BALANCE("no balance"),
    /** Statics does not fix it. */
    UNDETERMINED("undetermined"),
    /** The number does not exist here, as the direction of a force of zero. */
    NOT_DEFINED("not defined"),
    /** It could not be decided. */
    NOT_DECIDED("not decided"),
    /** There is no end to it: it is more than any number. */
    UNLIMITED("unlimited");

    private final String words;

    Reason(String words) {
      this.words = words;
    }

    /**
     * The reason in words.
     *
     * @return one or two words
     */
    public String words() {
      return words;
    }
  }

  /**
   * Whether there is no end to it, so that it is more than any number.
   *
   * @return true if so
   */
  default boolean isUnlimited() {
    return this instanceof None none && none.reason() == Reason.UNLIMITED;
  }

  /**
   * The number, if there is one.
   *
   * @return in SI units
   */
  default OptionalDouble number() {
    return this instanceof Is is ? OptionalDouble.of(is.si()) : OptionalDouble.empty();
  }
}
