package bellcrank.statics.study.internal;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import java.util.ArrayList;
import java.util.List;

/** The given loads of a case as actions on bodies. */
final class DualLoads {

  private final DualDevice at;
  private final List<DualAction> actions = new ArrayList<>();

  private DualLoads(DualDevice at) {
    this.at = at;
  }

  static List<DualAction> of(DualDevice at) {
    DualLoads loads = new DualLoads(at);
    at.device.loads().forEach(loads::add);
    for (Connection connection : at.device.connections()) {
      if (connection instanceof Strut strut && strut.mass() > 0) {
        loads.half(strut, strut.first());
        loads.half(strut, strut.second());
      }
    }
    return loads.actions;
  }

  private void half(Strut strut, End end) {
    Dual mass = at.number("mass", strut.name(), strut.mass()).times(0.5);
    force(strut.name(), end.body(), at.point(end.at()), at.gravity().times(mass));
  }

  private void add(Load load) {
    if (load instanceof Force force) {
      force(force.name(), force.body(), at.point(force.at()), at.force(force));
    } else if (load instanceof Weight weight) {
      Dual mass = at.number("mass", weight.name(), weight.mass());
      DualVector place =
          weight.at().isPresent() ? at.point(weight.at().get()) : at.middleOfBars(weight.body());
      DualEntry entry =
          weight.at().isPresent() ? new DualEntry.At(place) : new DualEntry.OverBars();
      put(
          new DualAction(
              weight.name(),
              -1,
              at.body(weight.body()),
              DualAction.NONE,
              place,
              at.gravity().times(mass),
              Dual.ZERO,
              entry));
    } else if (load instanceof Couple couple) {
      Dual moment = at.number("moment", couple.name(), couple.moment());
      // a couple on a screw turns it about its own axis and not in the plane
      if (at.device.body(couple.member()).isPresent()) {
        DualEntry entry =
            couple.at().isPresent()
                ? new DualEntry.At(at.point(couple.at().get()))
                : new DualEntry.Unplaced();
        couple(couple.name(), couple.member(), DualAction.NONE, moment, entry);
      }
    } else if (load instanceof SpreadLoad spread) {
      spread(spread);
    } else if (load instanceof Spring spring) {
      spring(spring);
    } else if (load instanceof TorsionSpring twist) {
      Dual stiffness = at.number("torsion stiffness", twist.name(), twist.stiffness());
      Dual moment = stiffness.times(at.number("turned angle", twist.name(), twist.turned()));
      DualEntry entry = hinge(twist);
      couple(twist.name(), twist.body(), at.body(twist.other()), moment.negative(), entry);
      couple(twist.name(), twist.other(), at.body(twist.body()), moment, entry);
    } else if (!(load instanceof Sought)) {
      throw new IllegalStateException(load.name());
    }
  }

  private void force(String owner, String body, DualVector place, DualVector force) {
    put(owner, at.body(body), DualAction.NONE, place, force, Dual.ZERO);
  }

  private void couple(String owner, String body, int other, Dual moment, DualEntry entry) {
    put(
        new DualAction(
            owner, -1, at.body(body), other, DualVector.ZERO, DualVector.ZERO, moment, entry));
  }

  private void put(
      String owner, int body, int other, DualVector place, DualVector force, Dual couple) {
    put(new DualAction(owner, -1, body, other, place, force, couple));
  }

  private void put(DualAction one) {
    actions.add(one.times(at.factor(one.owner())));
  }

  /** A torsion spring sits at the pin between its bodies, where there is just one. */
  private DualEntry hinge(TorsionSpring twist) {
    List<Connection> pins =
        at.device.connections().stream()
            .filter(Pin.class::isInstance)
            .filter(pin -> pin.bodies().containsAll(List.of(twist.body(), twist.other())))
            .toList();
    return pins.size() == 1
        ? new DualEntry.At(at.point(pins.get(0).places().get(0)))
        : new DualEntry.Unplaced();
  }

  private void spread(SpreadLoad spread) {
    DualVector a = at.point(spread.from());
    DualVector b = at.point(spread.to());
    DualVector way = b.minus(a);
    Dual length = spread.per() == SpreadLoad.Per.HORIZONTAL ? way.x().abs() : way.norm();
    Dual start = at.number("start", spread.name(), spread.start());
    Dual end = at.number("end", spread.name(), spread.end());
    DualVector direction =
        spread.direction().isPresent()
            ? at.way(spread.name(), spread.direction().get())
            : way.unit().perpendicular();
    Dual total = start.plus(end).times(0.5).times(length);
    // the uneven part of a trapezoid is a couple of difference · length / 12
    Dual couple = end.minus(start).times(length).times(1 / 12.0).times(way.cross(direction));
    put(
        new DualAction(
            spread.name(),
            -1,
            at.body(spread.member()),
            DualAction.NONE,
            a.plus(b).times(0.5),
            direction.times(total),
            couple,
            new DualEntry.Along(
                a, b, direction.times(start.times(length)), direction.times(end.times(length)))));
  }

  private void spring(Spring spring) {
    DualVector a = at.point(spring.first().at());
    DualVector b = at.point(spring.second().at());
    DualVector way = b.minus(a);
    Dual stretch = way.norm().minus(at.number("free length", spring.name(), spring.freeLength()));
    Dual tension = at.number("stiffness", spring.name(), spring.stiffness()).times(stretch);
    DualVector pull = way.unit().times(tension);
    int first = at.body(spring.first().body());
    int second = at.body(spring.second().body());
    put(spring.name(), first, second, a, pull, Dual.ZERO);
    put(spring.name(), second, first, b, pull.negative(), Dual.ZERO);
  }
}
