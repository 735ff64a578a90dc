package bellcrank.statics.explain;

/**
 * A given load in a pose and case.
 *
 * @param name name of the load
 * @param symbol its symbol
 * @param link what it does, in N and N·m
 */
record KnownLoad(String name, Symbol symbol, Link link) {

  /** Size in N, or for a couple its moment in N·m with its sign. */
  double size() {
    return isCouple() ? link.couple() : link.force().norm();
  }

  boolean isCouple() {
    return link.force().x() == 0 && link.force().y() == 0;
  }
}
