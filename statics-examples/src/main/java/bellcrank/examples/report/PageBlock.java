package bellcrank.examples.report;

/** A block of a page. */
sealed interface PageBlock {

  /** A title, underlined with this character. */
  record Title(String words, char underline) implements PageBlock {}

  /** The head of a section. */
  record Heading(String words) implements PageBlock {}

  /** A paragraph. */
  record Paragraph(String words) implements PageBlock {}

  /** An entry of a list. */
  record Item(String words) implements PageBlock {}

  /** An entry below an item. */
  record Subitem(String words) implements PageBlock {}

  /** A table. */
  record Grid(Table table) implements PageBlock {}

  /** An empty line. */
  record Gap() implements PageBlock {}
}
