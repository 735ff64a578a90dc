package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is said about how a balance comes out. */
final class OutcomeTextTest {

  @Test
  void aLineThatWouldHaveToPush() {
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
            The forces below are those that balance would need if every part held. They ask
            of a part what it cannot give:
              Line "stay" would have to push with 100.0 N, and it can only pull.
            """)
        .contains("Does not hold: stay goes slack: lever turns counter-clockwise about a.")
        .contains("  stay *  line      100.0  would have to push\n")
        .contains("\nMotion and restraint, while every contact and rope holds\n")
        .doesNotContain("In balance")
        .doesNotContain("Conditions broken");
  }

  @Test
  void aRollerThatWouldHaveToPull() {
    assertThat(
            SmallReport.lever(
                """
                connections:
                  hinge: {pin: a, joins: [lever, ground]}
                  rest: {roller: m, joins: [lever, ground], push: up, sides: one}
                loads: {lift: {force: 100, direction: up, member: lever, at: b}}
                """))
        .contains(
            """
              Roller "rest" would have to pull with 200.0 N, and it can only push.
            """);
  }

  @Test
  void aContactThatSlips() {
    assertThat(
            SmallReport.lever(
                """
                connections:
                  foot: {contact: b, joins: [lever, ground], push: up, friction: 0.2}
                  hold: {roller: a, joins: [lever, ground], push: up}
                loads:
                  basket: {force: 100, direction: down, member: lever, at: b}
                  push: {force: 30, direction: left, member: lever, at: b}
                """))
        .contains(
            """
              Contact "foot" would need more friction than μN: 30.00 N, and there is
                20.00 N at most.
            """)
        .containsPattern("with\\s+1\\.500\\s+times\\s+the\\s+stated")
        .doesNotContain("times all loads");
  }

  @Test
  void neededFrictionStandsBesideTheForces() {
    String device =
        """
        connections:
          foot: {contact: b, joins: [lever, ground], push: up, friction: 0.25}
          smooth: {contact: m, joins: [lever, ground], push: up, friction: 0}
        loads:
          basket: {force: 100, direction: down, member: lever, at: b}
          push: {force: SIZE, direction: left, member: lever, at: b}
        """;
    assertThat(SmallReport.lever(device.replace("SIZE", "30")))
        .contains("  foot *      lever  30.00  100.0     104.4  right and up, 73.3°\n")
        .contains("\n  * balance needs this, but the part cannot give it\n")
        .doesNotContain("needs μ");
    assertThat(SmallReport.lever(device.replace("SIZE", "20")))
        .contains(
            """
              part    state    push or pull (N)  needs μ  has μ
              foot    carries             100.0   0.2000   0.25
              smooth  open                    0
            """);
    assertThat(SmallReport.lever(device.replace("SIZE", "0")))
        .contains("  foot    carries             100.0     none   0.25\n")
        .doesNotContain("*");
  }

  @Test
  void aBaseThatTips() {
    assertThat(
            SmallReport.lever(
                """
                connections:
                  foot: {contact base: m, joins: [lever, ground], push: up, width: 0.4, friction: 1}
                loads: {basket: {force: 100, direction: down, member: lever, at: b}}
                """))
        .contains(
            """
              Contact base "foot" would need its normal force outside the base: 0.5000 m
                from its middle, and it reaches 0.2000 m.
            """)
        .contains("couple (N·m)");
  }

  @Test
  void ropesThatSlipRoundAPost() {
    String device =
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
        loads:
          basket: {force: 150, direction: down, joint: left}
          hand: {force: HAND, direction: down, joint: right}
        """;
    assertThat(SmallReport.of(device.replace("HAND", "30")))
        .contains(
            """
              Wrap "rope" would need more friction round the post than there is: a ratio
                of tensions of 5.000, and there is 2.566 at most.
            """);
    assertThat(SmallReport.of(device.replace("HAND", "0")))
        .contains(
            """
              Wrap "rope" would need more friction round the post than there is: no ratio
                of tensions is enough.
            """);
  }

  @Test
  void aMotionThatTheLoadsDoNotDrive() {
    assertThat(
            SmallReport.lever(
                """
                connections:
                  left: {roller: a, joins: [lever, ground], push: up}
                  right: {roller: b, joins: [lever, ground], push: up}
                loads: {basket: {force: 100, direction: down, member: lever, at: m}}
                """))
        .contains("In balance for just these loads. It can still move freely,")
        .contains("  it can move in 1 way:\n    - lever ");
  }

  @Test
  void noBalance() {
    assertThat(
            SmallReport.lever(
                """
                connections: {hinge: {pin: a, joins: [lever, ground]}}
                loads: {basket: {force: 100, direction: down, member: lever, at: b}}
                """))
        .contains("No balance: lever turns clockwise about a. There are no reactions to tell.\n")
        .doesNotContain("Forces of the connections")
        .doesNotContain("Check:");
  }

  @Test
  void frictionInAPinLeavesRanges() {
    assertThat(
            SmallReport.lever(
                """
                connections:
                  hinge: {pin: a, joins: [lever, ground], radius: 0.01, friction: 0.1}
                  stay: {line: [b, c], joins: [lever, ground]}
                loads: {basket: {force: 100, direction: down, member: lever, at: m}}
                """))
        .contains(
            "\nHolds. It needs no friction.\nFriction in \"hinge\" leaves a range of forces.\n")
        // 100 N halved, and the couple r sin(atan μ) R over 1 m either way
        .contains(
            """
            Forces that equilibrium leaves open
              force                 from           to    assumed *
              hinge.x                0 N          0 N          0 N
              hinge.y            49.95 N      50.05 N      50.05 N
              hinge.couple  -0.04970 N·m  0.04980 N·m  0.04980 N·m
              stay.tension       49.95 N      50.05 N      49.95 N
            """)
        .doesNotContain("no answer")
        .doesNotContain("Forces of the connections");
  }
}
