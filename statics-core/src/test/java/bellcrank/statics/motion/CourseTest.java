package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Weight;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Courses of linkages whose closed forms are known. */
class CourseTest {

  private static final double CRANK = 0.1;
  private static final double ROD = 0.3;

  private static Device sliderCrank(double angle) {
    double x = CRANK * Math.cos(angle);
    double y = CRANK * Math.sin(angle);
    return Device.named("slider crank")
        .point("O", 0, 0)
        .point("A", x, y)
        .point("B", x + Math.sqrt(ROD * ROD - y * y), 0)
        .member("crank", "O", "A")
        .member("rod", "A", "B")
        .member("slider", "B")
        .pin("O", "O", "crank", "ground")
        .pin("A", "A", "crank", "rod")
        .pin("B", "B", "rod", "slider")
        .connect(new Guide("guide", "B", "slider", "ground", Direction.RIGHT))
        .load(new Force("press", "slider", "B", Vector.of(-100, 0)))
        .load(new Sought("turn", Sought.Want.COUPLE, "crank", Optional.empty(), Optional.empty()))
        .build();
  }

  private static Course course(Travel travel) {
    assertThat(travel).isInstanceOf(Course.class);
    return (Course) travel;
  }

  /** x = r·cos θ + √(l² − r²·sin² θ), over two whole turns. */
  @Test
  void aSliderCrankGoesRound() {
    Course course =
        course(Travel.of(sliderCrank(0.7), Drive.turn("crank"), -2 * Math.PI, 2 * Math.PI));

    assertThat(course.least()).isEqualTo(new CourseEnd(-2 * Math.PI, CourseEnd.Why.STATED, ""));
    for (int k = -50; k <= 50; k++) {
      double at = 2 * Math.PI * k / 50;
      double theta = 0.7 + at;
      double sine = CRANK * Math.sin(theta);
      double x = CRANK * Math.cos(theta) + Math.sqrt(ROD * ROD - sine * sine);
      assertThat(course.place(at, "slider", "B").x()).isCloseTo(x, within(1e-13));
      assertThat(course.place(at, "slider", "B").y()).isCloseTo(0, within(1e-13));
    }
    assertThat(course.changePoints()).isEmpty();
  }

  /** Virtual work: M = F·dx/dθ; its greatest value by the derivative of the closed form. */
  @Test
  void itsCouplePeaksWhereTheClosedFormDoes() {
    Course course = course(Travel.of(sliderCrank(0.7), Drive.turn("crank"), -0.7, 2.4));
    Curve curve = course.curve("turn");

    double best = 0;
    double where = 0;
    for (double theta = 0; theta < 3.1; theta += 1e-5) {
      double sine = Math.sin(theta);
      double cosine = Math.cos(theta);
      double root = Math.sqrt(ROD * ROD - CRANK * CRANK * sine * sine);
      double couple = 100 * (-CRANK * sine - CRANK * CRANK * sine * cosine / root);
      if (couple < best) {
        best = couple;
        where = theta;
      }
    }
    Curve.Sample least = curve.least().orElseThrow();
    assertThat(least.value()).isCloseTo(best, within(1e-8));
    assertThat(least.drive() + 0.7).isCloseTo(where, within(1e-4));
    assertThat(curve.samples()).hasSizeGreaterThan(50);
  }

  /** The ratio of velocities is the inverse ratio of the forces. */
  @Test
  void velocitiesTellTheForces() {
    Course course = course(Travel.of(sliderCrank(0.7), Drive.turn("crank"), -0.5, 2));
    for (double at = -0.5; at <= 2; at += 0.25) {
      List<BodyMotion> motions = course.velocities(at);
      Point slider = course.place(at, "slider", "B");
      double speed =
          motions.stream()
              .filter(one -> one.body().equals("slider"))
              .findFirst()
              .orElseThrow()
              .velocityAt(slider)
              .x();
      double couple =
          bellcrank.statics.equilibrium.Balance.of(
                  course.device(), course.loadCase(), course.pose(at))
              .number("turn")
              .orElseThrow();
      assertThat(couple).isCloseTo(100 * speed, within(1e-9));
      BodyMotion crank = motions.get(0);
      assertThat(crank.turning()).isCloseTo(1, within(1e-12));
      assertThat(crank.centre().orElseThrow().distance(Point.ORIGIN)).isLessThan(1e-12);
    }
  }

  /** Driven by its slider it comes to its dead centres at l + r and l − r. */
  @Test
  void aSlideEndsAtDeadCentres() {
    Device device = sliderCrank(0.7);
    double drawn = device.point("B").x();
    Course course = course(Travel.of(device, Drive.slide("slider", "B", Direction.RIGHT), -1, 1));

    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(course.greatest().words()).isEqualTo("dead centre");
    assertThat(course.greatest().drive() + drawn).isCloseTo(ROD + CRANK, within(1e-10));
    assertThat(course.least().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(course.least().drive() + drawn).isCloseTo(ROD - CRANK, within(1e-10));
  }

  @Test
  void thereAndBackIsTheSamePose() {
    Course course = course(Travel.of(sliderCrank(0.7), Drive.turn("crank"), -3, 3));
    Pose pose = course.pose(0);
    for (String body : List.of("crank", "rod", "slider")) {
      for (String point : List.of("O", "A", "B")) {
        Point drawn = course.device().point(point);
        assertThat(pose.frame(body).apply(drawn).distance(drawn)).isLessThan(1e-12);
      }
    }
  }

  /** Four-bar by its loop equation: crank 1, coupler 3, rocker 2.5, ground 3.2 (Grashof). */
  @Test
  void aFourBarFollowsItsLoopEquation() {
    double a = 1;
    double b = 3;
    double c = 2.5;
    double d = 3.2;
    Point joint = coupler(Point.of(a * Math.cos(0.9), a * Math.sin(0.9)), Point.of(d, 0), b, c);
    Device device =
        Device.named("four-bar")
            .point("A", 0, 0)
            .point("D", d, 0)
            .point("B", a * Math.cos(0.9), a * Math.sin(0.9))
            .point("C", joint.x(), joint.y())
            .member("crank", "A", "B")
            .member("coupler", "B", "C")
            .member("rocker", "D", "C")
            .pin("A", "A", "crank", "ground")
            .pin("B", "B", "crank", "coupler")
            .pin("C", "C", "coupler", "rocker")
            .pin("D", "D", "rocker", "ground")
            .build();
    Course course = course(Travel.of(device, Drive.turn("crank"), -7, 7));
    for (double at = -7; at <= 7; at += 0.35) {
      double theta = 0.9 + at;
      Point wanted =
          coupler(Point.of(a * Math.cos(theta), a * Math.sin(theta)), Point.of(d, 0), b, c);
      assertThat(course.place(at, "rocker", "C").distance(wanted)).isLessThan(1e-11);
    }
  }

  /** The upper crossing of two circles. */
  private static Point coupler(Point from, Point to, double one, double other) {
    double span = from.distance(to);
    double along = (one * one - other * other + span * span) / (2 * span);
    double up = Math.sqrt(one * one - along * along);
    Vector way = from.to(to).times(1 / span);
    return from.plus(way.times(along)).plus(way.perpendicular().times(up));
  }

  /** A parallelogram lying flat could fold over; it keeps on as a parallelogram. */
  @Test
  void aParallelogramPassesItsChangePoints() {
    double angle = Math.atan2(0.4, 0.3);
    Device device =
        Device.named("parallelogram")
            .point("A", 0, 0)
            .point("B", 1, 0)
            .point("C", 0.3, 0.4)
            .point("D", 1.3, 0.4)
            .member("left", "A", "C")
            .member("right", "B", "D")
            .member("top", "C", "D")
            .pin("A", "A", "left", "ground")
            .pin("B", "B", "right", "ground")
            .pin("C", "C", "left", "top")
            .pin("D", "D", "right", "top")
            .build();
    Course course = course(Travel.of(device, Drive.turn("left"), -2, 3));

    assertThat(course.changePoints()).hasSize(2);
    assertThat(course.changePoints().get(0)).isCloseTo(-angle, within(1e-6));
    assertThat(course.changePoints().get(1)).isCloseTo(Math.PI - angle, within(1e-6));
    for (double at = -2; at <= 3; at += 0.25) {
      assertThat(course.pose(at).frame("top").turn()).as("at %s", at).isCloseTo(0, within(1e-9));
    }
  }

  /** Tip 2 m out, head 3 m up: rope at its longest when the jib hangs straight down. */
  @Test
  void aLuffingRopeEndsAtItsDeadCentre() {
    Device device = derrick().build();
    Course course = course(Travel.of(device, Drive.length("rope"), -0.8, 9));
    double jib = Math.hypot(2, 1);

    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(course.greatest().drive()).isCloseTo(3 + jib - Math.hypot(2, 2), within(1e-10));
    assertThat(course.least()).isEqualTo(new CourseEnd(-0.8, CourseEnd.Why.STATED, ""));
    Point tip = course.place(-0.8, "jib", "tip");
    assertThat(tip.distance(Point.of(0, 3))).isCloseTo(Math.hypot(2, 2) - 0.8, within(1e-12));
  }

  private static DeviceBuilder derrick() {
    return Device.named("derrick")
        .gravity(Vector.of(0, -10))
        .point("heel", 0, 0)
        .point("tip", 2, 1)
        .point("head", 0, 3)
        .member("jib", "heel", "tip")
        .pin("heel", "heel", "jib", "ground")
        .connect(new Line("rope", End.of("jib", "tip"), End.of("ground", "head")))
        .load(new Weight("barrel", "jib", Optional.of("tip"), 60));
  }

  /** Beyond the upright the barrel pulls the other way and the rope goes slack. */
  @Test
  void aRopeGoesSlackWhereTheBarrelPassesTheUpright() {
    Device device =
        derrick()
            .point("back", -1, 3)
            .load(new Force("wind", "jib", "tip", Vector.of(0, 0)))
            .build();
    Course course =
        course(
            Travel.of(
                Device.named("leaning derrick")
                    .gravity(Vector.of(0, -10))
                    .point("heel", 0, 0)
                    .point("tip", 0.5, 2)
                    .point("head", -3, 3)
                    .member("jib", "heel", "tip")
                    .pin("heel", "heel", "jib", "ground")
                    .connect(new Line("rope", End.of("jib", "tip"), End.of("ground", "head")))
                    .load(new Weight("barrel", "jib", Optional.of("tip"), 60))
                    .build(),
                Drive.length("rope"),
                -2,
                0));
    double jib = Math.hypot(0.5, 2);
    double slack = Point.of(0, jib).distance(Point.of(-3, 3));

    assertThat(course.least().words()).isEqualTo("rope goes slack");
    assertThat(course.least().drive())
        .isCloseTo(slack - Point.of(0.5, 2).distance(Point.of(-3, 3)), within(1e-8));
    assertThat(device.loads()).hasSize(2);
  }

  /** A jib tip that comes down on a wall 0.2 m above the heel. */
  @Test
  void partsMeet() {
    Device device = derrick().point("wall left", 0.5, 0.2).point("wall right", 4, 0.2).build();
    Travel travel =
        Travel.of(
            device,
            LoadCase.ALL_LOADS,
            Drive.turn("jib"),
            -1,
            0.1,
            List.of(new Meeting("jib", "tip", "ground", "wall left", "wall right")));
    // the rope holds the jib, so nothing turns
    assertThat(travel)
        .isInstanceOfSatisfying(
            Travel.Standstill.class,
            still -> {
              assertThat(still.reason()).isEqualTo(Travel.Reason.HELD);
              assertThat(still.freedoms()).isEmpty();
            });
    Course course =
        course(
            Travel.of(
                device,
                LoadCase.ALL_LOADS,
                Drive.length("rope"),
                0,
                3,
                List.of(new Meeting("jib", "tip", "ground", "wall left", "wall right"))));
    double x = Math.sqrt(5 - 0.04);
    assertThat(course.greatest().words()).isEqualTo("tip of jib and ground: parts meet");
    assertThat(course.greatest().drive())
        .isCloseTo(Math.hypot(x, 2.8) - Math.hypot(2, 2), within(1e-10));
  }

  /** Drum of 0.1 m radius: a turn of it hauls its circumference; the sheave changes nothing. */
  @Test
  void aDrumHaulsRopeOverASheave() {
    Device device =
        Device.named("well")
            .gravity(Vector.of(0, -10))
            .point("axle", -2, 0)
            .point("head", 0, 2)
            .point("bucket", 0.15, -1)
            .member("drum", "axle")
            .member("bucket", "bucket")
            .pin("axle", "axle", "drum", "ground")
            .connect(new Guide("guide", "bucket", "bucket", "ground", Direction.UP))
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.drum("drum", "axle", 0.1, Turn.CLOCKWISE),
                        Stop.sheave("ground", "head", 0.15, Turn.CLOCKWISE),
                        Stop.end("bucket", "bucket")),
                    1,
                    Reeving.Hauling.IDEAL))
            .load(new Weight("water", "bucket", Optional.of("bucket"), 10))
            .load(
                new Sought("crank", Sought.Want.COUPLE, "drum", Optional.empty(), Optional.empty()))
            .build();
    Course course = course(Travel.of(device, Drive.turn("drum"), -10, 10));
    for (double at = -10; at <= 10; at += 2.5) {
      assertThat(course.place(at, "bucket", "bucket").y()).isCloseTo(-1 + 0.1 * at, within(1e-11));
    }
    assertThat(course.curve("crank").greatest().orElseThrow().value()).isCloseTo(10, within(1e-9));
  }

  /** Work in, by the crank, is work out, at the slider, and what a spring has taken up. */
  @Test
  void theAccountOfWorkCloses() {
    Device device =
        sliderCrank(0.7).toBuilder()
            .point("wall", 1, 0)
            .load(new Weight("mass", "rod", Optional.of("A"), 3))
            .load(
                new bellcrank.statics.device.Spring(
                    "spring", End.of("slider", "B"), End.of("ground", "wall"), 400, 0.5))
            .load(
                new bellcrank.statics.device.SpreadLoad(
                    "wind",
                    "rod",
                    "A",
                    "B",
                    20,
                    60,
                    Optional.empty(),
                    bellcrank.statics.device.SpreadLoad.Per.LENGTH))
            .build();
    Course course = course(Travel.of(device, Drive.turn("crank"), -1, 2));
    Work work = course.work(-1, 2).orElseThrow();

    assertThat(work.share()).isLessThan(1e-9);
    assertThat(work.lost()).isCloseTo(0, within(1e-8));
    double before = 1 - course.place(-1, "slider", "B").x() - 0.5;
    double after = 1 - course.place(2, "slider", "B").x() - 0.5;
    assertThat(work.stored()).isCloseTo(200 * (after * after - before * before), within(1e-9));
    assertThat(course.work(2, -1).orElseThrow().effort()).isCloseTo(-work.effort(), within(1e-9));
    Course luffing = course(Travel.of(derrick().build(), Drive.length("rope"), -0.8, 1));
    Work hoisting = luffing.work(1, -0.8).orElseThrow();
    assertThat(hoisting.share()).isLessThan(1e-9);
    double lift = luffing.place(-0.8, "jib", "tip").y() - luffing.place(1, "jib", "tip").y();
    assertThat(hoisting.effort()).isCloseTo(600 * lift, within(1e-6));
  }

  @Test
  void whatCannotBeDrivenIsTold() {
    Device two =
        Device.named("double pendulum")
            .point("A", 0, 0)
            .point("B", 1, -1)
            .point("C", 2, -1.5)
            .member("upper", "A", "B")
            .member("lower", "B", "C")
            .pin("A", "A", "upper", "ground")
            .pin("B", "B", "upper", "lower")
            .build();
    Travel.Standstill several = (Travel.Standstill) Travel.of(two, Drive.turn("upper"), -1, 1);
    assertThat(several.reason()).isEqualTo(Travel.Reason.SEVERAL_FREEDOMS);
    assertThat(several.freedoms()).hasSize(2);
    Travel.Standstill not =
        (Travel.Standstill)
            Travel.of(sliderCrank(0), Drive.slide("slider", "B", Direction.RIGHT), -1, 1);
    assertThat(not.reason()).isEqualTo(Travel.Reason.NOT_DRIVEN);
    Device flat =
        Device.named("flat toggle")
            .point("A", 0, 0)
            .point("B", 0.5, 0)
            .point("C", 1, 0)
            .member("left", "A", "B")
            .member("right", "B", "C")
            .pin("A", "A", "left", "ground")
            .pin("B", "B", "left", "right")
            .pin("C", "C", "right", "ground")
            .build();
    assertThat(((Travel.Standstill) Travel.of(flat, Drive.turn("left"), -1, 1)).reason())
        .isEqualTo(Travel.Reason.FIRST_ORDER_ONLY);
  }

  @Test
  void badDrivesAreRefused() {
    Device device = sliderCrank(0.7);
    assertThatThrownBy(() -> Travel.of(device, Drive.turn("lever"), -1, 1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("lever")
        .hasMessageContaining("name of a member");
    assertThatThrownBy(() -> Travel.of(device, Drive.length("guide"), -1, 1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("strut, line, reeving or screw");
    assertThatThrownBy(() -> Travel.of(device, Drive.slide("ground", "B", Direction.UP), -1, 1))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("member or joint");
    assertThatThrownBy(() -> Travel.of(device, Drive.turn("crank"), 1, 2))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("at most 0");
    assertThatThrownBy(() -> Travel.of(device, Drive.turn("crank"), -1, Double.NaN))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("at least 0");
    Course course = course(Travel.of(device, Drive.turn("crank"), -1, 1));
    assertThatThrownBy(() -> course.pose(2))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("from -1.0 to 1.0");
  }
}
