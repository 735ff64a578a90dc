package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Sides;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Spring;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.TorsionSpring;
import bellcrank.statics.device.Turn;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Frame;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pictures of whole devices. */
final class DeviceDrawingTest {

  /** Every kind of connection, on the ground and between members. */
  private static Device everyKind() {
    return Device.named("every kind")
        .point("a", 0, 0)
        .point("b", 2, 0)
        .point("c", 4, 1)
        .point("d", 2, 2)
        .point("e", 0, 2)
        .point("f", 1, 3)
        .member("low", "a", "b")
        .member("high", "e", "d")
        .member(new Member("block", List.of("c", "b", "d"), List.of(), List.of("b", "c", "d"), 1))
        .joint("f")
        .pin("pin", "a", "low", "ground")
        .pin("hinge", "b", "low", "block")
        .clamp("clamp", "e", "high", "ground")
        .clamp("splice", "d", "high", "block")
        .roller("wheels", "b", "low", "ground", Direction.UP)
        .connect(new Roller("wheel", "c", "block", "ground", Direction.LEFT, Sides.ONE))
        .connect(new Roller("roll", "d", "high", "block", Direction.UP, Sides.ONE))
        .connect(new Slot("slot", "b", "low", "high", Direction.RIGHT, Sides.TWO))
        .connect(new Slot("groove", "a", "low", "ground", Direction.ofAngle(1), Sides.TWO))
        .connect(new Guide("guide", "e", "high", "ground", Direction.UP))
        .connect(new Guide("bush", "d", "high", "block", Direction.UP))
        .connect(new Contact("touch", "c", "block", "ground", Direction.UP, 0.3, 0.3))
        .connect(new Contact("rub", "d", "high", "block", Direction.UP, 0.3, 0.3))
        .connect(new ContactBase("foot", "a", "low", "ground", Direction.UP, 0.5, 0.3, 0.3))
        .connect(new ContactBase("seat", "d", "high", "block", Direction.UP, 0.5, 0.3, 0.3))
        .strut("strut", End.of("low", "a"), End.of("ground", "f"))
        .connect(new Line("line", End.of("high", "d"), End.of("ground", "f")))
        .connect(new Screw("screw", End.of("low", "b"), End.of("ground", "f"), 0.01, 0.01, 0.1))
        .connect(
            new Reeving(
                "rope",
                List.of(
                    Stop.drum("low", "b", 0.2, Turn.CLOCKWISE),
                    Stop.sheave("ground", "f", 0.15, Turn.CLOCKWISE),
                    Stop.end("ground", "c")),
                1,
                Reeving.Hauling.IDEAL))
        .connect(
            new Wrap(
                "wrap",
                Stop.end("f", "f"),
                new Stop(Stop.Kind.POST, "ground", "d", 0.2, Turn.CLOCKWISE),
                Stop.end("ground", "b"),
                0.3,
                0))
        .load(new Spring("spring", End.of("low", "a"), End.of("ground", "e"), 10, 1))
        .load(new TorsionSpring("coil", "high", "ground", 3, 0.1))
        .load(new Couple("twist", "low", 4))
        .load(new Sought("wring", Sought.Want.COUPLE, "high", Optional.empty(), Optional.empty()))
        .sought("pull", "low", "b", Direction.UP)
        .weight("stone", "block", "c", 5)
        .force("push", "f", "f", Vector.of(3, 0))
        .build();
  }

  @Test
  void everyConnectionIsDrawnAndNamed() {
    Device device = everyKind();
    Picture picture = Picture.of(DeviceDrawing.of(device).svg()).isWellMade().isToScale();
    device
        .connections()
        .forEach(connection -> assertThat(picture.texts()).contains(connection.name()));
    assertThat(picture.texts()).contains("spring", "coil", "twist", "stone", "low", "f");
    assertThat(picture.forces())
        .extracting(Picture.Shown::name)
        .containsExactlyInAnyOrder("stone", "push");
    assertThat(picture.open()).containsExactlyInAnyOrder("pull", "wring");
    assertThat(picture.text("desc")).contains("rope, a reeving, joins low, ground, ground.");
  }

  @Test
  void otherPosesAreGhostsAndPointsLeavePaths() {
    Device press = Yard.press();
    List<Pose> poses =
        List.of(
            Pose.DRAWN.with("lever", Frame.turnAbout(Point.ORIGIN, 0.1)),
            Pose.DRAWN.with("lever", Frame.turnAbout(Point.ORIGIN, 0.2)),
            Pose.DRAWN.with("lever", Frame.turnAbout(Point.ORIGIN, 0.3)));
    Picture picture =
        Picture.of(DeviceDrawing.of(press).withPoses(poses).withPathOf("lever", "grip").svg())
            .isWellMade();
    assertThat(classes(picture, "ghost")).isEqualTo(3 * 2);
    assertThat(classes(picture, "path-of")).isEqualTo(1);
    Picture plain = Picture.of(DeviceDrawing.of(press).withPathOf("lever", "grip").svg());
    assertThat(classes(plain, "ghost") + classes(plain, "path-of")).isZero();
  }

  private static long classes(Picture picture, String css) {
    return picture.all("path").stream()
        .filter(path -> path.getAttribute("class").equals(css))
        .count();
  }

  @Test
  void ghostsOfPlatesAreOutlines() {
    Device crate =
        Device.named("crate")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .point("c", 1, 1)
            .point("d", 0.5, 0.4)
            .member(new Member("crate", List.of("a", "b", "c", "d"), List.of(), List.of(), 1))
            .pin("a", "a", "crate", "ground")
            .build();
    Pose pose = Pose.DRAWN.with("crate", Frame.turnAbout(Point.ORIGIN, 0.5));
    Picture picture = Picture.of(DeviceDrawing.of(crate).withPoses(List.of(pose)).svg());
    assertThat(classes(picture.isWellMade(), "ghost")).isEqualTo(1);
  }

  @Test
  void mistakesAreRefused() {
    DeviceDrawing drawing = DeviceDrawing.of(Yard.press());
    assertThatThrownBy(() -> drawing.withPathOf("jib", "grip"))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("lever");
    assertThatThrownBy(() -> drawing.withPathOf("lever", "nose"))
        .isInstanceOf(ModelException.class);
    List<Measurement> far = List.of(new Measurement.Distance("hinge", "x", Measurement.Way.LEVEL));
    assertThatThrownBy(() -> drawing.with(DrawingOptions.USUAL.withMeasurements(far)))
        .isInstanceOf(ModelException.class);
  }

  @Test
  void wantedMeasurementsAreDrawn() {
    List<Measurement> wanted =
        List.of(new Measurement.Distance("hinge", "ram", Measurement.Way.LEVEL));
    Picture picture =
        Picture.of(
                DeviceDrawing.of(Yard.press())
                    .with(DrawingOptions.USUAL.withMeasurements(wanted))
                    .svg())
            .isWellMade();
    assertThat(picture.texts()).contains("0.25 m").doesNotContain("0.1 m");
  }
}
