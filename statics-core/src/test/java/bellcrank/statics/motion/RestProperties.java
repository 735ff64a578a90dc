package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

/**
 * Places of rest are where the energy of the loads does not change. The energy is put together here
 * from places alone, by another way than the powers of the library.
 */
class RestProperties {

  private static final double G = 9.80665;

  /** A crank, a coupler and a rocker, loaded in every way that has an energy. */
  private static final class Linkage {
    private final double mass;
    private final Vector force;
    private final double stiffness;
    private final double freeLength;
    private final double twist;
    private final double moment;
    private final Course course;

    Linkage(List<Double> share) {
      mass = 20 * share.get(0);
      force = Vector.of(200 * share.get(1) - 100, 200 * share.get(2) - 100);
      stiffness = 1 + 400 * share.get(3);
      freeLength = 2 * share.get(4);
      twist = 1 + 200 * share.get(5);
      moment = 100 * share.get(6) - 50;
      Device device =
          Device.named("linkage")
              .point("A", 0, 0)
              .point("B", 0.3, 1 + share.get(7))
              .point("C", 2.5, 1.6)
              .point("D", 3, 0)
              .point("P", 1.2, 2.2)
              .point("post", 1, -1)
              .member("crank", "A", "B")
              .member("coupler", "B", "P", "C")
              .member("rocker", "C", "D")
              .pin("a", "A", "crank", "ground")
              .pin("b", "B", "crank", "coupler")
              .pin("c", "C", "coupler", "rocker")
              .pin("d", "D", "rocker", "ground")
              .weight("own", "coupler", "P", mass)
              .force("pull", "c", "C", force)
              .load(
                  new Spring(
                      "spring",
                      End.of("coupler", "P"),
                      End.of("ground", "post"),
                      stiffness,
                      freeLength))
              .load(new TorsionSpring("twist", "rocker", "crank", twist, 0.2))
              .load(new Couple("couple", "coupler", moment))
              .build();
      course = (Course) Travel.of(device, Drive.turn("crank"), -0.4, 0.4);
    }

    private double energy(double at) {
      Point p = course.place(at, "coupler", "P");
      Point c = course.place(at, "rocker", "C");
      double stretch = p.distance(Point.of(1, -1)) - freeLength;
      double rocker = course.pose(at).frame("rocker").turn();
      double crank = course.pose(at).frame("crank").turn();
      double turned = 0.2 + rocker - crank;
      return mass * G * p.y()
          - force.dot(Point.ORIGIN.to(c))
          + stiffness * stretch * stretch / 2
          + twist * turned * turned / 2
          - moment * course.pose(at).frame("coupler").turn();
    }

    private double room() {
      return course.greatest().drive() - course.least().drive();
    }

    private double fall(double at, double step) {
      return (energy(at - step) - energy(at + step)) / (2 * step);
    }

    private double energyWithin(double at) {
      return at < course.least().drive() || at > course.greatest().drive()
          ? Double.MAX_VALUE
          : energy(at);
    }
  }

  @Property(tries = 100)
  void theDrivingForceIsTheFallOfEnergy(
      @ForAll @Size(8) List<@DoubleRange(min = 0, max = 1) @Scale(6) Double> shares,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) @Scale(6) double share) {
    Linkage one = new Linkage(shares);
    double at = one.course.least().drive() + share * one.room();
    double step = 2e-3 * one.room();
    double coarse = one.fall(at, step);
    double fine = one.fall(at, step / 2);
    // the error of the step falls with its square; what is left is less than what that took away
    double fall = fine + (fine - coarse) / 3;
    double left = 1e-4 + Math.abs(fine - coarse) / 30;
    assertThat(Rest.drivingForce(one.course, at).orElseThrow()).isCloseTo(fall, within(left));
  }

  @Property(tries = 20)
  void itRestsStablyWhereTheEnergyIsLeast(
      @ForAll @Size(8) List<@DoubleRange(min = 0, max = 1) @Scale(6) Double> shares) {
    Linkage one = new Linkage(shares);
    List<Rest.Place> places = Rest.over(one.course);
    // energies at even steps: each valley between them holds a stable place, each hill another
    int steps = 60;
    for (int k = 1; k < steps; k++) {
      double step = one.room() / steps;
      double at = one.course.least().drive() + k * step;
      double here = one.energy(at);
      double before = one.energy(at - step);
      double after = one.energy(at + step);
      if (here < before && here < after) {
        assertThat(places).anyMatch(p -> isNear(p, at, step, Rest.Kind.STABLE));
      }
      if (here > before && here > after) {
        assertThat(places).anyMatch(p -> isNear(p, at, step, Rest.Kind.UNSTABLE));
      }
    }
    for (Rest.Place place : places) {
      if (place.kind() == Rest.Kind.STABLE) {
        double aside = 1e-3 * one.room();
        double here = one.energy(place.drive());
        assertThat(place.from()).isEqualTo(place.to());
        assertThat(one.energyWithin(place.drive() + aside)).isGreaterThan(here);
        assertThat(one.energyWithin(place.drive() - aside)).isGreaterThan(here);
      }
    }
  }

  private static boolean isNear(Rest.Place place, double at, double step, Rest.Kind kind) {
    return place.kind() == kind && Math.abs(place.drive() - at) <= step;
  }

  @Property(tries = 20)
  void betweenItsPlacesOfRestTheDrivingForceKeepsItsSign(
      @ForAll @Size(8) List<@DoubleRange(min = 0, max = 1) @Scale(6) Double> shares) {
    Linkage one = new Linkage(shares);
    List<Double> places =
        Rest.over(one.course).stream()
            .filter(place -> place.kind() != Rest.Kind.AGAINST_END)
            .map(Rest.Place::drive)
            .toList();
    double before = one.course.least().drive();
    for (int k = 0; k <= places.size(); k++) {
      double next = k < places.size() ? places.get(k) : one.course.greatest().drive();
      double first = Rest.drivingForce(one.course, before + 0.01 * (next - before)).orElseThrow();
      double last = Rest.drivingForce(one.course, before + 0.99 * (next - before)).orElseThrow();
      assertThat(first * last).isPositive();
      before = next;
    }
  }
}
