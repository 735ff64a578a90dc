package bellcrank.statics.strength;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.equilibrium.internal.StateReader;
import bellcrank.statics.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the states of a device pose after pose, without a balance for each. It can do so where the
 * equations fix all unknowns, and all that is needed is told by them.
 */
final class Reading {

  /**
   * What a connection does to a body.
   *
   * @param share one over the number of equal parts; negative where the other body is read
   */
  record Force(String body, double share) {}

  /** What pulls; its length is the distance of its ends. */
  record Tension(
      Prepared.Slot first,
      Prepared.Slot last,
      int count,
      String bodyA,
      Point a,
      String bodyB,
      Point b) {
    double length(Pose pose) {
      return pose.frame(bodyA).apply(a).distance(pose.frame(bodyB).apply(b));
    }
  }

  private final StateReader reader;
  private final List<Force> forces = new ArrayList<>();
  private final List<Tension> tensions = new ArrayList<>();
  private boolean complete = true;

  Reading(Device device, Needs needs) {
    reader = new StateReader(device);
    for (Needs.BarOf need : needs.bars()) {
      Member member = (Member) device.body(need.member()).orElseThrow();
      reader.addBar(need.member(), member.bars().indexOf(need.bar()));
    }
    needs.forces().forEach(need -> force(device, need));
    needs.tensions().forEach(part -> tension(device, part));
    complete &= reader.isComplete();
  }

  /** Whether nothing is left that only a balance can tell. */
  boolean isComplete() {
    return complete;
  }

  private void force(Device device, Needs.ForceOf need) {
    Connection connection = device.connection(need.connection()).orElseThrow();
    List<String> bodies = connection.bodies();
    boolean ground = need.body().equals(Ground.NAME);
    // the ground takes the opposite of what the one other body does
    String body =
        ground
            ? bodies.stream().filter(one -> !one.equals(Ground.NAME)).findFirst().orElseThrow()
            : need.body();
    complete &= !ground || bodies.stream().distinct().count() == 2;
    Point at = device.point(connection.places().get(bodies.indexOf(body)));
    reader.addForce(
        device.connections().indexOf(connection), device.bodyIndex(body), at.x(), at.y());
    double share = 1.0 / device.sharing(connection, need.body());
    forces.add(new Force(need.body(), ground ? -share : share));
  }

  private void tension(Device device, String part) {
    Connection connection = device.connection(part).orElseThrow();
    Optional<Prepared.Slot> first = Prepared.slot(device, Ask.of(part, Measure.TENSION));
    boolean two = connection instanceof Reeving || connection instanceof Wrap;
    Optional<Prepared.Slot> last =
        two ? Prepared.slot(device, Ask.of(part, Measure.END_TENSION)) : first;
    if (first.isEmpty() || last.isEmpty()) {
      complete = false;
      return;
    }
    List<String> bodies = connection.bodies();
    int end = bodies.size() - 1;
    tensions.add(
        new Tension(
            first.get(),
            last.get(),
            device.sharing(connection, bodies.get(0)),
            bodies.get(0),
            device.point(connection.places().get(0)),
            bodies.get(end),
            device.point(connection.places().get(end))));
  }

  /** Room for a state. */
  CarriedForces room(Needs needs) {
    return CarriedForces.known(needs, reader);
  }

  /** Reads a state into its room; false where only a balance can tell it. */
  boolean read(Pose pose, LoadCase loadCase, CarriedForces to) {
    if (!reader.solve(pose, loadCase)) {
      return false;
    }
    to.read(reader, forces, tensions, pose);
    return true;
  }

  /** Reads another state in the same pose; false where only a balance can tell it. */
  boolean readAgain(Pose pose, LoadCase loadCase, CarriedForces to) {
    if (!reader.again(loadCase)) {
      return false;
    }
    to.read(reader, forces, tensions, pose);
    return true;
  }

  /** Room for the unknowns of a state. */
  double[] unknowns() {
    return new double[reader.unknowns()];
  }

  /** Copies the unknowns of the state that was read last. */
  void unknowns(double[] to) {
    for (int column = 0; column < to.length; column++) {
      to[column] = reader.unknown(column);
    }
  }

  /** Sum of the sizes of the loads of the state that was read last, in N. */
  double loads() {
    return reader.loads();
  }
}
