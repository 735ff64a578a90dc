package bellcrank.statics.equilibrium;

import static bellcrank.statics.equilibrium.Si.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Places of points and lengths of parts, which a pose gives whether or not there is balance. */
class PlaceAnswersTest {

  private static final double CLOSE = 1e-12;

  /** A boom of 5 m on a pin at its heel, held by a stay; nothing loads it. */
  private static Device boom() {
    return Device.named("boom")
        .point("heel", 0, 0)
        .point("tip", 4, 3)
        .point("mast", 0, 6)
        .point("mark", 2, 1)
        .member("boom", "heel", "tip")
        .member("peg", "tip")
        .pin("heel", "heel", "boom", "ground")
        .pin("head", "tip", "boom", "peg")
        .line("stay", End.of("boom", "tip"), End.of("ground", "mast"))
        .strut("prop", End.of("ground", "heel"), End.of("boom", "tip"))
        .connect(new Screw("jack", End.of("ground", "mark"), End.of("boom", "tip"), 0.01, 0.02, 0))
        .force("load", "peg", "tip", Vector.of(7, 0))
        .build();
  }

  private static Balance turned(double angle) {
    Frame frame = Frame.turnAbout(Point.ORIGIN, angle);
    return Balance.of(boom(), LoadCase.ALL_LOADS, Pose.DRAWN.with("boom", frame));
  }

  @Test
  void aPointIsWhereItsBodyIs() {
    Balance up = turned(Math.PI / 2);
    assertThat(number(up, "point(tip).x on boom")).isCloseTo(-3, within(CLOSE));
    assertThat(number(up, "point(tip).y on boom")).isCloseTo(4, within(CLOSE));
    assertThat(number(up, "point(tip).x on peg")).isEqualTo(4);
    assertThat(number(up, "point(tip).x on ground")).isEqualTo(4);
    assertThat(number(up, "point(heel).y")).isZero();
    assertThat(number(up, "point(mast).y")).isEqualTo(6);
  }

  @Test
  void theBodiesOfAPointAreThoseThatNameOrTouchIt() {
    assertThat(boom().bodiesAt("tip")).containsExactly("boom", "peg");
    assertThat(boom().bodiesAt("heel")).containsExactly("boom");
    assertThat(boom().bodiesAt("mark")).isEmpty();
  }

  @Test
  void straightPartsAreAsLongAsTheirEndsAreApart() {
    Balance drawn = Balance.of(boom());
    assertThat(number(drawn, "stay.length")).isCloseTo(5, within(CLOSE));
    assertThat(number(drawn, "prop.length")).isCloseTo(5, within(CLOSE));
    assertThat(number(drawn, "jack.length")).isCloseTo(Math.sqrt(8), within(CLOSE));
    // the tip is at (-3, 4) now
    assertThat(number(turned(Math.PI / 2), "stay.length")).isCloseTo(Math.sqrt(13), within(CLOSE));
  }

  private static Device hoist() {
    return Device.named("hoist")
        .point("left", -0.1, 0)
        .point("top", 0, 3)
        .point("right", 0.1, 1)
        .member("tub", "right")
        .connect(
            new Reeving(
                "rope",
                List.of(
                    Stop.end("ground", "left"),
                    Stop.sheave("ground", "top", 0.1, Turn.CLOCKWISE),
                    Stop.end("tub", "right")),
                1,
                Reeving.Hauling.IDEAL))
        .build();
  }

  @Test
  void aRopeCountsItsStraightPartsAndItsArcs() {
    // 3 m up, half round the sheave, 2 m down
    assertThat(number(hoist(), "rope.length")).isCloseTo(5 + 0.1 * Math.PI, within(CLOSE));
  }

  @Test
  void anArcGrowsWithTheTurnOfTheRope() {
    // the tub swung inward by a quarter: 3 m up, three quarters round, 2 m to the left
    Frame quarter = Frame.turnAbout(Point.of(0, 3), -Math.PI / 2);
    Balance swung = Balance.of(hoist(), LoadCase.ALL_LOADS, Pose.DRAWN.with("tub", quarter));
    assertThat(number(swung, "rope.length")).isCloseTo(5 + 0.15 * Math.PI, within(CLOSE));
  }
}
