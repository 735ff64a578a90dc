package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.equilibrium.BodyMotion;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Parallel links: where a second motion opens, the first one goes on. */
class ParallelLinksTest {

  private static final double LINK = 0.5;

  private static Course course(Travel travel) {
    assertThat(travel).isInstanceOf(Course.class);
    return (Course) travel;
  }

  /** The shelf of the cider press: two equal links under a beam. */
  private static Device parallelogram(double angle) {
    Vector link = Direction.ofAngle(angle).times(LINK);
    return Device.named("parallelogram")
        .point("A", 0, 0)
        .point("B", 1, 0)
        .point("C", Point.ORIGIN.plus(link))
        .point("D", Point.of(1, 0).plus(link))
        .member("left", "A", "C")
        .member("right", "B", "D")
        .member("top", "C", "D")
        .pin("A", "A", "left", "ground")
        .pin("B", "B", "right", "ground")
        .pin("C", "C", "left", "top")
        .pin("D", "D", "right", "top")
        .build();
  }

  /** However near to an end or to the drawn pose a change point lies, it is told and passed. */
  @ParameterizedTest
  @CsvSource({
    "0.4, -0.401, 0.1", "0.4, -0.42, 0.1", "0.4, -0.45, 0.1", "0.4, -0.9, 0.1",
    "0.001, -0.5, 0.5", "0.01, -0.5, 0.5", "-0.001, -0.5, 0.5", "-0.4, -0.1, 0.403"
  })
  void aChangePointIsToldNearAnEnd(double angle, double least, double greatest) {
    Course course = course(Travel.of(parallelogram(angle), Drive.turn("left"), least, greatest));
    assertThat(course.least().why()).isEqualTo(CourseEnd.Why.STATED);
    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.STATED);
    assertThat(course.changePoints()).hasSize(1);
    assertThat(course.changePoints().get(0)).isCloseTo(-angle, within(1e-6));
    for (int k = 0; k <= 40; k++) {
      double at = least + (greatest - least) * k / 40;
      assertThat(course.pose(at).frame("top").turn()).as("at %s", at).isCloseTo(0, within(1e-9));
    }
  }

  /** The pose and the tangent stay those of the parallelogram where it lies flat. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-12, -1e-11, 1e-10, 1e-9, -1e-8, 1e-7, 1e-6, -1e-5, 1e-4})
  void theTangentIsKeptAtAChangePoint(double off) {
    double angle = 0.4;
    Course course = course(Travel.of(parallelogram(angle), Drive.turn("left"), -1.5, 0.5));
    assertThat(course.changePoints()).hasSize(1);
    double at = off == 0 ? course.changePoints().get(0) : -angle + off;
    assertThat(course.pose(at).frame("top").turn()).isCloseTo(0, within(1e-10));
    assertThat(course.pose(at).frame("left").turn()).isCloseTo(at, within(1e-12));
    assertThat(course.pose(at).frame("right").turn()).isCloseTo(at, within(1e-10));
    List<BodyMotion> motions = course.velocities(at);
    for (BodyMotion motion : motions) {
      double turning = motion.body().equals("top") ? 0 : 1;
      assertThat(motion.turning()).as(motion.body()).isCloseTo(turning, within(1e-8));
    }
  }

  /** Three equal links side by side hold the beam more than needed and still let it go. */
  @Test
  void linksTooManyThatFitDoNotHold() {
    Device device = threeLinks(LINK);
    Course course = course(Travel.of(device, Drive.turn("left"), -0.4, 0.4));
    assertThat(course.place(0.3, "top", "E").y())
        .isCloseTo(LINK * Math.sin(1.2 + 0.3), within(1e-12));
    assertThat(course.least().why()).isEqualTo(CourseEnd.Why.STATED);
    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.STATED);
  }

  /** A third link that is parallel but longer lets it go for a first instant only. */
  @Test
  void aLongerThirdLinkHoldsAfterAnInstant() {
    Travel travel = Travel.of(threeLinks(0.8), Drive.turn("left"), -0.4, 0.4);
    assertThat(((Travel.Standstill) travel).reason()).isEqualTo(Travel.Reason.FIRST_ORDER_ONLY);
    assertThat(((Travel.Standstill) travel).freedoms()).hasSize(1);
  }

  private static Device threeLinks(double third) {
    Vector link = Direction.ofAngle(1.2).times(LINK);
    Vector other = Direction.ofAngle(1.2).times(third);
    return Device.named("shelf")
        .point("A", 0, 0)
        .point("B", 1, 0)
        .point("foot", Point.of(2, 0).plus(link).plus(other.times(-1)))
        .point("C", Point.ORIGIN.plus(link))
        .point("D", Point.of(1, 0).plus(link))
        .point("E", Point.of(2, 0).plus(link))
        .member("left", "A", "C")
        .member("right", "B", "D")
        .member("third", "foot", "E")
        .member("top", "C", "D", "E")
        .pin("A", "A", "left", "ground")
        .pin("B", "B", "right", "ground")
        .pin("foot", "foot", "third", "ground")
        .pin("C", "C", "left", "top")
        .pin("D", "D", "right", "top")
        .pin("E", "E", "third", "top")
        .build();
  }

  /**
   * A four-bar whose bars all but lie flat together: crank 1, coupler 2 + gap, rocker 2.5, ground
   * 3.5. With crank and ground in line the joint is 2.5 from the rocker's hinge inside or 4.5 from
   * it outside, where coupler and rocker would be stretched. It goes by on its side of the line.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e-2, 1e-3, 1e-4, 1e-5, 1e-6})
  void waysThatAllButCrossAreNotChanged(double gap) {
    double coupler = 2 + gap;
    double rocker = 2.5;
    double drawn = Math.PI - 1;
    Point joint = Point.ORIGIN.plus(Direction.ofAngle(drawn).times(1));
    Vector span = joint.to(Point.of(3.5, 0));
    double along = (coupler * coupler - rocker * rocker + span.dot(span)) / (2 * span.norm());
    Point other =
        joint
            .plus(span.times(along / span.norm()))
            .plus(
                span.perpendicular()
                    .times(Math.sqrt(coupler * coupler - along * along) / span.norm()));
    Device device =
        Device.named("sieve")
            .point("A", 0, 0)
            .point("B", joint)
            .point("C", other)
            .point("D", 3.5, 0)
            .member("crank", "A", "B")
            .member("coupler", "B", "C")
            .member("rocker", "D", "C")
            .pin("A", "A", "crank", "ground")
            .pin("B", "B", "crank", "coupler")
            .pin("C", "C", "coupler", "rocker")
            .pin("D", "D", "rocker", "ground")
            .build();
    Course course = course(Travel.of(device, Drive.turn("crank"), 0, 2));
    assertThat(course.changePoints()).isEmpty();
    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.STATED);
    for (int k = 0; k <= 100; k++) {
      double at = 2.0 * k / 100;
      Vector way = course.place(at, "coupler", "B").to(course.place(at, "coupler", "C"));
      Vector next = course.place(at, "rocker", "C").to(Point.of(3.5, 0));
      assertThat(way.cross(next)).as("at %s", at).isNegative();
    }
  }
}
