package bellcrank.statics.device;

/** A body of a device: what forces act on. */
public sealed interface Body permits Ground, Member, Joint {

  /**
   * Name of the body, unique among the bodies.
   *
   * @return the name
   */
  String name();
}
