package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of courses on random four-bars with a loaded coupler. */
class CourseProperties {

  /** Lengths and places of a four-bar; x may be mirrored. */
  record FourBar(double crank, double up, double over, double height, double ground, double load) {

    Device device(int mirror) {
      return Device.named("four-bar")
          .point("A", 0, 0)
          .point("D", mirror * ground, 0.1)
          .point("B", mirror * crank * 0.6, crank * 0.8)
          .point("C", mirror * (ground + over), up)
          .point("P", mirror * ground / 2, up + height)
          .member("crank", "A", "B")
          .member("coupler", "B", "C", "P")
          .member("rocker", "D", "C")
          .pin("A", "A", "crank", "ground")
          .pin("B", "B", "crank", "coupler")
          .pin("C", "C", "coupler", "rocker")
          .pin("D", "D", "rocker", "ground")
          .load(new Force("push", "coupler", "P", Vector.of(mirror * load, -load / 2)))
          .load(new Weight("mass", "rocker", Optional.of("C"), 2))
          .load(new Sought("turn", Sought.Want.COUPLE, "crank", Optional.empty(), Optional.empty()))
          .build();
    }
  }

  @Provide
  Arbitrary<FourBar> fourBars() {
    return Combinators.combine(
            number(0.2, 1),
            number(0.6, 2),
            number(-0.5, 0.8),
            number(0, 1),
            number(1, 2.5),
            number(-100, 100))
        .as(FourBar::new);
  }

  private static Arbitrary<Double> number(double from, double to) {
    return Arbitraries.doubles().between(from, to).ofScale(3);
  }

  private static Course course(Device device, double least, double greatest) {
    Travel travel = Travel.of(device, Drive.turn("crank"), least, greatest);
    Assume.that(travel instanceof Course);
    Course course = (Course) travel;
    Assume.that(course.greatest().drive() - course.least().drive() > 0.2);
    return course;
  }

  private static double inside(Course course, double share) {
    double from = course.least().drive();
    double to = course.greatest().drive();
    return from + (0.1 + 0.8 * share) * (to - from);
  }

  /** Every connection fits at every pose. */
  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void posesFit(@ForAll("fourBars") FourBar bar) {
    Device device = bar.device(1);
    Course course = course(device, -2, 2);
    for (int k = 0; k <= 10; k++) {
      double at =
          course.least().drive() + (course.greatest().drive() - course.least().drive()) * k / 10;
      Pose pose = course.pose(at);
      for (List<String> pin :
          List.of(
              List.of("A", "crank", "ground"),
              List.of("B", "crank", "coupler"),
              List.of("C", "coupler", "rocker"),
              List.of("D", "rocker", "ground"))) {
        Point drawn = device.point(pin.get(0));
        assertThat(
                pose.frame(pin.get(1)).apply(drawn).distance(pose.frame(pin.get(2)).apply(drawn)))
            .isLessThan(2e-12 * device.size());
      }
      assertThat(pose.frame("crank").turn()).isCloseTo(at, within(1e-12));
    }
  }

  /** Virtual work by poses that lie close together gives the couple of the equations. */
  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void virtualWork(@ForAll("fourBars") FourBar bar) {
    Device device = bar.device(1);
    Course course = course(device, -2, 2);
    double at = inside(course, 0.37);
    double step = 1e-4;
    Pose before = course.pose(at - step);
    Pose after = course.pose(at + step);
    double work =
        Vector.of(bar.load(), -bar.load() / 2).dot(moved(device, "coupler", "P", before, after))
            + device.gravity().times(2).dot(moved(device, "rocker", "C", before, after));
    Balance balance = Balance.of(device, LoadCase.ALL_LOADS, course.pose(at));
    double couple = balance.number("turn").orElseThrow();
    double speed = moved(device, "coupler", "P", before, after).norm() / (2 * step);

    assertThat(couple)
        .isCloseTo(-work / (2 * step), within(1e-5 * (1 + speed * speed * speed) * 150));
  }

  private static Vector moved(Device device, String body, String point, Pose from, Pose to) {
    Point drawn = device.point(point);
    return from.frame(body).apply(drawn).to(to.frame(body).apply(drawn));
  }

  /** A mirrored device, driven the other way, has the mirrored course and curve. */
  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void mirrored(@ForAll("fourBars") FourBar bar) {
    Course course = course(bar.device(1), -1, 1.5);
    Course mirror = course(bar.device(-1), -1.5, 1);

    assertThat(mirror.greatest().drive()).isCloseTo(-course.least().drive(), within(1e-8));
    assertThat(mirror.least().drive()).isCloseTo(-course.greatest().drive(), within(1e-8));
    assertThat(mirror.greatest().why()).isEqualTo(course.least().why());
    double at = inside(course, 0.6);
    Point here = course.place(at, "coupler", "P");
    Point there = mirror.place(-at, "coupler", "P");
    assertThat(there.x()).isCloseTo(-here.x(), within(1e-10));
    assertThat(there.y()).isCloseTo(here.y(), within(1e-10));
  }

  /** The account of work closes on every course. */
  @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
  void workCloses(@ForAll("fourBars") FourBar bar) {
    Course course = course(bar.device(1), -1, 1);
    Work work = course.work(inside(course, 0), inside(course, 1)).orElseThrow();

    assertThat(work.lost()).isCloseTo(0, within(1e-9 * (1 + Math.abs(work.loads()))));
  }

  /** It closes from end to end as well, be they dead centres or not. */
  @Property(tries = 30, edgeCases = EdgeCasesMode.NONE)
  void workClosesFromEndToEnd(@ForAll("fourBars") FourBar bar) {
    Course course = course(bar.device(1), -3, 3);
    Work work = course.work(course.least().drive(), course.greatest().drive()).orElseThrow();

    assertThat(work.lost()).isCloseTo(0, within(1e-9 * (150 + Math.abs(work.loads()))));
  }

  /**
   * A curve that a sweep reads is the one that balances tell. Where links come near to a dead
   * centre the couple grows, and what rounding leaves of the pose with its square.
   */
  @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
  void curveIsThatOfTheBalances(@ForAll("fourBars") FourBar bar) {
    Course course = course(bar.device(1), -1, 1);
    Curve curve = course.curve("turn");
    for (Curve.Sample sample : curve.samples()) {
      double couple =
          Balance.of(course.device(), course.loadCase(), course.pose(sample.drive()))
              .number("turn")
              .orElseThrow();
      double scale = 150 + Math.abs(couple);
      assertThat(sample.value()).isCloseTo(couple, within(1e-12 * scale * scale / 150));
    }
  }
}
