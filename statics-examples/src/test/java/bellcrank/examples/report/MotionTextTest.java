package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import bellcrank.examples.YamlFiles;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said about motions, and about restraints that are too many. */
final class MotionTextTest {

  private static final String FOUR_BAR =
      """
      format: 1
      device: crank and rocker
      units: {length: mm}
      points: {a: [0, 0], b: [0, 1000], c: [1500, 2000], d: [2000, 0]}
      members: {crank: [a, b], coupler: [b, c], rocker: [c, d]}
      connections:
        a: {pin: a, joins: [crank, ground]}
        b: {pin: b, joins: [crank, coupler]}
        c: {pin: c, joins: [coupler, rocker]}
        d: {pin: d, joins: [rocker, ground]}
      loads: {push: {force: 1, direction: right, member: crank, at: b}}
      """;

  private static String fourBar(UnitSystem units) {
    return ReportText.of(
        FileAnswer.of("test.yaml", YamlFiles.parse(FOUR_BAR), Optional.empty(), List.of()), units);
  }

  @Test
  void placesAreToldInTheUnitsOfTheAnswer() {
    assertThat(fourBar(YamlFiles.parse(FOUR_BAR).units()))
        .contains(
            """
            No balance: crank turns clockwise about a, coupler turns counter-clockwise about
            a point at (0 mm, 8000 mm) and rocker turns clockwise about d. There are no
            reactions to tell.
            """)
        .doesNotContain(" m)");
    assertThat(fourBar(UnitSystem.US))
        .contains("    - crank turns", "(0 ft, 26.25 ft)")
        .doesNotContain("mm)");
  }

  @Test
  void someWaysAreDueToASpecialShape() {
    assertThat(
            SmallReport.of(
                """
                device: pendulum beside a flat toggle
                points: {a: [0, 0], b: [1, 0], c: [2, 0], p: [5, 0], q: [5, -1]}
                members: {left: [a, b], right: [b, c], pendulum: [p, q]}
                connections:
                  a: {pin: a, joins: [left, ground]}
                  b: {pin: b, joins: [left, right]}
                  c: {pin: c, joins: [right, ground]}
                  p: {pin: p, joins: [pendulum, ground]}
                loads: {sack: {weight: 1 kg, member: pendulum, at: q}}
                """))
        .contains("  it can move in 2 ways:\n")
        .contains("  1 of these ways is free only because of a special shape\n");
  }

  @Test
  void whatTheGroundDoesNotHoldIsNamed() {
    String tongs =
        """
        device: tongs
        points: {o: [0, 0], l: [-1, 0], r: [1, 0]}
        members: {left: [o, l], right: [o, r]}
        connections: {o: {pin: o, joins: [left, right]}}
        """;
    assertThat(SmallReport.of(tongs))
        .contains("  nothing ties \"left\" and \"right\" to the ground\n");
    assertThat(
            SmallReport.of(
                tongs.replace("right]}}", "right]}, l: {pin: l, joins: [left, ground]}}")))
        .doesNotContain("nothing ties");
    assertThat(
            SmallReport.of(
                """
                device: knots
                points: {a: [0, 0], b: [1, 0], c: [2, 0], d: [3, 0], e: [4, 0], f: [5, 0], g: [6, 0], h: [7, 0]}
                joints: [a, b, c, d, e, f, g, h]
                """))
        .contains(
            "  nothing ties \"a\", \"b\", \"c\", \"d\", \"e\", \"f\" and 2 more to the ground\n");
  }

  @Test
  void motionsUnderBrokenConditionsAreThoseOfPartsThatHold() {
    assertThat(
            SmallReport.lever(
                """
                connections:
                  hinge: {pin: a, joins: [lever, ground]}
                  stay: {line: [b, c], joins: [lever, ground]}
                loads: {lift: {force: 100, direction: up, member: lever, at: b}}
                """))
        .contains(
            """
            Motion and restraint, while every contact and rope holds
              nothing can move
              no restraint is superfluous
            """);
  }

  @Test
  void moreIsSoughtThanBalanceCanTell() {
    assertThat(
            SmallReport.lever(
                """
                connections: {hinge: {pin: a, joins: [lever, ground]}}
                loads: {basket: {force: 100, direction: down, member: lever, at: b}}
                seek:
                  h: {want: components, member: lever, at: m}
                  k: {want: couple, member: lever}
                """))
        .contains(
            """
            Sought
              h: not fixed by statics
              k: not fixed by statics
              (2 values too many are sought: leave out some of "h" and "k", or state what
                is known as a load)
            """)
        .contains("  with them held, nothing can move\n");
  }

  @Test
  void whatFrictionMayHoldIsARange() {
    assertThat(
            SmallReport.of(
                """
                device: basket over a branch
                points: {left: [-0.1, -1], branch: [0, 0], right: [0.1, -1]}
                joints: [left, right]
                connections:
                  rope:
                    wrap:
                      - {end: left, joins: left}
                      - {post: branch, joins: ground, radius: 0.1, turns: clockwise}
                      - {end: right, joins: right}
                    friction: 0.3
                loads: {basket: {force: 150, direction: down, joint: left}}
                seek: {hand: {want: force, direction: down, joint: right}}
                """))
        .contains(
            """
              hand: anything from 58.45 N to 384.9 N down on "right" at "right"
                - with less: rope slips round its post towards left: left moves down and
                  right moves up
                - with more: rope slips round its post towards right: left moves up and
                  right moves down
            """)
        .doesNotContain("too many");
  }
}
