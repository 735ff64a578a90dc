package bellcrank.statics.drawing;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Sought;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads sought quantities on the bodies inside a cut. */
final class SoughtReader {

  private final Optional<Known> known;
  private final Places places;
  private final Device device;
  private final Cut cut;
  private final Collected found;

  /**
   * A reader.
   *
   * @param known where values are read; if empty, all sought quantities are open
   */
  SoughtReader(Optional<Known> known, Places places, Cut cut, Collected found) {
    this.known = known;
    this.places = places;
    device = places.device();
    this.cut = cut;
    this.found = found;
  }

  void read() {
    for (Sought sought : device.sought()) {
      if (cut.hasLoaded(sought.body(), device)) {
        if (sought.want() == Sought.Want.COUPLE) {
          couple(sought);
        } else {
          force(sought);
        }
      }
    }
  }

  private OptionalDouble value(Sought sought, Measure measure) {
    return known.map(one -> one.value(sought.name(), measure)).orElse(OptionalDouble.empty());
  }

  private void couple(Sought sought) {
    Point at = new Centres(places).of(sought.body());
    OptionalDouble moment = value(sought, Measure.VALUE);
    if (moment.isPresent()) {
      found.couples.add(
          new ActingCouple(sought.name(), sought.body(), Origin.SOUGHT, at, moment.getAsDouble()));
    } else {
      found.openCouples.add(new OpenCouple(sought.name(), sought.body(), Origin.SOUGHT, at));
    }
  }

  private void force(Sought sought) {
    Point at = places.of(sought.body(), sought.at().orElseThrow());
    switch (sought.want()) {
      case FORCE -> one(sought, at, sought.direction().orElseThrow(), value(sought, Measure.VALUE));
      case INTENSITY -> intensity(sought, at, value(sought, Measure.VALUE));
      case MASS -> mass(sought, at, value(sought, Measure.VALUE));
      default -> components(sought, at, value(sought, Measure.X), value(sought, Measure.Y));
    }
  }

  private void one(Sought sought, Point at, Direction along, OptionalDouble size) {
    if (size.isPresent()) {
      add(sought, at, along.times(size.getAsDouble()), Optional.empty());
    } else {
      open(sought, sought.name(), at, along);
    }
  }

  private void mass(Sought sought, Point at, OptionalDouble mass) {
    Vector gravity = device.gravity();
    if (gravity.norm() > 0) {
      double g = gravity.norm();
      OptionalDouble weight =
          mass.isPresent() ? OptionalDouble.of(mass.getAsDouble() * g) : OptionalDouble.empty();
      one(sought, at, Direction.from(gravity), weight);
    }
  }

  private void components(Sought sought, Point at, OptionalDouble x, OptionalDouble y) {
    if (x.isPresent() && y.isPresent()) {
      Vector vector = Vector.of(x.getAsDouble(), y.getAsDouble());
      add(sought, at, vector, Optional.of(Resolution.AXES));
      return;
    }
    part(sought, ".x", at, Direction.RIGHT, x);
    part(sought, ".y", at, Direction.UP, y);
  }

  private void part(Sought sought, String ending, Point at, Direction along, OptionalDouble size) {
    String symbol = sought.name() + ending;
    if (size.isPresent()) {
      found.forces.add(
          new ActingForce(
              sought.name(),
              symbol,
              sought.body(),
              Origin.SOUGHT,
              at,
              along.times(size.getAsDouble()),
              Optional.empty()));
    } else {
      open(sought, symbol, at, along);
    }
  }

  private void intensity(Sought sought, Point from, OptionalDouble intensity) {
    Point to = places.of(sought.body(), sought.to().orElseThrow());
    Direction along = sought.direction().orElseThrow();
    if (intensity.isPresent()) {
      Vector each = along.times(intensity.getAsDouble());
      // as long as it is drawn, to the rounding of the solution
      double length =
          device.point(sought.at().orElseThrow()).distance(device.point(sought.to().orElseThrow()));
      found.spreads.add(
          new SpreadForce(
              sought.name(), sought.body(), Origin.SOUGHT, from, to, each, each, length));
    } else {
      open(sought, sought.name(), from.plus(from.to(to).times(0.5)), along);
    }
  }

  private void add(Sought sought, Point at, Vector vector, Optional<Resolution> resolution) {
    found.forces.add(
        new ActingForce(
            sought.name(), sought.name(), sought.body(), Origin.SOUGHT, at, vector, resolution));
  }

  private void open(Sought sought, String symbol, Point at, Direction along) {
    found.openForces.add(
        new OpenForce(sought.name(), symbol, sought.body(), Origin.SOUGHT, at, along));
  }
}
