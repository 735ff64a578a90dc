package bellcrank.statics.harness;

import bellcrank.statics.limits.Range;
import java.util.Optional;

/**
 * Assertions about all values that an answer can have in the states in which a device can rest.
 * Limits are texts as for {@link AnswerAssert}, ends included.
 *
 * @param <P> the assertion about what was asked
 */
@SuppressWarnings("exports") // AssertJ is not required transitively, see the module
public final class CarriedAssert<P> extends ClaimAssert<CarriedAssert<P>, Optional<Range>> {

  private final P parent;
  private final ValueClaims claims;

  CarriedAssert(P parent, Told told) {
    super(told.range(), CarriedAssert.class);
    this.parent = parent;
    claims = new ValueClaims(told);
  }

  /**
   * Asserts that all values lie between two limits.
   *
   * @param least the smaller limit
   * @param greatest the larger limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if a limit cannot be read or is of another
   *     kind, or the smaller one is not first
   */
  public CarriedAssert<P> between(String least, String greatest) {
    return hold(claims.between(least, greatest));
  }

  /**
   * Asserts that no value lies below a limit.
   *
   * @param least the limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if it cannot be read or is of another kind
   */
  public CarriedAssert<P> atLeast(String least) {
    return hold(claims.atLeast(least));
  }

  /**
   * Asserts that no value lies above a limit.
   *
   * @param greatest the limit
   * @return this assertion
   * @throws bellcrank.statics.device.ModelException if it cannot be read or is of another kind
   */
  public CarriedAssert<P> atMost(String greatest) {
    return hold(claims.atMost(greatest));
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
