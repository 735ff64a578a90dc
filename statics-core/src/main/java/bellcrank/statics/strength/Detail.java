package bellcrank.statics.strength;

/** What a check needs beside section and material: how a part is joined, held or rated. */
public sealed interface Detail permits ColumnEnds, PinJoint, FilletWeld, Rating, ChainSeat {

  /**
   * The part that it belongs to.
   *
   * @return name of a member, strut, line, reeving, wrap, pin or other connection of the device
   */
  String part();
}
