package bellcrank.statics.ground;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * One line of a table of figures: a name, cells, and the source that they share.
 *
 * @param cells the texts between the bars, the name first
 * @param source document, edition and place
 * @param basis how the figures came here
 * @param note what to mind when using them; may be empty
 */
public record FigureLine(List<String> cells, String source, Basis basis, String note) {

  private static final String NOTHING = "-";
  private static final String RANGE = " to ";

  /**
   * Copies the cells.
   *
   * @param cells the texts between the bars, the name first
   * @param source document, edition and place
   * @param basis how the figures came here
   * @param note what to mind when using them; may be empty
   */
  public FigureLine {
    cells = List.copyOf(cells);
  }

  /**
   * The name of the row.
   *
   * @return the text of the first cell
   */
  public String name() {
    return cells.get(0);
  }

  /**
   * The figure in a cell, as a range where it is one.
   *
   * @param cell its number; the name is cell 0
   * @param dimension what kind of quantity it is
   * @return the figure in SI
   */
  public Span span(int cell, Dimension dimension) {
    return parse(cells.get(cell), dimension);
  }

  /**
   * A figure, as a range where there are two with {@code to} between them.
   *
   * @param text the figure as it is printed, such as {@code 360 MPa to 510 MPa}
   * @param dimension what kind of quantity it is
   * @return the figure in SI
   */
  public static Span parse(String text, Dimension dimension) {
    int at = text.indexOf(RANGE);
    String low = at < 0 ? text : text.substring(0, at);
    String high = at < 0 ? text : text.substring(at + RANGE.length());
    return Span.of(Quantity.parse(low, dimension).si(), Quantity.parse(high, dimension).si());
  }

  /**
   * The figure in a cell that may be missing or hold a dash.
   *
   * @param cell its number; the name is cell 0
   * @param dimension what kind of quantity it is
   * @return the figure in SI, if there is one
   */
  public Optional<Span> ifGiven(int cell, Dimension dimension) {
    return cell >= cells.size() || cells.get(cell).equals(NOTHING)
        ? Optional.empty()
        : Optional.of(span(cell, dimension));
  }

  /**
   * A row of one figure: a cell with the kind of quantity, then one with the figure.
   *
   * @return the figure with its source
   */
  public CitedValue cited() {
    Dimension dimension = Dimension.valueOf(cells.get(1));
    return new CitedValue(name(), span(2, dimension), dimension, source, basis, note);
  }
}
