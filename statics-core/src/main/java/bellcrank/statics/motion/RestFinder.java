package bellcrank.statics.motion;

import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.motion.internal.RootSearch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Finds where the driving force of the loads is zero, and its signs beside these places. */
final class RestFinder {

  /** Share of the power of all loads along the fastest motion up to which a power is none. */
  private static final double ROUNDING = 1e-11;

  /** Share of the course by which a place is left to see where the loads drive it. */
  private static final double BESIDE = 1e-4;

  /** Number of places between the ends at which the scale of the powers is read. */
  private static final int PROBES = 4;

  private final Course course;
  private final double from;
  private final double to;
  private final double zero;

  RestFinder(Course course) {
    this.course = course;
    from = course.least().drive();
    to = course.greatest().drive();
    zero = ROUNDING * gross();
  }

  /** The least of several, since powers have no bound near a dead centre. */
  private double gross() {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 1; k <= PROBES; k++) {
      double at = from + (to - from) * k / (PROBES + 1);
      List<BodyMotion> moving = course.velocities(at);
      if (!moving.isEmpty()) {
        least = Math.min(least, new LoadPowers(course, at, moving).gross());
      }
    }
    return Double.isInfinite(least) ? 0 : least;
  }

  List<Rest.Place> places() {
    if (!(from < to)) {
      return List.of();
    }
    RootSearch search = RootSearch.over(at -> Rest.drivingForce(course, at), from, to, zero);
    List<Rest.Place> places = new ArrayList<>();
    List<Double> ends = search.stretches();
    for (int k = 0; k + 1 < ends.size(); k += 2) {
      places.add(place(ends.get(k), ends.get(k + 1), Rest.Kind.NEUTRAL));
    }
    List<Double> all = new ArrayList<>(search.roots());
    all.addAll(ends);
    for (double root : search.roots()) {
      places.add(place(root, root, kind(root, all)));
    }
    addEnd(course.least(), -1, places);
    addEnd(course.greatest(), 1, places);
    places.sort(Comparator.comparingDouble(Rest.Place::from));
    return List.copyOf(places);
  }

  private static Rest.Place place(double from, double to, Rest.Kind kind) {
    return new Rest.Place(from, to, kind, kind.words());
  }

  private Rest.Kind kind(double root, List<Double> all) {
    double room = BESIDE * (to - from);
    for (double other : all) {
      if (other != root) {
        room = Math.min(room, Math.abs(other - root) / 2);
      }
    }
    boolean back = root + room > to || sign(root + room) < 0;
    boolean forth = root - room < from || sign(root - room) > 0;
    return back && forth ? Rest.Kind.STABLE : Rest.Kind.UNSTABLE;
  }

  private double sign(double at) {
    return Math.signum(Rest.drivingForce(course, at).orElse(0));
  }

  private void addEnd(CourseEnd end, int sense, List<Rest.Place> places) {
    boolean stops = end.why() == CourseEnd.Why.STATED || end.why() == CourseEnd.Why.MEETS;
    OptionalDouble force = Rest.drivingForce(course, end.drive());
    if (stops && force.isPresent() && force.getAsDouble() * sense > zero) {
      String words = Rest.Kind.AGAINST_END.words() + ": " + end.words();
      places.add(new Rest.Place(end.drive(), end.drive(), Rest.Kind.AGAINST_END, words));
    }
  }
}
