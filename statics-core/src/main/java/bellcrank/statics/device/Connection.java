package bellcrank.statics.device;

import java.util.List;

/**
 * What joins bodies: a constraint that forbids some relative motions and carries the forces that go
 * with them. The forces of a connection are reported on the first of its bodies unless asked
 * otherwise; between two bodies the force on the second is the opposite one.
 */
public sealed interface Connection
    permits Pin,
        Clamp,
        Roller,
        Slot,
        Guide,
        Strut,
        Line,
        Reeving,
        Wrap,
        Screw,
        Contact,
        ContactBase {

  /**
   * Name, unique among connections and loads.
   *
   * @return the name
   */
  String name();

  /**
   * Names of the bodies it joins, in the order of the model; one may occur twice (a rope that comes
   * back).
   *
   * @return at least two names
   */
  List<String> bodies();

  /**
   * Names of the points where it touches its bodies, one for each of {@link #bodies()}.
   *
   * @return as many names as bodies
   */
  List<String> places();

  /**
   * The word for its kind.
   *
   * @return such as {@code pin}
   */
  String kind();
}
