package bellcrank.statics.drawing;

/** Lengths of the arrows of one picture. */
final class ArrowRule {

  /** Length of the longest arrow. */
  private static final double LONGEST = 96;

  /** Length of the shortest arrow of a logarithmic scale. */
  private static final double SHORTEST = 30;

  private final ArrowScale kind;
  private final double least;
  private final double rate;

  private ArrowRule(ArrowScale kind, double least, double rate) {
    this.kind = kind;
    this.least = least;
    this.rate = rate;
  }

  /**
   * A rule under which a range of forces looks well.
   *
   * @param least smallest force in N that is drawn, above 0
   * @param greatest largest
   */
  static ArrowRule of(ArrowScale kind, double least, double greatest) {
    if (kind == ArrowScale.LINEAR) {
      return linear(LONGEST / greatest);
    }
    double decades = Math.max(1, Math.log10(greatest / least));
    return new ArrowRule(kind, least, (LONGEST - SHORTEST) / decades);
  }

  /** Lengths in proportion. */
  static ArrowRule linear(double unitsPerNewton) {
    return new ArrowRule(ArrowScale.LINEAR, 0, unitsPerNewton);
  }

  boolean isLinear() {
    return kind == ArrowScale.LINEAR;
  }

  /** Smallest force in N of a logarithmic rule. */
  double least() {
    return least;
  }

  /** Length on the sheet of an arrow for a force in N, above 0. */
  double length(double force) {
    return isLinear() ? rate * force : SHORTEST + rate * Math.log10(force / least);
  }

  /** Writes the rule where a program can read it. */
  void tell(Key key) {
    key.measure("data-scale", isLinear() ? "linear" : "logarithmic");
    if (isLinear()) {
      key.measure("data-units-per-newton", Double.toString(rate));
    } else {
      key.measure("data-least-force", Double.toString(least));
      key.measure("data-least-length", Double.toString(SHORTEST));
      key.measure("data-units-per-tenfold", Double.toString(rate));
    }
  }

  /** The rule in words. */
  String words(Amount amount) {
    return isLinear()
        ? "arrows in proportion to their forces"
        : "arrow length "
            + Figure.of(Math.rint(SHORTEST))
            + " + "
            + Figure.of(Math.rint(rate * 10) / 10)
            + " · log10(force / "
            + amount.force(least)
            + ")";
  }
}
