package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A point that meets an edge, or passes by beyond its ends. */
class MeetingTest {

  private static Course course(Travel travel) {
    assertThat(travel).isInstanceOf(Course.class);
    return (Course) travel;
  }

  private static Device pointer() {
    return Device.named("ladle")
        .point("O", 0, 0)
        .point("tip", 1, 0)
        .point("low", 0, 0.2)
        .point("high", 0.3, 0.2)
        .point("wall foot", 0, 0.5)
        .point("wall head", 0, 1.5)
        .point("out", -0.8, 0.3)
        .point("up", -0.8, 1)
        .member("ladle", "O", "tip")
        .pin("O", "O", "ladle", "ground")
        .build();
  }

  private static Course meeting(double least, double greatest, String from, String to) {
    return course(
        Travel.of(
            pointer(),
            LoadCase.ALL_LOADS,
            Drive.turn("ladle"),
            least,
            greatest,
            List.of(new Meeting("ladle", "tip", "ground", from, to))));
  }

  /** The tip passes over the line of a short edge far from it, and never meets it. */
  @Test
  void whoGoesRoundAnEdgeDoesNotMeetIt() {
    Course course = meeting(-1, 3, "low", "high");
    assertThat(course.greatest()).isEqualTo(new CourseEnd(3, CourseEnd.Why.STATED, ""));
    assertThat(course.least()).isEqualTo(new CourseEnd(-1, CourseEnd.Why.STATED, ""));
  }

  /** An edge is met from either side, also after its line has been passed beyond its ends. */
  @Test
  void anEdgeIsMetFromEitherSide() {
    Course up = meeting(-1, 3, "wall foot", "wall head");
    assertThat(up.greatest().why()).isEqualTo(CourseEnd.Why.MEETS);
    assertThat(up.greatest().drive()).isCloseTo(Math.PI / 2, within(1e-10));
    Course round = meeting(-6, 1, "wall foot", "wall head");
    assertThat(round.least().why()).isEqualTo(CourseEnd.Why.MEETS);
    assertThat(round.least().drive()).isCloseTo(-1.5 * Math.PI, within(1e-10));
    // the line of this edge is passed at its far side first, where the edge is not
    Course behind = meeting(-6, 1, "out", "up");
    assertThat(behind.least().drive()).isCloseTo(Math.acos(-0.8) - 2 * Math.PI, within(1e-10));
    assertThat(behind.greatest().why()).isEqualTo(CourseEnd.Why.STATED);
  }

  /** An edge whose end lies a hair inside or outside the circle of the tip. */
  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1e-4, 1e-6, 1e-9, -1e-9, -1e-6, -1e-4, -1e-3})
  void theEndOfAnEdgeDecides(double gap) {
    Device device = pointer().toBuilder().point("far", 0, 3).point("near", 0, 1 + gap).build();
    Course course =
        course(
            Travel.of(
                device,
                LoadCase.ALL_LOADS,
                Drive.turn("ladle"),
                0,
                2,
                List.of(new Meeting("ladle", "tip", "ground", "near", "far"))));
    assertThat(course.greatest().why())
        .isEqualTo(gap > 0 ? CourseEnd.Why.STATED : CourseEnd.Why.MEETS);
    assertThat(course.greatest().drive()).isCloseTo(gap > 0 ? 2 : Math.PI / 2, within(1e-10));
  }
}
