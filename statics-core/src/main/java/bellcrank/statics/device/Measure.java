package bellcrank.statics.device;

import java.util.Optional;

/** Which quantity of a part is asked for; each has one word in the text of an {@link Ask}. */
public enum Measure {
  /**
   * The natural one: the value of a sought quantity (its size for components), the tension of a
   * strut, line, reeving, wrap or screw, the normal force of a roller, slot, guide or contact, the
   * size of any other force, a couple.
   */
  VALUE("value"),
  /** Component to the right, in N; of a point or centre of gravity its abscissa, in m. */
  X("x"),
  /** Component up, in N; of a point or centre of gravity its ordinate, in m. */
  Y("y"),
  /** Size of a force in N, 0 or more; of a sought force negative if it acts the other way. */
  SIZE("size"),
  /** Direction of a force in rad from the x axis, counter-clockwise, 0 to 2π without the end. */
  DIRECTION("direction"),
  /** Couple in N·m, counter-clockwise positive. */
  COUPLE("couple"),
  /** Moment about a point in N·m, counter-clockwise positive; of a bar its bending moment. */
  MOMENT("moment"),
  /**
   * Normal force in N, positive along the stated push; of a bar its axial force, tension positive.
   */
  NORMAL("normal"),
  /** Friction force of a contact in N, positive to the right when the push points up. */
  FRICTION("friction"),
  /** Distance of a base's normal force from its middle in m, positive as friction is. */
  OFFSET("offset"),
  /** Axial force in N, tension positive; of a rope its tension at the first stop. */
  TENSION("tension"),
  /** Tension of a rope at its last stop in N. */
  END_TENSION("end tension"),
  /** Axial force in N, compression positive. */
  COMPRESSION("compression"),
  /** Distance of the ends of a strut, line or screw, or length of a rope off its drums, in m. */
  LENGTH("length"),
  /** A sought mass in kg. */
  MASS("mass"),
  /** Couple in N·m that turns a screw against its load. */
  RAISING("raising"),
  /** Couple in N·m that turns a screw with its load; negative if the load drives the screw. */
  LOWERING("lowering"),
  /** Ratio of the two tensions of a wrap. */
  RATIO_OF_TENSIONS("ratio"),
  /** Line of action of a resultant. */
  LINE("line"),
  /** Where a resultant or a centre of gravity meets a line, in m from the line's first point. */
  DISTANCE("distance"),
  /** Moment arm of a resultant about a point in m. */
  ARM("arm"),
  /** Ideal mechanical advantage: the velocity ratio. */
  IDEAL("ideal"),
  /** Actual mechanical advantage: resistance over effort, with weights, friction and losses. */
  ACTUAL("actual"),
  /**
   * Useful work over the work of the effort, where the effort is about to overcome the resistance
   * with all friction against it.
   */
  EFFICIENCY("efficiency"),
  /**
   * Work that comes back at the effort over the work of the resistance, where the resistance is
   * about to drive the effort back; negative if the effort has to help, since the device locks
   * itself.
   */
  RETURN_EFFICIENCY("return efficiency"),
  /** Shear force of a bar in N. */
  SHEAR("shear"),
  /** Normal force in N where it is largest in size along a bar, or in all bars of a member. */
  PEAK_NORMAL("peak normal"),
  /** Shear force in N where it is largest in size. */
  PEAK_SHEAR("peak shear"),
  /** Bending moment in N·m where it is largest in size. */
  PEAK_MOMENT("peak moment"),
  /** Where the normal force is largest in size along a bar, in m from its start. */
  PLACE_OF_PEAK_NORMAL("place of peak normal"),
  /** Where the shear force is largest in size along a bar, in m from its start. */
  PLACE_OF_PEAK_SHEAR("place of peak shear"),
  /** Where the bending moment is largest in size along a bar, in m from its start. */
  PLACE_OF_PEAK_MOMENT("place of peak moment"),
  /** Whether the device is in balance. */
  OUTCOME("outcome"),
  /** Number of ways in which the device can still move. */
  FREEDOMS("freedoms"),
  /** Number of restraints that are too many. */
  REDUNDANCY("redundancy"),
  /** Whether the device stands, with all one-sided and rough parts decided. */
  VERDICT("verdict"),
  /** Least factor, common to all coefficients of friction, at which the device just holds. */
  FRICTION_FACTOR("friction factor");

  private final String word;

  Measure(String word) {
    this.word = word;
  }

  /**
   * The text form.
   *
   * @return one or two lower-case words with one blank between
   */
  public String word() {
    return word;
  }

  static Optional<Measure> find(String word) {
    for (Measure one : values()) {
      if (one.word.equals(word)) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }
}
