package bellcrank.statics.ground;

import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.Quantity;
import java.util.List;
import java.util.Optional;

/** One line of a table of figures: a name, cells, and the source that they share. */
final class FigureLine {

  private static final String NOTHING = "-";
  private static final String RANGE = " to ";

  final List<String> cells;
  final String source;
  final Basis basis;
  final String note;

  FigureLine(List<String> cells, String source, Basis basis, String note) {
    this.cells = cells;
    this.source = source;
    this.basis = basis;
    this.note = note;
  }

  String name() {
    return cells.get(0);
  }

  Span span(int cell, Dimension dimension) {
    String text = cells.get(cell);
    int at = text.indexOf(RANGE);
    String low = at < 0 ? text : text.substring(0, at);
    String high = at < 0 ? text : text.substring(at + RANGE.length());
    return Span.of(Quantity.parse(low, dimension).si(), Quantity.parse(high, dimension).si());
  }

  Optional<Span> ifGiven(int cell, Dimension dimension) {
    return cell >= cells.size() || cells.get(cell).equals(NOTHING)
        ? Optional.empty()
        : Optional.of(span(cell, dimension));
  }

  /** A cell with the kind of quantity, then one with the figure. */
  CitedValue cited() {
    Dimension dimension = Dimension.valueOf(cells.get(1));
    return new CitedValue(name(), span(2, dimension), dimension, source, basis, note);
  }
}
