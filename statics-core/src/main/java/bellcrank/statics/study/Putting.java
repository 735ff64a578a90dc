package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import java.util.List;
import java.util.Optional;

/**
 * Several numbers that are put into a model one after the other. What is told of the model then
 * must be so, so a number that one put after it has changed is a mistake.
 */
final class Putting {

  private static final double GOLDEN = 0.618_033_988_749_895;

  /** A normal distribution has no ends. */
  private static final double EDGE = 0.05;

  private final List<Input> inputs;
  private final List<Double> values;

  /** The model with the last number of the user's own, who answers for what it changes. */
  private Model base;

  private Draft draft;
  private int sinceOwn;

  private Putting(Model model, List<Input> inputs, List<Double> values) {
    this.inputs = inputs;
    this.values = values;
    base = model;
    draft = new Draft(model);
  }

  /**
   * Puts all of them.
   *
   * @throws ModelException if the model has no such number, or it cannot be this
   */
  static Putting of(Model model, List<Input> inputs, List<Double> values) {
    Putting all = new Putting(model, inputs, values);
    for (int k = 0; k < inputs.size(); k++) {
      all.put(k);
    }
    return all;
  }

  /**
   * A share of its range that a number is put to for a trial, by its place in the list: another one
   * for each, since numbers that depend on one another may agree where all are alike.
   */
  static double share(int place) {
    double turns = (place + 1) * GOLDEN;
    return EDGE + (1 - 2 * EDGE) * (turns - Math.floor(turns));
  }

  /** The first mistake that shows with these values; empty as well if they cannot be put at all. */
  static Optional<ModelException> clash(Model model, List<Input> inputs, List<Double> values) {
    try {
      return of(model, inputs, values).clash();
    } catch (ModelException cannotBe) {
      return Optional.empty();
    }
  }

  private void put(int k) {
    InputNumber number = inputs.get(k).number();
    double value = values.get(k);
    if (!Double.isFinite(value)) {
      throw new ModelException(number.text(), "value", value, "a finite number");
    }
    if (number instanceof OwnNumber own) {
      base = own.put(draft.build(), value);
      draft = new Draft(base);
      sinceOwn = k + 1;
    } else {
      number.write(draft, value);
    }
  }

  /**
   * Builds the model.
   *
   * @throws ModelException if a number was changed by another, or nothing can be built with them
   */
  Model build() {
    clash().ifPresent(Putting::refuse);
    return draft.build();
  }

  private static void refuse(ModelException wrong) {
    throw wrong;
  }

  private Optional<ModelException> clash() {
    // the last one has nothing after it
    for (int k = sinceOwn; k < inputs.size() - 1; k++) {
      if (!inputs.get(k).number().holds(draft, values.get(k))) {
        return Optional.of(changed(k));
      }
    }
    return Optional.empty();
  }

  private ModelException changed(int which) {
    String text = inputs.get(which).text();
    String wanted = "a number that those put after it leave as it is";
    for (int other = which + 1; other < inputs.size(); other++) {
      if (!hold(which, other)) {
        String by = inputs.get(other).text();
        String way =
            hold(other, which)
                ? ": put " + by + " first, or leave one of the two as stated"
                : ": leave one of the two as stated, since each changes the other";
        wanted = "a number that " + by + " leaves as it is" + way;
        break;
      }
    }
    return new ModelException(text, "value", values.get(which), wanted);
  }

  /** Whether two numbers are both what they were put to, one after the other. */
  private boolean hold(int first, int second) {
    Draft two = new Draft(base);
    inputs.get(first).number().write(two, values.get(first));
    inputs.get(second).number().write(two, values.get(second));
    return inputs.get(first).number().holds(two, values.get(first));
  }
}
