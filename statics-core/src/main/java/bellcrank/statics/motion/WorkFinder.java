package bellcrank.statics.motion;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Load;
import bellcrank.statics.device.Measure;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.Answer;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.equilibrium.internal.Closure;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.motion.internal.Coordinate;
import bellcrank.statics.motion.internal.GaussRule;
import bellcrank.statics.motion.internal.Seat;
import bellcrank.statics.motion.internal.Tracer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Adds up the work over a part of a course. */
final class WorkFinder {

  /** Abscissas of Gauss's rule in each interval between places on the way. */
  private static final int POINTS = 5;

  private final Course course;
  private final Device device;

  WorkFinder(Course course) {
    this.course = course;
    device = course.device();
  }

  /** The work; empty where an effort is not told somewhere on the way. */
  Optional<Work> between(double from, double to) {
    Closure first = course.stand(from);
    Closure last = course.stand(to);
    Pose start = first.pose();
    Pose end = last.pose();
    double loads = 0;
    double stored = 0;
    for (Load load : device.loads()) {
      double factor = course.loadCase().factor(load.name());
      if (load instanceof Spring spring) {
        stored += factor * (energy(spring, end) - energy(spring, start));
      } else if (load instanceof TorsionSpring spring) {
        stored += factor * (energy(spring, end) - energy(spring, start));
      } else if (!(load instanceof Sought) && !isFollowing(load)) {
        loads += factor * done(load, start, end);
      }
    }
    for (var connection : device.connections()) {
      if (connection instanceof Strut strut && strut.mass() > 0) {
        double factor = course.loadCase().factor(strut.name());
        loads +=
            factor
                * (half(strut, strut.first(), start, end)
                    + half(strut, strut.second(), start, end));
      }
    }
    List<double[]> places = new ArrayList<>();
    places.add(first.configuration());
    List<double[]> between =
        new ArrayList<>(course.configurations(Math.min(from, to), Math.max(from, to)));
    if (from > to) {
      Collections.reverse(between);
    }
    places.addAll(between);
    places.add(last.configuration());
    double effort = 0;
    for (int k = 0; k + 1 < places.size(); k++) {
      Optional<Rates> done = over(places.get(k), places.get(k + 1));
      if (done.isEmpty()) {
        return Optional.empty();
      }
      effort += done.get().effort();
      loads += done.get().following();
    }
    return Optional.of(new Work(effort, loads, stored));
  }

  /** Work of efforts, and of loads that turn with their member; or their powers. */
  private record Rates(double effort, double following) {}

  /** Between two places that are near one another, in terms of the number that changes most. */
  private Optional<Rates> over(double[] from, double[] to) {
    Coordinate coordinate = Coordinate.ofLargestChange(from, to);
    double begin = from[coordinate.index()];
    double change = to[coordinate.index()] - begin;
    double effort = 0;
    double following = 0;
    Closure closure = course.closure();
    Seat seat = new Seat(closure, coordinate);
    GaussRule rule = GaussRule.of(POINTS);
    for (int k = 0; k < POINTS && change != 0; k++) {
      seat.put(from, to, rule.share(k), begin + rule.share(k) * change);
      Optional<Rates> rates = rates(closure, Tracer.velocities(closure, coordinate));
      if (rates.isEmpty()) {
        return Optional.empty();
      }
      effort += change * rule.weight(k) * rates.get().effort();
      following += change * rule.weight(k) * rates.get().following();
    }
    return Optional.of(new Rates(effort, following));
  }

  private Optional<Rates> rates(Closure closure, double[] velocities) {
    if (velocities.length == 0) {
      return Optional.empty();
    }
    Pose pose = closure.pose();
    Balance balance = Balance.of(device, course.loadCase(), pose);
    List<BodyMotion> motions = CourseFinder.motions(device, closure, velocities);
    double effort = 0;
    double following = 0;
    for (Sought sought : device.sought()) {
      Optional<Double> power = power(sought, balance, pose, motions);
      if (power.isEmpty()) {
        return Optional.empty();
      }
      effort += power.get();
    }
    if (course.drive() instanceof Drive.Length length) {
      if (!(balance.answer(Ask.of(length.connection(), Measure.TENSION))
          instanceof Answer.Value tension)) {
        return Optional.empty();
      }
      // a tension draws its ends together, so it takes work out while its length grows
      effort -= tension.si() * course.rate(closure, velocities);
    }
    for (Load load : device.loads()) {
      if (isFollowing(load)) {
        SpreadLoad spread = (SpreadLoad) load;
        Point a = pose.frame(spread.member()).apply(device.point(spread.from()));
        Point b = pose.frame(spread.member()).apply(device.point(spread.to()));
        Vector left = a.to(b).perpendicular();
        double factor = course.loadCase().factor(load.name());
        Vector first = velocity(motions, spread.member(), a);
        Vector last = velocity(motions, spread.member(), b);
        // a linear load on a linear velocity
        following +=
            factor
                * (left.dot(first) * (2 * spread.start() + spread.end())
                    + left.dot(last) * (spread.start() + 2 * spread.end()))
                / 6;
      }
    }
    return Optional.of(new Rates(effort, following));
  }

  private static boolean isFollowing(Load load) {
    return load instanceof SpreadLoad spread && spread.direction().isEmpty();
  }

  private Optional<Double> power(
      Sought sought, Balance balance, Pose pose, List<BodyMotion> motions) {
    if (sought.want() == Sought.Want.COUPLE) {
      double turning =
          motions.stream()
              .filter(one -> one.body().equals(sought.body()))
              .mapToDouble(BodyMotion::turning)
              .sum();
      return balance.answer(Ask.of(sought.name())) instanceof Answer.Value couple
          ? Optional.of(couple.si() * turning)
          : Optional.empty();
    }
    if (!(balance.answer(Ask.of(sought.name(), Measure.X)) instanceof Answer.Value x)
        || !(balance.answer(Ask.of(sought.name(), Measure.Y)) instanceof Answer.Value y)) {
      return Optional.empty();
    }
    Point drawn = device.point(sought.at().orElseThrow());
    Point place = sought.to().map(device::point).map(end -> middle(drawn, end)).orElse(drawn);
    String body = frameBody(sought.body());
    Vector v = velocity(motions, body, pose.frame(body).apply(place));
    return Optional.of(x.si() * v.x() + y.si() * v.y());
  }

  private static Vector velocity(List<BodyMotion> motions, String body, Point at) {
    return motions.stream()
        .filter(one -> one.body().equals(body))
        .findFirst()
        .map(one -> one.velocityAt(at))
        .orElse(Vector.ZERO);
  }

  /** The body with which a load's place moves: a pin moves with the bodies that it joins. */
  private String frameBody(String body) {
    return device.connection(body).orElse(null) instanceof Pin pin
        ? pin.bodies().contains("ground") ? "ground" : pin.bodies().get(0)
        : body;
  }

  private static Point middle(Point a, Point b) {
    return Point.of((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
  }

  private Vector moved(String body, Point drawn, Pose start, Pose end) {
    String frame = frameBody(body);
    return start.frame(frame).apply(drawn).to(end.frame(frame).apply(drawn));
  }

  private double done(Load load, Pose start, Pose end) {
    if (load instanceof Force force) {
      return force.vector().dot(moved(force.body(), device.point(force.at()), start, end));
    }
    if (load instanceof Weight weight) {
      Point at =
          weight.at().isPresent()
              ? device.point(weight.at().get())
              : device.middleOfBars((Member) device.body(weight.body()).orElseThrow());
      return device.gravity().times(weight.mass()).dot(moved(weight.body(), at, start, end));
    }
    if (load instanceof Couple couple) {
      return couple.moment()
          * (end.frame(couple.member()).turn() - start.frame(couple.member()).turn());
    }
    return load instanceof SpreadLoad spread ? done(spread, start, end) : 0;
  }

  private double done(SpreadLoad spread, Pose start, Pose end) {
    Point a = device.point(spread.from());
    Point b = device.point(spread.to());
    double length =
        spread.per() == SpreadLoad.Per.HORIZONTAL ? Math.abs(b.x() - a.x()) : a.distance(b);
    Vector way = spread.direction().orElseThrow().times(length / 6);
    Vector first = moved(spread.member(), a, start, end);
    Vector last = moved(spread.member(), b, start, end);
    return way.dot(first) * (2 * spread.start() + spread.end())
        + way.dot(last) * (spread.start() + 2 * spread.end());
  }

  private double half(Strut strut, End side, Pose start, Pose end) {
    Vector weight = device.gravity().times(strut.mass() / 2);
    return weight.dot(moved(side.body(), device.point(side.at()), start, end));
  }

  private double energy(Spring spring, Pose pose) {
    Point a = pose.frame(spring.first().body()).apply(device.point(spring.first().at()));
    Point b = pose.frame(spring.second().body()).apply(device.point(spring.second().at()));
    double longer = a.distance(b) - spring.freeLength();
    return spring.stiffness() * longer * longer / 2;
  }

  private static double energy(TorsionSpring spring, Pose pose) {
    double turned =
        spring.turned() + pose.frame(spring.body()).turn() - pose.frame(spring.other()).turn();
    return spring.stiffness() * turned * turned / 2;
  }
}
