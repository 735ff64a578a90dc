package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is said about whether a device stands, and how it gives way. */
final class VerdictTextTest {

  private static String ladder(String friction, String load) {
    return SmallReport.of(
        """
        device: ladder
        points: {foot: [0, 0], top: [1.5, 3.6]}
        members: {ladder: {bars: [foot, top], weight: 120}}
        connections:
          floor: {contact: foot, joins: [ladder, ground], push: up, friction: FRICTION}
          wall: {roller: top, joins: [ladder, ground], push: left, sides: one}
        loads: {picker: {force: LOAD, direction: down, member: ladder, at: top}}
        """
            .replace("FRICTION", friction)
            .replace("LOAD", load));
  }

  @Test
  void aLadderThatStandsTellsWhatIsToSpare() {
    // with μ = 0.4 and P at the top: (1.5 P + 90) / 3.6 = 0.4 (P + 120), so P = 1380
    // at 690 N the foot needs 312.5 / 810 = 0.3858
    assertThat(ladder("0.4", "690"))
        .contains(
            """

            Holds, and has 100 % to spare on "picker". Of the stated friction 96.5 % is
            enough.

            How far it can go
              "picker": up to 2.000 times (1380 N), 100 % to spare
                - beyond that: floor slides left: ladder turns clockwise about a point at
                  (0 m, 3.600 m)

            Parts that can only push or pull
              part   state    push or pull (N)  needs μ  has μ
              floor  carries             810.0   0.3858    0.4
              wall   carries             312.5
            """);
  }

  @Test
  void aLadderThatSlidesTellsWhatWouldHelp() {
    // with μ = 0.25: (1.5 P + 90) / 3.6 = 0.25 (P + 120), so P = 30; at 720 N μ = 325 / 840
    assertThat(ladder("0.25", "720"))
        .contains(
            """

            Does not hold: floor slides left: ladder turns clockwise about a point at (0 m,
            3.600 m). It would hold up to 0.04167 times "picker", or with 1.548 times the
            stated friction.
            The forces below are those that balance would need if every part held. They ask
            of a part what it cannot give:
              Contact "floor" would need more friction than μN: 325.0 N, and there is
                210.0 N at most.

            How far it can go
              "picker": up to 0.04167 times (30.00 N)
            """)
        .doesNotContain("Parts that can only");
  }

  @Test
  void nothingToSpare() {
    assertThat(
            SmallReport.of(
                """
                device: block
                points: {b: [0, 0]}
                joints: [b]
                connections: {floor: {contact: b, joins: [b, ground], push: up, friction: 0.5}}
                loads:
                  block: {weight: 100, joint: b}
                  pull: {force: 50, direction: right, joint: b}
                """))
        .contains(
            """

            About to give way, with nothing to spare: floor slides right: b moves right.

            How far it can go
              "pull": up to 1.000 times (50.00 N)
                - beyond that: floor slides right: b moves right
            """)
        .contains("  floor  about to slip             100.0   0.5000    0.5\n");
  }

  @Test
  void whatMustBePressedTogetherFirst() {
    // each side carries half of 100 N, so it must be pressed with 50 / 0.4
    assertThat(
            SmallReport.of(
                """
                device: block between two boards
                points: {l: [-0.1, 0], r: [0.1, 0], b: [0, 0]}
                members: {block: [l, b, r]}
                connections:
                  left: {contact: l, joins: [block, ground], push: right, friction: 0.4}
                  right: {contact: r, joins: [block, ground], push: left, friction: 0.4}
                loads: {w: {weight: 100, member: block, at: b}}
                """))
        .contains(
            """

            Can hold once seated: only if "left" and "right" were pressed together
            beforehand. How the parts were put together decides, and statics does not know
            it. Hardly any friction is enough.
            """)
        .contains("  left   carries     125.0 or more     open    0.4\n")
        .contains(
            """
              left.normal   125.0 N  no end    125.0 N
            """)
        .contains("  * in the state with the least pushes and pulls: an assumption on how the\n");
  }

  @Test
  void aLoadThatNothingHolds() {
    assertThat(
            SmallReport.of(
                """
                device: hanging lever
                points: {a: [0, 0], b: [1, 0], c: [1, 1]}
                members: {lever: [a, b]}
                connections: {stay: {line: [b, c], joins: [lever, ground]}}
                loads: {basket: {force: 100, direction: right, member: lever, at: a}}
                """))
        .contains("\nDoes not hold: lever slides right.\nThere are no reactions to tell.\n")
        .doesNotContain("Forces of the connections");
  }

  @Test
  void rangesOfEffortsTellBothWaysOfGivingWay() {
    // 100 × tan(10° ± atan 0.2)
    assertThat(
            SmallReport.of(
                """
                device: block on a slope
                points: {b: [0, 0]}
                joints: [b]
                connections: {slope: {contact: b, joins: [b, ground], push: 100 deg, friction: 0.2}}
                loads: {block: {weight: 100, joint: b}}
                seek: {push: {want: force, direction: right, joint: b}}
                """))
        .contains("\nHolds with \"push\" as told below.\n")
        .contains(
            """
              push: anything from -2.287 N to 39.01 N right (negative: the other way) on
                "b" at "b"; it holds without any as well
                - with less: slope slides left and down at 10° to the level: b moves left
                  and down at 10° to the level
                - with more: slope slides right and up at 10° to the level: b moves right
                  and up at 10° to the level
            """);
  }

  @Test
  void aLoadThatIsTooSmallToHold() {
    // 100 tan(30° − atan 0.2) = 33.83, and 100 tan(30° + atan 0.2) = 87.88
    // at 20 N: μ = (100 sin 30° − 20 cos 30°) / (100 cos 30° + 20 sin 30°) = 0.3383
    assertThat(
            SmallReport.of(
                """
                device: block on a slope
                points: {b: [0, 0]}
                joints: [b]
                connections: {slope: {contact: b, joins: [b, ground], push: 120 deg, friction: 0.2}}
                loads:
                  block: {weight: 100, joint: b}
                  push: {force: 20, direction: right, joint: b}
                """))
        .contains(
            """
            Does not hold: slope slides left and down at 30° to the level: b moves left and
            down at 30° to the level. It would hold from 1.691 times "push" on, or with
            1.691 times the stated friction.
            """)
        .contains("  \"push\": up to 4.394 times (87.88 N); at least 1.691 times (33.83 N)\n");
  }

  @Test
  void aScrewThatHoldsByItself() {
    // W r tan(φ ± λ) with tan φ = 0.15 and tan λ = 6 / (2π × 15)
    assertThat(
            SmallReport.of(
                """
                device: jack
                points: {a: [0, 0], b: [0, 1]}
                members: {head: [b, a]}
                connections:
                  screw: {screw: [a, b], joins: [ground, head], lead: 6 mm, mean radius: 15 mm, friction: 0.15}
                  guide: {guide: b, joins: [head, ground], along: up}
                loads: {roof: {force: 6000, direction: down, member: head, at: b}}
                seek: {crank: {want: couple, screw: screw}}
                """))
        .contains(
            """
              crank: anything from -7.697 N·m to 19.41 N·m (positive drives its ends
                apart) on "screw"; it holds without any as well
                - with less: screw turns in its thread, lowering its load
                - with more: screw turns in its thread, raising its load
            """);
  }

  @Test
  void limitsOfTheFileOneByOne() {
    String text =
        SmallReport.of(
            """
            device: plank on two trestles
            points: {a: [0, 0], b: [2, 0], end: [3, 0], far: [9, 0], left: [-1, 0], out: [-2, 0]}
            members: {plank: {bars: [left, end], weight: 100}}
            connections:
              near: {contact: a, joins: [plank, ground], push: up, friction: 0.5}
              away: {contact: b, joins: [plank, ground], push: up, friction: 0.5}
            loads:
              sitter: {force: 400, direction: down, member: plank, at: b}
              pull: {force: 20, direction: right, member: plank, at: b}
            limits:
              walking: {move: sitter, from: a, to: end}
              beside: {move: sitter, from: end, to: far}
              standing: {move: sitter, from: a, to: b}
              pulling: {vary: pull}
              sitting: {vary: sitter}
              both: {vary: [sitter, pull]}
            """);
    // about b: 100 × 1 = 400 x, so 2.25 m; pull up to 0.5 × 500
    assertThat(text)
        .contains(
            """
            How far it can go
              walking, "sitter" from a towards end: up to 2.250 m
                - beyond that: near lifts off: plank turns clockwise about b
              beside, "sitter" from end towards far: holds at no place
              standing, "sitter" from a towards b: all the way, 2.000 m
              pulling, "pull": up to 12.50 times (250.0 N)
                - beyond that: near slides right, away slides right: plank slides right
            """)
        .contains("  sitting, \"sitter\": ")
        .contains(
            "  both, all loads but weights: "
                .replace("all loads but weights", "\"sitter\" and \"pull\""));
  }

  @Test
  void baseOnGround() {
    // N = 1000, e = 200 × 0.5 / 1000 = 0.1 m; kern 0.6 / 6; p = 1000 / 0.3 × (1 ± 1)
    String device =
        """
        device: post on clay
        points: {foot: [0, 0], head: [0, 0.5]}
        members: {post: {bars: [foot, head], weight: 1000}}
        connections:
          foot: {contact base: foot, joins: [post, ground], push: up, width: 0.6, friction: 0.4}
        loads: {push: {force: PUSH, direction: right, member: post, at: head}}
        ground: {foot: {length: 0.5, pressure: 6 kPa, source: a report}}
        """;
    assertThat(SmallReport.of(device.replace("PUSH", "200")))
        .contains(
            """
            Ground under "foot"
              the whole base is pressed: 0 kPa at the left edge, 6.667 kPa at the right
                edge
              the force is 0.1000 m right of the middle; up to 0.1000 m the whole base is
                pressed; effective width 0.4000 m
              presses with 1000 N; so placed and inclined, the ground bears 1200 N and
                sinks beyond; 83.3 % of that is used
              source of that: a report
              pushed sideways with 200.0 N; it slides at 400.0 N
            """);
    // e = 0.15 m: 3 × (0.3 − 0.15) is pressed, p = 2 × 1000 / (0.45 × 0.5); B' = 0.3
    assertThat(SmallReport.of(device.replace("PUSH", "300")))
        .contains("Does not hold: foot sinks into the ground")
        .contains("The forces below are those that balance would need if every part held.\n")
        .contains(
            """
              a part of the base lifts, 0.4500 m of 0.6000 m is pressed: 0 kPa at the left
                edge, 8.889 kPa at the right edge
            """)
        .contains("the ground bears 900.0 N");
  }
}
