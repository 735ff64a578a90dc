package bellcrank.statics.device;

import java.util.List;

/**
 * One rope through any number of sheaves. Without losses its tension is the same everywhere; with
 * an efficiency below 1 it changes at each sheave the way the hauling says.
 *
 * @param name name, unique among connections and loads
 * @param stops its stations in order, two or more: an end or drum first and last, sheaves between
 * @param efficiency ratio of the tensions on both sides of a sheave while the rope runs, above 0,
 *     at most 1
 * @param hauling which way the rope runs
 */
public record Reeving(String name, List<Stop> stops, double efficiency, Hauling hauling)
    implements Connection {

  /** Which way a rope runs through its sheaves, as far as losses are concerned. */
  public enum Hauling {
    /** No losses. */
    IDEAL,
    /** The rope is hauled in at its first stop: the tension falls at each sheave from there on. */
    RAISING,
    /** The rope is paid out at its first stop: the tension rises at each sheave from there on. */
    LOWERING
  }

  /**
   * Checks the fields.
   *
   * @param name name, unique among connections and loads
   * @param stops its stations in order, two or more: an end or drum first and last, sheaves between
   * @param efficiency ratio of the tensions on both sides of a sheave while the rope runs, above 0,
   *     at most 1
   * @param hauling which way the rope runs
   * @throws ModelException if a field is not acceptable
   */
  public Reeving {
    Check.name("reeving", name);
    stops = List.copyOf(stops);
    if (stops.size() < 2) {
      throw new ModelException(name, "reeving", stops.size() + " stops", "two stops or more");
    }
    for (int i = 0; i < stops.size(); i++) {
      boolean outer = i == 0 || i == stops.size() - 1;
      Stop.Kind kind = stops.get(i).kind();
      if (outer ? kind != Stop.Kind.END && kind != Stop.Kind.DRUM : kind != Stop.Kind.SHEAVE) {
        throw new ModelException(
            name,
            "stop " + (i + 1),
            kind.name().toLowerCase(java.util.Locale.ROOT),
            outer ? "an end or a drum" : "a sheave");
      }
    }
    if (!(efficiency > 0 && efficiency <= 1)) {
      throw new ModelException(name, "efficiency", efficiency, "above 0 and at most 1");
    }
  }

  @Override
  public List<String> bodies() {
    return stops.stream().map(Stop::body).toList();
  }

  @Override
  public List<String> places() {
    return stops.stream().map(Stop::at).toList();
  }

  @Override
  public String kind() {
    return "reeving";
  }
}
