package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Coefficients of friction that a file takes from the friction table. */
class TableFrictionTest {

  private static final String RANGE = "timber on timber, dry (handbook)";

  private static String file(String friction) {
    return """
        format: 1
        device: block
        points: {A: [0, 0], B: [1, 0]}
        members: {m: [A, B]}
        connections:
          floor: {contact: A, joins: [m, ground], push: up, friction: %s}
        """
        .formatted(friction);
  }

  private static double friction(String friction) {
    DeviceFile file = Reads.file(file(friction));
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
    assertThat(file.tables()).hasSize(1);
    return ((Contact) file.device().connections().get(0)).friction();
  }

  @Test
  void theEndOfTheRangeThatIsWantedIsTaken() {
    // the handbook has 0.25 to 0.5
    assertThat(friction("{table: \"" + RANGE + "\", take: lowest}")).isEqualTo(0.25);
    assertThat(friction("{table: \"" + RANGE + "\", take: highest}")).isEqualTo(0.5);
  }

  @Test
  void aSingleValueNeedsNoChoice() {
    assertThat(friction("{table: brick on timber (college physics)}")).isEqualTo(0.6);
    assertThat(friction("{table: brick on timber (college physics), take: highest}"))
        .isEqualTo(0.6);
  }

  @Test
  void allThatRubsMayTakeItsFrictionFromTheTable() {
    DeviceFile file =
        Reads.file(
            """
            format: 1
            device: all that rubs
            points: {A: [0, 0], B: [1, 0], C: [3, 0], D: [2, 1]}
            members: {m: [A, B, C]}
            connections:
              pin: {pin: A, joins: [m, ground], radius: 0.1, friction: {table: "steel on steel, smooth (CTU Code)"}}
              screw: {screw: [B, D], joins: [m, ground], lead: 0.01, mean radius: 0.05, friction: {table: "steel on steel, smooth (CTU Code)"}}
              band: {wrap: [{end: A, joins: m}, {post: D, joins: ground, radius: 0.1, turns: clockwise}, {end: C, joins: m}], friction: {table: tyre on grass (college physics)}}
            """);
    assertThat(file.device().connections())
        .satisfiesExactly(
            one -> assertThat(((Pin) one).friction()).isEqualTo(0.2),
            one -> assertThat(((Screw) one).friction()).isEqualTo(0.2),
            one -> assertThat(((Wrap) one).friction()).isEqualTo(0.35));
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "{table: \"timber on timber, dry (handbook)\"}¦ → table: found a range from 0.25 to 0.5;"
            + " wanted: take: lowest for 0.25, or take: highest for 0.5",
        "{table: \"timber on timber, dry (handbok)\"}¦ → table: found \"timber on timber, dry"
            + " (handbok)\"; wanted: \"timber on timber, dry (handbook)\" or one of the",
        "{table: \"timber on timber, dry (handbook)\", take: middle}¦ → take: found \"middle\";"
            + " wanted: highest or lowest",
        "{take: lowest}¦: found no key table; wanted: the name of a row of the friction table",
        "{tabel: x}¦ → tabel: found the key \"tabel\"; wanted: a known key; the nearest is \"table\"",
        "[0.3]¦: found [0.3]; wanted: a plain number"
      })
  void whatIsWrongIsToldWhereItStands(String friction, String problem) {
    assertThat(Reads.problems(file(friction)))
        .hasSize(1)
        .first()
        .asString()
        .contains(
            ": connections → floor → friction" + (problem.startsWith(":") ? "" : " ") + problem);
  }

  @Test
  void aFileChecksThatTheDeviceHasThatFriction() {
    DeviceFile file = Reads.file(file("0.3"));
    TableFriction brick =
        new TableFriction("floor", "brick on timber (college physics)", Optional.empty());
    assertThatThrownBy(() -> with(file, brick))
        .isInstanceOf(ModelException.class)
        .hasMessage(
            "floor: friction is 0.3; wanted: 0.6, as the friction table has for \"brick on timber"
                + " (college physics)\"");
    assertThatThrownBy(() -> with(file, new TableFriction("wall", brick.row(), Optional.empty())))
        .hasMessageStartingWith("wall: friction is none; wanted: 0.6");
    assertThatThrownBy(() -> with(Reads.file(file("0.6")), brick, brick))
        .hasMessageContaining("one row for it");
    assertThat(with(Reads.file(file("0.6")), brick).tables()).containsExactly(brick);
  }

  private static DeviceFile with(DeviceFile file, TableFriction... tables) {
    return new DeviceFile(
        file.device(),
        file.about(),
        UnitSystem.SI,
        List.of(),
        List.of(),
        Map.of(),
        List.of(),
        Optional.empty(),
        List.of(tables),
        Optional.empty());
  }

  /** A name in quotes may go over several lines; what is said of it does not. */
  @Test
  void aNameWithLineBreaksIsQuotedOnOneLine() {
    assertThat(Reads.problems(file("{table: \"timber\n\n    on ice\"}")))
        .singleElement()
        .satisfies(
            problem -> assertThat(problem).hasLineCount(1).contains("found \"timber on ice\""));
  }
}
