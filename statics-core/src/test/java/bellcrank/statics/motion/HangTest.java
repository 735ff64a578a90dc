package bellcrank.statics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** How a picking ladder hangs, and where it is carried. */
class HangTest {

  /** Two rails of unlike mass, hinged at the top; centre of gravity at (0.4, 0.5). */
  private static DeviceBuilder ladder() {
    return Device.named("picking ladder")
        .point("top", 0, 2)
        .point("front", -1, 0)
        .point("back", 1, 0)
        .point("low", -0.2, 0.5)
        .point("high", 0.6, 0.5)
        .member("front rail", "top", "front")
        .member("back rail", "top", "back")
        .pin("hinge", "top", "front rail", "back rail")
        .weight("front weight", "front rail", "low", 2)
        .weight("back weight", "back rail", "high", 6);
  }

  @Test
  void itTurnsUntilItsCentreIsUnderThePoint() {
    Hang.Turned hang = (Hang.Turned) Hang.of(ladder().build(), "top");
    // from the top the centre is 0.4 to the right and 1.5 down: it swings to the left, clockwise
    assertThat(hang.stable()).isCloseTo(-Math.atan2(0.4, 1.5), within(1e-14));
    assertThat(hang.unstable()).isCloseTo(Math.PI - Math.atan2(0.4, 1.5), within(1e-14));
    assertThat(hang.arm()).isCloseTo(Math.hypot(0.4, 1.5), within(1e-14));
  }

  @Test
  void onlyTheBodiesThatAreNamedHang() {
    Hang hang = Hang.of(ladder().build(), Pose.DRAWN, List.of("front rail"), Point.of(0, 2));
    assertThat(((Hang.Turned) hang).stable()).isCloseTo(Math.atan2(0.2, 1.5), within(1e-14));
  }

  @Test
  void carriedAtItsCentreItHangsAnyhow() {
    Device device = ladder().point("centre", 0.4, 0.5).build();
    assertThat(Hang.of(device, "centre")).isEqualTo(new Hang.Anyhow());
  }

  @Test
  void plumbOverThePointItTurnsHalfRound() {
    Device device = ladder().point("below", 0.4, -1).build();
    Hang.Turned hang = (Hang.Turned) Hang.of(device, "below");
    assertThat(hang.stable()).isCloseTo(Math.PI, within(1e-14));
    assertThat(hang.unstable()).isCloseTo(0, within(1e-14));
  }

  @Property
  void theTurnBringsTheCentreUnderThePoint(
      @ForAll @DoubleRange(min = -5, max = 5) @Scale(9) double x,
      @ForAll @DoubleRange(min = -5, max = 5) @Scale(9) double y,
      @ForAll @DoubleRange(min = -3.1, max = 3.1) @Scale(9) double lean,
      @ForAll @DoubleRange(min = -3, max = 3) @Scale(9) double turned) {
    Direction down = Direction.ofAngle(lean);
    Device device = ladder().gravity(down.times(9.8)).build();
    Frame frame = Frame.of(Vector.of(0.3, -0.7), turned);
    Pose pose = Pose.DRAWN.with("front rail", frame).with("back rail", frame);
    Point from = Point.of(x, y);
    Hang.Turned hang = (Hang.Turned) Hang.of(device, pose, List.of(), from);
    Point centre = frame.apply(Point.of(0.4, 0.5));
    Point below = Frame.turnAbout(from, hang.stable()).apply(centre);
    assertThat(from.to(below).minus(down.times(hang.arm())).norm()).isLessThan(1e-13);
    Point above = Frame.turnAbout(from, hang.unstable()).apply(centre);
    assertThat(from.to(above).plus(down.times(hang.arm())).norm()).isLessThan(1e-13);
    assertThat(hang.stable()).isBetween(-Math.PI, Math.PI);
    assertThat(hang.unstable()).isBetween(-Math.PI, Math.PI);
  }

  @Test
  void theHandleIsPlumbOverTheCentre() {
    BalancePoint point = BalancePoint.on(ladder().build(), "top", "back").orElseThrow();
    assertThat(point.place().x()).isCloseTo(0.4, within(1e-14));
    assertThat(point.place().y()).isCloseTo(1.2, within(1e-14));
    assertThat(point.distance()).isCloseTo(Math.hypot(0.4, 0.8), within(1e-14));
    assertThat(point.between()).isTrue();
    assertThat(point.hangs()).isTrue();
  }

  @Test
  void belowTheCentreItWouldTurnOver() {
    BalancePoint point = BalancePoint.on(ladder().build(), "back", "front").orElseThrow();
    assertThat(point.distance()).isCloseTo(0.6, within(1e-14));
    assertThat(point.hangs()).isFalse();
  }

  @Test
  void itMayLieBeyondThePoints() {
    BalancePoint point = BalancePoint.on(ladder().build(), "top", "front").orElseThrow();
    assertThat(point.distance()).isCloseTo(-Math.hypot(0.4, 0.8), within(1e-14));
    assertThat(point.between()).isFalse();
  }

  @Test
  void aPlumbLineHasNoHandle() {
    Device device = ladder().point("foot", 0, 0).build();
    assertThat(BalancePoint.on(device, "top", "foot")).isEqualTo(Optional.empty());
  }

  @Property
  void hungFromItsBalancePointItStaysAsItIs(
      @ForAll @DoubleRange(min = -3, max = 3) @Scale(9) double lean,
      @ForAll @DoubleRange(min = 0.05, max = 3.0) @Scale(9) double slant) {
    Direction down = Direction.ofAngle(lean);
    Device device = ladder().gravity(down.times(9.8)).build();
    Point start = Point.of(3, -2);
    Point end = start.plus(Direction.ofAngle(lean + slant).times(2));
    BalancePoint point = BalancePoint.on(device, Pose.DRAWN, List.of(), start, end).orElseThrow();
    if (Hang.of(device, Pose.DRAWN, List.of(), point.place()) instanceof Hang.Turned hang) {
      double turn = point.hangs() ? hang.stable() : hang.unstable();
      assertThat(turn * hang.arm()).isCloseTo(0, within(1e-11));
    }
  }

  @Test
  void mistakesAreTold() {
    assertThatThrownBy(() -> BalancePoint.on(ladder().build(), "top", "top"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("two points apart");
    assertThatThrownBy(() -> Hang.of(ladder().gravity(Vector.ZERO).build(), "top"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("gravity");
    Device light =
        Device.named("light stick")
            .point("A", 0, 0)
            .point("B", 1, 0)
            .member("stick", "A", "B")
            .build();
    assertThatThrownBy(() -> Hang.of(light, "A"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("weight");
    assertThatThrownBy(() -> Hang.of(ladder().build(), Pose.DRAWN, List.of("rung"), Point.ORIGIN))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("rung");
  }
}
