package bellcrank.statics.units;

/** Makes the many spaces and minus signs of typed and printed text one. */
final class Spaces {
  private Spaces() {}

  /** The text with plain spaces and hyphens, none at its ends. */
  static String plain(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isSpaceChar(c) || Character.isWhitespace(c)) {
        plain.append(' ');
      } else {
        plain.append(c == '−' ? '-' : c);
      }
    }
    return plain.toString().strip();
  }
}
