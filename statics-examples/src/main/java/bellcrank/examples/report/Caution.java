package bellcrank.examples.report;

/** The one caution that goes with every answer. */
public final class Caution {

  /** The caution, in one paragraph. */
  public static final String TEXT =
      "Caution: this is a planar estimate for rigid parts and static loads. Wear, shock, side load,"
          + " weld quality and soil are unknown to it. Stay out of the line of pull. Follow local"
          + " codes and the maker's limits. Have structures that lift, carry people or stand in"
          + " public checked by a licensed engineer.";

  private Caution() {}

  /**
   * The caution as lines of at most 80 characters.
   *
   * @return lines with line ends
   */
  public static String lines() {
    Page page = new Page();
    page.paragraph(TEXT);
    return page.toString();
  }
}
