package bellcrank.statics.motion;

import bellcrank.statics.device.ModelException;

/** What a hand works on a winch. One cycle is a turn of a crank or a working stroke of a lever. */
public sealed interface Handle {

  /**
   * The arm at which the hand works, square to it.
   *
   * @return in m, above 0
   */
  double arm();

  /**
   * The angle through which one cycle turns the shaft of the handle.
   *
   * @return in rad, above 0
   */
  double angle();

  /**
   * A crank that is turned all the way round; a cycle is one turn.
   *
   * @param radius from the shaft to the middle of the grip in m, above 0
   */
  record Crank(double radius) implements Handle {

    /**
     * Checks the field.
     *
     * @param radius from the shaft to the middle of the grip in m, above 0
     * @throws ModelException if it is not above 0 or not finite
     */
    public Crank {
      HaulCheck.positive("crank", "radius", radius);
    }

    @Override
    public double arm() {
      return radius;
    }

    @Override
    public double angle() {
      return 2 * Math.PI;
    }
  }

  /**
   * A lever that is swung to and fro and drives through a ratchet one way only; a cycle is one
   * working stroke with its idle return.
   *
   * @param length from the shaft to the middle of the hand in m, above 0
   * @param swing angle of a stroke in rad through which the ratchet drives, without the lost motion
   *     until a pawl falls in; above 0, at most π
   */
  record Lever(double length, double swing) implements Handle {

    /**
     * Checks the fields.
     *
     * @param length from the shaft to the middle of the hand in m, above 0
     * @param swing angle of a stroke in rad through which the ratchet drives; above 0, at most π
     * @throws ModelException if a field is out of its range or not finite
     */
    public Lever {
      HaulCheck.positive("lever", "length", length);
      if (HaulCheck.positive("lever", "swing", swing) > Math.PI) {
        throw new ModelException("lever", "swing", swing, "an angle in rad above 0, at most π");
      }
    }

    @Override
    public double arm() {
      return length;
    }

    @Override
    public double angle() {
      return swing;
    }
  }
}
