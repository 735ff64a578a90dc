package bellcrank.statics.units;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A product of atoms with exponents. Two are equal when they have the same factors, in any order.
 *
 * @param exponents no exponent is zero; in the order written
 */
record Compound(Map<Atom, Integer> exponents) {

  static Compound one() {
    return new Compound(Map.of());
  }

  Compound times(Atom atom, int exponent) {
    Map<Atom, Integer> changed = new LinkedHashMap<>(exponents);
    int sum = changed.getOrDefault(atom, 0) + exponent;
    if (sum == 0) {
      changed.remove(atom);
    } else {
      changed.put(atom, sum);
    }
    return new Compound(changed);
  }

  /** The kind of quantity, if it is one of ours. */
  Optional<Dimension> dimension() {
    Powers powers = Powers.NONE;
    for (Map.Entry<Atom, Integer> factor : exponents.entrySet()) {
      powers = powers.times(factor.getKey().powers(), factor.getValue());
    }
    for (Dimension dimension : Dimension.values()) {
      if (dimension.powers().equals(powers)) {
        return Optional.of(dimension);
      }
    }
    return Optional.empty();
  }

  /** The unit that this is, given its kind of quantity. */
  Unit unit(Dimension dimension) {
    BigDecimal factor = BigDecimal.ONE;
    for (Map.Entry<Atom, Integer> entry : exponents.entrySet()) {
      BigDecimal power = entry.getKey().value().pow(Math.abs(entry.getValue()), Atom.PRECISE);
      factor =
          entry.getValue() > 0
              ? factor.multiply(power, Atom.PRECISE)
              : factor.divide(power, Atom.PRECISE);
    }
    return new Unit(symbol(), dimension, factor.doubleValue(), source());
  }

  /** Force first, then in the order written; one divisor behind a slash, more as exponents. */
  private String symbol() {
    List<String> above = new ArrayList<>();
    List<String> below = new ArrayList<>();
    List<String> inverse = new ArrayList<>();
    for (Map.Entry<Atom, Integer> entry : ordered()) {
      String name = entry.getKey().symbol();
      int exponent = entry.getValue();
      if (exponent > 0) {
        above.add(name + (exponent == 1 ? "" : superscript(exponent)));
      } else {
        below.add(name + (exponent == -1 ? "" : superscript(-exponent)));
        inverse.add(name + "⁻" + superscript(-exponent));
      }
    }
    if (below.size() == 1 && !above.isEmpty()) {
      return String.join("·", above) + "/" + below.get(0);
    }
    above.addAll(inverse);
    return String.join("·", above);
  }

  /** In the order printed: divisors last, force before length. */
  private List<Map.Entry<Atom, Integer>> ordered() {
    List<Map.Entry<Atom, Integer>> ordered = new ArrayList<>(exponents.entrySet());
    ordered.sort(
        Comparator.comparing((Map.Entry<Atom, Integer> factor) -> factor.getValue() < 0)
            .thenComparing(factor -> !factor.getKey().leads()));
    return ordered;
  }

  private String source() {
    if (exponents.size() == 1 && exponents.containsValue(1)) {
      return exponents.keySet().iterator().next().source();
    }
    return ordered().stream()
        .map(Map.Entry::getKey)
        .map(atom -> atom.symbol() + ": " + atom.source())
        .collect(Collectors.joining(" | ", "derived from ", ""));
  }

  private static String superscript(int exponent) {
    StringBuilder digits = new StringBuilder();
    for (char digit : Integer.toString(exponent).toCharArray()) {
      digits.append("⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(digit - '0'));
    }
    return digits.toString();
  }
}
