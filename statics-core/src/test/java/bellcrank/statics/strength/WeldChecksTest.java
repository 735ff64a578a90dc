package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.MPA;
import static bellcrank.statics.strength.Tried.SOFTWOOD;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.arm;
import static bellcrank.statics.strength.Tried.checked;
import static bellcrank.statics.strength.Tried.whyNot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Bar;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.Member;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.FilletWeld.Cut;
import bellcrank.statics.strength.FilletWeld.Plane;
import bellcrank.statics.strength.FilletWeld.Seam;
import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Fillet welds against hand values, the group of seams taken as elastic lines (any textbook on
 * machine elements). Throat 4 mm, electrode of 490 MPa. At the foot of the arm N = 2 kN, V = 500 N,
 * M = −500 N·m.
 */
class WeldChecksTest {

  private static final String NAME = "weld at the foot";
  private static final Cut FOOT = new Cut("foot", "tip", 0);

  private static Seam seam(double x1, double y1, double x2, double y2) {
    return new Seam(x1 * MM, y1 * MM, x2 * MM, y2 * MM);
  }

  private static FilletWeld of(Cut cut, Plane plane, Material material, Seam... seams) {
    return new FilletWeld(
        NAME,
        "arm",
        Optional.of(cut),
        Optional.empty(),
        plane,
        4 * MM,
        List.of(seams),
        material,
        Optional.of(490 * MPA));
  }

  private static Checked check(Device device, FilletWeld weld, Rules rules) {
    Checks checks = Checks.of(Balance.of(device), Sizing.of(rules.method()).with(weld), rules);
    return checked(checks, weld.part(), NAME);
  }

  /** Force per length at the most loaded point, in N/mm. */
  private static double perLength(FilletWeld weld) {
    return check(arm().build(), weld, Rules.allowable()).demand() * weld.throat() / 1000;
  }

  /**
   * Two level seams of 20 mm, 20 mm above and below the axis: L = 40 mm, I = 2·20·20² = 16000 mm³.
   * On top N/L + M·y/I = 50 + 625 = 675 N/mm, V/L = 12.5: 675.116 N/mm over 4 mm. Against 0.6·490/2
   * = 147 MPa (AISC 360-16, J2.4) or 360/(√3·0.8)/1.25 = 207.85 MPa (EN 1993-1-8:2005, 4.5.3.3).
   */
  @Test
  void levelSeamsAcrossTheBar() {
    FilletWeld weld = of(FOOT, Plane.ACROSS, STEEL, seam(-10, 20, 10, 20), seam(-10, -20, 10, -20));

    Checked allowable = check(arm().build(), weld, Rules.allowable());
    assertThat(allowable.demand() / MPA).isCloseTo(675.116 / 4, within(1e-3));
    assertThat(allowable.resistance() / MPA).isCloseTo(147, within(1e-9));
    assertThat(allowable.working(UnitSystem.SI))
        .isEqualTo(
            "f/a = 675.1 N/mm / 4.000 mm = 168.8 MPa against 0.6·F_EXX = 294.0 MPa/2 = 147.0 MPa");
    Checked resistance = check(arm().build(), weld, Rules.resistance());
    assertThat(resistance.resistance() / MPA).isCloseTo(207.846, within(1e-3));
  }

  /** Two upright seams of 40 mm: I = 2·40³/12 mm³, 25 + 937.5 = 962.5 N/mm across, 6.25 along. */
  @Test
  void uprightSeamsAreShearedAlong() {
    FilletWeld weld = of(FOOT, Plane.ACROSS, STEEL, seam(-10, -20, -10, 20), seam(10, -20, 10, 20));

    assertThat(perLength(weld)).isCloseTo(Math.hypot(962.5, 6.25), within(1e-6));
  }

  /**
   * Seams at 20 mm and at the axis: the centroid is 10 mm up, I = 2·20·10² = 4000 mm³, and N acts
   * below it: M + N·10 = −480 N·m, so 50 + 480000·10/4000 = 1250 N/mm across.
   */
  @Test
  void theAxialForceBendsAGroupBesideTheAxis() {
    FilletWeld weld = of(FOOT, Plane.ACROSS, STEEL, seam(-10, 20, 10, 20), seam(-10, 0, 10, 0));

    assertThat(perLength(weld)).isCloseTo(Math.hypot(1250, 12.5), within(1e-6));
  }

  /** Two level seams of 50 mm, 20 mm above and below a centroid. */
  private static Seam[] lap(double x) {
    return new Seam[] {seam(x - 25, 20, x + 25, 20), seam(x - 25, -20, x + 25, -20)};
  }

  /**
   * The lap 100 mm from the foot: L = 100 mm, polar 2·50·20² + 2·50³/12 = 60833 mm³, twisted by 450
   * N·m: 7.39726 N/mm². In the corner −20 − 147.945 = −167.945 along and 5 + 184.932 = 189.932
   * across: 253.535 N/mm.
   */
  @Test
  void aLapIsTwisted() {
    FilletWeld ofTheWall =
        new FilletWeld(
            NAME,
            "wall",
            Optional.empty(),
            Optional.of("arm"),
            Plane.IN_PLANE,
            4 * MM,
            List.of(lap(100)),
            STEEL,
            Optional.of(490 * MPA));
    FilletWeld ofTheCut = of(new Cut("foot", "tip", 0.1), Plane.IN_PLANE, STEEL, lap(0));

    assertThat(perLength(ofTheWall)).isCloseTo(253.535, within(1e-3));
    assertThat(perLength(ofTheCut)).as("read from either side").isCloseTo(253.535, within(1e-3));
  }

  /** sin θ = 189.932/253.535; 1 + 0.5·0.74914^1.5 = 1.32420: 147·1.3242 = 194.66 MPa. J2-5. */
  @Test
  void theDirectionOfTheForceMayBeCredited() {
    FilletWeld weld = of(new Cut("foot", "tip", 0.1), Plane.IN_PLANE, STEEL, lap(0));
    Rules rules = Rules.allowable().with(Rules.weldByDirection());

    Checked credited = check(arm().build(), weld, rules);
    assertThat(credited.resistance() / MPA).isCloseTo(194.66, within(0.01));
    assertThat(credited.demand()).isEqualTo(check(arm().build(), weld, Rules.allowable()).demand());
  }

  /** A post lifted by 900 N at its head with a cask of 1000 N hung in the middle. */
  private static Device post(double middle) {
    return Device.named("post")
        .point("foot", 0, 0)
        .point("ring", 0, middle)
        .point("head", 0, 1)
        .member(
            new Member(
                "arm",
                List.of("foot", "ring", "head"),
                List.of(new Bar("foot", "head")),
                List.of(),
                1))
        .clamp("ground", "foot", "arm", "ground")
        .force("lift", "arm", "head", Vector.of(0, 900))
        .force("cask", "arm", "ring", Vector.of(0, -1000))
        .build();
  }

  /** Below the ring N = −100 N, above +900 N: a weld at the ring carries 900/40 = 22.5 N/mm. */
  @Test
  void atAJumpTheWorseSideCounts() {
    Seam[] seams = {seam(-10, 20, 10, 20), seam(-10, -20, 10, -20)};
    for (double at : new double[] {0.3, 0.1 + 0.2, Math.nextDown(0.3)}) {
      FilletWeld weld = of(new Cut("foot", "head", at), Plane.ACROSS, STEEL, seams);
      for (double ring : new double[] {0.3, 0.1 + 0.2}) {
        assertThat(check(post(ring), weld, Rules.allowable()).demand() / MPA)
            .isCloseTo(22.5 / 4, within(1e-9));
      }
    }
    FilletWeld below = of(new Cut("foot", "head", 0.29), Plane.ACROSS, STEEL, seams);
    assertThat(check(post(0.3), below, Rules.allowable()).demand() / MPA)
        .isCloseTo(2.5 / 4, within(1e-9));
  }

  /** Correlation factors: EN 1993-1-8:2005, Table 4.1. */
  @ParameterizedTest(name = "{0} MPa: {1}")
  @CsvSource({"360, 0.80", "430, 0.85", "410, 0.85", "510, 0.90", "490, 0.90", "540, 1.00"})
  void correlation(double ultimate, double factor) {
    Material plate = Tried.steel("plate", Map.of(Strength.ULTIMATE, ultimate * MPA));
    FilletWeld weld = of(FOOT, Plane.ACROSS, plate, seam(-10, 20, 10, 20), seam(-10, -20, 10, -20));

    assertThat(check(arm().build(), weld, Rules.resistance()).resistance() / MPA)
        .isCloseTo(ultimate / Math.sqrt(3) / factor / 1.25, within(1e-6));
  }

  @Test
  void whatIsMissingIsTold() {
    Seam[] seams = {seam(-10, 20, 10, 20), seam(-10, -20, 10, -20)};
    Material bare = Tried.steel("scrap steel", Map.of());
    FilletWeld noElectrode =
        new FilletWeld(
            NAME,
            "arm",
            Optional.of(FOOT),
            Optional.empty(),
            Plane.ACROSS,
            4 * MM,
            List.of(seams),
            bare,
            Optional.empty());

    assertThat(why(Method.ALLOWABLE, noElectrode))
        .isEqualTo("the strength of the electrode is not stated");
    assertThat(why(Method.RESISTANCE, noElectrode))
        .isEqualTo("no ultimate strength of scrap steel is stated");
    for (Method method : Method.values()) {
      assertThat(why(method, of(FOOT, Plane.ACROSS, SOFTWOOD, seams)))
          .isEqualTo("no weld rule for softwood is among the rules");
    }
  }

  private static String why(Method method, FilletWeld weld) {
    Checks checks = Checks.of(Balance.of(arm().build()), Sizing.of(method).with(weld));
    return whyNot(checks, "arm", NAME);
  }
}
