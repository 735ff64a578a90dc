package bellcrank.examples.fuzz;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.QuantityException;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * For a search led by coverage: bytes that choose a kind of quantity and write its text, by pieces
 * of quantities or as they are.
 */
public final class QuantityFuzz {

  private static final List<Dimension> DIMENSIONS = List.of(Dimension.values());

  private static final List<String> PIECES =
      List.of(
          "0",
          "1",
          "2",
          "9",
          "12",
          "1/2",
          " 3/4",
          "-",
          "+",
          ".",
          "e",
          "E",
          "e5",
          "e-7",
          " ",
          "\t",
          "\u00A0",
          "\u2009",
          "'",
          "\"",
          "\u2032",
          "\u2033",
          " ft ",
          " in",
          "ft",
          "in",
          " lb ",
          " oz",
          "lbf",
          "kN",
          "N",
          "m",
          "mm",
          "kg",
          "t",
          "N·m",
          "N*m",
          "lbf·ft",
          "/",
          "·",
          "/m",
          "kN/m\u00B2",
          "MPa",
          "psi",
          "m/s\u00B2",
          "m/s^2",
          "^2",
          "\u00B2",
          "deg",
          "°",
          "rad",
          "%",
          "N·m/rad",
          "kgf",
          ",",
          "_",
          "\u0663",
          "\u2212",
          "\u00BD",
          "\u221E",
          "NaN",
          "0x1p3",
          "e999999999",
          "e-999999999",
          "e2147483648",
          "99999999999999999999",
          "0.000000000001",
          "\uD83D\uDE00",
          "\u0000",
          "(",
          ")",
          "daN",
          "µm",
          "\u03BCm",
          "cwt",
          "ton",
          "lb");

  /** Up to this size what is written can be read again in all units. */
  private static final double LARGEST = 1e290;

  private static final Tally TALLY = new Tally();

  private QuantityFuzz() {}

  /** One input. */
  public static void fuzzerTestOneInput(byte[] input) {
    run(input, TALLY);
  }

  static void run(byte[] input, Tally tally) {
    Choices choices = new Choices(input);
    Dimension wanted = DIMENSIONS.get(choices.below(DIMENSIONS.size()));
    String text = text(choices, wanted);
    long begin = System.nanoTime();
    String kind = look(text, wanted);
    tally.add(kind, System.nanoTime() - begin);
  }

  private static String text(Choices choices, Dimension wanted) {
    StringBuilder text = new StringBuilder();
    switch (choices.below(4)) {
      case 0 -> text.append(new String(choices.rest(), StandardCharsets.UTF_8));
      // nearly a quantity, with something behind it
      case 1 ->
          text.append(HostileWords.NUMBERS.get(choices.below(HostileWords.NUMBERS.size())))
              .append(' ')
              .append(wanted.si().symbol());
      default -> {
        // of pieces alone
      }
    }
    while (!choices.isUsedUp()) {
      text.append(PIECES.get(choices.below(PIECES.size())));
    }
    return text.toString();
  }

  private static String look(String text, Dimension wanted) {
    Quantity quantity;
    Unit unit;
    try {
      quantity = Quantity.parse(text, wanted, UnitSystem.US);
      unit = Quantity.unitOf(text, wanted, UnitSystem.US);
    } catch (QuantityException e) {
      clear(e);
      return "refused";
    }
    if (quantity.dimension() != wanted || !Double.isFinite(quantity.si())) {
      throw new AssertionError(text + " as " + wanted + ": " + quantity);
    }
    String written = quantity.format(unit, 15);
    if (Math.abs(quantity.si()) > LARGEST || isTiny(quantity.si())) {
      return "read, at the end of the range";
    }
    double again = Quantity.parse(written, wanted).si();
    double off = Math.abs(again - quantity.si());
    if (off > 1e-14 * Math.abs(quantity.si()) + Double.MIN_VALUE) {
      throw new AssertionError(text + " is written as " + written + " and read as " + again);
    }
    return "read and written again";
  }

  /** What is rounded there may be beyond all numbers. */
  private static boolean isTiny(double si) {
    return si != 0 && Math.abs(si) < 1 / LARGEST;
  }

  private static void clear(QuantityException e) {
    String message = e.getMessage();
    if (message == null || message.isBlank() || e.accepted().contains("Exception")) {
      throw new AssertionError("no clear refusal: " + message, e);
    }
  }

  /** At the end. */
  public static void fuzzerTearDown() {
    System.out.print(TALLY.figures());
  }
}
