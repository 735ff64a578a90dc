package bellcrank.statics.harness;

import bellcrank.statics.units.UnitSystem;

/** What can be asserted about anything that answers asks. */
abstract class SetupAssert<S extends SetupAssert<S, A>, A> extends ClaimAssert<S, A> {

  private Setup setup;

  SetupAssert(A actual, Class<?> type, Setup setup) {
    super(actual, type);
    this.setup = setup;
  }

  Setup setup() {
    return setup;
  }

  S choose(Setup chosen) {
    setup = chosen;
    return myself;
  }

  /**
   * Chooses the units of messages, and of limits that are stated without a unit. They are SI unless
   * others are chosen.
   *
   * @param units the units
   * @return this assertion
   */
  public S inUnits(UnitSystem units) {
    return choose(setup.with(units));
  }

  /**
   * Goes on with the answer to an ask.
   *
   * @param ask the name of a part, or the text of an ask such as {@code heel.x on jib}; it may name
   *     a case
   * @return an assertion about the answer
   * @throws bellcrank.statics.device.ModelException if the text is no ask or names what the device
   *     does not have
   */
  public AnswerAssert<S> answers(String ask) {
    return described(new AnswerAssert<>(myself, Told.one(setup, ask)));
  }

  /**
   * Goes on with all values that an answer can have in the states in which the device can rest:
   * where friction or too many supports leave several states, the limits must hold in each.
   *
   * @param ask the name of a part, for its natural value, or the text of an ask
   * @return an assertion about the range of the answer
   * @throws bellcrank.statics.device.ModelException if the text is no ask or names what the device
   *     does not have
   */
  public CarriedAssert<S> carries(String ask) {
    return described(new CarriedAssert<>(myself, Told.inAllStates(setup, ask)));
  }
}
