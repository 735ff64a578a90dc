package bellcrank.statics.device;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A named case: factors on the loads.
 *
 * @param name name, unique among the cases
 * @param factors factor of each load that has another factor than 1
 * @param dynamic a stated dynamic factor on all given loads, above 0; 1 for none
 */
public record LoadCase(String name, Map<String, Double> factors, double dynamic) {

  /** The case of a device that states none: every load as given. */
  public static final LoadCase ALL_LOADS = new LoadCase("all loads", Map.of(), 1);

  /**
   * Checks the fields and copies the factors in order.
   *
   * @param name name, unique among the cases
   * @param factors factor of each load that has another factor than 1
   * @param dynamic a stated dynamic factor on all given loads, above 0; 1 for none
   * @throws ModelException if a field is not acceptable
   */
  public LoadCase {
    Check.name("case", name);
    Map<String, Double> copy = new LinkedHashMap<>();
    for (Map.Entry<String, Double> factor : factors.entrySet()) {
      copy.put(
          factor.getKey(), Check.finite(name, "factor of " + factor.getKey(), factor.getValue()));
    }
    factors = Collections.unmodifiableMap(copy);
    Check.positive(name, "dynamic", dynamic);
  }

  /**
   * The factor that this case puts on a load.
   *
   * @param load name of the load
   * @return factor with the dynamic factor in it
   */
  public double factor(String load) {
    Double factor = factors.get(load);
    return factor == null ? dynamic : factor * dynamic;
  }
}
