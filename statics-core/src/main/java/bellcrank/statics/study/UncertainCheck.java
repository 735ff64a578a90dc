package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
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
    for (Uncertain one : uncertain) {
      one.input().value(model);
      if (!seen.add(one.input())) {
        throw new ModelException(one.input().text(), "spread", "stated twice", "one spread of it");
      }
    }
  }
}
