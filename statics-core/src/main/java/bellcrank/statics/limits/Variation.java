package bellcrank.statics.limits;

import bellcrank.statics.device.Device;
import java.util.List;
import java.util.Set;

/** What is varied until the device gives way; everything else stays as it is. */
public sealed interface Variation {

  /**
   * Loads are multiplied by one factor.
   *
   * @param loads names of the loads; empty for all loads but weights
   */
  record Multiple(List<String> loads) implements Variation {

    /**
     * Copies the names.
     *
     * @param loads names of the loads; empty for all loads but weights
     */
    public Multiple {
      loads = List.copyOf(loads);
    }

    /**
     * The loads that are varied on a device.
     *
     * @param device the device
     * @return the named loads; without names all forces, couples and spread loads, but no weight
     */
    public Set<String> varied(Device device) {
      return Travels.loads(device, this);
    }
  }

  /**
   * The place of a force or weight on its member is moved along a straight line.
   *
   * @param load name of the load
   * @param from name of the point at distance 0
   * @param to name of the point at the far end
   */
  record Place(String load, String from, String to) implements Variation {}

  /**
   * Loads multiplied by one factor.
   *
   * @param loads names of the loads, at least one
   * @return the variation
   */
  static Multiple of(String... loads) {
    return new Multiple(List.of(loads));
  }

  /**
   * All loads but weights multiplied by one factor.
   *
   * @return the variation
   */
  static Multiple ofAppliedLoads() {
    return new Multiple(List.of());
  }

  /**
   * The place of a load moved along a line.
   *
   * @param load name of a force or weight on a member
   * @param from name of the point at distance 0
   * @param to name of the point at the far end
   * @return the variation
   */
  static Variation place(String load, String from, String to) {
    return new Place(load, from, to);
  }
}
