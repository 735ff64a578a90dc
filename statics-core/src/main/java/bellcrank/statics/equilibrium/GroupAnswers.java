package bellcrank.statics.equilibrium;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Subject;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.ForceSum;
import bellcrank.statics.equilibrium.internal.Solved;
import bellcrank.statics.geometry.Point;
import java.util.Optional;

/** Adds up what acts between groups of bodies. */
final class GroupAnswers {

  private final Device device;
  private final Solved solved;

  GroupAnswers(Balance balance, Solved solved) {
    this.device = balance.device();
    this.solved = solved;
  }

  Answer answer(Subject.Group group, Ask ask) {
    Assembly assembly = solved.assembly();
    boolean[] on = new boolean[assembly.bodyCount() + 1];
    boolean[] from = new boolean[assembly.bodyCount() + 1];
    for (String body : group.bodies()) {
      on[index(body)] = true;
    }
    for (int i = 0; i < on.length; i++) {
      from[i] = group.from().isEmpty() && !on[i];
    }
    for (String body : group.from()) {
      from[index(body)] = true;
    }
    Optional<Answer> mixed = pins(on, from, group.from().isEmpty());
    if (mixed.isPresent()) {
      return mixed.get();
    }
    Point about = ask.about().map(device::point).orElse(Point.ORIGIN);
    ForceSum sum = new ForceSum(solved, about);
    sum.addBetween(on, from);
    return ForceMeasures.of(sum, ask.measure(), solved.forceScale());
  }

  private int index(String body) {
    return body.equals(Ground.NAME) ? 0 : device.bodyIndex(body) + 1;
  }

  /**
   * A pin that is a joint of its own counts with whatever it joins the group to; if that is partly
   * asked for and partly not, the force cannot be shared out; nor can a load on the pin itself.
   */
  private Optional<Answer> pins(boolean[] on, boolean[] from, boolean fromAll) {
    for (Connection connection : device.connections()) {
      int pin = connection instanceof Pin ? solved.assembly().pinBody(connection.name()) : -1;
      if (pin < 0) {
        continue;
      }
      boolean touches = false;
      boolean asked = false;
      boolean other = false;
      for (String body : connection.bodies()) {
        int index = index(body);
        touches |= on[index];
        asked |= !on[index] && from[index];
        other |= !on[index] && !from[index];
      }
      if (touches && asked && other) {
        return Optional.of(
            Values.notDefined(
                "pin "
                    + connection.name()
                    + " joins the group to bodies of both kinds, and its force cannot be shared out"));
      }
      if (touches && asked && !fromAll && isLoaded(connection.name())) {
        return Optional.of(
            Values.notDefined(
                "pin "
                    + connection.name()
                    + " carries a load of its own, which cannot be shared out between its bodies"));
      }
      // forces of the group's own bodies and of loads on the pin are none of other bodies
      from[pin + 1] = touches && asked;
    }
    return Optional.empty();
  }

  private boolean isLoaded(String pin) {
    for (Load load : device.loads()) {
      boolean onPin =
          (load instanceof Force force && force.body().equals(pin))
              || (load instanceof Weight weight && weight.body().equals(pin))
              || (load instanceof Sought sought && sought.body().equals(pin));
      if (onPin) {
        return true;
      }
    }
    return false;
  }
}
