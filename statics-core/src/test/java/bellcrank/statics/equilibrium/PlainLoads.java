package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.PlainUnknown.Push;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists by hand what the given loads of a case do to bodies. */
final class PlainLoads {

  private final Device device;
  private final Pose pose;
  private final List<Push> pushes = new ArrayList<>();

  private PlainLoads(Device device, Pose pose) {
    this.device = device;
    this.pose = pose;
  }

  static List<Push> of(Device device, LoadCase loadCase, Pose pose) {
    PlainLoads plain = new PlainLoads(device, pose);
    for (Load load : device.loads()) {
      plain.load(load, factor(loadCase, load.name()));
    }
    for (Connection connection : device.connections()) {
      if (connection instanceof Strut strut) {
        Vector half = device.gravity().times(strut.mass() / 2 * factor(loadCase, strut.name()));
        plain.force(strut.first().body(), strut.first().at(), half);
        plain.force(strut.second().body(), strut.second().at(), half);
      }
    }
    return plain.pushes;
  }

  private static double factor(LoadCase loadCase, String load) {
    return loadCase.dynamic() * Optional.ofNullable(loadCase.factors().get(load)).orElse(1.0);
  }

  private Point at(String body, String point) {
    return pose.frame(body).apply(device.point(point));
  }

  private void load(Load load, double factor) {
    if (load instanceof Force force) {
      force(force.body(), force.at(), force.vector().times(factor));
    } else if (load instanceof Couple couple) {
      pushes.add(new Push(couple.member(), 0, 0, 0, 0, couple.moment() * factor));
    } else if (load instanceof Weight weight) {
      weight(weight, factor);
    } else if (load instanceof SpreadLoad spread) {
      spread(spread, factor);
    } else if (load instanceof Spring spring) {
      Point p = at(spring.first().body(), spring.first().at());
      Point q = at(spring.second().body(), spring.second().at());
      double pull = factor * spring.stiffness() * (p.distance(q) - spring.freeLength());
      Vector force = Direction.from(p, q).times(pull);
      force(spring.first().body(), spring.first().at(), force);
      force(spring.second().body(), spring.second().at(), force.times(-1));
    } else if (load instanceof TorsionSpring spring) {
      double turned =
          spring.turned() + pose.frame(spring.body()).turn() - pose.frame(spring.other()).turn();
      double couple = -factor * spring.stiffness() * turned;
      pushes.add(new Push(spring.body(), 0, 0, 0, 0, couple));
      pushes.add(new Push(spring.other(), 0, 0, 0, 0, -couple));
    }
  }

  private void force(String body, String point, Vector force) {
    Point p = at(body, point);
    String name = device.body(body).isEmpty() ? PlainConnections.PIN + body : body;
    pushes.add(new Push(name, p.x(), p.y(), force.x(), force.y(), 0));
  }

  private void weight(Weight weight, double factor) {
    Vector force = device.gravity().times(weight.mass() * factor);
    if (weight.at().isPresent()) {
      force(weight.body(), weight.at().get(), force);
      return;
    }
    Member member = (Member) device.body(weight.body()).orElseThrow();
    double length = 0;
    for (Bar bar : member.bars()) {
      length += device.point(bar.start()).distance(device.point(bar.end()));
    }
    // each bar's share, half at either end: the same resultant
    for (Bar bar : member.bars()) {
      double share = device.point(bar.start()).distance(device.point(bar.end())) / length / 2;
      force(member.name(), bar.start(), force.times(share));
      force(member.name(), bar.end(), force.times(share));
    }
  }

  /** Two Gauss points integrate linear intensity times linear arm exactly. */
  private void spread(SpreadLoad spread, double factor) {
    Point p = at(spread.member(), spread.from());
    Point q = at(spread.member(), spread.to());
    double length = p.distance(q);
    if (spread.per() == SpreadLoad.Per.HORIZONTAL) {
      length = Math.abs(device.point(spread.to()).x() - device.point(spread.from()).x());
    }
    Direction direction = spread.direction().orElseGet(() -> Direction.from(p, q).perpendicular());
    for (int sign = -1; sign <= 1; sign += 2) {
      double t = 0.5 + sign * Math.sqrt(3) / 6;
      double intensity = spread.start() + t * (spread.end() - spread.start());
      Vector force = direction.times(factor * intensity * length / 2);
      Point at = Point.of(p.x() + t * (q.x() - p.x()), p.y() + t * (q.y() - p.y()));
      pushes.add(new Push(spread.member(), at.x(), at.y(), force.x(), force.y(), 0));
    }
  }
}
