package bellcrank.statics.strength;

import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.strength.CheckResult.Checked;
import bellcrank.statics.strength.ColumnEnds.Curve;
import bellcrank.statics.strength.FilletWeld.Plane;
import bellcrank.statics.strength.FilletWeld.Seam;
import bellcrank.statics.strength.Material.Strength;
import bellcrank.statics.strength.PinJoint.Plate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/** Published welds, pins, bolts and columns, worked by the rules. */
final class PublishedJoints {

  static final double IN = 0.0254;
  static final double KIP = 4448.2216152605;
  private static final double KSI = KIP / (IN * IN);
  private static final Factor LOAD_AND_RESISTANCE = new Factor(1 / 0.75, "1/φ");

  private PublishedJoints() {}

  /**
   * What a single seam of E70 bears when it is pulled at an angle.
   *
   * @return in N
   */
  private static double seam(double throat, double length, double angle, Rule<WeldDemand> rule) {
    double x = length / 2 * Math.cos(angle);
    double y = length / 2 * Math.sin(angle);
    FilletWeld weld =
        new FilletWeld(
            "seam",
            "bolt",
            Optional.empty(),
            Optional.of("link"),
            Plane.IN_PLANE,
            throat,
            List.of(new Seam(-x, -y, x, y)),
            Tried.STEEL,
            Optional.of(70 * KSI));
    double pull = 1000;
    Checks checks =
        Checks.of(
            Balance.of(Tried.link(pull).build()),
            Sizing.of(Method.ALLOWABLE).with(weld),
            Rules.allowable().with(rule));
    return pull / Tried.checked(checks, "bolt", "seam").utilisation();
  }

  private static Rule<WeldDemand> along() {
    return Rules.allowable().rule(Check.WELD).orElseThrow();
  }

  static Map<String, DoubleSupplier> lengthwise() {
    double throat = WeldTable.throat(0.1875 * IN);
    double nominal = seam(throat, IN, 0, along().with(new Factor(1, "nominal"), "as printed"));
    double design = seam(throat, IN, 0, along().with(LOAD_AND_RESISTANCE, "as printed"));
    return Map.of("Rn", () -> nominal / IN, "L", () -> 200 * KIP / design * IN);
  }

  static Map<String, DoubleSupplier> sixteenth() {
    double throat = WeldTable.throat(IN / 16);
    return Map.of(
        "ASD", () -> seam(throat, IN, 0, along()) / IN,
        "LRFD", () -> seam(throat, IN, 0, along().with(LOAD_AND_RESISTANCE, "printed")) / IN);
  }

  static Map<String, DoubleSupplier> directions() {
    Rule<WeldDemand> rule = Rules.weldByDirection().with(LOAD_AND_RESISTANCE, "as printed");
    double throat = 0.707 * 0.75 * IN;
    return Map.of(
        "along", () -> seam(throat, 8 * IN, 0, rule),
        "across", () -> seam(throat, 8 * IN, Math.PI / 2, rule),
        "at45", () -> seam(throat, 8 * IN, Math.PI / 4, rule));
  }

  /** A pin of 10 mm between plates, and a material all of whose strengths are 1 MPa. */
  private static Checks pin(Method method, Rules rules, int planes) {
    Material unit =
        Tried.steel(
            "unit", Map.of(Strength.YIELD, 1e6, Strength.ULTIMATE, 1e6, Strength.SHEAR, 60 * KSI));
    Plate inner = new Plate("link", 1, 0.01, 0.011, 0.02, 0.03, unit);
    Plate outer = new Plate("ground", 2, 0.01, 0.011, 0.02, 0.03, unit);
    double diameter = planes == 1 ? Math.sqrt(0.4418 * 4 / Math.PI) * IN : 0.01;
    List<Plate> plates = planes == 1 ? List.of() : List.of(inner, outer);
    return Checks.of(
        Balance.of(Tried.link(1).build()),
        Sizing.of(method).with(new PinJoint("bolt", diameter, planes, unit, plates, 0)),
        rules);
  }

  private static double strength(Method method, String what) {
    Checked one = Tried.checked(pin(method, Rules.of(method), 2), "bolt", what);
    return one.resistance() * one.factor().value() / 1e6;
  }

  static Map<String, DoubleSupplier> americanPin() {
    String bearing = "bearing in the plate of link";
    Rule<PlateDemand> rule = Rules.allowable().rule(Check.BEARING).orElseThrow();
    return Map.of(
        "bearing", () -> strength(Method.ALLOWABLE, bearing), "omega", rule.factor()::value);
  }

  static Map<String, DoubleSupplier> europeanPin() {
    return Map.of(
        "shear", () -> strength(Method.RESISTANCE, "shear of the pin"),
        "bearing", () -> strength(Method.RESISTANCE, "bearing in the plate of link"),
        "bending", () -> strength(Method.RESISTANCE, "bending of the pin"));
  }

  /** The bolt rule: the stated shear strength itself. */
  private static double bolt(double factor) {
    Rule<PinDemand> rule =
        new Rule<>(
            Check.PIN_SHEAR,
            Method.ALLOWABLE,
            "F/A ≤ F_nv/Ω",
            new Factor(factor, "as printed"),
            "AISC 360-05, J3.6",
            new PinShearLaw(Strength.SHEAR, 1));
    Checks checks = pin(Method.ALLOWABLE, Rules.allowable().with(rule), 1);
    return 1 / Tried.checked(checks, "bolt", "shear of the pin").utilisation();
  }

  static Map<String, DoubleSupplier> bolts() {
    return Map.of(
        "bolt", () -> bolt(1),
        "group", () -> 11 * bolt(1),
        "phi", () -> 11 * bolt(1 / 0.75),
        "asd", () -> 11 * bolt(2));
  }

  static Map<String, DoubleSupplier> curves() {
    Map<String, DoubleSupplier> factors = new HashMap<>();
    for (Curve curve : Curve.values()) {
      factors.put(curve.name().toUpperCase(Locale.ROOT), curve::imperfection);
    }
    return factors;
  }

  private static ColumnDemand column(double slenderness, Material material) {
    Section square = Profiles.rectangle(0.04, 0.04).section();
    return new ColumnDemand(
        1,
        0,
        slenderness * square.gyration(),
        ColumnEnds.pinned("prop"),
        new Sized(square, material));
  }

  private static double stress(Rules rules, Check<ColumnDemand> check, ColumnDemand demand) {
    return rules.rule(check).orElseThrow().law().resistance(demand, 1)
        / demand.sized().section().area();
  }

  /** Euler's stress goes with 1/λ². */
  static Map<String, DoubleSupplier> eulerAtYield() {
    double atOneHundred = stress(Rules.resistance(), Check.EULER, column(100, Tried.STEEL));
    return Map.of("lambda1", () -> 100 * Math.sqrt(atOneHundred / 235e6));
  }

  /** Halved until the curve of the rule is 0.877 of Euler's stress. */
  static Map<String, DoubleSupplier> transition() {
    Material steel =
        new Material(
            "50 ksi steel",
            Material.Kind.STEEL,
            29000 * KSI,
            OptionalDouble.empty(),
            Map.of(Strength.YIELD, 50 * KSI),
            "the problem");
    double low = 100;
    double high = 130;
    while (high - low > 1e-9) {
      double middle = (low + high) / 2;
      ColumnDemand demand = column(middle, steel);
      double share =
          stress(Rules.allowable(), Check.COLUMN, demand)
              / stress(Rules.allowable(), Check.EULER, demand);
      if (Math.abs(share - 0.877) < 1e-12) {
        high = middle;
      } else {
        low = middle;
      }
    }
    double met = high;
    return Map.of("lambda", () -> met);
  }
}
