package bellcrank.statics.drawing;

import bellcrank.statics.device.ContactBase;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.ground.BasePressure;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The pressure under a contact base that was cut.
 *
 * @param base the base
 * @param pressure normal force, couple and width; its length is 1 m where the base's is not known
 * @param length length of the base out of the plane in m; empty if it is not known
 * @param push direction in which the body that is shown is pushed, of length 1
 * @param strip the pressure times the length, in N/m of width, over what is pressed; empty where
 *     the whole force is on an edge
 * @param edge the edge that is pressed more, in the world; the middle if neither is
 */
record BaseStrip(
    ContactBase base,
    BasePressure pressure,
    OptionalDouble length,
    Vector push,
    Optional<SpreadForce> strip,
    Point edge) {

  /** The greatest force per width in N/m; 0 for an edge load. */
  double greatest() {
    return strip.map(spread -> Math.max(spread.start().norm(), spread.end().norm())).orElse(0.0);
  }

  /** How the pressure is spread, in words. */
  String words(Amount amount) {
    String start = "Pressure under " + base.name() + ": ";
    return strip.isEmpty()
        ? start + "the whole force of " + amount.force(pressure.normal()) + " is on an edge."
        : start
            + (pressure.shape() == BasePressure.Shape.TRIANGLE ? "a triangle" : "a trapezoid")
            + " over "
            + amount.length(pressure.contactWidth())
            + ", up to "
            + value(amount)
            + ".";
  }

  /** The greatest pressure; the force per width where the length of the base is not known. */
  String value(Amount amount) {
    return length.isPresent()
        ? amount.pressure(greatest() / length.getAsDouble())
        : amount.intensity(greatest());
  }
}
