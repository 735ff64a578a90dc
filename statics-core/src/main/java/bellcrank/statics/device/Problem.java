package bellcrank.statics.device;

/**
 * One thing that is wrong in a model: which part, which field, what was found and what would do.
 *
 * @param part name of the part, such as {@code lever}
 * @param field the field of that part, such as {@code at}
 * @param value what was found, as text
 * @param wanted what would be accepted, as a clause
 */
public record Problem(String part, String field, String value, String wanted) {

  /**
   * The problem as one sentence.
   *
   * @return part, field, value and what is wanted
   */
  public String sentence() {
    // in an ask the field is the piece of its text that is wrong
    String found =
        part.equals("ask") && value.contains(field)
            ? "ask " + value + ": found \"" + field + "\""
            : part + ": " + field + " is " + value;
    return found + "; wanted: " + wanted;
  }
}
