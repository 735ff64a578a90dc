package bellcrank.examples.file;

import java.util.Optional;
import java.util.regex.Pattern;

/** Reads counts. */
final class WholeNumber {

  private static final Pattern DIGITS = Pattern.compile("[0-9]{1,10}");

  private WholeNumber() {}

  /** A whole number of at least so much. */
  static Optional<Integer> read(Spot spot, int least) {
    return read(spot, least, Integer.MAX_VALUE, "a whole number of " + least + " or more");
  }

  /** A whole number within bounds, both included. */
  static Optional<Integer> read(Spot spot, int least, int most) {
    return read(spot, least, most, "a whole number from " + least + " to " + most);
  }

  private static Optional<Integer> read(Spot spot, int least, int most, String wanted) {
    Optional<String> text = spot.text(wanted);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (!DIGITS.matcher(text.get()).matches()) {
      return spot.refuse(wanted);
    }
    long number = Long.parseLong(text.get());
    return number >= least && number <= most ? Optional.of((int) number) : spot.refuse(wanted);
  }
}
