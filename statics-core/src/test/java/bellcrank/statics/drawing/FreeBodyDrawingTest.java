package bellcrank.statics.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Couple;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.device.Stop;
import bellcrank.statics.device.Turn;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pictures of free bodies, read back from their text. */
final class FreeBodyDrawingTest {

  private static Picture picture(Device device, DrawingOptions options) {
    return Picture.of(FreeBodyDrawing.of(Balance.of(device)).with(options).svg()).isWellMade();
  }

  private static Picture picture(Device device) {
    return picture(device, DrawingOptions.USUAL);
  }

  @Test
  void everyForceIsDrawnOnceAndToScale() {
    Picture picture = picture(Yard.press()).isToScale();
    assertThat(picture.forces())
        .extracting(Picture.Shown::name)
        .containsExactlyInAnyOrder("hand", "ram", "hinge");
    assertThat(picture.texts()).contains("hand", "220.0 N", "ram", "1408 N", "hinge", "1188 N");
    assertThat(picture.attribute("data-scale")).isEqualTo("linear");
    // the bar shows a round force
    assertThat(picture.number("data-bar-force")).isEqualTo(1000);
    assertThat(picture.texts()).contains("1000 N");
  }

  @Test
  void aLogarithmicScaleIsStatedAndKept() {
    Picture picture =
        picture(Yard.press(), DrawingOptions.USUAL.withArrows(ArrowScale.LOGARITHMIC)).isToScale();
    assertThat(picture.attribute("data-scale")).isEqualTo("logarithmic");
    assertThat(picture.number("data-least-force")).isCloseTo(220, within(1e-9));
    assertThat(picture.texts()).contains("arrow length 30 + 66 · log10(force / 220.0 N)");
  }

  @Test
  void componentsStandForWholeForces() {
    Picture picture = picture(Yard.tongs(), DrawingOptions.USUAL.withComponents()).isToScale();
    assertThat(picture.forces())
        .extracting(Picture.Shown::name)
        .containsExactlyInAnyOrder("push", "left.x", "left.y", "right.x", "right.y");
    assertThat(picture(Yard.ladder(), DrawingOptions.USUAL.withComponents()).forces())
        .extracting(Picture.Shown::name)
        .containsExactlyInAnyOrder("picker", "floor.normal", "floor.friction", "boards");
  }

  @Test
  void threeForcesMeet() {
    Picture picture = picture(Yard.jib());
    assertThat(picture.texts()).contains("lines meet");
    assertThat(picture.text("desc")).contains("their lines meet in one point");
  }

  @Test
  void descriptionsTellEachForceWithItsWay() {
    String words = picture(Yard.jib()).text("desc");
    assertThat(words)
        .startsWith("What acts on the whole device, case all loads: in balance.")
        .contains("barrel on jib at tip: 600.0 N down.")
        .contains("stay on jib at tip: 1000 N left and up at 36.87° to the level.")
        .contains("heel on jib at heel: 800.0 N right.");
    assertThat(picture(Yard.jib()).text("title")).isEqualTo("wall jib: free from the ground");
  }

  @Test
  void aForceOfZeroIsToldAndNotDrawn() {
    Device idle =
        Device.named("idle")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .member("beam", "a", "b")
            .pin("a", "a", "beam", "ground")
            .roller("b", "b", "beam", "ground", Direction.UP)
            .force("load", "beam", "a", Vector.of(0, -10))
            .build();
    Picture picture = picture(idle);
    assertThat(picture.forces())
        .extracting(Picture.Shown::name)
        .containsExactlyInAnyOrder("load", "a");
    assertThat(picture.text("desc")).contains("b on beam at b: zero.");
  }

  @Test
  void aDeviceWithoutLoadsIsDrawn() {
    Device bare =
        Device.named("bare")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .member("beam", "a", "b")
            .clamp("wall", "a", "beam", "ground")
            .build();
    Picture picture = picture(bare);
    assertThat(picture.forces()).isEmpty();
    assertThat(picture.text("desc")).contains("wall on beam at a: zero.");
    Device loose = Device.named("loose").point("a", 0, 0).member("stone", "a").build();
    assertThat(picture(loose).text("desc")).contains("Nothing acts on it.");
  }

  @Test
  void forcesThatStaticsDoesNotFixAreDashedWithAQuestionMark() {
    Picture picture = picture(Yard.bench());
    assertThat(picture.open()).containsExactlyInAnyOrder("a.y", "b", "c");
    assertThat(picture.texts()).contains("?", "size not known: statics alone does not fix it");
    assertThat(picture.text("desc")).contains("b on plank at b: not known.");
  }

  @Test
  void withoutBalanceLoadsAndMotionAreDrawn() {
    Device falling =
        Device.named("falling")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .member("flap", "a", "b")
            .pin("a", "a", "flap", "ground")
            .force("push", "flap", "b", Vector.of(0, -10))
            .build();
    Picture picture = picture(falling);
    assertThat(picture.forces()).extracting(Picture.Shown::name).containsExactly("push");
    assertThat(picture.all("g")).anyMatch(group -> group.getAttribute("class").equals("motion"));
    assertThat(picture.text("desc"))
        .contains("no balance")
        .contains("It starts to move: flap turns clockwise about a.");
  }

  @Test
  void couplesAndSpreadLoadsCarryTheirNumbers() {
    Device beam =
        Device.named("beam")
            .point("wall", 0, 0)
            .point("end", 2, 0)
            .member("beam", "wall", "end")
            .clamp("wall", "wall", "beam", "ground")
            .load(
                new SpreadLoad(
                    "snow",
                    "beam",
                    "wall",
                    "end",
                    -100,
                    -40,
                    Optional.empty(),
                    SpreadLoad.Per.LENGTH))
            .load(new Couple("twist", "beam", -7))
            .build();
    Picture picture = picture(beam).isToScale();
    // 140 N about the wall: 100 · 2 · 1 − (60 · 2 / 2) · 4/3 = 120 N·m less the twist
    assertThat(picture.couples()).hasSize(2).contains(-7.0);
    assertThat(picture.texts())
        .contains("100.0 N/m to 40.00 N/m", "7.000 N·m", "127.0 N·m", "140.0 N");
  }

  @Test
  void theArmOfAMomentIsDroppedOnTheLine() {
    Picture picture = picture(Yard.jib(), DrawingOptions.USUAL.withArm("stay", "heel"));
    assertThat(picture.texts()).contains("1.2 m");
    assertThat(picture.text("desc")).contains("Moment arm of stay about heel: 1.2 m.");
    assertThat(picture.all("path"))
        .anyMatch(path -> path.getAttribute("class").equals("measure arm"));
  }

  @Test
  void wantedMeasurementsStandForChosenOnes() {
    List<Measurement> wanted =
        List.of(
            new Measurement.Distance("heel", "tip", Measurement.Way.STRAIGHT),
            new Measurement.Distance("tip", "eye", Measurement.Way.LEVEL),
            new Measurement.Distance("eye", "heel", Measurement.Way.UPRIGHT),
            new Measurement.Angle("tip", "heel", "eye"));
    Picture picture = picture(Yard.jib(), DrawingOptions.USUAL.withMeasurements(wanted));
    assertThat(picture.texts()).contains("2 m", "1.5 m", "36.87°");
    assertThat(picture(Yard.jib(), DrawingOptions.USUAL.withMeasurements(List.of())).texts())
        .doesNotContain("2 m");
  }

  /** The rope runs along the jib, over a sheave; its arrow is moved aside. */
  @Test
  void theSlopeOfAnArrowThatIsMovedAsideIsThatOfItsForce() {
    Device loft =
        Device.named("loft jib")
            .point("heel", 0, 2)
            .point("tip", 1.6, 3.2) // 3 in 4
            .point("ring", 0, 3.2)
            .point("winch", 0.02, 2.14)
            .point("crate", 1.7, 1)
            .member("jib", "heel", "tip")
            .joint("crate")
            .pin("heel", "heel", "jib", "ground")
            .line("tie", End.of("jib", "tip"), End.of("ground", "ring"))
            .connect(
                new Reeving(
                    "rope",
                    List.of(
                        Stop.end("ground", "winch"),
                        Stop.sheave("jib", "tip", 0.1, Turn.CLOCKWISE),
                        Stop.end("crate", "crate")),
                    1,
                    Reeving.Hauling.IDEAL))
            .force("goods", "crate", "crate", Vector.of(0, -540))
            .build();
    FreeBodyDrawing jib = FreeBodyDrawing.of(Balance.of(loft), List.of("jib"));
    assertThat(Picture.of(jib.svg()).isWellMade().texts())
        .filteredOn(text -> text.endsWith("°"))
        .containsExactly("36.87°", "36.87°");
  }

  @Test
  void optionsThatDoNotFitAreRefused() {
    FreeBodyDrawing drawing = FreeBodyDrawing.of(Balance.of(Yard.jib()));
    assertThatThrownBy(() -> drawing.with(DrawingOptions.USUAL.withArm("wind", "heel")))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("barrel, heel, stay");
    assertThatThrownBy(() -> drawing.with(DrawingOptions.USUAL.withArm("stay", "nose")))
        .isInstanceOf(ModelException.class);
    List<Measurement> far = List.of(new Measurement.Distance("heel", "x", Measurement.Way.LEVEL));
    assertThatThrownBy(() -> drawing.with(DrawingOptions.USUAL.withMeasurements(far)))
        .isInstanceOf(ModelException.class);
    List<Measurement> flat = List.of(new Measurement.Angle("heel", "heel", "tip"));
    assertThatThrownBy(() -> drawing.with(DrawingOptions.USUAL.withMeasurements(flat)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("three points at different places");
  }

  @Test
  void namesOfAnyKindAreWrittenAsTheyAre() {
    String long80 = "x".repeat(80);
    String hebrew = "\u05DE\u05E0\u05D5\u05E3 & <lever>";
    Device odd =
        Device.named("<press> & 'lid' ]]> \uD83C\uDF4E")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .member(hebrew, "a", "b")
            .pin("\u0645\u062D\u0648\u0631", "a", hebrew, "ground")
            .force("a < b & c", hebrew, "b", Vector.of(0, -5))
            .sought(long80, hebrew, "b", Direction.ofAngle(2))
            .build();
    Picture picture = picture(odd);
    assertThat(picture.text("title"))
        .isEqualTo("<press> & 'lid' ]]> \uD83C\uDF4E: free from the ground");
    assertThat(picture.forces())
        .extracting(Picture.Shown::name)
        .containsExactlyInAnyOrder("\u0645\u062D\u0648\u0631", "a < b & c", long80);
    assertThat(picture.texts()).contains(hebrew, "a < b & c", "x".repeat(24), "x".repeat(8));
  }

  @Test
  void flatTallTinyHugeAndCoincidentDevicesAreDrawn() {
    double[][] ends = {{1e4, 1e-3}, {1e-3, 1e4}, {1e-6, 0}, {1e8, 1e8}, {0, 0}, {0, -3}};
    for (double[] end : ends) {
      Device beam =
          Device.named("beam")
              .point("a", 0, 0)
              .point("b", end[0], end[1])
              .member(
                  new bellcrank.statics.device.Member(
                      "beam", List.of("a", "b"), List.of(), List.of(), 1))
              .clamp("wall", "a", "beam", "ground")
              .force("load", "beam", "b", Vector.of(3, -4))
              .force("more", "beam", "b", Vector.of(3, -4))
              .build();
      Picture picture = picture(beam).isToScale();
      assertThat(picture.forces()).hasSize(3);
      assertThat(picture.view().width()).isLessThan(1500);
      assertThat(picture.view().height()).isLessThan(1500);
    }
  }

  @Test
  void forcesOfVeryDifferentSizeAreDrawn() {
    Device beam =
        Device.named("beam")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .member("beam", "a", "b")
            .clamp("wall", "a", "beam", "ground")
            .force("feather", "beam", "b", Vector.of(0, -1e-3))
            .force("anvil", "beam", "b", Vector.of(0, -1e4))
            .build();
    assertThat(picture(beam).isToScale().forces()).hasSize(3);
    assertThat(
            picture(beam, DrawingOptions.USUAL.withArrows(ArrowScale.LOGARITHMIC))
                .isToScale()
                .forces())
        .hasSize(3);
  }

  @Test
  void textsAreInTheUnitsOfTheUser() {
    Picture picture = picture(Yard.jib(), DrawingOptions.USUAL.withUnits(UnitSystem.US));
    assertThat(picture.texts()).contains("134.9 lbf", "6.562 ft");
    // data stay in SI
    assertThat(picture.forces().get(0).force().y()).isEqualTo(-600);
  }

  @Test
  void noLocaleChangesThePicture() {
    FreeBodyDrawing drawing = FreeBodyDrawing.of(Balance.of(Yard.jib()));
    String usual = drawing.svg();
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(drawing.svg()).isEqualTo(usual);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theStyleServesDarkScreensAndNeedsNothingFromElsewhere() {
    String svg = FreeBodyDrawing.of(Balance.of(Yard.jib())).svg();
    assertThat(svg).contains("prefers-color-scheme:dark").doesNotContain("@import", "url(");
  }
}
