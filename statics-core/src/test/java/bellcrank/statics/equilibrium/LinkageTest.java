package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Some linkages in some poses, the same in every run. */
class LinkageTest {

  static Stream<Arguments> linkages() {
    Linkage lever = new Linkage.Lever(1.3, 0.4, 2.2, Vector.of(-120, 160), Direction.from(1, -2));
    Linkage slider = new Linkage.SliderCrank(0.35, 1.1, Vector.of(20, -150));
    Linkage bars = new Linkage.FourBar(0.4, 1.5, 1.6, 1.7, Vector.of(-250, 100));
    return Stream.of(
        Arguments.of(lever, 0.3, 1.1),
        Arguments.of(lever, 2.0, -0.4),
        Arguments.of(slider, 0.5, 0.9),
        Arguments.of(slider, 4.0, 2.1),
        Arguments.of(bars, 1.0, 1.6),
        Arguments.of(bars, 2.5, 5.3));
  }

  @ParameterizedTest
  @MethodSource("linkages")
  void displacementsPosesAndPreparedAgree(Linkage linkage, double drawn, double angle) {
    VirtualWorkProperties.idealIsRatioOfDisplacements(linkage, angle);
    VirtualWorkProperties.poseIsDrawnThere(linkage, drawn, angle);
    VirtualWorkProperties.preparedAgrees(linkage, drawn, new double[] {angle, drawn, angle + 0.1});
  }

  @Test
  void theMotionInAPoseIsAboutThePlaceThere() {
    Linkage slider = new Linkage.SliderCrank(0.3, 0.5, Vector.of(0, -100));
    Balance posed = Balance.of(slider.at(0.2), LoadCase.ALL_LOADS, slider.pose(0.2, Math.PI / 2));
    Freedom freedom = posed.mobility().freedoms().get(0);
    // the knee stands straight up: it and the slider move the same way, the rod does not turn
    assertThat(freedom.motions()).hasSize(3);
    for (BodyMotion motion : freedom.motions()) {
      if (motion.body().equals("crank")) {
        assertThat(motion.centre().orElseThrow().distance(Point.ORIGIN)).isLessThan(1e-9);
        assertThat(Math.abs(motion.turning())).isGreaterThan(0.1);
      } else {
        assertThat(motion.turning()).as(motion.body()).isZero();
        assertThat(motion.centre()).isEmpty();
        assertThat(motion.velocity().y()).isCloseTo(0, within(1e-9));
      }
    }
  }

  @Test
  void springsFollowThePose() {
    Device device =
        Device.named("gate with a spring")
            .point("post", 0, 0)
            .point("head", 2, 0)
            .point("top", 0, 1)
            .member("gate", "post", "head")
            .clamp("post", "post", "gate", "ground")
            .load(new Spring("spring", End.of("gate", "head"), End.of("ground", "top"), 100, 0.5))
            .load(new TorsionSpring("coil", "gate", "ground", 20, 0.1))
            .build();
    Pose turned = Pose.of(Map.of("gate", Frame.turnAbout(Point.ORIGIN, Math.PI / 2)));
    Balance balance = Balance.of(device, LoadCase.ALL_LOADS, turned);
    // the head is 1 m above the spring's other end now
    assertThat(number(balance, "spring")).isCloseTo(50, within(1e-10));
    assertThat(number(balance, "spring.y")).isCloseTo(-50, within(1e-10));
    assertThat(number(balance, "coil")).isCloseTo(-20 * (0.1 + Math.PI / 2), within(1e-10));
    assertThat(number(balance, "post.couple")).isCloseTo(20 * (0.1 + Math.PI / 2), within(1e-9));
  }

  @Test
  void aSquareLoadTurnsWithItsMember() {
    Device device =
        Device.named("lid in the wind")
            .point("O", 1, 1)
            .point("P", 3, 1)
            .member("lid", "O", "P")
            .clamp("hinge", "O", "lid", "ground")
            .load(
                new SpreadLoad(
                    "wind", "lid", "O", "P", 10, 40, Optional.empty(), SpreadLoad.Per.LENGTH))
            .build();
    Pose turned = Pose.of(Map.of("lid", Frame.turnAbout(Point.of(1, 1), Math.PI / 2)));
    Balance balance = Balance.of(device, LoadCase.ALL_LOADS, turned);
    assertThat(number(balance, "wind.x")).as("to its left").isCloseTo(-50, within(1e-10));
    assertThat(number(balance, "wind.y")).isCloseTo(0, within(1e-10));
    // 10·2·1 + 30·2/2·(4/3)
    assertThat(number(balance, "wind.moment about O")).isCloseTo(60, within(1e-9));
    assertThat(number(balance, "hinge.couple")).isCloseTo(-60, within(1e-9));
  }
}
