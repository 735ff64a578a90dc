package bellcrank.statics.units;

/** The kinds of quantity that planar statics needs. Conversion never leads from one to another. */
public enum Dimension {
  /** A length; SI unit m. */
  LENGTH("a length", "m", "m, mm, ft or in", 1, 0, 0, 0),
  /** A plane angle; SI unit rad. */
  ANGLE("an angle", "deg", "deg or rad", 0, 0, 0, 1),
  /** A force; SI unit N. */
  FORCE("a force", "N", "N, kN, kgf or lbf", 1, 1, -2, 0),
  /** A mass; SI unit kg. */
  MASS("a mass", "kg", "kg or lb", 0, 1, 0, 0),
  /** A moment of force, a couple, or a work; SI unit N·m. */
  MOMENT("a moment of force", "N·m", "N·m or lbf·ft", 2, 1, -2, 0),
  /** A force per length: a spread load or the stiffness of a spring; SI unit N/m. */
  FORCE_PER_LENGTH("a force per length", "N/m", "N/m, kN/m or lbf/ft", 0, 1, -2, 0),
  /** A pressure or a stress; SI unit Pa. */
  PRESSURE("a pressure", "kPa", "Pa, kPa or psi", -1, 1, -2, 0),
  /** An acceleration; SI unit m/s². */
  ACCELERATION("an acceleration", "m/s²", "m/s² or ft/s²", 1, 0, -2, 0),
  /** A moment per angle: the stiffness of a torsion spring; SI unit N·m/rad. */
  MOMENT_PER_ANGLE("a moment per angle", "N·m/rad", "N·m/rad or lbf·ft/rad", 2, 1, -2, -1),
  /** An area; SI unit m². */
  AREA("an area", "mm²", "m², mm² or in²", 2, 0, 0, 0),
  /** A section modulus, or the first moment of an area; SI unit m³. */
  SECTION_MODULUS("a section modulus", "cm³", "m³, cm³ or in³", 3, 0, 0, 0),
  /** A second moment of area; SI unit m⁴. */
  SECOND_MOMENT("a second moment of area", "cm⁴", "m⁴, cm⁴ or in⁴", 4, 0, 0, 0),
  /** A force per volume: the unit weight of a soil; SI unit N/m³. */
  FORCE_PER_VOLUME("a force per volume", "kN/m³", "kN/m³ or lbf/ft³", -2, 1, -2, 0),
  /** A plain number such as a coefficient of friction; no unit. */
  NUMBER("a plain number", "%", "the number alone or with %", 0, 0, 0, 0);

  private final String noun;
  private final String example;
  private final String examples;
  private final int length;
  private final int mass;
  private final int time;
  private final int angle;

  Dimension(
      String noun, String example, String examples, int length, int mass, int time, int angle) {
    this.noun = noun;
    this.example = example;
    this.examples = examples;
    this.length = length;
    this.mass = mass;
    this.time = time;
    this.angle = angle;
  }

  /**
   * Returns the name of this kind of quantity with its article, for use inside a sentence.
   *
   * @return for example {@code a length}, {@code an angle}, {@code a moment of force}
   */
  public String noun() {
    return noun;
  }

  /**
   * Returns the unit in which the library keeps this kind of quantity.
   *
   * @return m, rad, N, kg, N·m, N/m, Pa, m/s², N·m/rad, m², m³, m⁴, N/m³, or the plain number; its
   *     factor is 1
   */
  public Unit si() {
    return UnitList.si(this);
  }

  /** The noun without its article. */
  String bareNoun() {
    return noun.substring(noun.indexOf(' ') + 1);
  }

  /** The symbol of one usual unit, for an example in a message. */
  String example() {
    return example;
  }

  /** Some usual units, as an enumeration in a message. */
  String examples() {
    return examples;
  }

  /** The powers of length, mass, time and angle that make up this kind of quantity. */
  Powers powers() {
    return new Powers(length, mass, time, angle);
  }
}
