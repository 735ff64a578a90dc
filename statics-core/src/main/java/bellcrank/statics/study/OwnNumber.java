package bellcrank.statics.study;

import bellcrank.statics.study.internal.Rates;
import bellcrank.statics.units.Dimension;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;

/** A number that the user reads and puts; it looks at models, not at drafts. */
record OwnNumber(
    String text,
    Dimension dimension,
    ToDoubleFunction<Model> reader,
    BiFunction<Model, Double, Model> writer)
    implements InputNumber {

  double value(Model model) {
    return reader.applyAsDouble(model);
  }

  Model put(Model model, double value) {
    return writer.apply(model, value);
  }

  @Override
  public double read(Draft draft) {
    return value(draft.build());
  }

  @Override
  public void write(Draft draft, double value) {
    throw new IllegalStateException(text + " changes models, not drafts");
  }

  @Override
  public Optional<Rates> rates(Draft draft) {
    return Optional.empty();
  }
}
