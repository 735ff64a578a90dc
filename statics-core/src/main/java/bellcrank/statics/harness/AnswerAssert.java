package bellcrank.statics.harness;

import bellcrank.statics.equilibrium.Answer;
import org.assertj.core.data.Percentage;

/**
 * Assertions about the answer to an ask. Limits are texts such as {@code 1600 N} or {@code 2 kN};
 * their kind of quantity must be that of the answer, and a number without a unit is in the units of
 * the assertion. Both ends of a limit are included, to 1e-9 of it for rounding.
 *
 * @param <P> the assertion about what was asked
 */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class AnswerAssert<P> extends ClaimAssert<AnswerAssert<P>, Answer> {

  private final P parent;
  private final ValueClaims claims;

  AnswerAssert(P parent, Told told) {
    super(told.answer(), AnswerAssert.class);
    this.parent = parent;
    claims = new ValueClaims(told);
  }

  /**
   * Asserts that the answer is a number between two limits.
   *
   * @param least the smaller limit
   * @param greatest the larger limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if a limit cannot be read or is of another
   *     kind, or the smaller one is not first
   */
  public AnswerAssert<P> isBetween(String least, String greatest) {
    return hold(claims.between(least, greatest));
  }

  /**
   * Asserts that the answer is a number not below a limit.
   *
   * @param least the limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if it cannot be read or is of another kind
   */
  public AnswerAssert<P> isAtLeast(String least) {
    return hold(claims.atLeast(least));
  }

  /**
   * Asserts that the answer is a number not above a limit.
   *
   * @param greatest the limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if it cannot be read or is of another kind
   */
  public AnswerAssert<P> isAtMost(String greatest) {
    return hold(claims.atMost(greatest));
  }

  /**
   * Asserts that the answer is near a value, such as a reading within the accuracy of its
   * instrument. Angles are compared modulo a full turn.
   *
   * @param value the value
   * @param allowed greatest difference, a quantity of the same kind, 0 or more
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if a quantity cannot be read or is of another
   *     kind
   */
  public AnswerAssert<P> isCloseTo(String value, String allowed) {
    return hold(claims.closeTo(value, allowed));
  }

  /**
   * Asserts that the answer is near a value.
   *
   * @param value the value, not zero
   * @param allowed greatest difference as a share of the value
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if the value cannot be read, is of another kind
   *     or zero
   */
  public AnswerAssert<P> isCloseTo(String value, Percentage allowed) {
    return hold(claims.closeTo(value, allowed.value));
  }

  /**
   * Asserts that the answer is in words, such as those of an outcome or a verdict.
   *
   * @param words the words, such as {@code in balance}
   * @return this assertion
   */
  public AnswerAssert<P> isInWords(String words) {
    return hold(claims.words(words));
  }

  /**
   * Asserts that there is no one answer.
   *
   * @param reason why there is none
   * @return this assertion
   */
  public AnswerAssert<P> isUnanswered(Answer.Reason reason) {
    return hold(claims.unanswered(reason));
  }

  /**
   * Goes back to what was asked.
   *
   * @return the assertion about it
   */
  public P and() {
    return parent;
  }
}
