package bellcrank.examples.report;

import java.util.Optional;
import java.util.function.Supplier;

/** What is worked out when it is first asked for, and then kept. */
final class Once<T> {

  private final Supplier<T> work;
  private Optional<T> kept = Optional.empty();

  Once(Supplier<T> work) {
    this.work = work;
  }

  synchronized T get() {
    T value = kept.orElseGet(work);
    kept = Optional.of(value);
    return value;
  }
}
