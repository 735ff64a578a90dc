package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import java.util.List;

/**
 * A quantity that the worked solution finds.
 *
 * @param symbol its short name
 * @param part name of the connection, sought quantity or two-force member that it belongs to
 * @param kind what sort of quantity it is
 * @param body the body on which a positive value acts along {@code sense}; of an axial force the
 *     body at its first end
 * @param sense unit vector of a positive force on that body, or of an axial force the one that
 *     pulls it towards the second end; zero for a couple
 * @param asks the same quantity as an ask; of a two-force member the components at its pins that
 *     follow from it
 */
public record Unknown(
    Symbol symbol, String part, Kind kind, String body, Vector sense, List<Ask> asks) {

  /** What sort of quantity it is. */
  public enum Kind {
    /** A component of a force, along one axis. */
    COMPONENT,
    /** An axial force of a strut, screw or two-force member in N, tension positive. */
    AXIAL,
    /** The tension of a line or rope in N, pull positive. */
    ROPE,
    /** A normal force in N. */
    NORMAL,
    /** A friction force in N. */
    FRICTION,
    /** A couple in N·m, counter-clockwise positive. */
    COUPLE,
    /** A couple that turns a screw in N·m, positive where it drives the ends apart. */
    TURNING,
    /** The size of a force in N. */
    SIZE,
    /** A sought force in N: a size, a component, a weight or the total of a spread load. */
    SOUGHT
  }

  /**
   * Copies the list.
   *
   * @param symbol its short name
   * @param part name of what it belongs to
   * @param kind what sort of quantity it is
   * @param body the body on which a positive value acts
   * @param sense unit vector of a positive force
   * @param asks the same quantity as asks
   */
  public Unknown {
    asks = List.copyOf(asks);
  }

  /**
   * Dimension of its value.
   *
   * @return moment for couples, force for all others
   */
  public Dimension dimension() {
    return kind == Kind.COUPLE || kind == Kind.TURNING ? Dimension.MOMENT : Dimension.FORCE;
  }

  /**
   * Which way a positive value acts, in words.
   *
   * @return such as {@code force of heel on jib, positive to the right}
   */
  public String meaning() {
    return UnknownWords.meaning(this);
  }

  /**
   * What a value means, in words.
   *
   * @param si the value, SI
   * @return such as {@code tension} or {@code on jib, up}
   */
  public String words(double si) {
    return UnknownWords.value(this, si);
  }
}
