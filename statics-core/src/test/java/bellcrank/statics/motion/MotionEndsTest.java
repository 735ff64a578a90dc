package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Strut;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where courses end and why, both ways, at places worked out by hand. */
class MotionEndsTest {

  private static Course course(Travel travel) {
    assertThat(travel).isInstanceOf(Course.class);
    return (Course) travel;
  }

  private static Sought couple(String member) {
    return new Sought("effort", Sought.Want.COUPLE, member, Optional.empty(), Optional.empty());
  }

  private static final double CRANK = 0.1;
  private static final double ROD = 0.3;

  private static Device sliderCrank(double angle, double gap) {
    double x = CRANK * Math.cos(angle);
    double y = CRANK * Math.sin(angle);
    return Device.named("apple crusher")
        .point("O", 0, 0)
        .point("A", x, y)
        .point("B", x + Math.sqrt(ROD * ROD - y * y), 0)
        .point("stop low", CRANK + ROD - gap, -1)
        .point("stop high", CRANK + ROD - gap, 1)
        .member("crank", "O", "A")
        .member("rod", "A", "B")
        .member("slider", "B")
        .pin("O", "O", "crank", "ground")
        .pin("A", "A", "crank", "rod")
        .pin("B", "B", "rod", "slider")
        .connect(new Guide("bed", "B", "slider", "ground", Direction.RIGHT))
        .build();
  }

  /** A stop a hair before the dead centre ends the course, not the dead centre behind it. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1e-4, 1e-5, 1e-6})
  void aStopBeforeADeadCentreIsTold(double gap) {
    Device device = sliderCrank(0.7, gap);
    double drawn = device.point("B").x();
    Course course =
        course(
            Travel.of(
                device,
                LoadCase.ALL_LOADS,
                Drive.slide("slider", "B", Direction.RIGHT),
                -1,
                1,
                List.of(new Meeting("slider", "B", "ground", "stop low", "stop high"))));
    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.MEETS);
    assertThat(course.greatest().drive() + drawn).isCloseTo(CRANK + ROD - gap, within(1e-10));
    assertThat(course.least().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(course.least().drive() + drawn).isCloseTo(ROD - CRANK, within(1e-10));
  }

  /** A stated limit a hair before, at, and beyond the dead centre. */
  @ParameterizedTest
  @CsvSource({"1e-3, STATED", "1e-6, STATED", "1e-9, STATED", "-1e-9, DEAD_CENTRE"})
  void aLimitBeforeADeadCentreIsTold(double gap, CourseEnd.Why why) {
    Device device = sliderCrank(0.7, 1);
    double drawn = device.point("B").x();
    Drive slide = Drive.slide("slider", "B", Direction.RIGHT);
    Course course = course(Travel.of(device, slide, -0.1, CRANK + ROD - gap - drawn));
    assertThat(course.greatest().why()).isEqualTo(why);
    assertThat(course.greatest().drive() + drawn)
        .isCloseTo(CRANK + ROD - Math.max(0, gap), within(1e-10));
    Point end = course.place(course.greatest().drive(), "slider", "B");
    assertThat(end.x()).isCloseTo(CRANK + ROD - Math.max(0, gap), within(1e-10));
  }

  /**
   * A prop under a lid of weight W = 100 N pushes until the lid, its weight 0.5 m from the hinge,
   * is pulled up by a counterweight: N·x = W·0.5·cos φ − C·sin φ.
   */
  @Test
  void aContactLiftsOff() {
    Device device =
        Device.named("trough lid")
            .gravity(Vector.of(0, -10))
            .point("hinge", 0, 0)
            .point("middle", 0.5, 0)
            .point("edge", 1, 0)
            .member("lid", "hinge", "middle", "edge")
            .member("wedge", "edge")
            .pin("hinge", "hinge", "lid", "ground")
            .connect(new Guide("bed", "edge", "wedge", "ground", Direction.UP))
            .connect(new Roller("pad", "edge", "lid", "wedge", Direction.UP, Sides.ONE))
            .weight("lid weight", "lid", "middle", 10)
            .force("counterweight", "lid", "middle", Vector.of(-100, 0))
            .sought("push", "wedge", "edge", Direction.UP)
            .build();
    Course course =
        course(Travel.of(device, Drive.slide("wedge", "edge", Direction.UP), -0.5, 0.95));
    // both at the middle: level at 45°, when the pad stands 1 m · sin 45° high
    assertThat(course.greatest().words()).isEqualTo("pad lifts off");
    assertThat(course.greatest().drive()).isCloseTo(Math.sqrt(0.5), within(1e-9));
    assertThat(course.least()).isEqualTo(new CourseEnd(-0.5, CourseEnd.Why.STATED, ""));
  }

  /** The same the other way: driven from beyond, it lifts as the wedge goes down. */
  @Test
  void aContactAndASlotLiftOffTheOtherWay() {
    for (boolean slot : new boolean[] {false, true}) {
      var builder =
          Device.named("trough lid")
              .gravity(Vector.of(0, -10))
              .point("hinge", 0, 0)
              .point("middle", 0.3, 0.4)
              .point("edge", 0.6, 0.8)
              .member("lid", "hinge", "middle", "edge")
              .member("wedge", "edge")
              .pin("hinge", "hinge", "lid", "ground")
              .connect(new Guide("bed", "edge", "wedge", "ground", Direction.UP))
              .weight("lid weight", "lid", "middle", 10)
              .force("counterweight", "lid", "middle", Vector.of(-100, 0))
              .sought("push", "wedge", "edge", Direction.UP);
      // the pad holds the lid down here: it pushes downwards on it
      builder.connect(
          slot
              ? new Slot("pad", "edge", "lid", "wedge", Direction.LEFT, Sides.ONE)
              : new Contact("pad", "edge", "lid", "wedge", Direction.DOWN, 0, 0));
      Course course =
          course(Travel.of(builder.build(), Drive.slide("wedge", "edge", Direction.UP), -0.5, 0.1));
      assertThat(course.least().words()).isEqualTo("pad lifts off");
      assertThat(course.least().drive()).isCloseTo(Math.sqrt(0.5) - 0.8, within(1e-9));
      assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.STATED);
    }
  }

  /**
   * A stay of the barrel derrick is taut on one side of the upright only, whichever way it goes.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, -1})
  void aLineGoesSlackEitherWay(int side) {
    Device device =
        Device.named("barrel derrick")
            .gravity(Vector.of(0, -10))
            .point("heel", 0, 0)
            .point("tip", side * 0.6, 1.9)
            .point("anchor", -side * 3, 1)
            .member("jib", "heel", "tip")
            .pin("heel", "heel", "jib", "ground")
            .line("stay", End.of("jib", "tip"), End.of("ground", "anchor"))
            .weight("barrel", "jib", "tip", 50)
            .build();
    Course course = course(Travel.of(device, Drive.length("stay"), -2, 0.5));
    double drawn = Math.hypot(3.6, 0.9);
    double slack = Point.of(0, Math.hypot(0.6, 1.9)).distance(Point.of(-3, 1));
    assertThat(course.least().words()).isEqualTo("stay goes slack");
    assertThat(course.least().drive()).isCloseTo(slack - drawn, within(1e-8));
    assertThat(course.greatest()).isEqualTo(new CourseEnd(0.5, CourseEnd.Why.STATED, ""));
  }

  /**
   * Wound in from the far side the stay pulls the barrel up to the upright, where the line is
   * longest when jib and stay lie in line: with the anchor low that is before the upright.
   */
  @Test
  void whatComesFirstEndsTheCourse() {
    Device device =
        Device.named("barrel derrick")
            .gravity(Vector.of(0, -10))
            .point("heel", 0, 0)
            .point("tip", 1.2, 1.6)
            .point("anchor", 0.02, -1)
            .member("jib", "heel", "tip")
            .pin("heel", "heel", "jib", "ground")
            .line("stay", End.of("jib", "tip"), End.of("ground", "anchor"))
            .force("wind", "jib", "tip", Vector.of(-100, 0))
            .build();
    Course course = course(Travel.of(device, Drive.length("stay"), -0.2, 1));
    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(course.greatest().drive())
        .isCloseTo(2 + Math.hypot(0.02, 1) - Math.hypot(1.18, 2.6), within(1e-10));
  }

  /** Two freedoms, none, and one that leaves the driven member alone. */
  @Test
  void standstillsAreTold() {
    Device device = sliderCrank(0.7, 1);
    Device loose =
        device.toBuilder()
            .point("Q", 1, 1)
            .member("lid", "Q")
            .pin("q", "Q", "lid", "ground")
            .build();
    Travel.Standstill several = (Travel.Standstill) Travel.of(loose, Drive.turn("crank"), -1, 1);
    assertThat(several.reason()).isEqualTo(Travel.Reason.SEVERAL_FREEDOMS);
    assertThat(several.freedoms()).hasSize(2);
    Device held = device.toBuilder().clamp("bolt", "B", "slider", "ground").build();
    Travel.Standstill none = (Travel.Standstill) Travel.of(held, Drive.turn("crank"), -1, 1);
    assertThat(none.reason()).isEqualTo(Travel.Reason.HELD);
    assertThat(none.freedoms()).isEmpty();
    Device bolted = loose.toBuilder().clamp("bolt", "Q", "lid", "ground").build();
    Travel.Standstill not = (Travel.Standstill) Travel.of(bolted, Drive.turn("lid"), -1, 1);
    assertThat(not.reason()).isEqualTo(Travel.Reason.NOT_DRIVEN);
    assertThat(not.freedoms()).hasSize(1);
  }

  @Test
  void aCourseMayHaveNoLength() {
    Course course = course(Travel.of(sliderCrank(0.7, 1), Drive.turn("crank"), 0, 0));
    assertThat(course.least()).isEqualTo(new CourseEnd(0, CourseEnd.Why.STATED, ""));
    assertThat(course.greatest()).isEqualTo(new CourseEnd(0, CourseEnd.Why.STATED, ""));
    assertThat(course.pose(0).frame("crank").turn()).isZero();
    assertThat(course.velocities(0)).hasSize(3);
  }

  /** The greatest couple of a crank just beside an end is not taken for the end's. */
  @Test
  void anExtremeBesideAnEndIsFound() {
    Device device =
        Device.named("ladle")
            .point("O", 0, 0)
            .point("tip", Math.cos(-0.001), Math.sin(-0.001))
            .member("ladle", "O", "tip")
            .pin("O", "O", "ladle", "ground")
            .force("load", "ladle", "tip", Vector.of(0, -100))
            .load(couple("ladle"))
            .build();
    Curve ahead = course(Travel.of(device, Drive.turn("ladle"), 0, 1)).curve("effort");
    assertThat(ahead.greatest().orElseThrow().drive()).isCloseTo(0.001, within(1e-6));
    assertThat(ahead.greatest().orElseThrow().value()).isCloseTo(100, within(1e-10));
    Curve behind = course(Travel.of(device, Drive.turn("ladle"), -1, 0.002)).curve("effort");
    assertThat(behind.greatest().orElseThrow().drive()).isCloseTo(0.001, within(1e-6));
    assertThat(behind.greatest().orElseThrow().value()).isCloseTo(100, within(1e-10));
  }

  /** A crank that goes round and round is followed for so many steps and no more. */
  @Test
  void aWayTooLongIsToldAsSuch() {
    Course course = course(Travel.of(sliderCrank(0.7, 1), Drive.turn("crank"), 0, 2000));
    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.TOO_LONG);
    assertThat(course.greatest().words()).isEqualTo("followed no farther");
    assertThat(course.greatest().drive()).isBetween(500.0, 1000.0);
  }

  /** A strut and a screw that lift a press plate do the work that its weight takes up. */
  @Test
  void whatAStrutOrScrewLifts() {
    for (boolean screw : new boolean[] {true, false}) {
      End plate = End.of("plate", "plate");
      End sill = End.of("ground", "sill");
      Device device =
          Device.named("cider press")
              .point("sill", 0, 0)
              .point("plate", 0, 0.5)
              .member("plate", "plate")
              .connect(new Guide("rail", "plate", "plate", "ground", Direction.UP))
              .connect(
                  screw
                      ? new Screw("jack", plate, sill, 0.01, 0.02, 0.1)
                      : new Strut("jack", plate, sill, 0))
              .force("cheese", "plate", "plate", Vector.of(30, -2000))
              .build();
      Course course = course(Travel.of(device, Drive.length("jack"), -0.2, 0.3));
      Work work = course.work(-0.2, 0.3).orElseThrow();
      assertThat(work.effort()).isCloseTo(1000, within(1e-9));
      assertThat(work.loads()).isCloseTo(-1000, within(1e-9));
    }
  }

  /** At and next to a dead centre the drive hardly tells the place, and yet all fits. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-17, 1e-16, 1e-15, 1e-14, 1e-13, 1e-12, 1e-10, 1e-8})
  void allFitsAtADeadCentre(double off) {
    for (int k = 1; k < 60; k++) {
      Device device = sliderCrank(0.05 * k, 1);
      Drive drive = Drive.slide("slider", "B", Direction.RIGHT);
      Course course = course(Travel.of(device, drive, -1, 1));
      for (double at :
          new double[] {course.greatest().drive() - off, course.least().drive() + off}) {
        assertThat(PlainMotion.misfit(device, course.pose(at), drive))
            .isLessThan(1e-12 * device.size());
        double there = course.place(at, "slider", "B").x() - device.point("B").x();
        assertThat(there).isCloseTo(at, within(1e-11));
      }
    }
  }
}
