package bellcrank.statics.drawing;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Optional;

/** Reads the given loads of a case on the bodies inside a cut. */
final class LoadReader {

  private final Places places;
  private final Device device;
  private final LoadCase loadCase;
  private final Cut cut;
  private final Collected found;

  LoadReader(Places places, LoadCase loadCase, Cut cut, Collected found) {
    this.places = places;
    device = places.device();
    this.loadCase = loadCase;
    this.cut = cut;
    this.found = found;
  }

  /** Reads all loads with the forces of springs. */
  void readWithSprings() {
    read();
    for (Load load : device.loads()) {
      if (load instanceof Spring spring) {
        spring(spring, spring.first(), spring.second());
        spring(spring, spring.second(), spring.first());
      } else if (load instanceof TorsionSpring spring) {
        twist(spring);
      }
    }
  }

  /** Reads all loads but springs, and the weights of struts. */
  void read() {
    device.loads().forEach(this::read);
    for (Connection connection : device.connections()) {
      if (connection instanceof Strut strut && strut.mass() > 0) {
        half(strut, strut.first());
        half(strut, strut.second());
      }
    }
  }

  private void read(Load load) {
    double factor = loadCase.factor(load.name());
    if (load instanceof Force force) {
      force(
          force.name(),
          force.body(),
          Origin.LOAD,
          places.of(force.body(), force.at()),
          force.vector().times(factor));
    } else if (load instanceof Weight weight) {
      Point at =
          weight.at().isPresent()
              ? device.point(weight.at().get())
              : device.middleOfBars((Member) device.body(weight.body()).orElseThrow());
      force(
          weight.name(),
          weight.body(),
          Origin.WEIGHT,
          places.pose().frame(weight.body()).apply(at),
          device.gravity().times(weight.mass() * factor));
    } else if (load instanceof Couple couple && cut.has(couple.member())) {
      found.couples.add(
          new ActingCouple(
              couple.name(),
              couple.member(),
              Origin.LOAD,
              new Centres(places).of(couple.member()),
              couple.moment() * factor));
    } else if (load instanceof SpreadLoad spread && cut.has(spread.member())) {
      found.spreads.add(spread(spread, factor));
    }
  }

  private void force(String name, String body, Origin origin, Point at, Vector vector) {
    if (cut.hasLoaded(body, device)) {
      found.forces.add(new ActingForce(name, name, body, origin, at, vector, Optional.empty()));
    }
  }

  private void half(Strut strut, End end) {
    if (cut.has(end.body())) {
      Vector weight = device.gravity().times(strut.mass() / 2 * loadCase.factor(strut.name()));
      String symbol = "half of " + strut.name();
      found.forces.add(
          new ActingForce(
              strut.name(),
              symbol,
              end.body(),
              Origin.WEIGHT,
              places.of(end),
              weight,
              Optional.empty()));
    }
  }

  private SpreadForce spread(SpreadLoad load, double factor) {
    Point drawnFrom = device.point(load.from());
    Point drawnTo = device.point(load.to());
    double length =
        load.per() == SpreadLoad.Per.HORIZONTAL
            ? Math.abs(drawnTo.x() - drawnFrom.x())
            : drawnFrom.distance(drawnTo);
    Point from = places.of(load.member(), load.from());
    Point to = places.of(load.member(), load.to());
    Direction direction =
        load.direction().orElseGet(() -> Direction.from(from, to).perpendicular());
    return new SpreadForce(
        load.name(),
        load.member(),
        Origin.LOAD,
        from,
        to,
        direction.times(load.start() * factor),
        direction.times(load.end() * factor),
        length);
  }

  private void spring(Spring spring, End own, End other) {
    if (!cut.has(own.body()) || cut.has(other.body())) {
      return;
    }
    Point at = places.of(own);
    Vector way = at.to(places.of(other));
    double length = way.norm();
    double pull =
        loadCase.factor(spring.name()) * spring.stiffness() * (length - spring.freeLength());
    Vector vector = length > 0 ? way.times(pull / length) : Vector.ZERO;
    found.forces.add(
        new ActingForce(
            spring.name(), spring.name(), own.body(), Origin.LOAD, at, vector, Optional.empty()));
  }

  private void twist(TorsionSpring spring) {
    if (cut.has(spring.body()) == cut.has(spring.other())) {
      return;
    }
    double angle =
        spring.turned()
            + places.pose().frame(spring.body()).turn()
            - places.pose().frame(spring.other()).turn();
    double moment = -loadCase.factor(spring.name()) * spring.stiffness() * angle;
    boolean own = cut.has(spring.body());
    Point at = new Centres(places).between(spring.body(), spring.other());
    found.couples.add(
        new ActingCouple(
            spring.name(),
            own ? spring.body() : spring.other(),
            Origin.LOAD,
            at,
            own ? moment : -moment));
  }
}
