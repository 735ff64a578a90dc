package bellcrank.examples.report;

import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.limits.Limit;
import bellcrank.statics.limits.Limits;
import bellcrank.statics.limits.Variation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How far something can be varied.
 *
 * @param name the name that the file gives it; empty for the limit on all loads but weights that is
 *     told where the file names none
 * @param limit how far
 * @param loads names of the loads that are varied or moved
 */
record NamedLimit(Optional<String> name, Limit limit, List<String> loads) {

  /** Those of a file, or of all loads but weights if it names none; empty if there are none. */
  static List<NamedLimit> of(DeviceFile file, Limits limits) {
    List<NamedLimit> all = new ArrayList<>();
    file.limits().forEach((name, variation) -> all.add(of(Optional.of(name), variation, limits)));
    Variation applied = Variation.ofAppliedLoads();
    if (all.isEmpty() && !loads(applied, limits.device()).isEmpty()) {
      all.add(of(Optional.empty(), applied, limits));
    }
    return List.copyOf(all);
  }

  private static NamedLimit of(Optional<String> name, Variation variation, Limits limits) {
    return new NamedLimit(name, limits.limit(variation), loads(variation, limits.device()));
  }

  private static List<String> loads(Variation variation, Device device) {
    if (variation instanceof Variation.Place place) {
      return List.of(place.load());
    }
    List<String> stated = ((Variation.Multiple) variation).loads();
    return stated.isEmpty()
        ? device.loads().stream().filter(load -> isApplied(load, device)).map(Load::name).toList()
        : stated;
  }

  /** A couple on a screw does not count: it is its sought couple that has a range. */
  private static boolean isApplied(Load load, Device device) {
    return load instanceof Force
        || load instanceof SpreadLoad
        || (load instanceof Couple couple && device.connection(couple.member()).isEmpty());
  }

  /**
   * Whether it is worth telling: the file names it, or it is more than that the sought efforts meet
   * any load, or that the device holds without any.
   */
  boolean isTold(boolean withEfforts) {
    if (name.isPresent() || !(limit instanceof Limit.Between between)) {
      return true;
    }
    return between.greatest() instanceof Limit.End.At at
        ? at.value() > LimitWords.NOTHING
        : !(withEfforts && between.greatest() instanceof Limit.End.Unlimited);
  }

  /** What is varied. */
  Variation variation() {
    if (limit instanceof Limit.Between between) {
      return between.variation();
    }
    return limit instanceof Limit.Never never
        ? never.variation()
        : ((Limit.NotDecided) limit).variation();
  }
}
