package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;

/**
 * A chain or rope that lies in a notch of a member and may slip out of it.
 *
 * <p>The two sides of the notch push along their normals, widened by the angle of friction. The
 * chain stays while its push into the notch is between them: no more than 90° − opening/2 + φ off
 * the depth of the notch.
 *
 * @param name what it is called
 * @param part name of the connection whose force is seated
 * @param body name of the member that has the notch
 * @param depth direction from the mouth into the notch, as drawn; it turns with the member
 * @param opening angle between the sides of the notch in rad, above 0 and below π
 * @param friction coefficient of friction between chain and notch, 0 or more
 */
public record ChainSeat(
    String name, String part, String body, Direction depth, double opening, double friction)
    implements Detail {

  /**
   * Checks the numbers.
   *
   * @param name what it is called
   * @param part name of the connection whose force is seated
   * @param body name of the member that has the notch
   * @param depth direction from the mouth into the notch, as drawn
   * @param opening angle between the sides of the notch in rad, above 0 and below π
   * @param friction coefficient of friction, 0 or more
   * @throws ModelException if a number is out of range
   */
  public ChainSeat {
    if (!(opening > 0 && opening < Math.PI)) {
      throw new ModelException(name, "opening", opening, "an angle in rad above 0 and below π");
    }
    Positive.orZero(name, "friction", friction);
  }

  /**
   * The greatest angle between the push and the depth at which the chain stays.
   *
   * @return in rad, at most π/2 + the angle of friction
   */
  public double greatestAngle() {
    return Math.PI / 2 - opening / 2 + Math.atan(friction);
  }
}
