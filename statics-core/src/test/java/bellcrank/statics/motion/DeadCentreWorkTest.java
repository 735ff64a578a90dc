package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import org.junit.jupiter.api.Test;

/** The account of work closes up to dead centres and past them. */
class DeadCentreWorkTest {

  private static final double CLOSED = 1e-9;

  /** Crank 0.1 m, rod 0.3 m; the crank carries a couple and a weight, the slider is pushed. */
  private static Device sliderCrank() {
    double x = 0.1 * Math.cos(0.7);
    double y = 0.1 * Math.sin(0.7);
    return Device.named("slider crank")
        .gravity(Vector.of(0, -10))
        .point("O", 0, 0)
        .point("A", x, y)
        .point("B", x + Math.sqrt(0.09 - y * y), 0)
        .member("crank", "O", "A")
        .member("rod", "A", "B")
        .member("slider", "B")
        .pin("O", "O", "crank", "ground")
        .pin("A", "A", "crank", "rod")
        .pin("B", "B", "rod", "slider")
        .connect(new Guide("guide", "B", "slider", "ground", Direction.RIGHT))
        .load(new Couple("brake", "crank", -8))
        .weight("pin", "rod", "A", 3)
        .sought("push", "slider", "B", Direction.RIGHT)
        .build();
  }

  /** A press whose knee is pushed down and whose plate goes to the right until it is straight. */
  private static Device toggle() {
    return Device.named("cider press")
        .gravity(Vector.of(0, -10))
        .point("foot", 0, 0)
        .point("knee", 0.5, 0.3)
        .point("plate", 1.1, 0)
        .member("upper", "foot", "knee")
        .member("lower", "knee", "plate")
        .member("follower", "plate")
        .pin("foot", "foot", "upper", "ground")
        .pin("knee", "knee", "upper", "lower")
        .pin("plate", "plate", "lower", "follower")
        .connect(new Guide("guide", "plate", "follower", "ground", Direction.RIGHT))
        .force("hand", "upper", "knee", Vector.of(0, -150))
        .weight("beam", "lower", "knee", 4)
        .sought("must", "follower", "plate", Direction.LEFT)
        .build();
  }

  private static Course course(Device device, Drive drive, double least, double greatest) {
    return (Course) Travel.of(device, drive, least, greatest);
  }

  @Test
  void sliderCrankDrivenByItsSliderFromOneDeadCentreToTheOther() {
    Course course = course(sliderCrank(), Drive.slide("slider", "B", Direction.RIGHT), -1, 1);
    assertThat(course.least().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);

    double from = course.least().drive();
    double to = course.greatest().drive();
    Work whole = course.work(from, to).orElseThrow();
    assertThat(whole.share()).isLessThan(CLOSED);
    // half a turn, from the left (π) to the right (0), against the brake
    assertThat(whole.loads()).isCloseTo(8 * Math.PI, within(1e-5));
    assertThat(course.work(to, from).orElseThrow().share()).isLessThan(CLOSED);
    for (double near : new double[] {1e-3, 1e-6, 1e-9, 1e-12}) {
      assertThat(course.work(0, to - near).orElseThrow().share()).as("%s", near).isLessThan(CLOSED);
      assertThat(course.work(from + near, 0.01).orElseThrow().share()).isLessThan(CLOSED);
    }
  }

  @Test
  void sliderCrankDrivenByItsCrankPastTheDeadCentresOfItsSlider() {
    Course course = course(sliderCrank(), Drive.turn("crank"), -4, 5);

    assertThat(course.work(-4, 5).orElseThrow().share()).isLessThan(CLOSED);
    assertThat(course.work(-0.9, -0.2).orElseThrow().share()).isLessThan(CLOSED);
  }

  @Test
  void toggleUpToItsDeadCentre() {
    Course course = course(toggle(), Drive.slide("follower", "plate", Direction.RIGHT), -0.3, 1);
    assertThat(course.greatest().why()).isEqualTo(CourseEnd.Why.DEAD_CENTRE);
    double straight = Math.hypot(0.5, 0.3) + Math.hypot(0.6, 0.3);
    double to = course.greatest().drive();
    assertThat(to).isCloseTo(straight - 1.1, within(1e-12));

    Work work = course.work(-0.3, to).orElseThrow();
    assertThat(work.share()).isLessThan(CLOSED);
    double fall = course.place(-0.3, "upper", "knee").y();
    assertThat(work.loads()).isCloseTo(190 * fall, within(1e-4));
    assertThat(course.work(to, 0).orElseThrow().share()).isLessThan(CLOSED);
  }

  @Test
  void togglePastItsDeadCentre() {
    Course course = course(toggle(), Drive.turn("upper"), -1.2, 0.3);

    assertThat(course.work(0.3, -1.2).orElseThrow().share()).isLessThan(CLOSED);
    assertThat(course.work(0, -Math.atan2(0.3, 0.5) - 1e-7).orElseThrow().share())
        .isLessThan(CLOSED);
  }

  /** The jib hangs straight down where its rope is longest. */
  @Test
  void luffingRopeUpToItsDeadCentre() {
    Device derrick =
        Device.named("barrel derrick")
            .gravity(Vector.of(0, -10))
            .point("heel", 0, 0)
            .point("tip", 2, 1)
            .point("head", 0, 3)
            .member("jib", "heel", "tip")
            .pin("heel", "heel", "jib", "ground")
            .line("rope", End.of("jib", "tip"), End.of("ground", "head"))
            .weight("barrel", "jib", "tip", 60)
            .build();
    Course course = course(derrick, Drive.length("rope"), -0.8, 9);
    double to = course.greatest().drive();

    Work work = course.work(to, -0.8).orElseThrow();
    assertThat(work.share()).isLessThan(CLOSED);
    double lift = course.place(-0.8, "jib", "tip").y() + Math.hypot(2, 1);
    assertThat(work.effort()).isCloseTo(600 * lift, within(1e-6));
  }
}
