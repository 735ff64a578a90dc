package bellcrank.examples;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Tells own drawings from the files of others, so that none of these is lost to a drawing. */
public final class OwnDrawing {

  /** How far into a file the mark of a drawing is looked for. */
  private static final int HEAD = 2000;

  /** What every drawing of the library has in its first element. */
  private static final String MARK = "data-drawing=\"bellcrank\"";

  private OwnDrawing() {}

  /**
   * Whether a drawing may be written here: there is nothing, or an earlier drawing.
   *
   * @param file where it would go
   * @return whether nothing of others would be lost
   * @throws IOException if the file cannot be read
   */
  public static boolean mayTake(Path file) throws IOException {
    if (!Files.exists(file)) {
      return true;
    }
    if (!Files.isRegularFile(file)) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      return isMarked(new String(in.readNBytes(HEAD), StandardCharsets.UTF_8));
    }
  }

  /**
   * Puts the mark on a chart, which comes without it.
   *
   * @param svg a complete document
   * @return the document with the mark
   */
  public static String marked(String svg) {
    return isMarked(svg.substring(0, Math.min(HEAD, svg.length())))
        ? svg
        : svg.replaceFirst("<svg\\b", "<svg " + MARK);
  }

  private static boolean isMarked(String head) {
    return head.contains(MARK);
  }
}
