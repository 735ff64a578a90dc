package bellcrank.examples.report;

import java.util.ArrayList;
import java.util.List;

/** A page: what is said, block by block. As text it is at most 80 characters wide. */
final class Page {

  /** Characters in a line. */
  static final int WIDTH = 80;

  private final List<PageBlock> blocks = new ArrayList<>();

  /** A title, underlined, with an empty line before it unless it is the first. */
  void title(String words, char underline) {
    blocks.add(new PageBlock.Title(words, underline));
  }

  /** The head of a section, after an empty line. */
  void heading(String words) {
    blocks.add(new PageBlock.Heading(words));
  }

  /** A paragraph that begins at the left. */
  void paragraph(String words) {
    blocks.add(new PageBlock.Paragraph(words));
  }

  /** One entry below a heading; its further lines are set in. */
  void item(String words) {
    blocks.add(new PageBlock.Item(words));
  }

  /** One entry below an item, with a dash. */
  void subitem(String words) {
    blocks.add(new PageBlock.Subitem(words));
  }

  /** A table below a heading. */
  void table(Table table) {
    blocks.add(new PageBlock.Grid(table));
  }

  /** An empty line, unless the page is empty. */
  void gap() {
    blocks.add(new PageBlock.Gap());
  }

  /** What has been said so far, in order. */
  List<PageBlock> blocks() {
    return List.copyOf(blocks);
  }

  @Override
  public String toString() {
    return PageText.of(blocks);
  }
}
