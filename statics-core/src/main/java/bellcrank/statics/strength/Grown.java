package bellcrank.statics.strength;

import bellcrank.statics.device.LoadCase;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** A case with some of its loads multiplied. */
final class Grown {

  private Grown() {}

  static LoadCase by(LoadCase stated, Set<String> loads, double multiple) {
    Map<String, Double> factors = new LinkedHashMap<>(stated.factors());
    for (String load : loads) {
      Double own = stated.factors().get(load);
      factors.put(load, (own == null ? 1 : own) * multiple);
    }
    return new LoadCase(stated.name(), factors, stated.dynamic());
  }
}
