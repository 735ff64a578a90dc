package bellcrank.statics.strength;

import bellcrank.statics.device.ModelException;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A material with its strengths and where they come from.
 *
 * @param name how it is called, such as {@code S235}
 * @param kind what it is; rules ask for it
 * @param elasticity modulus of elasticity E in Pa, above 0
 * @param density density in kg/m³, above 0; empty if it is not stated
 * @param strengths the strengths that are known, each in Pa, above 0
 * @param source where the values come from; for values of one's own say so
 */
public record Material(
    String name,
    Kind kind,
    double elasticity,
    OptionalDouble density,
    Map<Strength, Double> strengths,
    String source) {

  /** What a material is. */
  public enum Kind {
    /** Steel: yields; sections, pins and welds have rules of their own. */
    STEEL,
    /** Aluminium alloy. */
    ALUMINIUM,
    /** Timber, loaded along the grain. */
    TIMBER,
    /** Anything else: only stresses are compared with its stated strengths. */
    OTHER
  }

  /** A kind of strength, as a stress. */
  public enum Strength {
    /** Yield strength f_y. */
    YIELD("yield strength"),
    /** Ultimate tensile strength f_u. */
    ULTIMATE("ultimate strength"),
    /** Bending strength, where it differs from the others: timber along the grain. */
    BENDING("bending strength"),
    /** Tension along the grain. */
    TENSION("tension strength"),
    /** Compression along the grain. */
    COMPRESSION("compression strength"),
    /** Compression square to the grain. */
    COMPRESSION_ACROSS("compression strength across the grain"),
    /** Shear strength. */
    SHEAR("shear strength");

    private final String words;

    Strength(String words) {
      this.words = words;
    }

    /**
     * The strength in words.
     *
     * @return one or several lower-case words
     */
    public String words() {
      return words;
    }
  }

  /**
   * Checks the numbers and copies the map.
   *
   * @param name how it is called
   * @param kind what it is
   * @param elasticity modulus of elasticity E in Pa, above 0
   * @param density density in kg/m³, above 0, if stated
   * @param strengths the strengths that are known, each in Pa, above 0
   * @param source where the values come from
   * @throws ModelException if a number is not finite or not above 0
   */
  public Material {
    positive(name, "elasticity", elasticity);
    if (density.isPresent()) {
      positive(name, "density", density.getAsDouble());
    }
    strengths.forEach((strength, value) -> positive(name, strength.words(), value));
    // kept by their order: checks look strengths up in every pose of a course
    Map<Strength, Double> known = new EnumMap<>(Strength.class);
    known.putAll(strengths);
    strengths = Collections.unmodifiableMap(known);
  }

  private static void positive(String name, String field, double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new ModelException(name, field, value, "a number above 0");
    }
  }

  /**
   * One of its strengths.
   *
   * @param strength which
   * @return in Pa; empty if it is not known
   */
  public Optional<Double> strength(Strength strength) {
    return Optional.ofNullable(strengths.get(strength));
  }

  /** One of its strengths as a bare number, for laws that ask again and again; 0 if not known. */
  double known(Strength strength) {
    Double value = strengths.get(strength);
    return value == null ? 0 : value;
  }

  /** One of its strengths, or where that is not known another; 0 if neither is. */
  double known(Strength strength, Strength instead) {
    double value = known(strength);
    return value > 0 ? value : known(instead);
  }
}
