package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Arrays;

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
    weight(strut.name(), strut.first().body(), device.point(strut.first().at()), strut.mass() / 2);
    weight(
        strut.name(), strut.second().body(), device.point(strut.second().at()), strut.mass() / 2);
  }

  void addLoad(Load load) {
    if (load instanceof Force force) {
      Vector vector = force.vector();
      atPoint(force.name(), force.body(), device.point(force.at()), vector.x(), vector.y());
    } else if (load instanceof Weight weight) {
      Point at = weight.at().isPresent() ? device.point(weight.at().get()) : middle(weight.body());
      weight(weight.name(), weight.body(), at, weight.mass());
    } else if (load instanceof Couple couple) {
      add(
          new LoadLaw.Turning(
              couple.name(), device.bodyIndex(couple.member()), couple.moment() / scale.size()));
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
              spring.turned()));
    }
  }

  private Point middle(String member) {
    return device.middleOfBars((Member) device.body(member).orElseThrow());
  }

  private void weight(String owner, String body, Point at, double mass) {
    Vector gravity = device.gravity();
    atPoint(owner, body, at, mass * gravity.x(), mass * gravity.y());
  }

  private void atPoint(String owner, String body, Point at, double fx, double fy) {
    add(new LoadLaw.AtPoint(owner, pins.underLoad(body), scale.x(at), scale.y(at), fx, fy));
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
