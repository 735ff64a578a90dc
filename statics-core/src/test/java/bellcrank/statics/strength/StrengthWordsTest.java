package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.KN;
import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.checked;
import static bellcrank.statics.strength.Tried.link;
import static bellcrank.statics.strength.Tried.prop;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.ModelException;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.limits.Variation;
import bellcrank.statics.strength.Crossing.Certainty;
import bellcrank.statics.strength.Crossing.Used;
import bellcrank.statics.strength.FilletWeld.Plane;
import bellcrank.statics.strength.FilletWeld.Seam;
import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.strength.PinJoint.Plate;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said of checks beside their numbers, and columns that are not 1 m long. */
class StrengthWordsTest {

  /** All stresses of a link grow with its pull and with nothing else, so one quotient is enough. */
  @Test
  void whatGrowsWithOneLoadIsInProportion() {
    Plate plate = new Plate("link", 1, 10 * MM, 21 * MM, 30 * MM, 60 * MM, STEEL);
    FilletWeld lap =
        new FilletWeld(
            "lap",
            "bolt",
            Optional.empty(),
            Optional.of("link"),
            Plane.IN_PLANE,
            4 * MM,
            List.of(new Seam(-0.025, 0.02, 0.025, 0.02), new Seam(-0.025, -0.02, 0.025, -0.02)),
            STEEL,
            Optional.of(490e6));
    Sizing sizing =
        Sizing.of(Method.ALLOWABLE)
            .with("link", BAR, STEEL)
            .with(new PinJoint("bolt", 20 * MM, 2, STEEL, List.of(plate), MM))
            .with(lap)
            .with(Rating.of("bolt", 30 * KN, "tag of the shackle"));
    Capacity capacity = Capacity.of(link(6 * KN).build(), sizing, Variation.of("pull"));
    List<Used> used =
        capacity.ranked().stream().filter(Used.class::isInstance).map(Used.class::cast).toList();

    assertThat(used).extracting(one -> one.stated().part()).contains("link", "bolt");
    assertThat(used)
        .allSatisfy(one -> assertThat(one.certainty()).isEqualTo(Certainty.PROPORTIONAL));
    assertThat(used)
        .allSatisfy(
            one ->
                assertThat(one.multiple() * one.stated().utilisation()).isCloseTo(1, within(1e-9)));
    // the working load limit: 30 kN over 6 kN
    assertThat(used)
        .filteredOn(one -> one.stated().what().equals("working load limit"))
        .extracting(Used::multiple)
        .singleElement()
        .satisfies(m -> assertThat(m).isCloseTo(5, within(1e-9)));
  }

  @Test
  void aStrengthOfNothingIsAMistake() {
    assertThatThrownBy(() -> Tried.steel("putty", Map.of(Strength.YIELD, 0.0)))
        .isInstanceOf(ModelException.class)
        .hasMessageContaining("putty")
        .hasMessageContaining("yield");
  }

  /** π²·E·I/L² with I = 40⁴/12 mm⁴ over 1.5 m: 196.5 kN; λ = 1500/(40/√12) = 129.9. */
  @Test
  void eulerIsWorkedInWords() {
    Checks checks =
        Checks.of(
            Balance.of(prop(10 * KN).build()),
            Sizing.of(Method.RESISTANCE)
                .with("prop", Profiles.rectangle(40 * MM, 40 * MM).section(), STEEL)
                .with(ColumnEnds.pinned("prop")));

    assertThat(checked(checks, "prop", "column by Euler").working(UnitSystem.SI))
        .startsWith("N = 10000 N against π²·E·I/(k·L)² = 196500 N")
        .contains("effective length 1.500 m", "slenderness 129.9");
  }

  private static Device pressedBeam(double length) {
    return Device.named("pressed beam")
        .point("a", 0, 0)
        .point("m", length / 2, 0)
        .point("b", length, 0)
        .member("beam", "a", "m", "b")
        .pin("left", "a", "beam", "ground")
        .roller("right", "b", "beam", "ground", Direction.UP)
        .force("press", "beam", "b", Vector.of(-10 * KN, 0))
        .force("cask", "beam", "m", Vector.of(0, -300))
        .build();
  }

  /**
   * 20 by 40 mm over 2 m: N_cr = π²·210000·106667/2000² = 55.270 kN in the plane, so the moment of
   * 300·2/4 = 150 N·m is enlarged by 1/(1 − 10/55.270) = 1.22089; over 235·5333.3 = 1253.3 N·m that
   * is 0.14612 beside the share of the column.
   */
  @Test
  void bendingIsEnlargedByTheLengthSquared() {
    Checks checks =
        Checks.of(
            Balance.of(pressedBeam(2)),
            Sizing.of(Method.RESISTANCE)
                .with("beam", BAR, STEEL)
                .with(ColumnEnds.pinned("beam", "a", "b")));
    double column = 10 * KN / checked(checks, "beam", "column from a to b").resistance();

    assertThat(checked(checks, "beam", "column with bending from a to b").demand() - column)
        .isCloseTo(0.14612, within(1e-5));
  }

  /** A T is weaker in bending on the side of its stem, whichever side that is. */
  @Test
  void theWeakerFaceCountsForAColumn() {
    Profile tee = Profiles.tee(50 * MM, 50 * MM, 10 * MM, 10 * MM, 0);
    double[] shares = new double[2];
    Section[] sections = {tee.section(), tee.upsideDown().section()};
    for (int k = 0; k < 2; k++) {
      Checks checks =
          Checks.of(
              Balance.of(pressedBeam(1)),
              Sizing.of(Method.RESISTANCE)
                  .with("beam", sections[k], STEEL)
                  .with(ColumnEnds.pinned("beam", "a", "b")));
      double euler = Math.PI * Math.PI * 210e9 * sections[k].inertia();
      double weaker = Math.min(sections[k].topModulus(), sections[k].bottomModulus());
      double column = 10 * KN / checked(checks, "beam", "column from a to b").resistance();
      shares[k] = checked(checks, "beam", "column with bending from a to b").demand();

      assertThat(shares[k] - column)
          .isCloseTo(75 / (1 - 10 * KN / euler) / (235e6 * weaker), within(1e-9));
    }
    assertThat(shares[0]).isCloseTo(shares[1], within(1e-9));
  }
}
