package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.BAR;
import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.MPA;
import static bellcrank.statics.strength.Tried.SOFTWOOD;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.arm;
import static bellcrank.statics.strength.Tried.checked;
import static bellcrank.statics.strength.Tried.whyNot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.device.Device;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.SpreadLoad;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Vector;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.Material.Kind;
import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Stresses of bars against hand values. The arm: N = 2 kN, at the foot V = 500 N and M = −500 N·m;
 * the bar 20 × 40 mm: A = 800 mm², S = 20·40²/6 = 5333.3 mm³. So N/A = 2.5 MPa, M/S = 93.75 MPa,
 * V·Q/(I·t) = 1.5·V/A = 0.9375 MPa. Formulas: any textbook on strength of materials; factors: the
 * sources of the rules.
 */
class BarChecksTest {

  private static final String TOP = "stress at the top face of foot–tip";
  private static final String BOTTOM = "stress at the bottom face of foot–tip";
  private static final String SHEAR = "shear of foot–tip";

  private static Checks checks(Device device, Method method, Material material) {
    return Checks.of(Balance.of(device), Sizing.of(method).with("arm", BAR, material));
  }

  private static void is(Checked one, double demand, double resistance) {
    assertThat(one.demand()).isCloseTo(demand, within(1e-9 * demand));
    assertThat(one.resistance()).isCloseTo(resistance, within(1e-9 * resistance));
    assertThat(one.utilisation()).isCloseTo(demand / resistance, within(1e-9));
  }

  /** 96.25 and 91.25 MPa against 235/1.67 = 140.7; shear against 0.6·235/1.67 = 84.43 MPa. */
  @Test
  void allowableStresses() {
    Checks checks = checks(arm().build(), Method.ALLOWABLE, STEEL);

    is(checked(checks, "arm", TOP), 96.25 * MPA, 235 * MPA / 1.67);
    is(checked(checks, "arm", BOTTOM), 91.25 * MPA, 235 * MPA / 1.67);
    is(checked(checks, "arm", SHEAR), 0.9375 * MPA, 0.6 * 235 * MPA / 1.67);
    assertThat(checks.checked()).hasSize(3);
    assertThat(checks.notChecked()).isEmpty();
    assertThat(checks.checked().get(0).what()).as("the most used one").isEqualTo(TOP);
  }

  /** The same against 235/1.0 MPa; shear against 235/√3 = 135.7 MPa. */
  @Test
  void designResistances() {
    Checks checks = checks(arm().build(), Method.RESISTANCE, STEEL);

    is(checked(checks, "arm", TOP), 96.25 * MPA, 235 * MPA);
    is(checked(checks, "arm", BOTTOM), 91.25 * MPA, 235 * MPA);
    is(checked(checks, "arm", SHEAR), 0.9375 * MPA, 235 * MPA / Math.sqrt(3));
  }

  @Test
  void workingsAreLinesWithTheNumbersInThem() {
    Checks checks = checks(arm().build(), Method.ALLOWABLE, STEEL);

    assertThat(checked(checks, "arm", BOTTOM).working(UnitSystem.SI))
        .isEqualTo(
            "N/A + M/S = 2.500 MPa − 93.75 MPa = −91.25 MPa (compression) against 235.0 MPa/1.67"
                + " = 140.7 MPa");
    assertThat(checked(checks, "arm", TOP).working(UnitSystem.US))
        .isEqualTo(
            "N/A + M/S = 362.6 psi + 13600 psi = 13960 psi (tension) against 34080 psi/1.67 ="
                + " 20410 psi");
    assertThat(checked(checks, "arm", SHEAR).working(UnitSystem.SI))
        .isEqualTo("V·Q/(I·t) = 0.9375 MPa with V = 500.0 N against 141.0 MPa/1.67 = 84.43 MPa");
    assertThat(checked(checks, "arm", TOP).place()).isEqualTo("at foot");
  }

  /**
   * Timber has strengths of its own. Top: N/A·24/14 + M/S = 4.2857 + 93.75 = 98.036 MPa against
   * 24/3 = 8; bottom: 4.2857 − 93.75 = −89.464. Shear: 4/3 MPa. Interaction: EN 1995-1-1, 6.2.3,
   * from memory.
   */
  @Test
  void timberIsWeighted() {
    Checks allowable = checks(arm().build(), Method.ALLOWABLE, SOFTWOOD);
    is(checked(allowable, "arm", TOP), (2.5 * 24 / 14 + 93.75) * MPA, 8 * MPA);
    is(checked(allowable, "arm", BOTTOM), (93.75 - 2.5 * 24 / 14) * MPA, 8 * MPA);
    is(checked(allowable, "arm", SHEAR), 0.9375 * MPA, 4 * MPA / 3);
    assertThat(checked(allowable, "arm", TOP).working(UnitSystem.SI))
        .startsWith("N/A·f_m/f_n + M/S = 4.286 MPa + 93.75 MPa = 98.04 MPa");

    Checks resistance = checks(arm().build(), Method.RESISTANCE, SOFTWOOD);
    is(checked(resistance, "arm", SHEAR), 0.9375 * MPA, 4 * MPA * 0.6 / 1.3);
    assertThat(checked(resistance, "arm", SHEAR).margin())
        .isEqualTo(
            "strength divided by 2.167: γ_M/k_mod of timber, 1.3/0.6 for lasting loads:"
                + " EN 1995-1-1, from memory");
  }

  /** Drawn the other way round the bar has its left side below: the faces change places. */
  @Test
  void theMirrorImageHasItsFacesTheOtherWayRound() {
    Device mirrored =
        Device.named("arm to the left")
            .point("foot", 0, 0)
            .point("tip", -1, 0)
            .member("arm", "foot", "tip")
            .clamp("wall", "foot", "arm", "ground")
            .force("load", "arm", "tip", Vector.of(-2000, -500))
            .build();
    Checks checks = checks(mirrored, Method.RESISTANCE, STEEL);

    is(checked(checks, "arm", TOP), 91.25 * MPA, 235 * MPA);
    is(checked(checks, "arm", BOTTOM), 96.25 * MPA, 235 * MPA);
  }

  /** A section that is not as high above its centroid as below swaps with the way of the bar. */
  @Test
  void theSectionTurnsWithTheBar() {
    Section tee = Profiles.tee(60 * MM, 60 * MM, 8 * MM, 8 * MM, 0).section();
    assertThat(tee.top()).isLessThan(tee.bottom());
    double bent = 500 / (tee.inertia() / tee.top());
    Checks checks =
        Checks.of(Balance.of(arm().build()), Sizing.of(Method.RESISTANCE).with("arm", tee, STEEL));

    assertThat(checked(checks, "arm", TOP).demand())
        .isCloseTo(bent + 2000 / tee.area(), within(1.0));
  }

  /** Two arms in planes behind one another carry half each. */
  @Test
  void parallelPartsShare() {
    Device two =
        Device.named("two arms")
            .point("foot", 0, 0)
            .point("tip", 1, 0)
            .member(
                new Member(
                    "arm",
                    List.of("foot", "tip"),
                    List.of(new bellcrank.statics.device.Bar("foot", "tip")),
                    List.of(),
                    2))
            .clamp("wall", "foot", "arm", "ground")
            .force("load", "arm", "tip", Vector.of(2000, -500))
            .build();
    Checks checks = checks(two, Method.RESISTANCE, STEEL);

    is(checked(checks, "arm", TOP), 96.25 / 2 * MPA, 235 * MPA);
    is(checked(checks, "arm", SHEAR), 0.9375 / 2 * MPA, 235 * MPA / Math.sqrt(3));
  }

  /** 1200 N/m over 2 m: M = w·L²/8 = 600 N·m in the middle, 112.5 MPa there. */
  @Test
  void theWorstPlaceLiesWithinTheBar() {
    Device beam =
        Device.named("beam")
            .point("a", 0, 0)
            .point("b", 2, 0)
            .member("beam", "a", "b")
            .pin("left", "a", "beam", "ground")
            .roller("right", "b", "beam", "ground", Direction.UP)
            .load(
                new SpreadLoad(
                    "crates",
                    "beam",
                    "a",
                    "b",
                    1200,
                    1200,
                    Optional.empty(),
                    SpreadLoad.Per.LENGTH))
            .build();
    Checks checks =
        Checks.of(Balance.of(beam), Sizing.of(Method.RESISTANCE).with("beam", BAR, STEEL));

    Checked bottom = checked(checks, "beam", "stress at the bottom face of a–b");
    is(bottom, 112.5 * MPA, 235 * MPA);
    assertThat(bottom.place()).isEqualTo("1.00 m from a towards b");
    assertThat(checked(checks, "beam", "shear of a–b").place()).isIn("at a", "at b");
  }

  @Test
  void whatIsNotStatedIsTold() {
    Material bare = Tried.steel("scrap steel", Map.of());
    Checks checks = checks(arm().build(), Method.ALLOWABLE, bare);
    assertThat(checks.checked()).isEmpty();
    assertThat(whyNot(checks, "arm", TOP))
        .isEqualTo("neither bending nor yield strength of scrap steel is stated");
    assertThat(whyNot(checks, "arm", SHEAR))
        .isEqualTo("neither shear nor yield strength of scrap steel is stated");

    Checks none = Checks.of(Balance.of(arm().build()), Sizing.of(Method.ALLOWABLE));
    assertThat(whyNot(none, "arm", "stresses of foot–tip"))
        .isEqualTo("no section and material are stated");
  }

  /** No strength in compression is stated, and only one end of the bar is pressed. */
  @Test
  void oneCutThatCannotBeCheckedIsEnough() {
    Material rope =
        new Material(
            "lath",
            Kind.OTHER,
            1e9,
            OptionalDouble.empty(),
            Map.of(Strength.TENSION, 20 * MPA, Strength.BENDING, 20 * MPA, Strength.SHEAR, MPA),
            "ours");
    Device post =
        Device.named("post")
            .point("foot", 0, 0)
            .point("middle", 0, 1)
            .point("head", 0, 2)
            .member(
                new Member(
                    "post",
                    List.of("foot", "middle", "head"),
                    List.of(new bellcrank.statics.device.Bar("foot", "head")),
                    List.of(),
                    1))
            .clamp("ground", "foot", "post", "ground")
            .force("lift", "post", "head", Vector.of(0, 900))
            .force("cask", "post", "middle", Vector.of(0, -1000))
            .build();
    Checks checks =
        Checks.of(Balance.of(post), Sizing.of(Method.ALLOWABLE).with("post", BAR, rope));

    assertThat(whyNot(checks, "post", "stress at the top face of foot–head"))
        .isEqualTo("neither compression nor yield strength of lath is stated");
    assertThat(checked(checks, "post", "shear of foot–head").demand()).isZero();
  }

  /** Three props under a stiff beam: statics does not know what they carry. */
  @Test
  void undeterminedForcesLeaveChecksOpen() {
    Device beam =
        Device.named("beam on three")
            .point("a", 0, 0)
            .point("b", 1, 0)
            .point("c", 2, 0)
            .member("beam", "a", "b", "c")
            .pin("left", "a", "beam", "ground")
            .roller("mid", "b", "beam", "ground", Direction.UP)
            .roller("right", "c", "beam", "ground", Direction.UP)
            .force("cask", "beam", "b", Vector.of(0, -500))
            .build();
    Checks checks =
        Checks.of(
            Balance.of(beam),
            Sizing.of(Method.ALLOWABLE)
                .with("beam", BAR, STEEL)
                .with(Rating.of("mid", 900, "our own")));

    assertThat(checks.checked()).isEmpty();
    assertThat(whyNot(checks, "beam", "stress at the top face of a–b"))
        .contains("statics alone does not fix it");
    assertThat(whyNot(checks, "mid", "working load limit")).isNotEmpty();
  }

  @Test
  void withoutBalanceNothingIsChecked() {
    Device loose =
        Device.named("loose arm")
            .point("foot", 0, 0)
            .point("tip", 1, 0)
            .member("arm", "foot", "tip")
            .pin("hinge", "foot", "arm", "ground")
            .force("load", "arm", "tip", Vector.of(0, -500))
            .build();
    Checks checks = checks(loose, Method.ALLOWABLE, STEEL);

    assertThat(checks.checked()).isEmpty();
    assertThat(whyNot(checks, "arm", TOP)).isNotEmpty();
  }
}
