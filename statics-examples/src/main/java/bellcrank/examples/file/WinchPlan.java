package bellcrank.examples.file;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.motion.Drum;
import bellcrank.statics.motion.HandWinch;
import java.util.Optional;

/**
 * A winch that is to bear a tension of the device.
 *
 * @param name name of the winch
 * @param hauls the ask whose answer is the pull in its line
 * @param drum what the line is wound on
 * @param flange radius of the flanges in m, which bounds the layers
 * @param hand how it is worked by hand; empty if its pull is stated instead
 * @param firstPull pull on the first layer in N; empty if it is worked by hand
 * @param wound line on the drum beforehand in m, 0 or more
 * @param length line to haul in, in m, above 0; empty if it is not stated
 */
public record WinchPlan(
    String name,
    Ask hauls,
    Drum drum,
    Optional<Double> flange,
    Optional<HandWinch> hand,
    Optional<Double> firstPull,
    double wound,
    Optional<Double> length) {

  /** More layers than this are not told. */
  public static final int MOST_LAYERS = 20;

  /**
   * Checks the fields.
   *
   * @param name name of the winch
   * @param hauls the ask whose answer is the pull in its line
   * @param drum what the line is wound on
   * @param flange radius of the flanges in m
   * @param hand how it is worked by hand
   * @param firstPull pull on the first layer in N
   * @param wound line on the drum beforehand in m, 0 or more
   * @param length line to haul in, in m, above 0
   * @throws ModelException if a number is out of its range, the line does not go on the drum, or
   *     not just one of hand and pull is stated
   */
  public WinchPlan {
    Ask.of(name);
    wound = wound + 0.0; // no negative zero, which no file can state
    if (hand.isPresent() == firstPull.isPresent()) {
      throw new ModelException(name, "first layer pull", "both or none", "a handle or a pull");
    }
    positive(name, "first layer pull", firstPull);
    positive(name, "length", length);
    if (!(wound >= 0)) {
      throw new ModelException(name, "wound", wound, "a length in m, 0 or more");
    }
    if (flange.isPresent() && drum.layersWithin(flange.get()) < 1) {
      throw new ModelException(
          name, "flange", flange.get(), "a radius that leaves room for a layer");
    }
    int layers = drum.layerAt(wound + length.orElse(0.0));
    int room =
        flange.isPresent() ? Math.min(MOST_LAYERS, drum.layersWithin(flange.get())) : MOST_LAYERS;
    if (layers > room) {
      throw new ModelException(
          name,
          length.isPresent() ? "length" : "wound",
          wound + length.orElse(0.0),
          "at most " + drum.lengthOf(room) + " m on the drum, which are " + room + " layers");
    }
  }

  private static void positive(String name, String field, Optional<Double> value) {
    if (value.isPresent() && !(value.get() > 0 && Double.isFinite(value.get()))) {
      throw new ModelException(name, field, value.get(), "a number above 0");
    }
  }

  /**
   * The layers that are told: those between the flanges, else those that are wound.
   *
   * @return 1 to 20
   */
  public int layers() {
    return flange.isPresent()
        ? Math.min(MOST_LAYERS, drum.layersWithin(flange.get()))
        : drum.layerAt(wound + length.orElse(0.0));
  }

  void check(Device device) {
    hauls.check(device);
  }
}
