package bellcrank.statics.motion;

import bellcrank.statics.device.ModelException;

/**
 * A drum on which a rope is wound in layers, the first on the bare drum.
 *
 * <p>Assumed: each layer is full before the next begins and lies squarely on the turns below it, so
 * that the middle of the rope in layer k runs at R_k = r + d/2 + (k − 1)·d. Turns that bed into the
 * grooves between those below give a smaller radius, hence a greater pull and a shorter length. The
 * rope keeps its diameter, and the slope of its turns along the drum is neglected: it lengthens a
 * turn by the share ½·(d / 2πR)². Pull times radius is the couple on the drum, speed is radius
 * times turning speed. Source: plane statics and kinematics of a wheel, any textbook; from memory.
 *
 * <p>All lengths of rope are counted from the bare drum; turns that must stay on it count too.
 *
 * @param radius radius r of the bare drum in m, above 0
 * @param ropeDiameter diameter d of the rope in m, above 0
 * @param turnsPerLayer turns that lie side by side in a layer, 1 to 1,000,000, bounds included
 */
public record Drum(double radius, double ropeDiameter, int turnsPerLayer) {

  private static final String PART = "drum";
  private static final int MOST_TURNS = 1_000_000;
  private static final int MOST_LAYERS = 1000;

  /** Share of a diameter by which a width may fall short of whole diameters through rounding. */
  private static final double ROUNDING = 1e-9;

  /**
   * Checks the fields.
   *
   * @param radius radius r of the bare drum in m, above 0
   * @param ropeDiameter diameter d of the rope in m, above 0
   * @param turnsPerLayer turns that lie side by side in a layer, 1 to 1,000,000, bounds included
   * @throws ModelException if a field is out of its range or not finite
   */
  public Drum {
    HaulCheck.positive(PART, "radius", radius);
    HaulCheck.positive(PART, "rope diameter", ropeDiameter);
    HaulCheck.count(PART, "turns per layer", turnsPerLayer, 1, MOST_TURNS);
  }

  /**
   * A drum of a given width between its flanges; as many whole turns as fit lie side by side.
   *
   * @param radius radius of the bare drum in m, above 0
   * @param ropeDiameter diameter of the rope in m, above 0
   * @param width clear width between the flanges in m, at least the diameter of the rope
   * @return the drum
   * @throws ModelException if a value is out of its range or the rope does not fit between the
   *     flanges
   */
  public static Drum from(double radius, double ropeDiameter, double width) {
    HaulCheck.positive(PART, "rope diameter", ropeDiameter);
    HaulCheck.positive(PART, "width", width);
    double turns = Math.floor(width / ropeDiameter + ROUNDING);
    if (turns < 1 || turns > MOST_TURNS) {
      throw new ModelException(
          PART,
          "width",
          width,
          "1 to " + MOST_TURNS + " diameters of the rope, which is " + ropeDiameter + " m thick");
    }
    return new Drum(radius, ropeDiameter, (int) turns);
  }

  /**
   * The layers that flanges leave room for.
   *
   * @param flangeRadius radius of the flanges in m, at least that of the bare drum
   * @return whole layers that do not stand out beyond the flanges, 0 or more
   * @throws ModelException if the flanges are smaller than the bare drum, or if more than 1000
   *     layers fit
   */
  public int layersWithin(double flangeRadius) {
    HaulCheck.positive(PART, "flange radius", flangeRadius);
    double layers = Math.floor((flangeRadius - radius) / ropeDiameter + ROUNDING);
    if (flangeRadius < radius || layers > MOST_LAYERS) {
      throw new ModelException(
          PART,
          "flange radius",
          flangeRadius,
          "at least the radius of the bare drum, " + radius + ", and 1000 layers at most");
    }
    return (int) layers;
  }

  /**
   * The radius at which a layer pulls.
   *
   * @param layer the layer, 1 on the bare drum, at most 1000
   * @return from the axle to the middle of the rope, in m
   * @throws ModelException if the layer is out of its range
   */
  public double radius(int layer) {
    HaulCheck.count(PART, "layer", layer, 1, MOST_LAYERS);
    return radius + (layer - 0.5) * ropeDiameter;
  }

  /**
   * The rope that one full layer holds: 2π·R_k times its turns.
   *
   * @param layer the layer, 1 on the bare drum, at most 1000
   * @return its length in m
   * @throws ModelException if the layer is out of its range
   */
  public double lengthIn(int layer) {
    return 2 * Math.PI * radius(layer) * turnsPerLayer;
  }

  /**
   * The rope that a number of full layers hold together.
   *
   * @param layers number of layers, 0 to 1000
   * @return its length in m, measured along the middle of the rope
   * @throws ModelException if the number is out of its range
   */
  public double lengthOf(int layers) {
    HaulCheck.count(PART, "layers", layers, 0, MOST_LAYERS);
    // the mean radius of layers 1 to n is r + n·d/2
    return 2 * Math.PI * turnsPerLayer * layers * (radius + layers * ropeDiameter / 2);
  }

  /**
   * The layer on which the rope lies last.
   *
   * @param wound rope on the drum in m, 0 or more
   * @return the layer, 1 while the drum is bare; a layer that is just full is still that layer
   * @throws ModelException if the length is negative or more than 1000 layers hold
   */
  public int layerAt(double wound) {
    double most = lengthOf(MOST_LAYERS);
    if (!(wound >= 0 && wound <= most)) {
      throw new ModelException(PART, "wound length", wound, "a length in m from 0 to " + most);
    }
    int layer = 1;
    while (lengthOf(layer) < wound) {
      layer++;
    }
    return layer;
  }

  /**
   * The turns of the drum that wind up a length, beginning with the bare drum.
   *
   * @param wound rope on the drum in m, 0 or more
   * @return whole and part turns, 0 or more
   * @throws ModelException if the length is negative or more than 1000 layers hold
   */
  public double turns(double wound) {
    int layer = layerAt(wound);
    double onTop = wound - lengthOf(layer - 1);
    return (layer - 1.0) * turnsPerLayer + onTop / (2 * Math.PI * radius(layer));
  }

  /**
   * The rope that a number of turns winds up, beginning with the bare drum.
   *
   * @param turns whole and part turns, 0 or more
   * @return in m
   * @throws ModelException if the number is negative or more than 1000 layers hold
   */
  public double wound(double turns) {
    double most = (double) MOST_LAYERS * turnsPerLayer;
    if (!(turns >= 0 && turns <= most)) {
      throw new ModelException(PART, "turns", turns, "a number from 0 to " + most);
    }
    int full = (int) Math.min(MOST_LAYERS - 1.0, Math.floor(turns / turnsPerLayer));
    double onTop = turns - (double) full * turnsPerLayer;
    return lengthOf(full) + onTop * 2 * Math.PI * radius(full + 1);
  }

  /**
   * The pull in the line for a couple on the drum: C / R_k.
   *
   * @param layer the layer from which the line comes, 1 to 1000
   * @param couple couple on the drum in N·m, positive where it winds up
   * @return in N, positive where the line is pulled
   * @throws ModelException if the layer is out of its range or the couple not finite
   */
  public double pull(int layer, double couple) {
    return HaulCheck.signed(PART, "couple", couple) / radius(layer);
  }

  /**
   * The couple on the drum for a pull in the line: F·R_k.
   *
   * @param layer the layer from which the line comes, 1 to 1000
   * @param pull pull in the line in N, positive
   * @return in N·m, positive where it winds up
   * @throws ModelException if the layer is out of its range or the pull not finite
   */
  public double couple(int layer, double pull) {
    return HaulCheck.signed(PART, "pull", pull) * radius(layer);
  }

  /**
   * The pull from a layer by the couple that gives a stated pull from the first layer: F₁·R₁ / R_k.
   * The pull that a maker prints is that of the first layer.
   *
   * @param layer the layer from which the line comes, 1 to 1000
   * @param firstPull pull from the first layer in N
   * @return in N
   * @throws ModelException if the layer is out of its range or the pull not finite
   */
  public double pullFromFirst(int layer, double firstPull) {
    return pull(layer, couple(1, firstPull));
  }

  /**
   * The speed of the line: ω·R_k.
   *
   * @param layer the layer on which it is being wound, 1 to 1000
   * @param turning turning speed of the drum in rad/s, positive where it winds up
   * @return in m/s, positive where the line comes in
   * @throws ModelException if the layer is out of its range or the turning speed not finite
   */
  public double speed(int layer, double turning) {
    return HaulCheck.signed(PART, "turning speed", turning) * radius(layer);
  }
}
