package bellcrank.statics.harness;

import java.util.Optional;
import org.assertj.core.api.AbstractAssert;

/** An assertion that fails with a message of its own, below the description that it was given. */
abstract class ClaimAssert<S extends ClaimAssert<S, A>, A> extends AbstractAssert<S, A> {

  ClaimAssert(A actual, Class<?> type) {
    super(actual, type);
    isNotNull();
  }

  /** Fails if something is wrong. */
  S hold(Optional<Message> wrong) {
    // the text is no format: names and units may have percent signs
    wrong.ifPresent(message -> failWithMessage("%s", message.text()));
    return myself;
  }

  /** Hands the description on to an assertion about a part of this. */
  <T extends ClaimAssert<T, ?>> T described(T part) {
    return info.hasDescription() ? part.as(info.description()) : part;
  }
}
