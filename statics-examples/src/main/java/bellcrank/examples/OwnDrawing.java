package bellcrank.examples;

import java.io.IOException;
import java.nio.file.Path;

/** Tells own drawings from the files of others, so that none of these is lost to a drawing. */
public final class OwnDrawing {

  /** What every drawing of the library has in its first element. */
  private static final String MARK = "data-drawing=\"bellcrank\"";

  private static final OwnFile OWN = new OwnFile(MARK);

  private OwnDrawing() {}

  /**
   * Whether a drawing may be written here: there is nothing, or an earlier drawing.
   *
   * @param file where it would go
   * @return whether nothing of others would be lost
   * @throws IOException if the file cannot be read
   */
  public static boolean mayTake(Path file) throws IOException {
    return !OWN.isForeign(file);
  }

  /**
   * Puts the mark on a chart, which comes without it.
   *
   * @param svg a complete document
   * @return the document with the mark
   */
  public static String marked(String svg) {
    return OWN.isMarked(svg.substring(0, Math.min(OwnFile.HEAD, svg.length())))
        ? svg
        : svg.replaceFirst("<svg\\b", "<svg " + MARK);
  }
}
