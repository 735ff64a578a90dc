package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Linkages whose displacement, velocity and force have a closed form; the forms are from memory.
 */
class LinkageClosedFormsTest {

  private static Course course(Device device, Drive drive, double least, double greatest) {
    Travel travel = Travel.of(device, drive, least, greatest);
    assertThat(travel).isInstanceOf(Course.class);
    return (Course) travel;
  }

  private static Sought couple(String member) {
    return new Sought("effort", Sought.Want.COUPLE, member, Optional.empty(), Optional.empty());
  }

  private static double effort(Course course, double at) {
    return Balance.of(course.device(), course.loadCase(), course.pose(at))
        .number("effort")
        .orElseThrow();
  }

  private static BodyMotion motion(Course course, double at, String body) {
    return course.velocities(at).stream()
        .filter(one -> one.body().equals(body))
        .findFirst()
        .orElseThrow();
  }

  /** What stands still for an instant is not among those that move. */
  private static double speed(Course course, double at, String body, Point place) {
    return course.velocities(at).stream()
        .filter(one -> one.body().equals(body))
        .mapToDouble(one -> one.velocityAt(place).x())
        .sum();
  }

  /**
   * Offset slider-crank, crank r, rod l, bed e above the shaft: x = r·cos θ + √(l² − (r·sin θ −
   * e)²), its derivative by θ, and the couple by virtual work. Source: displacement and velocity of
   * the offset slider-crank, from memory.
   */
  @ParameterizedTest
  @CsvSource({"0.1, 0.3, 0", "0.1, 0.3, 0.05", "0.1, 0.25, -0.1", "0.08, 0.5, 0.2"})
  void theOffsetSliderCrank(double r, double l, double e) {
    double drawn = 0.6;
    Device device =
        Device.named("apple crusher")
            .point("O", 0, 0)
            .point("A", r * Math.cos(drawn), r * Math.sin(drawn))
            .point("B", slide(r, l, e, drawn), e)
            .member("crank", "O", "A")
            .member("rod", "A", "B")
            .member("slider", "B")
            .pin("O", "O", "crank", "ground")
            .pin("A", "A", "crank", "rod")
            .pin("B", "B", "rod", "slider")
            .connect(new Guide("bed", "B", "slider", "ground", Direction.RIGHT))
            .force("press", "slider", "B", Vector.of(-70, 0))
            .load(couple("crank"))
            .build();
    Course course = course(device, Drive.turn("crank"), -7, 7);
    assertThat(course.least().why()).isEqualTo(CourseEnd.Why.STATED);
    for (int k = -35; k <= 35; k++) {
      double at = 0.2 * k;
      double theta = drawn + at;
      double up = r * Math.sin(theta) - e;
      double rate = -r * Math.sin(theta) - up * r * Math.cos(theta) / Math.sqrt(l * l - up * up);
      Point place = course.place(at, "slider", "B");
      assertThat(place.distance(Point.of(slide(r, l, e, theta), e))).isLessThan(1e-12);
      assertThat(speed(course, at, "slider", place)).isCloseTo(rate, within(1e-12));
      assertThat(effort(course, at)).isCloseTo(70 * rate, within(1e-10));
    }
    Course slid = course(device, Drive.slide("slider", "B", Direction.RIGHT), -1, 1);
    double x = slide(r, l, e, drawn);
    assertThat(slid.greatest().drive() + x)
        .isCloseTo(Math.sqrt((l + r) * (l + r) - e * e), within(1e-10 * (l + r)));
    assertThat(slid.least().drive() + x)
        .isCloseTo(Math.sqrt((l - r) * (l - r) - e * e), within(1e-10 * (l + r)));
  }

  private static double slide(double r, double l, double e, double theta) {
    double up = r * Math.sin(theta) - e;
    return r * Math.cos(theta) + Math.sqrt(l * l - up * up);
  }

  /** Crank a at φ, coupler b, rocker c at ψ, ground d, the rocker above the line of centres. */
  private record FourBar(double a, double b, double c, double d) {

    Device device(double phi) {
      Point joint = Point.of(a * Math.cos(phi), a * Math.sin(phi));
      double span = joint.distance(Point.of(d, 0));
      double along = (b * b - c * c + span * span) / (2 * span);
      Vector way = joint.to(Point.of(d, 0)).times(1 / span);
      Point other =
          joint
              .plus(way.times(along))
              .plus(way.perpendicular().times(Math.sqrt(b * b - along * along)));
      return Device.named("four-bar")
          .point("A", 0, 0)
          .point("B", joint)
          .point("C", other)
          .point("D", d, 0)
          .member("crank", "A", "B")
          .member("coupler", "B", "C")
          .member("rocker", "D", "C")
          .pin("A", "A", "crank", "ground")
          .pin("B", "B", "crank", "coupler")
          .pin("C", "C", "coupler", "rocker")
          .pin("D", "D", "rocker", "ground")
          .load(new bellcrank.statics.device.Couple("brake", "rocker", -10))
          .load(couple("crank"))
          .build();
    }
  }

  /**
   * Freudenstein's equation K₁·cos ψ − K₂·cos φ + K₃ = cos(φ − ψ) with K₁ = d/a, K₂ = d/c, K₃ = (a²
   * − b² + c² + d²)/(2ac); the ratio of turning speeds a·sin(φ − θ) / (c·sin(ψ − θ)), θ being the
   * coupler's angle; the couples are in the inverse ratio. Source: Freudenstein equation, from
   * memory.
   */
  @ParameterizedTest
  @CsvSource({"1, 3, 2.5, 3.2", "1, 2, 2.5, 2.7", "2, 2.2, 2.5, 1", "1.5, 1, 1.2, 2"})
  void theFourBarKeepsItsLoopEquation(double a, double b, double c, double d) {
    double drawn = 0.9;
    Course course = course(new FourBar(a, b, c, d).device(drawn), Drive.turn("crank"), -6, 6);
    double range = course.greatest().drive() - course.least().drive();
    for (int k = 1; k < 40; k++) {
      double at = course.least().drive() + range * k / 40;
      double phi = drawn + at;
      Vector rocker = Point.of(d, 0).to(course.place(at, "rocker", "C"));
      Vector coupler = course.place(at, "coupler", "B").to(course.place(at, "coupler", "C"));
      double psi = Math.atan2(rocker.y(), rocker.x());
      double theta = Math.atan2(coupler.y(), coupler.x());
      double left =
          d / a * Math.cos(psi)
              - d / c * Math.cos(phi)
              + (a * a - b * b + c * c + d * d) / (2 * a * c);
      assertThat(left).isCloseTo(Math.cos(phi - psi), within(2e-12));
      double ratio = a * Math.sin(phi - theta) / (c * Math.sin(psi - theta));
      double close = 1e-10 * (1 + ratio * ratio);
      assertThat(motion(course, at, "rocker").turning()).isCloseTo(ratio, within(close));
      assertThat(effort(course, at)).isCloseTo(10 * ratio, within(10 * close));
    }
  }

  /**
   * A crank that cannot go round stops where coupler and rocker lie in line: cos φ = (a² + d² − (b
   * ± c)²) / (2ad). Source: law of cosines, limit positions of the four-bar; from memory.
   */
  @ParameterizedTest
  @CsvSource({"1.5, 1, 1.2, 2, 1", "2, 1.2, 1, 1.6, 1", "1, 2.5, 1, 2, -1", "1, 1, 2.6, 2, -1"})
  void aCrankEndsAtItsDeadCentres(double a, double b, double c, double d, int sense) {
    double straight = b + sense * c;
    double limit = Math.acos((a * a + d * d - straight * straight) / (2 * a * d));
    double drawn = sense > 0 ? limit - 0.4 : limit + 0.4;
    Course course = course(new FourBar(a, b, c, d).device(drawn), Drive.turn("crank"), -7, 7);
    CourseEnd near = sense > 0 ? course.greatest() : course.least();
    CourseEnd far = sense > 0 ? course.least() : course.greatest();
    double range = course.greatest().drive() - course.least().drive();
    assertThat(near.why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(drawn + near.drive()).isCloseTo(limit, within(1e-9 * range));
    assertThat(far.why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    double other = sense > 0 ? -limit : 2 * Math.PI - limit;
    assertThat(drawn + far.drive()).isCloseTo(other, within(1e-9 * range));
  }

  /** A driven rocker stops where crank and coupler lie in line, stretched or folded. */
  @Test
  void aRockerEndsWhereTheCrankLiesInLine() {
    double a = 1;
    double b = 3;
    double c = 2.5;
    double d = 3.2;
    Course course = course(new FourBar(a, b, c, d).device(0.9), Drive.turn("rocker"), -7, 7);
    double drawn = Math.atan2(course.device().point("C").y(), course.device().point("C").x() - d);
    double low = Math.PI - Math.acos((c * c + d * d - (a + b) * (a + b)) / (2 * c * d));
    double high = Math.PI - Math.acos((c * c + d * d - (b - a) * (b - a)) / (2 * c * d));
    assertThat(drawn + course.least().drive()).isCloseTo(low, within(1e-9 * (high - low)));
    assertThat(drawn + course.greatest().drive()).isCloseTo(high, within(1e-9 * (high - low)));
    assertThat(course.least().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
  }

  /**
   * Crank r in a slot of a rocker hinged d below: tan β = r·sin θ / (d + r·cos θ), β to the side
   * from upright; the rocker swings ± asin(r/d). Source: quick-return linkage, from memory.
   */
  @Test
  void theQuickReturn() {
    double r = 0.2;
    double d = 0.5;
    Device device =
        Device.named("sieve")
            .point("O", 0, 0)
            .point("A", 0, r)
            .point("Q", 0, -d)
            .point("T", 0, 0.5)
            .member("crank", "O", "A")
            .member("rocker", "Q", "T")
            .pin("O", "O", "crank", "ground")
            .pin("Q", "Q", "rocker", "ground")
            .connect(new Slot("slot", "A", "crank", "rocker", Direction.UP, Sides.TWO))
            .load(couple("crank"))
            .build();
    Course course = course(device, Drive.turn("crank"), -2 * Math.PI, 2 * Math.PI);
    for (int k = -30; k <= 30; k++) {
      double at = 2 * Math.PI * k / 30;
      double beta = Math.atan2(r * Math.sin(at), d + r * Math.cos(at));
      assertThat(course.pose(at).frame("rocker").turn()).isCloseTo(beta, within(1e-12));
      double rate = (r * r + d * r * Math.cos(at)) / (d * d + r * r + 2 * d * r * Math.cos(at));
      assertThat(at == 0 ? r / (d + r) : rate).isCloseTo(rate, within(1e-15));
      assertThat(
              course.velocities(at).stream()
                  .filter(one -> one.body().equals("rocker"))
                  .mapToDouble(BodyMotion::turning)
                  .sum())
          .isCloseTo(rate, within(1e-12));
    }
    Course swung = course(device, Drive.turn("rocker"), -1, 1);
    assertThat(swung.greatest().drive()).isCloseTo(Math.asin(r / d), within(1e-9));
    assertThat(swung.least().drive()).isCloseTo(-Math.asin(r / d), within(1e-9));
  }

  /**
   * Scissors of n stages with bars L at the angle φ: height n·L·sin φ, force at the foot n·W·cot φ.
   * Source: virtual work on the scissor lift, from memory.
   */
  @ParameterizedTest
  @CsvSource({"1, 0.5", "2, 0.7", "3, 0.3"})
  void theScissors(int stages, double angle) {
    double bar = 1.2;
    double wide = bar * Math.cos(angle);
    double high = bar * Math.sin(angle);
    DeviceBuilder builder = Device.named("tasting platform");
    for (int i = 0; i <= stages; i++) {
      builder.point("L" + i, 0, i * high).point("R" + i, wide, i * high);
      builder.point("M" + i, wide / 2, (i + 0.5) * high);
    }
    for (int i = 0; i < stages; i++) {
      builder
          .member("up" + i, "L" + i, "M" + i, "R" + (i + 1))
          .member("down" + i, "R" + i, "M" + i, "L" + (i + 1))
          .pin("m" + i, "M" + i, "up" + i, "down" + i)
          .pin("l" + i, "L" + i, "up" + i, i == 0 ? "ground" : "down" + (i - 1));
      if (i > 0) {
        builder.pin("r" + i, "R" + i, "up" + (i - 1), "down" + i);
      }
    }
    Device device =
        builder
            .connect(new Roller("wheel", "R0", "down0", "ground", Direction.UP, Sides.TWO))
            .force("cask", "down" + (stages - 1), "L" + stages, Vector.of(0, -600))
            .sought("effort", "down0", "R0", Direction.RIGHT)
            .build();
    Course course = course(device, Drive.slide("down0", "R0", Direction.RIGHT), -0.5, 0.1);
    for (int k = 0; k <= 20; k++) {
      double at = -0.5 + 0.0275 * k;
      double phi = Math.acos((wide + at) / bar);
      Point top = course.place(at, "down" + (stages - 1), "L" + stages);
      assertThat(top.distance(Point.of(0, stages * bar * Math.sin(phi)))).isLessThan(1e-11);
      // dF/dx = n·W / (L·sin³ φ), and places are good to about 1e-13 of the height
      double steep = stages * 600 / (bar * Math.pow(Math.sin(phi), 3));
      assertThat(effort(course, at))
          .isCloseTo(-stages * 600 / Math.tan(phi), within(1e-8 + 1e-12 * steep));
    }
  }

  /**
   * Two bars l that bring the knee to a height h = l·sin α: press force P / (2·tan α), way of the
   * press plate 2·l·cos α. Source: force of the toggle joint, from memory.
   */
  @Test
  void theToggle() {
    double l = 0.4;
    double drawn = 0.6;
    Device device =
        Device.named("cider press")
            .point("A", 0, 0)
            .point("K", l * Math.cos(drawn), l * Math.sin(drawn))
            .point("B", 2 * l * Math.cos(drawn), 0)
            .member("back", "A", "K")
            .member("front", "K", "B")
            .member("plate", "B")
            .pin("A", "A", "back", "ground")
            .pin("K", "K", "back", "front")
            .pin("B", "B", "front", "plate")
            .connect(new Guide("bed", "B", "plate", "ground", Direction.RIGHT))
            .force("hand", "back", "K", Vector.of(0, -150))
            .sought("effort", "plate", "B", Direction.LEFT)
            .build();
    Course course = course(device, Drive.turn("back"), -0.599, 0.5);
    for (double alpha : new double[] {0.001, 0.01, 0.1, 0.3, 0.6, 1, 1.1}) {
      double at = alpha - drawn;
      assertThat(course.place(at, "plate", "B").x())
          .isCloseTo(2 * l * Math.cos(alpha), within(1e-13));
      double force = 150 / (2 * Math.tan(alpha));
      assertThat(effort(course, at)).isCloseTo(force, within(1e-9 * force / Math.sin(alpha)));
    }
    // flat, it cannot be driven farther by its plate
    Course pushed = course(device, Drive.slide("plate", "B", Direction.RIGHT), -0.1, 1);
    assertThat(pushed.greatest().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(pushed.greatest().drive()).isCloseTo(2 * l * (1 - Math.cos(drawn)), within(1e-10));
  }

  /**
   * Work that a tackle of n parts loses: the haul W·h·n / (e + … + eⁿ) less the load's W·h when
   * raising; when lowering the hand holds back W·h·n / (1/e + … + 1/eⁿ) and the rest is lost.
   * Source: geometric row of tensions over sheaves, from memory.
   */
  @ParameterizedTest
  @EnumSource(
      value = Reeving.Hauling.class,
      names = {"RAISING", "LOWERING"})
  void whatATackleLoses(Reeving.Hauling hauling) {
    double efficiency = 0.94;
    Device device =
        Device.named("tackle")
            .point("foot", 0, -1)
            .point("head", 0, 3)
            .point("hook", 0, 0)
            .member("block", "hook")
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("ground", "foot"),
                        Stop.sheave("ground", "head", 0, Turn.CLOCKWISE),
                        Stop.sheave("block", "hook", 0, Turn.CLOCKWISE),
                        Stop.end("ground", "head")),
                    efficiency,
                    hauling))
            .connect(new Guide("bed", "hook", "block", "ground", Direction.UP))
            .force("barrel", "block", "hook", Vector.of(0, -1000))
            .build();
    boolean raising = hauling == Reeving.Hauling.RAISING;
    double e = raising ? efficiency : 1 / efficiency;
    Course course = course(device, Drive.length("rope"), -1, 1);
    Work work = course.work(raising ? 0.8 : -0.8, raising ? -0.8 : 0.8).orElseThrow();
    double lift = raising ? 0.8 : -0.8;
    double haul = 1000 * lift * 2 / (e + e * e);
    assertThat(work.loads()).isCloseTo(-1000 * lift, within(1e-8));
    assertThat(work.effort()).isCloseTo(haul, within(1e-7));
    assertThat(work.lost()).isCloseTo(haul - 1000 * lift, within(1e-7)).isPositive();
    assertThat(work.stored()).isZero();
  }
}
