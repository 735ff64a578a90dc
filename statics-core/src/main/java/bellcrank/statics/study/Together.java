package bellcrank.statics.study;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.study.internal.Rates;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** One number that several parts have, such as the friction of both feet on one ground. */
record Together(List<InputNumber> all) implements InputNumber {

  private static final String OF = " of ";

  Together {
    all = List.copyOf(all);
  }

  /** The words before the names, the same of all. */
  private static String what(InputNumber one) {
    String text = one.text();
    int of = text.indexOf(OF);
    return of < 0 ? text : text.substring(0, of);
  }

  private static String whose(InputNumber one) {
    String text = one.text();
    return text.substring(text.indexOf(OF) + OF.length());
  }

  @Override
  public String text() {
    return what(all.get(0))
        + OF
        + all.stream().map(Together::whose).collect(Collectors.joining(", ", "[", "]"));
  }

  @Override
  public Dimension dimension() {
    return all.get(0).dimension();
  }

  @Override
  public double read(Draft draft) {
    double first = all.get(0).read(draft);
    for (InputNumber one : all) {
      one.read(draft);
      if (!one.holds(draft, first)) {
        throw new ModelException(
            text(),
            "value",
            first + " at the first, another at " + one.text(),
            "one number that is stated alike at each of them");
      }
    }
    return first;
  }

  @Override
  public void write(Draft draft, double value) {
    all.forEach(one -> one.write(draft, value));
  }

  @Override
  public boolean holds(Draft draft, double value) {
    return all.stream().allMatch(one -> one.holds(draft, value));
  }

  @Override
  public Optional<Rates> rates(Draft draft) {
    List<Rates> rates = new ArrayList<>();
    for (InputNumber one : all) {
      Optional<Rates> own = one.rates(draft);
      if (own.isEmpty()) {
        return own;
      }
      rates.add(own.get());
    }
    return Optional.of(Rates.sum(rates));
  }
}
