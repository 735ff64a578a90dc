package bellcrank.statics.motion;

import bellcrank.statics.geometry.Direction;

/** What drives a device, and so measures its travel: 0 as drawn, growing in the stated sense. */
public sealed interface Drive {

  /**
   * The turn of a member against another body, in rad, counter-clockwise positive, whole turns
   * counted.
   *
   * @param member name of the member
   * @param other name of the body against which it turns; {@code ground} for the world
   */
  record Turn(String member, String other) implements Drive {}

  /**
   * The change of length in m of a strut, line, reeving or screw, positive where it grows. It is
   * let go as a restraint.
   *
   * @param connection name of the connection
   */
  record Length(String connection) implements Drive {}

  /**
   * The way in m of a point of a body along a direction of the world.
   *
   * @param body name of the member or joint
   * @param point name of the point
   * @param along the direction
   */
  record Slide(String body, String point, Direction along) implements Drive {}

  /**
   * The turn of a member in the world.
   *
   * @param member name of the member
   * @return the drive, in rad, counter-clockwise positive
   */
  static Drive turn(String member) {
    return new Turn(member, "ground");
  }

  /**
   * The length of a strut, line, reeving or screw.
   *
   * @param connection its name
   * @return the drive, in m, positive where it grows
   */
  static Drive length(String connection) {
    return new Length(connection);
  }

  /**
   * The way of a point.
   *
   * @param body name of the member or joint
   * @param point name of the point
   * @param along direction that counts positive
   * @return the drive, in m
   */
  static Drive slide(String body, String point, Direction along) {
    return new Slide(body, point, along);
  }
}
