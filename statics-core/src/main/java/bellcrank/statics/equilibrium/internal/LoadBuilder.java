package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Makes the laws of a device's given loads; a strut's own weight is one, half at each end. */
final class LoadBuilder {

  private final Device device;
  private final Scale scale;
  private final PinBodies pins;
  private LoadLaw[] laws;
  private int count;

  LoadBuilder(Device device, Scale scale, PinBodies pins, int expected) {
    this.device = device;
    this.scale = scale;
    this.pins = pins;
    laws = new LoadLaw[expected];
  }

  LoadLaw[] laws() {
    return count == laws.length ? laws : Arrays.copyOf(laws, count);
  }

  private void add(LoadLaw law) {
    if (count == laws.length) {
      laws = Arrays.copyOf(laws, 2 * count + 4);
    }
    laws[count++] = law;
  }

  /** A strut's own weight, half at each end. */
  void addStrut(Strut strut) {
    half(strut, strut.first());
    half(strut, strut.second());
  }

  private void half(Strut strut, End end) {
    weight(strut.name(), end.body(), device.point(end.at()), strut.mass() / 2, false);
  }

  void addLoad(Load load) {
    if (load instanceof Force force) {
      Vector vector = force.vector();
      Point at = device.point(force.at());
      atPoint(force.name(), force.body(), at, vector.x(), vector.y(), false);
    } else if (load instanceof Weight weight) {
      Point at = weight.at().isPresent() ? device.point(weight.at().get()) : middle(weight.body());
      weight(weight.name(), weight.body(), at, weight.mass(), weight.at().isEmpty());
    } else if (load instanceof Couple couple) {
      add(
          new LoadLaw.Turning(
              couple.name(),
              device.bodyIndex(couple.member()),
              couple.moment() / scale.size(),
              couple.at().map(this::entry).orElseGet(Entry.Unplaced::new)));
    } else if (load instanceof SpreadLoad spread) {
      add(spread(spread));
    } else if (load instanceof Spring spring) {
      add(
          new LoadLaw.Stretch(
              spring.name(),
              device.bodyIndex(spring.first().body()),
              device.bodyIndex(spring.second().body()),
              ends(spring.first().at(), spring.second().at()),
              spring.stiffness() * scale.size(),
              spring.freeLength() / scale.size()));
    } else if (load instanceof TorsionSpring spring) {
      add(
          new LoadLaw.Twist(
              spring.name(),
              device.bodyIndex(spring.body()),
              device.bodyIndex(spring.other()),
              spring.stiffness() / scale.size(),
              spring.turned(),
              hinge(spring).map(this::entry).orElseGet(Entry.Unplaced::new)));
    }
  }

  private Point middle(String member) {
    return device.middleOfBars((Member) device.body(member).orElseThrow());
  }

  private void weight(String owner, String body, Point at, double mass, boolean overBars) {
    Vector gravity = device.gravity();
    atPoint(owner, body, at, mass * gravity.x(), mass * gravity.y(), overBars);
  }

  private void atPoint(
      String owner, String body, Point at, double fx, double fy, boolean overBars) {
    int under = pins.underLoad(body);
    add(new LoadLaw.AtPoint(owner, under, scale.x(at), scale.y(at), fx, fy, overBars));
  }

  private Entry entry(String point) {
    Point at = device.point(point);
    return new Entry.At(scale.x(at), scale.y(at));
  }

  /** A torsion spring sits at the pin between its bodies, where there is just one. */
  private Optional<String> hinge(TorsionSpring spring) {
    List<String> places =
        device.connections().stream()
            .filter(Pin.class::isInstance)
            .filter(pin -> pin.bodies().containsAll(List.of(spring.body(), spring.other())))
            .map(pin -> pin.places().get(0))
            .toList();
    return places.size() == 1 ? Optional.of(places.get(0)) : Optional.empty();
  }

  private LoadLaw spread(SpreadLoad spread) {
    Point a = device.point(spread.from());
    Point b = device.point(spread.to());
    double length =
        spread.per() == SpreadLoad.Per.HORIZONTAL ? Math.abs(b.x() - a.x()) : a.distance(b);
    return new LoadLaw.Spread(
        spread.name(),
        device.bodyIndex(spread.member()),
        ends(spread.from(), spread.to()),
        (spread.start() + spread.end()) / 2 * length,
        (spread.end() - spread.start()) * length,
        spread.direction().map(d -> d.x()).orElse(0.0),
        spread.direction().map(d -> d.y()).orElse(0.0),
        spread.direction().isEmpty());
  }

  private double[] ends(String from, String to) {
    Point a = device.point(from);
    Point b = device.point(to);
    return new double[] {scale.x(a), scale.y(a), scale.x(b), scale.y(b)};
  }
}
