package bellcrank.statics.explain;

import bellcrank.statics.equilibrium.DirectionWords;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Puts an equation into words and formulas. */
final class EquationWords {

  /** More bodies than this are only counted. */
  private static final int LISTED = 4;

  /** The right side of an equation of equilibrium. */
  static final Piece.Figure NOTHING = new Piece.Figure("0", "", false);

  private final Figures figures;
  private final int bodies;

  /**
   * Words.
   *
   * @param figures how numbers are written
   * @param bodies number of bodies that can be cut free
   */
  EquationWords(Figures figures, int bodies) {
    this.figures = figures;
    this.bodies = bodies;
  }

  /** What is cut and which equation is written, or which law holds. */
  String what(Equation equation) {
    return equation.condition() instanceof Condition.Law law
        ? new LawWords(figures).of(law)
        : cut(equation) + ". " + condition(equation.condition());
  }

  /** What is cut, such as {@code Cut jib free}. */
  private String cut(Equation equation) {
    List<String> cut = equation.cut();
    if (cut.size() == bodies && bodies > 1) {
      return "Cut the whole device free";
    }
    String names =
        cut.size() > LISTED
            ? listed(cut.subList(0, LISTED - 1)) + " and " + (cut.size() - LISTED + 1) + " more"
            : Wording.and(cut);
    return (equation.section() ? "Cut through the bars and take the part with " : "Cut ")
        + names
        + (equation.section() ? "" : cut.size() > 1 ? " free as one" : " free");
  }

  private static String listed(List<String> names) {
    return String.join(", ", names);
  }

  /** Which equation, such as {@code Moments about heel}. */
  private String condition(Condition condition) {
    if (condition instanceof Condition.Moments moments) {
      return "Moments about "
          + (moments.place().isEmpty()
              ? "the point ("
                  + length(moments.about().x())
                  + ", "
                  + length(moments.about().y())
                  + ")"
              : moments.place());
    }
    Direction along = ((Condition.Forces) condition).along();
    if (along.equals(Direction.RIGHT)) {
      return "Forces to the right";
    }
    return along.equals(Direction.UP)
        ? "Forces up"
        : "Forces along " + DirectionWords.of(along.times(1));
  }

  String length(double metres) {
    Piece.Figure figure = figures.figure(metres, Dimension.LENGTH);
    return figure.number() + " " + figure.unit();
  }

  /** Why this equation, as words and symbols. */
  List<Piece> reason(Equation equation) {
    List<Unknown> forces = new ArrayList<>();
    List<Unknown> couples = new ArrayList<>();
    for (Unknown one : equation.avoided()) {
      (one.kind() == Unknown.Kind.COUPLE ? couples : forces).add(one);
    }
    boolean moments = equation.condition() instanceof Condition.Moments;
    boolean named = moments && !((Condition.Moments) equation.condition()).place().isEmpty();
    List<Piece> pieces = new ArrayList<>();
    if (!forces.isEmpty()) {
      pieces.addAll(symbols(forces));
      boolean one = forces.size() == 1;
      String why =
          moments
              ? one ? " has no arm there" : named ? " have no arm there" : " meet there"
              : one ? " acts square to it" : " act square to it";
      pieces.add(new Piece.Words(why));
    }
    if (!couples.isEmpty()) {
      pieces.add(new Piece.Words(forces.isEmpty() ? "" : ", and "));
      pieces.addAll(symbols(couples));
      pieces.add(new Piece.Words(couples.size() == 1 ? " is a couple" : " are couples"));
    }
    return pieces;
  }

  static List<Piece> symbols(List<Unknown> unknowns) {
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < unknowns.size(); k++) {
      if (k > 0) {
        pieces.add(new Piece.Words(k == unknowns.size() - 1 ? " and " : ", "));
      }
      pieces.add(new Piece.Formula(List.of(new Piece.Letter(unknowns.get(k).symbol()))));
    }
    return pieces;
  }

  /** The equation; in numbers where they are known, or all in symbols. */
  Piece.Formula formula(Equation equation, boolean numbers, Piece.Figure right) {
    List<Piece.Token> tokens = new ArrayList<>();
    for (Term term : equation.terms()) {
      boolean minus = term.coefficient() < 0;
      boolean leading = tokens.isEmpty();
      if (minus || !leading) {
        tokens.add(new Piece.Sign(minus ? "−" : "+", leading));
      }
      double size = Math.abs(term.coefficient());
      Dimension kind = term.arm() ? Dimension.LENGTH : Dimension.NUMBER;
      if (term.arm() || figures.rounded(size, kind) != 1) {
        tokens.add(figures.figure(size, kind));
        tokens.add(new Piece.Sign("·", false));
      }
      tokens.add(
          numbers && !term.sought() && term.value().isPresent()
              ? figures.factorFigure(term.value().getAsDouble(), term.kind())
              : new Piece.Letter(term.symbol()));
    }
    if (tokens.isEmpty()) {
      tokens.add(NOTHING);
    }
    tokens.add(new Piece.Sign("=", false));
    tokens.add(right);
    return new Piece.Formula(List.copyOf(tokens));
  }

  Piece.Formula found(Step.Found found) {
    return new Piece.Formula(
        List.of(
            new Piece.Letter(found.unknown().symbol()),
            new Piece.Sign("=", false),
            figures.figure(found.si(), found.unknown().dimension())));
  }
}
