package bellcrank.statics.explain;

import bellcrank.statics.units.Dimension;
import java.util.List;

/** Puts what holds for a part at its limit into words and numbers. */
final class LawWords {

  private final Figures figures;

  LawWords(Figures figures) {
    this.figures = figures;
  }

  /** A law, such as {@code floor is about to slip: its friction is μ = 0.3 times …}. */
  String of(Condition.Law law) {
    List<Double> by = law.numbers();
    return switch (law.rule()) {
      case FRICTION ->
          law.part()
              + " is about to slip, so its friction is μ = "
              + number(by.get(0))
              + " times its normal force";
      case NOTHING -> law.part() + " is about to come free, so it carries nothing";
      case EDGE ->
          law.part()
              + " is about to tip, so its normal force acts at the edge, "
              + length(by.get(0))
              + " off its middle";
      case POST ->
          law.part()
              + " is about to slip round its post, so the greater tension is e^(μβ) = "
              + power(by.get(0), by.get(1))
              + " times the smaller";
      case PIN ->
          law.part()
              + " is about to turn against its friction, so its couple is r sin φ = "
              + circle(by.get(0), by.get(1))
              + " times its force";
      case SIZE ->
          "The force of "
              + law.part()
              + " is as large as the shares of x and y along its own line together, so that its"
              + " square is x² + y²";
      case LOADS ->
          "Nothing but loads and "
              + law.part()
              + " pushes or pulls there, so its force is as large";
      case THREAD ->
          law.part()
              + " is about to turn in its thread, so the couple on it is r tan(α "
              + (by.get(2) < 0 ? "− φ) = " : "+ φ) = ")
              + thread(by.get(0), by.get(1), by.get(2))
              + " times its axial force";
    };
  }

  /** e^(0.3 · 3.14159) = 2.566. */
  String power(double friction, double angle) {
    return "e^("
        + number(friction)
        + " · "
        + number(angle)
        + ") = "
        + number(Math.exp(friction * angle));
  }

  /** 0.03 m · sin(0.197396) = 0.00588348 m. */
  String circle(double radius, double angle) {
    return length(radius) + " · sin(" + number(angle) + ") = " + length(radius * Math.sin(angle));
  }

  /** 0.02 m · tan(0.0635 + 0.1489) = 0.0043 m. */
  String thread(double radius, double slope, double angle) {
    return length(radius)
        + " · tan("
        + number(slope)
        + (angle < 0 ? " − " : " + ")
        + number(Math.abs(angle))
        + ") = "
        + length(radius * Math.tan(slope + angle));
  }

  /** Friction over normal force, in symbols and in numbers. */
  Piece.Formula ratio(Step.Margin one) {
    Piece.Sign over = new Piece.Sign("/", false);
    Piece.Sign equals = new Piece.Sign("=", false);
    return new Piece.Formula(
        List.of(
            new Piece.Letter(one.friction()),
            over,
            new Piece.Letter(one.normal()),
            equals,
            figures.figure(one.frictionForce(), Dimension.FORCE),
            over,
            figures.figure(one.normalForce(), Dimension.FORCE),
            equals,
            figures.figure(one.ratio(), Dimension.NUMBER)));
  }

  private String number(double value) {
    return figures.text(value, Dimension.NUMBER);
  }

  private String length(double metres) {
    return figures.text(metres, Dimension.LENGTH) + " " + figures.unit(Dimension.LENGTH);
  }
}
