package bellcrank.statics.equilibrium.internal;

import bellcrank.statics.device.Connection;
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
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Makes the laws of a device's given loads; a strut's own weight is one, half at each end. */
final class LoadBuilder {

  private final Device device;
  private final Scale scale;
  private final ToIntFunction<String> bodyOrPin;

  LoadBuilder(Device device, Scale scale, ToIntFunction<String> bodyOrPin) {
    this.device = device;
    this.scale = scale;
    this.bodyOrPin = bodyOrPin;
  }

  LoadLaw[] laws() {
    List<LoadLaw> laws = new ArrayList<>(device.loads().size());
    for (Load load : device.loads()) {
      if (load instanceof Force force) {
        laws.add(atPoint(force.name(), force.body(), device.point(force.at()), force.vector()));
      } else if (load instanceof Weight weight) {
        Point at =
            weight
                .at()
                .map(device::point)
                .orElseGet(
                    () -> device.middleOfBars((Member) device.body(weight.body()).orElseThrow()));
        laws.add(atPoint(weight.name(), weight.body(), at, device.gravity().times(weight.mass())));
      } else if (load instanceof Couple couple) {
        laws.add(
            new LoadLaw.Turning(
                couple.name(), device.bodyIndex(couple.member()), couple.moment() / scale.size()));
      } else if (load instanceof SpreadLoad spread) {
        laws.add(spread(spread));
      } else if (load instanceof Spring spring) {
        laws.add(
            new LoadLaw.Stretch(
                spring.name(),
                device.bodyIndex(spring.first().body()),
                device.bodyIndex(spring.second().body()),
                ends(spring.first().at(), spring.second().at()),
                spring.stiffness() * scale.size(),
                spring.freeLength() / scale.size()));
      } else if (load instanceof TorsionSpring spring) {
        laws.add(
            new LoadLaw.Twist(
                spring.name(),
                device.bodyIndex(spring.body()),
                device.bodyIndex(spring.other()),
                spring.stiffness() / scale.size(),
                spring.turned()));
      }
    }
    for (Connection connection : device.connections()) {
      if (connection instanceof Strut strut && strut.mass() > 0) {
        Vector half = device.gravity().times(strut.mass() / 2);
        laws.add(
            atPoint(strut.name(), strut.first().body(), device.point(strut.first().at()), half));
        laws.add(
            atPoint(strut.name(), strut.second().body(), device.point(strut.second().at()), half));
      }
    }
    return laws.toArray(LoadLaw[]::new);
  }

  private LoadLaw atPoint(String owner, String body, Point at, Vector force) {
    return new LoadLaw.AtPoint(
        owner, bodyOrPin.applyAsInt(body), scale.x(at), scale.y(at), force.x(), force.y());
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
