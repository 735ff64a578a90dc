package bellcrank.statics.strength;

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
 * @param <D> what the formula is fed with
 */
public record Rule<D>(
    Check<D> check, Method method, String formula, Factor factor, String source, Law<D> law) {

  /**
   * The same rule with another factor.
   *
   * @param other the factor, with what it covers
   * @param why why it differs; it is added to the source
   * @return a copy
   */
  public Rule<D> with(Factor other, String why) {
    return new Rule<>(check, method, formula, other, source + "; factor: " + why, law);
  }
}
