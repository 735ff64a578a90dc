package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.equilibrium.Prepared;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import org.junit.jupiter.api.Test;

/** Sweeps tell what poses and balances tell, one after another. */
class SweepTest {

  /** A trough lid held by a rope to a joint that two struts carry; the rope is hauled. */
  private static DeviceBuilder lid() {
    return Device.named("trough lid")
        .point("hinge", 0, 0)
        .point("rim", 1.2, 0.3)
        .point("top", -0.4, 1.5)
        .point("left", -1, 0)
        .point("right", -0.2, 0)
        .member("lid", "hinge", "rim")
        .joint("top")
        .pin("hinge", "hinge", "lid", "ground")
        .strut("back", End.of("top", "top"), End.of("ground", "left"))
        .strut("front", End.of("top", "top"), End.of("ground", "right"))
        .line("rope", End.of("lid", "rim"), End.of("top", "top"))
        .weight("boards", "lid", "rim", 30);
  }

  private static Course course(Device device, Drive drive, double least, double greatest) {
    return (Course) Travel.of(device, drive, least, greatest);
  }

  private static Course press() {
    Device press =
        Device.named("cider press")
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
            .force("hand", "upper", "knee", Vector.of(20, -150))
            .sought("must", "follower", "plate", Direction.LEFT)
            .build();
    return course(press, Drive.turn("upper"), -0.4, 0.6);
  }

  @Test
  void placesAndTurnsAreThoseOfThePoses() {
    Course course = press();
    Sweep sweep = course.sweep();
    Sweep.Spot knee = sweep.spot("lower", "knee");
    Sweep.Spot plate = sweep.spot("follower", "plate");
    for (int k = 40; k >= 0; k--) {
      double at = -0.4 + k / 40.0;
      sweep.moveTo(at);
      Pose pose = course.pose(at);

      assertThat(sweep.at()).isEqualTo(at);
      assertThat(sweep.gap()).isLessThan(1e-12);
      Point expected = pose.frame("lower").apply(course.device().point("knee"));
      assertThat(Point.of(sweep.x(knee), sweep.y(knee)).distance(expected)).isLessThan(1e-12);
      assertThat(sweep.turn(knee)).isCloseTo(pose.frame("lower").turn(), within(1e-12));
      assertThat(sweep.turn(plate)).isCloseTo(0, within(1e-12));
      assertThat(sweep.pose().frame("lower").turn()).isEqualTo(sweep.turn(knee));
    }
  }

  @Test
  void beginsAsDrawn() {
    Course course = press();
    Sweep sweep = course.sweep();
    Sweep.Spot plate = sweep.spot("follower", "plate");

    assertThat(sweep.at()).isZero();
    assertThat(sweep.x(plate)).isCloseTo(1.1, within(1e-15));
    assertThat(sweep.value(sweep.slot("must")))
        .isCloseTo(
            Balance.of(course.device(), course.loadCase(), Pose.DRAWN).number("must").orElseThrow(),
            within(1e-9));
  }

  @Test
  void forcesAreThoseOfTheBalances() {
    Course course = press();
    Sweep sweep = course.sweep();
    Prepared.Slot must = sweep.slot("must");
    Prepared.Slot foot = sweep.slot("foot.y on ground");
    for (double at = -0.4; at <= 0.6; at += 0.05) {
      sweep.moveTo(at);
      Balance balance = Balance.of(course.device(), course.loadCase(), course.pose(at));

      assertThat(sweep.tellsForces()).isTrue();
      double size = Math.abs(sweep.value(must)) + 150;
      assertThat(sweep.value(must))
          .isCloseTo(balance.number("must").orElseThrow(), within(1e-10 * size));
      assertThat(sweep.value(foot))
          .isCloseTo(balance.number("foot.y on ground").orElseThrow(), within(1e-10 * size));
    }
  }

  @Test
  void slotsServeAPreparedFormAsWell() {
    Course course = press();
    Prepared prepared = Prepared.of(course.device());

    assertThat(course.sweep().slot("knee.x")).isEqualTo(prepared.slot("knee.x"));
  }

  @Test
  void jointsAndTheGroundAreSpotsToo() {
    Course course = course(lid().build(), Drive.length("rope"), -0.3, 0.3);
    Sweep sweep = course.sweep();
    Sweep.Spot top = sweep.spot("top", "top");
    Sweep.Spot left = sweep.spot("ground", "left");
    sweep.moveTo(-0.25);

    assertThat(sweep.x(top)).isCloseTo(-0.4, within(1e-12));
    assertThat(sweep.turn(top)).isZero();
    assertThat(sweep.x(left)).isCloseTo(-1, within(1e-15));
    assertThat(sweep.turn(left)).isZero();
    Sweep.Spot rim = sweep.spot("lid", "rim");
    double rope = Math.hypot(1.6, 1.2) - 0.25;
    assertThat(Point.of(sweep.x(rim), sweep.y(rim)).distance(Point.of(-0.4, 1.5)))
        .isCloseTo(rope, within(1e-12));
  }

  @Test
  void whatItDoesNotHaveIsRefused() {
    Sweep sweep = press().sweep();

    assertThatThrownBy(() -> sweep.moveTo(0.7))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("from -0.4 to 0.6");
    assertThatThrownBy(() -> sweep.spot("lever", "knee"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("lever")
        .hasMessageContaining("name of a body");
    assertThatThrownBy(() -> sweep.spot("upper", "elbow")).isInstanceOf(ModelException.class);
    assertThatThrownBy(() -> sweep.slot("knee"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("one unknown");
  }

  /** A second strut beside the first leaves the split between them open. */
  @Test
  void forcesThatStaticsDoesNotFixAreNotTold() {
    Device twice = lid().strut("spare", End.of("top", "top"), End.of("ground", "hinge")).build();
    Sweep sweep = course(twice, Drive.length("rope"), -0.3, 0.3).sweep();
    Prepared.Slot rope = sweep.slot("rope.tension");
    sweep.moveTo(0.1);

    assertThat(sweep.gap()).isLessThan(1e-12);
    assertThat(sweep.tellsForces()).isFalse();
    assertThatThrownBy(() -> sweep.value(rope))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("tellsForces()");
  }
}
