package bellcrank.statics.motion;

import bellcrank.statics.SameBits;
import bellcrank.statics.SameBits.Question;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Guide;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Courses that many threads share answer as one thread does. */
class CourseOnThreadsTest {

  private static final double LEAST = -0.4;
  private static final double GREATEST = 0.6;
  private static final int PLACES = 60;

  /** A press with a toggle; how far its knee stands out differs from one to the next. */
  private static Course press(int number) {
    Device press =
        Device.named("cider press")
            .point("foot", 0, 0)
            .point("knee", 0.5, 0.3 + 0.01 * number)
            .point("plate", 1.1, 0)
            .member("upper", "foot", "knee")
            .member("lower", "knee", "plate")
            .member("follower", "plate")
            .pin("foot", "foot", "upper", "ground")
            .pin("knee", "knee", "upper", "lower")
            .pin("plate", "plate", "lower", "follower")
            .connect(new Guide("guide", "plate", "follower", "ground", Direction.RIGHT))
            .force("hand", "upper", "knee", Vector.of(20, -150))
            .sought("must", "follower", "plate", Direction.LEFT)
            .build();
    return (Course) Travel.of(press, Drive.turn("upper"), LEAST, GREATEST);
  }

  private static List<Course> presses() {
    List<Course> presses = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      presses.add(press(i));
    }
    return presses;
  }

  @Test
  void sharedCourses() {
    List<Question<List<Course>>> questions = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      int number = i;
      questions.add(
          (courses, seen) -> {
            Course course = courses.get(number);
            double from = course.least().drive();
            double way = course.greatest().drive() - from;
            for (int k = 0; k <= PLACES; k++) {
              double at = from + way * k / PLACES;
              seen.words(course.pose(at));
              course.velocities(at).forEach(seen::words);
            }
          });
      questions.add((courses, seen) -> seen.words(courses.get(number).curve("must")));
      questions.add(
          (courses, seen) -> {
            Course course = courses.get(number);
            seen.words(course.work(course.least().drive(), course.greatest().drive()));
          });
      questions.add(
          (courses, seen) -> {
            // a sweep is for one thread, but what it goes along is shared
            Sweep sweep = courses.get(number).sweep();
            Sweep.Spot plate = sweep.spot("follower", "plate");
            Prepared.Slot must = sweep.slot("must");
            for (int k = 1; k < PLACES; k++) {
              sweep.moveTo(courses.get(number).least().drive() + 0.9 * k / PLACES);
              seen.number(sweep.x(plate));
              seen.number(sweep.tellsForces() ? sweep.value(must) : 0);
            }
          });
    }
    SameBits.hold(CourseOnThreadsTest::presses, questions);
  }
}
