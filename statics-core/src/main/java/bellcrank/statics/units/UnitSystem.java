package bellcrank.statics.units;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;

/**
 * One unit for each kind of quantity: the units that bare numbers are in and that answers are
 * written in.
 *
 * @param units the unit of every {@link Dimension}; copied, unmodifiable
 */
public record UnitSystem(Map<Dimension, Unit> units) {
  private static final Set<String> FOOT_AND_INCH = Set.of("in", "ft", "yd");

  /** Metre, degree, newton, kilogram, N·m, N/m, Pa, m/s², N·m/rad, m², m³, m⁴, N/m³. */
  public static final UnitSystem SI = from(Unit.parse("m"), Unit.parse("N"));

  /**
   * Foot, degree, pound-force, pound (mass), lbf·ft, lbf/ft, psi, ft/s², lbf·ft/rad, in², in³, in⁴,
   * lbf/ft³.
   */
  public static final UnitSystem US =
      from(Unit.parse("ft"), Unit.parse("lbf"))
          .with(Unit.parse("psi"))
          .with(Unit.parse("in²"))
          .with(Unit.parse("in³"))
          .with(Unit.parse("in⁴"));

  /**
   * Copies and checks the units.
   *
   * @param units the unit of every {@link Dimension}
   * @throws QuantityException if a dimension has no unit or one of another kind
   */
  public UnitSystem {
    Map<Dimension, Unit> copy = new EnumMap<>(Dimension.class);
    copy.putAll(units);
    for (Dimension dimension : Dimension.values()) {
      Unit unit = copy.get(dimension);
      if (unit == null) {
        throw new QuantityException(
            dimension.bareNoun(),
            "the system has no unit for " + dimension.noun(),
            "write for example " + dimension.examples());
      }
      if (unit.dimension() != dimension) {
        throw UnitMistake.mismatch(unit.symbol(), unit, dimension);
      }
    }
    units = Collections.unmodifiableMap(copy);
  }

  /**
   * Derives a system from a unit of length and one of force. Moment is force times length, spread
   * load force per length, pressure force per length squared (under its own name where it has one,
   * such as psi), stiffness in torsion moment per radian. Angles are in degrees. Mass and
   * acceleration are kg and m/s², or lb and ft/s² where the length is in, ft or yd.
   *
   * @param length a listed unit of length
   * @param force a listed unit of force
   * @return the system
   * @throws QuantityException if a unit is of another kind or not listed
   */
  public static UnitSystem from(Unit length, Unit force) {
    requireListed(length, Dimension.LENGTH);
    requireListed(force, Dimension.FORCE);
    boolean customary = FOOT_AND_INCH.contains(length.symbol());
    String moment = force.symbol() + "·" + length.symbol();
    Map<Dimension, Unit> units = new EnumMap<>(Dimension.class);
    units.put(Dimension.LENGTH, length);
    units.put(Dimension.ANGLE, Unit.parse("deg"));
    units.put(Dimension.FORCE, force);
    units.put(Dimension.MASS, Unit.parse(customary ? "lb" : "kg"));
    units.put(Dimension.MOMENT, Unit.parse(moment));
    units.put(Dimension.FORCE_PER_LENGTH, Unit.parse(force.symbol() + "/" + length.symbol()));
    units.put(
        Dimension.PRESSURE, ownName(Unit.parse(force.symbol() + "/" + length.symbol() + "²")));
    units.put(Dimension.ACCELERATION, Unit.parse(customary ? "ft/s²" : "m/s²"));
    units.put(Dimension.MOMENT_PER_ANGLE, Unit.parse(moment + "/rad"));
    units.put(Dimension.AREA, Unit.parse(length.symbol() + "²"));
    units.put(Dimension.SECTION_MODULUS, Unit.parse(length.symbol() + "³"));
    units.put(Dimension.SECOND_MOMENT, Unit.parse(length.symbol() + "⁴"));
    units.put(Dimension.FORCE_PER_VOLUME, Unit.parse(force.symbol() + "/" + length.symbol() + "³"));
    units.put(Dimension.NUMBER, Dimension.NUMBER.si());
    return new UnitSystem(units);
  }

  /**
   * Returns the unit of one kind of quantity.
   *
   * @param dimension the kind of quantity
   * @return its unit in this system
   */
  public Unit unit(Dimension dimension) {
    Unit unit = units.get(dimension);
    if (unit == null) {
      throw new AssertionError("the constructor lets no dimension pass without a unit");
    }
    return unit;
  }

  /**
   * Replaces the unit of one kind of quantity; the others stay as they are.
   *
   * @param unit the new unit of its own dimension
   * @return a copy with that unit
   */
  public UnitSystem with(Unit unit) {
    Map<Dimension, Unit> changed = new EnumMap<>(units);
    changed.put(unit.dimension(), unit);
    return new UnitSystem(changed);
  }

  /**
   * Writes an SI value in the unit of this system.
   *
   * @param si the value in SI, any sign, finite
   * @param dimension the kind of quantity
   * @param digits significant digits, 1 to 15, bounds included
   * @return for example {@code 15.0 lbf}; see {@link Quantity#format(Unit, int)}
   * @throws QuantityException if the value is not finite or digits are out of range
   */
  public String format(double si, Dimension dimension, int digits) {
    return new Quantity(si, dimension).format(unit(dimension), digits);
  }

  private static void requireListed(Unit unit, Dimension wanted) {
    if (unit.dimension() != wanted) {
      throw UnitMistake.mismatch(unit.symbol(), unit, wanted);
    }
    if (!Unit.all().contains(unit)) {
      throw new QuantityException(
          unit.symbol(),
          "no units can be derived from " + unit.symbol() + ", which is not a listed unit",
          "write for example " + wanted.examples());
    }
  }

  /** A listed unit of the same size, if the compound itself is not listed: psi for lbf/in². */
  private static Unit ownName(Unit compound) {
    if (Unit.all().contains(compound)) {
      return compound;
    }
    return Unit.all().stream()
        .filter(u -> u.dimension() == compound.dimension() && u.factor() == compound.factor())
        .findFirst()
        .orElse(compound);
  }
}
