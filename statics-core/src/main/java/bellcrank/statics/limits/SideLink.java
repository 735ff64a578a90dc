package bellcrank.statics.limits;

import bellcrank.statics.device.ModelException;

/**
 * A rope, strut or spring of known force from the device to the ground, in its {@link SideView}: a
 * back stay that lies in the plane of the device, say. Its end on the device leans with the device,
 * its anchor stays; so the way it pulls follows.
 *
 * @param name name, unique in the side view
 * @param height of its end on the device above the base in m
 * @param anchorHeight height of its anchor above the base in m
 * @param anchorOffset of its anchor from the plane of the device in m, positive to the right
 * @param pullPerLength its pull divided by its length, both in the plane of the device, in N/m;
 *     negative if it pushes
 */
public record SideLink(
    String name, double height, double anchorHeight, double anchorOffset, double pullPerLength) {

  /**
   * Checks the fields.
   *
   * @param name name, unique in the side view
   * @param height of its end on the device above the base in m
   * @param anchorHeight height of its anchor above the base in m
   * @param anchorOffset of its anchor from the plane of the device in m, positive to the right
   * @param pullPerLength its pull divided by its length, both in the plane of the device, in N/m;
   *     negative if it pushes
   * @throws ModelException if the name is not acceptable or a number is not finite
   */
  public SideLink {
    SideCheck.name(name);
    height = SideCheck.finite(name, "height", height);
    anchorHeight = SideCheck.finite(name, "anchor height", anchorHeight);
    anchorOffset = SideCheck.finite(name, "anchor offset", anchorOffset);
    pullPerLength = SideCheck.finite(name, "pull per length", pullPerLength);
  }

  SideLink at(double otherOffset) {
    return new SideLink(name, height, anchorHeight, otherOffset, pullPerLength);
  }
}
