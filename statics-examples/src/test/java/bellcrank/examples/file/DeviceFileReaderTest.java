package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.EffortAndResistance;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Force;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Weight;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import bellcrank.statics.units.Unit;
import bellcrank.statics.units.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DeviceFileReaderTest {

  private static final String PRESS =
      """
      format: 1
      device: cider press lever
      units: {length: m, force: N}
      points: {hinge: [0, 0], ram: [0.25, 0], middle: [0.8, 0.05], grip: [1.6, 0.1]}
      members:
        lever: {bars: [hinge, ram, grip], weight: {value: 60, at: middle}}
      connections:
        hinge: {pin: hinge, joins: [lever, ground]}
      loads:
        hand: {force: 220, member: lever, at: grip, direction: down}
      seek:
        ram: {want: force, direction: up, member: lever, at: ram}
      advantage: {effort: hand, resistance: ram}
      expect:
        ram: {value: 1600, digits: 4, source: "by hand: (220 × 1.6 + 60 × 0.8) / 0.25"}
      """;

  @Test
  void theLeverOfTheManualIsReadPartByPart() {
    DeviceFile file = Reads.file(PRESS);
    Device device = file.device();
    assertThat(device.name()).isEqualTo("cider press lever");
    assertThat(device.points().keySet()).containsExactly("hinge", "ram", "middle", "grip");
    assertThat(device.points()).containsEntry("grip", Point.of(1.6, 0.1));
    assertThat(device.members())
        .containsExactly(Member.of("lever", List.of("hinge", "ram", "grip")));
    assertThat(device.connections())
        .containsExactly(Pin.smooth("hinge", "hinge", List.of("lever", "ground")));
    assertThat(device.loads())
        .containsExactly(
            new Weight("lever weight", "lever", Optional.of("middle"), 60 / 9.80665),
            new Force("hand", "lever", "grip", Vector.of(0, -220)),
            new Sought(
                "ram", Sought.Want.FORCE, "lever", Optional.of("ram"), Optional.of(Direction.UP)));
    assertThat(device.advantage()).hasValue(new EffortAndResistance("hand", "ram"));
    assertThat(file.units()).isEqualTo(UnitSystem.SI);
    assertThat(file.about()).isEqualTo(About.NOTHING);
    assertThat(file.expectations())
        .containsExactly(
            new Expectation(
                Ask.of("ram"),
                new Expected.Amount(new Quantity(1600, Dimension.FORCE), Unit.parse("N")),
                4,
                Optional.of("by hand: (220 × 1.6 + 60 × 0.8) / 0.25"),
                Optional.empty(),
                Optional.empty()));
  }

  @Test
  void allErrorsOfAFileComeTogetherInItsOrder() {
    assertThat(
            Reads.problems(
                """
                format: 1
                device: cider press lever
                units: {length: m, forse: N}
                points: {hinge: [0, 0], grip: [1.6, 0.1], a: {from: b, right: 1}, b: {from: a, up: 1}}
                members:
                  lever: {bars: [hinge, gripp], weight: {value: 60, at: grip}}
                  jib: {bars: [hinge, grip], weight: {value: 60 kN/m, at: grip}}
                connections:
                  hinge: {pin: hinge, joins: [lver, ground]}
                  foot: {pim: grip, joins: [jib, ground]}
                  heel: {pin: grip, joins: [jib, ground], radius: -1}
                  stay: {strut: [hinge, hinge], joins: [jib, ground]}
                loads:
                  hand: {force: 15 lb, member: jib, at: grip, direction: dwn}
                  heel: {couple: 3, member: jib}
                seek:
                  ram: {want: forces, direction: up, member: lever, at: grip}
                advantage: {effort: hand, resistance: rim}
                cases:
                  gust: {factors: {hand: 2, ram: 3}, dynamic: 0}
                ask: [stey.tension]
                expect:
                  ram: {value: 1600, digits: 44}
                """))
        .containsExactly(
            "3:20: units → forse: found the key \"forse\"; wanted: a known key; the nearest is"
                + " \"force\"",
            "4:46: points → a: found a place that leads back to \"a\"; wanted: points placed one"
                + " after the other, not in a circle",
            "4:70: points → b: found a place that leads back to \"b\"; wanted: points placed one"
                + " after the other, not in a circle",
            "6:25: members → lever → bars: found \"gripp\"; wanted: the name of a point; the"
                + " nearest is \"grip\"",
            "7:46: members → jib → weight → value: found \"60 kN/m\"; wanted: a force such as 60 N"
                + " or a mass such as 12 kg (kN/m is a unit of force per length; a force is"
                + " wanted: write for example N, kN, kgf or lbf)",
            "9:31: connections → hinge → joins: found \"lver\"; wanted: the name of a body; the"
                + " nearest is \"lever\"",
            "10:10: connections → foot → pim: found the key \"pim\"; wanted: a known key; the"
                + " nearest is \"pin\"",
            "11:51: connections → heel → radius: found radius -1; wanted: 0 or more",
            "12:17: connections → stay → strut: found ends hinge and hinge at the same place;"
                + " wanted: two places apart",
            "14:17: loads → hand → force: found \"15 lb\"; wanted: a force (lb is a unit of mass;"
                + " a force is wanted: write lbf)",
            "14:58: loads → hand → direction: found \"dwn\"; wanted: up, down, left, right, an"
                + " angle such as 130 deg, components such as [3, -4] or {toward: point}; the"
                + " nearest is \"down\"",
            "15:3: loads → heel: found \"heel\" again; wanted: a name that no other connection,"
                + " load or sought quantity has",
            "17:15: seek → ram → want: found \"forces\"; wanted: components, couple,"
                + " force, intensity or mass; the nearest is \"force\"",
            "18:39: advantage → resistance: found \"rim\"; wanted: the name of a load, sought"
                + " quantity or connection; the nearest is \"ram\"",
            "21:7: ask: found \"stey.tension\"; wanted: the name of a connection, load or sought"
                + " quantity; the nearest is \"stay\"",
            "23:30: expect → ram → digits: found \"44\"; wanted: a whole number from 1 to 15");
  }

  @Test
  void anUnknownBodyIsToldAsInTheManual() {
    assertThat(Reads.sentences(DeviceFileReader.read(PRESS.replace("[lever,", "[lver,"), "p.yaml")))
        .containsExactly(
            "p.yaml:8:31: connections → hinge → joins: found \"lver\"; wanted: the name of a body;"
                + " the nearest is \"lever\"");
  }

  @Test
  void asksAreCheckedAgainstTheDevice() {
    assertThat(Reads.problems(PRESS + "ask: [hinge.tension, advantage.idel]\n"))
        .hasSize(2)
        .allMatch(sentence -> sentence.contains("ask: found "));
  }

  @Test
  void pointsMayBePlacedFromLaterOnes() {
    Device device =
        Reads.device(
            """
            format: 1
            device: roof
            units: {length: ft}
            points:
              third: {from: A, toward: top, fraction: 1/3}
              near: {from: A, toward: B, distance: 1 m}
              top: {from: A, distance: 5 ft, angle: 90 deg}
              side: {from: [1 m, 0], right: 2 m, up: -1 m}
              low: {from: side, up: -1 in}
              A: [0, 0]
              B: [10 m, 0]
            members: {roof: [A, top, B]}
            """);
    assertThat(device.points().keySet())
        .containsExactly("third", "near", "top", "side", "low", "A", "B");
    assertThat(device.point("top")).isEqualTo(Point.of(0, 5 * 0.3048));
    assertThat(device.point("near")).isEqualTo(Point.of(1, 0));
    assertThat(device.point("third").y()).isEqualTo(5 * 0.3048 * (1.0 / 3));
    assertThat(device.point("side")).isEqualTo(Point.of(3, -1));
    assertThat(device.point("low")).isEqualTo(Point.of(3, -1 - 0.0254));
  }

  @Test
  void coordinatesInPlaceOfANameMakeAPoint() {
    Device device =
        Reads.device(
            """
            format: 1
            device: lever
            points: {hand at: [9, 9], "[1, 1]": [8, 8]}
            members:
              lever: [[0, 0], [2, 0]]
              other: {bars: [[hand at, [1, 1]]], weight: {value: 2 kg, at: [4' 2", 5]}}
            joints: {knot: [7, 7]}
            connections:
              stay: {strut: [[0, 0], [0, 1]], joins: [lever, ground]}
            loads:
              hand: {force: 1, direction: up, member: lever, at: [1, 0]}
            """);
    assertThat(device.points().keySet())
        .containsExactly(
            "hand at",
            "[1, 1]",
            "[7, 7]",
            "[0, 0]",
            "[2, 0]",
            "[1, 1] 2",
            "[4' 2 in, 5]",
            "[0, 1]",
            "[1, 0]");
    // what stands where a point was made already is at that point
    assertThat(device.connection("stay").orElseThrow())
        .isEqualTo(new Strut("stay", End.of("lever", "[0, 0]"), End.of("ground", "[0, 1]"), 0));
    assertThat(device.members().get(1).bars()).containsExactly(new Bar("hand at", "[1, 1] 2"));
    assertThat(device.load("hand")).hasValue(new Force("hand", "lever", "[1, 0]", Vector.of(0, 1)));
  }

  /** A corner is told by its number in the outline, whichever of the others have names. */
  @Test
  void cornersOfAnOutlineAreNumbered() {
    Device device =
        Reads.device(
            """
            format: 1
            device: crate
            points: {toe: [2, 0]}
            members:
              crate: {points: [[1, 0]], outline: [[0, 0], toe, [2, 1], [0, 1]]}
            """);

    assertThat(device.members().get(0).points()).containsExactly("crate point 1");
    assertThat(device.members().get(0).outline())
        .containsExactly("crate corner 1", "toe", "crate corner 3", "crate corner 4");
  }

  @Test
  void wordsOfYamlStayNames() {
    Device device =
        Reads.device(
            """
            format: 1
            device: null
            points: {y: [0, 0], on: [1, 0], 1e3: [2, 0], 0x1F: [3, 0], 2020-01-01: [4, 0]}
            members: {no: [y, on, 1e3, 0x1F, 2020-01-01]}
            connections: {true: {pin: y, joins: [no, ground]}}
            """);
    assertThat(device.name()).isEqualTo("null");
    assertThat(device.points().keySet()).containsExactly("y", "on", "1e3", "0x1F", "2020-01-01");
    assertThat(device.connections())
        .containsExactly(Pin.smooth("true", "y", List.of("no", "ground")));
  }

  @Test
  void aTrussMakesItsJointsAndStruts() {
    Device device =
        Reads.device(
            """
            format: 1
            device: truss
            points: {A: [0, 0], B: [1, 0], C: [0, 1]}
            joints: {ring: C}
            truss: [[A, B], [B, C]]
            """);
    assertThat(device.joints().stream().map(joint -> joint.name() + " at " + joint.at()))
        .containsExactly("ring at C", "A at A", "B at B");
    assertThat(device.connections().stream().map(one -> one.name() + " " + one.bodies()))
        .containsExactly("A–B [A, B]", "B–C [B, ring]");
  }

  @Test
  void directionsAreReadInAllForms() {
    Device device =
        Reads.device(
            """
            format: 1
            device: lever
            points: {A: [0, 0], B: [3, -4]}
            members: {lever: [A, B]}
            loads:
              a: {force: 5, direction: [3, -4], member: lever, at: A}
              b: {force: 5, direction: {toward: B}, member: lever, at: A}
              c: {force: 5, direction: {from: B, toward: A}, member: lever, at: A}
              d: {force: 5, direction: 180, member: lever, at: A}
              e: {force: [1 kN, -2], member: lever, at: A}
              f: {force: 10, direction: [30, -40], member: lever, at: A}
            """);
    assertThat(device.loads().stream().map(load -> ((Force) load).vector()))
        .containsExactly(
            Vector.of(3, -4),
            Direction.from(3, -4).times(5),
            Direction.from(-3, 4).times(5),
            Vector.of(-5, 0),
            Vector.of(1000, -2),
            Direction.from(3, -4).times(10));
  }

  @Test
  void weightsAreMassesOrForces() {
    Device device =
        Reads.device(
            """
            format: 1
            device: lever
            units: us
            gravity: {size: 5 m/s^2, direction: right}
            points: {A: [0, 0], B: [1, 0]}
            members:
              heavy: {bars: [A, B], weight: 12 kg}
              light: {bars: [A, B], weight: 10 N}
              bare: {bars: [A, B], weight: 1}
            """);
    assertThat(device.gravity()).isEqualTo(Vector.of(5, 0));
    assertThat(device.loads().stream().map(load -> ((Weight) load).mass()))
        .containsExactly(12.0, 2.0, 4.4482216152605 / 5);
    assertThat(
            Reads.problems(
                """
                format: 1
                device: x
                gravity: 0 m/s^2
                points: {A: [0, 0], B: [1, 0]}
                members:
                  m: {bars: [A, B], weight: 10 N}
                """))
        .containsExactly(
            "6:29: members → m → weight: found \"10 N\"; wanted: a mass: without gravity a weight"
                + " states none");
  }

  @Test
  void unitsAreDerivedAndReplaced() {
    DeviceFile file =
        Reads.file(
            """
            format: 1
            device: x
            units: {length: in, force: lbf, angle: rad, moment: lbf·ft}
            members: {m: {}}
            """);
    assertThat(file.units())
        .isEqualTo(
            UnitSystem.from(Unit.parse("in"), Unit.parse("lbf"))
                .with(Unit.parse("rad"))
                .with(Unit.parse("lbf·ft")));
    assertThat(Reads.file("format: 1\ndevice: x\nunits: us\nmembers: {m: {}}\n").units())
        .isEqualTo(UnitSystem.US);
  }

  @Test
  void casesCountsAndJointTargetsAreRead() {
    Device device =
        Reads.device(
            """
            format: 1
            device: x
            points: {A: [0, 0], B: [1, 0]}
            members: {a: {bars: [A, B], count: 2}, b: [A, B]}
            joints: [B]
            connections:
              pin: {pin: A, joins: [a, b], count: 3}
            loads:
              at joint: {force: 1, direction: up, joint: B}
              at pin: {weight: 1 kg, joint: pin}
            cases:
              storm: {factors: {at joint: 1.5}, dynamic: 2}
              calm: {}
            """);
    assertThat(device.members().get(0).count()).isEqualTo(2);
    assertThat(device.counts()).isEqualTo(Map.of("pin", 3));
    assertThat(device.loads())
        .containsExactly(
            new Force("at joint", "B", "B", Vector.of(0, 1)),
            new Weight("at pin", "pin", Optional.of("A"), 1));
    assertThat(device.cases())
        .containsExactly(
            new LoadCase("storm", Map.of("at joint", 1.5), 2), new LoadCase("calm", Map.of(), 1));
  }

  @Test
  void answersInWordsAreExpectedAsWords() {
    DeviceFile file =
        Reads.file(
            """
            format: 1
            device: x
            members: {m: {}}
            expect:
              outcome: {value: no balance}
              freedoms: {value: 3, digits: 1}
            """);
    assertThat(file.expectations().get(0).value()).isEqualTo(new Expected.Words("no balance"));
    assertThat(file.expectations().get(0).digits()).isZero();
    assertThat(file.expectations().get(1).value())
        .isEqualTo(new Expected.Amount(new Quantity(3, Dimension.NUMBER), Dimension.NUMBER.si()));
  }

  @Test
  void anExpectedValueThatItsUnitCannotHoldIsRefused() {
    // as a number of km it is just above half of the smallest double, in SI it is rounded down
    assertThat(
            Reads.problems(
                """
                format: 1
                device: x
                points: {A: [0, 0]}
                members: {m: {points: [A]}}
                loads: {w: {weight: 2, member: m, at: A}}
                expect: {centre.x: {value: 2.4704e-324 km, digits: 2}}
                """))
        .singleElement()
        .asString()
        .startsWith("6:28: expect → centre.x → value: found value 2.47E-321 in SI; wanted: a size");
  }

  @Test
  void anExpectedValueKeepsTheUnitInWhichItIsWritten() {
    DeviceFile file =
        Reads.file(
            """
            format: 1
            device: x
            units: us
            points: {A: [0, 0], B: [0, 1]}
            members: {m: [A, B]}
            connections: {hold: {clamp: A, joins: [m, ground]}}
            loads: {hand: {force: 3, direction: left, member: m, at: B}, w: {weight: 2, member: m}}
            expect:
              hold.x: {value: 3, digits: 2}
              hold.y: {value: 9 N, digits: 2}
              hold.couple: {value: 36 in·lbf, digits: 2}
              centre.x: {value: 0, digits: 2}
              centre.y: {value: 0 ft 6 in, digits: 2}
              hand.direction: {value: 0.5 turn, digits: 2}
              hold.x per hand.x: {value: 100 %, digits: 2}
            """);
    assertThat(file.expectations())
        .extracting(one -> ((Expected.Amount) one.value()).unit())
        .containsExactly(
            Unit.parse("lbf"),
            Unit.parse("N"),
            Unit.parse("lbf·in"),
            Unit.parse("ft"),
            Unit.parse("in"),
            Unit.parse("turn"),
            Unit.parse("%"));
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
  }

  @Test
  void aFileOnDiskIsReadByItsName(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("press.yaml"), PRESS);
    assertThat(DeviceFileReader.read(file)).isEqualTo(DeviceFileReader.read(PRESS, "press.yaml"));
    assertThat(Reads.sentences(DeviceFileReader.read(folder.resolve("none.yaml"))))
        .containsExactly("none.yaml:1:1: file: found no readable file; wanted: a device file");
    assertThat(Reads.sentences(DeviceFileReader.read(folder))).hasSize(1);
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    byte[] marked = ("\uFEFF" + PRESS).getBytes(StandardCharsets.UTF_8);
    assertThat(DeviceFileReader.read(marked, "a")).isEqualTo(DeviceFileReader.read(PRESS, "a"));
  }
}
