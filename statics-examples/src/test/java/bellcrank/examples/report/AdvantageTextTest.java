package bellcrank.examples.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is said about mechanical advantages that are negative or not to be had. */
final class AdvantageTextTest {

  private static final String HINGE = "hinge: {pin: a, joins: [lever, ground]}";

  @Test
  void aPressedStrutIsTheReasonOfAMinus() {
    assertThat(
            SmallReport.lever(
                """
                connections:
                  HINGE
                  ram: {strut: [m, [0.5, -1]], joins: [lever, ground]}
                loads: {sack: {force: 100, direction: down, member: lever, at: b}}
                advantage: {effort: ram, resistance: sack}
                """
                    .replace("HINGE", HINGE)))
        .contains("  ideal -0.5000, actual -0.5000\n")
        .contains("  (negative: \"ram\" is pressed, and tension counts positive)\n");
  }

  @Test
  void anEffortAgainstItsStatedDirectionIsTheReasonOfAMinus() {
    String device =
        """
        connections: {HINGE}
        loads: {sack: {force: 100, direction: down, member: lever, at: m}}
        seek: {hand: {want: force, direction: WAY, member: lever, at: b}}
        advantage: {effort: hand, resistance: sack}
        """
            .replace("HINGE", HINGE);
    assertThat(SmallReport.lever(device.replace("WAY", "down")))
        .contains("  ideal -2.000, actual -2.000\n")
        .contains("  (negative: \"hand\" acts against the direction that was stated)\n");
    assertThat(SmallReport.lever(device.replace("WAY", "up")))
        .contains("  ideal 2.000, actual 2.000\n")
        .doesNotContain("negative");
  }

  @Test
  void aCoupleClockwiseIsTheReasonOfAMinus() {
    assertThat(
            SmallReport.lever(
                """
                connections: {HINGE}
                loads: {motor: {couple: 10, member: lever}}
                seek: {brake: {want: couple, member: lever}}
                advantage: {effort: motor, resistance: brake}
                """
                    .replace("HINGE", HINGE)))
        .contains(
            "  (negative: \"brake\" turns clockwise, and counter-clockwise counts positive)\n");
  }

  @Test
  void aMinusWithoutForcesIsExplainedInGeneral() {
    String pliers =
        """
        device: pliers
        points: {nut a: [-1, -0.1], nut b: [-1, 0.1], o: [0, 0], hand a: [4, 0.1], hand b: [4, -0.1]}
        members: {upper: [nut a, o, hand a], lower: [nut b, o, hand b]}
        connections:
          o: {pin: o, joins: [upper, lower]}
          nut: {strut: [nut a, nut b], joins: [upper, lower]}
          grip: {strut: [hand a, hand b], joins: [upper, lower]}
        advantage: {effort: grip, resistance: nut}
        """;
    assertThat(SmallReport.of(pliers))
        .contains("  ideal -4.000 (ratio of the velocities)\n  no actual one: ")
        .contains(
            """
              (negative: where the one is pulled the other is pressed, and tension counts
                positive)
            """);
    String lever =
        """
        connections: {hinge: {pin: a, joins: [lever, ground], radius: 0.01, friction: 0.1}}
        loads: {sack: {force: 100, direction: down, member: lever, at: m}}
        seek: {hand: {want: force, direction: down, member: lever, at: b}}
        advantage: {effort: hand, resistance: sack}
        """;
    assertThat(SmallReport.lever(lever))
        .contains(
            """
              (negative: one of the two acts against the sense in which it counts
                positive)
            """);
  }

  @Test
  void aRatioOfForcesAloneIsTold() {
    assertThat(
            SmallReport.of(
                """
                device: free pliers
                points: {nut a: [-1, -0.1], nut b: [-1, 0.1], o: [0, 0], hand a: [4, 0.1], hand b: [4, -0.1]}
                members: {upper: [nut a, o, hand a], lower: [nut b, o, hand b]}
                connections:
                  o: {pin: o, joins: [upper, lower]}
                  nut: {strut: [nut a, nut b], joins: [upper, lower]}
                loads:
                  top hand: {force: 90, direction: down, member: upper, at: hand a}
                  low hand: {force: 90, direction: up, member: lower, at: hand b}
                advantage: {effort: top hand, resistance: nut}
                """))
        .contains("  actual -4.000 (ratio of the forces, with weights and losses in it)\n")
        .contains("  no ideal one: there are 4 free motions, which give different ratios\n")
        .contains("  (negative: \"nut\" is pressed, and tension counts positive)\n");
  }
}
