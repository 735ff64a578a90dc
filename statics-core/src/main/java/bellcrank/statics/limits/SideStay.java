package bellcrank.statics.limits;

import bellcrank.statics.device.ModelException;

/**
 * A rope or rod that stays the device sideways and can only pull; its pull is what it needs to be.
 * A stay that also runs along the device is seen from the side: its pull is the part square to the
 * plane of the device and upright.
 *
 * @param name name, unique in the side view
 * @param height of its end on the device above the base in m; it leans with the device
 * @param offset of that end from the plane of the device in m, positive to the right
 * @param anchorOffset of its anchor from the plane of the device in m, positive to the right
 * @param anchorHeight height of its anchor above the base in m
 */
public record SideStay(
    String name, double height, double offset, double anchorOffset, double anchorHeight) {

  /**
   * Checks the fields.
   *
   * @param name name, unique in the side view
   * @param height of its end on the device above the base in m
   * @param offset of that end from the plane of the device in m, positive to the right
   * @param anchorOffset of its anchor from the plane of the device in m, positive to the right
   * @param anchorHeight height of its anchor above the base in m
   * @throws ModelException if the name is not acceptable, a number is not finite, or both ends are
   *     at the same place
   */
  public SideStay {
    SideCheck.name(name);
    height = SideCheck.finite(name, "height", height);
    offset = SideCheck.finite(name, "offset", offset);
    anchorOffset = SideCheck.finite(name, "anchor offset", anchorOffset);
    anchorHeight = SideCheck.finite(name, "anchor height", anchorHeight);
    if (height == anchorHeight && offset == anchorOffset) {
      throw new ModelException(
          name, "anchor", "where the stay is fixed", "a place apart from its end on the device");
    }
  }
}
