package bellcrank.statics.device;

import java.util.Optional;

/**
 * The weight of a mass: mass times the device's gravity.
 *
 * @param name name, unique among connections and loads
 * @param body name of the member, joint or pin
 * @param at name of the point where it acts; if empty, it is spread evenly over the member's bars
 * @param mass in kg, 0 or more
 */
public record Weight(String name, String body, Optional<String> at, double mass) implements Load {

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param body name of the member, joint or pin
   * @param at name of the point where it acts; if empty, it is spread evenly over the member's bars
   * @param mass in kg, 0 or more
   * @throws ModelException if the name is not acceptable or the mass is negative or not finite
   */
  public Weight {
    Check.name("weight", name);
    Check.notNegative(name, "weight", mass);
  }
}
