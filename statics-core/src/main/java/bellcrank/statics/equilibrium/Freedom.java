package bellcrank.statics.equilibrium;

import java.util.List;

/**
 * One way in which a device can still move, to first order. Either sense is possible unless the
 * motion is driven by loads.
 *
 * @param motions the bodies that move
 * @param critical whether only a special shape leaves it free: the number of restraints would do
 * @param words the motion in a sentence
 */
public record Freedom(List<BodyMotion> motions, boolean critical, String words) {

  /**
   * Copies the list.
   *
   * @param motions the bodies that move
   * @param critical whether only a special shape leaves it free
   * @param words the motion in a sentence
   */
  public Freedom {
    motions = List.copyOf(motions);
  }
}
