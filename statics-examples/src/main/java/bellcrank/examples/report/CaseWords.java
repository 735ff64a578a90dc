package bellcrank.examples.report;

import bellcrank.statics.device.LoadCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says which loads a case takes how many times. */
final class CaseWords {

  private CaseWords() {}

  /** Name and factors; the name alone if all factors are 1. */
  static String of(LoadCase loadCase) {
    List<String> factors = new ArrayList<>();
    loadCase
        .factors()
        .forEach(
            (load, factor) -> {
              if (factor != 1) {
                factors.add(load + " × " + number(factor));
              }
            });
    if (loadCase.dynamic() != 1) {
      factors.add("all loads × " + number(loadCase.dynamic()) + " (dynamic)");
    }
    String words = "Case " + loadCase.name();
    return factors.isEmpty() ? words : words + ": " + String.join(", ", factors);
  }

  /** A stated number as one would write it. */
  static String number(double factor) {
    return factor == Math.rint(factor) && Math.abs(factor) < 1e6
        ? String.format(Locale.ROOT, "%.0f", factor)
        : Double.toString(factor);
  }
}
