package bellcrank.statics.device;

/** What loads a device: given forces, and those that are sought. */
public sealed interface Load
    permits Force, Couple, SpreadLoad, Weight, Spring, TorsionSpring, Sought {

  /**
   * Name, unique among connections and loads.
   *
   * @return the name
   */
  String name();
}
