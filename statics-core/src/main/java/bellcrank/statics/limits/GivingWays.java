package bellcrank.statics.limits;

import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.equilibrium.DirectionWords;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.equilibrium.internal.Assembly;
import bellcrank.statics.equilibrium.internal.MotionFinder;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.internal.AtLimit;
import bellcrank.statics.limits.internal.Extreme;
import bellcrank.statics.limits.internal.Goal;
import bellcrank.statics.limits.internal.States;
import bellcrank.statics.limits.internal.Yielding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells how a device gives way at a limit. */
final class GivingWays {

  /** Speeds below this, of motions of order one, count as none. */
  private static final double STILL = 1e-7;

  private final Device device;
  private final Pose pose;

  GivingWays(Device device, Pose pose) {
    this.device = device;
    this.pose = pose;
  }

  /** How it gives way where a goal is greatest. */
  GivingWay at(Admissible.Found found, Goal goal) {
    Extreme extreme = found.extreme();
    return of(
        Yielding.of(
            device,
            pose,
            found.states().space().assembly(),
            AtLimit.of(found.states(), goal, extreme),
            goal.soughtForces(),
            found.states().driving(goal)),
        extreme.forces());
  }

  /**
   * How a device gives way that is just about to lock itself: what is squeezed, as in a state of
   * the squeeze alone, and what is not, as in a state under the full loads.
   */
  GivingWay locking(Admissible.Found squeeze, Goal goal, Admissible.Found loaded) {
    States states = squeeze.states();
    Extreme extreme = squeeze.extreme();
    return of(
        Yielding.of(
            device,
            pose,
            states.space().assembly(),
            AtLimit.squeezed(states, goal, extreme, loaded.states(), loaded.extreme()),
            goal.soughtForces(),
            states.driving(goal)),
        extreme.forces());
  }

  /** How it gives way where every condition is widened by a share of the loads. */
  GivingWay widened(Admissible.Found found, Goal goal, double share) {
    return found.extreme().isFound()
        ? of(
            Yielding.of(
                device,
                pose,
                found.states().space().assembly(),
                AtLimit.widened(found.states(), goal, found.extreme(), share),
                goal.soughtForces(),
                new double[0]),
            found.extreme().forces())
        : new GivingWay(List.of(), Optional.empty(), 0);
  }

  private GivingWay of(Yielding yielding, double[] forces) {
    boolean one = yielding.ways() == 1 && yielding.moves();
    List<Event> events = new ArrayList<>();
    for (Yielding.At at : yielding.events()) {
      event(yielding, at, one, forces).ifPresent(events::add);
    }
    Optional<Freedom> motion = one ? Optional.of(freedom(yielding)) : Optional.empty();
    return new GivingWay(events, motion, yielding.moves() ? yielding.ways() : 0);
  }

  private Freedom freedom(Yielding yielding) {
    MotionFinder finder = yielding.finder();
    double[] motion = yielding.motion();
    List<BodyMotion> motions = new ArrayList<>();
    Assembly assembly = finder.assembly();
    for (int body = 0; body < assembly.bodyCount(); body++) {
      double[] v = finder.bodyVelocity(motion, body);
      if (v[0] != 0 || v[1] != 0 || v[2] != 0) {
        motions.add(
            BodyMotion.of(
                device,
                assembly.bodyName(body),
                Vector.of(v[0], v[1]),
                finder.reference(body),
                v[2]));
      }
    }
    return Freedom.of(device, motions, false, true);
  }

  private Optional<Event> event(Yielding yielding, Yielding.At at, boolean moves, double[] forces) {
    Connection connection = device.connections().get(at.connection());
    int column = yielding.finder().assembly().firstColumn(at.connection());
    double speed = moves ? yielding.speed(column) : 0;
    if (moves && connection instanceof Wrap) {
      // a rope is slack on both sides of its post at once
      speed += yielding.speed(column + 1);
    }
    String name = connection.name();
    return switch (at.kind()) {
      case PUSH ->
          moves && Math.abs(speed) < STILL && !(connection instanceof ContactBase)
              ? Optional.empty()
              : Optional.of(new Event(name, Event.Kind.LIFTS, "lifts off"));
      case PULL ->
          moves && Math.abs(speed) < STILL
              ? Optional.empty()
              : Optional.of(new Event(name, Event.Kind.GOES_SLACK, "goes slack"));
      case SLIDE -> Optional.of(slides(connection, moves ? yielding.speed(column + 1) : 0, at));
      case EDGE -> Optional.of(tips((ContactBase) connection, at.side()));
      case SINK -> Optional.of(new Event(name, Event.Kind.SINKS, "sinks into the ground"));
      case WRAP -> Optional.of(slipsRound((Wrap) connection, at.side()));
      case PIN -> Optional.of(new Event(name, Event.Kind.TURNS, "turns against its friction"));
      case SCREW -> Optional.of(runs(name, at.side(), forces[column]));
      case PART -> Optional.empty();
    };
  }

  private Event slides(Connection connection, double speed, Yielding.At at) {
    String name = connection.name();
    double sense = Math.abs(speed) >= STILL ? speed : -at.side();
    if (sense == 0) {
      return new Event(name, Event.Kind.SLIDES, "slides");
    }
    Vector way = tangent(connection).times(Math.signum(sense));
    return new Event(name, Event.Kind.SLIDES, "slides " + DirectionWords.of(way));
  }

  /** To the right of the push: for a push up, +x. */
  private Direction tangent(Connection connection) {
    String other = connection.bodies().get(1);
    Direction push =
        connection instanceof Contact contact ? contact.push() : ((ContactBase) connection).push();
    return pose.frame(other).apply(push).perpendicular().opposite();
  }

  private Event tips(ContactBase base, int side) {
    Direction edge = tangent(base);
    double x = side * edge.x();
    double y = side * edge.y();
    String word =
        Math.abs(x) >= Math.abs(y) ? (x > 0 ? "right" : "left") : (y > 0 ? "upper" : "lower");
    return new Event(base.name(), Event.Kind.TIPS, "tips about its " + word + " edge");
  }

  /**
   * A couple that drives the ends apart raises what presses on a screw, and lowers what pulls.
   *
   * @param side 1 if the thread bears no more of such a couple, −1 of the opposite one, 0 of both
   * @param tension axial force in N, tension positive
   */
  private static Event runs(String name, int side, double tension) {
    double way = -side * tension;
    String does = way == 0 ? "" : way > 0 ? ", raising its load" : ", lowering its load";
    return new Event(name, Event.Kind.RUNS, "turns in its thread" + does);
  }

  private static Event slipsRound(Wrap wrap, int side) {
    String towards = side == 0 ? "" : " towards " + (side > 0 ? wrap.first() : wrap.last()).at();
    return new Event(wrap.name(), Event.Kind.SLIPS_ROUND, "slips round its post" + towards);
  }
}
