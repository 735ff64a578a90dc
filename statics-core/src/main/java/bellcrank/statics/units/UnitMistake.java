package bellcrank.statics.units;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Words the errors about units: what is wrong and which symbol was probably meant. */
final class UnitMistake {
  private static final int LONGEST_SHOWN = 60;
  private static final int MOST_SUGGESTIONS = 4;

  private static final Map<String, String> FORCE_OF_MASS =
      Map.of("lb", "lbf", "kg", "kgf", "oz", "ozf", "t", "tf");
  private static final Map<String, String> MASS_OF_FORCE =
      Map.of("lbf", "lb", "kgf", "kg", "ozf", "oz", "tf", "t");

  private static final String TONS =
      "write tonf-US (2000 lbf), tonf-UK (2240 lbf) or tf (1000 kgf) for a force, t (1000 kg) for a"
          + " mass";
  private static final String POUNDS = "write lbf for a force, lb for a mass";

  /** Words that are no symbols, each with the symbol to write. */
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("inch", "write in"),
          Map.entry("inches", "write in"),
          Map.entry("foot", "write ft"),
          Map.entry("feet", "write ft"),
          Map.entry("yard", "write yd"),
          Map.entry("yards", "write yd"),
          Map.entry("metre", "write m"),
          Map.entry("metres", "write m"),
          Map.entry("meter", "write m"),
          Map.entry("meters", "write m"),
          Map.entry("degree", "write deg"),
          Map.entry("degrees", "write deg"),
          Map.entry("newton", "write N"),
          Map.entry("newtons", "write N"),
          Map.entry("percent", "write %"),
          Map.entry("lbs", POUNDS),
          Map.entry("pound", POUNDS),
          Map.entry("pounds", POUNDS));

  private static final Set<String> AMBIGUOUS = Set.of("ton", "tons", "tonf", "tonne", "tonnes");

  private UnitMistake() {}

  /** A known unit of another kind than the wanted one. */
  static QuantityException mismatch(String text, Unit unit, Dimension wanted) {
    String shown = unit.symbol().isEmpty() ? "a number without a unit" : unit.symbol();
    String is =
        unit.dimension() == Dimension.NUMBER
            ? " is a plain number; "
            : " is a unit of " + unit.dimension().bareNoun() + "; ";
    Map<String, String> twins =
        wanted == Dimension.FORCE
            ? FORCE_OF_MASS
            : wanted == Dimension.MASS ? MASS_OF_FORCE : Map.<String, String>of();
    String twin = twins.getOrDefault(unit.symbol(), "");
    return new QuantityException(
        text,
        shown + is + wanted.noun() + " is wanted",
        twin.isEmpty() ? example(wanted) : "write " + twin);
  }

  /** A compound of known units that measures nothing of ours, often a mass in place of a force. */
  static QuantityException noKind(String text, Compound compound, Set<Dimension> wanted) {
    Compound asForce = Compound.one();
    for (Map.Entry<Atom, Integer> factor : compound.exponents().entrySet()) {
      String twin = FORCE_OF_MASS.getOrDefault(factor.getKey().symbol(), "");
      Atom atom = Atoms.find(twin).orElse(factor.getKey());
      asForce = asForce.times(atom, factor.getValue());
    }
    Compound meant = asForce;
    String accepted =
        meant
            .dimension()
            .filter(wanted::contains)
            .map(kind -> "write " + meant.unit(kind).symbol())
            .orElse(examples(wanted));
    return new QuantityException(
        text, shown(text) + " is no unit of a kind of quantity known here", accepted);
  }

  /** Text that is not made of symbols, products and one quotient. */
  static QuantityException unreadable(String text, Set<Dimension> wanted) {
    return new QuantityException(
        text,
        shown(text) + " cannot be read as a unit, which has symbols, products and one divisor",
        examples(wanted));
  }

  /** A symbol that is not known, or that means several units. */
  static QuantityException unknown(String symbol, String text, Set<Dimension> wanted) {
    String place = symbol.equals(text) ? "" : " in " + shown(text);
    if (AMBIGUOUS.contains(symbol)) {
      return new QuantityException(text, symbol + place + " alone is ambiguous", TONS);
    }
    String problem = shown(symbol) + place + " is not a known unit";
    String word = WORDS.getOrDefault(symbol, "");
    if (!word.isEmpty()) {
      return new QuantityException(text, problem, word);
    }
    List<String> near = near(symbol, text, wanted);
    if (near.isEmpty()) {
      return new QuantityException(text, problem, examples(wanted));
    }
    return new QuantityException(
        text, problem, "the nearest known is " + String.join(" or ", near));
  }

  /** The nearest symbols: those of the wanted kind if any is near, else of all kinds. */
  private static List<String> near(String symbol, String text, Set<Dimension> wanted) {
    if (symbol.length() == 1) {
      // every other letter would be one change away
      return Atoms.symbols().stream().filter(symbol::equalsIgnoreCase).collect(Collectors.toList());
    }
    List<String> known =
        symbol.equals(text)
            ? UnitList.listed().stream()
                .filter(unit -> wanted.contains(unit.dimension()))
                .map(Unit::symbol)
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toList())
            : List.of();
    List<String> near = NearestName.all(symbol, known);
    if (near.isEmpty()) {
      near = NearestName.all(symbol, Atoms.symbols());
    }
    return near.subList(0, Math.min(near.size(), MOST_SUGGESTIONS));
  }

  private static String examples(Set<Dimension> wanted) {
    if (wanted.size() == 1) {
      return example(wanted.iterator().next());
    }
    return "write for example m, ft, deg, N, lbf, kg, lb, N·m, lbf·ft, N/m, kPa or psi";
  }

  private static String example(Dimension wanted) {
    return wanted == Dimension.NUMBER
        ? "write " + wanted.examples()
        : "write for example " + wanted.examples();
  }

  /** The text in quotes, cut to a length that a message bears, without control characters. */
  static String shown(String text) {
    int[] points =
        text.codePoints()
            .limit(LONGEST_SHOWN)
            .map(point -> Character.isISOControl(point) ? '\uFFFD' : point)
            .toArray();
    String cut = text.codePointCount(0, text.length()) > LONGEST_SHOWN ? "…" : "";
    return "'" + new String(points, 0, points.length) + cut + "'";
  }
}
