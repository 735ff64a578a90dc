package bellcrank.statics.limits;

import bellcrank.statics.device.ModelException;

/**
 * The known force of another support of the device on the ground, in its {@link SideView}. Its
 * place stays where it is when the device leans. What it could hold sideways is not counted.
 *
 * @param name name, unique in the side view
 * @param offset of its place from the plane of the device in m, positive to the right
 * @param push force on the device in N, square to the ground, positive away from the ground
 */
public record SideSupport(String name, double offset, double push) {

  /**
   * Checks the fields.
   *
   * @param name name, unique in the side view
   * @param offset of its place from the plane of the device in m, positive to the right
   * @param push force on the device in N, positive away from the ground
   * @throws ModelException if the name is not acceptable or a number is not finite
   */
  public SideSupport {
    SideCheck.name(name);
    offset = SideCheck.finite(name, "offset", offset);
    push = SideCheck.finite(name, "push", push);
  }

  SideSupport at(double otherOffset) {
    return new SideSupport(name, otherOffset, push);
  }
}
