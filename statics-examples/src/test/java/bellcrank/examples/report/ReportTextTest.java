package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What each section says about what can happen. */
final class ReportTextTest {

  @Test
  void soughtQuantitiesOfEveryKind() {
    String hinge = "connections: {hinge: {pin: a, joins: [lever, ground]}}\n";
    String load = "loads: {lift: {force: 100, direction: up, member: lever, at: b}}\n";
    assertThat(
            SmallReport.lever(
                hinge + load + "seek: {h: {want: force, direction: up, member: lever, at: m}}"))
        .contains(
            "  h: 200.0 N down on \"lever\" at \"m\"; this is against the direction that was\n    stated\n");
    assertThat(SmallReport.lever(hinge + load + "seek: {h: {want: couple, member: lever}}"))
        .contains("  h: 100.0 N·m clockwise on \"lever\"\n");
    assertThat(SmallReport.lever(hinge + load + "seek: {h: {want: mass, member: lever, at: m}}"))
        .contains("  h: 20.39 kg on \"lever\" at \"m\"\n");
    assertThat(
            SmallReport.lever(
                hinge
                    + load.replace("up", "down")
                    + "seek: {h: {want: mass, member: lever, at: m}}"))
        .contains(
            "  h: -20.39 kg on \"lever\" at \"m\"; no mass can do this, something has to push\n    up\n");
    assertThat(
            SmallReport.lever(
                """
                connections: {r: {roller: b, joins: [lever, ground], push: up}}
                loads: {l: {force: [30, -40], member: lever, at: a}}
                seek: {h: {want: components, member: lever, at: a}}
                """))
        .contains("  h: 50.00 N left and up, 53.1° on \"lever\" at \"a\"; x -30.00 N, y 40.00 N\n")
        .contains("In balance: the connections and the sought \"h\" hold it.\n");
  }

  @Test
  void soughtIntensities() {
    String device =
        """
        connections: {hinge: {pin: a, joins: [lever, ground]}}
        loads: {lift: {force: 100, direction: up, member: lever, at: b}}
        seek: {h: {want: intensity, direction: WAY, member: lever, from: a, to: m}}
        """;
    assertThat(SmallReport.lever(device.replace("WAY", "down")))
        .contains("  h: 800.0 N/m down on \"lever\" from \"a\" to \"m\"\n");
    assertThat(SmallReport.lever(device.replace("WAY", "up")))
        .contains(
            "  h: 800.0 N/m down on \"lever\" from \"a\" to \"m\"; this is against the direction\n    that was stated\n");
    assertThat(SmallReport.lever(device.replace("WAY", "up").replace("force: 100", "force: 0")))
        .contains("  h: 0 N/m on \"lever\" from \"a\" to \"m\"\n");
  }

  @Test
  void aSoughtQuantityThatIsNotFixed() {
    assertThat(
            SmallReport.lever(
                """
                connections:
                  hinge: {pin: a, joins: [lever, ground]}
                  rest: {roller: b, joins: [lever, ground], push: up}
                loads: {basket: {force: 100, direction: down, member: lever, at: m}}
                seek: {h: {want: force, direction: up, member: lever, at: m}}
                """))
        .contains(
            "  h: not fixed by statics\n  (1 value too many is sought: leave out one of \"h\", or")
        .contains("  1 restraint is more than statics needs\n")
        .contains("  not fixed by statics: hinge.y, rest.normal, h\n");
  }

  @Test
  void nothingMoreThanWordsForAnAdvantageThatIsNone() {
    String lever =
        """
        connections: {hinge: {pin: a, joins: [lever, ground]}}
        loads: {hand: {force: SIZE, direction: WAY, member: lever, at: b}}
        seek: {ram: {want: force, direction: up, member: lever, at: m}}
        advantage: {effort: hand, resistance: ram}
        """;
    assertThat(SmallReport.lever(lever.replace("SIZE", "10").replace("WAY", "right")))
        .contains("Mechanical advantage, \"ram\" over \"hand\"\n  actual 0 (ratio of the forces,")
        .contains("\n  no ideal one: the effort does no work on what can move\n");
    assertThat(
            SmallReport.lever(
                lever
                    .replace("SIZE", "10")
                    .replace("WAY", "down")
                    .replace(
                        "{want: force, direction: up, member: lever, at: m}",
                        "{want: couple, member: lever}")))
        .contains("\n  none: the one is a couple and the other a force\n");
    assertThat(SmallReport.lever(lever.replace("SIZE", "10").replace("WAY", "down")))
        .contains("  ideal 2.000, actual 2.000\n");
    assertThat(
            SmallReport.lever(
                lever
                    .replace("SIZE", "10")
                    .replace("WAY", "down")
                    .replace("ground]}", "ground]," + " radius: 0.01, friction: 0.1}")))
        .contains("  ideal 2.000 (ratio of the velocities)\n  no actual one: friction in hinge");
  }

  @Test
  void aNameThatIsAWordOfAsksIsHintedAt() {
    String device =
        """
        connections: {centre: {pin: a, joins: [lever, ground]}}
        loads: {outcome: {couple: 3, member: lever}}
        ask: [centre.y, outcome, resultant.x]
        """;
    assertThat(SmallReport.lever(device))
        .contains("centre of gravity;\n    for the part of that name write \"centre\".y\n")
        .contains("  outcome = no balance; for the part of that name write \"outcome\"\n")
        .contains("  resultant.x = 0 N\n");
  }

  @Test
  void anExpectedValueIsToldInTheUnitInWhichItIsWritten() {
    assertThat(
            SmallReport.lever(
                """
                connections: {hinge: {pin: a, joins: [lever, ground]}}
                loads: {basket: {force: 100 lbf, direction: down, member: lever, at: b}}
                seek: {h: {want: force, direction: up, member: lever, at: b}}
                expect:
                  h: {value: 100 lbf, digits: 3}
                  h.y: {value: 440, digits: 2}
                """))
        .contains("  holds: h = 100 lbf to 3 digits, found 100.00 lbf\n")
        .contains("  holds: h.y = 440 N to 2 digits, found 444.8 N\n");
  }

  @Test
  void aShapeNearACriticalOne() {
    assertThat(
            SmallReport.of(
                """
                device: flat toggle
                points: {a: [0, 0], b: [1, 1e-8], c: [2, 0]}
                truss: [[a, b], [b, c]]
                connections:
                  a: {pin: a, joins: [a, ground]}
                  c: {pin: c, joins: [c, ground]}
                loads: {push: {force: 1, direction: down, joint: b}}
                """))
        .contains(
            "Near-critical shape\n  small errors in the shape matter much: a move of point \"")
        .containsPattern(
            "  \\(condition of the equations about \\de\\+0[78]: they may magnify small errors so\n");
  }

  @Test
  void equalPartsShare() {
    assertThat(
            SmallReport.lever(
                """
                connections:
                  hinge: {pin: a, joins: [lever, ground], count: 2}
                  stay: {strut: [b, c], joins: [lever, ground], count: 4}
                loads: {basket: {force: 100, direction: down, member: lever, at: m}}
                """))
        .contains("  hinge       lever          0  50.00     50.00  up\n")
        .contains("              each of 2      0  25.00     25.00  up\n")
        .contains("  stay  strut      50.00  pulls (tension)\n")
        .contains("                   12.50  each of 4\n");
  }

  @Test
  void aLostShareOfTheTensionIsShown() {
    assertThat(
            SmallReport.of(
                """
                device: hoist
                points: {block: [0, 2], hook: [0, 0], hand: [1, 0]}
                joints: [hook]
                connections:
                  rope:
                    reeving:
                      - {end: hand, joins: ground}
                      - {sheave: block, joins: ground}
                      - {end: hook, joins: hook}
                    efficiency: 0.9
                    hauling: raising
                loads: {sack: {force: 90, direction: down, joint: hook}}
                """))
        .contains(
            """
              part  kind     force (N)  what it does
              rope  reeving      100.0  pulls (tension)
                                 90.00  pulls (tension) at its last end
            """);
  }

  @Test
  void aCaseSaysItsFactors() {
    assertThat(
            SmallReport.lever(
                """
                connections: {hold: {clamp: a, joins: [lever, ground]}}
                loads:
                  snow: {force: 100, direction: down, member: lever, at: b}
                  wind: {force: 10, direction: right, member: lever, at: b}
                cases: {gust: {factors: {snow: 0.5, wind: 2}, dynamic: 1.1}, calm: {factors: {wind: 1}}}
                """))
        .contains(
            """

            Case gust: snow × 0.5, wind × 2, all loads × 1.1 (dynamic)
            ----------------------------------------------------------
            In balance: the connections hold it.

            Forces of the connections on the bodies (angles from the horizontal)
              connection  on      x (N)  y (N)  size (N)  direction           couple (N·m)
              hold        lever  -22.00  55.00     59.24  left and up, 68.2°         55.00
            """)
        .contains("\nCase calm\n---------\n");
  }
}
