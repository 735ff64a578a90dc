package bellcrank.statics.device;

import java.util.List;
import java.util.stream.Collectors;

/** A model that cannot be built as stated; it lists every problem found. */
public final class ModelException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /**
   * An exception for several problems.
   *
   * @param problems at least one
   */
  public ModelException(List<Problem> problems) {
    super(problems.stream().map(Problem::sentence).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /**
   * An exception for one problem.
   *
   * @param part name of the part
   * @param field field of the part
   * @param value what was found
   * @param wanted what would be accepted
   */
  public ModelException(String part, String field, Object value, String wanted) {
    this(List.of(new Problem(part, field, String.valueOf(value), wanted)));
  }

  /**
   * What is wrong.
   *
   * @return at least one problem
   */
  public List<Problem> problems() {
    return problems;
  }
}
