package bellcrank.statics.limits;

/** How far a device may be tilted sideways. */
public sealed interface SideReach {

  /**
   * At an angle it gives way.
   *
   * @param angle size of the angle in rad, 0 to π/2
   * @param how how it gives way
   */
  record At(double angle, GivingWay how) implements SideReach {}

  /** It stands at every angle below a right angle. */
  record Unlimited() implements SideReach {}

  /** It does not stand at the angle 0 already. */
  record Never() implements SideReach {}
}
