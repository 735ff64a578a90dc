package bellcrank.statics.motion;

import bellcrank.statics.device.ModelException;

/**
 * A winch worked by hand, hauling in: a handle, gears and a drum.
 *
 * <p>With the arm l of the handle, the gear ratio i, the efficiency η and the radius R_k of the
 * layer, a line pull T needs the hand force F = T·R_k / (l·i·η), and a turn of the handle hauls in
 * 2π·R_k / i. The work of the hand times η is the work on the line. Source: simple machines, any
 * textbook; from memory. The hand works square to the handle and evenly; paying out is held by a
 * pawl or brake and not told here.
 *
 * @param handle what the hand works
 * @param ratio turns of the handle's shaft for one turn of the drum, above 0; 1 without gears
 * @param efficiency work on the line for a unit of the hand's work, above 0, at most 1: losses of
 *     bearings, gears and the rope's bending on the drum
 * @param drum what the rope is wound on
 */
public record HandWinch(Handle handle, double ratio, double efficiency, Drum drum) {

  private static final String PART = "hand winch";

  /**
   * Checks the fields.
   *
   * @param handle what the hand works
   * @param ratio turns of the handle's shaft for one turn of the drum, above 0; 1 without gears
   * @param efficiency work on the line for a unit of the hand's work, above 0, at most 1
   * @param drum what the rope is wound on
   * @throws ModelException if a field is out of its range or not finite
   */
  public HandWinch {
    HaulCheck.positive(PART, "gear ratio", ratio);
    if (HaulCheck.positive(PART, "efficiency", efficiency) > 1) {
      throw new ModelException(PART, "efficiency", efficiency, "above 0 and at most 1");
    }
  }

  /**
   * The hand force for a pull in the line.
   *
   * @param layer the layer that is being wound, 1 on the bare drum, at most 1000
   * @param linePull pull in the line in N, 0 or more
   * @return in N, square to the handle
   * @throws ModelException if a value is out of its range or not finite
   */
  public double handForce(int layer, double linePull) {
    HaulCheck.notNegative(PART, "line pull", linePull);
    return drum.couple(layer, linePull) / (handle.arm() * ratio * efficiency);
  }

  /**
   * The pull in the line for a hand force.
   *
   * @param layer the layer that is being wound, 1 on the bare drum, at most 1000
   * @param handForce force of the hand in N, square to the handle, 0 or more
   * @return in N
   * @throws ModelException if a value is out of its range or not finite
   */
  public double linePull(int layer, double handForce) {
    HaulCheck.notNegative(PART, "hand force", handForce);
    return handForce * handle.arm() * ratio * efficiency / drum.radius(layer);
  }

  /**
   * The length hauled in by one turn of the crank or one stroke of the lever.
   *
   * @param layer the layer that is being wound, 1 on the bare drum, at most 1000
   * @return in m
   * @throws ModelException if the layer is out of its range
   */
  public double lengthPerCycle(int layer) {
    return drum.radius(layer) * handle.angle() / ratio;
  }

  /**
   * The turns or strokes that haul in a length, through as many layers as it takes.
   *
   * @param wound rope on the drum beforehand in m, 0 or more
   * @param length length to haul in, in m, 0 or more
   * @return whole and part turns of the crank or strokes of the lever
   * @throws ModelException if a length is negative or more than 1000 layers hold
   */
  public double cycles(double wound, double length) {
    HaulCheck.notNegative(PART, "length", length);
    double turns = drum.turns(wound + length) - drum.turns(wound);
    return Math.max(0, turns) * 2 * Math.PI * ratio / handle.angle();
  }

  /**
   * The length that a number of turns or strokes hauls in, through as many layers as it takes.
   *
   * @param wound rope on the drum beforehand in m, 0 or more
   * @param cycles turns of the crank or strokes of the lever, 0 or more
   * @return in m
   * @throws ModelException if a value is negative or more than 1000 layers hold
   */
  public double lengthHauled(double wound, double cycles) {
    HaulCheck.notNegative(PART, "turns or strokes", cycles);
    double turns = cycles * handle.angle() / (2 * Math.PI * ratio);
    return Math.max(0, drum.wound(drum.turns(wound) + turns) - wound);
  }

  /**
   * A haul under a steady pull in the line, layer by layer.
   *
   * @param linePull pull in the line in N, 0 or more
   * @param wound rope on the drum beforehand in m, 0 or more
   * @param length length to haul in, in m, 0 or more
   * @return what the hand has to do
   * @throws ModelException if a value is out of its range or not finite
   */
  public Haul haul(double linePull, double wound, double length) {
    HaulCheck.notNegative(PART, "line pull", linePull);
    HaulCheck.notNegative(PART, "length", length);
    double end = wound + length;
    int last = drum.layerAt(end);
    double way = 0;
    double work = 0;
    double from = wound;
    for (int layer = drum.layerAt(wound); layer <= last; layer++) {
      double to = Math.min(end, drum.lengthOf(layer));
      double part = (to - from) / drum.radius(layer) * ratio * handle.arm();
      way += part;
      work += part * handForce(layer, linePull);
      from = to;
    }
    return new Haul(
        way / (handle.arm() * handle.angle()),
        way,
        handForce(last, linePull),
        work,
        linePull * length);
  }

  /**
   * What a haul takes.
   *
   * @param cycles turns of the crank or strokes of the lever
   * @param handWay way of the hand in m, without the idle returns of a lever
   * @param greatestForce hand force in N on the last layer, where it is greatest
   * @param handWork work of the hand in N·m, summed layer by layer
   * @param lineWork work on the line in N·m: the hand's work times the efficiency
   */
  public record Haul(
      double cycles, double handWay, double greatestForce, double handWork, double lineWork) {}
}
