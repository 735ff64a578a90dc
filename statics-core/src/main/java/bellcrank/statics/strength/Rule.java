package bellcrank.statics.strength;

import java.util.Optional;

/**
 * A rule by which a part is checked: a formula with its factor and where it comes from. Rules are
 * data: they can be read, replaced, and given another factor.
 *
 * @param check which check it is a rule for
 * @param method the method that it belongs to
 * @param formula the formula in letters, such as {@code F / (n·A) ≤ 0.6·f_u / γ_M2}
 * @param factor what strengths are divided by
 * @param source where formula and factor come from
 * @param law the formula
 * @param timber what strengths of timber are divided by instead; empty if it is the same factor
 * @param <D> what the formula is fed with
 */
public record Rule<D>(
    Check<D> check,
    Method method,
    String formula,
    Factor factor,
    String source,
    Law<D> law,
    Optional<Factor> timber) {

  /**
   * A rule with one factor for all materials.
   *
   * @param check which check it is a rule for
   * @param method the method that it belongs to
   * @param formula the formula in letters
   * @param factor what strengths are divided by
   * @param source where formula and factor come from
   * @param law the formula
   */
  public Rule(
      Check<D> check, Method method, String formula, Factor factor, String source, Law<D> law) {
    this(check, method, formula, factor, source, law, Optional.empty());
  }

  /**
   * The factor for a material.
   *
   * @param material what the part is made of
   * @return that of timber for timber, if the rule has one, else that of the rule
   */
  public Factor factor(Material material) {
    return material.kind() == Material.Kind.TIMBER ? timber.orElse(factor) : factor;
  }

  /**
   * The same rule with another factor, for all materials.
   *
   * @param other the factor, with what it covers
   * @param why why it differs; it is added to the source
   * @return a copy
   */
  public Rule<D> with(Factor other, String why) {
    return new Rule<>(check, method, formula, other, source + "; factor: " + why, law);
  }

  /**
   * The same rule with another factor on strengths of timber.
   *
   * @param other the factor, with what it covers
   * @return a copy
   */
  public Rule<D> withTimber(Factor other) {
    return new Rule<>(check, method, formula, factor, source, law, Optional.of(other));
  }
}
