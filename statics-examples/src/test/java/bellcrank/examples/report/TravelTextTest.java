package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.YamlFiles;
import bellcrank.examples.file.DeviceFile;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is told about a travel, as text, table, picture and JSON. */
class TravelTextTest {

  private static final String CRANK =
      """
      device: crank
      units: {length: m, force: lbf}
      points: {a: [0, 0], m: [0.5, 0], b: [1, 0], low: [0, 0.5], high: [2, 0.5]}
      members: {crank: [a, m, b]}
      connections: {axle: {pin: a, joins: [crank, ground]}}
      loads: {tub: {force: 10, direction: down, member: crank, at: b}}
      seek: {"hand, left": {want: force, direction: up, member: crank, at: m}}
      drive: {turn: crank}
      """;

  private static TravelAnswer answer(String sample) {
    DeviceFile file = YamlFiles.read(YamlFiles.device(sample));
    return TravelAnswer.of(file, file.device().cases().get(0)).orElseThrow();
  }

  private static TravelAnswer parsed(String text) {
    DeviceFile file = YamlFiles.parse("format: 1\n" + text);
    return TravelAnswer.of(file, file.device().cases().get(0)).orElseThrow();
  }

  private static String text(String sample) {
    DeviceFile file = YamlFiles.read(YamlFiles.device(sample));
    return ReportText.of(FileAnswer.of("a", file, Optional.empty(), List.of()), file.units());
  }

  @Test
  void theEndsTheTableAndTheExtremesAreTold() {
    assertThat(text("trough-lid-counterweight"))
        .contains(
            """

            Over the travel: turn of lid, counter-clockwise positive, 0 as drawn
              it begins at 0 deg: the stated limit
              it ends at 70.00 deg: the stated limit
              turn (deg)  hand (N)  point(lid end).y (m)  centre.y (m)  hinge.y (N)
                       0     15.00                0.6000        0.6857        195.0
            """)
        .contains("  hand: least -46.82 N at 70.00 deg, greatest 15.00 N at 0 deg\n")
        .contains("greatest 0.7030 m at 33.69 deg\n");
  }

  @Test
  void whatEndsATravelIsToldInWords() {
    assertThat(text("tongs-closing"))
        .contains("  it begins at -22.39 deg: right tip of arm A and ground meet\n")
        .contains(
            "  it ends at 11.72 deg: a dead centre, beyond which the drive would have to\n    turn back\n");
  }

  @Test
  void whereARatioPassesBeyondAllBoundsNoNumberIsGivenForIt() {
    String press =
        """
        device: bottle press
        points: {pivot: [0, 0.6], knee: [0.08, 0.33], plate: [0, 0.06], handle: [0.7, 0.42]}
        members:
          upper: {bars: [[pivot, knee], [pivot, handle]]}
          lower: [knee, plate]
          ram: {points: [plate]}
        connections:
          pivot: {pin: pivot, joins: [upper, ground]}
          knee: {pin: knee, joins: [upper, lower]}
          plate: {pin: plate, joins: [lower, ram]}
          bush: {guide: plate, joins: [ram, ground], along: up}
        loads: {hand: {force: 150, direction: down, member: upper, at: handle}}
        seek: {squeeze: {want: force, direction: up, member: ram, at: plate}}
        advantage: {effort: hand, resistance: squeeze}
        drive: {turn: upper}
        travel: {from: -20 deg, to: 10 deg}
        curves: [advantage.ideal, point(plate).y on ram]
        """;
    TravelAnswer answer = parsed(press);
    DeviceFile file = YamlFiles.parse("format: 1\n" + press);
    // by hand: the knee stands straight when it has turned by atan(80 / 270) = 16.50 deg
    assertThat(ReportText.of(FileAnswer.of("a", file, Optional.empty(), List.of()), UnitSystem.SI))
        .contains(
            """
              advantage.ideal: least without bound, near -16.50 deg, greatest without
                bound, near -16.50 deg
            """)
        .contains("  point(plate).y on ram: least 0.03679 m at -16.50 deg, greatest");
    assertThat(TravelChart.svg(answer, "bottle press", UnitSystem.SI))
        .contains("greatest: without bound, near -16.50 deg");
    FileAnswer all = FileAnswer.of("a", file, Optional.empty(), List.of());
    assertThat(ReportJson.of(List.of(all), List.of(), Optional.empty()))
        .contains("\"boundless\": true")
        .contains("\"boundless\": false");
  }

  @Test
  void aRatioWithoutBoundIsNotGivenAGreatestValue() {
    assertThat(text("press-toggle-closing"))
        .contains("    0.2000         0          –                –\n")
        .contains(
            """
              – no answer: the resistance does not move while the effort does (a dead
                centre), so the ratio has no bound
            """)
        .contains("greatest 5.573 at 0.1960 m and still\n    rising towards the end");
  }

  @Test
  void theAccountOfWorkIsGivenShortOfADeadCentre() {
    // the ram goes 0.38 m against 1000 N
    assertThat(text("press-toggle-closing"))
        .contains(
            """
              work from -0.2000 m to 0.1800 m: the efforts do 380.0 N·m, the loads do
                -380.0 N·m; nothing is left over (\
            """);
  }

  @Test
  void springsTakeUpWorkAndSheavesLoseSome() {
    String sprung =
        SmallReport.of(
            """
            device: sprung lever
            points: {a: [0, 0], b: [1, 0], c: [0, 1]}
            members: {lever: [a, b]}
            connections: {hinge: {pin: a, joins: [lever, ground]}}
            loads: {coil: {spring: 100 N/m, from: b, to: c, joins: [lever, ground], free length: 0.5}}
            seek: {turn: {want: couple, member: lever}}
            drive: {turn: lever}
            travel: {from: -30, to: 0, steps: 2}
            """);
    assertThat(sprung).contains("springs take up").contains("nothing is left over");
    String tackle =
        SmallReport.of(
            """
            device: well hoist
            points: {top: [0, 3], hand: [1, 0], tub: [-1, 0]}
            members: {tub: {points: [tub]}, hand: {points: [hand]}}
            connections:
              tub lead: {guide: tub, joins: [tub, ground], along: up}
              hand lead: {guide: hand, joins: [hand, ground], along: up}
              rope:
                reeving: [{end: hand, joins: hand}, {sheave: top, joins: ground, turns: counter-clockwise},
                    {end: tub, joins: tub}]
                efficiency: 0.8
                hauling: raising
            loads: {water: {force: 100, direction: down, member: tub, at: tub}}
            seek: {pull: {want: force, direction: down, member: hand, at: hand}}
            drive: {slide: tub, point: tub, along: up}
            travel: {from: 0, to: 0.5, steps: 2}
            """);
    assertThat(tackle).contains("is left over, in losses or in the adding up\n");
  }

  @Test
  void whatCannotBeDrivenIsTold() {
    String held =
        SmallReport.lever(
            """
            connections: {root: {clamp: a, joins: [lever, ground]}}
            drive: {turn: lever}
            travel: {from: 0, to: 9}
            """);
    assertThat(held)
        .endsWith(
            """
            Over the travel: turn of lever, counter-clockwise positive, 0 as drawn
              it cannot be driven so: nothing can move
            """);
    String loose =
        SmallReport.lever(
            """
            drive: {slide: lever, point: b, along: up}
            travel: {from: 0, to: 0.5}
            """);
    assertThat(loose)
        .contains(
            """
            Over the travel: way of b of lever, positive up, 0 as drawn
              it cannot be driven so: more than one motion is free. Free to move:
                - \
            """);
  }

  @Test
  void aConstantAndAnUnansweredCurveAreCalledSo() {
    String text =
        SmallReport.of(
            CRANK.replace("drive:", "advantage: {effort: tub, resistance: \"hand, left\"}\ndrive:")
                + "travel: {from: 0, to: 30, steps: 2}\ncurves: [axle.y, axle.direction, advantage]\n");
    assertThat(text).contains("  axle.y: -10.00 lbf all the way\n");
    String none =
        SmallReport.lever(
            """
            connections: {hinge: {pin: a, joins: [lever, ground]}}
            loads: {tub: {force: 3, direction: down, member: lever, at: b}}
            drive: {turn: lever}
            travel: {from: 0, to: 30, steps: 2}
            curves: [hinge.y]
            """);
    assertThat(none).contains("  hinge.y: no answer on the way\n");
  }

  @Test
  void longHeadsAreListedAboveTheTable() {
    String text =
        SmallReport.of(
            CRANK
                + "travel: {from: 0, to: 30, steps: 2}\n"
                + "curves: [group(crank).couple about high]\n");
    assertThat(text)
        .contains("  column (1): group(crank).couple about high (lbf·m)\n")
        .contains("  turn (deg)    (1)\n");
  }

  @Test
  void theTableIsWrittenAsCommaSeparatedValues() {
    TravelAnswer answer = parsed(CRANK + "travel: {from: 0, to: 60, steps: 2}\n");
    assertThat(
            TravelCsv.of(
                answer,
                UnitSystem.US.with(UnitSystem.SI.unit(bellcrank.statics.units.Dimension.LENGTH))))
        .isEqualTo(
            "turn of crank (deg),\"\"\"hand, left\"\" (lbf)\"\r\n0,20\r\n30,20\r\n60,20\r\n");
  }

  @Test
  void anAnswerThatThereIsNotLeavesItsCellEmpty() {
    String csv = TravelCsv.of(answer("press-toggle-closing"), UnitSystem.SI);
    assertThat(csv)
        .startsWith(
            "way of plate of ram (m),hand (N),advantage,advantage.ideal\r\n-0.2,2666.666667,")
        .endsWith(",,\r\n");
    assertThat(csv.split("\r\n", -1)).hasSize(11);
  }

  @Test
  void thePictureHasAxesWithUnitsAndTellsThePeak() {
    String svg = TravelChart.svg(answer("tongs-closing"), "tongs & log", UnitSystem.SI);
    assertThat(svg)
        .startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"")
        .doesNotContain("DOCTYPE")
        .contains("<title>tongs &amp; log</title>")
        .contains("Over the turn of arm A (deg):")
        .contains("\npull (N), greatest: 1635 N at -22.39 deg\n")
        .contains("<ellipse")
        .endsWith("</svg>\n")
        .isEqualTo(TravelChart.svg(answer("tongs-closing"), "tongs & log", UnitSystem.SI));
  }

  @Test
  void nothingIsDrawnWithoutAValue() {
    TravelAnswer none =
        parsed(
            """
            device: post
            points: {foot: [0, 0], head: [0, 1]}
            members: {post: [foot, head]}
            connections: {foot: {pin: foot, joins: [post, ground]}}
            drive: {turn: post}
            travel: {from: 0, to: 10 deg}
            """);
    assertThat(none.curves()).isEmpty();
    assertThat(TravelChart.isDrawable(none)).isFalse();
    assertThat(TravelChart.isDrawable(answer("scissor-jack"))).isTrue();
  }
}
