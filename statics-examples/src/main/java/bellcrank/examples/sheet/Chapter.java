package bellcrank.examples.sheet;

import java.util.List;

/**
 * A chapter of a page.
 *
 * @param id what a link to it names: letters, digits and hyphens
 * @param title its title
 * @param parts what it holds, in order
 */
public record Chapter(String id, String title, List<Part> parts) {

  /**
   * Copies the list.
   *
   * @param id what a link to it names
   * @param title its title
   * @param parts what it holds, in order
   */
  public Chapter {
    parts = List.copyOf(parts);
  }
}
