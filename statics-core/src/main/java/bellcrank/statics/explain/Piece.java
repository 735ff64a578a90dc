package bellcrank.statics.explain;

import java.util.List;

/** A piece of a written solution, whatever the form in which it is written. */
sealed interface Piece {

  /** Plain words. */
  record Words(String text) implements Piece {}

  /** A formula. */
  record Formula(List<Token> tokens) implements Piece {}

  /** A token of a formula. */
  sealed interface Token {}

  /** A symbol. */
  record Letter(Symbol symbol) implements Token {}

  /** A number with its unit; in brackets if it stands behind a sign and is negative. */
  record Figure(String number, String unit, boolean bracketed) implements Token {}

  /** A sign of operation or relation, one of + − · =, or a leading minus. */
  record Sign(String sign, boolean leading) implements Token {}
}
