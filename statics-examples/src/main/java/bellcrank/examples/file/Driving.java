package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.limits.Variation;
import java.util.List;

/**
 * The loads that grow until something gives, and what is told there.
 *
 * @param loads names of the loads; empty for all but weights
 * @param tell asks for numbers that balance gives, told where something gives
 */
public record Driving(List<String> loads, List<Ask> tell) {

  /**
   * Copies the lists.
   *
   * @param loads names of the loads; empty for all but weights
   * @param tell asks for numbers that balance gives
   */
  public Driving {
    loads = List.copyOf(loads);
    tell = List.copyOf(tell);
  }

  /**
   * The loads as they are varied.
   *
   * @return the variation
   */
  public Variation.Multiple variation() {
    return new Variation.Multiple(loads);
  }
}
