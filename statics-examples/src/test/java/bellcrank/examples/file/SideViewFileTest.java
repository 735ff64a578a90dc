package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pose;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.limits.SideLoad;
import bellcrank.statics.limits.SideStay;
import bellcrank.statics.limits.SideView;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The device as seen along its plane, in a file. */
class SideViewFileTest {

  private static final String JIB =
      """
      format: 1
      device: jib on a foot
      units: {length: m, force: N}
      points: {foot: [0, 0], head: [0, 2], tip: [1, 2], back: [-2, 0]}
      members: {jib: {bars: [foot, head, tip], weight: {value: 900, at: head}}}
      connections:
        foot: {contact base: foot, joins: [jib, ground], push: up, width: 2, friction: 0.5}
        back: {line: [head, back], joins: [jib, ground]}
      loads:
        barrel: {weight: 100, member: jib, at: tip}
        turn: {couple: 1, member: jib}
        sway: {spread: [1, -1], member: jib, from: head, to: tip}
      """;

  @Test
  void itIsReadInTheUnitsOfTheFile() {
    DeviceFile file =
        Reads.file(
            JIB.replace("length: m", "length: m, angle: deg")
                + """
                side view:
                  base: foot
                  breadth: 80 cm
                  friction: 0.3
                  base offset: -0.1
                  lean: 2
                  slope: 0.1 rad
                  offsets: {barrel: 10 cm, weight of jib: 0.2}
                  loads: {draw: {height: 2, side: -60}, stone: {height: 0.5, offset: 0.25, down: 1 kN}}
                  stays: {left: {height: 2, anchor offset: -1.5}}
                  leave out: [back, sway start]
                """
                    .replace("weight of jib", MembersReader.nameOfWeight("jib")));
    SideStatement side = file.side().orElseThrow();
    assertThat(side.breadth()).isEqualTo(0.8);
    assertThat(side.friction()).hasValue(0.3);
    assertThat(side.baseOffset()).isEqualTo(-0.1);
    assertThat(side.lean()).isCloseTo(Math.PI / 90, within(1e-12));
    assertThat(side.slope()).isEqualTo(0.1);
    assertThat(side.offsets()).containsEntry("barrel", 0.1).hasSize(2);
    assertThat(side.loads())
        .containsExactly(
            new SideLoad("draw", 2, 0, 0, -60), new SideLoad("stone", 0.5, 0.25, 1000, 0));
    assertThat(side.stays()).containsExactly(new SideStay("left", 2, 0, -1.5, 0));
    assertThat(side.leaveOut()).containsExactly("back", "sway start");
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
  }

  @Test
  void withABalanceItIsASideView() {
    DeviceFile file =
        Reads.file(
            JIB.replace("        back", "#").replaceAll("  back: .line.*\n", "")
                + """
                side view:
                  base: foot
                  breadth: 0.8
                  offsets: {barrel: 0.1}
                  loads: {draw: {height: 2, side: 60}}
                  stays: {left: {height: 2, anchor offset: -1.5}}
                  leave out: [sway end]
                """);
    Balance balance = Balance.of(file.device(), LoadCase.ALL_LOADS, Pose.DRAWN);
    SideView view = file.side().orElseThrow().view(balance);
    assertThat(view.breadth()).isEqualTo(0.8);
    assertThat(view.friction()).isCloseTo(0.5, within(1e-12));
    assertThat(view.loads()).extracting(SideLoad::name).contains("barrel", "draw", "sway start");
    assertThat(view.loads()).extracting(SideLoad::name).doesNotContain("sway end");
    SideLoad barrel =
        view.loads().stream().filter(one -> one.name().equals("barrel")).findFirst().orElseThrow();
    assertThat(barrel.offset()).isEqualTo(0.1);
    assertThat(barrel.height()).isCloseTo(2, within(1e-12));
    assertThat(barrel.down()).isCloseTo(100, within(1e-9));
    assertThat(view.stays()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "3¦: found \"3\"; wanted: the device seen from the side, such as {base: foot, breadth: 0.8}",
        "{breadth: 1}¦: found no key base; wanted: the name of a contact base on the ground",
        "{base: foot}¦: found no key breadth; wanted: a length",
        "{base: foot, breadth: 0}¦ → breadth: found breadth 0; wanted: a number above 0",
        "{base: foot, breadth: 1, friction: -1}¦ → friction: found friction -1; wanted: 0 or more",
        "{base: foot, breadth: 1, lean: 90 deg}¦ → lean: found lean 90 deg; wanted: an"
            + " angle in rad between -π/2 and π/2",
        "{base: foot, breadth: 1, slop: 3}¦ → slop: found the key \"slop\"; wanted: a known key; the"
            + " nearest is \"slope\"",
        "{base: fot, breadth: 1}¦ → base: found \"fot\"; wanted: the name of a contact base on the"
            + " ground",
        "{base: back, breadth: 1}¦ → base: found \"back\"; wanted: the name of a contact base on the"
            + " ground",
        "{base: foot, breadth: 1, offsets: {turn: 1}}¦ → offsets → turn: found \"turn\"; wanted: the"
            + " name of a load or of a support on the ground: jib weight, barrel, sway start, sway"
            + " end, back",
        "{base: foot, breadth: 1, offsets: 3}¦ → offsets: found \"3\"; wanted: offsets by the names"
            + " of loads",
        "{base: foot, breadth: 1, leave out: [foot]}¦ → leave out: found \"foot\"; wanted: the name"
            + " of a load or of a support on the ground: jib weight, barrel, sway start, sway end,"
            + " back",
        "{base: foot, breadth: 1, leave out: back}¦ → leave out: found \"back\"; wanted: a list of"
            + " names, such as [back stay]",
        "{base: foot, breadth: 1, offsets: {back: 1}, leave out: [back]}¦ → leave out: found"
            + " \"back\"; wanted: a name that has no offset",
        "{base: foot, breadth: 1, leave out: [back, back]}¦ → leave out: found \"back\"; wanted: each"
            + " name once",
        "{base: foot, breadth: 1, loads: {barrel: {height: 1, side: 1}}}¦ → loads → barrel: found"
            + " \"barrel\"; wanted: a name that no load and no support on the ground has",
        "{base: foot, breadth: 1, loads: {a: {height: 1}}}¦ → loads → a: found no key side; wanted: a"
            + " force sideways or a force down",
        "{base: foot, breadth: 1, loads: {a: {height: 1, side: [1, 2]}}}¦ → loads → a → side: found [1,"
            + " 2]; wanted: a force",
        "{base: foot, breadth: 1, stays: {a: 3}}¦ → stays → a: found \"3\"; wanted: a stay seen from"
            + " the side, such as {height: 2, anchor offset: -1.5}",
        "{base: foot, breadth: 1, stays: {a: {height: 0, anchor offset: 0}}}¦ → stays → a: found"
            + " anchor where the stay is fixed; wanted: a place apart from its end on the device",
        "{base: foot, breadth: 1, stays: {back: {height: 1, anchor offset: 1}}}¦ → stays → back:"
            + " found \"back\"; wanted: a name that no load and no support on the ground has"
      })
  void itIsToldWhatItCanBe(String side, String problem) {
    assertThat(Reads.problems(JIB + "side view: " + side + "\n"))
        .hasSize(1)
        .first()
        .asString()
        .endsWith(": side view" + (problem.startsWith(":") ? "" : " ") + problem);
  }

  @Test
  void oneNameForTwoPartsIsRefused() {
    assertThat(
            Reads.problems(
                JIB
                    + "side view: {base: foot, breadth: 1, loads: {a: {height: 1, side: 1}}, stays:"
                    + " {a: {height: 1, anchor offset: 1}}}\n"))
        .hasSize(1);
  }

  @Test
  void aFileChecksThatItFitsTheDevice() {
    DeviceFile file = Reads.file(JIB);
    SideStatement side =
        new SideStatement(
            "sill", 1, OptionalDouble.empty(), 0, 0, 0, Map.of(), List.of(), List.of(), List.of());
    assertThatThrownBy(
            () ->
                new DeviceFile(
                    file.device(),
                    file.about(),
                    file.units(),
                    List.of(),
                    List.of(),
                    Map.of(),
                    List.of(),
                    Optional.of(side),
                    List.of(),
                    Optional.empty()))
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "side view: base is \"sill\"; wanted: the name of a contact base on the ground");
  }
}
