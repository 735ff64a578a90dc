package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.motion.Drive;
import bellcrank.statics.motion.Meeting;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What drives a device, how far, and what is followed on the way. */
class TravelReaderTest {

  private static final String DEVICE =
      """
      format: 1
      device: x
      units: {length: mm, force: N}
      points: {A: [0, 0], B: [1000, 0], C: [0, 1000], D: [1000, 0]}
      members: {m: [A, B], k: [A, C]}
      connections: {pin: {pin: A, joins: [m, k, ground]}, rope: {line: [B, C], joins: [m, k]}}
      seek: {turn: {want: couple, member: m}}
      """;

  private static TravelPlan plan(String keys) {
    DeviceFile file = Reads.file(DEVICE + keys);
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
    return file.travel().orElseThrow();
  }

  @Test
  void aTurnGoesByAngles() {
    TravelPlan plan = plan("drive: {turn: m}\ntravel: {from: -30, to: 1 rad}\n");
    assertThat(plan.drive()).isEqualTo(Drive.turn("m"));
    assertThat(plan.from()).isCloseTo(-Math.PI / 6, within(1e-15));
    assertThat(plan.to()).isEqualTo(1);
    assertThat(plan.steps()).isEqualTo(10);
    assertThat(plan.meetings()).isEmpty();
    assertThat(plan.curves()).isEmpty();
  }

  @Test
  void aTurnMayCountAgainstAnotherMember() {
    assertThat(plan("drive: {turn: m, against: k}\ntravel: {from: 0, to: 1}\n").drive())
        .isEqualTo(new Drive.Turn("m", "k"));
  }

  @Test
  void aLengthAndASlideGoByLengths() {
    TravelPlan length = plan("drive: {length: rope}\ntravel: {from: -200, to: 0, steps: 4}\n");
    assertThat(length.drive()).isEqualTo(Drive.length("rope"));
    assertThat(length.from()).isCloseTo(-0.2, within(1e-15));
    assertThat(length.steps()).isEqualTo(4);
    TravelPlan slide = plan("drive: {slide: m, point: B, along: up}\ntravel: {from: 0, to: 1 m}\n");
    assertThat(slide.drive()).isEqualTo(Drive.slide("m", "B", Direction.UP));
    assertThat(slide.to()).isEqualTo(1);
  }

  @Test
  void meetingsAndCurvesComeAlong() {
    TravelPlan plan =
        plan(
            """
            drive: {turn: m}
            travel: {from: 0, to: 90, meets: [{point: B, of: m, edge: [[0, 500], C], against: k}]}
            curves: [turn, point(B).y, rope.length per rope.length]
            """);
    assertThat(plan.meetings()).containsExactly(new Meeting("m", "B", "k", "[0, 500]", "C"));
    assertThat(plan.curves()).hasSize(3);
  }

  @Test
  void aFileWithoutADriveHasNoTravel() {
    assertThat(Reads.file(DEVICE).travel()).isEmpty();
  }

  private static final String GOOD = "drive: {turn: m}\ntravel: {from: 0, to: 9}\n";

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "drive: {turn: pin}¦8:15: drive → turn: found \"pin\"; wanted: the name of a body: ground, m, k",
        "drive: {turn: ground}¦8:15: drive → turn: found \"ground\"; wanted: the name of a member",
        "drive: {turn: m, against: m}¦8:27: drive → against: found \"m\"; wanted: the name of another"
            + " member, or ground",
        "drive: {length: pin}¦8:17: drive → length: found \"pin\"; wanted: the name of a strut, line,"
            + " reeving or screw",
        "drive: {slide: m, point: C, along: up}¦8:26: drive → point: found \"C\"; wanted: a point of"
            + " m",
        "drive: {slide: ground, point: C, along: up}¦8:16: drive → slide: found \"ground\"; wanted:"
            + " the name of a member or joint",
        "drive: {slide: m, point: B}¦8:8: drive: found no key along; wanted: a direction such as up,"
            + " 130 deg or [3, -4]",
        "drive: {twist: m}¦8:9: drive → twist: found the key \"twist\"; wanted: one of the keys turn,"
            + " length, slide, against, point, along",
        "drive: {turn: m, slide: m}¦8:8: drive: found turn and slide; wanted: one kind of drive at a"
            + " time",
        "drive: m¦8:8: drive: found \"m\"; wanted: what drives the device, such as {turn: crank}"
      })
  void aDriveNamesWhatTheDeviceHas(String drive, String problem) {
    assertThat(Reads.problems(DEVICE + drive + "\ntravel: {from: 0, to: 9}\n"))
        .first()
        .isEqualTo(problem);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "travel: {from: 1, to: 9}¦9:16: travel → from: found from 1; wanted: a number of"
            + " at most 0, which is as drawn",
        "travel: {from: 0, to: 0}¦9:23: travel → to: found to 0; wanted: a number of at least 0, above"
            + " from",
        "travel: {from: 0, to: 9, steps: 1001}¦9:33: travel → steps: found \"1001\"; wanted: a whole"
            + " number from 1 to 1000",
        "travel: {from: 0, to: 9, meets: [B]}¦9:34: travel → meets: found \"B\"; wanted: a meeting,"
            + " such as {point: tip, of: jib, edge: [A, B], against: wall}",
        "travel: {from: 0, to: 9, meets: [{point: C, of: m, edge: [A, C], against: k}]}¦9:42: travel →"
            + " meets → point: found \"C\"; wanted: a point of m",
        "travel: {from: 0, to: 9, meets: [{point: B, of: m, edge: [B, D], against: k}]}¦9:58: travel →"
            + " meets → edge: found \"B, D\"; wanted: two points apart",
        "travel: {from: 0, to: 9, meets: [{point: B, of: m, edge: [A, C], against: m}]}¦9:75: travel →"
            + " meets → against: found \"m\"; wanted: the name of another body, or ground",
        "travel: {from: 0, to: 9, step: 3}¦9:26: travel → step: found the key \"step\"; wanted: a"
            + " known key; the nearest is \"steps\"",
        "travel: {from: 0, to: 9 mm}¦9:23: travel → to: found \"9 mm\"",
        "travel: 9¦9:9: travel: found \"9\"; wanted: how far it goes, such as {from: 0, to: 90 deg}"
      })
  void aTravelHasItsLimits(String travel, String problem) {
    assertThat(Reads.problems(DEVICE + "drive: {turn: m}\n" + travel + "\n"))
        .first()
        .asString()
        .startsWith(problem);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "outcome",
        "verdict",
        "friction factor",
        "greatest turn",
        "resultant.line",
        "turn in all loads"
      })
  void aCurveIsANumberThatBalanceGives(String ask) {
    assertThat(Reads.problems(DEVICE + GOOD + "curves: [turn, " + ask + "]\n"))
        .hasSize(1)
        .first()
        .asString()
        .contains("10:16: curves: found");
  }

  @Test
  void drivesAndTravelsBelongTogether() {
    assertThat(Reads.problems(DEVICE + "drive: {turn: m}\n"))
        .containsExactly(
            "1:1: file: found no key travel; wanted: how far, such as {from: -30 deg, to: 60 deg}");
    String none = "1:1: file: found no key drive; wanted: what drives the device, such as {turn:";
    assertThat(Reads.problems(DEVICE + "travel: {from: 0, to: 9}\n"))
        .first()
        .asString()
        .startsWith(none);
    assertThat(Reads.problems(DEVICE + "curves: [turn]\n")).first().asString().startsWith(none);
  }

  @Test
  void aPlanThatDoesNotFitItsDeviceIsRefused() {
    Device device = Device.named("x").member("m").build();
    TravelPlan plan = new TravelPlan(Drive.turn("crank"), 0, 1, 10, List.of(), List.of());
    assertThatThrownBy(
            () ->
                new DeviceFile(
                    device,
                    About.NOTHING,
                    UnitSystem.SI,
                    List.of(),
                    List.of(),
                    Map.of(),
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    Optional.of(plan)))
        .isInstanceOf(ModelException.class)
        .hasMessage("drive: turn is \"crank\"; wanted: the name of a member");
    assertThatThrownBy(() -> new TravelPlan(Drive.turn("m"), 0, 1, 0, List.of(), List.of()))
        .isInstanceOf(ModelException.class)
        .hasMessage("travel: steps is 0; wanted: a whole number from 1 to 1000");
    assertThatThrownBy(
            () -> new TravelPlan(Drive.turn("m"), 0, Double.NaN, 3, List.of(), List.of()))
        .isInstanceOf(ModelException.class);
  }
}
