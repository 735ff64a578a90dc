package bellcrank.statics.units;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The table of units that have a symbol of their own. */
final class Atoms {
  private static final String SI = "definition of the SI, exact";
  private static final String PREFIX = "SI prefix, exact";
  private static final String TABLE = "NIST SP 811 (2008), Appendix B.8";
  private static final String POUND =
      "exact product: pound 0.45359237 kg (1959 agreement) times standard gravity 9.80665 m/s²"
          + " (3rd CGPM, 1901)";
  private static final String GRAVITY = "standard gravity 9.80665 m/s² (3rd CGPM, 1901)";
  private static final String YARD = "definition of the international yard (1959), exact; " + TABLE;

  // pi to 41 digits, from memory, checked against Math.PI by a test
  private static final BigDecimal PI = number("3.1415926535897932384626433832795028841972");
  private static final BigDecimal LBF = number("4.4482216152605");
  private static final BigDecimal FOOT = number("0.3048");
  private static final BigDecimal INCH = number("0.0254");

  private static final Map<String, Atom> TABLE_OF_ATOMS = table();

  private Atoms() {}

  static Optional<Atom> find(String symbol) {
    return Optional.ofNullable(TABLE_OF_ATOMS.get(symbol));
  }

  static Collection<String> symbols() {
    return TABLE_OF_ATOMS.keySet();
  }

  private static Map<String, Atom> table() {
    Map<String, Atom> table = new LinkedHashMap<>();
    Powers length = Dimension.LENGTH.powers();
    put(table, "m", "1", length, SI);
    put(table, "mm", "0.001", length, PREFIX);
    put(table, "cm", "0.01", length, PREFIX);
    put(table, "km", "1000", length, PREFIX);
    put(table, "in", INCH, length, YARD);
    put(table, "ft", FOOT, length, YARD + "; not the US survey foot");
    put(table, "yd", "0.9144", length, YARD);

    Powers angle = Dimension.ANGLE.powers();
    put(table, "rad", "1", angle, SI);
    put(table, "deg", PI.divide(number("180"), Atom.PRECISE), angle, "definition, π/180");
    put(table, "turn", PI.multiply(number("2")), angle, "definition, 2π");

    Powers force = Dimension.FORCE.powers();
    put(table, "N", "1", force, SI);
    put(table, "kN", "1000", force, PREFIX);
    put(table, "MN", "1000000", force, PREFIX);
    put(table, "daN", "10", force, PREFIX);
    put(table, "lbf", LBF, force, POUND + "; " + TABLE + " prints 4.448222");
    put(table, "ozf", "0.27801385095378125", force, "lbf/16, exact; " + POUND);
    put(table, "kip", "4448.2216152605", force, "1000 lbf, exact; " + POUND);
    put(table, "kgf", "9.80665", force, "exact: " + GRAVITY + "; " + TABLE);
    put(table, "tf", "9806.65", force, "1000 kgf, exact: " + GRAVITY);
    put(table, "tonf-US", "8896.443230521", force, "2000 lbf, exact; " + POUND);
    put(table, "tonf-UK", "9964.01641818352", force, "2240 lbf, exact; " + POUND);

    Powers mass = Dimension.MASS.powers();
    put(table, "kg", "1", mass, SI);
    put(table, "g", "0.001", mass, PREFIX);
    put(table, "t", "1000", mass, "unit accepted with the SI, exact");
    put(
        table,
        "lb",
        "0.45359237",
        mass,
        "definition of the pound (1959 agreement), exact; " + TABLE + " prints 0.4535924");
    put(table, "oz", "0.028349523125", mass, "lb/16, exact (1959 agreement)");
    put(table, "slug", LBF.divide(FOOT, Atom.PRECISE), mass, "lbf·s²/ft; " + POUND);

    Powers pressure = Dimension.PRESSURE.powers();
    BigDecimal psi = LBF.divide(INCH.pow(2), Atom.PRECISE);
    put(table, "Pa", "1", pressure, SI);
    put(table, "kPa", "1000", pressure, PREFIX);
    put(table, "MPa", "1000000", pressure, PREFIX);
    put(table, "GPa", "1000000000", pressure, PREFIX);
    put(table, "psi", psi, pressure, "lbf/in²; " + POUND + "; " + TABLE + " prints 6894.757");
    put(table, "ksi", psi.multiply(number("1000")), pressure, "1000 psi; " + POUND);
    put(table, "psf", LBF.divide(FOOT.pow(2), Atom.PRECISE), pressure, "lbf/ft²; " + POUND);

    // no quantity of statics is a time, but accelerations are written with it
    put(table, "s", "1", new Powers(0, 0, 1, 0), SI);
    return table;
  }

  private static void put(
      Map<String, Atom> table, String symbol, String value, Powers powers, String source) {
    put(table, symbol, number(value), powers, source);
  }

  private static void put(
      Map<String, Atom> table, String symbol, BigDecimal value, Powers powers, String source) {
    table.put(symbol, new Atom(symbol, value, powers, source));
  }

  private static BigDecimal number(String digits) {
    return new BigDecimal(digits);
  }
}
