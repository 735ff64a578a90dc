package bellcrank.examples.file;

import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.Optional;

/** Reads {@code gravity}. */
final class GravityReader {

  private static final String WANTED =
      "the size of gravity, such as 9.81 m/s^2, or {size: …, direction: …}";

  private GravityReader() {}

  /** The stated gravity in m/s²; what could not be read is standard gravity, with a report. */
  static Vector read(Optional<Spot> stated, UnitSystem units, PointNames points) {
    return stated
        .flatMap(spot -> gravity(spot, new Values(units, 0), points))
        .orElse(Device.STANDARD_GRAVITY);
  }

  private static Optional<Vector> gravity(Spot spot, Values values, PointNames points) {
    if (spot.isText()) {
      return size(spot, values).map(Direction.DOWN::times);
    }
    Optional<Fields> fields = spot.fields(WANTED);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    fields.get().only(FileKeys.GRAVITY);
    Optional<Double> size =
        fields.get().need("size", "the size of gravity").flatMap(at -> size(at, values));
    Optional<Spot> direction = fields.get().find("direction");
    if (size.isEmpty()) {
      return Optional.empty();
    }
    return direction.isEmpty()
        ? size.map(Direction.DOWN::times)
        : new Directions(values, points).vector(size.get(), direction.get(), Optional.empty());
  }

  private static Optional<Double> size(Spot spot, Values values) {
    Optional<Double> size = values.amount(spot, Dimension.ACCELERATION);
    return size.isPresent() && size.get() < 0
        ? spot.refuse("a size of 0 or more; its sense goes into direction")
        : size;
  }
}
