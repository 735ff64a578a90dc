package bellcrank.statics.limits;

import bellcrank.statics.device.ModelException;

/**
 * A load on the device in its {@link SideView}. Its place leans with the device; its direction
 * stays plumb and level.
 *
 * @param name name, unique in the side view
 * @param height of its place above the base in m, square to the base as drawn
 * @param offset of its place from the plane of the device in m, positive to the right
 * @param down force down in N, negative if it lifts
 * @param side level force sideways in N, positive to the right
 */
public record SideLoad(String name, double height, double offset, double down, double side) {

  /**
   * Checks the fields.
   *
   * @param name name, unique in the side view
   * @param height of its place above the base in m
   * @param offset of its place from the plane of the device in m, positive to the right
   * @param down force down in N, negative if it lifts
   * @param side level force sideways in N, positive to the right
   * @throws ModelException if the name is not acceptable or a number is not finite
   */
  public SideLoad {
    SideCheck.name(name);
    height = SideCheck.finite(name, "height", height);
    offset = SideCheck.finite(name, "offset", offset);
    down = SideCheck.finite(name, "down", down);
    side = SideCheck.finite(name, "side", side);
  }

  SideLoad at(double otherOffset) {
    return new SideLoad(name, height, otherOffset, down, side);
  }
}
