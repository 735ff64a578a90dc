package bellcrank.examples.file;

import bellcrank.statics.device.ModelException;
import bellcrank.statics.ground.Basis;
import bellcrank.statics.ground.CitedValue;
import bellcrank.statics.strength.LineRow;
import bellcrank.statics.strength.LineTable;
import bellcrank.statics.strength.Rating;
import java.util.List;

/**
 * A working load limit as a file states it.
 *
 * @param name what is rated
 * @param part name of the connection whose force it carries
 * @param limit the limit
 * @param legs number of legs that share the force, 1 or more
 * @param legAngle angle of the legs from the direction of the force in rad
 * @param reductions what takes from the limit
 */
public record RatingStatement(
    String name,
    String part,
    Stated limit,
    int legs,
    double legAngle,
    List<ReductionStatement> reductions) {

  /**
   * Copies the list and checks that a rating follows.
   *
   * @param name what is rated
   * @param part name of the connection
   * @param limit the limit
   * @param legs number of legs, 1 or more
   * @param legAngle angle of the legs in rad
   * @param reductions what takes from the limit
   * @throws ModelException if a number is out of range or a table has no such row
   */
  public RatingStatement {
    reductions = List.copyOf(reductions);
    made(name, part, limit, legs, legAngle, reductions);
  }

  /** A value of one's own with its source, or a row of a table. */
  public sealed interface Stated {

    /**
     * A row of the line table, or of its shares.
     *
     * @param name name of the row
     */
    record Row(String name) implements Stated {}

    /**
     * A value of one's own.
     *
     * @param value the value in SI
     * @param source where it comes from
     */
    record Own(double value, String source) implements Stated {

      /**
       * Checks the source.
       *
       * @param value the value in SI
       * @param source where it comes from
       * @throws ModelException if the source is empty
       */
      public Own {
        source = FreeText.check("source", source);
      }
    }
  }

  /**
   * What takes from a limit.
   *
   * @param why what it is
   * @param share the share that is left; of a row's range the low end
   */
  public record ReductionStatement(String why, Stated share) {

    /**
     * Checks that a share follows.
     *
     * @param why what it is
     * @param share the share that is left
     * @throws ModelException if the text is empty, the table has no such row, or the share is out
     *     of range
     */
    public ReductionStatement {
      why = FreeText.check("why", why);
      made(why, share);
    }

    Rating.Reduction reduction() {
      return made(why, share);
    }

    private static Rating.Reduction made(String why, Stated share) {
      if (share instanceof Stated.Row row) {
        CitedValue cited = LineTable.factor(row.name());
        return new Rating.Reduction(why, cited.value().low(), cited.source());
      }
      Stated.Own own = (Stated.Own) share;
      return new Rating.Reduction(why, own.value(), own.source());
    }
  }

  Rating rating() {
    return made(name, part, limit, legs, legAngle, reductions);
  }

  private static Rating made(
      String name,
      String part,
      Stated limit,
      int legs,
      double legAngle,
      List<ReductionStatement> reductions) {
    List<Rating.Reduction> left = reductions.stream().map(ReductionStatement::reduction).toList();
    if (limit instanceof Stated.Row stated) {
      LineRow row = LineTable.named(stated.name());
      String source = row.source() + (row.basis() == Basis.FROM_MEMORY ? " (from memory)" : "");
      return new Rating(name, part, row.workingLoad(), source, legs, legAngle, left);
    }
    Stated.Own own = (Stated.Own) limit;
    return new Rating(name, part, own.value(), own.source(), legs, legAngle, left);
  }
}
