package bellcrank.examples.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.strength.CheckResult.NotChecked;
import bellcrank.statics.strength.ColumnEnds;
import bellcrank.statics.strength.FilletWeld;
import bellcrank.statics.strength.PinJoint;
import bellcrank.statics.strength.Rating;
import bellcrank.statics.strength.Section;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sections, materials and details in device files. */
class SizingReaderTest {

  private static final String DEVICE =
      """
      format: 1
      device: lever and prop
      points: {A: [0, 0], B: [1, 0], C: [1, -1]}
      members: {m: [A, B]}
      connections: {pin: {pin: A, joins: [m, ground]}, prop: {strut: [B, C], joins: [m, ground]}}
      loads: {push: {force: 1 kN, direction: down, member: m, at: B}}
      """;

  private static DeviceFile file(String sizing) {
    DeviceFile file = Reads.file(DEVICE + sizing + "\n");
    assertThat(Reads.file(DeviceFileWriter.write(file))).isEqualTo(file);
    return file;
  }

  private static SizingStatement sizing(String inside) {
    return file("sizing: {method: allowable, " + inside + "}").sizing().orElseThrow();
  }

  private static Section section(String section) {
    return sizing("parts: {m: {section: " + section + "}}")
        .parts()
        .values()
        .iterator()
        .next()
        .whole()
        .section()
        .orElseThrow()
        .section();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      value = {
        "{rectangle: [20 mm, 40 mm]}¦8e-4",
        "{round: 20 mm}¦3.14159265e-4",
        "{pipe: [20 mm, 10 mm, ]}¦0",
        "{pipe: [40 mm, 10 mm]}¦9.4247780e-4",
        "{tube: [60 mm, 40 mm, 3 mm]}¦5.64e-4",
        "{angle: [50 mm, 50 mm, 5 mm]}¦4.75e-4",
        "{channel: [100 mm, 50 mm, 5 mm, 8 mm]}¦1.22e-3",
        "{beam: [100 mm, 50 mm, 5 mm, 8 mm]}¦1.22e-3",
        "{tee: [100 mm, 50 mm, 5 mm, 8 mm]}¦8.6e-4",
        "{round: 20 mm, side by side: 2, gap: 5 mm}¦6.2831853e-4",
        "{round: 20 mm, separate: 3}¦9.4247780e-4",
        "{rectangle: [20 mm, 40 mm], holes: [{diameter: 10 mm, height: 20 mm}]}¦6e-4",
        "{rectangle: [20 mm, 40 mm], holes: [{diameter: 10 mm, offset: 10 mm, from: 0, to: 8 mm}]}¦7.2e-4",
        "{rectangle: [20 mm, 40 mm], notch above: 10 mm, notch below: 5 mm}¦5e-4",
        "{angle: [50 mm, 50 mm, 5 mm], back to back: 6 mm}¦9.5e-4",
        "{rectangle: [20 mm, 40 mm], stands: turned}¦8e-4"
      })
  void aFormHasItsArea(String section, double area) {
    if (area > 0) {
      assertThat(section(section).area()).isCloseTo(area, within(1e-9));
    } else {
      Assertions.assertThat(
              Reads.problems(
                  DEVICE + "sizing: {method: allowable, parts: {m: {section: " + section + "}}}\n"))
          .isNotEmpty();
    }
  }

  @Test
  void aTurnedSectionHasItsWidthInThePlane() {
    assertThat(section("{rectangle: [20 mm, 40 mm], stands: turned}").inertia())
        .isCloseTo(0.04 * Math.pow(0.02, 3) / 12, within(1e-15));
  }

  @Test
  void anOwnSectionHasThePropertiesOfItsTable() {
    Section own =
        section(
            "{own: {name: T 1, area: 1000 mm^2, top: 40 mm, bottom: 30 mm, gyration: 20 mm, shear area:"
                + " 500 mm^2, side gyration: 15 mm, side reach: 25 mm, thickness: 8 mm, least gyration:"
                + " 10 mm}}");
    assertThat(own.inertia()).isCloseTo(4e-7, within(1e-15));
    assertThat(own.firstMoment() / own.inertia() / own.webWidth()).isCloseTo(2000, within(1e-6));
    assertThat(own.leastGyration()).isCloseTo(0.01, within(1e-12));
  }

  /** A table's 40 cm⁴, 10 and 13.33 cm³: 40/10 = 4 cm to the top, 3 cm to the bottom. */
  @Test
  void anOwnSectionMayHaveSecondMomentsAndModuli() {
    Section own =
        section(
            "{own: {name: T 1, area: 1000 mm^2, top modulus: 10 cm^3, bottom modulus: 13333.333333 mm^3,"
                + " second moment: 40 cm^4, shear area: 500 mm^2, side second moment: 225000 mm^4,"
                + " side modulus: 9 cm3, thickness: 8 mm, least second moment: 10 cm4}}");
    assertThat(own.inertia()).isCloseTo(4e-7, within(1e-18));
    assertThat(own.top()).isCloseTo(0.04, within(1e-12));
    assertThat(own.bottom()).isCloseTo(0.03, within(1e-10));
    assertThat(own.sideInertia()).isCloseTo(2.25e-7, within(1e-18));
    assertThat(own.sideReach()).isCloseTo(0.025, within(1e-12));
    assertThat(own.leastGyration()).isCloseTo(0.01, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      value = {
        "gyration: 20 mm, second moment: 40 cm^4¦either gyration or second moment",
        "second moment: 0 cm^4¦a second moment of area above 0",
        "second moment: 40 cm^3¦a second moment of area"
      })
  void aSecondMomentIsStatedOnce(String bending, String words) {
    assertThat(
            Reads.problems(
                DEVICE
                    + "sizing: {method: allowable, parts: {m: {section: {own: {name: T, area: 1000 mm^2,"
                    + " top: 40 mm, bottom: 30 mm, shear area: 500 mm^2, side gyration: 15 mm,"
                    + " side reach: 25 mm, thickness: 8 mm, "
                    + bending
                    + "}}}}}\n"))
        .anySatisfy(problem -> assertThat(problem.toString()).contains(words));
  }

  @Test
  void aTableMaterialHasTheStrengthOfItsThickness() {
    SizingStatement thick =
        sizing("parts: {m: {section: {round: 30 mm}, material: S235 (EN 10025-2)}}");
    assertThat(thick.sizing().sized("m").orElseThrow().material().strengths()).containsValue(225e6);
  }

  @Test
  void aBarMayDifferFromTheOthers() {
    SizingStatement sizing =
        sizing(
            "parts: {m: {material: S235 (EN 10025-2), bars: [{bar: [A, B], section: {round: 20 mm}}]}}");
    assertThat(sizing.sizing().bars()).containsKey("m");
    assertThat(sizing.sizing().parts()).isEmpty();
  }

  @Test
  void detailsAreWhatTheFileStates() {
    SizingStatement sizing =
        sizing(
            """
            materials: {my steel: {kind: steel, elasticity: 200 GPa, yield: 200 MPa, source: a test}},
             columns: [{part: prop}, {part: m, from: A, to: B, in plane: 1, side: 2, ends: free at B}],
             pins: {pin: {diameter: 10 mm, planes: 2, material: my steel, plates: [{on: m, thickness: 5 mm,
             hole: 11 mm, end: 20 mm, width: 40 mm, material: my steel}]}},
             welds: {foot: {member: m, bar: [A, B], distance: 0.1, leg: 3 mm, box: [40 mm, 60 mm],
             material: my steel}, lug: {connection: pin, on: m, throat: 2 mm, seams: [[0, 0, 50 mm, 0]],
             material: my steel}},
             ratings: {prop: {limit: 2 kN, source: a tag, legs: 2, leg angle: 60 deg}, fitting: {part: pin,
             table: Grade 80 chain 3/8 in, reductions: [{why: clips, table: "rope end: clips"}]}},
             seats: {notch: {part: pin, on: m, depth: up, opening: 60 deg, friction: 0.1}},
             rules: {shear: {factor: 2, why: a test}}\
            """);
    assertThat(sizing.sizing().details()).hasSize(8);
    ColumnEnds ends = (ColumnEnds) sizing.sizing().details().get(1);
    assertThat(ends.side()).isEqualTo(2);
    PinJoint pin = (PinJoint) sizing.sizing().details().get(2);
    assertThat(pin.plates().get(0).hole()).isCloseTo(0.011, within(1e-15));
    FilletWeld weld = (FilletWeld) sizing.sizing().details().get(3);
    assertThat(weld.throat()).isCloseTo(0.003 / Math.sqrt(2), within(1e-15));
    assertThat(weld.lines()).hasSize(4);
    Rating fitting = (Rating) sizing.sizing().details().get(6);
    assertThat(fitting.reducedLimit()).isCloseTo(0.8 * 7100 * 4.4482216152605, within(1e-6));
    assertThat(sizing.allRules().all())
        .filteredOn(rule -> rule.check().name().equals("shear"))
        .first()
        .satisfies(rule -> assertThat(rule.factor().value()).isEqualTo(2))
        .satisfies(rule -> assertThat(rule.source()).endsWith("factor: a test"));
  }

  @Test
  void whatHasNoMaterialIsToldAsNotChecked() {
    SizingStatement sizing =
        sizing(
            "pins: {pin: {diameter: 10 mm}}, welds: {foot: {member: m, bar: [A, B], distance: 0, leg: 3 mm,"
                + " box: [4 mm, 4 mm]}}");
    assertThat(sizing.unfinished())
        .containsExactly(
            new NotChecked("pin", "pin with its plates", "no material is stated"),
            new NotChecked("m", "foot", "no material is stated"));
    assertThat(sizing.sizing().details()).isEmpty();
  }

  @Test
  void loadsMayGrow() {
    DeviceFile file =
        file("sizing: {method: resistance}\ndriving: {loads: push, tell: [prop.compression]}");
    assertThat(file.driving().orElseThrow().loads()).containsExactly("push");
    assertThat(
            file("sizing: {method: resistance}\ndriving: {loads: all}")
                .driving()
                .orElseThrow()
                .loads())
        .isEmpty();
    assertThat(file("sizing: {method: resistance}").driving()).isEmpty();
  }

  @Test
  void aSizingMayBeExpectedToGive() {
    DeviceFile file =
        file(
            """
            sizing: {method: allowable, ratings: {prop: {limit: 2 kN, source: a tag}}}
            driving: {loads: push}
            expect:
              first multiple: {value: 2, digits: 3}
              first part: {value: prop}
              "at first multiple: prop.compression": {value: 2 kN, digits: 3}
              "utilisation of prop: working load limit": {value: 50 %, digits: 3}""");
    assertThat(file.expectations()).hasSize(4);
    assertThat(StrengthAsk.of(file.expectations().get(0).ask()))
        .isEqualTo(Optional.of(new StrengthAsk(StrengthAsk.Kind.FIRST_MULTIPLE, "")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "parts: {n: {}}¦7:37: sizing → parts → n: found \"n\"; wanted: a member or strut of the device (m,"
            + " prop)",
        "parts: {m: {section: {tube: [60 mm, 40 mm, 30 mm]}}}¦7:50: sizing → parts → m → section: found wall"
            + " 0.03; wanted: above 0 and below 0.03 m, half of the width",
        "parts: {m: {section: {round: -1 mm}}}¦7:50: sizing → parts → m → section: found diameter -0.001",
        "parts: {m: {section: {round: 60}}}¦7:50: sizing → parts → m → section: found size 60 m; wanted: at"
            + " most 5 m; a bare number is in the file's unit",
        "parts: {m: {section: {round: 60 kg}}}¦7:58: sizing → parts → m → section → round: found \"60 kg\"",
        "parts: {m: {section: {ring: 60 mm}}}¦7:51: sizing → parts → m → section → ring: found the key"
            + " \"ring\"",
        "parts: {m: {material: S23}}¦7:51: sizing → parts → m → material: found \"S23\"; wanted: a material of"
            + " the file",
        "parts: {m: {bars: [{bar: [A, C]}]}}¦7:47: sizing → parts → m → bars: found",
        "materials: {s: {kind: steel, elasticity: 210, source: a}}¦7:70: sizing → materials → s →"
            + " elasticity: found elasticity 210.0 Pa; wanted: at least 10 kPa",
        "materials: {S235 (EN 10025-2): {kind: steel, elasticity: 210 GPa, source: a}}¦7:41: sizing →"
            + " materials → S235 (EN 10025-2): found \"S235 (EN 10025-2)\"; wanted: a name that no row",
        "columns: [{part: m}]¦7:39: sizing → columns: found column without ends",
        "columns: [{part: n}]¦7:46: sizing → columns → part: found \"n\"; wanted: a member or strut of",
        "pins: {prop: {diameter: 10 mm}}¦7:36: sizing → pins → prop: found \"prop\"; wanted: a pin of the"
            + " device (pin)",
        "pins: {pin: {diameter: 10 mm, planes: 3}}¦7:67: sizing → pins → pin → planes: found",
        "welds: {w: {member: m, bar: [A, B], distance: 2, leg: 3 mm, box: [4 mm, 4 mm]}}¦7:75: sizing →"
            + " welds → w → distance: found distance 2.0; wanted: 0 to 1.0 m",
        "welds: {w: {connection: pin, on: m, leg: 3 mm, box: [4 mm, 4 mm], material: S235 (EN"
            + " 10025-2)}}¦7:37: sizing → welds → w: found thickness none; wanted: the thickness of the joined",
        "ratings: {r: {limit: 1 kN, source: a}}¦7:39: sizing → ratings → r: found \"r\"; wanted: a"
            + " connection of the device (pin, prop)",
        "ratings: {pin: {table: a rope}}¦7:39: sizing → ratings → pin: found",
        "ratings: {pin: {limit: 500 kg, source: a}}¦7:52: sizing → ratings → pin → limit: found \"500 kg\"",
        "seats: {s: {part: pin, on: n, depth: up, opening: 60 deg, friction: 0.1}}¦7:56: sizing → seats → s"
            + " → on: found \"n\"; wanted: a body of pin (m, ground)",
        "rules: {bending: {factor: 2, why: a}}¦7:37: sizing → rules → bending: found \"bending\"; wanted: a"
            + " check: stress at the top face"
      })
  void aMistakeIsToldWithItsPlace(String inside, String problem) {
    assertThat(Reads.problems(DEVICE + "sizing: {method: allowable, " + inside + "}\n"))
        .first()
        .asString()
        .startsWith(problem);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '¦',
      quoteCharacter = '´',
      value = {
        "driving: {loads: pull}¦8:18: driving → loads: found \"pull\"",
        "driving: {loads: []}¦8:18: driving → loads: found []",
        "driving: {loads: push, tell: [outcome]}¦8:31: driving → tell: found \"outcome\"; wanted: an ask for a"
            + " number that balance gives",
        "expect: {\"at first multiple: n\": {value: 1, digits: 1}}¦8:10: expect → at first multiple: n:"
            + " found \"n\"",
        "expect: {\"at first multiple: outcome\": {value: 1, digits: 1}}¦8:10: expect → at first multiple:"
            + " outcome: found"
      })
  void whatGrowsMustBeThere(String text, String problem) {
    assertThat(Reads.problems(DEVICE + "sizing: {method: allowable}\n" + text + "\n"))
        .first()
        .asString()
        .startsWith(problem);
  }

  @Test
  void aDrivingNeedsASizing() {
    DeviceFile plain = Reads.file(DEVICE);
    Assertions.assertThatThrownBy(
            () ->
                new DeviceFile(
                    plain.device(),
                    plain.about(),
                    plain.units(),
                    List.of(),
                    List.of(),
                    plain.limits(),
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    Inquiries.NOTHING,
                    Optional.empty(),
                    Optional.of(new Driving(List.of("push"), List.of()))))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("sections, of which one gives first");
    assertThat(Reads.problems(DEVICE + "driving: {loads: push}\n"))
        .first()
        .asString()
        .contains("found no key sizing");
  }

  @Test
  void aSectionTooThickForItsMaterialIsRefusedAtItsPlace() {
    assertThat(
            Reads.problems(
                DEVICE
                    + """
                    sizing:
                      method: allowable
                      parts:
                        m: {section: {round: 300 mm}, material: S235 (EN 10025-2)}
                    """))
        .containsExactly(
            "10:5: sizing → parts → m: found thickness 0.3; wanted: above 0 and at most 0.1 m");
  }
}
