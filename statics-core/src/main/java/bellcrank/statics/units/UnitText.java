package bellcrank.statics.units;

import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the text of a unit: factors, products, one quotient, small powers. */
final class UnitText {
  /** More factors are no unit of statics; the bound keeps every factor within a double. */
  private static final int MOST_FACTORS = 6;

  /** The highest power that is read; what repeated factors make must be readable again. */
  private static final int HIGHEST = 4;

  private static final Pattern FACTOR =
      Pattern.compile(
          "(tonf-U[SK]|\\p{L}++|°)(?:\\^(-?[1-4])|(⁻?)([¹²³⁴])|([2-4]))?+(?![0-9^⁻¹²³⁴])");
  private static final Pattern PRODUCT = Pattern.compile(" *+[·⋅×*.-] *+| ++");
  private static final Pattern QUOTIENT = Pattern.compile(" *+/ *+");

  /** Signs and words that stand for a unit only when alone. */
  private static final Map<String, String> ALONE =
      Map.ofEntries(
          Map.entry("'", "ft"),
          Map.entry("′", "ft"),
          Map.entry("\"", "in"),
          Map.entry("″", "in"),
          Map.entry("''", "in"),
          Map.entry("Nm", "N·m"),
          Map.entry("kNm", "kN·m"),
          Map.entry("Nmm", "N·mm"),
          Map.entry("Ncm", "N·cm"));

  private UnitText() {}

  /** The unit, which must measure one of the wanted kinds. */
  static Unit parse(String text, Set<Dimension> wanted) {
    String plain = Spaces.plain(text);
    Unit unit;
    if (plain.isEmpty()) {
      unit = UnitList.PLAIN;
    } else if (plain.equals("%")) {
      unit = UnitList.PERCENT;
    } else {
      unit = compoundUnit(plain, text, wanted);
    }
    if (!wanted.contains(unit.dimension())) {
      throw UnitMistake.mismatch(text, unit, wanted.iterator().next());
    }
    return unit;
  }

  private static Unit compoundUnit(String plain, String text, Set<Dimension> wanted) {
    try {
      Compound compound = compound(ALONE.getOrDefault(plain, plain), wanted);
      if (compound.exponents().values().stream().anyMatch(power -> Math.abs(power) > HIGHEST)) {
        throw UnitMistake.unreadable(plain, wanted);
      }
      if (compound.exponents().isEmpty()) {
        return UnitList.PLAIN;
      }
      Dimension dimension =
          compound.dimension().orElseThrow(() -> UnitMistake.noKind(plain, compound, wanted));
      return UnitList.find(compound).orElseGet(() -> compound.unit(dimension));
    } catch (QuantityException e) {
      throw e.about(text);
    }
  }

  /** The factors of a text that is known to be right. */
  static Compound compound(String text) {
    return compound(text, Set.of());
  }

  private static Compound compound(String text, Set<Dimension> wanted) {
    Matcher factor = FACTOR.matcher(text);
    Matcher product = PRODUCT.matcher(text);
    Matcher quotient = QUOTIENT.matcher(text);
    Compound compound = Compound.one();
    boolean divided = false;
    int at = 0;
    for (int factors = 1; factors <= MOST_FACTORS; factors++) {
      factor.region(at, text.length());
      if (!factor.lookingAt()) {
        throw UnitMistake.unreadable(text, wanted);
      }
      compound =
          compound.times(
              atom(factor, text, wanted), divided ? -exponent(factor) : exponent(factor));
      at = factor.end();
      if (at == text.length()) {
        return compound;
      }
      // what follows one divisor could belong above or below the line
      if (divided) {
        throw UnitMistake.unreadable(text, wanted);
      }
      quotient.region(at, text.length());
      product.region(at, text.length());
      if (quotient.lookingAt()) {
        divided = true;
        at = quotient.end();
      } else if (product.lookingAt()) {
        at = product.end();
      } else {
        throw UnitMistake.unreadable(text, wanted);
      }
    }
    throw UnitMistake.unreadable(text, wanted);
  }

  private static Atom atom(Matcher factor, String text, Set<Dimension> wanted) {
    String symbol = group(factor, 1);
    return Atoms.find(symbol.equals("°") ? "deg" : symbol)
        .orElseThrow(() -> UnitMistake.unknown(symbol, text, wanted));
  }

  private static int exponent(Matcher factor) {
    String digits = group(factor, 2) + group(factor, 5);
    if (!digits.isEmpty()) {
      return Integer.parseInt(digits);
    }
    String superscript = group(factor, 4);
    if (superscript.isEmpty()) {
      return 1;
    }
    int size = "¹²³⁴".indexOf(superscript) + 1;
    return group(factor, 3).isEmpty() ? size : -size;
  }

  private static String group(Matcher matcher, int number) {
    String found = matcher.group(number);
    return found == null ? "" : found;
  }
}
