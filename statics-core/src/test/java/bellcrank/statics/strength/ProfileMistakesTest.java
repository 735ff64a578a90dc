package bellcrank.statics.strength;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Point;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Every mistake is told by section, field, value and what would be accepted. */
class ProfileMistakesTest {

  private static final Profile PLANK = Profiles.rectangle(0.05, 0.1);

  private static void refused(ThrowingCallable made, String message) {
    assertThatThrownBy(made).isInstanceOf(ModelException.class).hasMessage(message);
  }

  @Test
  void aWallInMillimetres() {
    refused(
        () -> Profiles.tube(0.06, 0.06, 3),
        "tube 60 × 60 × 3000 mm: wall is 3.0; wanted: above 0 and below 0.03 m, half of the"
            + " width; all sizes in m");
    refused(
        () -> Profiles.pipe(0.06, 0.03),
        "pipe 60 × 30 mm: wall is 0.03; wanted: above 0 and below 0.03 m, half of the diameter;"
            + " both in m");
    refused(
        () -> Profiles.formedTube(0.06, 0.04, 0.011),
        "tube 60 × 40 × 11 mm: wall is 0.011; wanted: above 0 and at most 0.01 m, a quarter of the"
            + " height, for its corners");
  }

  @Test
  void aSizeThatIsNoSize() {
    refused(
        () -> Profiles.rectangle(60, 0.2),
        "rectangle 60000 × 200 mm: width is 60.0; wanted: above 0 and below 20 m");
    refused(
        () -> Profiles.rectangle(0.06, -0.2),
        "rectangle 60 × -200 mm: height is -0.2; wanted: above 0 and below 20 m");
    refused(
        () -> Profiles.round(Double.NaN),
        "round NaN mm: diameter is NaN; wanted: above 0 and below 20 m");
    refused(
        () -> new Profile("plank", PLANK.shape(), 0),
        "plank: thickness is 0.0; wanted: above 0 and below 20 m");
  }

  @Test
  void partsThatDoNotFitTogether() {
    refused(
        () -> Profiles.beam(0.1, 0.05, 0.06, 0.008, 0),
        "I 100 × 50 × 60 × 8 mm: web is 0.06; wanted: above 0 and below 0.05 m, the width; all"
            + " sizes in m");
    refused(
        () -> Profiles.channel(0.1, 0.05, 0.006, 0.05, 0),
        "channel 100 × 50 × 6 × 50 mm: flange is 0.05; wanted: above 0 and below 0.05 m, half of"
            + " the depth; all sizes in m");
    refused(
        () -> Profiles.tee(0.1, 0.05, 0.006, 0.1, 0),
        "T 100 × 50 × 6 × 100 mm: flange is 0.1; wanted: above 0 and below 0.1 m, the depth; all"
            + " sizes in m");
    refused(
        () -> Profiles.angle(0.05, 0.04, 0.04),
        "angle 40 × 50 × 40 mm: thickness is 0.04; wanted: above 0 and below 0.04 m, the shorter"
            + " leg; all sizes in m");
    refused(
        () -> Profiles.angle(0.05, 0.04, 0.01, 0.031),
        "angle 40 × 50 × 10 mm: root radius is 0.031; wanted: from 0 to 0.03 m, what is free beside"
            + " the corner");
    refused(
        () -> Profiles.tube(0.06, 0.05, 0.005, 0.026, 0),
        "tube 60 × 50 × 5 mm: outer radius is 0.026; wanted: from 0 to 0.025 m, half of the smaller"
            + " side");
  }

  @Test
  void holesAndNotches() {
    refused(
        () -> PLANK.withHoleAcross(0.05, 0.1),
        "rectangle 50 × 100 mm: hole diameter is 0.1; wanted: above 0 and below 0.1 m, the height"
            + " of the section");
    refused(
        () -> PLANK.withHoleAcross(0.125, 0.05),
        "rectangle 50 × 100 mm: hole height is 0.125; wanted: from 0.025 to 0.075 m, inside the"
            + " section");
    refused(
        () -> PLANK.withHoleUpright(0.01, 0.05, 0, 0.1),
        "rectangle 50 × 100 mm: hole diameter is 0.05; wanted: above 0 and below 0.05 m, the width"
            + " of the section");
    refused(
        () -> PLANK.withHoleUpright(0.025, 0.025, 0.05, 0.125),
        "rectangle 50 × 100 mm: hole length is 0.075; wanted: above 0 and at most 0.05 m, what is"
            + " above its start");
    refused(
        () -> Profiles.beam(0.1, 0.1, 0.006, 0.01, 0).withHoleUpright(0.02, 0.01, 0.02, 0.05),
        "I 100 × 100 × 6 × 10 mm: hole is where there is no material; wanted: a place that meets a"
            + " wall of the section");
    refused(
        () -> PLANK.notchedFromBelow(0.1),
        "rectangle 50 × 100 mm: notch is 0.1; wanted: above 0 and below 0.1 m, the height of the"
            + " section");
    refused(() -> PLANK.sideBySide(0, 0), "rectangle 50 × 100 mm: count is 0; wanted: 1 or more");
    refused(
        () -> PLANK.backToBack(-0.01),
        "rectangle 50 × 100 mm: gap is -0.01; wanted: from 0 to 1 m; both in m");
    refused(() -> PLANK.section().times(0), "rectangle 50 × 100 mm: count is 0; wanted: 1 or more");
  }

  @Test
  void areasThatOverlapOrMiss() {
    Shape square = Shape.rectangle(0, 0, 1, 1);
    assertThatThrownBy(() -> square.and(Shape.disc(1, 0.5, 0.5)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("overlap at height")
        .hasMessageEndingWith("wanted: areas that do not overlap");
    assertThatThrownBy(() -> square.without(Shape.disc(1, 0.5, 0.5)))
        .hasMessageStartingWith("hole: ")
        .hasMessageEndingWith("wanted: a hole that lies within the area");
    refused(
        () -> Shape.polygon(List.of(Point.of(0, 0), Point.of(1, 1))),
        "polygon: corners is 2; wanted: three or more");
    refused(
        () -> Shape.polygon(List.of(Point.of(0, 0), Point.of(1, 1), Point.of(2, 2))),
        "polygon: area is 0.0; wanted: corners that bound an area");
    refused(
        () -> Shape.fillet(0, 0, 0.1, 0.2),
        "fillet: radius is 0.1, 0.2; wanted: one size, any signs");
    refused(
        () -> new Profile("nothing", square.above(2), 1),
        "nothing: area is 0.0; wanted: a section with material left");
  }

  @Test
  void propertiesThatNoAreaHas() {
    // 8.33e-6 m⁴ given for an area of 1200 mm² between ±50 mm, which cannot have more than 3e-6
    refused(
        () -> new Section("plank", 1.2e-3, 0.05, 0.05, 8.33e-6, 1e-5, 0.012, 1e-8, 0.006, 0.012),
        "plank: inertia is 8.33E-6; wanted: at most "
            + 1.2e-3 * 0.05 * 0.05 * (1 + 1e-9)
            + " m⁴, what area and edges allow");
    refused(
        () -> new Section("plank", 1.2e-3, 0.05, 0.05, 1e-6, 1e-5, 0.012, 1e-6, 0.006, 0.012),
        "plank: side inertia is 1.0E-6; wanted: at most "
            + 1.2e-3 * 0.006 * 0.006 * (1 + 1e-9)
            + " m⁴, what area and edges allow");
    refused(
        () -> new Section("plank", 1.2e-3, 0.05, 0.05, 1e-6, 1e-5, 0.012, 1e-8, 0.006, 0.012, 1e-7),
        "plank: product of inertia is 1.0E-7; wanted: between −"
            + Math.sqrt(1e-6 * 1e-8)
            + " and "
            + Math.sqrt(1e-6 * 1e-8));
    refused(
        () -> new Section("plank", -1, 0.05, 0.05, 1e-6, 1e-5, 0.012, 1e-8, 0.006, 0.012),
        "plank: area is -1.0; wanted: a number above 0");
  }
}
