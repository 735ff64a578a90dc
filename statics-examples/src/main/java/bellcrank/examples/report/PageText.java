package bellcrank.examples.report;

import java.util.List;

/** Sets a page as text that is at most 80 characters wide. */
final class PageText {

  private static final int INDENT = 2;

  private final StringBuilder text = new StringBuilder();

  private PageText() {}

  static String of(List<PageBlock> blocks) {
    PageText page = new PageText();
    blocks.forEach(page::add);
    return page.text.toString();
  }

  // a chain of tests, since Java 17 has no switch over the kinds
  private void add(PageBlock block) {
    if (block instanceof PageBlock.Title title) {
      title(title.words(), title.underline());
    } else if (block instanceof PageBlock.Heading heading) {
      gap();
      paragraph(heading.words());
    } else if (block instanceof PageBlock.Paragraph paragraph) {
      paragraph(paragraph.words());
    } else if (block instanceof PageBlock.Item item) {
      entry(" ".repeat(INDENT), 2 * INDENT, item.words());
    } else if (block instanceof PageBlock.Subitem item) {
      String dash = " ".repeat(2 * INDENT) + "- ";
      entry(dash, dash.length(), item.words());
    } else if (block instanceof PageBlock.Grid grid) {
      for (String line : grid.table().lines(Page.WIDTH - INDENT)) {
        line(" ".repeat(INDENT) + line);
      }
    } else {
      gap();
    }
  }

  private void title(String words, char underline) {
    gap();
    int longest = 0;
    for (String line : Wrapping.lines(words, Page.WIDTH)) {
      line(line);
      longest = Math.max(longest, Wrapping.length(line));
    }
    line(String.valueOf(underline).repeat(longest));
  }

  private void paragraph(String words) {
    Wrapping.lines(words, Page.WIDTH).forEach(this::line);
  }

  /** An entry whose further lines are set in. */
  private void entry(String start, int further, String words) {
    String indent = start;
    for (String line : Wrapping.lines(words, Page.WIDTH - further)) {
      line(indent + line);
      indent = " ".repeat(further);
    }
  }

  private void gap() {
    if (!text.isEmpty()) {
      text.append('\n');
    }
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }
}
