package bellcrank.examples;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Tells files that this program made from others, so that it never overwrites a foreign one.
 *
 * @param mark what stands near the beginning of its own files
 */
record OwnFile(String mark) {

  /** How far into a file the mark is looked for. */
  static final int HEAD = 2000;

  /** Whether something else is at this place. */
  boolean isForeign(Path file) throws IOException {
    if (!Files.exists(file)) {
      return false;
    }
    if (!Files.isRegularFile(file)) {
      return true;
    }
    try (InputStream in = Files.newInputStream(file)) {
      return !isMarked(new String(in.readNBytes(HEAD), StandardCharsets.UTF_8));
    }
  }

  /** Whether a text that begins a file tells that it is one of its own. */
  boolean isMarked(String head) {
    return head.contains(mark);
  }
}
