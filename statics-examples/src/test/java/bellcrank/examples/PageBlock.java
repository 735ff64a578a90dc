package bellcrank.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A fenced block of a page of the project.
 *
 * @param page name of the page, from the top folder
 * @param line line of its opening fence, from 1
 * @param language word behind the opening fence; empty if there is none
 * @param text what stands between the fences
 */
record PageBlock(String page, int line, String language, String text) {

  /** The top folder; tests run in the folder of their module. */
  static final Path TOP = Path.of("..");

  private static final String FENCE = "```";

  /** All blocks of a page in order. */
  static List<PageBlock> of(String page) throws IOException {
    List<PageBlock> blocks = new ArrayList<>();
    List<String> lines = Files.readAllLines(TOP.resolve(page));
    int opened = -1;
    for (int i = 0; i < lines.size(); i++) {
      if (!lines.get(i).startsWith(FENCE)) {
        continue;
      }
      if (opened < 0) {
        opened = i;
      } else {
        String text = String.join("\n", lines.subList(opened + 1, i)) + "\n";
        String language = lines.get(opened).substring(FENCE.length()).strip();
        blocks.add(new PageBlock(page, opened + 1, language, text));
        opened = -1;
      }
    }
    if (opened >= 0) {
      throw new IOException(page + ":" + (opened + 1) + ": a fence is not closed");
    }
    return blocks;
  }

  boolean isJava() {
    return language.equals("java");
  }

  boolean isDeviceFile() {
    return language.equals("yaml") && text.startsWith("format:");
  }

  /** Where the block stands. */
  String place() {
    return page + ":" + line;
  }
}
