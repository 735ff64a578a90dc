package bellcrank.statics.strength;

import static bellcrank.statics.strength.Tried.KN;
import static bellcrank.statics.strength.Tried.MM;
import static bellcrank.statics.strength.Tried.MPA;
import static bellcrank.statics.strength.Tried.STEEL;
import static bellcrank.statics.strength.Tried.checked;
import static bellcrank.statics.strength.Tried.link;
import static bellcrank.statics.strength.Tried.whyNot;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.strength.PinJoint.Plate;
import bellcrank.statics.units.UnitSystem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * A pin of 20 mm in double shear under 6 kN, one plate of 10 mm between two of 6 mm, gaps of 1 mm,
 * holes of 21 mm, 30 mm to the end, 60 mm wide. By hand:
 *
 * <pre>
 * shear      6000/(2·π·20²/4) = 9.5493 MPa
 * bending    M = 6000·(10 + 4·1 + 2·6)/8 = 19.5 N·m, W = π·20³/32 = 785.40 mm³: 24.828 MPa
 * bearing    6000/(20·10) = 30 MPa, outside 6000/(2·20·6) = 25 MPa
 * end        6000/(2·10·(30 − 10.5)) = 15.385 MPa, outside 6000/(2·2·6·19.5) = 12.821 MPa
 * sides      6000/(10·(60 − 21)) = 15.385 MPa, outside 6000/(2·6·39) = 12.821 MPa
 * </pre>
 */
class PinChecksTest {

  private static Plate plate(String body, int count, double thickness) {
    return new Plate(body, count, thickness * MM, 21 * MM, 30 * MM, 60 * MM, STEEL);
  }

  private static PinJoint joint(int planes, Material material, List<Plate> plates) {
    return new PinJoint("bolt", 20 * MM, planes, material, plates, MM);
  }

  private static final PinJoint SANDWICH =
      joint(2, STEEL, List.of(plate("link", 1, 10), plate("ground", 2, 6)));

  private static Checks checks(Method method, PinJoint joint) {
    return Checks.of(Balance.of(link(6 * KN).build()), Sizing.of(method).with(joint));
  }

  private static void is(Checks checks, String what, double demand, double strength, double by) {
    Checked one = checked(checks, "bolt", what);
    assertThat(one.demand() / MPA).isCloseTo(demand, within(1e-3));
    assertThat(one.resistance() / MPA).isCloseTo(strength / by, within(1e-6));
    assertThat(one.factor().value()).isEqualTo(by);
  }

  /**
   * 0.6·f_y = 141 over 1.5 (0.4·f_y), 1.25·f_y = 293.75 over 1.67 (0.75·f_y): AISC of 1989, F4 and
   * F2, from memory. 1.8·f_y = 423 over 2: AISC 360-16, J7(a). 0.6·f_u = 216 and f_u = 360 over 2:
   * D5.1(b) and D2(b), from memory.
   */
  @Test
  void allowableStresses() {
    Checks checks = checks(Method.ALLOWABLE, SANDWICH);

    is(checks, "shear of the pin", 9.5493, 141, 1.5);
    is(checks, "bending of the pin", 24.828, 293.75, 1.67);
    is(checks, "bearing in the plate of link", 30, 423, 2);
    is(checks, "bearing in the plate of ground", 25, 423, 2);
    is(checks, "tear-out of the plate of link", 15.385, 216, 2);
    is(checks, "tear-out of the plate of ground", 12.821, 216, 2);
    is(checks, "plate beside the hole of link", 15.385, 360, 2);
    is(checks, "plate beside the hole of ground", 12.821, 360, 2);
    assertThat(checks.checked()).hasSize(8);
  }

  /**
   * 0.6·f_up/1.25, 1.5·f_yp and 1.5·f_y over 1.0: EN 1993-1-8:2005, Table 3.10. f_y/√3 = 135.68:
   * 3.10.2, from memory. 0.9·f_u/1.25: EN 1993-1-1:2005, 6.2.3.
   */
  @Test
  void designResistances() {
    Checks checks = checks(Method.RESISTANCE, SANDWICH);

    is(checks, "shear of the pin", 9.5493, 216, 1.25);
    is(checks, "bending of the pin", 24.828, 352.5, 1);
    is(checks, "bearing in the plate of link", 30, 352.5, 1);
    is(checks, "tear-out of the plate of link", 15.385, 235 / Math.sqrt(3), 1);
    is(checks, "plate beside the hole of link", 15.385, 324, 1.25);
  }

  @Test
  void workings() {
    Checks checks = checks(Method.RESISTANCE, SANDWICH);

    assertThat(checked(checks, "bolt", "shear of the pin").working(UnitSystem.SI))
        .isEqualTo(
            "F/(n·π·d²/4) = 6000 N / (2 × 314.2 mm²) = 9.549 MPa, double shear, against 216.0"
                + " MPa/1.25 = 172.8 MPa");
    assertThat(checked(checks, "bolt", "bending of the pin").working(UnitSystem.SI))
        .isEqualTo("M/W with M = F·(b + 4c + 2a)/8 = 19.50 N·m: 24.83 MPa against 352.5 MPa");
    assertThat(checked(checks, "bolt", "bearing in the plate of link").working(UnitSystem.SI))
        .isEqualTo("F/(n·d·t) = 6000 N / 200.0 mm² = 30.00 MPa against 352.5 MPa");
  }

  /** Single shear: the whole force on one plane, and no bending that a rule would know. */
  @Test
  void oneShearPlane() {
    Checks checks =
        checks(
            Method.ALLOWABLE,
            joint(1, STEEL, List.of(plate("link", 1, 10), plate("ground", 1, 10))));

    is(checks, "shear of the pin", 19.0986, 141, 1.5);
    assertThat(checked(checks, "bolt", "shear of the pin").working(UnitSystem.SI))
        .contains(", single shear, ");
    assertThat(whyNot(checks, "bolt", "bending of the pin"))
        .isEqualTo(
            "bending of a pin is worked out for double shear, one plate between a pair of plates");
  }

  /** The pair may be named first. */
  @Test
  void theOrderOfThePlatesDoesNotMatter() {
    Checks checks =
        checks(
            Method.ALLOWABLE,
            joint(2, STEEL, List.of(plate("ground", 2, 6), plate("link", 1, 10))));

    is(checks, "bending of the pin", 24.828, 293.75, 1.67);
  }

  /** The softer of pin and plate is crushed: 100 MPa of the pin here. */
  @Test
  void theSofterOneIsCrushed() {
    Material soft =
        Tried.steel("soft", Map.of(Strength.YIELD, 100 * MPA, Strength.ULTIMATE, 200 * MPA));
    Checks checks = checks(Method.RESISTANCE, joint(2, soft, SANDWICH.plates()));

    is(checks, "bearing in the plate of link", 30, 150, 1);
    is(checks, "plate beside the hole of link", 15.385, 324, 1.25);
  }

  @Test
  void strengthsThatAreMissingAreTold() {
    Material bare = Tried.steel("old bolt", Map.of());
    Checks checks = checks(Method.RESISTANCE, joint(2, bare, SANDWICH.plates()));

    assertThat(whyNot(checks, "bolt", "shear of the pin"))
        .isEqualTo("no ultimate strength of old bolt is stated");
    assertThat(whyNot(checks, "bolt", "bending of the pin"))
        .isEqualTo("no yield strength of old bolt is stated");
    assertThat(whyNot(checks, "bolt", "bearing in the plate of link"))
        .isEqualTo("no yield strength of old bolt is stated");
    is(checks, "plate beside the hole of link", 15.385, 324, 1.25);
  }

  /** Two pins side by side share: half of everything. */
  @Test
  void countedPinsShare() {
    Checks checks =
        Checks.of(
            Balance.of(link(6 * KN).count("bolt", 2).build()),
            Sizing.of(Method.ALLOWABLE).with(SANDWICH));

    is(checks, "shear of the pin", 9.5493 / 2, 141, 1.5);
    is(checks, "bearing in the plate of ground", 12.5, 423, 2);
  }
}
