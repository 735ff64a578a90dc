package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.equilibrium.internal.Closure;
import bellcrank.statics.equilibrium.internal.PreparedSystem;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Watches a course for what ends it: a line that would push, a contact that would pull, parts that
 * meet. A part whose force statics does not fix, or that would have to do so as drawn already, is
 * not watched.
 */
final class Watch {

  /** Share of the largest force up to which a force below zero is rounding. */
  private static final double ROUNDING = 1e-9;

  private final Device device;
  private final LoadCase loadCase;
  private final List<Meeting> meetings;
  private final List<Ask> asks = new ArrayList<>();
  private final List<Beside> before = new ArrayList<>();
  private final List<Prepared.Slot> slots = new ArrayList<>();

  /** What solves the forces quickly; empty if some of them is no single unknown. */
  private Optional<PreparedSystem.Storage> quick = Optional.empty();

  private CourseEnd.Why why = CourseEnd.Why.STATED;
  private String part = "";

  Watch(Device device, LoadCase loadCase, List<Meeting> meetings) {
    this.device = device;
    this.loadCase = loadCase;
    this.meetings = List.copyOf(meetings);
  }

  /** A watch that begins at a pose. */
  Watch from(Pose pose) {
    Watch watch = new Watch(device, loadCase, meetings);
    for (Meeting meeting : meetings) {
      watch.before.add(beside(meeting, pose));
    }
    if (device.connections().stream().allMatch(one -> measures(one).isEmpty())) {
      return watch;
    }
    Balance balance = Balance.of(device, loadCase, pose);
    for (Connection connection : device.connections()) {
      for (Measure measure : measures(connection)) {
        Ask ask = Ask.of(connection.name(), measure);
        if (balance.answer(ask) instanceof Answer.Value value && value.si() >= -slack(balance)) {
          watch.asks.add(ask);
          Prepared.slot(device, ask).ifPresent(watch.slots::add);
        }
      }
    }
    if (!watch.asks.isEmpty() && watch.slots.size() == watch.asks.size()) {
      PreparedSystem system = new PreparedSystem(device);
      watch.quick = system.isSquare() ? Optional.of(system.storage()) : Optional.empty();
    }
    return watch;
  }

  private static List<Measure> measures(Connection connection) {
    if (connection instanceof Wrap) {
      return List.of(Measure.TENSION, Measure.END_TENSION);
    }
    if (connection instanceof Line || connection instanceof Reeving) {
      return List.of(Measure.TENSION);
    }
    boolean pushes =
        connection instanceof Contact
            || connection instanceof ContactBase
            || (connection instanceof Roller roller && roller.sides() == Sides.ONE)
            || (connection instanceof Slot slot && slot.sides() == Sides.ONE);
    return pushes ? List.of(Measure.NORMAL) : List.of();
  }

  private double slack(Balance balance) {
    double largest = 0;
    for (var reaction : balance.reactions()) {
      if (reaction.x() instanceof Answer.Value x && reaction.y() instanceof Answer.Value y) {
        largest = Math.max(largest, Math.hypot(x.si(), y.si()));
      }
    }
    return ROUNDING * largest;
  }

  /**
   * Whether nothing has ended the course since the last place that was found fine, where a closure
   * of the device stands.
   */
  boolean isFine(Closure closure) {
    boolean holds = asks.isEmpty() || noneIsBelowZero(closure);
    return (holds && meetings.isEmpty()) || isFine(closure.pose(), holds);
  }

  /** Whether all watched forces are surely above zero; if not, the balance decides. */
  private boolean noneIsBelowZero(Closure closure) {
    PreparedSystem.Storage storage = quick.orElse(null);
    if (storage == null || !storage.solve(closure, loadCase)) {
      return false;
    }
    for (Prepared.Slot slot : slots) {
      if (!(storage.unknown(slot.column()) * slot.factor() >= 0)) {
        return false;
      }
    }
    return true;
  }

  private boolean isFine(Pose pose, boolean holds) {
    List<Beside> now = new ArrayList<>();
    for (int k = 0; k < meetings.size(); k++) {
      Meeting meeting = meetings.get(k);
      now.add(beside(meeting, pose));
      if (now.get(k).hasCrossedFrom(before.get(k))) {
        why = CourseEnd.Why.MEETS;
        part = meeting.point() + " of " + meeting.body() + " and " + meeting.other() + ":";
        return false;
      }
    }
    if (!holds && !isFine(Balance.of(device, loadCase, pose))) {
      return false;
    }
    before.clear();
    before.addAll(now);
    return true;
  }

  /** Whether no watched force is below zero by more than rounding. */
  private boolean isFine(Balance balance) {
    for (Ask ask : asks) {
      if (balance.answer(ask) instanceof Answer.Value value && value.si() < -slack(balance)) {
        why = ask.measure() == Measure.NORMAL ? CourseEnd.Why.LIFTS : CourseEnd.Why.SLACK;
        part = ask.subject() instanceof bellcrank.statics.device.Subject.Part p ? p.name() : "";
        return false;
      }
    }
    return true;
  }

  private Beside beside(Meeting meeting, Pose pose) {
    Point a = pose.frame(meeting.other()).apply(device.point(meeting.from()));
    Point b = pose.frame(meeting.other()).apply(device.point(meeting.to()));
    Point p = pose.frame(meeting.body()).apply(device.point(meeting.point()));
    Vector edge = a.to(b);
    double square = edge.dot(edge);
    return new Beside(edge.dot(a.to(p)) / square, edge.cross(a.to(p)) / square);
  }

  /**
   * Where a point lies beside an edge, in lengths of it: how far along, and how far to its left.
   */
  private record Beside(double along, double left) {

    /**
     * Whether the way from another place may go through the edge, not past its ends: it may bend by
     * less than its length. The closer the places, the surer it is.
     */
    boolean hasCrossedFrom(Beside other) {
      if (left < 0 == other.left < 0) {
        return false;
      }
      double gone = other.left == left ? 0 : other.left / (other.left - left);
      double share = other.along + gone * (along - other.along);
      double bend = Math.hypot(along - other.along, left - other.left);
      return share >= -bend && share <= 1 + bend;
    }
  }

  CourseEnd.Why why() {
    return why;
  }

  String part() {
    return part;
  }
}
