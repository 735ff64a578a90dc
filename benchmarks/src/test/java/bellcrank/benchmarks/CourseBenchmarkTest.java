package bellcrank.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Ground;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Sweep;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is timed must be the right pose, and both ways must have found it equally well. */
class CourseBenchmarkTest {

  private static final Device DERRICK = MovingDevices.luffingDerrick();

  /** What both ways promise, in sizes of the device, and a little for the reading of it. */
  private static final double CLOSE = 2e-12 * DERRICK.size();

  private static CourseBenchmark benchmark() {
    CourseBenchmark benchmark = new CourseBenchmark();
    benchmark.build();
    return benchmark;
  }

  /** By the law of cosines in the triangle of heel, pole head and jib tip. */
  private static Point tip(double at) {
    double jib = Math.hypot(2.7, 2.4);
    double pole = 3.9;
    double rope = Math.hypot(2.7, 1.5) + at;
    double angle = Math.acos((pole * pole + jib * jib - rope * rope) / (2 * pole * jib));
    return Point.of(jib * Math.sin(angle), 0.9 + jib * Math.cos(angle));
  }

  @Test
  void tipIsWhereTheLawOfCosinesPutsIt() {
    CourseBenchmark benchmark = benchmark();
    for (int k = 0; k < CourseBenchmark.POSES; k++) {
      double at = CourseBenchmark.at(k);
      Point expected = tip(at);
      Point own = benchmark.pose(at).frame("jib").apply(DERRICK.point("tip"));
      Point plain = benchmark.plain(at).place("jib", "tip");
      // the triangle is well shaped: a gap moves the tip by a few times itself
      assertThat(own.distance(expected)).as("at %s", at).isLessThan(10 * CLOSE);
      assertThat(plain.distance(expected)).as("at %s", at).isLessThan(10 * CLOSE);
    }
  }

  @Test
  void sweepStandsAtTheSamePosesAndTellsTheirForces() {
    CourseBenchmark benchmark = benchmark();
    for (int k = 0; k < CourseBenchmark.POSES; k += 3) {
      double at = CourseBenchmark.at(k);
      Sweep sweep = benchmark.sweep(at);
      Sweep.Spot tip = sweep.spot("jib", "tip");

      assertThat(Point.of(sweep.x(tip), sweep.y(tip)).distance(tip(at))).isLessThan(10 * CLOSE);
      assertThat(sweep.gap()).isLessThan(1e-12);
      double heel = sweep.value(sweep.slot("heel pin.x on jib"));
      double expected =
          Balance.of(DERRICK, DERRICK.cases().get(0), benchmark.pose(at))
              .number("heel pin.x on jib")
              .orElseThrow();
      assertThat(heel).isCloseTo(expected, within(1e-9 * 240 * 10));
    }
  }

  /** The first time round makes what is used again; after that a thousand poses make nothing. */
  @Test
  void sweepAllocatesNothing() {
    CourseBenchmark benchmark = benchmark();
    Prepared.Slot heel = benchmark.sweep(0).slot("heel pin.x on jib");
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    double sum = 0;
    long allocated = Long.MAX_VALUE;
    for (int turn = 0; turn < 5; turn++) {
      long before = threads.getCurrentThreadAllocatedBytes();
      for (int k = 0; k < CourseBenchmark.POSES; k++) {
        sum += benchmark.sweep(CourseBenchmark.at(k)).value(heel);
      }
      allocated = Math.min(allocated, threads.getCurrentThreadAllocatedBytes() - before);
    }
    assertThat(sum).isFinite();
    // asking for the number of bytes takes a few itself
    assertThat(allocated).isLessThan(1_000);
  }

  @Test
  void bothWaysCloseAllPinsAndKeepTheRope() {
    CourseBenchmark benchmark = benchmark();
    for (int k = 0; k < CourseBenchmark.POSES; k += 7) {
      double at = CourseBenchmark.at(k);
      Pose pose = benchmark.pose(at);
      PlainCourse plain = benchmark.plain(at);
      double rope = Math.hypot(2.7, 1.5) + at;
      fits(rope, (member, point) -> pose.frame(member).apply(DERRICK.point(point)));
      fits(rope, plain::place);
    }
  }

  private interface Places {
    Point of(String member, String point);
  }

  private static void fits(double rope, Places places) {
    List<Double> gaps = new ArrayList<>();
    gaps.add(places.of("pole", "foot").distance(DERRICK.point("foot")));
    gaps.add(places.of("leg", "peg").distance(DERRICK.point("peg")));
    gaps.add(places.of("leg", "head").distance(places.of("pole", "head")));
    gaps.add(places.of("jib", "heel").distance(places.of("pole", "heel")));
    gaps.add(Math.abs(places.of("jib", "tip").distance(places.of("pole", "head")) - rope));
    assertThat(gaps).allSatisfy(gap -> assertThat(gap).isLessThan(CLOSE));
  }

  @Test
  void plainWayTakesSeveralSolves() {
    CourseBenchmark benchmark = benchmark();
    for (int k = 0; k < CourseBenchmark.POSES; k++) {
      assertThat(benchmark.plain(CourseBenchmark.at(k)).rounds()).isBetween(1, 4);
    }
  }

  @Test
  void courseGoesTheWholeWay() {
    Course course = benchmark().travel();

    assertThat(course.least().drive()).isCloseTo(CourseBenchmark.LEAST, within(1e-12));
    assertThat(course.greatest().drive()).isCloseTo(CourseBenchmark.GREATEST, within(1e-12));
  }

  @Test
  void partsThatThePlainWayDoesNotKnowAreRefused() {
    assertThatThrownBy(
            () -> PlainCourse.of(SampleDevices.toggle(), EjmlSolver.lu(6), -0.01, 0.01, 4))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void lengthThatTheRopeCannotHaveIsRefused() {
    Device swing =
        Device.named("swing")
            .point("hook", 0, 0)
            .point("end", 1, 0)
            .point("peg", 1, 1)
            .member("arm", "hook", "end")
            .pin("hook pin", "hook", "arm", Ground.NAME)
            .line("rope", End.of("arm", "end"), End.of(Ground.NAME, "peg"))
            .build();

    assertThatThrownBy(() -> PlainCourse.of(swing, EjmlSolver.lu(3), 0, 5, 4))
        .isInstanceOf(IllegalStateException.class);
  }

  /** A stage is 2·sin(45° + turn) high, the link being 2 m long. */
  @ParameterizedTest
  @ValueSource(ints = {2, 12, 250})
  void topOfTheChainRisesAsItsLinksTurn(int links) {
    Device chain = MovingDevices.slidingChain(links);
    Course course = CourseGrowth.follow(chain);

    assertThat(course.least().drive()).isCloseTo(-CourseGrowth.TURN, within(1e-12));
    assertThat(course.greatest().drive()).isCloseTo(CourseGrowth.TURN, within(1e-12));
    for (double turn : new double[] {-0.2, -0.07, 0.11, 0.2}) {
      double angle = Math.PI / 4 + turn;
      int stages = links / 2;
      Point top = course.place(turn, "up" + (stages - 1), "R" + stages);
      double tolerance = 1e-11 * stages * chain.size();
      assertThat(top.y()).isCloseTo(stages * 2 * Math.sin(angle), within(tolerance));
      assertThat(top.x()).isCloseTo(2 * Math.cos(angle), within(tolerance));
    }
  }

  @Test
  void oddNumbersOfLinksAreRefused() {
    assertThatThrownBy(() -> MovingDevices.slidingChain(7))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("7");
  }
}
