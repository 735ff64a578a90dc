package bellcrank.statics.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.DeviceBuilder;
import bellcrank.statics.device.Guide;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Motions in words: who turns about what, who slides which way. */
class FreedomWordsTest {

  private static String driven(Device device) {
    return ((Outcome.NoBalance) Balance.of(device).outcome()).driven().words();
  }

  private static Device sliderPushed(double degrees, double force) {
    Direction along = Direction.ofAngle(Math.toRadians(degrees));
    return Device.named("slider")
        .point("A", 0.5, 0.25)
        .point("B", 1.5, 0.25)
        .member("block", "A", "B")
        .connect(new Guide("rail", "A", "block", "ground", along))
        .force("push", "block", "A", along.times(force))
        .build();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, block slides right",
    "0, -1, block slides left",
    "90, 1, block slides up",
    "90, -1, block slides down",
    "30, 1, block slides right and up at 30° to the level",
    "30, -1, block slides left and down at 30° to the level",
    "120, 1, block slides left and up at 60° to the level",
    "120, -1, block slides right and down at 60° to the level",
    "12.5, 1, block slides right and up at 12.5° to the level",
  })
  void aSlideIsToldByItsDirection(double degrees, double force, String words) {
    assertThat(driven(sliderPushed(degrees, force))).isEqualTo(words);
  }

  @Test
  void aTurnAboutANamedPointNamesItAndItsSense() {
    DeviceBuilder lever =
        Device.named("lever")
            .point("hinge", 3, 1)
            .point("grip", 5, 1)
            .member("lever", "hinge", "grip")
            .pin("hinge", "hinge", "lever", "ground");

    assertThat(
            driven(lever.build().toBuilder().force("f", "lever", "grip", Vector.of(0, 2)).build()))
        .isEqualTo("lever turns counter-clockwise about hinge");
    assertThat(
            driven(lever.build().toBuilder().force("f", "lever", "grip", Vector.of(0, -2)).build()))
        .isEqualTo("lever turns clockwise about hinge");
  }

  /** A ladder on smooth floor and wall turns about where both normals meet. */
  @Test
  void aTurnAboutAnUnnamedPlaceTellsItInTheUnitsAskedFor() {
    Device ladder =
        Device.named("ladder")
            .point("foot", 0.6, 0)
            .point("head", 0, 2.4)
            .member("ladder", "foot", "head")
            .roller("floor", "foot", "ladder", "ground", Direction.UP)
            .roller("wall", "head", "ladder", "ground", Direction.RIGHT)
            .build();
    Freedom freedom = Mobility.of(ladder).freedoms().get(0);

    assertThat(freedom.words()).contains("a point at (0.6000 m, 2.400 m)");
    assertThat(freedom.words()).endsWith(", or the reverse");
    assertThat(freedom.words(ladder, UnitSystem.SI.with(Unit.parse("mm"))))
        .contains("a point at (600.0 mm, 2400 mm)");
  }

  @Test
  void aJointMovesAndDoesNotSlide() {
    Device knot =
        Device.named("knot")
            .point("K", 1, 1)
            .joint("K")
            .roller("floor", "K", "K", "ground", Direction.UP)
            .build();

    assertThat(Mobility.of(knot).freedoms().get(0).words())
        .isIn("K moves right, or the reverse", "K moves left, or the reverse");
  }

  private static Device parallelogramChain(int members) {
    DeviceBuilder chain = Device.named("rods side by side").point("top 0", 0, 1);
    chain.point("low 0", 0, 0).member("rod 0", "low 0", "top 0");
    chain.pin("low 0", "low 0", "rod 0", "ground");
    for (int i = 1; i < members; i++) {
      chain.point("low " + i, i, 0).point("top " + i, i, 1);
      chain.member("rod " + i, "low " + i, "top " + i);
      chain.pin("low " + i, "low " + i, "rod " + i, "ground");
      chain.strut(
          "tie " + i,
          bellcrank.statics.device.End.of("rod " + (i - 1), "top " + (i - 1)),
          bellcrank.statics.device.End.of("rod " + i, "top " + i));
    }
    return chain.force("push", "rod 0", "top 0", Vector.of(-1, 0)).build();
  }

  @Test
  void upToFiveBodiesAreAllListed() {
    assertThat(driven(parallelogramChain(5)))
        .isEqualTo(
            "rod 0 turns counter-clockwise about low 0, rod 1 turns counter-clockwise about low 1, rod"
                + " 2 turns counter-clockwise about low 2, rod 3 turns counter-clockwise about low 3"
                + " and rod 4 turns counter-clockwise about low 4");
  }

  @Test
  void ofMoreThanFiveBodiesFourAreListedAndTheRestCounted() {
    assertThat(driven(parallelogramChain(7)))
        .startsWith("rod 0 turns")
        .contains("rod 3 turns")
        .doesNotContain("rod 4")
        .endsWith(" and 3 more bodies move along");
  }

  @Test
  void velocitiesOfAllPointsFollowFromTheTurn() {
    Freedom freedom = ((Outcome.NoBalance) Balance.of(parallelogramChain(2)).outcome()).driven();
    List<BodyMotion> motions = freedom.motions();
    BodyMotion rod = motions.get(0);

    assertThat(freedom.driven()).isTrue();
    assertThat(motions).extracting(BodyMotion::body).containsExactly("rod 0", "rod 1");
    Vector head = rod.velocityAt(bellcrank.statics.geometry.Point.of(0, 1));
    assertThat(head.x()).isNegative();
    assertThat(head.x()).isEqualTo(-rod.turning());
    assertThat(rod.velocityAt(rod.centre().orElseThrow()).norm()).isLessThan(1e-12);
  }
}
