package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Device;
import bellcrank.statics.units.UnitSystem;
import java.util.List;

/**
 * One way in which a device can still move, to first order.
 *
 * @param motions the bodies that move
 * @param critical whether only a special shape leaves it free: the restraints would be enough
 * @param driven whether loads drive it, in the sense that is told; if not, the reverse is as
 *     possible
 * @param words the motion in a sentence, places in m
 */
public record Freedom(List<BodyMotion> motions, boolean critical, boolean driven, String words) {

  /**
   * Copies the list.
   *
   * @param motions the bodies that move
   * @param critical whether only a special shape leaves it free
   * @param driven whether loads drive it
   * @param words the motion in a sentence, places in m
   */
  public Freedom {
    motions = List.copyOf(motions);
  }

  /**
   * A motion with its words.
   *
   * @param device the device that moves
   * @param motions the bodies that move
   * @param critical whether only a special shape leaves it free
   * @param driven whether loads drive it
   * @return the freedom
   */
  public static Freedom of(
      Device device, List<BodyMotion> motions, boolean critical, boolean driven) {
    String words = new FreedomWriter(device, UnitSystem.SI).words(motions, critical, driven);
    return new Freedom(motions, critical, driven, words);
  }

  /**
   * The motion in a sentence, places in other units.
   *
   * @param device the device that moves
   * @param units units in which places are told
   * @return which bodies turn about which point or slide which way
   */
  public String words(Device device, UnitSystem units) {
    return new FreedomWriter(device, units).words(motions, critical, driven);
  }
}
