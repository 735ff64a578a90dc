package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.geometry.Direction;
import bellcrank.statics.motion.Handle;
import bellcrank.statics.units.Dimension;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Searches, winches, measured lines, and how bodies are carried, in a file. */
final class InquiriesFileTest {

  private static final String DEVICE =
      """
      format: 1
      device: x
      units: {length: mm, force: N}
      points: {A: [0, 0], B: [1000, 0], C: [0, 1000], D: [500, 0]}
      members: {m: [A, D, B]}
      connections: {pin: {pin: A, joins: [m, ground]}, rope: {line: [B, C], joins: [m, ground]}}
      loads:
        stone: {weight: 10 kg, member: m, at: D}
        hand: {force: 50, direction: down, member: m, at: B}
        water: {spread: [10 N/m, 0 N/m], member: m, from: A, to: D}
        twist: {couple: 1 N·m, member: m}
      """;

  private static final String DRIVE = "drive: {length: rope}\ntravel: {from: -100, to: 100}\n";

  private static Inquiries read(String keys) {
    DeviceFile file = Reads.file(DEVICE + keys);
    String written = DeviceFileWriter.write(file);
    assertThat(Reads.file(written)).as(written).isEqualTo(file);
    return file.inquiries();
  }

  private static FindPlan find(String unknown, String range) {
    return read("find: {f: {unknown: " + unknown + range + ", ask: rope, equals: 60}}\n")
        .finds()
        .get(0);
  }

  @Test
  void nothingIsAskedUnlessItIsStated() {
    assertThat(Reads.file(DEVICE).inquiries()).isEqualTo(Inquiries.NOTHING);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      value = {
        "{move: B, along: up}¦from: 0, to: 100¦LENGTH",
        "{move: [B, D], along: [3, 4]}¦from: 0, to: 100¦LENGTH",
        "{place: C, along: up}¦from: 500, to: 1 m¦LENGTH",
        "{place: B, along: {from: A, toward: B}, measured from: A}¦from: 600, to: 1 m¦LENGTH",
        "{turn: [B, D], about: A}¦from: -10 deg, to: 10¦ANGLE",
        "{mass: stone}¦from: 1 kg, to: 9 kg¦MASS",
        "{mass: stone}¦from: 1, to: 9¦MASS",
        "{force: hand}¦from: 1, to: 90¦FORCE",
        "{direction: hand}¦from: 1, to: 90¦ANGLE",
        "{couple: twist}¦from: 1, to: 9 N·m¦MOMENT",
        "{reach: water}¦from: 1, to: 9¦LENGTH",
        "{depth: water}¦from: 1, to: 9¦LENGTH",
        "{slope: ground}¦from: 0, to: 9 deg¦ANGLE"
      })
  void everyUnknownComesBack(String unknown, String range, Dimension dimension) {
    FindPlan plan = find(unknown, ", " + range);
    assertThat(plan.unknown().dimension(Optional.empty())).isEqualTo(dimension);
    assertThat(plan.target().si()).isEqualTo(60);
    assertThat(plan.range()).isPresent();
    assertThat(plan.expected()).isEmpty();
  }

  @Test
  void aPlaceCountsFromTheOriginOrAPoint() {
    FindUnknown place = new FindUnknown.Place("B", Direction.RIGHT, Optional.of("D"));
    double x = place.family(Reads.file(DEVICE).device()).apply(0.7).point("B").x();
    assertThat(x).isCloseTo(1.2, within(1e-12));
  }

  @Test
  void theDriveIsLookedForOverItsTravel() {
    FindPlan plan =
        read(DRIVE + "find: {f: {unknown: {drive: travel}, ask: rope, equals: 60}}\n")
            .finds()
            .get(0);
    assertThat(plan.range()).isEmpty();
    assertThat(plan.unknown()).isEqualTo(new FindUnknown.Driven());
  }

  @Test
  void whatIsExpectedKeepsItsUnits() {
    FindPlan.Values expected =
        find(
                "{mass: stone}",
                ", from: 1 kg, to: 9 kg, expect: {values: [2 kg, 5000 g], digits: 3, source: me}")
            .expected()
            .orElseThrow();
    assertThat(expected.values()).extracting(one -> one.quantity().si()).containsExactly(2.0, 5.0);
    assertThat(expected.digits()).isEqualTo(3);
    assertThat(expected.source()).hasValue("me");
    assertThat(find("{slope: ground}", ", from: 1, to: 9, expect: {values: []}").expected())
        .hasValue(new FindPlan.Values(List.of(), 0, Optional.empty()));
  }

  @Test
  void winchesComeBack() {
    List<WinchPlan> winches =
        read("""
                winches:
                  a: {crank: 300, hauls: rope, drum: {radius: 50, rope: 10, turns: 9}}
                  b:
                    {lever: 600, swing: 60 deg, gear ratio: 4, efficiency: 80 %, hauls: rope.tension,
                    drum: {radius: 50, rope: 10, width: 95, flange: 75}, wound: 10, length: 1 m}
                  c: {first layer pull: 900, hauls: rope, drum: {radius: 50, rope: 10, turns: 9}}
                """)
            .winches();
    assertThat(winches).extracting(WinchPlan::name).containsExactly("a", "b", "c");
    assertThat(winches.get(1).hand().orElseThrow().handle())
        .isEqualTo(new Handle.Lever(0.6, Math.PI / 3));
    assertThat(winches.get(1).drum().turnsPerLayer()).isEqualTo(9);
    assertThat(winches.get(1).layers()).isEqualTo(2);
    assertThat(winches.get(2).firstPull()).hasValue(900.0);
  }

  @Test
  void measuredLinesComeBack() {
    List<MeasuredLine> lines =
        read("""
                measured lines:
                  a: {force: 60, span: 5 m, deflection: 140}
                  b:
                    {force: 60, span: 5 m, at: 1 m, deflection: 140, stiffness: 2 kN/m, beside: rope,
                    errors: {force: 1, span: 2, at: 3, deflection: 4}}
                """)
            .measuredLines();
    assertThat(lines.get(0).deflection().at()).isEqualTo(2.5);
    assertThat(lines.get(1).errors().at()).isCloseTo(0.003, within(1e-15));
    assertThat(lines.get(1).stiffness()).hasValue(2000.0);
  }

  @Test
  void carryingAndRestComeBack() {
    Inquiries asked =
        read(
            DRIVE.replace("100}", "100, look for: rest}")
                + "hang: {a: {from: C}, b: {from: [0, 1], bodies: [m]}}\n"
                + "balance point: {c: {line: [A, B], bodies: [m]}}\n");
    assertThat(asked.hangs()).hasSize(2);
    assertThat(asked.handles())
        .containsExactly(new HangPlan("c", "A", Optional.of("B"), List.of("m")));
    assertThat(asked.rests()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "find: {f: {unknown: {mass: hand}, from: 1, to: 2, ask: rope, equals: 60}}¦12:21: find → f →"
            + " unknown: found hand; wanted: the name of a weight",
        "find: {f: {unknown: {mass: ston}, from: 1, to: 2, ask: rope, equals: 60}}¦12:28: find → f →"
            + " unknown → mass: found \"ston\"; wanted: the name of a load or sought quantity; the"
            + " nearest is \"stone\"",
        "find: {f: {unknown: {mass: stone}, from: 3, to: 2, ask: rope, equals: 60}}¦12:49: find → f →"
            + " to: found",
        "find: {f: {unknown: {mass: stone}, from: 1, to: 2, ask: outcome, equals: 60}}¦12:57: find → f"
            + " → ask: found \"outcome\"; wanted: an ask that is answered by a number",
        "find: {f: {unknown: {mass: stone}, from: 1, to: 2, ask: rope, equals: 60 kg}}¦12:71: find → f"
            + " → equals: found \"60 kg\"; wanted: a force",
        "find: {f: {unknown: {drive: travel}, ask: rope, equals: 60}}¦12:21: find → f → unknown: found"
            + " no travel; wanted: a file with the keys drive and travel",
        "find: {f: {unknown: {slope: up}, from: 1, to: 2, ask: rope, equals: 60}}¦12:29: find → f →"
            + " unknown → slope: found \"up\"; wanted: ground",
        "find: {f: {unknown: {move: [], along: up}, from: 1, to: 2, ask: rope, equals: 60}}¦12:28: find"
            + " → f → unknown → move: found",
        "winches: {w: {crank: 0, hauls: rope, drum: {radius: 9, rope: 1, turns: 9}}}¦12:11: winches → w:"
            + " found radius 0",
        "winches: {w: {crank: 1, hauls: rope.length, drum: {radius: 9, rope: 1, turns: 9}}}¦12:32:"
            + " winches → w → hauls: found \"rope.length\"; wanted: an ask for a tension or force",
        "winches: {w: {crank: 1, hauls: rope, drum: {radius: 9, rope: 1}}}¦12:44: winches → w → drum:"
            + " found neither turns nor width",
        "winches: {w: {crank: 1, hauls: rope, length: 1 km, drum: {radius: 9, rope: 1, turns: 1}}}"
            + "¦12:46: winches → w → length: found length",
        "winches: {w: {crank: 1, hauls: rope, wound: -1, length: 2, drum: {radius: 9, rope: 1, turns:"
            + " 9}}}¦12:45: winches → w → wound: found wound -1; wanted: a length in m, 0 or more",
        "measured lines: {l: {force: 0, span: 1, deflection: 1}}¦12:29: measured lines → l → force: found"
            + " force 0",
        "measured lines: {l: {force: 1, span: 1, at: 2, deflection: 1}}¦12:45: measured lines → l → at:"
            + " found at",
        "hang: {h: {from: Z}}¦12:18: hang → h → from: found \"Z\"; wanted: the name of a point",
        "balance point: {b: {line: [A, A]}}¦12:20: balance point → b: found line of the handle"
      })
  void mistakesAreToldWhereTheyStand(String keys, String problem) {
    assertThat(Reads.problems(DEVICE + keys + "\n")).first().asString().startsWith(problem);
  }
}
