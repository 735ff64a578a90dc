package bellcrank.statics.explain;

/**
 * The short name of a quantity in an equation, such as {@code F_stay} or {@code heel_x}.
 *
 * @param main what stands on the line, letters and digits
 * @param index what stands below the line, letters and digits in words joined by underscores; empty
 *     if nothing does
 */
public record Symbol(String main, String index) {

  /**
   * A symbol of free texts: what is neither letter nor digit becomes an underscore.
   *
   * @param main what stands on the line
   * @param index what stands below the line; may be empty
   * @return the symbol
   */
  public static Symbol from(String main, String index) {
    String head = plain(main);
    boolean word = !head.isEmpty() && Character.isLetter(head.codePointAt(0));
    return new Symbol(word ? head : "R" + head, plain(index));
  }

  private static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints()
        .map(c -> Character.isLetterOrDigit(c) ? c : '_')
        .forEach(plain::appendCodePoint);
    return plain.toString();
  }

  /**
   * The symbol as plain text.
   *
   * @return such as {@code heel_x}
   */
  public String text() {
    return index.isEmpty() ? main : main + "_" + index;
  }
}
