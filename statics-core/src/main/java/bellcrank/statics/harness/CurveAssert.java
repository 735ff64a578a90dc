package bellcrank.statics.harness;

import bellcrank.statics.motion.Curve;

/**
 * Assertions about how an answer changes over a course. Limits are texts as for {@link
 * AnswerAssert}, ends included, and must be kept in every pose. Where there is no answer in some
 * pose, as at a dead centre, nothing can be said of all of them and the assertion fails: state a
 * travel that stops short of it.
 */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class CurveAssert extends ClaimAssert<CurveAssert, Curve> {

  private final CourseAssert parent;
  private final CurveClaims claims;

  CurveAssert(CourseAssert parent, CurveClaims claims) {
    super(claims.curve(), CurveAssert.class);
    this.parent = parent;
    this.claims = claims;
  }

  /**
   * Asserts that a plain number, such as an advantage, is nowhere below a limit.
   *
   * @param least the limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if the answer is no plain number
   */
  public CurveAssert isAtLeast(double least) {
    return isAtLeast(number(least));
  }

  /**
   * Asserts that the answer is nowhere below a limit.
   *
   * @param least the limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if it cannot be read or is of another kind
   */
  public CurveAssert isAtLeast(String least) {
    return hold(claims.atLeast(least));
  }

  /**
   * Asserts that a plain number, such as an advantage, is nowhere above a limit.
   *
   * @param greatest the limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if the answer is no plain number
   */
  public CurveAssert isAtMost(double greatest) {
    return isAtMost(number(greatest));
  }

  /**
   * Asserts that the answer is nowhere above a limit.
   *
   * @param greatest the limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if it cannot be read or is of another kind
   */
  public CurveAssert isAtMost(String greatest) {
    return hold(claims.atMost(greatest));
  }

  /**
   * Asserts that the answer stays between two limits.
   *
   * @param least the smaller limit
   * @param greatest the larger limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if a limit cannot be read or is of another kind
   */
  public CurveAssert isBetween(String least, String greatest) {
    return hold(claims.between(least, greatest));
  }

  /**
   * Goes back to the course.
   *
   * @return the assertion about it
   */
  public CourseAssert and() {
    return parent;
  }

  private static String number(double value) {
    return Double.toString(value).replaceFirst("\\.0$", "");
  }
}
