package bellcrank.statics.strength;

import bellcrank.statics.device.LoadCase;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Which factors are in the loads, in words. */
final class LoadWords {

  private LoadWords() {}

  static List<String> of(LoadCase loadCase, Method method) {
    List<String> clauses = new ArrayList<>();
    String factors =
        loadCase.factors().entrySet().stream()
            .filter(factor -> factor.getValue() != 1)
            .map(factor -> factor.getKey() + " × " + Amounts.plain(factor.getValue()))
            .collect(Collectors.joining(", "));
    clauses.add(
        factors.isEmpty()
            ? "loads as they are stated, no load factors"
            : "load factors of the case \"" + loadCase.name() + "\": " + factors);
    if (loadCase.dynamic() != 1) {
      clauses.add(
          "dynamic factor "
              + Amounts.plain(loadCase.dynamic())
              + " of the case \""
              + loadCase.name()
              + "\" on all given loads");
    }
    if (method == Method.ALLOWABLE && !factors.isEmpty()) {
      clauses.add(
          "the safety factors of allowable stresses cover the loads too; load factors come on top of"
              + " them");
    }
    if (method == Method.RESISTANCE && factors.isEmpty()) {
      clauses.add(
          "design resistances want loads with load factors; the case has none, so nothing is left"
              + " for larger loads");
    }
    return List.copyOf(clauses);
  }
}
