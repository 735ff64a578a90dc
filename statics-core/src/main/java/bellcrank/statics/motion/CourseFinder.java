package bellcrank.statics.motion;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.equilibrium.Freedom;
import bellcrank.statics.equilibrium.internal.Closure;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.motion.internal.Driver;
import bellcrank.statics.motion.internal.Tracer;
import java.util.ArrayList;
import java.util.List;

/** Looks whether a device can be driven, and follows it both ways. */
final class CourseFinder {

  /** Rate of the drive, for the fastest motion of one, below which it is not driven. */
  private static final double STILL = 1e-9;

  /** A way shorter than this, in rad or sizes of the device, is what rounding lets through. */
  private static final double FIRST_INSTANT = 1e-4;

  private CourseFinder() {}

  static Travel find(
      Device device,
      LoadCase loadCase,
      Drive drive,
      double least,
      double greatest,
      List<Meeting> meetings) {
    checkLimits(device, least, greatest);
    meetings.forEach(meeting -> check(device, meeting));
    List<Integer> released = Drivers.released(device, drive);
    Driver driver = Drivers.of(device, drive);
    Closure closure = Closure.of(device, released);
    double[] driven = closure.isLarge() ? closure.along(driver.row(closure)) : new double[0];
    List<double[]> free = driven.length > 0 ? List.of(normalized(driven)) : closure.free();
    if (free.size() != 1) {
      return new Travel.Standstill(
          free.isEmpty() ? Travel.Reason.HELD : Travel.Reason.SEVERAL_FREEDOMS,
          freedoms(device, closure, free));
    }
    double[] tangent = free.get(0);
    double rate = dot(driver.row(closure), tangent);
    if (Math.abs(rate) < STILL) {
      return new Travel.Standstill(Travel.Reason.NOT_DRIVEN, freedoms(device, closure, free));
    }
    double[] forward = times(tangent, Math.signum(rate));
    Watch watch = new Watch(device, loadCase, meetings);
    double unit = Drivers.unit(device, drive);
    double[] start = closure.configuration();
    Watch upWatch = watch.from(closure.pose());
    Tracer up =
        Tracer.follow(closure, driver, forward, greatest / unit, 1, d -> upWatch.isFine(closure));
    closure.restore(start);
    Watch downWatch = watch.from(closure.pose());
    Tracer down =
        Tracer.follow(
            closure, driver, times(forward, -1), least / unit, -1, d -> downWatch.isFine(closure));
    if (up.end() == Tracer.End.STUCK
        && down.end() == Tracer.End.STUCK
        && up.reached() - down.reached() < FIRST_INSTANT) {
      closure.restore(start);
      return new Travel.Standstill(Travel.Reason.FIRST_ORDER_ONLY, freedoms(device, closure, free));
    }
    return new Course(
        device,
        loadCase,
        drive,
        down,
        up,
        end(down, downWatch, unit, least),
        end(up, upWatch, unit, greatest));
  }

  private static CourseEnd end(Tracer tracer, Watch watch, double unit, double limit) {
    double drive = tracer.reached() * unit;
    return switch (tracer.end()) {
      case STATED -> new CourseEnd(limit, CourseEnd.Why.STATED, "");
      case DEAD_CENTRE -> new CourseEnd(drive, CourseEnd.Why.DEAD_CENTRE, "");
      case WATCHED -> new CourseEnd(drive, watch.why(), watch.part());
      case TOO_LONG -> new CourseEnd(drive, CourseEnd.Why.TOO_LONG, "");
      case STUCK -> new CourseEnd(drive, CourseEnd.Why.STUCK, "");
    };
  }

  private static void checkLimits(Device device, double least, double greatest) {
    if (!(least <= 0) || !Double.isFinite(least)) {
      throw new ModelException(device.name(), "travel, least", least, "a number of at most 0");
    }
    if (!(greatest >= 0) || !Double.isFinite(greatest)) {
      throw new ModelException(
          device.name(), "travel, greatest", greatest, "a number of at least 0");
    }
  }

  private static void check(Device device, Meeting meeting) {
    for (String body : List.of(meeting.body(), meeting.other())) {
      if (!body.equals(Ground.NAME) && device.body(body).isEmpty()) {
        throw new ModelException(device.name(), "meeting", body, "the name of a body");
      }
    }
    device.point(meeting.point());
    if (!(device.point(meeting.from()).distance(device.point(meeting.to())) > 0)) {
      throw new ModelException(
          device.name(), "meeting", meeting.from() + " to " + meeting.to(), "two points apart");
    }
  }

  private static List<Freedom> freedoms(Device device, Closure closure, List<double[]> free) {
    List<Freedom> freedoms = new ArrayList<>();
    for (double[] velocity : free) {
      freedoms.add(Freedom.of(device, motions(device, closure, velocity), false, false));
    }
    return freedoms;
  }

  /** Motions of bodies from velocities about the device's middle. */
  static List<BodyMotion> motions(Device device, Closure closure, double[] velocity) {
    List<BodyMotion> motions = new ArrayList<>();
    int named = device.members().size() + device.joints().size();
    for (int body = 0; body < named; body++) {
      int row = closure.assembly().firstRow(body);
      boolean member = body < device.members().size();
      Vector v = Vector.of(velocity[row], velocity[row + 1]).times(device.size());
      double turning = member ? velocity[row + 2] : 0;
      if (v.norm() > 1e-9 * device.size() || Math.abs(turning) > 1e-9) {
        motions.add(
            BodyMotion.of(device, closure.assembly().bodyName(body), v, device.middle(), turning));
      }
    }
    return motions;
  }

  private static double[] normalized(double[] vector) {
    return times(vector, 1 / Math.sqrt(dot(vector, vector)));
  }

  static double[] times(double[] vector, double factor) {
    double[] product = vector.clone();
    for (int i = 0; i < product.length; i++) {
      product[i] *= factor;
    }
    return product;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
