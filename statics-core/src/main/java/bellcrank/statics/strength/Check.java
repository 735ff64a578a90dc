package bellcrank.statics.strength;

import java.util.List;

/**
 * A kind of check; each has one rule in a set of {@link Rules}.
 *
 * @param <D> what its rules are fed with
 */
public final class Check<D> {

  /** Axial force and bending at the face on top, left of the way from the bar's start. */
  public static final Check<BarDemand> TOP_FACE =
      new Check<>("stress at the top face", BarDemand.class);

  /** Axial force and bending at the face at the bottom. */
  public static final Check<BarDemand> BOTTOM_FACE =
      new Check<>("stress at the bottom face", BarDemand.class);

  /** Shear stress at the height of the centroid. */
  public static final Check<BarDemand> SHEAR = new Check<>("shear", BarDemand.class);

  /** Buckling by the curve of a code. */
  public static final Check<ColumnDemand> COLUMN = new Check<>("column", ColumnDemand.class);

  /** Buckling by Euler's load. */
  public static final Check<ColumnDemand> EULER =
      new Check<>("column by Euler", ColumnDemand.class);

  /** Buckling together with bending. */
  public static final Check<ColumnDemand> COLUMN_AND_BENDING =
      new Check<>("column with bending", ColumnDemand.class);

  /** Shear of a pin. */
  public static final Check<PinDemand> PIN_SHEAR = new Check<>("shear of the pin", PinDemand.class);

  /** Bending of a long pin. */
  public static final Check<PinDemand> PIN_BENDING =
      new Check<>("bending of the pin", PinDemand.class);

  /** Bearing of a pin in a plate. */
  public static final Check<PlateDemand> BEARING =
      new Check<>("bearing in the plate", PlateDemand.class);

  /** A pin that tears out of the end of a plate. */
  public static final Check<PlateDemand> TEAR_OUT =
      new Check<>("tear-out of the plate", PlateDemand.class);

  /** Tension in what is left of a plate beside the hole. */
  public static final Check<PlateDemand> NET_SECTION =
      new Check<>("plate beside the hole", PlateDemand.class);

  /** The throat of a fillet weld. */
  public static final Check<WeldDemand> WELD = new Check<>("fillet weld", WeldDemand.class);

  /** The working load limit of a line, chain, shackle or fitting. */
  public static final Check<RatingDemand> WORKING_LOAD =
      new Check<>("working load limit", RatingDemand.class);

  /** A chain or rope that may slip out of its notch. */
  public static final Check<SeatDemand> SEAT = new Check<>("seat in the notch", SeatDemand.class);

  private final String name;
  private final Class<D> fed;

  private Check(String name, Class<D> fed) {
    this.name = name;
    this.fed = fed;
  }

  /**
   * What its rules are fed with.
   *
   * @return the class of demands
   */
  public Class<D> fedWith() {
    return fed;
  }

  /**
   * Its name, by which a rule is found.
   *
   * @return lower-case words
   */
  public String name() {
    return name;
  }

  /**
   * All checks.
   *
   * @return in the order in which they are told
   */
  public static List<Check<?>> all() {
    return List.of(
        TOP_FACE,
        BOTTOM_FACE,
        SHEAR,
        COLUMN,
        EULER,
        COLUMN_AND_BENDING,
        PIN_SHEAR,
        PIN_BENDING,
        BEARING,
        TEAR_OUT,
        NET_SECTION,
        WELD,
        WORKING_LOAD,
        SEAT);
  }

  @Override
  public String toString() {
    return name;
  }
}
