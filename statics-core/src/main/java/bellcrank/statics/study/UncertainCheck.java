package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Sees to it that uncertain numbers are there, each once, and that the model has them. */
final class UncertainCheck {

  private UncertainCheck() {}

  static void check(Model model, List<Uncertain> uncertain) {
    if (uncertain.isEmpty()) {
      throw new ModelException(
          model.device().name(), "uncertain numbers", "none", "at least one uncertain number");
    }
    Set<Input> seen = new HashSet<>();
    List<Double> within = new ArrayList<>();
    for (Uncertain one : uncertain) {
      double stated = one.input().value(model);
      width(one, stated);
      within.add(one.spread().quantile(Putting.share(within.size()), stated));
      if (!seen.add(one.input())) {
        throw new ModelException(one.input().text(), "spread", "stated twice", "one spread of it");
      }
    }
    Putting.clash(model, uncertain.stream().map(Uncertain::input).toList(), within)
        .ifPresent(UncertainCheck::refuse);
  }

  private static void refuse(ModelException wrong) {
    throw wrong;
  }

  /** A width may be lost beside the stated value, or be too great for a number. */
  private static void width(Uncertain one, double stated) {
    double least = one.spread().least(stated);
    double greatest = one.spread().greatest(stated);
    boolean bounded = !(one.spread() instanceof Spread.Normal);
    if (bounded && !(greatest > least && greatest - least <= Double.MAX_VALUE)) {
      throw new ModelException(
          one.input().text(),
          "spread",
          least + " to " + greatest,
          "a width that shows beside its value");
    }
  }
}
