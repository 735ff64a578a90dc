package bellcrank.examples.report;

import bellcrank.examples.sheet.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Turns a page into parts of a chapter, so that a report says what the text answer says. */
final class PageParts {

  private final String title;
  private final List<Part> parts = new ArrayList<>();
  private final List<Part.Entry> entries = new ArrayList<>();
  private String last;

  private PageParts(String title) {
    this.title = title;
    last = title;
  }

  /** The parts of what is written; a table before any heading gets the title as its caption. */
  static List<Part> of(String title, Consumer<Page> writing) {
    Page page = new Page();
    writing.accept(page);
    return of(title, page.blocks());
  }

  private static List<Part> of(String title, List<PageBlock> blocks) {
    PageParts parts = new PageParts(title);
    for (int i = 0; i < blocks.size(); i++) {
      boolean heads = i + 1 < blocks.size() && belongs(blocks.get(i + 1));
      parts.add(blocks.get(i), heads);
    }
    parts.closeList();
    return parts.parts;
  }

  /** Whether a block goes below a heading. */
  private static boolean belongs(PageBlock block) {
    return block instanceof PageBlock.Item
        || block instanceof PageBlock.Grid
        || block instanceof PageBlock.Paragraph;
  }

  private void add(PageBlock block, boolean heads) {
    if (block instanceof PageBlock.Item item) {
      entries.add(new Part.Entry(item.words(), List.of()));
      return;
    }
    if (block instanceof PageBlock.Subitem item && !entries.isEmpty()) {
      Part.Entry above = entries.remove(entries.size() - 1);
      List<String> below = new ArrayList<>(above.below());
      below.add(item.words());
      entries.add(new Part.Entry(above.words(), below));
      return;
    }
    closeList();
    if (block instanceof PageBlock.Heading heading) {
      heading(heading.words(), heads);
    } else if (block instanceof PageBlock.Title heading) {
      heading(heading.words(), heads);
    } else if (block instanceof PageBlock.Paragraph paragraph) {
      parts.add(new Part.Paragraph(paragraph.words()));
    } else if (block instanceof PageBlock.Subitem item) {
      parts.add(new Part.Paragraph(item.words()));
    } else if (block instanceof PageBlock.Grid grid) {
      parts.add(grid(grid.table()));
    }
  }

  /** A heading with nothing below it is a sentence; one that says the title again is left out. */
  private void heading(String words, boolean heads) {
    if (!heads) {
      parts.add(new Part.Paragraph(words));
      return;
    }
    last = words;
    if (!words.equals(title)) {
      parts.add(new Part.Heading(words));
    }
  }

  private Part.Grid grid(Table table) {
    List<Part.Column> columns = new ArrayList<>();
    for (int i = 0; i < table.heads().size(); i++) {
      boolean numeric = table.kinds().get(i) == Table.Kind.NUMBERS;
      columns.add(new Part.Column(table.heads().get(i), numeric));
    }
    return new Part.Grid(last, columns, table.rows());
  }

  private void closeList() {
    if (!entries.isEmpty()) {
      parts.add(new Part.Entries(entries));
      entries.clear();
    }
  }
}
