package bellcrank.statics.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the equations of a solution in plain text, puts in the values that stand there, and sees
 * whether they hold. It knows nothing but the text.
 */
final class PrintedEquations {

  private static final Pattern FOUND =
      Pattern.compile("   (\\S+) = (−?[0-9.]+(?:e-?[0-9]+)?)(?: \\S+)? \\(.*\\)");
  private static final Pattern LINE = Pattern.compile("   (.+) = 0");
  private static final Pattern GIVEN =
      Pattern.compile("  (\\S+): .*, ([0-9.]+(?:e-?[0-9]+)?) \\S+ ([^,]*)");
  private static final Pattern NUMBER = Pattern.compile("\\(?(−?[0-9.]+(?:e-?[0-9]+)?)[^0-9]*");
  private static final String FIGURE = "(−?[0-9.]+(?:e-?[0-9]+)?)";
  private static final Pattern POWER =
      Pattern.compile("e\\^\\(" + FIGURE + " · " + FIGURE + "\\) = " + FIGURE);
  private static final Pattern CIRCLE =
      Pattern.compile(FIGURE + " \\S+ · sin\\(" + FIGURE + "\\) = " + FIGURE);
  private static final Pattern THREAD =
      Pattern.compile(FIGURE + " \\S+ · tan\\(" + FIGURE + " ([+−]) " + FIGURE + "\\) = " + FIGURE);
  private static final Pattern PRODUCT =
      Pattern.compile(
          FIGURE + "(?: [^ 0-9]\\S*)? · " + FIGURE + " [^ 0-9]\\S* = " + FIGURE + " [^ ]+");
  private static final Pattern RATIO =
      Pattern.compile("   (\\S+) / (\\S+) = " + FIGURE + " \\S+ / " + FIGURE + " \\S+ = " + FIGURE);
  private static final double CLOSE = 1e-4;

  private PrintedEquations() {}

  /** How many equations were worked out again; each was found to hold. */
  static int check(String text) {
    Map<String, Double> values = new HashMap<>();
    List<String> equations = new ArrayList<>();
    for (String line : text.lines().toList()) {
      Matcher found = FOUND.matcher(line);
      Matcher given = GIVEN.matcher(line);
      Matcher equation = LINE.matcher(line);
      if (found.matches()) {
        values.put(found.group(1), number(found.group(2)));
      } else if (given.matches()) {
        double size = number(given.group(2));
        values.put(given.group(1), given.group(3).equals("clockwise") ? -size : size);
      } else if (equation.matches() && !RATIO.matcher(line).matches()) {
        equations.add(equation.group(1));
      }
    }
    for (String equation : equations) {
      check(equation, values);
    }
    text.lines().forEach(line -> laws(line, values));
    return equations.size();
  }

  /** Laws that stand in sentences, and ratios on lines of their own. */
  private static void laws(String line, Map<String, Double> values) {
    each(POWER, line, m -> same(line, Math.exp(at(m, 1) * at(m, 2)), at(m, 3)));
    each(CIRCLE, line, m -> same(line, at(m, 1) * Math.sin(at(m, 2)), at(m, 3)));
    each(
        THREAD,
        line,
        m -> {
          double sign = m.group(3).equals("+") ? 1 : -1;
          same(line, at(m, 1) * Math.tan(at(m, 2) + sign * at(m, 4)), at(m, 5));
        });
    each(PRODUCT, line, m -> same(line, at(m, 1) * at(m, 2), at(m, 3)));
    Matcher ratio = RATIO.matcher(line);
    if (ratio.matches()) {
      same(line, at(ratio, 3) / at(ratio, 4), at(ratio, 5));
      // the symbols were found before, if they are shown at all
      same(line, values.getOrDefault(ratio.group(1), at(ratio, 3)), at(ratio, 3));
      same(line, values.getOrDefault(ratio.group(2), at(ratio, 4)), at(ratio, 4));
    }
  }

  private static void each(Pattern pattern, String line, Consumer<Matcher> check) {
    Matcher matcher = pattern.matcher(line);
    while (matcher.find()) {
      check.accept(matcher);
    }
  }

  private static double at(Matcher matcher, int group) {
    return number(matcher.group(group));
  }

  private static void same(String line, double expected, double printed) {
    assertThat(printed).as(line).isCloseTo(expected, within(CLOSE * (1e-9 + Math.abs(expected))));
  }

  private static void check(String equation, Map<String, Double> values) {
    double sum = 0;
    double largest = 0;
    for (Map.Entry<String, Double> term : terms(equation).entrySet()) {
      double product = term.getValue();
      for (String factor :
          term.getKey().substring(term.getKey().indexOf(' ') + 1).split(" · ", -1)) {
        product *= value(factor.strip(), values);
      }
      sum += product;
      largest = Math.max(largest, Math.abs(product));
    }
    assertThat(sum).as(equation).isCloseTo(0, within(CLOSE * largest));
  }

  /** Terms, numbered so that equal ones count twice, with their signs. */
  private static Map<String, Double> terms(String equation) {
    Map<String, Double> terms = new HashMap<>();
    boolean negated = equation.startsWith("−") && !equation.matches("−[0-9.]+(e-?[0-9]+)? N = 0");
    String rest = negated ? equation.substring(1) : equation;
    double sign = negated ? -1 : 1;
    int from = 0;
    Matcher next = Pattern.compile(" ([+−]) ").matcher(rest);
    while (next.find()) {
      terms.put(terms.size() + " " + rest.substring(from, next.start()), sign);
      sign = next.group(1).equals("+") ? 1 : -1;
      from = next.end();
    }
    terms.put(terms.size() + " " + rest.substring(from), sign);
    return terms;
  }

  private static double value(String factor, Map<String, Double> values) {
    Matcher number = NUMBER.matcher(factor);
    if (number.matches()) {
      return number(number.group(1));
    }
    Double value = values.get(factor);
    assertThat(value).as("a value for " + factor).isNotNull();
    return value == null ? 0 : value;
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace('−', '-'));
  }
}
