package bellcrank.examples.sheet;

import java.util.List;

/** A piece of a chapter. All texts are plain; the templates escape them. */
public sealed interface Part {

  /**
   * A heading within a chapter.
   *
   * @param words the heading
   */
  record Heading(String words) implements Part {}

  /**
   * A paragraph.
   *
   * @param words what it says
   * @param kept whether its line breaks are kept
   */
  record Paragraph(String words, boolean kept) implements Part {

    /**
     * A paragraph whose lines flow.
     *
     * @param words what it says
     */
    public Paragraph(String words) {
      this(words, false);
    }
  }

  /**
   * A list.
   *
   * @param entries its entries, in order
   */
  record Entries(List<Entry> entries) implements Part {

    /**
     * Copies the list.
     *
     * @param entries its entries, in order
     */
    public Entries {
      entries = List.copyOf(entries);
    }
  }

  /**
   * An entry of a list.
   *
   * @param words what it says
   * @param below entries below it
   */
  record Entry(String words, List<String> below) {

    /**
     * Copies the list.
     *
     * @param words what it says
     * @param below entries below it
     */
    public Entry {
      below = List.copyOf(below);
    }

    /**
     * Whether there are entries below it.
     *
     * @return true if so
     */
    public boolean nested() {
      return !below.isEmpty();
    }
  }

  /**
   * A table.
   *
   * @param caption what it holds
   * @param columns its columns
   * @param rows its rows, each with a cell for each column
   */
  record Grid(String caption, List<Column> columns, List<List<String>> rows) implements Part {

    /**
     * Copies the lists.
     *
     * @param caption what it holds
     * @param columns its columns
     * @param rows its rows
     */
    public Grid {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A column of a table.
   *
   * @param head its head
   * @param numeric whether it holds numbers, which are set to the right
   */
  record Column(String head, boolean numeric) {}

  /**
   * A picture.
   *
   * @param caption what it shows
   * @param svg the text of an SVG document
   */
  record Picture(String caption, String svg) implements Part {}

  /**
   * Pictures that are seen one beside the other if there is room.
   *
   * @param pictures the pictures
   */
  record Pictures(List<Picture> pictures) implements Part {

    /**
     * Copies the list.
     *
     * @param pictures the pictures
     */
    public Pictures {
      pictures = List.copyOf(pictures);
    }
  }

  /**
   * A text that keeps its lines and blanks, and can be folded away.
   *
   * @param title what it is
   * @param text the text
   */
  record Verbatim(String title, String text) implements Part {}

  /**
   * Words and formulas as trusted HTML, made by a writer that escapes.
   *
   * @param html the HTML
   */
  record Written(String html) implements Part {}

  /**
   * Steps that can be folded away.
   *
   * @param steps the steps, in order
   */
  record Steps(List<Step> steps) implements Part {

    /**
     * Copies the list.
     *
     * @param steps the steps, in order
     */
    public Steps {
      steps = List.copyOf(steps);
    }
  }

  /**
   * A step.
   *
   * @param title its first line, as trusted HTML
   * @param body the rest, as trusted HTML
   */
  record Step(String title, String body) {}
}
