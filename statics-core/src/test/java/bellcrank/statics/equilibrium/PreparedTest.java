package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Solving again without finding the order again. */
class PreparedTest {

  private static DeviceBuilder beam() {
    return Device.named("beam")
        .point("A", 0, 0)
        .point("M", 2, 0)
        .point("B", 4, 0)
        .point("T", 4, 3)
        .member("beam", "A", "M", "B")
        .force("load", "beam", "M", Vector.of(0, -100));
  }

  private static double value(Device device, String ask) {
    Prepared prepared = Prepared.of(device);
    Prepared.Buffer buffer = prepared.buffer();
    assertThat(buffer.solve(Pose.DRAWN, device.cases().get(0))).isTrue();
    double value = buffer.value(prepared.slot(ask));
    assertThat(value).isCloseTo(Si.number(device, ask), within(1e-10));
    return value;
  }

  @Test
  void slotsOfAPin() {
    Device device =
        beam()
            .pin("pin", "A", "beam", "ground")
            .roller("roller", "B", "beam", "ground", Direction.UP)
            .build();
    assertThat(value(device, "pin.y")).isCloseTo(50, within(1e-12));
    assertThat(value(device, "pin.y on ground")).isCloseTo(-50, within(1e-12));
    assertThat(value(device, "roller")).isCloseTo(50, within(1e-12));
    assertThat(value(device, "roller.normal")).isCloseTo(50, within(1e-12));
    assertThat(Prepared.of(device).largestBlock()).isEqualTo(1);
  }

  @Test
  void slotsOfAClampAndAGuide() {
    Device clamped = beam().clamp("clamp", "A", "beam", "ground").build();
    assertThat(value(clamped, "clamp.couple")).isCloseTo(200, within(1e-12));
    assertThat(value(clamped, "clamp.couple on ground")).isCloseTo(-200, within(1e-12));
    assertThat(value(clamped, "clamp.x")).isZero();
    Device guided =
        beam()
            .connect(new Guide("guide", "A", "beam", "ground", Direction.RIGHT))
            .roller("stop", "B", "beam", "ground", Direction.LEFT)
            .build();
    assertThat(value(guided, "guide.normal")).isCloseTo(100, within(1e-12));
    assertThat(value(guided, "guide.couple")).isCloseTo(200, within(1e-12));
  }

  @Test
  void slotsOfContactsAndBases() {
    Device device =
        beam()
            .connect(new Contact("toe", "A", "beam", "ground", Direction.UP, 0.4, 0.3))
            .connect(new Contact("smooth", "B", "beam", "ground", Direction.UP, 0, 0))
            .build();
    assertThat(value(device, "toe.normal")).isCloseTo(50, within(1e-12));
    assertThat(value(device, "toe.friction")).isZero();
    assertThat(value(device, "smooth")).isCloseTo(50, within(1e-12));
    assertThatThrownBy(() -> Prepared.of(device).slot("smooth.friction"))
        .isInstanceOf(ModelException.class);
    Device base =
        beam()
            .connect(new ContactBase("base", "A", "beam", "ground", Direction.UP, 0.5, 0.4, 0.4))
            .build();
    assertThat(value(base, "base.couple")).isCloseTo(200, within(1e-12));
    assertThat(value(base, "base.friction")).isZero();
  }

  @Test
  void slotsOfRopes() {
    Device device =
        beam()
            .pin("pin", "A", "beam", "ground")
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("beam", "B"),
                        Stop.sheave("ground", "T", 0, Turn.CLOCKWISE),
                        Stop.end("beam", "M")),
                    0.9,
                    Reeving.Hauling.RAISING))
            .build();
    assertThat(value(device, "rope.end tension"))
        .isCloseTo(0.9 * value(device, "rope.tension"), within(1e-12));
    assertThat(value(device, "rope")).isPositive();
    Device stayed =
        beam()
            .pin("pin", "A", "beam", "ground")
            .strut("stay", End.of("beam", "B"), End.of("ground", "T"))
            .build();
    assertThat(value(stayed, "stay.tension")).isCloseTo(50, within(1e-12));
    assertThat(value(stayed, "stay.compression")).isCloseTo(-50, within(1e-12));
    assertThat(value(stayed, "stay")).isCloseTo(50, within(1e-12));
  }

  @Test
  void slotsOfAWrapAndASlot() {
    Device device =
        beam()
            .point("H", 2, 3)
            .member("post", "H", "T")
            .clamp("rail", "T", "post", "ground")
            .connect(new Slot("slot", "A", "beam", "ground", Direction.RIGHT, Sides.TWO))
            .connect(
                new Wrap(
                    "wrap",
                    Stop.end("beam", "M"),
                    new Stop(Stop.Kind.POST, "post", "H", 0.2, Turn.CLOCKWISE),
                    Stop.end("beam", "B"),
                    0.3,
                    0))
            .build();
    assertThat(value(device, "slot.normal")).isFinite();
    assertThat(value(device, "slot")).isFinite();
    assertThat(value(device, "wrap.end tension")).isFinite();
    assertThat(value(device, "wrap.tension")).isFinite();
  }

  @Test
  void slotsOfSoughtQuantities() {
    DeviceBuilder hinged = beam().pin("pin", "A", "beam", "ground");
    Device mass =
        hinged
            .load(new Sought("stone", Sought.Want.MASS, "beam", Optional.of("B"), Optional.empty()))
            .build();
    assertThat(value(mass, "stone.mass")).isCloseTo(-50 / 9.80665, within(1e-12));
    assertThat(value(mass, "stone")).isCloseTo(-50 / 9.80665, within(1e-12));
    Device couple =
        beam()
            .pin("pin", "A", "beam", "ground")
            .load(
                new Sought("twist", Sought.Want.COUPLE, "beam", Optional.empty(), Optional.empty()))
            .build();
    assertThat(value(couple, "twist")).isCloseTo(200, within(1e-12));
    Device components =
        beam()
            .load(
                new Sought(
                    "hand", Sought.Want.COMPONENTS, "beam", Optional.of("A"), Optional.empty()))
            .load(
                new Sought("twist", Sought.Want.COUPLE, "beam", Optional.empty(), Optional.empty()))
            .build();
    assertThat(value(components, "hand.x")).isZero();
    assertThat(value(components, "hand.y")).isCloseTo(100, within(1e-12));
    for (String ask : List.of("hand", "hand.size", "twist.moment about A")) {
      assertThatThrownBy(() -> Prepared.of(components).slot(ask))
          .as(ask)
          .isInstanceOf(ModelException.class)
          .hasMessageContaining("an ask for one unknown");
    }
  }

  @Test
  void slotsOfAPinThatIsAJoint() {
    Device device =
        Device.named("two props")
            .point("L", -3, 0)
            .point("R", 3, 0)
            .point("H", 0, 4)
            .member("left", "L", "H")
            .member("right", "R", "H")
            .pin("l", "L", "left", "ground")
            .pin("r", "R", "right", "ground")
            .pin("head", "H", "left", "right")
            .force("load", "head", "H", Vector.of(0, -80))
            .build();
    assertThat(value(device, "head.x on left")).isCloseTo(-30, within(1e-10));
    assertThat(value(device, "head.x on right")).isCloseTo(30, within(1e-10));
    assertThat(value(device, "head.y")).isCloseTo(-40, within(1e-10));
  }

  @Test
  void whatIsNoSingleUnknownIsRefused() {
    Device device =
        beam()
            .pin("pin", "A", "beam", "ground")
            .roller("roller", "B", "beam", "ground", Direction.UP)
            .count("roller", 2)
            .build();
    Prepared prepared = Prepared.of(device);
    for (String ask :
        List.of(
            "pin",
            "pin.size",
            "pin.moment about B",
            "roller.x",
            "roller each",
            "load.size",
            "group(beam).x",
            "outcome")) {
      assertThatThrownBy(() -> prepared.slot(ask)).as(ask).isInstanceOf(ModelException.class);
    }
  }

  @Test
  void tooFewOrTooManyRestraintsAreNeverSolved() {
    Device loose = beam().pin("pin", "A", "beam", "ground").build();
    assertThat(Prepared.of(loose).isDeterminate()).isFalse();
    assertThat(Prepared.of(loose).buffer().solve(Pose.DRAWN, LoadCase.ALL_LOADS)).isFalse();
    Device tight =
        beam()
            .clamp("clamp", "A", "beam", "ground")
            .roller("roller", "B", "beam", "ground", Direction.UP)
            .build();
    assertThat(Prepared.of(tight).isDeterminate()).isFalse();
    assertThat(Prepared.of(tight).buffer().solve(Pose.DRAWN, LoadCase.ALL_LOADS)).isFalse();
  }

  @Test
  void aDeadCentreOnTheWayIsNotSolvedButTheNextPoseIs() {
    Device device =
        Device.named("lever against a wall")
            .point("O", 0, 0)
            .point("P", 1, 0)
            .member("lever", "O", "P")
            .pin("hinge", "O", "lever", "ground")
            .sought("hand", "lever", "P", Direction.UP)
            .force("load", "lever", "P", Vector.of(3, -5))
            .build();
    Prepared prepared = Prepared.of(device);
    Prepared.Buffer buffer = prepared.buffer();
    Pose up = Pose.of(Map.of("lever", Frame.turnAbout(Point.ORIGIN, Math.PI / 2)));
    if (buffer.solve(up, LoadCase.ALL_LOADS)) {
      // in doubles the arm is 6e-17, not zero: the answer is then as large as that says
      assertThat(Math.abs(buffer.value(prepared.slot("hand")))).isGreaterThan(1e15);
    }
    Pose half = Pose.of(Map.of("lever", Frame.turnAbout(Point.ORIGIN, Math.PI / 4)));
    assertThat(buffer.solve(half, LoadCase.ALL_LOADS)).isTrue();
    assertThat(buffer.value(prepared.slot("hand"))).isCloseTo(8, within(1e-12));
    assertThat(buffer.residual()).isLessThan(1e-15);
  }

  @Test
  void withoutLoadsEverythingIsZero() {
    Device device = beam().clamp("clamp", "A", "beam", "ground").build();
    Prepared prepared = Prepared.of(device);
    Prepared.Buffer buffer = prepared.buffer();
    assertThat(buffer.solve(Pose.DRAWN, new LoadCase("calm", Map.of("load", 0.0), 1))).isTrue();
    assertThat(buffer.value(prepared.slot("clamp.couple"))).isZero();
    assertThat(buffer.residual()).isZero();
  }

  /** A smooth base has no unknown for friction: the one after the normal force is its couple. */
  @Test
  void frictionOfASmoothBaseIsNoUnknown() {
    Device device =
        beam()
            .connect(new ContactBase("foot", "M", "beam", "ground", Direction.UP, 1, 0, 0))
            .build();

    assertThat(Prepared.slot(device, Ask.parse("foot.friction"))).isEmpty();
    assertThat(Prepared.slot(device, Ask.parse("foot.normal"))).isPresent();
  }

  /** A slide that has moved pushes beside the place that its guide had on the ground. */
  @Test
  void coupleOfAGuideIsTheUnknownOnTheBodyThatSlidesOnly() {
    Device device =
        beam().connect(new Guide("slide", "M", "beam", "ground", Direction.RIGHT)).build();

    assertThat(Prepared.slot(device, Ask.parse("slide.couple"))).isPresent();
    assertThat(Prepared.slot(device, Ask.parse("slide.couple on ground"))).isEmpty();
  }
}
