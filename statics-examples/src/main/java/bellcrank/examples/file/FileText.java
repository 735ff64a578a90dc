package bellcrank.examples.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Makes sure that a file is a text at all, and a short one, before anything parses it. */
final class FileText {

  /** Bound on the size of a file in bytes; it keeps a hostile one from costing time. */
  static final int LARGEST = 1 << 20;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private FileText() {}

  /** Decodes UTF-8; what is not UTF-8 is reported with its place. */
  static Optional<String> decode(byte[] bytes, Problems problems) {
    if (bytes.length > LARGEST) {
      return tooLarge(problems);
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    if (result.isError()) {
      int first = bytes[in.position()] & 0xFF;
      problems.add(
          after(out.toString()),
          Fields.TOP,
          "the byte 0x" + Integer.toHexString(first | 0x100).substring(1),
          "a text in UTF-8");
      return Optional.empty();
    }
    return screen(out.toString(), problems);
  }

  /** The text without a byte order mark; characters that no text has are reported. */
  static Optional<String> screen(String text, Problems problems) {
    if (text.length() > LARGEST || text.getBytes(StandardCharsets.UTF_8).length > LARGEST) {
      return tooLarge(problems);
    }
    String plain = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    for (int i = 0; i < plain.length(); i += Character.charCount(plain.codePointAt(i))) {
      int c = plain.codePointAt(i);
      if (!isTextual(c)) {
        problems.add(
            after(plain.substring(0, i)),
            Fields.TOP,
            "the character U+%04X".formatted(c),
            "a text without control characters");
        return Optional.empty();
      }
    }
    return Optional.of(plain);
  }

  private static boolean isTextual(int c) {
    if (c == '\t' || c == '\n' || c == '\r' || c == 0x85) {
      return true;
    }
    boolean noncharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    return !Character.isISOControl(c)
        && !noncharacter
        && c != BYTE_ORDER_MARK
        && Character.getType(c) != Character.SURROGATE;
  }

  private static Optional<String> tooLarge(Problems problems) {
    problems.add(
        Mark.START, Fields.TOP, "more than " + LARGEST + " bytes", "a file of 1 MiB at most");
    return Optional.empty();
  }

  /** The place behind a text. */
  private static Mark after(String text) {
    int line = 1;
    int begin = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if ((c == '\n' || c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029') && !pair) {
        line++;
        begin = i + 1;
      }
    }
    return new Mark(line, text.codePointCount(begin, text.length()) + 1);
  }
}
