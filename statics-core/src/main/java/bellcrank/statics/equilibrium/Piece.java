package bellcrank.statics.equilibrium;

import bellcrank.statics.device.ModelException;
import java.util.List;
import java.util.Optional;

/**
 * A piece of a bar between places where forces enter; N, V and M are smooth along it. Immutable.
 */
public final class Piece {

  private final String bar;
  private final double start;
  private final double end;
  private final List<Polynomial> curves;
  private final List<Optional<Answer.Unanswered>> open;

  /**
   * A piece.
   *
   * @param bar name of the bar, for messages
   * @param curves by {@link InsideForce}
   * @param open why there is none, by {@link InsideForce}
   */
  Piece(
      String bar,
      double start,
      double end,
      List<Polynomial> curves,
      List<Optional<Answer.Unanswered>> open) {
    this.bar = bar;
    this.start = start;
    this.end = end;
    this.curves = List.copyOf(curves);
    this.open = List.copyOf(open);
  }

  /**
   * Where it starts.
   *
   * @return in m from the bar's start, 0 or more
   */
  public double start() {
    return start;
  }

  /**
   * Where it ends.
   *
   * @return in m from the bar's start, above its start
   */
  public double end() {
    return end;
  }

  /**
   * Why a force inside it cannot be told.
   *
   * @param force which force
   * @return a sentence; empty if it is told
   */
  public Optional<String> unresolved(InsideForce force) {
    return whyNot(force).map(Answer.Unanswered::explanation);
  }

  Optional<Answer.Unanswered> whyNot(InsideForce force) {
    return open.get(force.index());
  }

  /**
   * The curve of a force along the piece, exact: normal and shear force are of second degree at
   * most, the moment of third. It holds from {@link #start()} to {@link #end()}.
   *
   * @param force which force
   * @return its curve in the distance from the bar's start
   * @throws ModelException if it cannot be told, as {@link #unresolved} says
   */
  public Polynomial curve(InsideForce force) {
    Optional<Answer.Unanswered> none = whyNot(force);
    if (none.isPresent()) {
      throw new ModelException(
          bar, force.words(), "not told", "one that is; here " + none.get().explanation());
    }
    return curves.get(force.index());
  }
}
